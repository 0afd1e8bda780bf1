/** A conductor from its American Wire Gauge. @module */
import { requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Conductor, Stranding } from './conductor.ts';
import { MATERIALS, type MaterialName } from './materials.ts';

/** A gauge: a whole number from -3 (4/0) to 40, or the trade's names for the four largest. */
export type AwgSize = number | '1/0' | '2/0' | '3/0' | '4/0';

/** How a conductor of a given gauge is made. */
export interface AwgOptions {
  /** One wire or many strands; `solid` if absent. */
  readonly stranding?: Stranding | undefined;
  /** The metal; `annealed-copper` if absent. */
  readonly material?: MaterialName | undefined;
}

/** ASTM B496: the lay of the strands makes each longer than the cable, 2 % as the standard increment. */
const LAY_FACTOR = 1.02;

/**
 * The nominal conductor of an AWG size, 4/0 to 40.
 *
 * Unrounded diameters by the ASTM B258 progression, `d = 0.127 mm · 92^((36-n)/39)`; published tables that start
 * from rounded diameters differ by up to 0.3 % for 4/0 to 21 AWG and 2.9 % at 40 AWG. A stranded conductor has the
 * same metal area and 2 % more resistance for the lay. Nominal, at 20 °C: for a check, see {@link toMaximum}.
 *
 * @param size - Gauge number from -3 (4/0) to 40, or `'1/0'` to `'4/0'`.
 * @param options - Stranding and metal.
 * @returns The conductor: area [mm²], diameter [mm], resistance per metre at 20 °C [Ω/m].
 * @throws {@link InputError} If the size is not a gauge, or the stranding or material is not known.
 * @example One conductor of 24 AWG, in ohms per kilometre
 * (awg(24).resistancePerMetre * 1000).toFixed(2); // => '84.22'
 * @example
 * awg('2/0', { stranding: 'stranded' }).name; // => '2/0 AWG stranded'
 */
export function awg(size: AwgSize, options: AwgOptions = {}): Conductor {
  requireObject(options, 'options', 'an object with stranding and material');
  const { stranding = 'solid', material: materialName = 'annealed-copper' } = options;
  const gauge = gaugeNumber(size);
  requireOneOf(stranding, ['solid', 'stranded'], 'options.stranding');
  const material = Object.hasOwn(MATERIALS, materialName) ? MATERIALS[materialName] : undefined;
  if (material === undefined) requireOneOf(materialName, Object.keys(MATERIALS), 'options.material');
  const { conductivity, temperatureCoefficient, name } = material as (typeof MATERIALS)[MaterialName];

  const diameter = 0.127 * 92 ** ((36 - gauge) / 39); // ASTM B258
  const area = (Math.PI / 4) * diameter * diameter;
  const lay = stranding === 'stranded' ? LAY_FACTOR : 1;
  return {
    name: `${gauge < 1 ? `${1 - gauge}/0` : gauge} AWG${stranding === 'stranded' ? ' stranded' : ''}`,
    area,
    diameter,
    geometry: 'nominal',
    material: name,
    stranding,
    resistancePerMetre: lay / (conductivity * area),
    temperatureCoefficient,
    basis: 'nominal',
    source: 'astm-b258',
  };
}

function gaugeNumber(size: AwgSize): number {
  if (typeof size === 'number' && Number.isInteger(size) && size >= -3 && size <= 40) return size;
  if (size === '1/0' || size === '2/0' || size === '3/0' || size === '4/0') return 1 - Number(size[0]);
  const code = size === undefined ? 'missing' : typeof size === 'number' ? 'range' : 'unknown';
  throw new InputError(code, 'size', "a whole number from -3 to 40, or '1/0' to '4/0'", size);
}
