/** Meters at a run: what one should show, and source and line from two readings. @module */

import { readingBounds } from '../../cable/field/loaded-voltage.ts';
import { type ExpectedReadingInput, expectedReading, type LoadedVoltageInput, loadedVoltage } from '../../cable/index.ts';
import { type BookSheet, step, steps } from '../engine/rows.ts';
import type { Steps } from '../engine/sheet.ts';
import { boundedPieceGivens, boundedPieceRows, boundedPieceSteps } from './bounded-pieces.ts';
import { twentyGiven } from './conductors.ts';
import { connectionAssumption, connectionSource, MOST_OF_CONNECTION } from './joints.ts';
import { pieceAssumption } from './runs.ts';

/** The loop of each piece of a list: its bounds, and that of usual copper, which one expects. */
const loopSteps = (each: 'installed' | 'cords'): Steps<never> => [
  ...boundedPieceSteps(each, ' - s', ' + s'),
  step('Zu_#', 'Ω', '2 * rn_# * (1 + alpha_# * (T_# - T_ref)) * L_#', '@: its loop with usual conductors', { each }),
];

/** One conductor, or one pairset, where the loop is asked. */
const HALF = {
  'Rl_#': '(2 * n_# * R_0<least>) / 2',
  'Rh_#': '(2 * n_# * R_c<most>) / 2',
  'R_#': '(2 * n_# * R_c<usual>) / 2',
};

