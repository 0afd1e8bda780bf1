/** The power budget of a switch, by the classes of what is plugged into it, or by what that draws. @module */
import { givens, steps } from '../rows.ts';
import { poeClass } from '../../ethernet/poe-class.ts';
import { loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import { checked, drawOf } from '../../plan/switch/port-demand.ts';
import { type BudgetedPort, type BudgetPort, type SwitchBudgetInput, switchBudget } from '../../plan/switch-budget.ts';
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
  givens: givens([
    ['C', 'W', 'power that the switch has for its ports, with the supplies that work', 'capacity, budgetBySupplies or supplies'],
    ['k', '1', 'share that is kept back', 'reserve'],
    ['u', 'W', 'a nanowatt: powers are added in whole ones, so that sums are exact', 'the budget', { when: 'nanowatts' }],
    ['P_#', 'W', '@: power at the port', 'ports[].poeClass', { source: 'ieee-802.3-class', each: 'class' }],
    ['D_#', 'W', '@: power that it allows the device, to compare', 'ports[].poeClass', { source: 'ieee-802.3-class', each: 'class' }],
    ['n_#', '1', '@: ports', 'ports', { each: 'class' }],
    ['q_#', '1', '@: ports that keep power, lowest priority and highest number shed first', 'ports[].priority', { each: 'class', when: 'shed' }],
    ['B_#', 'W', '@: power of its class at the port', 'ports[].poeClass', { source: 'ieee-802.3-class', each: 'port', when: BOUND }],
    ['M_#', 'W', '@: power measured at the port', 'ports[].measured', { source: 'measured-power', each: 'port', when: MEASURED }],
    ['p_#', 'W', '@: power that the device draws', 'ports[].requested or ports[].pdPower', { each: 'port', when: 'drawn' }],
    ['V_#', 'V', '@: voltage at the port', 'ports[].pseVoltage', { source: 'row', each: 'port', when: 'run' }],
    ['R_#', 'Ω', '@: resistance of the loop that power sees', 'ports[].resistance', { source: 'row', each: 'port', when: 'run' }],
    ['n_#', '1', '@: how many', 'ports', { each: 'port' }],
    ['q_#', '1', '@: how many keep power, lowest priority and highest number shed first', 'ports[].priority', { each: 'port', when: 'shed' }],
  ]),
  steps: steps([
    ['D_#', 'V²', 'V_#^2 - 4 * p_# * R_#', '@: discriminant, what stands under the root: under 0, the run cannot carry the draw', { source: 'constant-power', each: 'port', when: 'run' }],
    ['I_#', 'A', '2 * p_# / (V_# + sqrt(D_#))', '@: current of the port', { source: 'constant-power', each: 'port', when: 'carried' }],
    ['S_#', 'W', 'V_# * I_#', '@: power that the port sources', { core: '@.power', each: 'port', when: FLOW }],
    ['S_#', 'W', 'V_# * I_#', '@: power that the port sources: not less than that of its class, but for the rounding of the standard', { each: 'port', when: OVER }],
    ['P_#', 'W', 'min(S_#, B_#)', '@: set aside, that of its class', { source: 'ieee-802.3-class', core: '@.power', each: 'port', when: OVER }],
    ['P_#', 'W', 'B_#', '@: set aside, that of its class: nothing was asked for or measured', { source: 'ieee-802.3-class', core: '@.power', each: 'port', when: UNASKED }],
    ['P_#', 'W', 'B_#', '@: wanted, that of its class; it is denied, for its run cannot carry the draw', { source: 'ieee-802.3-class', core: '@.power', each: 'port', when: UNCARRIED }],
    ['P_#', 'W', 'round(S_# / u + 1 / 2) * u', '@: set aside, in whole nanowatts rounded up, as they are added', { each: 'port', when: UP }],
    ['P_#', 'W', 'round(S_# / u) * u', '@: set aside, in whole nanowatts', { each: 'port', when: WHOLE }],
    ['P_#', 'W', 'round(M_# / u + 1 / 2) * u', '@: set aside, in whole nanowatts rounded up, as they are added', { source: 'measured-power', each: 'port', when: MEASURED_UP }],
    ['P_#', 'W', 'M_#', '@: set aside, what was measured', { source: 'measured-power', core: '@.power', each: 'port', when: MEASURED_WHOLE }],
    ['C_use', 'W', 'C * (1 - k)', 'what may be given out', { source: 'switch-data-sheet' }],
    ['P_dem', 'W', '[n_# * P_#]', 'what all the ports would take', { core: 'demand', when: 'ports' }],
    ['H', 'W', 'C_use - P_dem', 'what is left over', { core: 'headroom', when: 'fits' }],
    ['H_0', 'W', 'C_use - P_dem', 'what would be left over: not all ports are powered', { when: 'shed' }],
    ['H', 'W', 'C_use - ([q_# * P_#])', 'what is left over once ports are shed', { core: 'headroom', when: 'shed' }],
    ['P_all', 'W', '[n_# * P_#]', 'what is given out', { core: 'allocated', when: 'fits' }],
    ['P_all', 'W', '[q_# * P_#]', 'what is given out', { core: 'allocated', when: 'shed' }],
    ['P_all', 'W', '0', 'what is given out: nothing is plugged in', { core: 'allocated', when: 'no ports' }],
  ]),
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

