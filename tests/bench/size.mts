/** Prints what each import weighs in a bundle, beside its ceiling; run by `npm run size` on the built package. @module */
import { build } from 'esbuild';
import { ENTRIES } from '../../scripts/entries.ts';
import { bundle, FROM_BUILD, gzippedSize, PROBES } from '../support/bundle.ts';
import { ROOT } from '../support/files.ts';

/** Familiar imports, for a feeling of scale; nothing is judged by them. */
const FAMILIAR: readonly (readonly [string, string])[] = [
  ['mathjs: evaluate', "import { evaluate } from 'mathjs'; globalThis.kept = evaluate;"],
];

/** What is no single import, and has no ceiling. File, packages left out. */
const EDGES: readonly (readonly [string, string, readonly string[]])[] = [
  ...ENTRIES.filter(({ name }) => name !== 'farend').map(({ name, built }) => [name, `dist/${built}.js`, ['mathjs']] as const),
  ['farend/working and mathjs', 'dist/working.js', []],
  ['command farend', 'dist/cli.js', ['mathjs']],
];

/** Everything that a file of the package brings with it, as Node would load it. */
async function whole(file: string, external: readonly string[]): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [file],
    absWorkingDir: ROOT,
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'node',
    target: 'es2022',
    external: [...external],
    write: false,
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}

let over = 0;
const row = (name: string, size: number, ceiling: string, note: string): void => {
  console.log(`${name.padEnd(30)} ${size.toFixed(2).padStart(8)} ${ceiling.padStart(8)}  ${note}`);
};

console.log('gzipped, minified, one import alone [kB]');
console.log(`${'import'.padEnd(30)} ${'size'.padStart(8)} ${'ceiling'.padStart(8)}`);
for (const { name, code, ceiling } of PROBES) {
  const size = gzippedSize(await bundle(code, FROM_BUILD));
  const fits = size <= ceiling;
  if (!fits) over += 1;
  row(name, size, ceiling.toFixed(1), fits ? 'ok' : 'OVER');
}
console.log('whole files, with what they load');
for (const [name, file, external] of EDGES) row(name, gzippedSize(await whole(file, external)), '', '');
console.log('for comparison');
for (const [name, code] of FAMILIAR) row(name, gzippedSize(await bundle(code, FROM_BUILD)), '', '');
if (over > 0) {
  console.error(`${over} of ${PROBES.length} imports weigh more than their ceiling.`);
  process.exitCode = 1;
}
