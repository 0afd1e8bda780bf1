/** The same DC network put to ngspice (WebAssembly build from the npm registry): a circuit solver nobody here wrote. */
import { Simulation } from 'eecircuit-engine';
import type { NetworkInput } from '../../src/index.ts';

/**
 * Branches of one network as netlist lines; nodes carry the prefix, so that many networks share one run.
 *
 * `soft` loads draw their power down to 1 % of the supply voltage and fade below: such a circuit always has an operating
 * point, where ngspice would otherwise look for one for ever.
 */
function lines({ supplies, sections, taps }: NetworkInput, prefix: string, soft: boolean): string[] {
  const node = (name: string | number): string => `${prefix}${name}`;
  const nominal = Math.max(...supplies.map(({ voltage }) => voltage));
  const names = new Set(sections.flatMap(({ from, to }) => [node(from), node(to)]));
  return [
    ...supplies.map(({ at, voltage }, i) => `V${prefix}${i} ${node(at)} 0 dc ${voltage}`),
    ...sections.map(({ from, to, resistance }, i) => `R${prefix}${i} ${node(from)} ${node(to)} ${resistance}`),
    ...taps.map(({ at, load }, i) => {
      const v = `V(${node(at)})`;
      if (load.power !== undefined && soft) return `B${prefix}${i} ${node(at)} 0 I=${load.power}*${v}/(${v}*${v}+${(0.01 * nominal) ** 2})`;
      if (load.current !== undefined && soft)
        return `B${prefix}${i} ${node(at)} 0 I=${load.current}*${v}/sqrt(${v}*${v}+${(0.01 * nominal) ** 2})`;
      if (load.power !== undefined) return `B${prefix}${i} ${node(at)} 0 I=${load.power}/V(${node(at)})`;
      if (load.current !== undefined) return `I${prefix}${i} ${node(at)} 0 dc ${load.current}`;
      return `Rload${prefix}${i} ${node(at)} 0 ${load.resistance}`;
    }),
    // Without a start near the supply a constant power settles on the unstable root.
    ...[...names].map((name) => `.nodeset v(${name})=${nominal}`),
  ];
}

/** Node voltages of each network, or `undefined` for all of them where ngspice found no operating point. */
export async function spiceVoltages(networks: readonly NetworkInput[], soft = false): Promise<Record<string, number>[] | undefined> {
  // A fresh instance: a failed run would otherwise leave the previous run's voltages behind.
  const simulation = new Simulation();
  await simulation.start();
  const netlist = [
    'networks',
    ...networks.flatMap((network, i) => lines(network, `n${i}x`, soft)),
    '.options reltol=1e-10 abstol=1e-14 vntol=1e-12 itl1=500 gmin=1e-18',
    '.op',
    '.end',
  ].join('\n');
  simulation.setNetList(netlist);
  let run: Awaited<ReturnType<Simulation['runSim']>>;
  try {
    run = await simulation.runSim();
  } catch {
    return undefined;
  }
  if (simulation.getError().length > 0 || run.dataType !== 'real' || run.data.length === 0) return undefined;
  const found: Record<string, number>[] = networks.map(() => ({}));
  for (const { name, values } of run.data) {
    const match = /^v\(n(\d+)x(.+)\)$/.exec(name);
    if (match !== null) (found[Number(match[1])] as Record<string, number>)[match[2] as string] = values[0] as number;
  }
  return found;
}