export const expectedReadingSheet: BookSheet<ExpectedReadingInput, never> = {
  title: 'What a meter should show on a shorted pair',
  needs: ['installed'],
  keys: ['cords', 'connections', 'linkConnections', 'connectionResistance', 'temperatureSpread'],
  // biome-ignore format: one figure a row
  givens: [
    boundedPieceGivens('installed'),
    boundedPieceGivens('cords'),
    twentyGiven,
    ['s', 'K', 'how far each temperature may be off, either side', 'temperatureSpread', { value: 0 }],
    ['R_c', 'Ω', 'one connection at most, one conductor', 'connectionResistance', { source: 'row', value: MOST_OF_CONNECTION }],
    ['R_0', 'Ω', 'one connection at least: nothing', 'connectionResistance'],
    ['n_#', '1', '@: connections', '@', { each: 'loop' }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    loopSteps('installed'),
    loopSteps('cords'),
    steps([
    ['Rl_#', 'Ω', '2 * n_# * R_0<least>', '@: reading at least, thick conductors at their coldest and connections of nothing', { core: '@.atTemperature.low' }],
    ['Rh_#', 'Ω', '2 * n_# * R_c<most>', '@: reading at most, all at their limits and their hottest', { core: '@.atTemperature.high' }],
    ['R_#', 'Ω', '2 * n_# * R_c<usual>', '@: what the meter should show, usual conductors and each connection at its highest resistance', { core: '@.atTemperature.value' }],
  ], { source: 'field-loop-reading', each: 'reading' }),
  ],
  tables: [['The loop of each piece', 'piece', 'installed', 'cords']],
  assumptions: ['The pair is shorted at its far end, the leads of the meter are nulled, and nothing is powered.'],
  validity:
    'Copper within its tolerance up to the limit of the cable. A reading outside the bounds is not of the run as described; one inside them may still be of another.',
  cautions: ['Never put an ohmmeter on a powered pair.'],
  slips: [
    ['one-way-length', HALF],
    ['pairset-for-pair-loop', HALF],
    ['cold-resistance', { 'T_#': 'T_ref' }],
    ['connections-left-out', { 'n_#': '0' }],
    ['connections-in-one-wire', { 'n_#': 'n_# / 2' }],
  ],
  guard: expectedReading,
  read: (input) => {
    const { installed, cords = [], connections = 0, connectionResistance, linkConnections = Math.min(connections, 3) } = input;
    const loop = (label: string, core: string, count: number, pieces: number) => {
      const sum = (symbol: string): string => Array.from({ length: pieces }, (_, index) => ` + ${symbol}_${index + 1}`).join('');
      return { label, core, values: { 'n_#': count }, links: { least: sum('Zl'), most: sum('Zh'), usual: sum('Zu') } };
    };
    const loops = [
      loop('permanent link', 'permanentLink', linkConnections, installed.length),
      loop('channel', 'channel', connections, installed.length + cords.length),
    ];
    return {
      values: { R_0: 0 },
      sources: { R_c: connectionSource(connectionResistance) },
      rows: { installed: boundedPieceRows(installed), cords: boundedPieceRows(cords, installed.length), loop: loops, reading: loops },
      assumptions: [
        connectionAssumption(input),
        pieceAssumption([...installed, ...cords]),
        input.linkConnections === undefined && connections > 0 && `Of the connections, ${linkConnections} lie in the permanent link.`,
      ],
    };
  },
};

/** Of the device; whether the readings bound the power; whether meters are exact. */
type LoadedCase = 'no device' | 'device' | 'device fed' | 'device not fed' | 'bounded' | 'accuracy' | 'drop' | 'no drop';

export const loadedVoltageSheet: BookSheet<LoadedVoltageInput, LoadedCase> = {
  title: 'Source and line, from the voltage without and with a load',
  needs: ['openVoltage', 'loadedVoltage', 'loadCurrent'],
  keys: ['minimumVoltage', 'voltageFraction', 'voltageFixed', 'currentFraction', 'currentFixed'],
  // biome-ignore format: one figure a row
  givens: [
    ['V_0', 'V', 'voltage at the far end, nothing drawn', 'openVoltage'],
    ['V', 'V', 'voltage at the far end, with the load on', 'loadedVoltage'],
    ['I', 'A', 'current through the load', 'current'],
    ['V_min', 'V', 'lowest voltage of the device that is to be fed', 'minimumVoltage', { when: 'device' }],
    ['k_V', '1', 'voltmeter may be off by this fraction of its reading', 'voltageAccuracy.fraction', { when: 'accuracy', value: 0 }],
    ['a_V', 'V', 'and by this besides', 'voltageAccuracy.fixed', { when: 'accuracy', value: 0 }],
    ['k_I', '1', 'ammeter may be off by this fraction of its reading', 'currentAccuracy.fraction', { when: 'accuracy', value: 0 }],
    ['a_I', 'A', 'and by this besides', 'currentAccuracy.fixed', { when: 'accuracy', value: 0 }],
  ],
  // No reading stands for less than nothing.
  // biome-ignore format: one figure a row
  steps: [
    ['P', 'W', 'V * I', 'power delivered to the load as it was read: both figures at its own end', { core: 'loadPower.value' }],
    steps([
    ['V_0lo', 'V', 'max(V_0 - (k_V * V_0 + a_V), 0)', 'open voltage, at least', { latex: 'V_{0,\\mathrm{lo}}' }],
    ['V_0hi', 'V', 'V_0 + (k_V * V_0 + a_V)', 'open voltage, at most', { latex: 'V_{0,\\mathrm{hi}}' }],
    ['V_lo', 'V', 'max(V - (k_V * V + a_V), 0)', 'loaded voltage, at least'],
    ['V_hi', 'V', 'V + (k_V * V + a_V)', 'loaded voltage, at most'],
    ['I_lo', 'A', 'max(I - (k_I * I + a_I), 0)', 'current, at least'],
    ['I_hi', 'A', 'I + (k_I * I + a_I)', 'current, at most'],
  ], { source: 'data-sheet', when: 'accuracy' }),
    ['R_lo', 'Ω', 'max(V_0lo - V_hi, 0) / I_hi', 'resistance of source and line at least, each meter off the way that lowers it', { core: 'resistance.low', when: 'accuracy' }],
    ['R_hi', 'Ω', '(V_0hi - V_lo) / I_lo', 'resistance of source and line at most', { core: 'resistance.high', when: 'accuracy' }],
    ['R', 'Ω', '(V_0 - V) / I', 'resistance of source and line together: what is lost, over the current that loses it', { core: 'resistance.value', when: 'drop' }],
    ['R', 'Ω', '0', 'resistance of source and line together: nothing is lost that the meter could tell', { core: 'resistance.value', when: 'no drop' }],
    ['P_max', 'W', 'V_0^2 / (4 * R)', 'most power that any load could get, with half of the open voltage left to it', { source: 'collapse', core: 'maximumPower.value', when: 'bounded' }],
    ['P_low', 'W', 'V_min * (V_0 - V_min) / R', 'power at which the far end is down to the lowest voltage of the device', { core: 'powerAtMinimum.value', when: 'bounded, device fed' }],
    ['P_low', 'W', '0', 'power at the lowest voltage of the device: none, the source has less even when nothing is drawn', { core: 'powerAtMinimum.value', when: 'bounded, device not fed' }],
    ['P_left', 'W', 'P_max - P', 'power that is left, under 0 where the load is already too much', { core: 'powerLeft.value', when: 'bounded, no device' }],
    ['P_left', 'W', 'min(P_max, P_low) - P', 'power that is left by whichever is less, under 0 where the load is already too much', { core: 'powerLeft.value', when: 'bounded, device' }],
  ],
  assumptions: ['Direct current; both readings taken within the same minute, of a source that acts as a voltage behind a resistance.'],
  validity:
    'Not for a supply that limits its current or folds back, and a line that warms up changes. With the accuracy of the meters the bounds of the resistance are shown; of the powers the figures that the readings give, without bounds.',
  cautions: ['Readings on a live line: above extra-low voltage only by licensed practice, as local code has it.'],
  slips: [
    ['open-for-loaded', { P: 'V_0 * I' }],
    ['load-for-line', { R: 'V / I' }],
    ['quarter-left-out', { P_max: 'V_0^2 / R' }],
    ['lowest-voltage-left-out', { P_left: 'P_max - P' }, 'device'],
    ['load-not-taken-off', { P_left: 'P_max' }, 'bounded, no device'],
    ['load-not-taken-off', { P_left: 'min(P_max, P_low)' }, 'device'],
  ],
  guard: loadedVoltage,
  read: ({ openVoltage: V_0, loadedVoltage: V, minimumVoltage: V_min, voltageAccuracy, currentAccuracy }) => {
    const exact = voltageAccuracy === undefined && currentAccuracy === undefined;
    const open = readingBounds(V_0, voltageAccuracy);
    const loaded = readingBounds(V, voltageAccuracy);
    // Where the two voltages may be the same, nothing bounds the power.
    const isBounded = open.low > loaded.high;
    return {
      cases: [
        V_min === undefined ? 'no device' : 'device',
        V_min !== undefined && (V_min < V_0 ? 'device fed' : 'device not fed'),
        !exact && 'accuracy',
        V < V_0 ? 'drop' : 'no drop',
        isBounded && 'bounded',
      ],
      assumptions: [
        exact && 'Both meters are exact.',
        isBounded &&
          V_min === undefined &&
          'At the most power the load has only half of the open voltage: few devices work there. State the lowest voltage of the device.',
        !isBounded && `The two voltages ${exact ? 'are' : 'may be'} the same: these readings do not bound the power.`,
      ],
    };
  },
};
