/**
 * Builds `dist/`: one file for each entry, two that they share, and the types, one readable file for each module.
 *
 * An entry loads at most three files, and little that it does not need. `core` holds what the daily job needs: `farend` is a list of
 * names out of it. A room's entry holds the rest of its room, `rooms` what two of them share; `schedule` and `working` hold all they
 * need beside `core`, in copies of their own. So an error of one entry is an `InputError` of every other, and `bounds` knows the
 * functions of every entry, for these stand once, in `core`.
 * @module
 */
import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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
/** What tells the copy of a module that one entry has. */
const QUERY = /\?(\w+)$/;

const typescript: Plugin = {
  name: 'typescript',
  async transform(code, id) {
    if (!id.replace(QUERY, '').endsWith('.ts')) return undefined;
    return { code: (await transform(code, { loader: 'ts', target: TARGET, sourcefile: id })).code, map: null };
  },
};

/** What tells a user's bundler that a value at module scope may be dropped; minifying takes it away with all comments, so a sign stands in for it. */
const PURE = '/* @__PURE__ */';
const PURE_VALUE: RegExp = /^((?:const|let|var) [\w$]+ = )\/\* @__PURE__ \*\/ /gm;
const PURE_SIGN = '__PURE__||';

/** A line that imports or exports, or an empty one. */
const LINK = /^(?:(?:import|export) .*;|#!.*)?$/;

/**
 * Less to read at every start: no comments, no blanks, short names for parameters and variables within functions.
 *
 * Functions and classes keep their names and lines stay short, so that a stack trace can be read. Syntax stays as it is, for
 * shorter syntax would be worked out at module scope, where whoever imports one name would pay for it.
 */
const compact: Plugin = {
  name: 'compact',
  async renderChunk(code) {
    // Imports stand at the head, exports at the end, each on a line of its own.
    const lines = code.trimEnd().split('\n');
    const first = lines.findIndex((line) => !LINK.test(line));
    if (first < 0) return undefined;
    const last = lines.findLastIndex((line) => !LINK.test(line));
    // Names at the top of a script are never shortened; those of a module would be.
    const script = lines
      .slice(first, last + 1)
      .join('\n')
      .replaceAll(PURE_VALUE, `$1${PURE_SIGN}`);
    const options = { target: TARGET, minifyWhitespace: true, minifyIdentifiers: true, lineLimit: 140, legalComments: 'none' } as const;
    const short = (await transform(script, options)).code.replaceAll(PURE_SIGN, PURE).trimEnd();
    return {
      code: [...lines.slice(0, first), short, ...lines.slice(last + 1), ''].filter((line, at) => line !== '' || at > 0).join('\n'),
      map: null,
    };
  },
};

async function load(
  input: Readonly<Record<string, string>>,
  external: readonly string[] = [],
  plugins: readonly Plugin[] = [],
): Promise<RollupBuild> {
  return rollup({
    input: Object.fromEntries(Object.entries(input).map(([built, source]) => [built, join(ROOT, source)])),
    external: [/^(?:node:|[a-z@])/, ...external],
    plugins: [...plugins, typescript],
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

/** The entries on top of the rooms, which load no `rooms`: each has its own copy of what it needs beside `core`. */
const TOPS = ['schedule', 'working'];

/** Gives each of the `TOPS` modules of its own, told apart by a query, wherever a module does not stand in `core`. */
function copies(core: ReadonlySet<string>): Plugin {
  return {
    name: 'copies',
    async resolveId(source, importer, options) {
      const resolved = await this.resolve(source, importer?.replace(QUERY, ''), { ...options, skipSelf: true });
      if (resolved === null || resolved.external || core.has(resolved.id)) return resolved;
      const top = TOPS.find((name) => resolved.id === join(SRC, name, 'index.ts')) ?? QUERY.exec(importer ?? '')?.[1];
      return top === undefined ? resolved : { ...resolved, id: `${resolved.id}?${top}` };
    },
    load: (id) => (QUERY.test(id) ? readFileSync(id.replace(QUERY, ''), 'utf8') : undefined),
  };
}

async function write(format: 'es' | 'cjs', input: Readonly<Record<string, string>>, core: ReadonlySet<string>): Promise<OutputChunk[]> {
  const build = await load(input, [], [copies(core)]);
  const extension = format === 'es' ? 'js' : 'cjs';
  let users: ReadonlyMap<string, number> | undefined;
  const { output } = await build.write({
    dir: DIST,
    format,
    entryFileNames: `[name].${extension}`,
    chunkFileNames: `[name].${extension}`,
    manualChunks(id, { getModuleIds, getModuleInfo }) {
      // What `farend` uses stands in `core`; through the lists of the rooms it reaches all the rest as well.
      const entries = [...getModuleIds()].filter((module) => getModuleInfo(module)?.isEntry && module !== join(SRC, 'index.ts'));
      users ??= usersOf((module) => getModuleInfo(module)?.importedIds ?? [], entries);
      return core.has(id) ? 'core' : (users.get(id) ?? 0) > 1 && !id.endsWith('/index.ts') ? 'rooms' : undefined;
    },
    // A namespace of our own is a plain object: frozen, or with a symbol, no user's bundler could drop it.
    generatedCode: { preset: 'es2015', symbols: false },
    freeze: false,
    minifyInternalExports: false,
    plugins: [compact],
  });
  return output.filter((file): file is OutputChunk => file.type === 'chunk');
}

/** How many entries reach each module. */
function usersOf(importsOf: (id: string) => readonly string[], entries: readonly string[]): ReadonlyMap<string, number> {
  const users = new Map<string, number>();
  for (const entry of entries) {
    const reached = new Set([entry]);
    for (const id of reached) for (const imported of importsOf(id)) reached.add(imported);
    for (const id of reached) users.set(id, (users.get(id) ?? 0) + 1);
  }
  return users;
}

/** The command is a module of its own on top of the entries, as a user's program would be. */
async function writeCommand(): Promise<void> {
  const built = Object.fromEntries(ENTRIES.map((entry) => [join(ROOT, entry.source), `./${entry.built}.js`]));
  const build = await load({ cli: 'src/cli.ts' }, Object.keys(built));
  const { output } = await build.write({ dir: DIST, format: 'es', paths: built, generatedCode: { preset: 'es2015' }, plugins: [compact] });
  if (output.length > 1) throw new Error(`the command is more than one file: ${output.map(({ fileName }) => fileName).join(', ')}`);
  chmodSync(join(DIST, 'cli.js'), 0o755);
}

/** Every file that an entry loads at once, itself among them. */
function loaded(entry: string, files: ReadonlyMap<string, OutputChunk>): string[] {
  const found = new Set([entry]);
  for (const file of found) for (const imported of files.get(file)?.imports ?? []) if (files.has(imported)) found.add(imported);
  return [...found];
}

function requireFewFiles(chunks: readonly OutputChunk[]): void {
  const files = new Map(chunks.map((chunk) => [chunk.fileName, chunk]));
  for (const { fileName, isEntry } of chunks) {
    const all = loaded(fileName, files);
    if (isEntry && all.length > MOST_FILES) throw new Error(`${fileName} loads ${all.length} files: ${all.join(', ')}`);
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
for (const format of ['es', 'cjs'] as const) requireFewFiles(await write(format, entries, core));
await writeCommand();
writeTypes();
