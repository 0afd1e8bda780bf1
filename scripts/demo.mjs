// Checks the example schedule with the built command: the report on the terminal, then the same as Markdown and CSV in out/.
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const check = ['dist/cli.js', 'check', 'examples/tidemill-playhouse.csv', '--switches', 'examples/tidemill-playhouse-switches.csv'];

function farend(stderr, ...rest) {
  const stdio = ['inherit', 'inherit', stderr];
  const { status, signal, stderr: said } = spawnSync(process.execPath, [...check, ...rest], { cwd: root, stdio, encoding: 'utf8' });
  // 1 says that the check found something, which the example is there to show; anything else is a broken demo.
  if (status !== 0 && status !== 1) {
    console.error(said ?? '');
    console.error(`node ${[...check, ...rest].join(' ')} ended with ${signal ?? status}`);
    process.exit(status ?? 2);
  }
}

mkdirSync(new URL('../out', import.meta.url), { recursive: true });
farend('inherit');
const written = { markdown: 'out/tidemill-playhouse.md', csv: 'out/tidemill-playhouse.csv' };
// The report on the terminal has said how many pass; the line about each file would say it again.
for (const [format, file] of Object.entries(written)) farend('pipe', '--format', format, '--output', file);
console.log(`\nThe same report is in ${Object.values(written).join(' and ')}.`);
