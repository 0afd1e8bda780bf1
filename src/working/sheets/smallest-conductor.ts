/** What gauge: every candidate beside the most that one metre may have, and the thinnest that passes. @module */
import { givens, steps } from '../rows.ts';
import type { Sheet } from '../sheet.ts';
import { connectionGivens } from './connection-steps.ts';
import {
  highestSupplyGiven,
  LOOP,
  mostResistanceSteps,
  OUT_AND_BACK,
  portPowerGiven,
  resistanceLimitGivens,
  supplyGiven,
} from './limit-steps.ts';
import { AT_MOST, TWO_WIRE } from './line-steps.ts';
import { openGivens, openLineKeys, openRunKeys, openSteps } from './open-run.ts';
import { loadGivens } from './point-steps.ts';
import { cordGivens, POWERED, restSteps } from './run-steps.ts';
import { loadKeys, twentyGiven } from './shared.ts';
import { asked, BOUNDED, COPPER, FREE, NONE, NOT_COPPER, readOpen, type SmallestConductorInput } from './smallest-conductor-reading.ts';

export type { SmallestConductorInput } from './smallest-conductor-reading.ts';

const restNo = { says: 'no conductor meets the limit on @: the rest of the run misses it alone', steps: [] };

export const smallestConductorSheet: Sheet<SmallestConductorInput> = {
  title: 'The smallest conductor that will do',
  core: 'smallestConductor',
  keys: [
    ...new Set([
      'candidates',
      ...openRunKeys.filter((key) => key !== 'installed'),
      'pdPower',
      'pseVoltage',
      ...openLineKeys.filter((key) => !['conductor', 'out', 'back'].includes(key)),
      'supplyVoltage',
      ...loadKeys,
    ]),
  ],
  givens: [
    supplyGiven,
    highestSupplyGiven,
    ...loadGivens,
    portPowerGiven,
    ...givens([
      ['L', 'm', 'length of the run, one way', 'length'],
      ['T', '°C', 'temperature of the conductors', 'temperature'],
    ]),
    twentyGiven,
    ...connectionGivens,
    ...cordGivens,
    ...openGivens,
    ...resistanceLimitGivens,
    ...givens([
      ['r20_#', 'Ω/m', `@: one metre of one conductor at 20 °C, ${AT_MOST}`, 'candidates[]'],
      ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', 'candidates[]'],
    ], { source: 'row', each: 'candidate' }),
  ],
  steps: [
    ...openSteps('conductor'),
    ...restSteps,
    ...mostResistanceSteps({ says: 'no conductor meets the limit on @: even one of no resistance misses it', steps: [] }),
    ...steps([
      ['Y_#', 'Ω', 'X_# / f_# - R_0', '@: what the whole of the wire may have, the rest of the run taken off', { source: 'three-loops', each: 'limit', when: LOOP, no: restNo }],
      ['Y_#', 'Ω', 'X_# - R_0', '@: what the wire may have, out and back, the joints taken off', { each: 'limit', when: OUT_AND_BACK, no: restNo }],
      ['Y', 'Ω', 'min([Y_#,])', 'the least of these, set by', { least: ['Y_#'], when: BOUNDED }],
      ['q', 'Ω/m', 'Y / (2 * L)', 'the most that one metre of one conductor may have: there are two, out and back', { when: `${BOUNDED}, ${TWO_WIRE}` }],
      ['q', 'Ω/m', 'Y / L', 'the most that one metre of one conductor may have', { source: 'three-loops', when: `${BOUNDED}, ${POWERED}` }],
      ['r_#', 'Ω/m', 'r20_# * (1 + alpha_# * (T - T_ref))', '@: one metre at its temperature', { each: 'candidate' }],
      ['d_#', 'Ω/m', 'q - r_#', '@: what is left of the most; under 0 it is too thin', { each: 'candidate', when: BOUNDED }],
      ['p_#', 'Ω/m', 'r20_# * round(q / (q + r_#))', '@: counted at 20 °C where the most is no less than it has, and not at all where it is too thin', { each: 'candidate', when: COPPER }],
      ['p_#', 'Ω/m', 'r20_#', '@: counted at 20 °C, for nothing bounds it', { each: 'candidate', when: FREE }],
      ['p_#', 'Ω/m', '0 * r20_#', '@: not counted, for it is not copper', { source: 'copper-conductors', each: 'candidate', when: NOT_COPPER }],
      ['d_most', 'Ω/m', 'max([d_#,])', 'what the one with the least resistance has left of the most', { when: NONE, no: { says: 'none of these is thick enough', steps: [] } }],
      ['p', 'Ω/m', 'max([p_#,])', 'the thinnest that passes has the most at 20 °C: it is @', { each: 'chosen', core: 'candidates[@].resistancePerMetre' }],
    ]),
  ],
  tables: [{ title: 'The candidates, thinnest first', row: 'candidate', lists: ['candidate'] }],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity:
    'Thinnest means most resistance. A stated ampacity is held against the current, whichever conductor it is; what each may carry, and what it must be for its place, is not looked at.',
  cautions: [
    'Ampacity, the protective device and the insulation are for the local code and a licensed practitioner: they may ask for a thicker one.',
  ],
  slips: [
    { slip: 'one-way-length', when: TWO_WIRE, steps: { q: 'Y / L' } },
    { slip: 'cold-resistance', givens: { T: 'T_ref', 'Tc_#': 'T_ref' } },
    { slip: 'pair-loop-for-pairset', when: 'one pairset', givens: { 'f_#': '2' } },
    { slip: 'pairset-for-four-pair', when: 'two pairsets', givens: { 'f_#': '1' } },
  ],
  guard: asked.guard,
  read: readOpen,
};

