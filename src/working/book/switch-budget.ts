/** The power budget of a switch, by the classes of what is plugged into it, or by what that draws. @module */

import { poeClass } from '../../ethernet/index.ts';
import { type BudgetBasis, type SwitchBudgetInput, switchBudget } from '../../plan/index.ts';
import { type BookSheet, steps } from '../engine/rows.ts';
import type { ReadingRow } from '../engine/sheet.ts';
import { type AdmittedPort, admittedPorts, type PortCase } from './admitted-ports.ts';

type Case =
  | PortCase
  | 'published'
  | 'by supplies'
  | 'by class'
  | 'by draw'
  | 'by measurement'
  | 'ports'
  | 'no ports'
  | 'fits'
  | 'shed'
  | 'reserve'
  | 'nanowatts';

export const switchBudgetSheet: BookSheet<SwitchBudgetInput, Case> = {
  title: 'The power budget of a switch',
  needs: ['capacity', 'ports'],
  keys: ['basis', 'reserve', 'policy'],
  // biome-ignore format: one figure a row
  givens: [
    ['C', 'W', 'power that the switch has for its ports, with the supplies that work', 'capacity, budgetBySupplies or supplies', { when: 'published' }],
    ['w_#', 'W', '@: rating of a supply that works', 'supplies[].power', { each: 'supply' }],
    ['P_sys', 'W', 'power that the switch itself takes', 'systemLoad', { when: 'by supplies', value: 0 }],
    ['k', '1', 'share that is kept back', 'reserve', { value: 0 }],
    ['u', 'W', 'a nanowatt: powers are added in whole ones, so that sums are exact', 'the budget', { when: 'nanowatts', value: 1e-9 }],
    ['P_#', 'W', '@: power at the port', 'ports[].poeClass', { source: 'ieee-802.3-class', each: 'class' }],
    ['D_#', 'W', '@: power that it allows the device, to compare', 'ports[].poeClass', { source: 'ieee-802.3-class', each: 'class' }],
    ['n_#', '1', '@: ports', 'ports', { each: 'class' }],
    ['q_#', '1', '@: ports that keep power, lowest priority and highest number shed first', 'ports[].priority', { each: 'class', when: 'shed' }],
    ['B_#', 'W', '@: power of its class at the port', 'ports[].poeClass', { source: 'ieee-802.3-class', each: 'port', when: 'class bounds' }],
    ['M_#', 'W', '@: power measured at the port', 'ports[].measured', { source: 'measured-power', each: 'port', when: 'measured' }],
    ['p_#', 'W', '@: power that the device draws', 'ports[].requested or ports[].pdPower', { each: 'port', when: 'drawn' }],
    ['V_#', 'V', '@: voltage at the port', 'ports[].pseVoltage', { source: 'row', each: 'port', when: 'run' }],
    ['R_#', 'Ω', '@: resistance of the loop that power sees', 'ports[].resistance', { source: 'row', each: 'port', when: 'run' }],
    ['n_#', '1', '@: how many', 'ports', { each: 'port' }],
    ['q_#', '1', '@: how many keep power, lowest priority and highest number shed first', 'ports[].priority', { each: 'port', when: 'shed' }],
  ],
  // biome-ignore format: one figure a row
  steps: [
    steps([
    ['D_#', 'V²', 'V_#^2 - 4 * p_# * R_#', '@: discriminant, what stands under the root: under 0, the run cannot carry the draw', { source: 'constant-power', when: 'run' }],
    ['I_#', 'A', '2 * p_# / (V_# + sqrt(D_#))', '@: current of the port', { source: 'constant-power', when: 'carried' }],
    ['S_#', 'W', 'V_# * I_#', '@: power that the port sources', { core: '@.power', when: 'by flow' }],
    ['S_#', 'W', 'V_# * I_#', '@: power that the port sources: not less than that of its class, but for the rounding of the standard', { when: 'over its class' }],
    ['P_#', 'W', 'min(S_#, B_#)', '@: set aside, that of its class', { source: 'ieee-802.3-class', core: '@.power', when: 'over its class' }],
    ['P_#', 'W', 'B_#', '@: set aside, that of its class: nothing was asked for or measured', { source: 'ieee-802.3-class', core: '@.power', when: 'no request' }],
    ['P_#', 'W', 'B_#', '@: wanted, that of its class; it is denied, for its run cannot carry the draw', { source: 'ieee-802.3-class', core: '@.power', when: 'not carried' }],
    ['P_#', 'W', 'round(S_# / u + 1 / 2) * u', '@: set aside, in whole nanowatts rounded up, as they are added', { when: 'by flow, rounded up' }],
    ['P_#', 'W', 'round(S_# / u) * u', '@: set aside, in whole nanowatts', { when: 'by flow, whole' }],
    ['P_#', 'W', 'round(M_# / u + 1 / 2) * u', '@: set aside, in whole nanowatts rounded up, as they are added', { source: 'measured-power', when: 'measured, rounded up' }],
    ['P_#', 'W', 'M_#', '@: set aside, what was measured', { source: 'measured-power', core: '@.power', when: 'measured, whole' }],
  ], { each: 'port' }),
    ['C', 'W', 'max([w_#] - P_sys, 0)', 'power that the switch has for its ports, an estimate: the ratings, less what it takes itself', { source: 'supply-ratings', core: 'capacity', when: 'by supplies' }],
    ['C_use', 'W', 'C * (1 - k)', 'what may be given out', { source: 'switch-data-sheet' }],
    ['P_dem', 'W', '[n_# * P_#]', 'what all the ports would take', { core: 'demand', when: 'ports' }],
    ['H', 'W', 'C_use - P_dem', 'what is left over', { core: 'headroom', when: 'ports, fits' }],
    ['H_0', 'W', 'C_use - P_dem', 'what would be left over: not all ports are powered', { when: 'shed' }],
    ['H', 'W', 'C_use - ([q_# * P_#])', 'what is left over once ports are shed', { core: 'headroom', when: 'shed' }],
    ['P_all', 'W', '[n_# * P_#]', 'what is given out', { core: 'allocated', when: 'ports, fits' }],
    ['P_all', 'W', '[q_# * P_#]', 'what is given out', { core: 'allocated', when: 'shed' }],
    ['P_all', 'W', '0', 'what is given out: nothing is plugged in', { core: 'allocated', when: 'no ports' }],
  ],
  assumptions: [],
  validity: 'Up to 1 MW. Who is shed depends on priority and port number, and on the limits of cards and ports.',
  // Who takes too little for a port, or keeps nothing back, sheds others or none: only the demand is then this slip alone.
  slips: [
    ['pd-power-for-class-power', { 'P_#': 'D_#' }, 'by class, fits'],
    ['pd-power-for-class-power', { P_dem: '[n_# * D_#]' }, 'by class, shed'],
    ['run-loss-left-out', { 'P_#': 'p_#' }, 'by draw, fits'],
    ['run-loss-left-out', { P_dem: '[n_# * p_#]' }, 'by draw, shed'],
    ['demand-for-allocated', { P_all: 'P_dem' }, 'shed'],
    ['reserve-left-out', { k: '0' }, 'reserve, fits'],
  ],
  guard: switchBudget,
  read: (input) => {
    const { basis, reserve = 0 } = input;
    const { capacity, ratings } = capacityOf(input);
    const ports = admittedPorts(input, capacity);
    const denied = ports.filter(({ isPowered }) => !isPowered).reverse();
    const inOrder = [...ports].sort((a, b) => a.grantedClass - b.grantedClass || a.port - b.port);
    return {
      values: { C: capacity },
      cases: [
        ratings.length === 0 ? 'published' : 'by supplies',
        ports.length === 0 ? 'no ports' : 'ports',
        denied.length === 0 ? 'fits' : 'shed',
        basis === 'class' ? 'by class' : basis === 'measured' ? 'by measurement' : 'by draw',
        basis !== 'class' && ports.some(({ isFlow, cases }) => cases.includes('rounded up') || isFlow) && 'nanowatts',
        reserve > 0 && 'reserve',
      ],
      rows: {
        supply: ratings.map((power, place) => ({ label: `supply ${place + 1}`, values: { 'w_#': power } })),
        class: basis === 'class' ? classRows(inOrder) : [],
        port: basis === 'class' ? [] : portRows(inOrder),
      },
      assumptions: [
        ASIDE[basis],
        ...(basis === 'class' ? [] : switchBudget(input).assumptions.map(fullSentence)),
        denied.length > 0 && `Shed, first to last: port ${denied.map(({ port }) => port).join(', ')}.`,
      ],
    };
  },
};

