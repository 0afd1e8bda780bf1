/** The current that a code allows each conductor of a bundle, where that code applies. @module */
import { type DefaultField, type Fields, readInput } from '../../quantity/fields.ts';
import type { Amperes, Celsius } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { AMBIENT_FACTORS } from './ambient-factors-table.ts';
import { AMPACITIES, AMPACITY_BUNDLES, AMPACITY_RATINGS } from './ampacity-table.ts';
import { HEAT_CAUTION } from './caution.ts';

/** The code whose table is meant. */
export type AmpacityCode = 'NEC 2017';

/** A bundle as the table sees it. */
export interface AmpacityInput {
  readonly code: AmpacityCode;
  /** Of the conductors, copper. [AWG] */
  readonly gauge: number;
  /** Cables in the bundle, a whole number from 1 to 10,000. */
  readonly bundle: number;
  /** What the cable is rated for; 60 if absent. [°C] */
  readonly temperatureRating?: 60 | 75 | 90 | undefined;
  /** The air around the bundle; 30 if absent. [°C] */
  readonly ambient?: Celsius | undefined;
  /** Only half of the conductors carry current, as with 2-pair power; `false` if absent. */
  readonly halfLoaded?: boolean | undefined;
}

/** What the table allows, or why it has no figure. */
export type Ampacity =
  | {
      readonly feasible: true;
      /** The most through each conductor: the three below together. [A] */
      readonly ampacity: Amperes;
      /** As printed. [A] */
      readonly table: Amperes;
      /** For the air, a ratio. */
      readonly ambientFactor: number;
      /** For conductors without current: 1.4 where half of them have none, else 1. A ratio. */
      readonly loadFactor: number;
      readonly caution: string;
      readonly source: SourceKey;
    }
  | {
      readonly feasible: false;
      /** `engineering-supervision`: more than 192 cables, or under 26 AWG. `no-figure`: the table has none. `too-warm`: no factor for the air. */
      readonly reason: 'engineering-supervision' | 'no-figure' | 'too-warm';
      readonly caution: string;
      readonly source: SourceKey;
    };

/** What the cable is rated for. @internal */
export const TEMPERATURE_RATING: DefaultField<60 | 75 | 90> = {
  oneOf: () => AMPACITY_RATINGS,
  unit: '°C',
  default: 60,
  source: 'library-default',
};

/** @internal */
export const AMPACITY_FIELDS: Fields<AmpacityInput, 'temperatureRating' | 'ambient' | 'halfLoaded'> = {
  code: { oneOf: () => ['NEC 2017'] },
  gauge: { whole: [-3, 40] },
  bundle: { whole: [1, 10_000] },
  temperatureRating: () => TEMPERATURE_RATING,
  ambient: { temperature: '°C', default: 30, source: 'nec-725.144' },
  halfLoaded: { flag: true, default: false },
};

/** Table 725.144, note 2: a factor. @internal */
export const HALF_LOADED = 1.4;

/**
 * Ampacity of each conductor of a 4-pair copper cable in a bundle, by NFPA 70-2017 (NEC), Table 725.144.
 *
 * For power beside data over 60 W in places under that code, and nowhere else. The printed ampacity, times the ambient
 * factor of Table 310.15(B)(2)(a) (between two rows the warmer one), times 1.4 where only half of the conductors carry
 * current. Later editions have finer figures, none lower, which were not found. Cable that is marked for limited power is
 * rated by its mark instead.
 *
 * @param input - Code, gauge [AWG], number of cables, temperature rating [°C], ambient [°C], whether half loaded.
 * @returns The ampacity of each conductor [A] and its factors, or why there is none.
 * @throws {@link InputError} If the code or rating is not known, or a number is outside its domain.
 * @example
 * const bundled = ampacity({ code: 'NEC 2017', gauge: 23, bundle: 7 });
 * bundled.feasible && bundled.ampacity; // => 1.2
 * @example The same in a ceiling at 45 °C
 * const warm = ampacity({ code: 'NEC 2017', gauge: 23, bundle: 7, ambient: 45 });
 * warm.feasible && warm.ampacity.toFixed(3); // => '0.852'
 */
export function ampacity(input: AmpacityInput): Ampacity {
  const { gauge, bundle, temperatureRating, ambient, halfLoaded } = readInput(AMPACITY_FIELDS, input);
  const told = { caution: HEAT_CAUTION, source: 'nec-725.144' } as const;
  const column = AMPACITY_BUNDLES.findIndex((most) => bundle <= most);
  if (gauge > 26 || column < 0) return { feasible: false, reason: 'engineering-supervision', ...told };
  const rating = AMPACITY_RATINGS.indexOf(temperatureRating);
  const table = AMPACITIES.find(([size]) => size === gauge)?.[1][column]?.[rating];
  if (typeof table !== 'number') return { feasible: false, reason: 'no-figure', ...told };
  const ambientFactor = AMBIENT_FACTORS.find(([most]) => ambient <= most)?.[1][rating];
  if (typeof ambientFactor !== 'number') return { feasible: false, reason: 'too-warm', ...told, source: 'nec-310.15-ambient' };
  const loadFactor = halfLoaded ? HALF_LOADED : 1;
  return { feasible: true, ampacity: table * ambientFactor * loadFactor, table, ambientFactor, loadFactor, ...told };
}
