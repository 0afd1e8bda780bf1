/** Where a bundle in open air settles, found pass by pass: its film coefficient depends on the very temperature that is asked for. @module */
import { evaluateTo, formulaOf, type Measured, measured } from '../engine/formula.ts';
import { steps } from '../engine/rows.ts';
import type { Figures, Givens, ReadingPasses, SheetFigure, SheetStep, Steps } from '../engine/sheet.ts';
import { filmSteps } from './film.ts';

/** Known figures, by their symbol. */
type Scope = Readonly<Record<string, Measured>>;

/** Where it settles, or why it does not. */
interface FoundSurface {
  /** Whether it settles with its middle no hotter than the bound. */
  readonly settles: boolean;
  /** The surface above the air: where it settles, or else where its middle is at the bound. [K] */
  readonly surfaceRise: number;
  readonly passes: ReadingPasses;
}

/** Rows of the table; of more passes the first ones and the last are shown. */
const SHOWN = 8;
/** Passes by the straight line; what they have not ended is ended by halving. */
const STRAIGHT = 16;

/** What is worked in each pass, from the surface above the air. */
// biome-ignore format: one figure a row
const PASS: Steps = [...steps([
  ['T_s', '°C', 'T_a + theta', 'surface'],
]), ...filmSteps, ...steps([
  ['Q_out', 'W/m', 'pi * D * h * theta', 'heat that the surface sheds'],
  ['T_m', '°C', 'T_a + theta + Q_out * R_i', 'the middle, with that heat on its way out'],
  ['Q_in', 'W/m', 'Q_20 * (1 + alpha * (T_m - T_ref))', 'heat that conductors as hot as the middle make'],
  ['surplus', 'W/m', 'Q_out - Q_in', 'heat shed beyond the heat made'],
  ['excess', 'K', 'T_m - T_max', 'the middle above where the model ends'],
  ['guess', 'K', 'Q_in / (pi * D * h)', 'where the surface would shed the heat made'],
])];

/** What is shown of each pass. */
// biome-ignore format: one figure a row
const COLUMNS: readonly SheetFigure[] = [...steps([
  ['theta', 'K', 'theta', 'surface above the air'],
  ['h', 'W/(m²·K)', 'h', 'film coefficient'],
]), ...PASS.filter(({ symbol }) => ['Q_out', 'T_m', 'Q_in'].includes(symbol))];

/** Steps worked in order on their givens; each is then known to the next. */
export function workedScope(givens: Givens, stated: Figures, worked: Steps): Scope {
  const known = givens.filter(({ symbol }) => symbol in stated);
  return work(worked, Object.fromEntries(known.map(({ symbol, unit }) => [symbol, measured(stated[symbol] ?? 0, unit)])));
}

function work(worked: Steps, known: Scope): Scope {
  const scope = { ...known };
  for (const { symbol, formula, unit } of worked) scope[symbol] = measured(evaluateTo(formulaOf(formula), scope, unit), unit);
  return scope;
}

/**
 * Where heat shed is heat made, of a bundle that makes any.
 *
 * @param known - What a pass needs: the bundle's diameter D, inner resistance R_i and cold heat Q_20, its conductors, the air.
 * @param most - How far the middle may be above the air. [K]
 */
export function findSurface(known: Scope, most: number): FoundSurface {
  const passes: Scope[] = [];
  const look =
    (symbol: 'surplus' | 'excess') =>
    (theta: number): number => {
      const scope = work(PASS, { ...known, theta: measured(theta, 'K') });
      passes.push(scope);
      return figureIn(scope, PASS.find((step) => step.symbol === symbol) as SheetStep);
    };
  const surplus = look('surplus');
  const excess = look('excess');

  const cold = surplus(0);
  const guess = figureIn(passes[0] as Scope, PASS.at(-1) as SheetStep);
  const found = crossing(surplus, cold, guess, most);
  const settles = found !== undefined && excess(found) <= 0;
  if (settles) return { settles, surfaceRise: found, passes: tableOf(passes, '', 'as much heat shed as made, until it is so') };
  passes.length = 0;
  const surfaceRise = crossing(excess, excess(0), most / 2, most) ?? most;
  excess(surfaceRise);
  const title = ' when the middle is as hot as the model goes';
  return { settles, surfaceRise, passes: tableOf(passes, title, 'the middle just so hot, until it is so') };
}

/**
 * Where a gap that grows comes to 0; nothing where it does not up to the most.
 *
 * By the straight line through the last two looks, kept between what is known to be too little and too much, and at last by halving.
 */
function crossing(gapAt: (at: number) => number, gapAtNone: number, start: number, most: number): number | undefined {
  let low = 0;
  let high: number | undefined;
  let last = { at: 0, gap: gapAtNone };
  let at = Math.min(start, most);
  for (let looks = 1; ; looks++) {
    const gap = gapAt(at);
    if (gap === 0) return at;
    if (gap > 0) high = at;
    else if (at >= most) return undefined;
    else low = at;
    const straight = at - (gap * (at - last.at)) / (gap - last.gap);
    if (Math.abs(straight - at) <= 4e-15 * at) return straight;
    last = { at, gap };
    if (looks < STRAIGHT && straight > low && straight < (high ?? most)) at = straight;
    else if (high === undefined) at = most;
    else {
      at = (low + high) / 2;
      if (!(at > low && at < high)) return high;
    }
  }
}

function figureIn(scope: Scope, { symbol, unit }: Pick<SheetFigure, 'symbol' | 'unit'>): number {
  return evaluateTo(formulaOf(symbol), scope, unit);
}

/** The first passes and the last, each with its number. */
function tableOf(passes: readonly Scope[], when: string, aim: string): ReadingPasses {
  const rows = passes.map((scope, index) => ({ label: String(index + 1), values: COLUMNS.map((column) => figureIn(scope, column)) }));
  return {
    title: `How far the surface is above the air${when}, pass by pass`,
    says: `Each pass is where the straight line through the two before it has ${aim}.`,
    columns: COLUMNS,
    rows: rows.length <= SHOWN ? rows : [...rows.slice(0, SHOWN - 1), ...rows.slice(-1)],
  };
}
