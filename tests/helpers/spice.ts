/** ngspice, the circuit simulator, as WebAssembly: a netlist in, voltages and currents out. @module */
import { Simulation } from 'eecircuit-engine';

/** Node voltages as `v(node)` and currents of the sources as `i(v...)`, in lower case. */
export type Solution = ReadonlyMap<string, number>;

/**
 * Solves the DC operating point of a netlist without its title, options and end.
 *
 * ngspice stops at 5e-6 unless told otherwise. A run that fails throws nothing there and hands back the previous results, so its own error
 * list is read, and every call starts a fresh instance. A netlist without a solution never returns: ask only for what is carried.
 */
export async function solveDc(lines: readonly string[]): Promise<Solution> {
  const simulation = new Simulation();
  await simulation.start();
  simulation.setNetList(
    ['operating point', ...lines, '.options reltol=1e-10 abstol=1e-14 vntol=1e-12 itl1=2000', '.op', '.end', ''].join('\n'),
  );
  const result = await simulation.runSim();
  const errors = simulation.getError().filter((line) => line.trim() !== '');
  if (errors.length > 0) throw new Error(`ngspice: ${errors.join('; ')}`);
  if (result.dataType !== 'real') throw new Error('ngspice: complex results');
  return new Map(result.data.map(({ name, values }) => [name.toLowerCase(), values[0] as number]));
}

/** A number as ngspice reads it, all digits kept; it would take a trailing letter for a multiplier. */
export function spiceNumber(value: number): string {
  return value.toExponential(17);
}
