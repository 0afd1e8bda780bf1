/** Diameter, area and resistance of an AWG conductor. @module */
import { type AwgOptions, type AwgSize, awg } from '../../conductor/awg.ts';
import { gaugeNumber } from '../../conductor/gauge.ts';
import { material } from '../../conductor/material.ts';
import { requireObject } from '../../quantity/guards.ts';
import type { Reading, Sheet } from '../sheet.ts';

/** The arguments of `awg` in one object. */
export interface AwgWorkingInput extends AwgOptions {
  /** Gauge number from -3 (4/0) to 40, or `'1/0'` to `'4/0'`. */
  readonly size: AwgSize;
}

export const awgSheet: Sheet<AwgWorkingInput> = {
  title: 'A conductor from its gauge',
  core: 'awg',
  keys: ['size', 'stranding', 'material', 'family', 'strands'],
  givens: [
    { symbol: 'n', meaning: 'gauge number; 1/0 is 0, 2/0 is -1', unit: '1', latex: 'n', core: 'size' },
    { symbol: 'd_36', meaning: 'diameter of 36 AWG', unit: 'mm', latex: 'd_{36}', core: 'the gauge', source: 'astm-b258' },
    {
      symbol: 'q',
      meaning: 'diameter of 4/0 over that of 36 AWG, 39 steps apart',
      unit: '1',
      latex: 'q',
      core: 'the gauge',
      source: 'astm-b258',
    },
    {
      symbol: 'u',
      meaning: 'to what tables round a diameter, 0.0001 in',
      unit: 'mm',
      latex: 'u',
      core: 'family',
      source: 'astm-b258-rounded',
      when: 'rounded',
    },
    {
      symbol: 'k',
      meaning: 'length of a strand over that of the cable it is laid in',
      unit: '1',
      latex: 'k',
      core: 'stranding',
      source: 'astm-b496',
      when: 'stranded',
    },
    {
      symbol: 'sigma',
      meaning: 'conductivity of the metal at 20 °C',
      unit: 'MS/m',
      latex: '\\sigma',
      core: 'material',
      source: 'iec-60028',
      when: 'copper',
    },
    { symbol: 'sigma', meaning: 'conductivity of the metal at 20 °C', unit: 'MS/m', latex: '\\sigma', core: 'material', when: 'metal' },
  ],
  steps: [
    {
      symbol: 'd',
      meaning: 'diameter of the metal',
      formula: 'd_36 * q^((36 - n) / 39)',
      unit: 'mm',
      latex: 'd',
      source: 'astm-b258',
      core: 'diameter',
      when: 'formula',
    },
    {
      symbol: 'm',
      meaning: 'diameter in steps of the table',
      formula: 'round(d_36 * q^((36 - n) / 39) / u)',
      unit: '1',
      latex: 'm',
      source: 'astm-b258-rounded',
      when: 'rounded',
    },
    {
      symbol: 'd',
      meaning: 'diameter of the metal, as tables have it',
      formula: 'm * u',
      unit: 'mm',
      latex: 'd',
      source: 'astm-b258-rounded',
      core: 'diameter',
      when: 'rounded',
    },
    { symbol: 'A', meaning: 'area of the metal', formula: 'pi / 4 * d^2', unit: 'mm²', latex: 'A', source: 'astm-b258', core: 'area' },
    {
      symbol: 'r_20',
      meaning: 'resistance of one metre of one conductor at 20 °C',
      formula: '1 / (sigma * A)',
      unit: 'Ω/m',
      latex: 'r_{20}',
      source: 'circuit-laws',
      core: 'resistancePerMetre',
      when: 'solid',
    },
    {
      symbol: 'r_20',
      meaning: 'resistance of one metre of one conductor at 20 °C',
      formula: 'k / (sigma * A)',
      unit: 'Ω/m',
      latex: 'r_{20}',
      source: 'circuit-laws',
      core: 'resistancePerMetre',
      when: 'stranded',
    },
  ],
  assumptions: ['Nominal diameter. A stranded conductor has the metal area of the solid one.'],
  validity: '4/0 to 40 AWG, at 20 °C, direct current.',
  cautions: [],
  slips: [{ slip: 'diameter-for-radius', steps: { A: 'pi * d^2' } }],
  guard: (input) => {
    requireObject(input, 'input', 'an object with size');
    const { size, ...options } = input;
    return awg(size, options);
  },
  read: readAwg,
};

function readAwg(input: AwgWorkingInput): Reading {
  const { size, strands, material: name = 'annealed-copper', family = 'formula' } = input;
  const stranding = input.stranding ?? (strands === undefined ? 'solid' : 'stranded');
  // Tinned and hard-drawn copper are graded by the diameter of the strand: which grade, is looked up.
  const { diameter } = awg(size, { family });
  const wire = stranding === 'solid' ? diameter : diameter / Math.sqrt(strands ?? 7);
  return {
    values: { n: gaugeNumber(size), d_36: 0.127, q: 92, u: 0.00254, k: 1.02, sigma: material({ name, diameter: wire }).conductivity },
    cases: [family === 'formula' ? 'formula' : 'rounded', stranding, name === 'annealed-copper' ? 'copper' : 'metal'],
  };
}
