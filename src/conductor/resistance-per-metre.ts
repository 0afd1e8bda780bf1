/** Resistance of one conductor, hot or cold. @module */
import type { DefaultField, Field } from '../quantity/fields.ts';
import { refuse, requireComputed, requireObject, requirePositive, requireTemperature } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius, OhmsPerMetre } from '../quantity/units.ts';
import type { Conductor } from './conductor.ts';

/**
 * Resistance of one metre of one conductor at a conductor temperature.
 *
 * `r(T) = r20 · (1 + α20 · (T - 20))`. Against Matula's copper the straight line is within 0.45 % from 0 to 77 °C.
 * A conductor without a temperature coefficient is known at 20 °C only.
 *
 * @param conductor - A conductor, as made by {@link awg} or {@link conductorFromResistance}.
 * @param temperature - Conductor temperature, -100 to 400; 20 if absent. [°C]
 * @returns Resistance of the one conductor. [Ω/m]
 * @throws {@link InputError} If the conductor is not one, or the temperature is outside its range, or (code `conflict`)
 *   not 20 °C where the metal's temperature coefficient is not known.
 * @example
 * (resistancePerMetre(awg(24), 60) * 1000).toFixed(2); // => '97.45'
 */
export function resistancePerMetre(conductor: Conductor, temperature: Celsius = 20): OhmsPerMetre {
  requireConductor(conductor, 'conductor');
  requireTemperature(temperature, 'temperature');
  const { temperatureCoefficient = requireTwenty(temperature, conductor.material, 'temperature') } = conductor;
  return atTemperature(conductor.resistancePerMetre, temperatureCoefficient, temperature);
}

/** r(T) = r20 (1 + a20 (T - 20)), the one place where the line is drawn. @internal */
export function atTemperature(at20: number, coefficient: number, temperature: Celsius): number {
  return at20 * (1 + coefficient * (temperature - 20));
}

/** @internal */
export const CONDUCTOR_TEMPERATURE: DefaultField<Celsius> = { temperature: '°C', default: 20, source: 'library-default' };

/** @internal */
export const CONDUCTOR: Field<Conductor> = { check: (value, path) => requireConductor(value, path), type: 'Conductor' };

/** The slope that stands in for one that is not known: none, and so for 20 °C only. [1/K] @internal */
export function requireTwenty(temperature: Celsius, material: string, parameter: string): number {
  if (temperature === 20) return 0;
  throw new InputError('conflict', parameter, `20 °C, because no temperature coefficient of ${material} is known`, temperature);
}

/** @internal */
export function requireConductor(conductor: Conductor, parameter: string): void {
  requireObject(conductor, parameter, 'a conductor, such as awg(24)');
  const { resistancePerMetre, temperatureCoefficient, material } = conductor;
  const guard = resistancePerMetre === 0 ? requirePositive : requireComputed;
  guard(resistancePerMetre, `${parameter}.resistancePerMetre`, 'Ω/m');
  // Absent means not known, in a conductor that says its metal; in anything else it was forgotten.
  if (temperatureCoefficient === undefined && typeof material === 'string') return;
  requireCoefficient(temperatureCoefficient as number, `${parameter}.temperatureCoefficient`);
}

/** Steeper than any metal, and yet its line is still above zero at the coldest temperature that is accepted. [1/K] */
const STEEPEST = 0.008;

/** @internal */
export function requireCoefficient(coefficient: number, parameter: string): void {
  if (typeof coefficient === 'number' && coefficient >= 0 && coefficient <= STEEPEST) return;
  refuse(coefficient, parameter, `a number from 0 to ${STEEPEST} 1/K`);
}
