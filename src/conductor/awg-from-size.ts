/** The gauge of a wire from its diameter or area. @module */
import { requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Millimetres, SquareMillimetres } from '../quantity/units.ts';
import { gaugeName, gaugeOfDiameter, LARGEST_GAUGE, SMALLEST_GAUGE } from './gauge.ts';

/** Where a wire lies on the gauge. */
export interface GaugeOfWire {
  /** Place on the progression, between whole gauges; 1/0 is 0, 2/0 is -1. */
  readonly fractional: number;
  /** The nearest whole gauge, -3 (4/0) to 40. Half-way lies half a step, not half a millimetre. */
  readonly nearest: number;
  /** The nearest gauge as it is written, as in `24 AWG`. */
  readonly name: string;
}

/**
 * The gauge of a solid wire from its diameter, whole and fractional.
 *
 * The ASTM B258 progression solved for n: `n = 36 - 39 · ln(d / 0.127 mm) / ln 92`. Within half a gauge of 4/0 to 40.
 *
 * @param diameter - Diameter of the bare wire, without insulation. [mm]
 * @returns The gauge.
 * @throws {@link InputError} If the diameter is not from 0.0754 to 12.38 mm.
 * @example
 * awgFromDiameter(0.5).fractional.toFixed(2); // => '24.18'
 * @example
 * awgFromDiameter(11.68).name; // => '4/0 AWG'
 */
export function awgFromDiameter(diameter: Millimetres): GaugeOfWire {
  requirePositive(diameter, 'diameter', 'mm');
  return gaugeOf(diameter, diameter, 'diameter', 'a diameter from 0.0754 to 12.38 mm: half a gauge beyond 40 and 4/0');
}

/**
 * The gauge whose metal area is nearest, whole and fractional; for stranded wire, hand in the area of all strands.
 *
 * Within half a gauge of 4/0 to 40. A metric size is a label and not an area: 0.5 mm² of class 5 need not hold 0.5 mm² of copper.
 *
 * @param area - Cross-section of the metal. [mm²]
 * @returns The gauge.
 * @throws {@link InputError} If the area is not from 0.00447 to 120.4 mm².
 * @example
 * awgFromArea(0.5).fractional.toFixed(2); // => '20.15'
 * @example
 * awgFromArea(circularMils(1022)).name; // => '20 AWG'
 */
export function awgFromArea(area: SquareMillimetres): GaugeOfWire {
  requirePositive(area, 'area', 'mm²');
  return gaugeOf(Math.sqrt((4 / Math.PI) * area), area, 'area', 'an area from 0.00447 to 120.4 mm²: half a gauge beyond 40 and 4/0');
}

function gaugeOf(diameter: Millimetres, received: number, parameter: string, expected: string): GaugeOfWire {
  const fractional = gaugeOfDiameter(diameter);
  const nearest = Math.round(fractional);
  if (nearest < LARGEST_GAUGE || nearest > SMALLEST_GAUGE) throw new InputError('range', parameter, expected, received);
  // Math.round gives -0 for what lies just above 1/0.
  return { fractional, nearest: nearest + 0, name: `${gaugeName(nearest)} AWG` };
}
