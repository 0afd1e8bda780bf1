/** The node voltages of a network, found pass by pass from the rows of its sheet. @module */
import { oneLine } from '../engine/lines.ts';
import type { Figures, Reading } from '../engine/sheet.ts';
import { texOf } from '../engine/tex-of.ts';
import { mostCarried, type NetworkFigures, networkPasses } from './network-passes.ts';
import type { NetworkCase } from './network-reading.ts';

/** Passes that are shown: the first ones, and the last. */
const SHOWN = 6;

const LINEAR = 'Without constant powers the network is linear: one pass solves it.';
const NEWTON =
  'Pass 0 leaves the constant powers out; each pass then takes the current P/W of every tap as its tangent at the voltage before, and solves what is then linear.';
const PROOF = 'The voltages are put to the proof below: the currents that follow from them lead back to them.';

/** The node voltages; or that there are none, with the share of the loads that the network does carry. */
export function findVoltages(reading: Reading<NetworkCase>, stated: Figures): Reading<NetworkCase> {
  const { cases = [], rows: { supply = [], ring = [], inward = [], ...rows } = {} } = reading;
  const outward = [...inward].reverse();
  const figure = (name: string, number: number | undefined): number => stated[`${name}_${number}`] ?? 0;
  // As the sheet reckons it.
  const ohmsOf = (x: '' | 'x', number: number | undefined): number => {
    const { T_ref = 20, [`R${x}_${number}`]: ohms } = stated;
    const resistanceRatio = 1 + figure(`alpha${x}`, number) * (figure(`T${x}`, number) - T_ref);
    return ohms ?? 2 * figure(`r${x}20`, number) * resistanceRatio * figure(`L${x}`, number);
  };
  const network: NetworkFigures = {
    held: new Map(supply.map((_, index) => [`V0_${index + 1}`, figure('V0', index + 1)])),
    branches: outward.map(({ number, links }) => ({
      from: links?.['node'] ?? '',
      node: `W_${number}`,
      resistance: ohmsOf('', number),
      load: { power: figure('P', number), current: figure('J', number), conductance: figure('G', number) },
    })),
    rings: ring.map(({ links }, index) => ({ from: links?.['a'] ?? '', to: links?.['b'] ?? '', resistance: ohmsOf('x', index + 1) })),
  };
  const { feasible, passes } = networkPasses(network);
  const last = passes.at(-1);
  const hasPower = network.branches.some(({ load }) => load.power > 0);
  const columns = outward.map(({ links, number }) => ({
    symbol: `W_${number}`,
    meaning: `voltage at ${oneLine(links?.['end'] ?? '')}`,
    unit: 'V' as const,
    latex: texOf(`W_${number}`),
  }));
  const table = {
    title: 'Node voltages, pass by pass',
    says: !hasPower
      ? `${LINEAR} ${PROOF}`
      : feasible
        ? `${NEWTON} ${PROOF.replace('voltages', 'voltages of the last pass')}`
        : `${NEWTON} They lead to no voltages at which every load draws what it should.`,
    columns,
    rows: [...passes.entries()]
      .filter(([at]) => passes.length <= SHOWN + 1 || at < SHOWN || at === passes.length - 1)
      .map(([at, volts]) => ({ label: String(at), values: columns.map(({ symbol }) => volts.get(symbol) as number) })),
  };
  const found = { ...reading, passes: outward.length === 0 || passes.length === 0 ? undefined : table };
  if (feasible && last !== undefined) {
    return {
      ...found,
      cases: [
        ...cases,
        'carried',
        cases.includes('tree') ? 'carried by a tree' : 'carried by rings',
        outward.length === 0 ? 'supplies alone' : 'branches',
      ],
      rows: {
        ...rows,
        supply,
        ring,
        inward: inward.map((row) => ({ ...row, values: { ...row.values, 'W_#': last.get(`W_${row.number}`) as number } })),
      },
    };
  }
  return {
    ...found,
    values: { ...reading.values, q: mostCarried(network) },
    cases: [...cases, 'not carried', hasPower ? 'too much power' : 'too much current'],
    // Without voltages there are no currents to work out.
    rows: {},
    no: 'the network cannot carry these loads: there are no voltages at which all of them draw what they should',
  };
}
