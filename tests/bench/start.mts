/** What the import of each entry adds to the start of a process, over an empty module. @module */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ENTRIES } from '../../scripts/entries.ts';
import { print, spreadOf } from './measure.mts';

const PROCESSES = 15;

/** The most that an import may add. [ms] Other entries: that of a room. `farend/working` loads mathjs, which is all of its time. */
const BUDGETS: Readonly<Record<string, number | undefined>> = { farend: 4, 'farend/schedule': 12, 'farend/working': undefined };
const ROOM_BUDGET = 6;

const folder = mkdtempSync(join(tmpdir(), 'farend-start-'));
try {
  const empty = join(folder, 'empty.mjs');
  writeFileSync(empty, 'export {};\n');
  // Timed within the process: the start of node itself is a hundred times as long and varies more than the import.
  const timeOf = (url: string): number => {
    const script = `const start = performance.now(); await import(${JSON.stringify(url)}); process.stdout.write(String(performance.now() - start));`;
    return Number(execFileSync(process.execPath, ['--input-type=module', '--eval', script], { encoding: 'utf8' }));
  };
  const entries = ENTRIES.map(({ name, built }) => ({ name, url: new URL(`../../dist/${built}.js`, import.meta.url).href }));
  for (const { url } of entries) timeOf(url);
  const rounds = Array.from({ length: PROCESSES }, () => ({
    without: timeOf(pathToFileURL(empty).href),
    withIt: entries.map(({ url }) => timeOf(url)),
  }));
  // The least of each: what else the machine does can only add.
  const without = spreadOf(rounds.map((round) => round.without));
  for (const [index, { name }] of entries.entries()) {
    const { least, median, most } = spreadOf(rounds.map((round) => (round.withIt[index] as number) - without.least));
    const budget = Object.hasOwn(BUDGETS, name) ? BUDGETS[name] : ROOM_BUDGET;
    const note = `least; median ${median.toFixed(2)} of ${PROCESSES} processes; an empty module takes ${without.least.toFixed(2)} ms`;
    print(`import '${name}'`, { median: least, least, most }, ' ms', budget, note);
  }
} finally {
  rmSync(folder, { recursive: true });
}
