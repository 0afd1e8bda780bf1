/** A two-wire DC circuit: the drop along its conductors. @module */
import { givens, steps } from '../rows.ts';
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
    ...givens([
      ['V', 'V', 'voltage at the supply', 'supplyVoltage'],
    ]),
    ...loadGivens,
    ...givens([
      ['L', 'm', 'length of the run, one way', 'length'],
      ['r20_#', 'Ω/m', '@: one metre at 20 °C', 'conductor, or out and back', { source: 'row', each: 'leg' }],
      ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', 'conductor, or out and back', { source: 'row', each: 'leg', when: 'warm leg' }],
      ['T', '°C', 'temperature of the conductors', 'temperature', { when: 'warm' }],
    ]),
    { ...twentyGiven, when: 'warm' },
  ],
  steps: [
    ...steps([
      ['r_#', 'Ω/m', 'r20_# * (1 + alpha_# * (T - T_ref))', '@: one metre at its temperature', { each: 'leg', when: 'warm leg' }],
      ['r_#', 'Ω/m', 'r20_#', '@: one metre, at 20 °C', { each: 'leg', when: 'cold leg' }],
      ['R', 'Ω', '2 * r_1 * L', 'loop resistance: out and back, two conductors in series', { when: 'equal' }],
      ['R', 'Ω', '(r_1 + r_2) * L', 'loop resistance: out and back, in series', { when: 'unequal' }],
    ]),
    ...currentSteps,
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

