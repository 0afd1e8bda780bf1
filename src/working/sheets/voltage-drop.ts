/** A two-wire DC circuit: the drop along its conductors. @module */
import { type VoltageDropInput, voltageDrop } from '../../circuit/voltage-drop.ts';
import type { Conductor } from '../../conductor/conductor.ts';
import type { Reading, Sheet } from '../sheet.ts';
import { currentSteps, dropStep, loadGivens, loadReading, pointSlips, powerSteps, voltageSteps } from './point-steps.ts';
import { circuitKeys, coefficientSource, temperatureAssumption, twentyGiven } from './shared.ts';

export const voltageDropSheet: Sheet<VoltageDropInput> = {
  title: 'Voltage drop of a two-wire circuit',
  core: 'voltageDrop',
  keys: [...circuitKeys, 'length'],
  givens: [
    { symbol: 'V', meaning: 'voltage at the supply', unit: 'V', latex: 'V', core: 'supplyVoltage' },
    ...loadGivens,
    { symbol: 'L', meaning: 'length of the run, one way', unit: 'm', latex: 'L', core: 'length' },
    {
      symbol: 'r20_#',
      meaning: '@: one metre at 20 °C',
      unit: 'Ω/m',
      latex: 'r_{20,#}',
      core: 'conductor, or out and back',
      source: 'row',
      each: 'leg',
    },
    {
      symbol: 'alpha_#',
      meaning: '@: temperature coefficient at 20 °C',
      unit: '1/K',
      latex: '\\alpha_{#}',
      core: 'conductor, or out and back',
      source: 'row',
      each: 'leg',
      when: 'warm leg',
    },
    { symbol: 'T', meaning: 'temperature of the conductors', unit: '°C', latex: 'T', core: 'temperature', when: 'warm' },
    { ...twentyGiven, when: 'warm' },
  ],
  steps: [
    {
      symbol: 'r_#',
      meaning: '@: one metre at its temperature',
      formula: 'r20_# * (1 + alpha_# * (T - T_ref))',
      unit: 'Ω/m',
      latex: 'r_{#}',
      source: 'circuit-laws',
      each: 'leg',
      when: 'warm leg',
    },
    {
      symbol: 'r_#',
      meaning: '@: one metre, at 20 °C',
      formula: 'r20_#',
      unit: 'Ω/m',
      latex: 'r_{#}',
      source: 'circuit-laws',
      each: 'leg',
      when: 'cold leg',
    },
    {
      symbol: 'R',
      meaning: 'loop resistance: out and back, two conductors in series',
      formula: '2 * r_1 * L',
      unit: 'Ω',
      latex: 'R',
      source: 'circuit-laws',
      when: 'equal',
    },
    {
      symbol: 'R',
      meaning: 'loop resistance: out and back, in series',
      formula: '(r_1 + r_2) * L',
      unit: 'Ω',
      latex: 'R',
      source: 'circuit-laws',
      when: 'unequal',
    },
    ...currentSteps,
    // A current that the line does not pass must be seen before the drop that it would make.
    ...voltageSteps,
    ...powerSteps,
    dropStep,
  ],
  assumptions: [
    'Direct current, steady state. Joints are not included.',
    'The conductors are taken as they are stated: nominal ones give a nominal drop.',
  ],
  validity: 'A two-wire circuit, its conductors at one temperature.',
  cautions: [
    'A drop within limits says nothing of whether the conductor and its protective device suit each other: the local code and a licensed practitioner come first.',
  ],
  slips: [...pointSlips, { slip: 'one-way-length', steps: { R: 'r_1 * L' } }, { slip: 'cold-resistance', givens: { T: 'T_ref' } }],
  guard: voltageDrop,
  read: readCircuit,
};

function readCircuit(input: VoltageDropInput): Reading {
  const { supplyVoltage, length, temperature, load, conductor } = input;
  const loaded = loadReading(load);
  const legs: (readonly [string, Conductor])[] =
    conductor === undefined
      ? [
          ['out', input.out],
          ['back', input.back],
        ]
      : [['one conductor', conductor]];
  const isWarm = legs.some(([, leg]) => leg.temperatureCoefficient !== undefined);
  return {
    values: { ...loaded.values, V: supplyVoltage, L: length, T: temperature ?? 20, T_ref: 20 },
    cases: [...loaded.cases, conductor === undefined ? 'unequal' : 'equal', ...(isWarm ? ['warm'] : [])],
    rows: {
      leg: legs.map(([way, { name, resistancePerMetre, temperatureCoefficient, source }]) => ({
        label: `${way}, ${name}`,
        values: { 'r20_#': resistancePerMetre, ...(temperatureCoefficient === undefined ? {} : { 'alpha_#': temperatureCoefficient }) },
        cases: [temperatureCoefficient === undefined ? 'cold leg' : 'warm leg'],
        source,
        sources: { 'alpha_#': coefficientSource(temperatureCoefficient) },
      })),
    },
    assumptions: temperatureAssumption(temperature),
  };
}
