/**
 * Builds `dist/`: one file for each entry, two that they share, and the types, one readable file for each module.
 *
 * An entry loads at most three files. `core` holds what the daily job needs, `rooms` the rest of the rooms without a package;
 * `farend` loads itself and `core`, every other entry itself, `rooms` and `core`. So each function and each class stands once
 * in a format: an error of one entry is an `InputError` of every other, and `bounds` knows a function wherever it was imported.
 * @module
 */
import { chmodSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { transform } from 'esbuild';
import { type OutputChunk, type Plugin, type RollupBuild, rollup } from 'rollup';
import { ROOT } from '../tests/support/files.ts';
import { declarationsOf } from './declarations.ts';
import { ENTRIES, typesOf } from './entries.ts';

const SRC = join(ROOT, 'src');
const DIST = join(ROOT, 'dist');
const MOST_FILES = 3;
const TARGET = 'es2022';

const typescript: Plugin = {
  name: 'typescript',
  async transform(code, id) {
    if (!id.endsWith('.ts')) return undefined;
    return { code: (await transform(code, { loader: 'ts', target: TARGET, sourcefile: id })).code, map: null };
  },
};

/** Comments and blanks go, for they cost time at every start; names and short lines stay, so that a stack trace can be read. */
const compact: Plugin = {
  name: 'compact',
  async renderChunk(code) {
    const options = { target: TARGET, minifyWhitespace: true, minifySyntax: true, lineLimit: 140, legalComments: 'none' } as const;
    return { code: (await transform(code, options)).code, map: null };
  },
};

async function load(input: Readonly<Record<string, string>>): Promise<RollupBuild> {
  return rollup({
    input: Object.fromEntries(Object.entries(input).map(([built, source]) => [built, join(ROOT, source)])),
    external: /^(?:node:|[a-z@])/,
    plugins: [typescript],
    treeshake: { moduleSideEffects: false },
    onwarn: (warning) => {
      throw new Error(warning.message);
    },
  });
}

/** Modules that the daily job needs, and all that these import: what stands in `core`. */
async function modulesOfDailyJob(): Promise<ReadonlySet<string>> {
  const build = await load({ index: 'src/index.ts' });
  const { output } = await build.generate({ format: 'es' });
  const modules = new Set(Object.entries(output[0].modules).flatMap(([id, { renderedLength }]) => (renderedLength > 0 ? [id] : [])));
  const imports = new Map(build.cache?.modules.map(({ id, resolvedIds }) => [id, Object.values(resolvedIds)]));
  // A set hands out what is added to it while it is walked.
  for (const id of modules) for (const imported of imports.get(id) ?? []) if (!imported.external) modules.add(imported.id);
  return modules;
}

async function write(format: 'es' | 'cjs', input: Readonly<Record<string, string>>, core: ReadonlySet<string>): Promise<OutputChunk[]> {
  const build = await load(input);
  const extension = format === 'es' ? 'js' : 'cjs';
  const { output } = await build.write({
    dir: DIST,
    format,
    entryFileNames: `[name].${extension}`,
    chunkFileNames: `[name].${extension}`,
    manualChunks: (id) => (core.has(id) ? 'core' : isOfRooms(id) ? 'rooms' : undefined),
    generatedCode: { preset: 'es2015' },
    minifyInternalExports: false,
    plugins: [compact],
  });
  return output.filter((file): file is OutputChunk => file.type === 'chunk');
}

/** Whether a module belongs to a room without a package; the list of a room's names stands in the entry itself. */
function isOfRooms(id: string): boolean {
  return !/\/src\/(?:schedule|working)\/|\/index\.ts$|\/cli\.ts$/.test(id);
}

/** Every file that an entry loads at once, itself among them. */
function loaded(entry: string, files: ReadonlyMap<string, OutputChunk>): string[] {
  const found = new Set([entry]);
  for (const file of found) for (const imported of files.get(file)?.imports ?? []) if (files.has(imported)) found.add(imported);
  return [...found];
}

function requireFewFiles(chunks: readonly OutputChunk[]): void {
  const files = new Map(chunks.map((chunk) => [chunk.fileName, chunk]));
  for (const { fileName, isEntry, name } of chunks) {
    const all = loaded(fileName, files);
    if (isEntry && name !== 'cli' && all.length > MOST_FILES) throw new Error(`${fileName} loads ${all.length} files: ${all.join(', ')}`);
  }
}

function writeTypes(): void {
  const declarations = declarationsOf(SRC, ENTRIES.map(typesOf));
  // The same files twice: the kind of package that a folder belongs to says which format its types are of.
  for (const folder of ['types', 'types-commonjs']) {
    for (const [path, text] of declarations) {
      const file = join(DIST, folder, `${path}.d.ts`);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, text);
    }
  }
  writeFileSync(join(DIST, 'types-commonjs/package.json'), '{ "type": "commonjs" }\n');
}

rmSync(DIST, { recursive: true, force: true });
const entries = Object.fromEntries(ENTRIES.map(({ built, source }) => [built, source]));
const core = await modulesOfDailyJob();
requireFewFiles(await write('es', { ...entries, cli: 'src/cli.ts' }, core));
requireFewFiles(await write('cjs', entries, core));
chmodSync(join(DIST, 'cli.js'), 0o755);
writeTypes();
