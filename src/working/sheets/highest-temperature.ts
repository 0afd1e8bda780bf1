/** How hot: each limit as a resistance, as the most that one metre may have, and as a temperature; the lowest of these. @module */
import { givens, steps } from '../rows.ts';
import type { Sheet } from '../sheet.ts';
import { connectionGivens } from './connection-steps.ts';
import { asked, type HighestTemperatureInput, readOpen, TOO_COLD, TOO_HOT } from './highest-temperature-reading.ts';
import {
  highestSupplyGiven,
  LOOP,
  mostResistanceSteps,
  OUT_AND_BACK,
  portPowerGiven,
  resistanceLimitGivens,
  supplyGiven,
} from './limit-steps.ts';
import { AT_MOST, legGivens, lineLengthGiven, TWO_WIRE } from './line-steps.ts';
import { openGivens, openLineKeys, openRunKeys, openSteps } from './open-run.ts';
import { loadGivens, POWER } from './point-steps.ts';
import { CORDS, cordGivens, POWERED, pieceGivens, restSteps } from './run-steps.ts';
import { loadKeys, twentyGiven } from './shared.ts';

export type { HighestTemperatureInput } from './highest-temperature-reading.ts';

const NOT_EVEN = 'no temperature meets the limit on @: even a run of no resistance misses it';

export const highestTemperatureSheet: Sheet<HighestTemperatureInput> = {
  title: 'The highest temperature at which a run holds',
  core: 'highestTemperature',
  keys: [...new Set([...openRunKeys, 'pdPower', 'pseVoltage', ...openLineKeys, 'supplyVoltage', ...loadKeys])],
  givens: [
    supplyGiven,
    highestSupplyGiven,
    ...loadGivens,
    portPowerGiven,
    ...legGivens,
    lineLengthGiven,
    ...pieceGivens.filter(({ symbol }) => symbol !== 'T_#'),
    twentyGiven,
    ...connectionGivens,
    ...cordGivens,
    ...openGivens,
    ...resistanceLimitGivens,
    ...givens([
      ['T_cold', '°C', 'the lowest temperature that is looked at', 'the range of temperatures', { when: TOO_COLD }],
      ['T_hot', '°C', 'the highest temperature that is looked at', 'the range of temperatures', { when: TOO_HOT }],
    ]),
  ],
  steps: [
    ...openSteps('temperature'),
    ...steps([
      ['r20', 'Ω/m', '2 * rl20_1', 'one metre of run at 20 °C, out and back', { when: 'equal' }],
      ['alpha', '1/K', 'alphal_1', 'its temperature coefficient', { when: 'equal' }],
      ['r20', 'Ω/m', 'rl20_1 + rl20_2', 'one metre of run at 20 °C, out and back', { when: 'unequal' }],
      ['alpha', '1/K', '(rl20_1 * alphal_1 + rl20_2 * alphal_2) / r20', 'its temperature coefficient, each wire by its share', { when: 'unequal' }],
      ['L', 'm', '[L_#]', 'installed length, one way', { when: POWERED }],
      ['r20', 'Ω/m', '([r20_# * L_#]) / L', 'one metre of one conductor at 20 °C, on the average', { when: POWERED }],
      ['alpha', '1/K', '([r20_# * alpha_# * L_#]) / (r20 * L)', 'its temperature coefficient, each piece by its share', { when: POWERED }],
    ]),
    ...restSteps,
    ...mostResistanceSteps({ says: NOT_EVEN, steps: [] }),
    ...steps([
      ['q_#', 'Ω/m', '(X_# / f_# - R_0) / L', '@: what one metre may have, the rest of the run taken off', { source: 'three-loops', each: 'limit', when: LOOP }],
      ['q_#', 'Ω/m', '(X_# - R_0) / L', '@: what one metre may have, out and back, the joints taken off', { each: 'limit', when: OUT_AND_BACK }],
      ['T_#', '°C', 'T_ref + (q_# / r20 - 1) / alpha', '@: the temperature at which it has just that', { each: 'limit', core: '<limit>' }],
      ['T', '°C', 'min([T_#,])', 'the highest temperature, the lowest of these, set by', { least: ['T_#'], core: 'temperature', when: 'bounded' }],
      ['T_left', 'K', 'T - T_cold', 'how far it lies above the lowest that is looked at', { when: TOO_COLD, no: { says: 'no temperature is cool enough, not even the lowest that is looked at', steps: [] } }],
      ['T_left', 'K', 'T_hot - T', 'how far it lies under the highest that is looked at', { when: TOO_HOT, no: { says: 'no temperature that is looked at is too hot: nothing bounds it', steps: [] } }],
    ]),
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; all installed wire at one temperature, cords at their own.`],
  validity: 'From -100 to 400 °C, by the straight line of resistance against temperature.',
  cautions: [
    'What the insulation of a cable bears is on its data sheet and is usually met first. Heat in bundles and ampacity are for the local code and a licensed practitioner.',
  ],
  slips: [
    { slip: 'one-way-length', when: TWO_WIRE, steps: { r20: 'rl20_1' } },
    { slip: 'cold-resistance', when: CORDS, givens: { 'Tc_#': 'T_ref' } },
    { slip: 'power-at-wrong-end', when: `line, ${POWER}`, steps: { 'X_#': '(V - U_#) / (P / V)' } },
    { slip: 'percent-of-wrong-voltage', givens: { 'k_#': 'k_# / (1 + k_#)' } },
    { slip: 'pair-loop-for-pairset', when: 'one pairset', givens: { 'f_#': '2' } },
    { slip: 'pairset-for-four-pair', when: 'two pairsets', givens: { 'f_#': '1' } },
  ],
  guard: asked.guard,
  read: readOpen,
};

