/** The power budget of a switch, by the classes of what is plugged into it, or by what that draws. @module */
import { poeClass } from '../../ethernet/poe-class.ts';
import { loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import { checked, drawOf } from '../../plan/switch/port-demand.ts';
import { type BudgetedPort, type BudgetPort, type SwitchBudgetInput, switchBudget } from '../../plan/switch/switch-budget.ts';
import { sentence } from '../latex-words.ts';
import type { Reading, ReadingRow, Sheet } from '../sheet.ts';

const CLASS = 'by class';
const MEASURED = 'measured';
/** The power of the class bounds, or stands in for, what is set aside. */
const BOUND = 'class bounds';
const UP = 'rounded up';
const WHOLE = 'whole';
const MEASURED_UP = 'measured, rounded up';
const MEASURED_WHOLE = 'measured, whole';
/** How a port that is set aside what its draw takes comes to its figure. */
const FLOW = 'by flow';
const OVER = 'over its class';
const UNASKED = 'no request';
const UNCARRIED = 'not carried';

export const switchBudgetSheet: Sheet<SwitchBudgetInput> = {
  title: 'The power budget of a switch',
  core: 'switchBudget',
  keys: ['capacity', 'ports', 'basis', 'reserve', 'policy'],
  givens: [
    {
      symbol: 'C',
      meaning: 'power that the switch has for its ports, with the supplies that work',
      unit: 'W',
      latex: 'C',
      core: 'capacity, budgetBySupplies or supplies',
    },
    { symbol: 'k', meaning: 'share that is kept back', unit: '1', latex: 'k', core: 'reserve' },
    {
      symbol: 'u',
      meaning: 'a nanowatt: powers are added in whole ones, so that sums are exact',
      unit: 'W',
      latex: 'u',
      core: 'the budget',
      when: 'nanowatts',
    },
    {
      symbol: 'P_#',
      meaning: '@: power at the port',
      unit: 'W',
      latex: 'P_{#}',
      core: 'ports[].poeClass',
      source: 'ieee-802.3-class',
      each: 'class',
    },
    {
      symbol: 'D_#',
      meaning: '@: power that it allows the device, to compare',
      unit: 'W',
      latex: 'D_{#}',
      core: 'ports[].poeClass',
      source: 'ieee-802.3-class',
      each: 'class',
    },
    { symbol: 'n_#', meaning: '@: ports', unit: '1', latex: 'n_{#}', core: 'ports', each: 'class' },
    {
      symbol: 'q_#',
      meaning: '@: ports that keep power, lowest priority and highest number shed first',
      unit: '1',
      latex: 'q_{#}',
      core: 'ports[].priority',
      each: 'class',
      when: 'shed',
    },
    {
      symbol: 'B_#',
      meaning: '@: power of its class at the port',
      unit: 'W',
      latex: 'B_{#}',
      core: 'ports[].poeClass',
      source: 'ieee-802.3-class',
      each: 'port',
      when: BOUND,
    },
    {
      symbol: 'M_#',
      meaning: '@: power measured at the port',
      unit: 'W',
      latex: 'M_{#}',
      core: 'ports[].measured',
      source: 'measured-power',
      each: 'port',
      when: MEASURED,
    },
    {
      symbol: 'p_#',
      meaning: '@: power that the device draws',
      unit: 'W',
      latex: 'p_{#}',
      core: 'ports[].requested or ports[].pdPower',
      each: 'port',
      when: 'drawn',
    },
    {
      symbol: 'V_#',
      meaning: '@: voltage at the port',
      unit: 'V',
      latex: 'V_{#}',
      core: 'ports[].pseVoltage',
      source: 'row',
      each: 'port',
      when: 'run',
    },
    {
      symbol: 'R_#',
      meaning: '@: resistance of the loop that power sees',
      unit: 'Ω',
      latex: 'R_{#}',
      core: 'ports[].resistance',
      source: 'row',
      each: 'port',
      when: 'run',
    },
    { symbol: 'n_#', meaning: '@: how many', unit: '1', latex: 'n_{#}', core: 'ports', each: 'port' },
    {
      symbol: 'q_#',
      meaning: '@: how many keep power, lowest priority and highest number shed first',
      unit: '1',
      latex: 'q_{#}',
      core: 'ports[].priority',
      each: 'port',
      when: 'shed',
    },
  ],
  steps: [
    {
      symbol: 'D_#',
      meaning: '@: discriminant, what stands under the root: under 0, the run cannot carry the draw',
      formula: 'V_#^2 - 4 * p_# * R_#',
      unit: 'V²',
      latex: 'D_{#}',
      source: 'constant-power',
      each: 'port',
      when: 'run',
    },
    {
      symbol: 'I_#',
      meaning: '@: current of the port',
      formula: '2 * p_# / (V_# + sqrt(D_#))',
      unit: 'A',
      latex: 'I_{#}',
      source: 'constant-power',
      each: 'port',
      when: 'carried',
    },
    {
      symbol: 'S_#',
      meaning: '@: power that the port sources',
      formula: 'V_# * I_#',
      unit: 'W',
      latex: 'S_{#}',
      source: 'circuit-laws',
      core: '@.power',
      each: 'port',
      when: FLOW,
    },
    {
      symbol: 'S_#',
      meaning: '@: power that the port sources: not less than that of its class, but for the rounding of the standard',
      formula: 'V_# * I_#',
      unit: 'W',
      latex: 'S_{#}',
      source: 'circuit-laws',
      each: 'port',
      when: OVER,
    },
    {
      symbol: 'P_#',
      meaning: '@: set aside, that of its class',
      formula: 'min(S_#, B_#)',
      unit: 'W',
      latex: 'P_{#}',
      source: 'ieee-802.3-class',
      core: '@.power',
      each: 'port',
      when: OVER,
    },
    {
      symbol: 'P_#',
      meaning: '@: set aside, that of its class: nothing was asked for or measured',
      formula: 'B_#',
      unit: 'W',
      latex: 'P_{#}',
      source: 'ieee-802.3-class',
      core: '@.power',
      each: 'port',
      when: UNASKED,
    },
    {
      symbol: 'P_#',
      meaning: '@: wanted, that of its class; it is denied, for its run cannot carry the draw',
      formula: 'B_#',
      unit: 'W',
      latex: 'P_{#}',
      source: 'ieee-802.3-class',
      core: '@.power',
      each: 'port',
      when: UNCARRIED,
    },
    {
      symbol: 'P_#',
      meaning: '@: set aside, in whole nanowatts rounded up, as they are added',
      formula: 'round(S_# / u + 1 / 2) * u',
      unit: 'W',
      latex: 'P_{#}',
      source: 'circuit-laws',
      each: 'port',
      when: UP,
    },
    {
      symbol: 'P_#',
      meaning: '@: set aside, in whole nanowatts',
      formula: 'round(S_# / u) * u',
      unit: 'W',
      latex: 'P_{#}',
      source: 'circuit-laws',
      each: 'port',
      when: WHOLE,
    },
    {
      symbol: 'P_#',
      meaning: '@: set aside, in whole nanowatts rounded up, as they are added',
      formula: 'round(M_# / u + 1 / 2) * u',
      unit: 'W',
      latex: 'P_{#}',
      source: 'measured-power',
      each: 'port',
      when: MEASURED_UP,
    },
    {
      symbol: 'P_#',
      meaning: '@: set aside, what was measured',
      formula: 'M_#',
      unit: 'W',
      latex: 'P_{#}',
      source: 'measured-power',
      core: '@.power',
      each: 'port',
      when: MEASURED_WHOLE,
    },
    {
      symbol: 'C_use',
      meaning: 'what may be given out',
      formula: 'C * (1 - k)',
      unit: 'W',
      latex: 'C_{\\mathrm{use}}',
      source: 'switch-data-sheet',
    },
    {
      symbol: 'P_dem',
      meaning: 'what all the ports would take',
      formula: '[n_# * P_#]',
      unit: 'W',
      latex: 'P_{\\mathrm{dem}}',
      source: 'circuit-laws',
      core: 'demand',
      when: 'ports',
    },
    {
      symbol: 'H',
      meaning: 'what is left over',
      formula: 'C_use - P_dem',
      unit: 'W',
      latex: 'H',
      source: 'circuit-laws',
      core: 'headroom',
      when: 'fits',
    },
    {
      symbol: 'H_0',
      meaning: 'what would be left over: not all ports are powered',
      formula: 'C_use - P_dem',
      unit: 'W',
      latex: 'H_{0}',
      source: 'circuit-laws',
      when: 'shed',
    },
    {
      symbol: 'H',
      meaning: 'what is left over once ports are shed',
      formula: 'C_use - ([q_# * P_#])',
      unit: 'W',
      latex: 'H',
      source: 'circuit-laws',
      core: 'headroom',
      when: 'shed',
    },
    {
      symbol: 'P_all',
      meaning: 'what is given out',
      formula: '[n_# * P_#]',
      unit: 'W',
      latex: 'P_{\\mathrm{all}}',
      source: 'circuit-laws',
      core: 'allocated',
      when: 'fits',
    },
    {
      symbol: 'P_all',
      meaning: 'what is given out',
      formula: '[q_# * P_#]',
      unit: 'W',
      latex: 'P_{\\mathrm{all}}',
      source: 'circuit-laws',
      core: 'allocated',
      when: 'shed',
    },
    {
      symbol: 'P_all',
      meaning: 'what is given out: nothing is plugged in',
      formula: '0',
      unit: 'W',
      latex: 'P_{\\mathrm{all}}',
      source: 'circuit-laws',
      core: 'allocated',
      when: 'no ports',
    },
  ],
  assumptions: [],
  validity: 'Up to 1 MW. Who is shed depends on priority and port number, and on the limits of cards and ports.',
  cautions: [],
  slips: [
    // Who takes too little for a port, or keeps nothing back, sheds others or none: only the demand is then this slip alone.
    { slip: 'pd-power-for-class-power', when: 'by class, fits', givens: { 'P_#': 'D_#' } },
    { slip: 'pd-power-for-class-power', when: 'by class, shed', steps: { P_dem: '[n_# * D_#]' } },
    { slip: 'run-loss-left-out', when: 'by draw, fits', steps: { 'P_#': 'p_#' } },
    { slip: 'run-loss-left-out', when: 'by draw, shed', steps: { P_dem: '[n_# * p_#]' } },
    { slip: 'demand-for-allocated', when: 'shed', steps: { P_all: 'P_dem' } },
    { slip: 'reserve-left-out', when: 'reserve, fits', givens: { k: '0' } },
  ],
  guard: switchBudget,
  read: readBudget,
};

const ASIDE: Readonly<Record<SwitchBudgetInput['basis'], string>> = {
  class: 'Each port is set aside the power of its class at the port, whatever its device draws.',
  requested: 'Each port is set aside what its request takes over the worst channel, and no more than the power of its class.',
  calculated: 'Each port is set aside what the draw of its device takes over its own run.',
  measured: 'Each port is set aside what was measured at it.',
};

function readBudget(input: SwitchBudgetInput): Reading {
  const { basis, reserve = 0 } = input;
  const { capacity, powered, denied, assumptions } = switchBudget(input);
  const placed = [...powered, ...denied];
  const budgeted = placed
    .map((port, place): Budgeted => {
      const core = place < powered.length ? `powered[${place}]` : `denied[${place - powered.length}]`;
      return { ...port, core, isPowered: place < powered.length };
    })
    .sort((a, b) => a.grantedClass - b.grantedClass || a.port - b.port);
  const rows = basis === 'class' ? [] : portRows(input, budgeted);
  const fits = denied.length === 0 ? 'fits' : 'shed';
  const kind = basis === 'class' ? CLASS : basis === 'measured' ? MEASURED : 'by draw';
  return {
    values: { C: capacity, k: reserve, u: 1e-9 },
    cases: [
      ...(placed.length === 0 ? ['no ports'] : ['ports', fits, `${kind}, ${fits}`]),
      ...(rows.some(({ cases }) => cases?.some((one) => [UP, WHOLE, MEASURED_UP].includes(one))) ? ['nanowatts'] : []),
      ...(reserve > 0 ? [`reserve, ${fits}`] : []),
    ],
    rows: { class: basis === 'class' ? classRows(budgeted) : [], port: rows },
    assumptions: [
      ASIDE[basis],
      ...(basis === 'class' ? [] : assumptions.map(fullSentence)),
      ...(denied.length === 0 ? [] : [`Shed, first to last: port ${denied.map(({ port }) => port).join(', ')}.`]),
    ],
  };
}

interface Budgeted extends BudgetedPort {
  /** What the result of the core calls it. */
  readonly core: string;
  readonly isPowered: boolean;
}

/** What the core says in passing, as a sentence of its own. */
function fullSentence(text: string): string {
  return `${sentence(text)}${text.endsWith('.') ? '' : '.'}`;
}

/** Ports of one class that are set aside the same are one row. */
function classRows(ports: readonly Budgeted[]): ReadingRow[] {
  return grouped(ports, ({ grantedClass, power }) => `${grantedClass} ${power}`).map((group) => {
    const [{ grantedClass, power }] = group;
    return {
      label: `class ${grantedClass}`,
      values: { 'P_#': power, 'D_#': poeClass(grantedClass).pdPower, ...counted(group) },
    };
  });
}

/** Ports that draw the same over the same run are one row. */
function portRows({ basis, ports, portLimit }: SwitchBudgetInput, budgeted: readonly Budgeted[]): ReadingRow[] {
  const rows = budgeted.map((port) => {
    const entry = ports.find((one) => one.port === port.port) as BudgetPort;
    const { limits } = checked(entry, 'ports', portLimit);
    const draw = drawOf(entry, basis, limits);
    const isStated = basis === 'calculated';
    const V = isStated ? (entry.pseVoltage ?? limits.pseVoltageMin) : limits.pseVoltageMin;
    const R = isStated && entry.resistance !== undefined ? loopThatPowerSees(entry.resistance, limits.pairs) : limits.channelResistance;
    const { measured = 0 } = entry;
    return {
      port,
      values: { 'B_#': limits.psePower, 'M_#': measured, 'p_#': draw, 'V_#': V, 'R_#': R },
      cases: casesOf(basis, entry, port, limits.psePower, V * V < 4 * draw * R),
      sources: {
        'V_#': isStated && entry.pseVoltage !== undefined ? undefined : ('ieee-802.3-pse-voltage' as const),
        'R_#': isStated && entry.resistance !== undefined ? undefined : ('ieee-802.3-channel' as const),
      },
    };
  });
  return grouped(rows, ({ values, cases, sources }) => JSON.stringify([values, cases, sources])).map((group) => {
    const [{ port, values, cases, sources }] = group;
    return {
      label: portsLabel(group.map((one) => one.port.port)),
      values: { ...values, ...counted(group.map((one) => one.port)) },
      cases,
      sources,
      core: port.core,
    };
  });
}

function casesOf(basis: SwitchBudgetInput['basis'], entry: BudgetPort, port: Budgeted, ofClass: number, isTooLong: boolean): string[] {
  // The budget adds whole nanowatts, rounded up.
  const isWhole = Math.round(port.power * 1e9) / 1e9 === port.power;
  if (basis === 'measured') {
    return entry.measured === undefined ? [BOUND, UNASKED] : [MEASURED, isWhole ? MEASURED_WHOLE : MEASURED_UP];
  }
  if (basis === 'requested' && entry.requested === undefined) return [BOUND, 'drawn', UNASKED];
  if (isTooLong) return [BOUND, 'drawn', 'run', UNCARRIED];
  if (port.power === ofClass) return [BOUND, 'drawn', 'run', 'carried', OVER];
  return [BOUND, 'drawn', 'run', 'carried', FLOW, isWhole ? WHOLE : UP];
}

function counted(ports: readonly Budgeted[]): { 'n_#': number; 'q_#': number } {
  return { 'n_#': ports.length, 'q_#': ports.filter(({ isPowered }) => isPowered).length };
}

function grouped<Item>(items: readonly Item[], key: (item: Item) => string): (readonly [Item, ...Item[]])[] {
  const groups = new Map<string, [Item, ...Item[]]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return [...groups.values()];
}

function portsLabel(ports: readonly number[]): string {
  if (ports.length === 1) return `port ${ports[0]}`;
  return ports.length <= 3 ? `ports ${ports.join(', ')}` : `ports ${ports.slice(0, 2).join(', ')} and ${ports.length - 2} more`;
}
