/** What a user's bundler makes of an import. @module */
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { ENTRIES, type Entry } from '../../scripts/entries.ts';
import { ROOT } from './files.ts';

/** One probe: what a user imports, and the most it may weigh. */
export interface Probe {
  readonly name: string;
  /** The module that a user would write. */
  readonly code: string;
  /** Ceiling of the gzipped bundle. [kB] */
  readonly ceiling: number;
}

/** Ceilings in kB of 1000 bytes. A change that needs more raises them in its own commit, and says why. */
export const PROBES: readonly Probe[] = [
  // One formula and its guards.
  probe('operatingPoint', 1.4),
  // Over the 1.4 kB that are wanted, since an error can be made again from its plain data and unknown keys are refused: a table
  // and what reads it, with the coefficients of every metal in the first and the nearest name told in the last.
  probe('awg', 1.85),
  probe('poeClass', 1.45),
  probe('cable', 1.75),
  // 3.2 wanted: a misspelt key is told with the nearest name, and the limits are records that know their own ohms.
  probe('powerAtPd', 3.95),
  // 6.7 wanted. Both kinds of run, both cabling standards with their sources, the classes, cables by their names, and the reader
  // of inputs: no input tells a bundler which is meant.
  probe('maximumRun', 10),
  // Four bases, three ways to state the capacity, cards, demotion to what a port can give, and a path in every refusal.
  probe('switchBudget', 6.7),
  // A solver for trees and one for meshes, sections of 0 Ω, and a path in every refusal.
  probe('solveNetwork', 6.7),
  // 40 wanted: inputs are records now, with their defaults and the sources of these.
  { name: 'farend', code: everything('farend'), ceiling: 43.5 },
];

function probe(name: string, ceiling: number): Probe {
  return { name, code: `import { ${name} } from 'farend'; globalThis.kept = ${name};`, ceiling };
}

/** A module that uses every name of an entry. */
export function everything(entry: string): string {
  return `import * as entry from '${entry}'; globalThis.kept = entry;`;
}

/** The file behind an entry: its source, or what `npm run build` made of it. */
export const FROM_SOURCE = ({ source }: Entry): string => source;
export const FROM_BUILD = ({ built }: Entry): string => `dist/${built}.js`;

/**
 * Bundles a module for a browser, as small as esbuild makes it; packages other than this one stay outside.
 *
 * @param code - The module.
 * @param fileOf - The file that stands for an entry, below the root of the project.
 */
export async function bundle(code: string, fileOf: (entry: Entry) => string = FROM_SOURCE): Promise<string> {
  const result = await build({
    stdin: { contents: code, resolveDir: ROOT, sourcefile: 'probe.js' },
    plugins: [
      {
        name: 'entries',
        setup({ onResolve }) {
          for (const entry of ENTRIES) {
            onResolve({ filter: new RegExp(`^${entry.name}$`) }, () => ({ path: join(ROOT, fileOf(entry)), sideEffects: false }));
          }
        },
      },
    ],
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
