/** Prints what each import weighs in a bundle, beside its ceiling; run by `npm run size` on the built package. @module */
import { bundle, gzippedSize, PROBES } from '../support/bundle.ts';

/** Familiar imports, for a feeling of scale; nothing is judged by them. */
const FAMILIAR: readonly (readonly [string, string])[] = [
  ['zod: z.object with one number', "import { z } from 'zod'; globalThis.kept = z.object({ length: z.number() });"],
  ['mathjs: evaluate', "import { evaluate } from 'mathjs'; globalThis.kept = evaluate;"],
];

let over = 0;
const row = (name: string, size: number, ceiling: string, note: string): void => {
  console.log(`${name.padEnd(30)} ${size.toFixed(2).padStart(8)} ${ceiling.padStart(8)}  ${note}`);
};

console.log('gzipped, minified, one import alone [kB]');
console.log(`${'import'.padEnd(30)} ${'size'.padStart(8)} ${'ceiling'.padStart(8)}`);
for (const { name, code, ceiling } of PROBES) {
  const size = gzippedSize(await bundle(code, 'dist/index.js'));
  const fits = size <= ceiling;
  if (!fits) over += 1;
  row(name, size, ceiling.toFixed(1), fits ? 'ok' : 'OVER');
}
console.log('for comparison');
for (const [name, code] of FAMILIAR) row(name, gzippedSize(await bundle(code, 'dist/index.js')), '', '');
if (over > 0) {
  console.error(`${over} of ${PROBES.length} imports weigh more than their ceiling.`);
  process.exitCode = 1;
}
