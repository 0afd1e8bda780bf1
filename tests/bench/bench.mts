/** Runs every benchmark in a process of its own, so that none warms up for another; `npm run bench`. @module */
import { spawnSync } from 'node:child_process';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';

const BENCHMARKS: readonly (readonly [string, ...string[]])[] = [
  ['operating-point.mts', 'one'],
  ['operating-point.mts', 'mixed'],
  ['power-at-pd.mts'],
  ['network.mts'],
  ['switch-budget.mts'],
  ['start.mts'],
  ['schedule.mts'],
  ['schedule.mts', 'memory'],
];

console.log(`node ${process.version}, ${cpus().length} x ${cpus()[0]?.model ?? 'unknown'}; median (least to most) of interleaved rounds`);
let broken = 0;
for (const [file, ...rest] of BENCHMARKS) {
  const path = fileURLToPath(new URL(file, import.meta.url));
  const { status } = spawnSync(process.execPath, ['--import', 'tsx', path, ...rest], { stdio: 'inherit' });
  if (status !== 0) broken += 1;
}
// A figure over its budget is printed as such; only a benchmark that did not run is a failure.
process.exitCode = broken === 0 ? 0 : 1;
