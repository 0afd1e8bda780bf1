/** A resistance brought from one temperature to another. @module */
import { type LineAtTemperature, resistanceAtTemperature } from '../../conductor/temperature-coefficient.ts';
import type { Sheet } from '../sheet.ts';

export type { LineAtTemperature as ResistanceAtTemperatureInput } from '../../conductor/temperature-coefficient.ts';

export const resistanceAtTemperatureSheet: Sheet<LineAtTemperature> = {
  title: 'A resistance at another temperature',
  core: 'resistanceAtTemperature',
  keys: ['resistance', 'temperature', 'coefficient', 'coefficientTemperature', 'at'],
  givens: [
    { symbol: 'R_1', meaning: 'resistance that is known', unit: 'Ω', latex: 'R_{1}', core: 'resistance' },
    { symbol: 'T_1', meaning: 'temperature at which it is known', unit: '°C', latex: 'T_{1}', core: 'temperature' },
    { symbol: 'alpha', meaning: 'temperature coefficient of resistance', unit: '1/K', latex: '\\alpha', core: 'coefficient' },
    {
      symbol: 'T_0',
      meaning: 'temperature at which the coefficient is stated',
      unit: '°C',
      latex: 'T_{0}',
      core: 'coefficientTemperature',
    },
    { symbol: 'T_2', meaning: 'temperature that is asked about', unit: '°C', latex: 'T_{2}', core: 'at' },
  ],
  steps: [
    {
      symbol: 'f_1',
      meaning: 'resistance at the known temperature over that at the reference',
      formula: '1 + alpha * (T_1 - T_0)',
      unit: '1',
      latex: 'f_{1}',
      source: 'circuit-laws',
    },
    {
      symbol: 'f_2',
      meaning: 'the same at the temperature that is asked about',
      formula: '1 + alpha * (T_2 - T_0)',
      unit: '1',
      latex: 'f_{2}',
      source: 'circuit-laws',
    },
    {
      symbol: 'R_2',
      meaning: 'resistance at the temperature that is asked about',
      formula: 'R_1 * f_2 / f_1',
      unit: 'Ω',
      latex: 'R_{2}',
      source: 'circuit-laws',
      core: 'resistanceAtTemperature',
    },
  ],
  assumptions: ['Resistance rises along a straight line with temperature.'],
  validity: 'For copper the straight line is good to 0.5 % from 0 to 77 °C.',
  cautions: [],
  slips: [
    { slip: 'twenty-left-out', givens: { T_0: '0 * T_0' } },
    { slip: 'coefficient-from-wrong-temperature', when: 'known elsewhere', steps: { R_2: 'R_1 * (1 + alpha * (T_2 - T_1))' } },
    { slip: 'ratio-upside-down', steps: { R_2: 'R_1 * f_1 / f_2' } },
    { slip: 'temperature-not-changed', steps: { R_2: 'R_1' } },
  ],
  guard: resistanceAtTemperature,
  read: ({ resistance, temperature, coefficient, coefficientTemperature: stated, at }) => {
    const coefficientTemperature = stated ?? 20;
    return {
      values: { R_1: resistance, T_1: temperature, alpha: coefficient, T_0: coefficientTemperature, T_2: at },
      cases: temperature === coefficientTemperature ? [] : ['known elsewhere'],
      assumptions: stated !== undefined ? [] : ['The coefficient is that at 20 °C: no temperature was stated for it.'],
    };
  },
};
