/** The power budget of a switch, by the classes of what is plugged into it. @module */
import { type BudgetedPort, type SwitchBudgetInput, switchBudget } from '../../plan/switch-budget.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Reading, Sheet } from '../sheet.ts';

/** A switch whose ports are set aside the power of their class. */
export type ClassBudgetInput = SwitchBudgetInput & { readonly basis: 'class' };

export const switchBudgetSheet: Sheet<ClassBudgetInput> = {
  title: 'The power budget of a switch, by class',
  core: 'switchBudget',
  keys: ['capacity', 'ports', 'reserve', 'policy'],
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
      symbol: 'P_#',
      meaning: '@: power at the port',
      unit: 'W',
      latex: 'P_{#}',
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
  ],
  steps: [
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
      source: 'ieee-802.3-class',
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
      source: 'ieee-802.3-class',
      core: 'allocated',
      when: 'fits',
    },
    {
      symbol: 'P_all',
      meaning: 'what is given out',
      formula: '[q_# * P_#]',
      unit: 'W',
      latex: 'P_{\\mathrm{all}}',
      source: 'ieee-802.3-class',
      core: 'allocated',
      when: 'shed',
    },
    {
      symbol: 'P_all',
      meaning: 'what is given out: nothing is plugged in',
      formula: '0 * C_use',
      unit: 'W',
      latex: 'P_{\\mathrm{all}}',
      source: 'ieee-802.3-class',
      core: 'allocated',
      when: 'no ports',
    },
  ],
  assumptions: ['Each port is set aside the power of its class at the port, whatever its device draws.'],
  validity: 'Up to 1 MW. Who is shed depends on priority and port number, and on the limits of cards and ports.',
  cautions: [],
  slips: [],
  guard: (input) => {
    const budget = switchBudget(input);
    if (input.basis !== 'class') throw new InputError('conflict', 'basis', "'class': other bases are not a sum over classes", input.basis);
    return budget;
  },
  read: readBudget,
};

function readBudget(input: ClassBudgetInput): Reading {
  const { capacity, powered, denied } = switchBudget(input);
  // Ports of one class that are set aside the same are one row.
  const key = ({ grantedClass, power }: BudgetedPort): string => `class ${grantedClass}, ${power} W`;
  const ports = [...powered, ...denied].sort((a, b) => a.grantedClass - b.grantedClass || a.port - b.port);
  const labels = [...new Set(ports.map(key))];
  const count = (list: readonly BudgetedPort[], label: string): number => list.filter((port) => key(port) === label).length;
  return {
    values: { C: capacity, k: input.reserve ?? 0 },
    cases: ports.length === 0 ? ['no ports'] : ['ports', denied.length === 0 ? 'fits' : 'shed'],
    rows: {
      class: labels.map((label) => ({
        label: label.split(',')[0] as string,
        values: { 'P_#': ports.find((port) => key(port) === label)?.power ?? 0, 'n_#': count(ports, label), 'q_#': count(powered, label) },
      })),
    },
    assumptions: denied.length === 0 ? [] : [`Shed, first to last: port ${denied.map(({ port }) => port).join(', ')}.`],
  };
}
