/** How low: the voltage that each limit asks for, and the highest of them. @module */
import type { CheckName } from '../../circuit/check.ts';
import type { Load } from '../../circuit/operating-point.ts';
import { type LowestSupplyVoltageInput, lowestSupplyVoltage } from '../../plan/lowest-supply-voltage.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import type { PoweredRunInput } from '../../plan/powered-run.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Figures, Reading, ReadingRow, Sheet, SheetStep } from '../sheet.ts';
import { jointAssumptions } from './connection-steps.ts';
import { limitRow } from './limit-rows.ts';
import {
  AMPACITY,
  ampacityAsVoltageStep,
  COLLAPSE,
  DROP,
  portPowerGiven,
  SHORT,
  SUPPLY,
  VOLTAGE,
  VOLTS,
  voltageLimitGivens,
} from './limit-steps.ts';
import { AT_MOST, lineReading } from './line-steps.ts';
import {
  asking,
  fixedOhmsRow,
  granted,
  openGivens,
  openLineKeys,
  openRunKeys,
  openSteps,
  placed,
  portRows,
  requireLoadResistance,
  requireOthersMet,
  runAssumptions,
  SAME_VOLTS,
  SHARE,
} from './open-run.ts';
import { CURRENT, loadGivens, loadReading, POWER, RESISTANCE } from './point-steps.ts';
import { loopGivens, loopSteps, POWERED, runReading } from './run-steps.ts';
import { loadKeys, temperatureAssumption } from './shared.ts';

type Run = Omit<PoweredRunInput, 'pseVoltage'>;
type Line = Exclude<LowestSupplyVoltageInput, Run>;

/** The core looks no further, either way. [V] */
const MOST = 1000;
const LEAST = 1e-6;

/** The least asked for is more than there may be. */
const TOO_HIGH = 'too high';

/** A voltage that one limit asks for. */
const least = { symbol: 'V_#', unit: 'V', latex: 'V_{#}', source: 'circuit-laws', each: 'limit', core: '<limit>' } as const;

const leastSteps: readonly SheetStep[] = [
  ampacityAsVoltageStep,
  {
    ...least,
    meaning: '@: least voltage, under which no current carries the power',
    formula: '2 * sqrt(P * R)',
    source: 'collapse',
    when: COLLAPSE,
  },
  { ...least, meaning: '@: least voltage, under which even a short takes less', formula: 'I * R', when: SHORT },
  {
    ...least,
    meaning: '@: least voltage, at which the heat in the run is all that the port may source more',
    formula: 'P_lim * sqrt(R / (P_lim - P))',
    when: SUPPLY,
  },
  {
    ...least,
    meaning: '@: least voltage: that of the device, and the drop of its current',
    formula: 'U_# + P / U_# * R',
    when: `voltage, ${POWER}`,
  },
  {
    ...least,
    meaning: '@: least voltage: that of the device, and the drop of its current',
    formula: 'U_# + I * R',
    when: `voltage, ${CURRENT}`,
  },
  {
    ...least,
    meaning: '@: least voltage: that of the device, and the drop of its current',
    formula: 'U_# + U_# / R_L * R',
    when: `voltage, ${RESISTANCE}`,
  },
  {
    ...least,
    meaning: '@: least voltage, from k V = (P / ((1 - k) V)) R',
    formula: 'sqrt(P * R / (k_# * (1 - k_#)))',
    when: `drop, ${POWER}`,
  },
  { ...least, meaning: '@: least voltage, from k V = I R', formula: 'I * R / k_#', when: `drop, ${CURRENT}` },
  {
    ...least,
    meaning: '@: least voltage: the drop, and what the power has at the current that makes it',
    formula: 'Vd_# + P / (Vd_# / R)',
    when: VOLTS,
  },
];

/** The core, and what of its answers this sheet does not show. */
const asked = asking((input: LowestSupplyVoltageInput) => {
  const said = lowestSupplyVoltage(input);
  if (isPowered<Run, Line>(input)) requireOthersMet(said, input.cabling);
  else {
    requireLoadResistance(input.load);
    requireNoMore(input);
  }
  return said;
});

