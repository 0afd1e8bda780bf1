/** Diameter, area and resistance of an AWG conductor. @module */
import { givens, steps } from '../rows.ts';
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
  givens: givens([
    ['n', '1', 'gauge number; 1/0 is 0, 2/0 is -1', 'size'],
    ['d_36', 'mm', 'diameter of 36 AWG', 'the gauge', { source: 'astm-b258' }],
    ['q', '1', 'diameter of 4/0 over that of 36 AWG, 39 steps apart', 'the gauge', { source: 'astm-b258' }],
    ['u', 'mm', 'to what tables round a diameter, 0.0001 in', 'family', { source: 'astm-b258-rounded', when: 'rounded' }],
    ['k', '1', 'length of a strand over that of the cable it is laid in', 'stranding', { source: 'astm-b496', when: 'stranded' }],
    ['sigma', 'MS/m', 'conductivity of the metal at 20 °C', 'material', { source: 'iec-60028', when: 'copper' }],
    ['sigma', 'MS/m', 'conductivity of the metal at 20 °C', 'material', { when: 'metal' }],
  ]),
  steps: steps([
    ['d', 'mm', 'd_36 * q^((36 - n) / 39)', 'diameter of the metal', { source: 'astm-b258', core: 'diameter', when: 'formula' }],
    ['m', '1', 'round(d_36 * q^((36 - n) / 39) / u)', 'diameter in steps of the table', { source: 'astm-b258-rounded', when: 'rounded' }],
    ['d', 'mm', 'm * u', 'diameter of the metal, as tables have it', { source: 'astm-b258-rounded', core: 'diameter', when: 'rounded' }],
    ['A', 'mm²', 'pi / 4 * d^2', 'area of the metal', { source: 'astm-b258', core: 'area' }],
    ['r_20', 'Ω/m', '1 / (sigma * A)', 'resistance of one metre of one conductor at 20 °C', { core: 'resistancePerMetre', when: 'solid' }],
    ['r_20', 'Ω/m', 'k / (sigma * A)', 'resistance of one metre of one conductor at 20 °C', { core: 'resistancePerMetre', when: 'stranded' }],
  ]),
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
    values: { n: gaugeNumber(size), d_36: 0.127, q: 92, u: 0.00254, k: 1.02, sigma: material(name, { diameter: wire }).conductivity },
    cases: [family === 'formula' ? 'formula' : 'rounded', stranding, name === 'annealed-copper' ? 'copper' : 'metal'],
  };
}

