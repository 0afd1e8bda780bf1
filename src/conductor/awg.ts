/** A conductor from its American Wire Gauge. @module */
import type { Fields } from '../quantity/fields.ts';
import { requireInteger, requireKeys, requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { layFactor } from './annealed-copper.ts';
import { type Conductor, type CorrectableConductor, STRANDINGS, type Stranding } from './conductor.ts';
import { type AwgFamily, type AwgSize, formulaDiameter, gaugeName, gaugeNumber, tabulatedDiameter } from './gauge.ts';
import { type CorrectableMaterial, type MaterialName, materialNames, wireMetal } from './material.ts';

export type { AwgFamily, AwgSize } from './gauge.ts';

/** How a conductor of a given gauge is made. */
export interface AwgOptions {
  /** One wire or many strands; `solid` if absent, unless `strands` is given. */
  readonly stranding?: Stranding | undefined;
  /** The metal; `annealed-copper` if absent. */
  readonly material?: MaterialName | undefined;
  /** Which published diameters; `formula` (unrounded) if absent. */
  readonly family?: AwgFamily | undefined;
  /** Number of strands. Only tinned and hard-drawn copper need it, whose grade goes by strand diameter: 7 if absent. */
  readonly strands?: number | undefined;
}

const FAMILIES = ['formula', 'astm-b258'] as const;

/** Strands of a conductor whose make is not stated. @internal */
export const USUAL_STRANDS = 7;

/** @internal */
export const AWG_FIELDS: Fields<AwgOptions, 'material' | 'family'> = {
  stranding: { oneOf: () => STRANDINGS, optional: true },
  material: { oneOf: () => materialNames, default: 'annealed-copper' },
  family: { oneOf: () => FAMILIES, default: 'formula' },
  strands: { whole: [2, 10_000], optional: true },
};

/** How a conductor is made of a metal whose temperature coefficient is known. */
export interface CorrectableAwgOptions extends AwgOptions {
  /** The metal; `annealed-copper` if absent. */
  readonly material?: CorrectableMaterial | undefined;
}

/**
 * The nominal conductor of an AWG size, 4/0 to 40.
 *
 * Diameters by the ASTM B258 progression, `d = 0.127 mm · 92^((36-n)/39)`: unrounded, or to the nearest 0.0001 in with
 * `family: 'astm-b258'`. The two families differ in resistance by up to 0.26 % for 4/0 to 21 AWG and 2.9 % at 40 AWG.
 * A stranded conductor has the same metal area and 2 % more resistance for the lay. Nominal, at 20 °C: for a check,
 * see {@link toMaximum}.
 *
 * @param size - Gauge number from -3 (4/0) to 40, or `'1/0'` to `'4/0'`.
 * @param options - Stranding, metal, and family of diameters.
 * @returns The conductor: area [mm²], diameter [mm], resistance per metre at 20 °C [Ω/m].
 * @throws {@link InputError} If the size is not a gauge, an option is not known, or the metal is not drawn so thin.
 * @example One conductor of 24 AWG, in ohms per kilometre
 * (awg(24).resistancePerMetre * 1000).toFixed(2); // => '84.22'
 * @example
 * awg('2/0', { stranding: 'stranded' }).name; // => '2/0 AWG stranded'
 * @example The rounded diameter of ASTM B258, 0.0253 in
 * awg(22, { family: 'astm-b258' }).diameter.toFixed(3); // => '0.643'
 */
export function awg(size: AwgSize, options?: CorrectableAwgOptions): CorrectableConductor;
export function awg(size: AwgSize, options?: AwgOptions): Conductor;
export function awg(size: AwgSize, options: AwgOptions = {}): Conductor {
  requireObject(options, 'options', 'an object');
  requireKeys(options, ['stranding', 'material', 'family', 'strands'], 'options');
  const { strands, material = 'annealed-copper', family = 'formula' } = options;
  const { stranding = strands === undefined ? 'solid' : 'stranded' } = options;
  const gauge = gaugeNumber(size);
  requireOneOf(stranding, STRANDINGS, 'options.stranding');
  if (strands !== undefined) {
    requireInteger(strands, 2, 10_000, 'options.strands');
    if (stranding === 'solid') throw new InputError('conflict', 'options.strands', 'no strands in a solid conductor', strands);
  }
  requireOneOf(family, FAMILIES, 'options.family');
  const diameter = family === 'formula' ? formulaDiameter(gauge) : tabulatedDiameter(gauge);
  const strandDiameter = stranding === 'solid' ? diameter : diameter / Math.sqrt(strands ?? USUAL_STRANDS);
  const { conductivity, ...line } = wireMetal(material, 'options.material', strandDiameter);

  const area = (Math.PI / 4) * diameter * diameter;
  const metal = material === 'annealed-copper' ? '' : ` ${material.replaceAll('-', ' ')}`;
  return {
    name: `${gaugeName(gauge)} AWG${stranding === 'stranded' ? ' stranded' : ''}${metal}`,
    area,
    diameter,
    geometry: 'nominal',
    material,
    stranding,
    ...(strands && { strands }),
    resistancePerMetre: layFactor(stranding) / (conductivity * area),
    ...line,
    basis: 'nominal',
    source: family === 'formula' ? 'astm-b258' : 'astm-b258-rounded',
  };
}
