/** The rules of a cabling standard as limits of an installed length. @module */
import { givens } from '../rows.ts';
import type { Segment } from '../../cable/run-resistance.ts';
import type { PoeClass } from '../../ethernet/poe-class.ts';
import { closestCord, closestGauge, deratedRule, type Held } from '../../plan/cabling-checks.ts';
import type { CablingRules } from '../../plan/cabling-rules.ts';
import { categoryCheck } from '../../plan/category-check.ts';
import { hottestOf, insertionLossLength, isScreened } from '../../plan/signal-length.ts';
import type { Figures, ReadingRow, SheetGiven, SheetNo, SheetStep } from '../sheet.ts';
import { limitRow, loopRow } from './limit-rows.ts';
import { COOL, LINK, OHMS } from './limit-steps.ts';

/** A rule in metres; where cords take of it, as they are or as so much lossier, and where the cable counts for more than it has. */
export const LENGTH = 'stated in metres';
const AS_LONG = 'cords as they are';
const AS_LOSSY = 'cords by their loss';
const COUNTED = 'a metre counts for more';
const ALL = 'all of it';
const LESS_CORDS = 'less the cords';
const COUNTED_ALL = `${COUNTED}, ${ALL}`;
const COUNTED_LESS = `${COUNTED}, ${LESS_CORDS}`;
/** Of the reading: cords are held against the loss of signal. */
const LOSSY = 'lossy cords';
/** A least, in place of a most. */
const LEAST = 'at least';

const given = { each: 'limit', unit: '1', source: 'row' } as const;

/** The rules in metres. */
export const lengthGivens: readonly SheetGiven[] = [
  { ...given, symbol: 'a_#', meaning: '@: most length', unit: 'm', latex: 'a_{#}', core: 'cabling', when: LENGTH },
  {
    ...given,
    symbol: 'c_#',
    meaning: '@: how much of the limit one metre of this cable uses up',
    latex: 'c_{#}',
    core: 'cable, temperature',
    when: COUNTED,
  },
];

/** How much signal each cord loses. */
export const cordLossGivens: readonly SheetGiven[] = givens([
  ['kc_#', '1', 'cord #: metres of cool installed cable that lose as much signal as one metre of it', 'cords[].cable', { latex: 'k_{c#}', source: 'tia-568-open-office', each: 'cord', when: LOSSY }],
]);

/** The length that each of them allows. */
export function lengthSteps(no: SheetNo): readonly SheetStep[] {
  const step = { unit: 'm', source: 'row', each: 'limit' } as const;
  const taken = { ...step, symbol: 'b_#', latex: 'b_{#}' } as const;
  const allowed = { ...step, symbol: 'L_#', meaning: '@: the length it allows', latex: 'L_{#}', no } as const;
  return [
    { ...taken, meaning: '@: length of the cords', formula: '[Lc_#]', when: AS_LONG },
    { ...taken, meaning: '@: what the cords use up of it', formula: '[kc_# * Lc_#]', when: AS_LOSSY },
    { ...allowed, formula: 'a_#', when: ALL },
    { ...allowed, formula: 'a_# - b_#', when: LESS_CORDS },
    { ...allowed, formula: 'a_# / c_#', when: COUNTED_ALL },
    { ...allowed, formula: '(a_# - b_#) / c_#', when: COUNTED_LESS },
  ];
}

/** What an installed cable is held to as a least. */
export const categoryGivens: readonly SheetGiven[] = givens([
  ['v_#', '1', '@: value here', 'the input'],
  ['w_#', '1', '@: least', 'poeClass', { source: 'row' }],
], { each: 'fixed', when: LEAST });

/** And how far it is above it. */
export function categoryStep(no: SheetNo): SheetStep {
  const shared = { symbol: 's_#', unit: '1', latex: 's_{#}', source: 'row', each: 'fixed', no } as const;
  return { ...shared, meaning: '@: what there is over the least', formula: 'v_# - w_#', when: LEAST };
}

