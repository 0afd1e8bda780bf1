/** Where a bundle in open air settles, found pass by pass: its film coefficient depends on the very temperature that is asked for. @module */
import { evaluateTo, formulaOf, type Measured, measured } from '../formula.ts';
import type { Figures, ReadingPasses, SheetFigure, SheetGiven, SheetStep } from '../sheet.ts';
import type { WorkingUnit } from '../working-unit.ts';
import { filmSteps } from './film-steps.ts';

/** What a formula needs to be evaluated. */
type PlainStep = Pick<SheetStep, 'symbol' | 'formula' | 'unit'>;

/** Known figures, by their symbol. */
type Scope = Readonly<Record<string, Measured>>;

/** Where it settles, or why it does not. */
export interface FoundSurface {
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

/** What is looked at in each pass. */
const columns: readonly SheetFigure[] = [
  { symbol: 'theta', meaning: 'surface above the air', unit: 'K', latex: '\\theta' },
  { symbol: 'h', meaning: 'film coefficient', unit: 'W/(m²·K)', latex: 'h' },
  { symbol: 'Q_out', meaning: 'heat that the surface sheds', unit: 'W/m', latex: 'Q_{\\mathrm{out}}' },
  { symbol: 'T_m', meaning: 'the middle, with that heat on its way out', unit: '°C', latex: 'T_{m}' },
  { symbol: 'Q_in', meaning: 'heat that conductors as hot as the middle make', unit: 'W/m', latex: 'Q_{\\mathrm{in}}' },
];

const pass: readonly PlainStep[] = [
  { symbol: 'T_s', formula: 'T_a + theta', unit: '°C' },
  ...filmSteps,
  { symbol: 'Q_out', formula: 'pi * D * h * theta', unit: 'W/m' },
  { symbol: 'T_m', formula: 'T_a + theta + Q_out * R_i', unit: '°C' },
  { symbol: 'Q_in', formula: 'Q_20 * (1 + alpha * (T_m - T_ref))', unit: 'W/m' },
  { symbol: 'surplus', formula: 'Q_out - Q_in', unit: 'W/m' },
  { symbol: 'excess', formula: 'T_m - T_max', unit: 'K' },
  { symbol: 'guess', formula: 'Q_in / (pi * D * h)', unit: 'K' },
];

/** Steps worked in order on their givens; each is then known to the next. */
export function workedScope(givens: readonly SheetGiven[], values: Figures, steps: readonly PlainStep[]): Scope {
  return work(steps, Object.fromEntries(givens.map(({ symbol, unit }) => [symbol, measured(values[symbol] ?? 0, unit)])));
}

function work(steps: readonly PlainStep[], known: Scope): Scope {
  const scope = { ...known };
  for (const { symbol, formula, unit } of steps) scope[symbol] = measured(evaluateTo(formulaOf(formula), scope, unit), unit);
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
      const scope = work(pass, { ...known, theta: measured(theta, 'K') });
      passes.push(scope);
      return plain(scope, symbol, symbol === 'surplus' ? 'W/m' : 'K');
    };
  const surplus = look('surplus');
  const excess = look('excess');

  const cold = surplus(0);
  const settled = crossing(surplus, cold, plain(passes[0] as Scope, 'guess', 'K'), most);
  if (settled !== undefined && excess(settled) <= 0) {
    return {
      settles: true,
      surfaceRise: settled,
      passes: tableOf(
        passes,
        'How far the surface is above the air, pass by pass',
        'Each pass is where the straight line through the two before it has as much heat shed as made, until it is so.',
      ),
    };
  }
  passes.length = 0;
  const bound = crossing(excess, excess(0), most / 2, most) ?? most;
  excess(bound);
  return {
    settles: false,
    surfaceRise: bound,
    passes: tableOf(
      passes,
      'How far the surface is above the air when the middle is as hot as the model goes, pass by pass',
      'Each pass is where the straight line through the two before it has the middle just so hot, until it is so.',
    ),
  };
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

function plain(scope: Scope, symbol: string, unit: WorkingUnit): number {
  return evaluateTo(formulaOf(symbol), scope, unit);
}

/** The first passes and the last, each with its number. */
function tableOf(passes: readonly Scope[], title: string, says: string): ReadingPasses {
  const numbered = passes.map((scope, index) => ({
    label: String(index + 1),
    values: columns.map(({ symbol, unit }) => plain(scope, symbol, unit)),
  }));
  return { title, says, columns, rows: numbered.length <= SHOWN ? numbered : [...numbered.slice(0, SHOWN - 1), ...numbered.slice(-1)] };
}

