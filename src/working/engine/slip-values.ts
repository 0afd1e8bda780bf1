/** What each well-known slip comes to: the sheet itself, worked through with the wrong formula in place. @module */
import { toFeet } from '../../quantity/index.ts';
import { evaluateSheet, type SheetChange } from './evaluate-sheet.ts';
import { applies, type ReadInput } from './lines.ts';
import type { Mistaken, Sheet, SlipRow } from './sheet.ts';
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
  readonly slipped: (expected: WorkingResult) => readonly Slipped[];
  /** Every step that this result rests on, rounded to two and to three figures. */
  readonly rounded: (expected: WorkingResult) => Iterable<Slipped>;
  /** The symbols of the steps that a symbol rests on, itself among them; `governing`: of a least, or a greatest, only of the one that governs. */
  readonly under: (symbol: string, governing: boolean) => ReadonlySet<string>;
}

/** Slips of the answer alone, by what the right one is taken. */
const ANSWER_SLIPS: readonly (readonly [slip: SlipName, factor: number, holds: (result: WorkingResult) => boolean])[] = [
  ['wrong-sign', -1, ({ value }) => value !== 0],
  ['times-thousand', 1000, hasPrefix],
  ['over-thousand', 0.001, hasPrefix],
  ['percent-for-fraction', 100, isFraction],
  ['fraction-for-percent', 0.01, isFraction],
  ['feet-in-answer', toFeet(1), ({ unit }) => unit === 'm'],
];

/** The least, or the greatest, of figures as they stand. */
const LEAST = /^(?:min|max)\([^()]*\)$/;

/** Works the slips of a question out, each once and when it is first asked for. */
export function slipValues<Input>(sheet: Sheet<Input>, reading: ReadInput): SlipValues {
  const worked = evaluateSheet(sheet, reading);
  const figuresByKey = new Map<SheetChange | string, ReadonlyMap<string, number>>();
  const figureUnder = (key: SheetChange | string, change: SheetChange, symbol: string): number | undefined => {
    const figures = figuresByKey.get(key) ?? changed(sheet, reading, change);
    figuresByKey.set(key, figures);
    return figures.get(symbol);
  };
  const isIn = (mistaken: Mistaken, { template }: { readonly template: string }): boolean => Object.hasOwn(mistaken, template);
  const changes = [...sheet.slips, ...unitSlips(worked)].flatMap(([slip, mistaken, when]) => {
    const isMeant = applies(when, reading) && [...worked.givens, ...worked.steps].some((figure) => isIn(mistaken, figure));
    return isMeant ? [{ slip, mistaken }] : [];
  });
  /** The steps that are reckoned otherwise, or that a given enters which is taken for another. */
  const wrongAt = (mistaken: Mistaken): ReadonlySet<string> => {
    const givens = new Set(worked.givens.filter((figure) => isIn(mistaken, figure)).map(({ symbol }) => symbol));
    const wrong = worked.steps.filter((step) => isIn(mistaken, step) || step.parsed.symbols.some((symbol) => givens.has(symbol)));
    return new Set(wrong.map(({ symbol }) => symbol));
  };

  return {
    slipped: (expected) => {
      const found: Slipped[] = [];
      for (const change of changes) {
        const value = figureUnder(change, change, expected.symbol);
        if (value !== undefined) found.push({ slip: change.slip, value, at: wrongAt(change.mistaken) });
      }
      for (const [slip, factor, holds] of ANSWER_SLIPS) {
        if (holds(expected)) found.push({ slip, value: expected.value * factor, at: new Set() });
      }
      return found;
    },
    *rounded(expected) {
      const under = symbolsUnder(worked, expected.symbol, false);
      for (const figures of [2, 3]) {
        for (const { symbol } of worked.steps) {
          if (symbol === expected.symbol || !under.has(symbol)) continue;
          const value = figureUnder(`${symbol} ${figures}`, { rounded: { symbol, figures } }, expected.symbol);
          if (value !== undefined) yield { slip: 'rounded-early', value, at: new Set([symbol]) };
        }
      }
    },
    under: (symbol, governing) => symbolsUnder(worked, symbol, governing),
  };
}

/** The figures of the changed sheet; none where nothing can be found of it. */
function changed<Input>(sheet: Sheet<Input>, reading: ReadInput, change: SheetChange): ReadonlyMap<string, number> {
  try {
    return new Map(evaluateSheet(sheet, reading, change).steps.map(({ symbol, value }) => [symbol, value]));
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

/** Slips of any sheet: 20 °C left out, and those that go with the unit of a given. A length out of a table is in the unit of the table. */
function unitSlips({ givens }: Worked): SlipRow[] {
  const scaled = (unit: WorkingUnit, by: string): Mistaken =>
    Object.fromEntries(
      givens
        .filter((given) => given.unit === unit && (unit !== 'm' || given.source === undefined))
        .map(({ template }) => [template, `${template} ${by}`]),
    );
  return [
    ['twenty-left-out', { T_ref: '0 * T_ref' }],
    ['feet-for-metres', scaled('m', '/ 0.3048')],
    ['metres-for-feet', scaled('m', '* 0.3048')],
    ['per-100-m-for-per-km', scaled('Ω/m', '/ 10')],
    ['per-km-for-per-100-m', scaled('Ω/m', '* 10')],
  ];
}

function hasPrefix({ unit }: WorkingResult): boolean {
  return unit !== '1' && unit !== '°C';
}

function isFraction({ unit, value }: WorkingResult): boolean {
  return unit === '1' && value !== 0 && Math.abs(value) < 1;
}