/** A run whose rules are asked for. */
interface Ruled {
  readonly own: (length: number) => Segment;
  readonly cords: readonly Segment[];
  readonly connections: number;
  readonly limits: PoeClass;
}

/** Every rule: those that bound the length, and those that are met or missed whatever it is; of each cord how lossy it is. */
export function cablingRows(
  rules: CablingRules,
  { own, cords, connections, limits }: Ruled,
): {
  readonly limit: readonly ReadingRow[];
  readonly fixed: readonly ReadingRow[];
  readonly cases: readonly string[];
  readonly lossOf: (cord: Segment) => Figures;
} {
  const { cable, temperature = 20 } = own(0);
  const hasCords = cords.length > 0;
  const derated = deratedRule(temperature, isScreened(cable), rules);
  const isLossy = hasCords || derated !== undefined;
  const { channelLength, permanentLinkLength, channelLoop, permanentLinkLoop, insertionLossLength: loss } = rules;
  const seen = limits.pairs === 4 ? 'fourPair' : 'twoPair';

  const limit = [
    limitRow(
      'channel-length',
      { 'a_#': channelLength.limit },
      [LENGTH, ...(hasCords ? [AS_LONG, LESS_CORDS] : [ALL])],
      channelLength.source,
    ),
    limitRow('permanent-link-length', { 'a_#': permanentLinkLength.limit }, [LENGTH, ALL], permanentLinkLength.source),
    loopRow('channel-loop', 'pairLoop', OHMS, { 'X_#': channelLoop.limit }, [COOL], channelLoop.source),
  ];
  if (permanentLinkLoop !== undefined) {
    limit.push(loopRow('permanent-link-loop', 'pairLoop', OHMS, { 'X_#': permanentLinkLoop.limit }, [LINK], permanentLinkLoop.source));
  }
  limit.push(loopRow('channel-resistance', seen, OHMS, { 'X_#': limits.channelResistance }));
  if (derated !== undefined) limit.push(limitRow('derated-length', { 'a_#': derated.limit }, [LENGTH, ALL], derated.source));
  if (isLossy) limit.push(lossRow());
  return {
    limit,
    fixed: missed(),
    cases: isLossy && hasCords ? [LOSSY] : [],
    lossOf: (cord) => ({ 'kc_#': insertionLossLength([], [{ ...cord, length: 1 }], rules) }),
  };

  function lossRow(): ReadingRow {
    const counted = insertionLossLength([own(1)], [], rules);
    const cases = counted === 1 ? [hasCords ? LESS_CORDS : ALL] : [COUNTED, hasCords ? COUNTED_LESS : COUNTED_ALL];
    const values = { 'a_#': loss.limit, 'c_#': counted };
    return limitRow('insertion-loss-length', values, [LENGTH, ...(hasCords ? [AS_LOSSY] : []), ...cases], loss.source);
  }

  function missed(): readonly ReadingRow[] {
    const rows: ReadingRow[] = [];
    const hold = (name: Parameters<typeof limitRow>[0], held: Held | undefined, unit: string): void => {
      if (held !== undefined && held.value > held.limit) {
        rows.push(limitRow(name, { 'v_#': held.value, 'w_#': held.limit }, [unit], held.source));
      }
    };
    const category = categoryCheck([own(0), ...cords], limits.type);
    if (category !== undefined) {
      rows.push(limitRow(category.name, { 'v_#': category.value, 'w_#': category.limit }, [LEAST], category.source));
    }
    hold('connections', { value: connections, ...rules.connections }, '1');
    hold('cord-length', closestCord(cords, rules), 'm');
    hold('conductor-gauge', closestGauge([own(0)], cords, rules), '1');
    hold('cable-temperature', { value: hottestOf([own(0), ...cords]), ...rules.temperature }, '°C');
    return rows;
  }
}

