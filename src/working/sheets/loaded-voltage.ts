/** Source and line from two readings at the far end: open, and with the load on. @module */
import { type LoadedVoltageInput, loadedVoltage, type MeterAccuracy, readingBounds } from '../../cable/field/loaded-voltage.ts';
import type { Sheet, SheetGiven, SheetStep } from '../sheet.ts';

/** What a reading is off by at most, of a meter that is not exact. */
const METERS = 'accuracy';

const off = (symbol: 'k_V' | 'a_V' | 'k_I' | 'a_I', meaning: string, core: string): SheetGiven => ({
  symbol,
  meaning,
  unit: symbol.startsWith('k') ? '1' : symbol === 'a_V' ? 'V' : 'A',
  latex: symbol.replace(/_(.)/, '_{$1}'),
  core,
  when: METERS,
});

const bound = (of: 'V_0' | 'V' | 'I', end: 'lo' | 'hi', words: string): SheetStep => {
  const meter = of === 'I' ? 'I' : 'V';
  const far = `(k_${meter} * ${of} + a_${meter})`;
  return {
    symbol: of === 'V_0' ? `V_0${end}` : `${of}_${end}`,
    meaning: `${words}, at ${end === 'lo' ? 'least' : 'most'}`,
    // No reading stands for less than nothing.
    formula: end === 'hi' ? `${of} + ${far}` : `max(${of} - ${far}, 0)`,
    unit: meter === 'I' ? 'A' : 'V',
    latex: of === 'V_0' ? `V_{0,\\mathrm{${end}}}` : `${of}_{\\mathrm{${end}}}`,
    source: 'data-sheet',
    when: METERS,
  };
};