const ASIDE: Readonly<Record<BudgetBasis, string>> = {
  class: 'Each port is set aside the power of its class at the port, whatever its device draws.',
  requested: 'Each port is set aside what its request takes over the worst channel, and no more than the power of its class.',
  calculated: 'Each port is set aside what the draw of its device takes over its own run.',
  measured: 'Each port is set aside what was measured at it.',
};

/** What the switch has, and the ratings that it is added from where no budget is published: what fails by number is the largest. */
function capacityOf({ capacity, budgetBySupplies, fitted, failed = 0, supplies = [], systemLoad = 0 }: SwitchBudgetInput): {
  readonly capacity: number;
  readonly ratings: readonly number[];
} {
  if (capacity !== undefined) return { capacity, ratings: [] };
  if (budgetBySupplies !== undefined) {
    return { capacity: budgetBySupplies[(fitted ?? budgetBySupplies.length) - Number(failed) - 1] ?? 0, ratings: [] };
  }
  const names = Array.isArray(failed) ? failed : [];
  const left = supplies.filter(({ name }) => name === undefined || !names.includes(name)).map(({ power }) => power);
  const ratings = left.sort((a, b) => b - a).slice(Array.isArray(failed) ? 0 : Number(failed));
  return { capacity: Math.max(ratings.reduce((sum, power) => sum + power, 0) - systemLoad, 0), ratings };
}

