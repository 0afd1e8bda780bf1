/** What a cable is, and the cables that have a name. @module */
import { awg } from '../conductor/awg.ts';
import type { Stranding } from '../conductor/conductor.ts';
import { requireOneOf } from '../quantity/guards.ts';
import type { OhmsPerMetre } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { CABLES, type CableName } from './cables.ts';

/** What a four-pair cable is for: installed for good, or plugged in at its ends. */
export type CableUse = 'horizontal' | 'cord';

/** A twisted-pair cable, as plain data. All its conductors are alike. */
export interface Cable {
  readonly name: string;
  /** How reports call it, as in `Category 5e`. */
  readonly title: string;
  readonly use: CableUse;
  readonly pairs: number;
  /** American Wire Gauge that the trade makes it of. [AWG] */
  readonly gauge: number;
  readonly stranding: Stranding;
  /** One conductor of the usual gauge, at 20 °C. [Ω/m] */
  readonly nominalResistancePerMetre: OhmsPerMetre;
  /** The most that one conductor may have, at 20 °C; what a check uses. [Ω/m] */
  readonly maximumResistancePerMetre: OhmsPerMetre;
  /** Temperature coefficient of resistance at 20 °C. [1/K] */
  readonly temperatureCoefficient: number;
  /** Where the maximum comes from. */
  readonly source: SourceKey;
}

/**
 * A cable by the trade's name.
 *
 * Nominal resistance (usual gauge, 1/58 Ω·mm²/m) and the standard's maximum are kept apart: calculations use the
 * maximum unless asked otherwise. Categories: 24 AWG for 5e, 23 AWG for 6 and 6A, at most 9.38 Ω/100 m. Cords are
 * stranded: at most 14.0 Ω/100 m for 24 and 26 AWG (from memory), 23.2 Ω/100 m for 28 AWG.
 *
 * @param name - `'cat5e'`, `'cat6'`, `'cat6a'`, `'cord-24'`, `'cord-26'` or `'cord-28'`.
 * @returns The cable: resistances of one conductor at 20 °C [Ω/m].
 * @throws {@link InputError} If there is no cable of that name.
 * @example
 * cable('cat5e').maximumResistancePerMetre; // => 0.0938
 * @example Nominal copper of 23 AWG, in ohms per 100 m
 * (cable('cat6').nominalResistancePerMetre * 100).toFixed(2); // => '6.68'
 */
export function cable(name: CableName): Cable {
  const row = typeof name === 'string' && Object.hasOwn(CABLES, name) ? CABLES[name] : undefined;
  if (row === undefined) requireOneOf(name, Object.keys(CABLES), 'name');
  const { title, use, gauge, maximum, source } = row as (typeof CABLES)[CableName];
  const stranding = use === 'cord' ? 'stranded' : 'solid';
  const copper = awg(gauge, { stranding });
  return {
    name,
    title,
    use,
    pairs: 4,
    gauge,
    stranding,
    nominalResistancePerMetre: copper.resistancePerMetre,
    maximumResistancePerMetre: maximum,
    temperatureCoefficient: copper.temperatureCoefficient,
    source,
  };
}