export const loadedVoltageSheet: Sheet<LoadedVoltageInput> = {
  title: 'Source and line, from the voltage without and with a load',
  core: 'loadedVoltage',
  keys: [
    'openVoltage',
    'loadedVoltage',
    'loadCurrent',
    'minimumVoltage',
    'voltageFraction',
    'voltageFixed',
    'currentFraction',
    'currentFixed',
  ],
  givens: [
    { symbol: 'V_0', meaning: 'voltage at the far end, nothing drawn', unit: 'V', latex: 'V_{0}', core: 'openVoltage' },
    { symbol: 'V', meaning: 'voltage at the far end, with the load on', unit: 'V', latex: 'V', core: 'loadedVoltage' },
    { symbol: 'I', meaning: 'current through the load', unit: 'A', latex: 'I', core: 'current' },
    {
      symbol: 'V_min',
      meaning: 'lowest voltage of the device that is to be fed',
      unit: 'V',
      latex: 'V_{\\min}',
      core: 'minimumVoltage',
      when: 'device',
    },
    off('k_V', 'voltmeter may be off by this fraction of its reading', 'voltageAccuracy.fraction'),
    off('a_V', 'and by this besides', 'voltageAccuracy.fixed'),
    off('k_I', 'ammeter may be off by this fraction of its reading', 'currentAccuracy.fraction'),
    off('a_I', 'and by this besides', 'currentAccuracy.fixed'),
  ],
  steps: [
    {
      symbol: 'P',
      meaning: 'power delivered to the load as it was read: both figures at its own end',
      formula: 'V * I',
      unit: 'W',
      latex: 'P',
      source: 'circuit-laws',
      core: 'loadPower.value',
    },
    bound('V_0', 'lo', 'open voltage'),
    bound('V_0', 'hi', 'open voltage'),
    bound('V', 'lo', 'loaded voltage'),
    bound('V', 'hi', 'loaded voltage'),
    bound('I', 'lo', 'current'),
    bound('I', 'hi', 'current'),
    {
      symbol: 'R_lo',
      meaning: 'resistance of source and line at least, each meter off the way that lowers it',
      formula: 'max(V_0lo - V_hi, 0) / I_hi',
      unit: 'Ω',
      latex: 'R_{\\mathrm{lo}}',
      source: 'circuit-laws',
      core: 'resistance.low',
      when: METERS,
    },
    {
      symbol: 'R_hi',
      meaning: 'resistance of source and line at most',
      formula: '(V_0hi - V_lo) / I_lo',
      unit: 'Ω',
      latex: 'R_{\\mathrm{hi}}',
      source: 'circuit-laws',
      core: 'resistance.high',
      when: METERS,
    },
    {
      symbol: 'R',
      meaning: 'resistance of source and line together: what is lost, over the current that loses it',
      formula: '(V_0 - V) / I',
      unit: 'Ω',
      latex: 'R',
      source: 'circuit-laws',
      core: 'resistance.value',
      when: 'drop',
    },
    {
      symbol: 'R',
      meaning: 'resistance of source and line together: nothing is lost that the meter could tell',
      formula: '0',
      unit: 'Ω',
      latex: 'R',
      source: 'circuit-laws',
      core: 'resistance.value',
      when: 'no drop',
    },
    {
      symbol: 'P_max',
      meaning: 'most power that any load could get, with half of the open voltage left to it',
      formula: 'V_0^2 / (4 * R)',
      unit: 'W',
      latex: 'P_{\\max}',
      source: 'collapse',
      core: 'maximumPower.value',
      when: 'bounded',
    },
    {
      symbol: 'P_low',
      meaning: 'power at which the far end is down to the lowest voltage of the device',
      formula: 'V_min * (V_0 - V_min) / R',
      unit: 'W',
      latex: 'P_{\\mathrm{low}}',
      source: 'circuit-laws',
      core: 'powerAtMinimum.value',
      when: 'bounded, device',
    },
    {
      symbol: 'P_low',
      meaning: 'power at the lowest voltage of the device: none, the source has less even when nothing is drawn',
      formula: '0',
      unit: 'W',
      latex: 'P_{\\mathrm{low}}',
      source: 'circuit-laws',
      core: 'powerAtMinimum.value',
      when: 'bounded, under the device',
    },
    {
      symbol: 'P_left',
      meaning: 'power that is left, under 0 where the load is already too much',
      formula: 'P_max - P',
      unit: 'W',
      latex: 'P_{\\mathrm{left}}',
      source: 'circuit-laws',
      core: 'powerLeft.value',
      when: 'bounded, no device',
    },
    ...['bounded, device', 'bounded, under the device'].map(
      (when): SheetStep => ({
        symbol: 'P_left',
        meaning: 'power that is left by whichever is less, under 0 where the load is already too much',
        formula: 'min(P_max, P_low) - P',
        unit: 'W',
        latex: 'P_{\\mathrm{left}}',
        source: 'circuit-laws',
        core: 'powerLeft.value',
        when,
      }),
    ),
  ],
  assumptions: ['Direct current; both readings taken within the same minute, of a source that acts as a voltage behind a resistance.'],
  validity:
    'Not for a supply that limits its current or folds back, and a line that warms up changes. With the accuracy of the meters the bounds of the resistance are shown; of the powers the figures that the readings give, without bounds.',
  cautions: ['Readings on a live line: above extra-low voltage only by licensed practice, as local code has it.'],
  slips: [
    { slip: 'open-for-loaded', steps: { P: 'V_0 * I' } },
    { slip: 'load-for-line', steps: { R: 'V / I' } },
    { slip: 'quarter-left-out', steps: { P_max: 'V_0^2 / R' } },
    { slip: 'lowest-voltage-left-out', when: 'device', steps: { P_left: 'P_max - P' } },
    { slip: 'load-not-taken-off', when: 'bounded, no device', steps: { P_left: 'P_max' } },
    { slip: 'load-not-taken-off', when: 'device', steps: { P_left: 'min(P_max, P_low)' } },
  ],
  guard: loadedVoltage,
  read: (input) => {
    const { openVoltage: V_0, loadedVoltage: V, current: I, minimumVoltage: V_min, voltageAccuracy, currentAccuracy } = input;
    const exact = voltageAccuracy === undefined && currentAccuracy === undefined;
    const open = readingBounds(V_0, voltageAccuracy);
    const under = readingBounds(V, voltageAccuracy);
    const device = V_min === undefined ? 'no device' : V_min < V_0 ? 'device' : 'under the device';
    return {
      values: {
        V_0,
        V,
        I,
        ...(V_min === undefined ? {} : { V_min }),
        ...meter('V', voltageAccuracy),
        ...meter('I', currentAccuracy),
      },
      cases: [
        ...(V_min === undefined ? [] : ['device']),
        ...(exact ? [] : [METERS]),
        V < V_0 ? 'drop' : 'no drop',
        // Where the two voltages may be the same, nothing bounds the power.
        ...(open.low > under.high ? ['bounded', `bounded, ${device}`] : []),
      ],
      assumptions: [
        ...(exact ? ['Both meters are exact.'] : []),
        ...(open.low > under.high
          ? V_min === undefined
            ? [
                'At the most power the load has only half of the open voltage: few devices work there. State the lowest voltage of the device.',
              ]
            : []
          : [`The two voltages ${exact ? 'are' : 'may be'} the same: these readings do not bound the power.`]),
      ],
    };
  },
};

function meter(of: 'V' | 'I', { fraction = 0, fixed = 0 }: MeterAccuracy = {}): Record<string, number> {
  return { [`k_${of}`]: fraction, [`a_${of}`]: fixed };
}
