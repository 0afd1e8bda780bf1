/** A resistance brought from one temperature to another. @module */
import { givens, steps } from '../rows.ts';
import { resistanceAtTemperature, type TemperatureLine } from '../../conductor/temperature-coefficient.ts';
import { requireObject } from '../../quantity/guards.ts';
import type { Celsius } from '../../quantity/units.ts';
import type { Sheet } from '../sheet.ts';

/** The arguments of `resistanceAtTemperature` in one object. */
export interface ResistanceAtTemperatureInput extends TemperatureLine {
  /** Temperature that is asked about, -273.15 to 4000. [°C] */
  readonly at: Celsius;
}

export const resistanceAtTemperatureSheet: Sheet<ResistanceAtTemperatureInput> = {
  title: 'A resistance at another temperature',
  core: 'resistanceAtTemperature',
  keys: ['resistance', 'temperature', 'coefficient', 'coefficientTemperature', 'at'],
  givens: givens([
    ['R_1', 'Ω', 'resistance that is known', 'resistance'],
    ['T_1', '°C', 'temperature at which it is known', 'temperature'],
    ['alpha', '1/K', 'temperature coefficient of resistance', 'coefficient'],
    ['T_0', '°C', 'temperature at which the coefficient is stated', 'coefficientTemperature'],
    ['T_2', '°C', 'temperature that is asked about', 'at'],
  ]),
  steps: steps([
    ['f_1', '1', '1 + alpha * (T_1 - T_0)', 'resistance at the known temperature over that at the reference'],
    ['f_2', '1', '1 + alpha * (T_2 - T_0)', 'the same at the temperature that is asked about'],
    ['R_2', 'Ω', 'R_1 * f_2 / f_1', 'resistance at the temperature that is asked about', { core: 'resistanceAtTemperature' }],
  ]),
  assumptions: ['Resistance rises along a straight line with temperature.'],
  validity: 'For copper the straight line is good to 0.5 % from 0 to 77 °C.',
  cautions: [],
  slips: [
    { slip: 'twenty-left-out', givens: { T_0: '0 * T_0' } },
    { slip: 'coefficient-from-wrong-temperature', when: 'known elsewhere', steps: { R_2: 'R_1 * (1 + alpha * (T_2 - T_1))' } },
    { slip: 'ratio-upside-down', steps: { R_2: 'R_1 * f_1 / f_2' } },
    { slip: 'temperature-not-changed', steps: { R_2: 'R_1' } },
  ],
  guard: (input) => {
    requireObject(input, 'input', 'an object with resistance, temperature, coefficient and at');
    const { at, ...line } = input;
    return resistanceAtTemperature(line, at);
  },
  read: ({ resistance, temperature, coefficient, coefficientTemperature: stated, at }) => {
    const coefficientTemperature = stated ?? 20;
    return {
      values: { R_1: resistance, T_1: temperature, alpha: coefficient, T_0: coefficientTemperature, T_2: at },
      cases: temperature === coefficientTemperature ? [] : ['known elsewhere'],
      assumptions: stated !== undefined ? [] : ['The coefficient is that at 20 °C: no temperature was stated for it.'],
    };
  },
};

