/** A powered device behind a run: the givens and steps that several sheets share. @module */
import { given, givens, step } from '../rows.ts';
import type { SheetGiven, SheetStep } from '../sheet.ts';

/** What the device draws: as stated, or all that its class allows. */
export const drawGivens: readonly SheetGiven[] = givens([
  ['P', 'W', 'power that the device draws', 'pdPower', { when: 'draw stated' }],
  ['P', 'W', 'power that the device draws: all that its class allows', 'pdPower', { source: 'ieee-802.3-class', when: 'draw of the class' }],
], { latex: 'P_{\\mathrm{PD}}' });

/** Where no voltage is stated. */
export const typeVoltageGiven: SheetGiven = given('V', 'V', 'voltage at the port: the lowest of its type', 'pseVoltage', { latex: 'V_{\\mathrm{PSE}}', source: 'ieee-802.3-pse-voltage', when: 'voltage of the type' });

/** A loop that is stated as it is. */
export const loopGiven: SheetGiven = given('R', 'Ω', 'resistance of the loop that power sees', 'resistance', { when: 'loop' });

/** One conductor of a run, and how many pairsets share the current. */
export const wireGivens: readonly SheetGiven[] = givens([
  ['R_w', 'Ω', 'one conductor of the run, end to end; runResistance works it out', 'resistance.twoPair', { when: 'run' }],
  ['m', '1', 'pairsets that carry power', 'pairs', { source: 'ieee-802.3-class' }],
]);

/** From one conductor to the loop. */
export const loopOfRunStep: SheetStep = step('R', 'Ω', 'R_w / m', 'resistance of the loop that power sees: a pairset is one conductor’s worth', { source: 'three-loops', core: 'resistance', when: 'run' });

/** The whole current, parted over pairsets and over the wires of a pair. */
export const pairsetCurrentStep: SheetStep = step('I_set', 'A', 'I / m', 'current of one pairset');
export const wireCurrentStep: SheetStep = step('I_wire', 'A', 'I_set / 2', 'current of one wire of a pair');

