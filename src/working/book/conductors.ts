/** A wire: its gauge, its metal, its temperature. @module */

import { USUAL_STRANDS } from '../../conductor/awg.ts';
import { COPPER_COEFFICIENT, LAY_ALLOWANCE } from '../../conductor/copper-standard.ts';
import { gaugeNumber } from '../../conductor/gauge.ts';
import {
  type AwgOptions,
  type AwgSize,
  awg,
  type Conductor,
  type LineAtTemperature,
  type LoopResistanceInput,
  loopResistance,
  resistanceAtTemperature,
  resistancePerMetre,
  type UniformWireInput,
  uniformWire,
} from '../../conductor/index.ts';
import { material } from '../../conductor/material.ts';
import { CONDUCTOR_TEMPERATURE } from '../../conductor/resistance-per-metre.ts';
import { requireObject } from '../../quantity/guards.ts';
import type { Celsius } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { all, type BookSheet, given, givens, steps } from '../engine/rows.ts';
import type { Reading, SheetGiven } from '../engine/sheet.ts';

/** Where nothing else is stated, and where resistances are. [°C] */
export const TWENTY: number = CONDUCTOR_TEMPERATURE.default;

/** The reference temperature. */
export const twentyGiven: SheetGiven<never> = given('T_ref', '°C', 'reference temperature', 'the temperature coefficient', {
  source: 'iec-60028',
  value: 20,
});

/** Where a temperature coefficient comes from, if it is that of annealed copper. */
export function coefficientSource(coefficient: number | undefined): SourceKey | undefined {
  return coefficient === COPPER_COEFFICIENT ? 'iec-60028' : undefined;
}

/** What is said where a temperature was left out. */
export function temperatureAssumption(temperature: number | undefined): string | false {
  return temperature === undefined && 'The conductor is at 20 °C: no temperature was stated.';
}

/** The arguments of `awg` in one object. */
export interface AwgWorkingInput extends AwgOptions {
  /** Gauge number from -3 (4/0) to 40, or `'1/0'` to `'4/0'`. */
  readonly size: AwgSize;
}

