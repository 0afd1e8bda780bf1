/** A short at the far end: the least current into it, and whether it opens what protects the line. @module */
import { type FarEndFaultInput, farEndFaultCurrent } from '../../circuit/far-end-fault.ts';
import type { Reading, Sheet } from '../sheet.ts';
import { legGivens, legSteps, lineLengthGiven, lineReading, lineTemperatureGiven } from './line-steps.ts';
import { temperatureAssumption, twentyGiven } from './shared.ts';

/** Some length of line is protected. */
const SOME = 'some length';
/** The supply alone passes too little. */
const NONE = 'no length';

export const farEndFaultCurrentSheet: Sheet<FarEndFaultInput> = {
  title: 'Current into a short at the far end',
  core: 'farEndFaultCurrent',
  keys: ['supplyVoltage', 'conductor', 'out', 'back', 'length', 'temperature', 'sourceResistance', 'tripCurrent'],
  givens: [
    { symbol: 'V', meaning: 'voltage of the supply, the lowest it may have', unit: 'V', latex: 'V', core: 'supplyVoltage' },
    { symbol: 'R_S', meaning: 'resistance inside the supply', unit: 'Ω', latex: 'R_{S}', core: 'sourceResistance' },
    ...legGivens,
    lineTemperatureGiven,
    twentyGiven,
    lineLengthGiven,
    {
      symbol: 'I_trip',
      meaning: 'current that surely opens the protective device',
      unit: 'A',
      latex: 'I_{\\mathrm{trip}}',
      core: 'tripCurrent',
    },
  ],
  steps: [
    ...legSteps,
    {
      symbol: 'R',
      meaning: 'supply and line, out and back, at their highest resistance',
      formula: 'r * L + R_S',
      unit: 'Ω',
      latex: 'R',
      source: 'circuit-laws',
      core: 'resistance',
    },
    {
      symbol: 'L_max',
      meaning: 'longest line whose far end still opens the device',
      formula: '(V / I_trip - R_S) / r',
      unit: 'm',
      latex: 'L_{\\max}',
      source: 'circuit-laws',
      core: 'longestProtected',
      when: SOME,
    },
    {
      symbol: 'I_0',
      meaning: 'current into a short at the supply itself: even that does not open the device',
      formula: 'V / R_S',
      unit: 'A',
      latex: 'I_{0}',
      source: 'circuit-laws',
      when: NONE,
    },
    {
      symbol: 'L_max',
      meaning: 'longest line whose far end still opens the device: none',
      formula: '0',
      unit: 'm',
      latex: 'L_{\\max}',
      source: 'circuit-laws',
      core: 'longestProtected',
      when: NONE,
    },
    {
      symbol: 'I_F',
      meaning: 'least current into a short at the far end',
      formula: 'V / R',
      unit: 'A',
      latex: 'I_{F}',
      source: 'circuit-laws',
      core: 'faultCurrent',
    },
    {
      symbol: 'k',
      meaning: 'how far the current lies above the trip current, as a fraction of it',
      formula: '(I_F - I_trip) / I_trip',
      unit: '1',
      latex: 'k',
      source: 'circuit-laws',
      core: 'check.marginFraction',
    },
    {
      symbol: 'I_more',
      meaning: 'margin over the trip current; under 0 the short does not open the device',
      formula: 'I_F - I_trip',
      unit: 'A',
      latex: 'I_{\\mathrm{more}}',
      source: 'circuit-laws',
      core: 'check.margin',
    },
  ],
  assumptions: ['A bolted short. The least current counts: the lowest voltage, the thinnest and hottest conductors.'],
  validity: 'Steady direct current by Ohm’s law. How fast a device opens at that current is on its own curve.',
  cautions: [
    'A fault that does not open its protective device can set a line on fire. The device, its curve and its place are for a licensed practitioner and the local code.',
  ],
  slips: [
    { slip: 'one-way-length', steps: { r: 'rl_1' } },
    { slip: 'cold-resistance', givens: { T: 'T_ref' } },
    { slip: 'source-resistance-left-out', givens: { R_S: '0 * R_S' } },
  ],
  guard: farEndFaultCurrent,
  read: readFault,
};

function readFault(input: FarEndFaultInput): Reading {
  const { supplyVoltage: V, tripCurrent, sourceResistance = 0, temperature } = input;
  const { values, cases, rows } = lineReading(input);
  return {
    values: { ...values, V, R_S: sourceResistance, I_trip: tripCurrent },
    cases: [...cases, V / tripCurrent > sourceResistance ? SOME : NONE],
    rows,
    assumptions: [
      ...temperatureAssumption(temperature),
      ...(input.sourceResistance === undefined ? ['The supply itself has no resistance: none was stated.'] : []),
    ],
  };
}
