/** Limits of a run, each as a lowest voltage at the device, and as the most resistance that it allows. @module */
import { given } from '../rows.ts';
import type { SheetGiven, SheetNo, SheetStep } from '../sheet.ts';
import { CURRENT, POWER, RESISTANCE } from './point-steps.ts';

/** What a row of the limits holds. */
export const COLLAPSE = 'collapse of a power';
export const SHORT = 'collapse of a current';
export const SUPPLY = 'power of the port';
export const VOLTAGE = 'voltage at the load';
export const DROP = 'permitted drop';
export const VOLTS = 'permitted drop in volts';
/** A resistance takes most, and so drops most, at the highest voltage. */
export const HIGHEST = 'permitted drop in volts at the highest voltage';
export const AMPACITY = 'most current of a power';
export const OHMS = 'stated in ohms';
/** What its resistance is about: one of the three loops of a cable, or a line of two wires out and back. */
export const LOOP = 'one of the loops';
export const OUT_AND_BACK = 'out and back';
/** Under what conditions a loop is judged. */
export const HOT = 'as it is';
export const COOL = 'at 20 °C';
export const LINK = 'without cords, at 20 °C';
/** Of the reading: something is judged at the highest voltage of the supply. */
export const AT_HIGHEST = 'highest';

/** The lowest voltage of the supply. */
export const supplyGiven: SheetGiven = given('V', 'V', 'voltage at the supply, the lowest it may have', 'pseVoltage or supplyVoltage');

/** And the highest. */
export const highestSupplyGiven: SheetGiven = given('V_hi', 'V', 'voltage at the supply, the highest it may have', 'supplyVoltage.high', { when: AT_HIGHEST });

/** The power of the port. */
export const portPowerGiven: SheetGiven = given('P_lim', 'W', 'most that the port must source: what the class allows the device, over the worst channel at the lowest voltage; the class table rounds it', 'poeClass', { source: 'ieee-802.3-class', when: 'powered' });

const limitGiven = { each: 'limit' } as const;
const dropGiven = {
  ...limitGiven,
  symbol: 'Vd_#',
  meaning: '@: most drop',
  unit: 'V',
  latex: 'd_{#}',
  core: 'permittedDrop.volts',
} as const;

/** A lowest voltage, a permitted drop, and a most current, that the caller states. */
export const voltageLimitGivens: readonly SheetGiven[] = [
  {
    ...limitGiven,
    symbol: 'U_#',
    meaning: '@: the lowest there may be',
    unit: 'V',
    latex: 'U_{#}',
    core: 'the limits of the device',
    when: VOLTAGE,
  },
  {
    ...limitGiven,
    symbol: 'k_#',
    meaning: '@: most drop, as a fraction of the supply voltage',
    unit: '1',
    latex: 'k_{#}',
    core: 'permittedDrop',
    when: DROP,
  },
  { ...dropGiven, when: VOLTS },
  { ...dropGiven, when: HIGHEST },
  {
    ...limitGiven,
    symbol: 'Iz_#',
    meaning: '@: most current of the conductors as installed',
    unit: 'A',
    latex: 'I_{z,#}',
    core: 'ampacity',
    when: AMPACITY,
  },
];

/** What each loop is in conductors one way. */
const LOOPS = { pairLoop: 'a pair loop amounts to', twoPair: 'one pairset amounts to', fourPair: 'two pairsets amount to' } as const;

/** The loop of each row of a list. */
export function loopGivens(each: string, core: string): SheetGiven[] {
  return Object.entries(LOOPS).map(([when, words]) => (given('f_#', '1', `@: conductors that ${words}`, core, { source: 'three-loops', each, when })));
}

/** Limits that are, or are turned into, a resistance. */
export const resistanceLimitGivens: readonly SheetGiven[] = [
  ...voltageLimitGivens,
  {
    ...limitGiven,
    symbol: 'X_#',
    meaning: '@: most resistance',
    unit: 'Ω',
    latex: 'X_{#}',
    core: 'the limits of the device or the cabling',
    when: OHMS,
  },
  ...loopGivens('limit', 'the loop'),
];

const lowest = { symbol: 'U_#', unit: 'V', latex: 'U_{#}', source: 'circuit-laws', each: 'limit' } as const;

/** A permitted drop as a lowest voltage. */
export const dropAsVoltageSteps: readonly SheetStep[] = [
  { ...lowest, meaning: '@: lowest voltage at the device', formula: 'V * (1 - k_#)', when: DROP },
  { ...lowest, meaning: '@: lowest voltage at the device', formula: 'V - Vd_#', when: VOLTS },
  {
    ...lowest,
    meaning: '@: lowest voltage at the device, at the highest supply: there a resistance drops most',
    formula: 'V_hi - Vd_#',
    when: HIGHEST,
  },
];

/** A most current as the voltage under which a power draws more. */
export const ampacityAsVoltageStep: SheetStep = {
  ...lowest,
  meaning: '@: voltage at the device under which the device draws more',
  formula: 'P / Iz_#',
  when: AMPACITY,
};

/** Each limit as a resistance, with what is said where even no resistance is too much. */
export function mostResistanceSteps(no: SheetNo): readonly SheetStep[] {
  const most = { symbol: 'X_#', unit: 'Ω', latex: 'X_{#}', source: 'circuit-laws', each: 'limit' } as const;
  const overCurrent = { ...most, meaning: '@: most resistance: the drop over the current', no } as const;
  return [
    {
      ...most,
      meaning: '@: most resistance, beyond which no current carries the power',
      formula: 'V^2 / (4 * P)',
      source: 'collapse',
      when: COLLAPSE,
    },
    { ...most, meaning: '@: most resistance, beyond which even a short takes less', formula: 'V / I', when: SHORT },
    {
      ...most,
      meaning: '@: most resistance: what the port may source more, over the current squared',
      formula: '(P_lim - P) / (P_lim / V)^2',
      when: SUPPLY,
      no,
    },
    ...dropAsVoltageSteps,
    ampacityAsVoltageStep,
    { ...overCurrent, formula: '(V_hi - U_#) / (U_# / R_L)', when: HIGHEST },
    { ...overCurrent, formula: '(V - U_#) / (P / U_#)', when: `voltage, ${POWER}` },
    { ...overCurrent, formula: '(V - U_#) / I', when: `voltage, ${CURRENT}` },
    { ...overCurrent, formula: '(V - U_#) / (U_# / R_L)', when: `voltage, ${RESISTANCE}` },
  ];
}

