/** What a meter should show on a pair of a run. @module */
import { type ExpectedReadingInput, expectedReading } from '../../cable/field/expected-reading.ts';
import { readSegments } from '../../cable/run-resistance.ts';
import type { Sheet, SheetStep } from '../sheet.ts';
import { pieceGivens, pieceRows, pieceSteps } from './piece-bounds.ts';
import { connectionAssumptions, twentyGiven } from './shared.ts';

/** The loop of usual copper: besides the bounds, what one expects. */
const usualStep = (each: 'installed' | 'cords'): SheetStep => ({
  symbol: 'Zu_#',
  meaning: '@: its loop with usual conductors',
  formula: '2 * rn_# * (1 + alpha_# * (T_# - T_ref)) * L_#',
  unit: 'Ω',
  latex: 'Z_{u,#}',
  source: 'circuit-laws',
  each,
});

const STATED = 'connection stated';

/** One conductor, or one pairset, where the loop is asked. */
const HALF = {
  'Rl_#': '(2 * n_# * R_0<least>) / 2',
  'Rh_#': '(2 * n_# * R_c<most>) / 2',
  'R_#': '(2 * n_# * R_c<usual>) / 2',
};

export const expectedReadingSheet: Sheet<ExpectedReadingInput> = {
  title: 'What a meter should show on a shorted pair',
  core: 'expectedReading',
  keys: ['installed', 'cords', 'connections', 'linkConnections', 'connectionResistance', 'temperatureSpread'],
  givens: [
    ...pieceGivens('installed'),
    ...pieceGivens('cords'),
    twentyGiven,
    { symbol: 's', meaning: 'how far each temperature may be off, either side', unit: 'K', latex: 's', core: 'temperatureSpread' },
    {
      symbol: 'R_c',
      meaning: 'one connection at most, one conductor',
      unit: 'Ω',
      latex: 'R_{c}',
      core: 'connectionResistance',
      when: STATED,
    },
    {
      symbol: 'R_c',
      meaning: 'one connection at most, one conductor',
      unit: 'Ω',
      latex: 'R_{c}',
      core: 'connectionResistance',
      source: 'tia-568.2-d-connection',
      when: 'connection of the standard',
    },
    { symbol: 'R_0', meaning: 'one connection at least: nothing', unit: 'Ω', latex: 'R_{0}', core: 'connectionResistance' },
    { symbol: 'n_#', meaning: '@: connections', unit: '1', latex: 'n_{#}', core: '@', each: 'loop' },
  ],
  steps: [
    ...pieceSteps('installed', 's'),
    usualStep('installed'),
    ...pieceSteps('cords', 's'),
    usualStep('cords'),
    {
      symbol: 'Rl_#',
      meaning: '@: reading at least, thick conductors at their coldest and connections of nothing',
      formula: '2 * n_# * R_0<least>',
      unit: 'Ω',
      latex: 'R_{l,#}',
      source: 'field-loop-reading',
      core: '@.atTemperature.low',
      each: 'reading',
    },
    {
      symbol: 'Rh_#',
      meaning: '@: reading at most, all at their limits and their hottest',
      formula: '2 * n_# * R_c<most>',
      unit: 'Ω',
      latex: 'R_{h,#}',
      source: 'field-loop-reading',
      core: '@.atTemperature.high',
      each: 'reading',
    },
    {
      symbol: 'R_#',
      meaning: '@: what the meter should show, usual conductors and each connection at its highest resistance',
      formula: '2 * n_# * R_c<usual>',
      unit: 'Ω',
      latex: 'R_{#}',
      source: 'field-loop-reading',
      core: '@.atTemperature.value',
      each: 'reading',
    },
  ],
  tables: [{ title: 'The loop of each piece', row: 'piece', lists: ['installed', 'cords'] }],
  assumptions: ['The pair is shorted at its far end, the leads of the meter are nulled, and nothing is powered.'],
  validity:
    'Copper within its tolerance up to the limit of the cable. A reading outside the bounds is not of the run as described; one inside them may still be of another.',
  cautions: ['Never put an ohmmeter on a powered pair.'],
  slips: [
    { slip: 'one-way-length', steps: HALF },
    { slip: 'pairset-for-pair-loop', steps: HALF },
    { slip: 'cold-resistance', givens: { 'T_#': 'T_ref' } },
    { slip: 'connections-left-out', givens: { 'n_#': '0' } },
    { slip: 'connections-in-one-wire', givens: { 'n_#': 'n_# / 2' } },
  ],
  guard: expectedReading,
  read: (input) => {
    const { connections = 0, connectionResistance, temperatureSpread = 0 } = input;
    const installed = readSegments(input.installed, 'installed');
    const cords = readSegments(input.cords ?? [], 'cords');
    const { linkConnections = Math.min(connections, 3) } = input;
    const rows = { installed: pieceRows(installed), cords: pieceRows(cords, installed.length) };
    const loop = (label: string, core: string, count: number, pieces: number) => {
      const all = (symbol: string): string => Array.from({ length: pieces }, (_, index) => ` + ${symbol}_${index + 1}`).join('');
      return { label, core, values: { 'n_#': count }, links: { least: all('Zl'), most: all('Zh'), usual: all('Zu') } };
    };
    const loops = [
      loop('permanent link', 'permanentLink', linkConnections, installed.length),
      loop('channel', 'channel', connections, installed.length + cords.length),
    ];
    return {
      values: { T_ref: 20, s: temperatureSpread, R_c: connectionResistance ?? 0.2, R_0: 0 },
      cases: [connectionResistance === undefined ? 'connection of the standard' : STATED],
      rows: { ...rows, loop: loops, reading: loops },
      assumptions: [
        ...connectionAssumptions(input.connections, connectionResistance),
        ...([...installed, ...cords].some(({ temperature }) => temperature === undefined)
          ? ['A piece without a temperature is at 20 °C.']
          : []),
        ...(input.linkConnections === undefined && connections > 0
          ? [`Of the connections, ${linkConnections} lie in the permanent link.`]
          : []),
      ],
    };
  },
};
