/** A powered device behind a run: the givens and steps that several sheets share. @module */
import type { SheetGiven, SheetStep } from '../sheet.ts';

/** What the device draws: as stated, or all that its class allows. */
export const drawGivens: readonly SheetGiven[] = [
  { symbol: 'P', meaning: 'power that the device draws', unit: 'W', latex: 'P_{\\mathrm{PD}}', core: 'pdPower', when: 'draw stated' },
  {
    symbol: 'P',
    meaning: 'power that the device draws: all that its class allows',
    unit: 'W',
    latex: 'P_{\\mathrm{PD}}',
    core: 'pdPower',
    source: 'ieee-802.3-class',
    when: 'draw of the class',
  },
];

/** Where no voltage is stated. */
export const typeVoltageGiven: SheetGiven = {
  symbol: 'V',
  meaning: 'voltage at the port: the lowest of its type',
  unit: 'V',
  latex: 'V_{\\mathrm{PSE}}',
  core: 'pseVoltage',
  source: 'ieee-802.3-pse-voltage',
  when: 'voltage of the type',
};

/** A loop that is stated as it is. */
export const loopGiven: SheetGiven = {
  symbol: 'R',
  meaning: 'resistance of the loop that power sees',
  unit: 'Ω',
  latex: 'R',
  core: 'resistance',
  when: 'loop',
};

/** One conductor of a run, and how many pairsets share the current. */
export const wireGivens: readonly SheetGiven[] = [
  {
    symbol: 'R_w',
    meaning: 'one conductor of the run, end to end; runResistance works it out',
    unit: 'Ω',
    latex: 'R_{w}',
    core: 'resistance.twoPair',
    when: 'run',
  },
  { symbol: 'm', meaning: 'pairsets that carry power', unit: '1', latex: 'm', core: 'pairs', source: 'ieee-802.3-class' },
];

/** From one conductor to the loop. */
export const loopOfRunStep: SheetStep = {
  symbol: 'R',
  meaning: 'resistance of the loop that power sees: a pairset is one conductor’s worth',
  formula: 'R_w / m',
  unit: 'Ω',
  latex: 'R',
  source: 'three-loops',
  core: 'resistance',
  when: 'run',
};

/** The whole current, parted over pairsets and over the wires of a pair. */
export const pairsetCurrentStep: SheetStep = {
  symbol: 'I_set',
  meaning: 'current of one pairset',
  formula: 'I / m',
  unit: 'A',
  latex: 'I_{\\mathrm{set}}',
  source: 'circuit-laws',
};
export const wireCurrentStep: SheetStep = {
  symbol: 'I_wire',
  meaning: 'current of one wire of a pair',
  formula: 'I_set / 2',
  unit: 'A',
  latex: 'I_{\\mathrm{wire}}',
  source: 'circuit-laws',
};
