/** The entries of the package: what a user imports, and the file that stands behind it. @module */

/** One entry. */
export interface Entry {
  /** How users import it, as in `farend/cable`. */
  readonly name: string;
  /** Its source, below the root of the project. */
  readonly source: string;
  /** Name of the built file in `dist/`, without extension. */
  readonly built: string;
}

/** The rooms that are entries, each by the name it is imported by. The folder `quantity` leaves as `units`: that is what people look for. */
const ROOMS: Readonly<Record<string, string>> = {
  conductor: 'conductor',
  cable: 'cable',
  circuit: 'circuit',
  ethernet: 'ethernet',
  plan: 'plan',
  units: 'quantity',
  sources: 'sources',
  words: 'words',
  pages: 'pages',
  schedule: 'schedule',
  working: 'working',
};

/** Every entry, the daily job first. `package.json` names the same ones: a test holds it to this list. */
export const ENTRIES: readonly Entry[] = [
  { name: 'farend', source: 'src/index.ts', built: 'index' },
  ...Object.entries(ROOMS).map(([built, room]) => ({ name: `farend/${built}`, source: `src/${room}/index.ts`, built })),
];

/** Where the declarations of an entry stand in `dist/types/`, as in `cable/index`. */
export function typesOf({ source }: Entry): string {
  return source.slice('src/'.length, -'.ts'.length);
}

/**
 * What `exports` of `package.json` says of the entries.
 *
 * `module-sync` hands `require` the ES module where Node can load it, so that a program of both formats has one `InputError`.
 */
export function exportsField(): Record<string, unknown> {
  const conditions = (entry: Entry): Record<string, unknown> => {
    const modules = { types: `./dist/types/${typesOf(entry)}.d.ts`, default: `./dist/${entry.built}.js` };
    const required = { types: `./dist/types-commonjs/${typesOf(entry)}.d.ts`, default: `./dist/${entry.built}.cjs` };
    return { import: modules, 'module-sync': modules, require: required };
  };
  return {
    ...Object.fromEntries(ENTRIES.map((entry) => [`.${entry.name.slice('farend'.length)}`, conditions(entry)])),
    './package.json': './package.json',
  };
}
