/** How much installed cable remains when it is warm. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import type { Celsius, Kelvins, Metres } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { HOTTEST_CABLING, lossFactor } from './insertion-loss.ts';
import { type DeratingRow, LENGTH_DERATING, LENGTH_DERATING_READ } from './length-derating-table.ts';

/** The permanent link at 20 °C, for the percentage rule. [m] */
const COOL_LENGTH: Metres = 90;

/** An installed cable at a temperature. */
export interface DeratedLengthInput {
  /** Average over the installed cable. [°C] */
  readonly temperature: Celsius;
  /** Whether it has a screen; `false` if absent. */
  readonly screened?: boolean | undefined;
}

/** @internal */
export const DERATED_LENGTH_FIELDS: Fields<DeratedLengthInput, 'screened'> = {
  temperature: { temperature: '°C' },
  screened: { flag: true, default: false },
};

/** The longest installed cable at a temperature, by each of the two published rules, or that there is none. */
export type DeratedLength =
  | {
      readonly feasible: true;
      /** The shorter of the two. [m] */
      readonly length: Metres;
      /** Which of the two that is; the table where they agree. */
      readonly governedBy: 'table' | 'percentage';
      /** By the published table, on a straight line between its rows. [m] */
      readonly table: SourcedLength;
      /** 90 m divided by the insertion-loss factor. [m] */
      readonly percentage: SourcedLength;
      /** Table less percentage rule: by how much the two published rules disagree. [m] */
      readonly difference: Metres;
      readonly source: SourceKey;
    }
  | {
      readonly feasible: false;
      /** Where both rules end. [°C] */
      readonly hottest: Celsius;
      /** How much too warm it is. [K] */
      readonly shortfall: Kelvins;
      readonly source: SourceKey;
    };

/**
 * The longest permanent link when the installed cable is warm: less of it, for a warm cable loses more signal.
 *
 * ANSI/TIA-568 prints a table of lengths, with cords of 10 m at 20 °C, and a percentage rule for the loss; they differ
 * by up to 0.8 m. Both are given and the shorter is applied. 90 m at 20 °C and below; no length above 60 °C, where both
 * rules end. Data only: power has its own limits.
 *
 * @param input - Average temperature of the installed cable [°C], and whether it is screened.
 * @returns The length [m], by which rule, and the difference between the two; or `feasible: false` above 60 °C.
 * @throws {@link InputError} If the temperature is out of range.
 * @example Unscreened cable at 50 °C: the table says 79.5 m, the percentage rule 78.9 m
 * const warm = deratedLength({ temperature: 50 });
 * warm.feasible && [warm.length.toFixed(1), warm.governedBy, warm.difference.toFixed(2)]; // => ['78.9', 'percentage', '0.55']
 */
export function deratedLength(input: DeratedLengthInput): DeratedLength {
  const { temperature, screened } = readInput(DERATED_LENGTH_FIELDS, input);
  if (temperature > HOTTEST_CABLING) {
    return { feasible: false, hottest: HOTTEST_CABLING, shortfall: temperature - HOTTEST_CABLING, source: 'cabling-temperature' };
  }
  const { shorter, ...rules } = deratingRules(temperature, screened);
  return {
    feasible: true,
    ...shorter,
    governedBy: shorter === rules.table ? 'table' : 'percentage',
    ...rules,
    difference: rules.table.length - rules.percentage.length,
  };
}

/** A length and where it is from. */
export interface SourcedLength {
  /** [m] */
  readonly length: Metres;
  readonly source: SourceKey;
}

/** Both rules for a cable of at most 60 °C, and the shorter of them; the table where they agree. @internal */
export function deratingRules(
  temperature: Celsius,
  screened: boolean,
): Readonly<Record<'table' | 'percentage' | 'shorter', SourcedLength>> {
  const table = fromTable(temperature, screened);
  const percentage = { length: COOL_LENGTH / lossFactor(temperature, screened), source: 'insertion-loss-temperature' } as const;
  return { table, percentage, shorter: table.length <= percentage.length ? table : percentage };
}

function fromTable(temperature: Celsius, screened: boolean): SourcedLength {
  const column = screened ? 2 : 1;
  const read: readonly number[] = LENGTH_DERATING_READ[screened ? 'screened' : 'unscreened'];
  const sourceAt = (row: Celsius): SourceKey => (read.includes(row) ? 'tia-568-length-table' : 'tia-568-length-table-memory');
  const index = LENGTH_DERATING.findIndex(([row]) => row >= temperature);
  const above = LENGTH_DERATING.at(index) as DeratingRow;
  const below = LENGTH_DERATING[index - 1];
  const [warmer] = above;
  const source = sourceAt(warmer);
  if (below === undefined || warmer === temperature) return { length: above[column], source };
  const [cooler] = below;
  const share = (temperature - cooler) / (warmer - cooler);
  const length = below[column] + (above[column] - below[column]) * share;
  // A straight line between a figure that was read and one that is remembered is no better than the memory.
  return { length, source: sourceAt(cooler) === source ? source : 'tia-568-length-table-memory' };
}
