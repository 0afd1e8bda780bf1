/** What `import 'farend'` adds to the start of a process, over an empty module. @module */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { print, spreadOf } from './measure.mts';

const PROCESSES = 15;
const folder = mkdtempSync(join(tmpdir(), 'farend-start-'));
try {
  const empty = join(folder, 'empty.mjs');
  writeFileSync(empty, 'export {};\n');
  const farend = new URL('../../dist/index.js', import.meta.url).href;
  // Timed within the process: the start of node itself is a hundred times as long and varies more than the import.
  const timeOf = (url: string): number => {
    const script = `const start = performance.now(); await import(${JSON.stringify(url)}); process.stdout.write(String(performance.now() - start));`;
    return Number(execFileSync(process.execPath, ['--input-type=module', '--eval', script], { encoding: 'utf8' }));
  };
  timeOf(farend);
  const rounds = Array.from({ length: PROCESSES }, () => {
    const without = timeOf(pathToFileURL(empty).href);
    return { without, withIt: timeOf(farend) };
  });
  const without = spreadOf(rounds.map((round) => round.without));
  const added = spreadOf(rounds.map((round) => round.withIt - without.median));
  print(`import 'farend' over an empty module, ${PROCESSES} processes`, added, ' ms', 5, `empty module ${without.median.toFixed(2)} ms`);
} finally {
  rmSync(folder, { recursive: true });
}
