/** A short at the far end: the least current into it, and whether it opens what protects the line. @module */
import { givens, steps } from '../rows.ts';
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
    ...givens([
      ['V', 'V', 'voltage of the supply, the lowest it may have', 'supplyVoltage'],
      ['R_S', 'Ω', 'resistance inside the supply', 'sourceResistance'],
    ]),
    ...legGivens,
    lineTemperatureGiven,
    twentyGiven,
    lineLengthGiven,
    ...givens([
      ['I_trip', 'A', 'current that surely opens the protective device', 'tripCurrent'],
    ]),
  ],
  steps: [
    ...legSteps,
    ...steps([
      ['R', 'Ω', 'r * L + R_S', 'supply and line, out and back, at their highest resistance', { core: 'resistance' }],
      ['L_max', 'm', '(V / I_trip - R_S) / r', 'longest line whose far end still opens the device', { core: 'longestProtected', when: SOME }],
      ['I_0', 'A', 'V / R_S', 'current into a short at the supply itself: even that does not open the device', { when: NONE }],
      ['L_max', 'm', '0', 'longest line whose far end still opens the device: none', { core: 'longestProtected', when: NONE }],
      ['I_F', 'A', 'V / R', 'least current into a short at the far end', { core: 'faultCurrent' }],
      ['k', '1', '(I_F - I_trip) / I_trip', 'how far the current lies above the trip current, as a fraction of it', { core: 'check.marginFraction' }],
      ['I_more', 'A', 'I_F - I_trip', 'margin over the trip current; under 0 the short does not open the device', { core: 'check.margin' }],
    ]),
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