/** What the core says in passing, as a sentence of its own. */
function fullSentence(text: string): string {
  return `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}${text.endsWith('.') ? '' : '.'}`;
}

/** Ports of one class that are set aside the same are one row. */
function classRows(ports: readonly AdmittedPort[]): ReadingRow<Case>[] {
  return grouped(ports, ({ grantedClass, power }) => `${grantedClass} ${power}`).map(([first, counts]) => ({
    label: `class ${first.grantedClass}`,
    values: { 'P_#': first.power, 'D_#': poeClass(first.grantedClass).pdPower, ...counts },
  }));
}

/** Ports that draw the same over the same run are one row. */
function portRows(ports: readonly AdmittedPort[]): ReadingRow<Case>[] {
  return grouped(ports, ({ values, cases, sources }) => JSON.stringify([values, cases, sources])).map(
    ([{ values, cases, sources, core }, counts, numbers]) => ({
      label: portsLabel(numbers),
      values: { ...values, ...counts },
      cases,
      sources,
      core,
    }),
  );
}

/** Ports that are alike: the first, how many there are and how many keep power, and their numbers. */
function grouped(
  ports: readonly AdmittedPort[],
  key: (port: AdmittedPort) => string,
): (readonly [first: AdmittedPort, counts: { readonly 'n_#': number; readonly 'q_#': number }, numbers: readonly number[]])[] {
  return [...new Set(ports.map(key))].map((name) => {
    const group = ports.filter((port) => key(port) === name);
    const counts = { 'n_#': group.length, 'q_#': group.filter(({ isPowered }) => isPowered).length };
    return [group[0] as AdmittedPort, counts, group.map(({ port }) => port)];
  });
}

function portsLabel(ports: readonly number[]): string {
  if (ports.length === 1) return `port ${ports[0]}`;
  return ports.length <= 3 ? `ports ${ports.join(', ')}` : `ports ${ports.slice(0, 2).join(', ')} and ${ports.length - 2} more`;
}
