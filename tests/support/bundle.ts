/** What a user's bundler makes of an import. @module */
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { ROOT } from './files.ts';

/** One probe: what a user imports, and the most it may weigh. */
export interface Probe {
  readonly name: string;
  /** The module that a user would write. */
  readonly code: string;
  /** Ceiling of the gzipped bundle. [kB] */
  readonly ceiling: number;
}

/** Ceilings in kB of 1000 bytes. A change that needs more raises them in its own commit, the whole core never above 25. */
export const PROBES: readonly Probe[] = [
  ...probes(['operatingPoint', 'awg', 'poeClass', 'cable'], 1.2),
  ...probes(['powerAtPd'], 3),
  ...probes(['maximumRun', 'switchBudget', 'solveNetwork'], 4),
  { name: 'whole core', code: "import * as farend from 'farend'; globalThis.kept = farend;", ceiling: 10 },
];

function probes(names: readonly string[], ceiling: number): Probe[] {
  return names.map((name) => ({ name, code: `import { ${name} } from 'farend'; globalThis.kept = ${name};`, ceiling }));
}

/**
 * Bundles a module for a browser, as small as esbuild makes it.
 *
 * @param code - The module.
 * @param entry - The file that stands for `farend`, below the root of the project.
 */
export async function bundle(code: string, entry: string): Promise<string> {
  const result = await build({
    stdin: { contents: code, resolveDir: ROOT, sourcefile: 'probe.js' },
    alias: { farend: `./${entry}` },
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    write: false,
    logLevel: 'silent',
  });
  return result.outputFiles[0]?.text ?? '';
}

/** Gzipped size of a text. [kB of 1000 bytes] */
export function gzippedSize(text: string): number {
  return gzipSync(text, { level: 9 }).length / 1000;
}
