/**
 * How far can this device go from its port? One line per cable and temperature, with the limit that bites first.
 *
 * From a clone: `npx tsx examples/how-far.ts`. In your own project import from `farend`.
 */
// biome-ignore-all lint/suspicious/noConsole: an example prints
import { cable, maximumRun } from '../src/index.ts';

/** A class 3 device, with the most pair-loop resistance that its data sheet allows, if it states one. */
function howFar(name: 'cat5e' | 'cat6a', temperature: number, ohms?: number): string {
  const run = maximumRun({
    cable: cable(name),
    temperature,
    poeClass: 3,
    cords: [{ cable: cable('cord-24'), length: 5 }],
    connections: 2,
    maximumResistance: ohms === undefined ? undefined : { ohms, loop: 'pairLoop' },
  });
  if (!run.feasible)
    return `${name} at ${temperature} °C: no length will do, ${run.governedBy} is missed by ${run.shortfall.toFixed(1)} ${run.unit}`;
  if (run.unbounded) return `${name} at ${temperature} °C: nothing bounds it`;
  const power = run.powerLength?.toFixed(1) ?? 'any';
  return `${name} at ${temperature} °C: ${run.length.toFixed(1)} m installed (${run.governedBy}); power alone ${power} m`;
}

console.log(howFar('cat5e', 20, 15)); // => 'cat5e at 20 °C: 68.2 m installed (device-resistance); power alone 68.2 m'
console.log(howFar('cat5e', 45, 15)); // => 'cat5e at 45 °C: 62.1 m installed (device-resistance); power alone 62.1 m'

// Category 6A may have as much resistance as 5e: what a standard promises is no more.
console.log(howFar('cat6a', 45, 15)); // => 'cat6a at 45 °C: 62.1 m installed (device-resistance); power alone 62.1 m'
console.log(howFar('cat6a', 20)); // => 'cat6a at 20 °C: 90.0 m installed (permanent-link-length); power alone 201.5 m'
