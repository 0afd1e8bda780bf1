/** A cable from its data sheet. @module */
import type { Conductor, CorrectableConductor, Stranding } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import type { CorrectableMaterial } from '../conductor/material.ts';
import { atTemperature } from '../conductor/resistance-per-metre.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import {
  refuse,
  requireBoolean,
  requireInteger,
  requireObject,
  requireOneOf,
  requirePositive,
  requireTemperature,
} from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius, Millimetres } from '../quantity/units.ts';
import { assessCableData, claimedWire, nominalPerMetre } from './assess-cable-data.ts';
import type { Cable } from './cable.ts';
import type { CableUse } from './cable-limit.ts';

/** What a data sheet says of a cable. */
export interface CableSheet {
  /** A name of the caller's own. */
  readonly name: string;
  /** How reports call it; the name if absent. */
  readonly title?: string | undefined;
  /** `horizontal` if absent. */
  readonly use?: CableUse | undefined;
  /** Pairs in the cable, a whole number; 4 if absent. */
  readonly pairs?: number | undefined;
  /** Gauge of its conductors, where the sheet gives one. [AWG] */
  readonly gauge?: number | undefined;
  /** One of its conductors, where the sheet gives no gauge but mm²; instead of `gauge`, `stranding` and `material`. */
  readonly conductor?: Conductor | undefined;
  /** `stranded` for a cord, `solid` for a cable, if absent. */
  readonly stranding?: Stranding | undefined;
  /** `annealed-copper` if absent. */
  readonly material?: CorrectableMaterial | undefined;
  /** Whether it has a screen; `false` if absent. */
  readonly screened?: boolean | undefined;
  /** Usual resistance of one conductor, not of the loop; that of its gauge if absent. [Ω/km] */
  readonly nominalOhmsPerKilometre?: number | undefined;
  /** Most resistance of one conductor, not of the loop; the nominal one, taken 2 % up for its diameter, if absent. [Ω/km] */
  readonly maximumOhmsPerKilometre?: number | undefined;
  /** Temperature at which the resistances hold; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
  /** Over its sheath. [mm] */
  readonly outsideDiameter?: Millimetres | undefined;
}

const SHEET_KEYS: readonly string[] = [
  'name',
  'title',
  'use',
  'pairs',
  'gauge',
  'conductor',
  'stranding',
  'material',
  'screened',
  'nominalOhmsPerKilometre',
  'maximumOhmsPerKilometre',
  'temperature',
  'outsideDiameter',
];

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
  requireObject(sheet, 'sheet', 'an object with name, gauge and resistances');
  for (const key of Object.keys(sheet)) {
    // A mistyped figure that is passed over is a figure that is not checked.
    if (!SHEET_KEYS.includes(key)) throw new InputError('unknown', `sheet.${key}`, `one of ${SHEET_KEYS.join(', ')}`, key);
  }
  const { name, title = name, use = 'horizontal', pairs = 4, screened = false, outsideDiameter } = sheet;
  requireText(name, 'name');
  requireText(title, 'title');
  requireOneOf(use, ['horizontal', 'cord'], 'use');
  requireInteger(pairs, 1, 100, 'pairs');
  requireBoolean(screened, 'screened');
  if (outsideDiameter !== undefined) requirePositive(outsideDiameter, 'outsideDiameter', 'mm');

  const wire = claimedWire(sheet);
  if (wire !== undefined) refuseImpossible(sheet);
  const { nominal, maximum, ...metal } = resistances(sheet, wire);
  return {
    name,
    title,
    use,
    pairs,
    gauge: sheet.gauge ?? gaugeOfDiameter(metal.diameter),
    stranding: metal.stranding,
    material: metal.material,
    screened,
    nominalResistancePerMetre: nominal < maximum ? nominal : maximum,
    maximumResistancePerMetre: maximum,
    temperatureCoefficient: metal.temperatureCoefficient,
    limits: [{ standard: 'data-sheet', of: 'conductor', perMetre: maximum, source: 'data-sheet' }],
    source: 'data-sheet',
    ...(outsideDiameter === undefined ? {} : { outsideDiameter, outsideDiameterSource: 'data-sheet' }),
  };
}

function refuseImpossible(sheet: CableSheet): void {
  const impossible = assessCableData(sheet).findings.find(({ severity }) => severity === 'impossible');
  if (impossible === undefined) return;
  const { code, parameter, allowed, message } = impossible;
  const bound = code === 'below-the-metal' ? 'at least' : 'at most';
  throw new InputError('conflict', parameter, `${bound} ${allowed.toFixed(1)} Ω/km at 20 °C (${message})`, sheet[parameter]);
}

/** Both resistances at 20 °C [Ω/m], and what the conductors are: as claimed, or the copper that the figures are equal to. */
function resistances(
  sheet: CableSheet,
  wire: CorrectableConductor | undefined,
): { nominal: number; maximum: number } & Pick<CorrectableConductor, 'diameter' | 'stranding' | 'material' | 'temperatureCoefficient'> {
  const { nominalOhmsPerKilometre, maximumOhmsPerKilometre, temperature = 20, material, use = 'horizontal' } = sheet;
  requireTemperature(temperature, 'temperature');
  const stated = nominalOhmsPerKilometre ?? maximumOhmsPerKilometre;
  let metal = wire;
  if (metal === undefined) {
    if (stated === undefined) throw new InputError('missing', 'gauge', 'a gauge, a conductor, or a resistance', undefined);
    requirePositive(stated, nominalOhmsPerKilometre === undefined ? 'maximumOhmsPerKilometre' : 'nominalOhmsPerKilometre', 'Ω/km');
    const stranding = sheet.stranding ?? (use === 'cord' ? 'stranded' : 'solid');
    metal = conductorFromResistance({ ohmsPerKilometre: stated, temperature, material, stranding });
  }
  const toMetres = 1000 * atTemperature(1, metal.temperatureCoefficient, temperature);
  const own = wire === undefined ? metal.resistancePerMetre : nominalPerMetre(wire);
  const nominal = nominalOhmsPerKilometre === undefined ? own : nominalOhmsPerKilometre / toMetres;
  if (maximumOhmsPerKilometre === undefined) {
    const from = nominalOhmsPerKilometre === undefined ? metal : { ...metal, resistancePerMetre: nominal, basis: 'nominal' as const };
    return { ...metal, nominal, maximum: atMaximum(from).resistancePerMetre };
  }
  requirePositive(maximumOhmsPerKilometre, 'maximumOhmsPerKilometre', 'Ω/km');
  return { ...metal, nominal, maximum: maximumOhmsPerKilometre / toMetres };
}

/** The whole gauge nearest to a diameter (ASTM B258). [AWG] */
function gaugeOfDiameter(diameter: Millimetres): number {
  return Math.round(36 - 39 * (Math.log(diameter / 0.127) / Math.log(92)));
}

function requireText(value: string, parameter: string): void {
  if (typeof value === 'string' && value.trim() !== '') return;
  refuse(value, parameter, 'a text that is not empty', 'type');
}
