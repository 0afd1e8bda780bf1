/** What each well-known slip comes to: the sheet itself, worked through with the wrong formula in place. @module */
import { evaluateSheet, type SheetChange } from './evaluate-sheet.ts';
import type { Reading, Sheet, SheetSlip } from './sheet.ts';
import type { SlipName } from './slip-words.ts';
import type { Worked } from './worked.ts';
import type { WorkingResult } from './working.ts';
import type { WorkingUnit } from './working-unit.ts';

/** A slip, the figure that it gives, and the symbols of the steps at which it goes wrong: none if the answer alone does. */
export interface Slipped {
  readonly slip: SlipName;
  readonly value: number;
  readonly at: ReadonlySet<string>;
}

/** The slips of one question. */
export interface SlipValues {
  /** Every slip that can be meant, with the figure that it gives for this result. */
  readonly of: (expected: WorkingResult) => readonly Slipped[];
  /** Every step that this result rests on, rounded to two and to three figures. */
  readonly rounded: (expected: WorkingResult) => Iterable<Slipped>;
  /** The symbols of the steps that a symbol rests on, itself among them; `governing`: of a least, or a greatest, only of the one that governs. */
  readonly under: (symbol: string, governing: boolean) => ReadonlySet<string>;
}

/** Slips of the answer alone, by what the right one is taken. */
const OF_ANSWER: readonly (readonly [slip: SlipName, factor: number, holds: (of: WorkingResult) => boolean])[] = [
  ['wrong-sign', -1, ({ value }) => value !== 0],
  ['times-thousand', 1000, ({ unit }) => hasPrefix(unit)],
  ['over-thousand', 0.001, ({ unit }) => hasPrefix(unit)],
  ['percent-for-fraction', 100, isFraction],
  ['fraction-for-percent', 0.01, isFraction],
  ['feet-in-answer', 1 / 0.3048, ({ unit }) => unit === 'm'],
];

/** On any sheet that reckons from 20 °C: the commonest slip there. */
const OF_ANY_SHEET: readonly SheetSlip[] = [{ slip: 'twenty-left-out', givens: { T_ref: '0 * T_ref' } }];

/** The least, or the greatest, of figures as they stand. */
const LEAST = /^(?:min|max)\([^()]*\)$/;

/** Works the slips of a question out, each once and when it is first asked for. */
export function slipValues<Input>(sheet: Sheet<Input>, reading: Reading): SlipValues {
  let right: Worked | undefined;
  const workedOut = (): Worked => {
    right ??= evaluateSheet(sheet, reading);
    return right;
  };
  const known = new Map<SheetChange, ReadonlyMap<string, number>>();
  const figureUnder = (change: SheetChange, symbol: string): number | undefined => {
    const figures = known.get(change) ?? changed(sheet, reading, change);
    known.set(change, figures);
    return figures.get(symbol);
  };
  let meant: readonly { readonly slip: SlipName; readonly change: SheetChange }[] | undefined;
  const changes = (): NonNullable<typeof meant> => {
    meant ??= [...sheet.slips, ...OF_ANY_SHEET, ...slipsOfUnits(workedOut())]
      .filter(({ when }) => when === undefined || reading.cases?.includes(when))
      .map(({ slip, givens, steps }) => ({ slip, change: { givens, steps } }))
      .filter(({ change }) => concerns(change, workedOut()));
    return meant;
  };
  const roundings = new Map<string, SheetChange>();

  return {
    of: (expected) => {
      const found: Slipped[] = [];
      for (const { slip, change } of changes()) {
        const value = figureUnder(change, expected.symbol);
        if (value !== undefined) found.push({ slip, value, at: wrongAt(change, workedOut()) });
      }
      for (const [slip, factor, holds] of OF_ANSWER) {
        if (holds(expected)) found.push({ slip, value: expected.value * factor, at: new Set() });
      }
      return found;
    },
    *rounded(expected) {
      const under = symbolsUnder(workedOut(), expected.symbol, false);
      for (const figures of [2, 3]) {
        for (const { symbol } of workedOut().steps) {
          if (symbol === expected.symbol || !under.has(symbol)) continue;
          const key = `${symbol} ${figures}`;
          const change = roundings.get(key) ?? { rounded: { symbol, figures } };
          roundings.set(key, change);
          const value = figureUnder(change, expected.symbol);
          if (value !== undefined) yield { slip: 'rounded-early', value, at: new Set([symbol]) };
        }
      }
    },
    under: (symbol, governing) => symbolsUnder(workedOut(), symbol, governing),
  };
}

/** The figures of the changed sheet; none where a slip takes one given for another that this input does not have. */
function changed<Input>(sheet: Sheet<Input>, reading: Reading, change: SheetChange): ReadonlyMap<string, number> {
  try {
    return new Map(evaluateSheet(sheet, reading, { ...change, heedless: true }).steps.map(({ symbol, value }) => [symbol, value]));
  } catch {
    return new Map();
  }
}

function symbolsUnder({ givens, steps }: Worked, symbol: string, governing: boolean): ReadonlySet<string> {
  const found = new Set([symbol]);
  const figures = new Map([...givens, ...steps].map((figure) => [figure.symbol, figure.value]));
  // A step rests on earlier ones alone: from the last to the first none is missed.
  for (const step of [...steps].reverse()) {
    if (!found.has(step.symbol)) continue;
    const { symbols } = step.parsed;
    const governs = governing && LEAST.test(step.formula) ? symbols.find((name) => figures.get(name) === step.value) : undefined;
    for (const name of governs === undefined ? symbols : [governs]) found.add(name);
  }
  return found;
}

/** Whether the change is about anything that this input has. */
function concerns({ givens = {}, steps = {} }: SheetChange, worked: Worked): boolean {
  return (
    worked.givens.some(({ template }) => Object.hasOwn(givens, template)) ||
    worked.steps.some(({ template }) => Object.hasOwn(steps, template))
  );
}

/** The steps that are reckoned otherwise, or that a given enters which is taken for another. */
function wrongAt({ givens = {}, steps = {} }: SheetChange, worked: Worked): ReadonlySet<string> {
  const mistaken = new Set(worked.givens.filter(({ template }) => Object.hasOwn(givens, template)).map(({ symbol }) => symbol));
  const wrong = worked.steps.filter(
    ({ template, parsed }) => Object.hasOwn(steps, template) || parsed.symbols.some((symbol) => mistaken.has(symbol)),
  );
  return new Set(wrong.map(({ symbol }) => symbol));
}

/** Slips that go with the unit of a given, on any sheet. A length out of a published table is in the unit of the table. */
function slipsOfUnits({ givens }: Worked): SheetSlip[] {
  const scaled = (unit: WorkingUnit, by: string): Record<string, string> =>
    Object.fromEntries(
      givens
        .filter((given) => given.unit === unit && (unit !== 'm' || given.source === undefined))
        .map(({ template }) => [template, `${template} ${by}`]),
    );
  return [
    { slip: 'feet-for-metres', givens: scaled('m', '/ 0.3048') },
    { slip: 'metres-for-feet', givens: scaled('m', '* 0.3048') },
    { slip: 'per-100-m-for-per-km', givens: scaled('Ω/m', '/ 10') },
    { slip: 'per-km-for-per-100-m', givens: scaled('Ω/m', '* 10') },
  ];
}

function hasPrefix(unit: WorkingUnit): boolean {
  return unit !== '1' && unit !== '°C';
}

function isFraction({ unit, value }: WorkingResult): boolean {
  return unit === '1' && value !== 0 && Math.abs(value) < 1;
}
