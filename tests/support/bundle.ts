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

/**
 * Ceilings in kB of 1000 bytes: what is reached, rounded up to 0.1. A change that needs more raises them in its own commit.
 * Planned were 1.2 for operatingPoint, awg, poeClass and cable, 3 for powerAtPd, 4 for maximumRun, switchBudget and
 * solveNetwork, 25 for the whole core at most: where one stands above its plan, the line beside it says why.
 */
export const PROBES: readonly Probe[] = [
  probe('operatingPoint', 1.2),
  // Seventeen metals by name, two of them graded by wire diameter: 0.5 kB.
  probe('awg', 1.7),
  probe('poeClass', 1.2),
  // Eight cables with the key of each source.
  probe('cable', 1.3),
  probe('powerAtPd', 2.9),
  // Both kinds of run, both cabling standards with their sources, and the classes: no input tells a bundler which is meant.
  probe('maximumRun', 6.8),
  // Four bases, three ways to state the capacity, cards, demotion to what a port can give, and a path in every refusal.
  probe('switchBudget', 5.3),
  // A solver for trees and one for meshes, sections of 0 Ω, and a path in every refusal.
  probe('solveNetwork', 5.3),
  // More than a hundred functions; a tenth is the bibliography (that of the working is in it), another tenth the words of refusals and cautions.
  { name: 'whole core', code: "import * as farend from 'farend'; globalThis.kept = farend;", ceiling: 62 },
];

function probe(name: string, ceiling: number): Probe {
  return { name, code: `import { ${name} } from 'farend'; globalThis.kept = ${name};`, ceiling };
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
