/** The node voltages of a network, found pass by pass from the rows of its sheet. @module */
import { oneLine } from '../lines.ts';
import type { Figures, Reading, ReadingRow } from '../sheet.ts';
import { mostCarried, type NetworkFigures, networkPasses } from './network-passes.ts';

/** Passes that are shown: the first ones, and the last. */
const SHOWN = 6;

/** The node voltages; or that there are none, with the share of the loads that the network does carry. */
export function findVoltages(reading: Reading): Reading {
  const { supply = [], ring = [], inward = [] } = reading.rows ?? {};
  const outward = [...inward].reverse();
  const network: NetworkFigures = {
    held: new Map(supply.map(({ values }, index) => [`V0_${index + 1}`, values['V0_#'] as number])),
    branches: outward.map(({ values, number, links }) => ({
      from: links?.['node'] ?? '',
      node: `W_${number}`,
      resistance: ohmsIn(values, ''),
      load: { power: values['P_#'] as number, current: values['J_#'] as number, conductance: values['G_#'] as number },
    })),
    rings: ring.map(({ values, links }) => ({ from: links?.['a'] ?? '', to: links?.['b'] ?? '', resistance: ohmsIn(values, 'x') })),
  };
  const { feasible, passes } = networkPasses(network);
  const last = passes.at(-1);
  const hasPower = network.branches.some(({ load }) => load.power > 0);
  const shown =
    passes.length <= SHOWN + 1 ? [...passes.entries()] : [...passes.entries()].filter(([at]) => at < SHOWN || at === passes.length - 1);
  const columns = outward.map(({ links, number }) => ({
    symbol: `W_${number}`,
    meaning: `voltage at ${oneLine(links?.['end'] ?? '')}`,
    unit: 'V' as const,
    latex: `W_{${number}}`,
  }));
  const table = {
    title: 'Node voltages, pass by pass',
    says: !hasPower
      ? 'Without constant powers the network is linear: one pass solves it. The voltages are put to the proof below: the currents that follow from them lead back to them.'
      : feasible
        ? 'Pass 0 leaves the constant powers out; each pass then takes the current P/W of every tap as its tangent at the voltage before, and solves what is then linear. The voltages of the last pass are put to the proof below: the currents that follow from them lead back to them.'
        : 'Pass 0 leaves the constant powers out; each pass then takes the current P/W of every tap as its tangent at the voltage before, and solves what is then linear. They lead to no voltages at which every load draws what it should.',
    columns,
    rows: shown.map(([at, volts]) => ({ label: String(at), values: columns.map(({ symbol }) => volts.get(symbol) as number) })),
  };
  const cases = reading.cases ?? [];
  const withPasses = { ...reading, ...(outward.length === 0 || passes.length === 0 ? {} : { passes: table }) };
  if (feasible && last !== undefined) {
    const found = (row: ReadingRow): ReadingRow => ({ ...row, values: { ...row.values, 'W_#': last.get(`W_${row.number}`) as number } });
    const shape = cases.includes('tree') ? 'carried by a tree' : 'carried by rings';
    return {
      ...withPasses,
      cases: [...cases, 'carried', shape, ...(outward.length === 0 ? ['supplies alone'] : ['branches', `branches, ${shape}`])],
      rows: { ...reading.rows, inward: inward.map(found) },
    };
  }
  const of = hasPower ? 'too much power' : 'too much current';
  return {
    ...withPasses,
    values: { ...reading.values, q: mostCarried(network) },
    cases: [...cases, 'not carried', of],
    // Without voltages there are no currents to work out.
    rows: {},
    no: 'the network cannot carry these loads: there are no voltages at which all of them draw what they should',
  };
}

/** As the sheet reckons it, from the figures of the row. */
function ohmsIn(values: Figures, suffix: string): number {
  const of = (name: string): number => values[`${name}_#`] as number;
  const stated = values[`R${suffix}_#`];
  return stated ?? 2 * of(`r${suffix}20`) * (1 + of(`alpha${suffix}`) * (of(`T${suffix}`) - 20)) * of(`L${suffix}`);
}