export const lowestSupplyVoltageSheet: Sheet<LowestSupplyVoltageInput> = {
  title: 'The lowest supply voltage at which a run holds',
  core: 'lowestSupplyVoltage',
  keys: [...new Set([...openRunKeys, 'pdPower', ...openLineKeys, ...loadKeys])],
  givens: [
    ...loadGivens,
    portPowerGiven,
    ...loopGivens,
    ...openGivens,
    ...voltageLimitGivens,
    {
      symbol: 'V_most',
      meaning: 'the highest voltage that there may be',
      unit: 'V',
      latex: 'V_{\\mathrm{most}}',
      core: 'the type of the port, or maximumVoltage',
      when: TOO_HIGH,
    },
  ],
  steps: [
    ...loopSteps,
    ...openSteps('supply voltage'),
    ...leastSteps,
    {
      symbol: 'V',
      meaning: 'the lowest supply voltage, the highest of these, set by',
      least: ['V_#'],
      formula: 'max([V_#,])',
      unit: 'V',
      latex: 'V',
      source: 'circuit-laws',
      core: 'supplyVoltage',
      when: 'bounded',
    },
    {
      symbol: 'V_left',
      meaning: 'what is left up to the highest voltage that there may be',
      formula: 'V_most - V',
      unit: 'V',
      latex: 'V_{\\mathrm{left}}',
      source: 'circuit-laws',
      when: TOO_HIGH,
      no: { says: 'no supply voltage is enough: the run would need more than there may be', steps: [] },
    },
  ],
  assumptions: [`Direct current, steady state. Every conductor ${AT_MOST}; the device at the load stated.`],
  validity: 'Up to 57 V at a port, and to 1000 V on two wires or to the most that the device bears.',
  cautions: ['Above 60 V DC a circuit is outside extra-low voltage: for a licensed practitioner and the local code.'],
  slips: [
    { slip: 'one-way-length', steps: { r: 'rl_1' } },
    { slip: 'cold-resistance', givens: { T: 'T_ref', 'T_#': 'T_ref' } },
    { slip: 'percent-of-wrong-voltage', givens: { 'k_#': 'k_# / (1 + k_#)' } },
    { slip: 'pair-loop-for-pairset', when: 'one pairset', steps: { R: '2 * R_w' } },
    { slip: 'pairset-for-four-pair', when: 'two pairsets', steps: { R: 'R_w' } },
    { slip: 'class-power-for-pd-power', when: POWERED, givens: { P: 'P_lim' } },
  ],
  guard: asked.guard,
  read: (input) => (isPowered<Run, Line>(input) ? readRun(input) : readLine(input)),
};

/** Refuses what a resistance meets only up to some voltage: it takes and drops the more the higher that is. */
function requireNoMore({ load, permittedDrop, ampacity }: Line): void {
  if (load.resistance === undefined) return;
  if (typeof permittedDrop === 'object') {
    throw new InputError(
      'conflict',
      'permittedDrop',
      'a fraction of the supply voltage: a resistance drops more volts of a higher one',
      permittedDrop,
    );
  }
  if (ampacity !== undefined) {
    throw new InputError('conflict', 'ampacity', 'no ampacity with a resistance, which takes more of a higher voltage', ampacity);
  }
}

function readRun(input: Run): Reading {
  const { installed, cords = [], connections, connectionResistance, minimumVoltage, maximumResistance } = input;
  const { limits, P } = granted(input);
  const segments = [...installed, ...cords];
  const run = runReading(segments, limits.pairs, connections, connectionResistance);
  const { ohms: R } = run;
  const fixed = portRows(limits, P, undefined, segments);
  if (maximumResistance !== undefined) fixed.push(fixedOhmsRow(maximumResistance));
  const limited: Asked[] = [{ name: 'collapse', volts: 2 * Math.sqrt(P * R), cases: [COLLAPSE] }];
  // At its collapse a line takes twice the power of its load: a limit above that never bites.
  const { psePowerLimit: W, pdVoltageLimit } = limits;
  if (P < W && W < 2 * P) limited.push({ name: 'pse-power', volts: W * Math.sqrt(R / (W - P)), cases: [SUPPLY] });
  limited.push(...lowest('pd-voltage', pdVoltageLimit, { power: P }, R), ...lowest('device-voltage', minimumVoltage, { power: P }, R));
  return reading(input, limited, fixed, limits.pseVoltageMax, {
    values: { ...run.values, P, P_lim: W },
    cases: [...run.cases, POWER],
    rows: run.rows,
    assumptions: runAssumptions(input, limits),
  });
}