export const awgSheet: BookSheet<AwgWorkingInput, 'formula' | 'rounded' | 'solid' | 'stranded' | 'copper' | 'metal'> = {
  title: 'A conductor from its gauge',
  needs: ['size'],
  keys: ['stranding', 'material', 'family', 'strands'],
  // biome-ignore format: one figure a row
  givens: [
    ['n', '1', 'gauge number; 1/0 is 0, 2/0 is -1', 'size'],
    ['d_36', 'mm', 'diameter of 36 AWG', 'the gauge', { source: 'astm-b258', value: 0.127 }],
    ['q', '1', 'diameter of 4/0 over that of 36 AWG, 39 steps apart', 'the gauge', { source: 'astm-b258', value: 92 }],
    ['u', 'mm', 'to what tables round a diameter, 0.0001 in', 'family', { source: 'astm-b258-rounded', when: 'rounded', value: 0.00254 }],
    ['k', '1', 'length of a strand over that of the cable it is laid in', 'stranding', { source: 'astm-b496', when: 'stranded', value: 1 + LAY_ALLOWANCE }],
    ['sigma', 'MS/m', 'conductivity of the metal at 20 °C', 'material', { source: 'iec-60028', when: 'copper' }],
    ['sigma', 'MS/m', 'conductivity of the metal at 20 °C', 'material', { when: 'metal' }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    ['d', 'mm', 'd_36 * q^((36 - n) / 39)', 'diameter of the metal', { source: 'astm-b258', core: 'diameter', when: 'formula' }],
    ['m', '1', 'round(d_36 * q^((36 - n) / 39) / u)', 'diameter in steps of the table', { source: 'astm-b258-rounded', when: 'rounded' }],
    ['d', 'mm', 'm * u', 'diameter of the metal, as tables have it', { source: 'astm-b258-rounded', core: 'diameter', when: 'rounded' }],
    ['A', 'mm²', 'pi / 4 * d^2', 'area of the metal', { source: 'astm-b258', core: 'area' }],
    ['r_20', 'Ω/m', '1 / (sigma * A)', 'resistance of one metre of one conductor at 20 °C', { core: 'resistancePerMetre', when: 'solid' }],
    ['r_20', 'Ω/m', 'k / (sigma * A)', 'resistance of one metre of one conductor at 20 °C', { core: 'resistancePerMetre', when: 'stranded' }],
  ],
  assumptions: ['Nominal diameter. A stranded conductor has the metal area of the solid one.'],
  validity: '4/0 to 40 AWG, at 20 °C, direct current.',
  slips: [['diameter-for-radius', { A: 'pi * d^2' }]],
  guard: (input) => {
    requireObject(input, 'input', 'an object with size');
    const { size, ...options } = input;
    return awg(size, options);
  },
  read: ({
    size,
    strands,
    stranding = strands === undefined ? 'solid' : 'stranded',
    material: name = 'annealed-copper',
    family = 'formula',
  }) => {
    // Tinned and hard-drawn copper are graded by the diameter of the strand: which grade, is looked up.
    const { diameter } = awg(size, { family });
    const wire = stranding === 'solid' ? diameter : diameter / Math.sqrt(strands ?? USUAL_STRANDS);
    return {
      values: { n: gaugeNumber(size), sigma: material({ name, diameter: wire }).conductivity },
      cases: [family === 'formula' ? 'formula' : 'rounded', stranding, name === 'annealed-copper' ? 'copper' : 'metal'],
    };
  },
};

const WIRE = ['resistance', 'resistivity', 'length', 'area'] as const;
type WireFigure = (typeof WIRE)[number];

export const uniformWireSheet: BookSheet<UniformWireInput, `has ${WireFigure}` | `wants ${WireFigure}`> = {
  title: 'The law of a uniform wire',
  keys: WIRE,
  // biome-ignore format: one figure a row
  givens: [
    ['R', 'Ω', 'resistance', 'resistance', { when: 'has resistance' }],
    ['rho', 'Ω·mm²/m', 'resistivity of the metal at its temperature', 'resistivity', { when: 'has resistivity' }],
    ['L', 'm', 'length of the wire itself, out and back for a loop', 'length', { when: 'has length' }],
    ['A', 'mm²', 'area of the wire', 'area', { when: 'has area' }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    ['R', 'Ω', 'rho * L / A', 'resistance', { core: 'resistance', when: 'wants resistance' }],
    ['rho', 'Ω·mm²/m', 'R * A / L', 'resistivity', { core: 'resistivity', when: 'wants resistivity' }],
    ['L', 'm', 'R * A / rho', 'length', { core: 'length', when: 'wants length' }],
    ['A', 'mm²', 'rho * L / R', 'area', { core: 'area', when: 'wants area' }],
  ],
  assumptions: ['The same metal and area all along.'],
  validity: 'Direct current, any metal, any shape of cross-section.',
  slips: [
    ['one-way-length', { L: 'L / 2' }],
    ['one-way-length', { L: 'R * A / rho / 2' }],
  ],
  guard: uniformWire,
  read: (input) => ({ cases: WIRE.map((name) => (input[name] === undefined ? (`wants ${name}` as const) : (`has ${name}` as const))) }),
};

type Warmth = 'warm' | 'cold';

// biome-ignore format: one figure a row
const conductorGivens = givens<Warmth>([
  ['r_20', 'Ω/m', 'resistance of one metre of one conductor at 20 °C', 'conductor.resistancePerMetre', { source: 'row' }],
  ['alpha', '1/K', 'temperature coefficient of resistance at 20 °C', 'conductor.temperatureCoefficient', { source: 'row', when: 'warm' }],
  ['T', '°C', 'temperature of the conductor', 'temperature', { when: 'warm', value: 20 }],
]).concat(all([twentyGiven], { when: 'warm' }));

// biome-ignore format: one figure a row
const conductorSteps = steps([
  ['r', 'Ω/m', 'r_20 * (1 + alpha * (T - T_ref))', 'resistance of one metre at its temperature', { when: 'warm' }],
  ['r', 'Ω/m', 'r_20', 'resistance of one metre, at 20 °C', { when: 'cold' }],
]);

/** Where the figures of a conductor come from, and whether it can be warm. */
function readConductor(conductor: Conductor, temperature: number | undefined): Reading<Warmth> {
  const { source, temperatureCoefficient } = conductor;
  return {
    sources: { r_20: source, alpha: coefficientSource(temperatureCoefficient) },
    cases: [temperatureCoefficient === undefined ? 'cold' : 'warm'],
    assumptions: [temperatureAssumption(temperature)],
  };
}

/** The arguments of `resistancePerMetre` in one object. */
export interface ResistancePerMetreInput {
  readonly conductor: Conductor;
  /** Conductor temperature; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

export const resistancePerMetreSheet: BookSheet<ResistancePerMetreInput, Warmth> = {
  title: 'Resistance of a conductor at its temperature',
  needs: ['conductor'],
  keys: ['temperature'],
  givens: [conductorGivens],
  steps: [all(conductorSteps, { core: 'resistancePerMetre' })],
  assumptions: ['Resistance rises along a straight line with temperature.'],
  validity: 'For copper the straight line is within 0.45 % from 0 to 77 °C. The temperature is that of the conductor, not of the air.',
  slips: [['cold-resistance', { T: 'T_ref' }]],
  guard: (input) => {
    requireObject(input, 'input', 'an object with conductor');
    return resistancePerMetre(input.conductor, input.temperature);
  },
  read: ({ conductor, temperature }) => readConductor(conductor, temperature),
};

export const resistanceAtTemperatureSheet: BookSheet<LineAtTemperature, 'known elsewhere'> = {
  title: 'A resistance at another temperature',
  needs: ['resistance', 'temperature', 'coefficient', 'at'],
  keys: ['coefficientTemperature'],
  // biome-ignore format: one figure a row
  givens: [
    ['R_1', 'Ω', 'resistance that is known', 'resistance'],
    ['T_1', '°C', 'temperature at which it is known', 'temperature'],
    ['alpha', '1/K', 'temperature coefficient of resistance', 'coefficient'],
    ['T_0', '°C', 'temperature at which the coefficient is stated', 'coefficientTemperature', { value: 20 }],
    ['T_2', '°C', 'temperature that is asked about', 'at'],
  ],
  // biome-ignore format: one figure a row
  steps: [
    ['f_1', '1', '1 + alpha * (T_1 - T_0)', 'resistance at the known temperature over that at the reference'],
    ['f_2', '1', '1 + alpha * (T_2 - T_0)', 'the same at the temperature that is asked about'],
    ['R_2', 'Ω', 'R_1 * f_2 / f_1', 'resistance at the temperature that is asked about', { core: 'resistanceAtTemperature' }],
  ],
  assumptions: ['Resistance rises along a straight line with temperature.'],
  validity: 'For copper the straight line is good to 0.5 % from 0 to 77 °C.',
  slips: [
    ['twenty-left-out', { T_0: '0 * T_0' }],
    ['coefficient-from-wrong-temperature', { R_2: 'R_1 * (1 + alpha * (T_2 - T_1))' }, 'known elsewhere'],
    ['ratio-upside-down', { R_2: 'R_1 * f_1 / f_2' }],
    ['temperature-not-changed', { R_2: 'R_1' }],
  ],
  guard: resistanceAtTemperature,
  read: ({ temperature, coefficientTemperature }) => ({
    cases: [temperature !== (coefficientTemperature ?? TWENTY) && 'known elsewhere'],
    assumptions: [coefficientTemperature === undefined && 'The coefficient is that at 20 °C: no temperature was stated for it.'],
  }),
};

export const loopResistanceSheet: BookSheet<LoopResistanceInput, Warmth> = {
  title: 'Resistance of a loop of two equal conductors',
  needs: ['conductor', 'length'],
  keys: ['temperature'],
  // biome-ignore format: one figure a row
  givens: [
    conductorGivens,
    ['L', 'm', 'length of the run, one way', 'length'],
  ],
  // biome-ignore format: one figure a row
  steps: [
    conductorSteps,
    ['R', 'Ω', '2 * r * L', 'loop resistance: out and back, two conductors in series', { core: 'loopResistance' }],
  ],
  assumptions: ['Both conductors alike; joints are not included.'],
  validity: 'Direct current. One pair shorted at its far end, or a two-wire circuit.',
  slips: [
    ['one-way-length', { R: 'r * L' }],
    ['cold-resistance', { T: 'T_ref' }],
  ],
  guard: loopResistance,
  read: ({ conductor, temperature }) => readConductor(conductor, temperature),
};
