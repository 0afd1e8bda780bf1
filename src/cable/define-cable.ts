/** A cable from its data sheet. @module */
import type { CorrectableConductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import { gaugeOfDiameter } from '../conductor/gauge.ts';
import { atTemperature } from '../conductor/resistance-per-metre.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import { type Fields, readInput } from '../quantity/fields.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Millimetres } from '../quantity/units.ts';
import {
  assess,
  CABLE_DATA_FIELDS,
  type CableData,
  claimedStranding,
  claimedWire,
  nominalPerMetre,
  type ReadCableData,
} from './assess-cable-data.ts';
import type { Cable } from './cable.ts';
import { CABLE_CATEGORIES, type CableCategory } from './cables.ts';

/** What a data sheet says of a cable. */
export interface CableSheet extends CableData {
  /** A name of the caller's own. */
  readonly name: string;
  /** How reports call it; the name if absent. */
  readonly title?: string | undefined;
  /** Its category, where the sheet claims one. */
  readonly category?: CableCategory | undefined;
  /** Pairs in the cable, a whole number; 4 if absent. */
  readonly pairs?: number | undefined;
  /** Whether it has a screen; `false` if absent. */
  readonly screened?: boolean | undefined;
  /** Usual resistance of one conductor, not of the loop; that of its gauge if absent. [Ω/km] */
  readonly nominalOhmsPerKilometre?: number | undefined;
  /** Most resistance of one conductor, not of the loop; the nominal one, taken 2 % up for its diameter, if absent. [Ω/km] */
  readonly maximumOhmsPerKilometre?: number | undefined;
  /** Over its sheath. [mm] */
  readonly outsideDiameter?: Millimetres | undefined;
}

/** @internal */
export const CABLE_SHEET_FIELDS: Fields<CableSheet, 'use' | 'temperature' | 'pairs' | 'screened'> = {
  name: { text: 'filled' },
  title: { text: 'filled', optional: true },
  category: { oneOf: () => CABLE_CATEGORIES, optional: true },
  pairs: { whole: [1, 100], default: 4 },
  screened: { flag: true, default: false },
  outsideDiameter: { positive: 'mm', optional: true },
  gauge: () => CABLE_DATA_FIELDS.gauge,
  conductor: () => CABLE_DATA_FIELDS.conductor,
  use: () => CABLE_DATA_FIELDS.use,
  stranding: () => CABLE_DATA_FIELDS.stranding,
  material: () => CABLE_DATA_FIELDS.material,
  nominalOhmsPerKilometre: () => CABLE_DATA_FIELDS.nominalOhmsPerKilometre,
  maximumOhmsPerKilometre: () => CABLE_DATA_FIELDS.maximumOhmsPerKilometre,
  temperature: () => CABLE_DATA_FIELDS.temperature,
};

/**
 * A cable from its data sheet, refused where the sheet cannot be true.
 *
 * Resistances are brought to 20 °C and held against the gauge and metal that the sheet claims, as
 * {@link assessCableData} does: one that no wire of that gauge and metal has throws `conflict`, with the reason. That is
 * how copper-clad aluminium sold as copper is caught. A cable that says what it is made of is accepted, and fails IEEE
 * 802.3 power on its material.
 *
 * @param sheet - Name, use, gauge [AWG] or conductor, resistances of one conductor, their temperature [°C], metal, diameter [mm].
 * @returns The cable: resistances of one conductor at 20 °C [Ω/m].
 * @throws {@link InputError} If the resistance is impossible for the gauge and metal (`conflict`), there is neither gauge
 *   nor conductor, or a number is outside its domain.
 * @example
 * const tieLine = defineCable({ name: 'tie line', gauge: 23, maximumOhmsPerKilometre: 75, outsideDiameter: 6.4 });
 * runResistance({ segments: [{ cable: tieLine, length: 80 }] }).pairLoop.toFixed(1); // => '12.0'
 * @example Clad aluminium sold as 24 AWG copper
 * let reason = '';
 * try {
 *   defineCable({ name: 'bargain', gauge: 24, maximumOhmsPerKilometre: 130 });
 * } catch (error) {
 *   if (isInputError(error)) reason = `${error.code} in ${error.parameter}: ${error.expected}`;
 * }
 * reason; // => 'conflict in maximumOhmsPerKilometre: at most 101.1 Ω/km at 20 °C (130.0 Ω/km at 20 °C is 1.54 of 24 AWG copper: too high for copper: consistent with clad aluminium)'
 */
export function defineCable(sheet: CableSheet): Cable {
  const read = readInput(CABLE_SHEET_FIELDS, sheet);
  const { name, title = name, category, use, pairs, screened, outsideDiameter, temperature, material } = read;
  const { nominalOhmsPerKilometre: usual, maximumOhmsPerKilometre: most } = read;
  const wire = claimedWire(read);
  if (wire !== undefined) refuseImpossible(read, wire);
  const stated = usual ?? most;
  if (wire === undefined && stated === undefined) {
    throw new InputError('missing', 'gauge', 'a gauge, a conductor, or a resistance', undefined);
  }
  // As claimed, or the copper that the figures are equal to.
  const metal =
    wire ?? conductorFromResistance({ ohmsPerKilometre: stated as number, temperature, material, stranding: claimedStranding(read) });
  const toMetres = 1000 * atTemperature(1, metal.temperatureCoefficient, temperature);
  const own = wire === undefined ? metal.resistancePerMetre : nominalPerMetre(wire);
  const nominal = usual === undefined ? own : usual / toMetres;
  const stating = usual === undefined ? metal : { ...metal, resistancePerMetre: nominal, basis: 'nominal' as const };
  const maximum = most === undefined ? atMaximum(stating).resistancePerMetre : most / toMetres;
  return {
    name,
    title,
    ...(category && { category }),
    use,
    pairs,
    gauge: read.gauge ?? Math.round(gaugeOfDiameter(metal.diameter)),
    stranding: metal.stranding,
    material: metal.material,
    screened,
    nominalResistancePerMetre: Math.min(nominal, maximum),
    maximumResistancePerMetre: maximum,
    temperatureCoefficient: metal.temperatureCoefficient,
    limits: [{ standard: 'data-sheet', circuit: 'conductor', perMetre: maximum, source: 'data-sheet' }],
    source: 'data-sheet',
    ...(outsideDiameter && { outsideDiameter, outsideDiameterSource: 'data-sheet' }),
  };
}

function refuseImpossible(sheet: ReadCableData, wire: CorrectableConductor) {
  const impossible = assess(sheet, wire).findings.find(({ severity }) => severity === 'impossible');
  if (impossible === undefined) return;
  const { code, parameter, allowed, message } = impossible;
  const bound = code === 'below-the-metal' ? 'at least' : 'at most';
  throw new InputError('conflict', parameter, `${bound} ${allowed.toFixed(1)} Ω/km at 20 °C (${message})`, sheet[parameter]);
}