function readLine(input: Line): Reading {
  const { load, minimumVoltage, maximumVoltage, maximumResistance, permittedDrop, ampacity } = input;
  const line = lineReading(input);
  const loaded = loadReading(load);
  const { ohms: R } = line;
  const { power: P, current: I } = load;
  const fixed: ReadingRow[] = [];
  if (maximumResistance !== undefined) fixed.push(fixedOhmsRow(maximumResistance));
  const limited: Asked[] = [];
  if (P !== undefined) limited.push({ name: 'collapse', volts: 2 * Math.sqrt(P * R), cases: [COLLAPSE] });
  if (I !== undefined) limited.push({ name: 'collapse', volts: I * R, cases: [SHORT] });
  limited.push(...lowest('device-voltage', minimumVoltage, load, R));
  if (typeof permittedDrop === 'number') addFraction(permittedDrop);
  else if (permittedDrop !== undefined) addVolts(permittedDrop.volts);
  if (ampacity !== undefined) {
    if (P !== undefined && P > 0) limited.push(...lowest('ampacity', P / ampacity, load, R, AMPACITY, { 'Iz_#': ampacity }));
    if (I !== undefined) fixed.push(limitRow('ampacity', { 'v_#': I, 'w_#': ampacity }, ['A']));
  }
  return reading(input, limited, fixed, Math.min(maximumVoltage ?? MOST, MOST), {
    values: { ...line.values, ...loaded.values },
    cases: [...line.cases, ...loaded.cases],
    rows: line.rows,
    assumptions: [...temperatureAssumption(input.temperature), ...jointAssumptions(input)],
  });

  function addFraction(k: number): void {
    const drop = { name: 'voltage-drop', values: { 'k_#': k } } as const;
    // More than half of its supply voltage no power loses along the line: that is left to the collapse.
    if (P !== undefined && k <= 0.5) {
      limited.push({ ...drop, volts: Math.sqrt((P * R) / (k * (1 - k))), cases: [DROP, `drop, ${POWER}`] });
    }
    if (I !== undefined) limited.push({ ...drop, volts: (I * R) / k, cases: [DROP, `drop, ${CURRENT}`] });
    if (load.resistance !== undefined) fixed.push(limitRow('voltage-drop', { 'w_#': k }, [SHARE]));
  }

  /** A power loses as much only where it has come near to the collapse; a current loses the same at any voltage. */
  function addVolts(d: number): void {
    if (P !== undefined && P * R >= d * d) {
      limited.push({ name: 'voltage-drop', volts: d + P / (d / R), values: { 'Vd_#': d }, cases: [VOLTS] });
    }
    if (I !== undefined) fixed.push(limitRow('voltage-drop', { 'w_#': d }, [SAME_VOLTS]));
  }
}

/** What a limit asks for decides whether it has a row, and is no figure of the working. */
interface Asked {
  readonly name: CheckName;
  readonly volts: number;
  readonly values?: Figures;
  readonly cases: readonly string[];
}

/** A lowest voltage at the device; the stable root of a power lies above half of the supply voltage: under that the collapse speaks. */
function lowest(
  name: CheckName,
  U: number | undefined,
  load: Load,
  R: number,
  what: string = VOLTAGE,
  values: Figures = { 'U_#': U ?? 0 },
): Asked[] {
  if (U === undefined) return [];
  const { power: P, current: I, resistance = 1 } = load;
  if (P !== undefined && U * U < P * R) return [];
  const drop = P !== undefined ? (P / U) * R : I !== undefined ? I * R : (U / resistance) * R;
  const kind = P !== undefined ? POWER : I !== undefined ? CURRENT : RESISTANCE;
  return [{ name, volts: U + drop, values, cases: [what, `voltage, ${kind}`] }];
}

function reading(
  input: LowestSupplyVoltageInput,
  limits: readonly Asked[],
  fixed: readonly ReadingRow[],
  most: number,
  of: Reading,
): Reading {
  const binding = limits.filter(({ volts }) => volts > LEAST);
  const rows = binding.map(({ name, values, cases }) => limitRow(name, values, cases));
  return {
    ...of,
    values: { ...of.values, V_most: most },
    cases: [
      ...(of.cases ?? []),
      ...(rows.length === 0 ? [] : ['bounded']),
      ...(binding.some(({ volts }) => volts > most) ? [TOO_HIGH] : []),
    ],
    rows: { ...of.rows, ...placed(asked.said(input), fixed, rows) },
    ...(rows.length === 0 ? { no: 'any supply voltage will do: nothing bounds it' } : {}),
  };
}
