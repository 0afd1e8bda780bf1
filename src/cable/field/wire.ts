/** What the conductors of a cable may have, at least and at most, and which conductors a reading may be of. @module */
import { awg } from '../../conductor/awg.ts';
import { atTemperature } from '../../conductor/resistance-per-metre.ts';
import type { Interval } from '../../quantity/interval.ts';
import type { OhmsPerMetre } from '../../quantity/units.ts';
import type { Cable } from '../cable.ts';
import { CABLING_FIGURES } from '../cabling-figures-table.ts';
import { LEAST_OF_NOMINAL, leastResistance } from '../least-resistance.ts';

/** A conductor, by the least and the most that one metre of cable may have of it at 20 °C. @internal */
export interface Wire {
  /** As in `24 AWG clad aluminium`. */
  readonly title: string;
  readonly gauge: number;
  /** [Ω/m] */
  readonly least: OhmsPerMetre;
  /** [Ω/m] */
  readonly most: OhmsPerMetre;
  /** [1/K] */
  readonly coefficient: number;
}

/** 2 % for diameter, and 4 % because the pairs are twisted (common practice). */
const THIN_AND_TWISTED = 1.06;
/** Thickest gauge of category cable. [AWG] */
const THICKEST = 22;
/** Where the trade goes over to strands. [AWG] */
const LAST_SOLID = 24;

/** What a conductor of a cable has at least, as a fraction of one of its gauge at its nominal size. @internal */
export function leastShare(cable: Pick<Cable, 'stranding' | 'material'>): number {
  return leastResistance(1, cable);
}

/** The wire of a cable: from a thick conductor of its gauge to the most that its limit allows. @internal */
export function wireOf(cable: Cable): Wire {
  const { title, gauge, maximumResistancePerMetre: most, temperatureCoefficient: coefficient } = cable;
  return { title, gauge, least: Math.min(leastResistance(cable.nominalResistancePerMetre, cable), most), most, coefficient };
}

/** Copper of a gauge, twisted into pairs. @internal */
export function copperWire(gauge: number): Wire {
  const stranding = gauge > LAST_SOLID ? 'stranded' : 'solid';
  const conductor = awg(gauge, { stranding });
  const { resistancePerMetre, temperatureCoefficient: coefficient } = conductor;
  return {
    title: `${gauge} AWG copper`,
    gauge,
    least: leastResistance(resistancePerMetre, conductor),
    most: resistancePerMetre * THIN_AND_TWISTED,
    coefficient,
  };
}

/** Clad aluminium of a gauge and of any make. @internal */
export function cladWire(gauge: number): Wire {
  const copper = awg(gauge).resistancePerMetre;
  return {
    title: `${gauge} AWG clad aluminium`,
    gauge,
    least: copper * CABLING_FIGURES['clad-aluminium-least'][1] * LEAST_OF_NOMINAL.solid,
    most: copper * CABLING_FIGURES['clad-aluminium-most'][1] * THIN_AND_TWISTED,
    coefficient: awg(gauge, { material: 'copper-clad-aluminium' }).temperatureCoefficient,
  };
}

/** Copper of 22 to 24 AWG up to the limit of the categories: what an unknown data cable should be. @internal */
export function categoryWire(most: OhmsPerMetre): Wire {
  return { ...copperWire(LAST_SOLID), title: 'category cable', least: copperWire(THICKEST).least, most };
}

/** What a pair of the wire adds per metre of cable, at least and at most, between two temperatures. [Ω/m] @internal */
export function loopPerMetre({ least, most, coefficient }: Wire, { low, high }: Interval): Interval {
  return { low: 2 * atTemperature(least, coefficient, low), high: 2 * atTemperature(most, coefficient, high) };
}
