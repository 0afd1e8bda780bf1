/**
 * Uses the packed tarball as strangers would: installed into a scratch project, from every module format, from
 * TypeScript, in a bundle without node, and in a real browser; run by `npm run test:package` on the built package.
 * @module
 */
import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { ENTRIES, typesOf } from '../../scripts/entries.ts';
import { ROOT } from '../support/files.ts';

const CHROMIUM = '/usr/bin/chromium';
const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { version: string };
const scratch = mkdtempSync(join(tmpdir(), 'farend-package-'));
/** The package as installed. */
const home = join(scratch, 'node_modules/farend');
const tool = (path: string): string => join(ROOT, 'node_modules', path);

/** Runs a program in the scratch project and returns what it printed; what it printed is shown where it fails. */
function run(program: string, parameters: readonly string[], cwd: string = scratch): string {
  const { status, stdout, stderr, error } = spawnSync(program, parameters, { cwd, encoding: 'utf8' });
  if (error) throw error;
  assert.equal(status, 0, `${program} ${parameters.join(' ')}\n${stdout}${stderr}`);
  return stdout;
}

const node = (...parameters: string[]): string => run(process.execPath, parameters);

function write(file: string, text: string): string {
  writeFileSync(join(scratch, file), text);
  return file;
}

/** A mistake at each entry, as an expression on `entry`: what it throws is the one error of the library. */
const MISTAKES: Readonly<Record<string, string>> = {
  farend: 'entry.awg(41)',
  'farend/conductor': 'entry.material({ name: "unobtainium" })',
  'farend/cable': 'entry.cable("cat5")',
  'farend/circuit': 'entry.operatingPoint({ supplyVoltage: "50" })',
  'farend/ethernet': 'entry.poeClass(9)',
  'farend/plan': 'entry.bounds(1, {})',
  'farend/units': 'entry.feet("1")',
  'farend/sources': 'entry.source("hearsay")',
  'farend/words': 'entry.checkTitle("hearsay")',
  'farend/pages': 'entry.pageText(41)',
  'farend/schedule': 'entry.parseSchedule({ runs: 41 })',
  'farend/working': 'entry.showWorking("awg", { size: 41 })',
};

/** A question to each entry, as an expression on `entry`: tables, arithmetic, a no, a file, a page. */
const QUESTIONS: Readonly<Record<string, string>> = {
  farend: `(() => {
    const run = entry.runResistance({ segments: [{ cable: entry.cable('cat5e'), length: 90, temperature: 45 }], connections: 2 });
    return {
      run,
      gauges: [-3, 0, 12, 24, 40].map((size) => entry.awg(size)),
      classes: [0, 1, 2, 3, 4, 5, 6, 7, 8].map((poeClass) => entry.powerAtPd({ poeClass, resistance: run })),
      no: entry.operatingPoint({ supplyVoltage: 50, resistance: 12.5, load: { power: 60 } }),
      longest: entry.maximumRun({ cable: entry.cable('cat6'), poeClass: 4 }),
      budget: entry.switchBudget({ capacity: 30, basis: 'class', ports: [{ port: 1, poeClass: 4 }, { port: 2, poeClass: 3 }] }),
      read: entry.parseQuantity('212 ft'),
    };
  })()`,
  'farend/conductor': 'entry.necTable8({ size: 12 })',
  'farend/cable': 'entry.cable("cord-24")',
  'farend/circuit': 'entry.operatingPoint({ supplyVoltage: 24, resistance: 2, load: { power: 80 } })',
  'farend/ethernet': 'entry.dualSignature({ a: 5, b: 5 })',
  'farend/plan': "entry.switchBudget({ capacity: 30, basis: 'class', ports: [{ port: 1, poeClass: 4 }] })",
  'farend/units': '[entry.feet(212), entry.toKilohms(25)]',
  'farend/sources': 'entry.source("iec-60028")',
  'farend/words': "[entry.checkTitle('pd-voltage'), entry.FINDING_WORDS, entry.VERDICT_WORDS]",
  'farend/pages': `['pageText', 'pageMarkdown', 'pageLatex'].map((write) => entry[write]([{ kind: 'list', items: ['a camera'] }]))`,
  'farend/schedule': `(() => {
    const read = (name) => require('node:fs').readFileSync(name, 'utf8');
    const { schedule, findings } = entry.parseSchedule({ runs: read('runs.csv'), switches: read('switches.csv') });
    return [findings, entry.checkSchedule(schedule)];
  })()`,
  // The working of a class 4 device at its worst, and an answer that slipped from one end of the line to the other.
  'farend/working': `[
    entry.showWorking('powerAtPd', { poeClass: 4, resistance: 12.5 }).result.shown,
    entry.reviewAnswer('powerAtPd', { poeClass: 4, resistance: 12.5 }, '30 W').slips.length,
  ]`,
};

/** Entries that import a package, and what of. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = { 'farend/working': ['mathjs'] };

/** The most files of ours that one entry may load. */
const MOST_FILES = 3;

/** The most that the tarball may weigh, pages and examples in it. [bytes] */
/** 650 kB are wanted: the types stand twice, one readable file a module for each format, and so does what entries have for themselves. */
const TARBALL_BYTES = 695_000;

const steps: readonly (readonly [string, () => void | Promise<void>])[] = [
  ['the tarball holds the build, the licence, the pages and nothing else', packAndInstall],
  ['an import and a require of each entry give the same answers', importAndRequire],
  ['one InputError for every pair of entries, and for both formats', oneInputError],
  ['the CommonJS files alone, as older tools load them', commonJsAlone],
  ['each entry loads few files, and no package that is not its own', loadedFiles],
  ['the links of the pages live', links],
  ['types: nodenext from ESM and CommonJS, bundler', types],
  ['the command', command],
  ['no node in the core', withoutNode],
  ['a real browser', inBrowser],
  ['publint and attw', linters],
];

/** What each entry answered, as JSON. */
const answers = new Map<string, string>();
let bundled = '';
let tarball = '';

function packAndInstall(): void {
  const [packed] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', scratch], ROOT)) as [
    { filename: string; size: number; files: { path: string }[] },
  ];
  tarball = join(scratch, packed.filename);
  const paths = packed.files.map(({ path }) => path);
  const expected = /^(?:dist|docs|examples)\/|^(?:package\.json|LICENSE|README\.md|CHANGELOG\.md|DEVELOPERS\.md)$/;
  assert.deepEqual(
    paths.filter((path) => !expected.test(path) || path.startsWith('docs/api/')),
    [],
  );
  const built = ENTRIES.flatMap((entry) => [
    ...['js', 'cjs'].map((extension) => `dist/${entry.built}.${extension}`),
    ...['types', 'types-commonjs'].map((folder) => `dist/${folder}/${typesOf(entry)}.d.ts`),
  ]);
  for (const path of ['LICENSE', 'README.md', 'CHANGELOG.md', 'dist/cli.js', ...built])
    assert.ok(paths.includes(path), `${path} is packed`);
  assert.ok(packed.size <= TARBALL_BYTES, `the tarball has ${packed.size} bytes`);
  console.log(`   ${packed.size} bytes, ${paths.length} files`);
  write('package.json', '{ "name": "scratch", "private": true }\n');
  run('npm', ['install', '--no-audit', '--no-fund', '--prefer-offline', tarball]);
  copyFileSync(join(ROOT, 'examples/tidemill-playhouse.csv'), join(scratch, 'runs.csv'));
  copyFileSync(join(ROOT, 'examples/tidemill-playhouse-switches.csv'), join(scratch, 'switches.csv'));
  const installed = JSON.parse(readFileSync(join(home, 'package.json'), 'utf8')) as { dependencies: object };
  assert.deepEqual(Object.keys(installed.dependencies), ['mathjs']);
  const names = ENTRIES.map(({ name }) => name);
  for (const list of [MISTAKES, QUESTIONS]) assert.deepEqual(Object.keys(list), names, 'every entry is asked');
}

function importAndRequire(): void {
  for (const { name, built } of ENTRIES) {
    const probe = `console.log(JSON.stringify(${QUESTIONS[name]}));\n`;
    const modules = `import { createRequire } from 'node:module';\nimport * as entry from '${name}';\nconst require = createRequire(import.meta.url);\n`;
    const imported = node(write(`${built}.mjs`, modules + probe));
    const required = node(write(`${built}.cjs`, `const entry = require('${name}');\n${probe}`));
    assert.equal(imported, required, name);
    assert.ok(imported.length > 3, `${name} answers ${imported}`);
    answers.set(name, imported);
  }
  assert.equal((JSON.parse(answers.get('farend') ?? '') as { classes: unknown[] }).classes.length, 9);
  assert.deepEqual(JSON.parse(answers.get('farend/working') ?? ''), ['25.5 W', 1]);
}

/** Code that puts the error of each entry's mistake into `errors`, by its name and the word for how it was loaded. */
function mistakes(how: 'imported' | 'required'): string {
  return ENTRIES.map(({ name }, index) => {
    const load = how === 'imported' ? `await import('${name}')` : `require('${name}')`;
    return `{ const entry = ${load}; try { ${MISTAKES[name]}; } catch (error) { errors['${how} ${name}'] = error; } } // ${index}`;
  }).join('\n');
}

function oneInputError(): void {
  const text = `
    import { createRequire } from 'node:module';
    const require = createRequire(import.meta.url);
    const errors = {};
    ${mistakes('imported')}
    ${mistakes('required')}
    const { InputError, isInputError } = await import('farend');
    // An entry that exports the class shows it; the others show it by what they throw.
    const classes = Object.values(errors).map((error) => error.constructor);
    console.log(JSON.stringify(Object.entries(errors).map(([name, error]) => [
      name, classes.every((one) => error instanceof one), error instanceof InputError, isInputError(error),
    ])));`;
  const rows = JSON.parse(node(write('one-error.mjs', text))) as [string, ...boolean[]][];
  for (const [name, ...same] of rows) assert.deepEqual(same, [true, true, true], `the error of ${name}`);
  assert.equal(rows.length, 2 * ENTRIES.length);
}

function commonJsAlone(): void {
  // Without the module-sync condition a require takes the .cjs files, which then stand beside the imported ones.
  const text = `
    const errors = {};
    ${mistakes('required')}
    const { InputError, isInputError } = require('farend');
    const classes = Object.values(errors).map((error) => error.constructor);
    const same = Object.values(errors).map((error) => classes.every((one) => error instanceof one) && error instanceof InputError);
    import('farend').then((imported) => console.log(JSON.stringify([
      require.resolve('farend').endsWith('index.cjs'), same.length, same.every(Boolean), imported.InputError !== InputError,
      Object.values(errors).every((error) => isInputError(error) && imported.isInputError(error)),
    ])));`;
  const alone = (file: string): string => node('--no-experimental-require-module', file);
  assert.deepEqual(JSON.parse(alone(write('alone.cjs', text))), [true, ENTRIES.length, true, true, true]);
  for (const { name, built } of ENTRIES) assert.equal(alone(`${built}.cjs`), answers.get(name), name);
}

/** Files of ours that a built file loads, at any depth, and what else it names. */
async function reachedFrom(file: string): Promise<{ ours: string[]; packages: string[] }> {
  const { metafile } = await build({
    entryPoints: [join(home, file)],
    absWorkingDir: home,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    ignoreAnnotations: true,
    write: false,
    metafile: true,
    logLevel: 'silent',
  });
  const named = Object.values(metafile.outputs).flatMap(({ imports }) => imports.map(({ path }) => path));
  return { ours: Object.keys(metafile.inputs), packages: [...new Set(named.map((path) => path.split('/')[0] ?? ''))] };
}

async function loadedFiles(): Promise<void> {
  for (const { name, built } of ENTRIES) {
    for (const extension of ['js', 'cjs']) {
      const { ours, packages } = await reachedFrom(`dist/${built}.${extension}`);
      assert.ok(ours.length <= MOST_FILES, `${name} loads ${ours.length} files: ${ours.join(', ')}`);
      assert.deepEqual(packages, PACKAGES[name] ?? [], `what ${name} imports, ${extension}`);
    }
  }
}

function links(): void {
  const pages = ['README.md', 'CHANGELOG.md', ...readdirSync(join(home, 'docs')).map((file) => `docs/${file}`)].filter((file) =>
    file.endsWith('.md'),
  );
  let count = 0;
  for (const page of pages) {
    for (const [, target = ''] of readFileSync(join(home, page), 'utf8').matchAll(/\]\((?![a-z]+:|#)(?<target>[^)#\s]+)/g)) {
      count += 1;
      assert.ok(existsSync(join(home, page, '..', target)), `${page} links to ${target}, which is not in the tarball`);
    }
  }
  assert.ok(count > 30, `${count} links`);
}

function types(): void {
  const text = `
import { awg, type Conductor, feet, loopResistance, type Metres, type Ohms, operatingPoint, poeClass } from 'farend';
import { checkSchedule, parseSchedule, reportText } from 'farend/schedule';
import { showWorking, type Working } from 'farend/working';
${ENTRIES.map(({ name, built }) => `import type * as ${built}Entry from '${name}';`).join('\n')}
const conductor: Conductor = awg(24);
const length: Metres = feet(295);
const loop: Ohms = loopResistance({ conductor, length });
// @ts-expect-error a resistance is no length
const wrong: Metres = loop;
// @ts-expect-error there is no class 9
poeClass(9);
const point = operatingPoint({ supplyVoltage: 50, resistance: loop, load: { power: 12 } });
export const answer: number = point.feasible ? point.loadVoltage : point.maximumLoadPower;
const { schedule, findings } = parseSchedule({ runs: 'Run' });
export const working: Working = showWorking('loopResistance', { conductor, length });
export const text: string = reportText(checkSchedule(schedule)) + findings.length + wrong;
// An entry without types would be an error here, or have every name.
export type Names = [${ENTRIES.map(({ built }) => `keyof typeof ${built}Entry`).join(', ')}];
// @ts-expect-error no entry has a name like this
export type NoName = (typeof indexEntry)['nobody'];
`;
  for (const file of ['types-esm.mts', 'types-cjs.cts', 'types-bundler.ts']) write(file, text);
  // Library files are checked as well: a user may have skipLibCheck off.
  const strict = ['--noEmit', '--strict', '--exactOptionalPropertyTypes', '--target', 'es2022', '--lib', 'es2022,dom'];
  const tsc = tool('typescript/bin/tsc');
  node(tsc, ...strict, '--module', 'nodenext', 'types-esm.mts', 'types-cjs.cts');
  node(tsc, ...strict, '--module', 'node16', 'types-esm.mts');
  node(tsc, ...strict, '--module', 'esnext', '--moduleResolution', 'bundler', 'types-bundler.ts');
  // The proof that the compiler saw the types at all: without the expectations the same file does not compile.
  write('types-wrong.mts', text.replaceAll('// @ts-expect-error', '//'));
  const { status, stdout } = spawnSync(process.execPath, [tsc, ...strict, '--module', 'nodenext', 'types-wrong.mts'], {
    cwd: scratch,
    encoding: 'utf8',
  });
  assert.notEqual(status, 0);
  assert.equal(stdout.match(/error TS/g)?.length, 3, stdout);
}

function command(): void {
  const farend = join(scratch, 'node_modules/.bin/farend');
  assert.ok(run(farend, ['--version']).includes(manifest.version));
  assert.match(run(farend, ['--help']), /farend check/);
  assert.match(run(farend, ['work', 'powerAtPd', 'poeClass=4', 'resistance=12.5ohm']), /P_av = 25\.5 W/);
  const check = spawnSync(farend, ['check', 'runs.csv', '--switches', 'switches.csv'], { cwd: scratch, encoding: 'utf8' });
  assert.equal(check.status, 1, `the example has runs that fail\n${check.stderr}`);
  assert.ok(check.stdout.length > 1000);
  assert.equal(spawnSync(farend, ['check', 'missing.csv'], { cwd: scratch }).status, 2);
}

/** Entries whose question needs neither a file nor a package. */
const PLAIN = ENTRIES.filter(({ name }) => !(QUESTIONS[name] ?? '').includes('require(') && !Object.hasOwn(PACKAGES, name));

async function withoutNode(): Promise<void> {
  const imports = PLAIN.map(({ name, built }) => `import * as ${built} from '${name}';`);
  const asked = PLAIN.map(({ name, built }) => `${JSON.stringify(name)}: ((entry) => ${QUESTIONS[name]})(${built})`);
  const contents = `${imports.join('\n')}\nglobalThis.answers = JSON.stringify({ ${asked.join(', ')} });\n`;
  const result = await build({
    stdin: { contents, resolveDir: scratch },
    bundle: true,
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
    write: false,
  });
  bundled = result.outputFiles[0]?.text ?? '';
  // A fresh realm has the language and nothing of node: no Buffer, no process, no require.
  const realm: { answers?: string } = {};
  const missing = runInNewContext('[typeof Buffer, typeof process, typeof require, typeof TextDecoder]', realm) as string[];
  assert.deepEqual([...missing], ['undefined', 'undefined', 'undefined', 'undefined']);
  runInNewContext(bundled, realm);
  assert.deepEqual(JSON.parse(realm.answers ?? ''), plainAnswers());
}

/** What node answered to the questions that are also put to a bundle. */
function plainAnswers(): Record<string, unknown> {
  return Object.fromEntries(PLAIN.map(({ name }) => [name, JSON.parse(answers.get(name) ?? '')]));
}

async function inBrowser(): Promise<void> {
  assert.ok(existsSync(CHROMIUM), `${CHROMIUM} is needed: apt-get install chromium`);
  const flags = [
    '--no-sandbox',
    '--disable-gpu',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ];
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: flags });
  try {
    const page = await browser.newPage();
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    await page.setContent('<!doctype html><title>farend</title>');
    await page.addScriptTag({ content: bundled });
    const answered = await page.evaluate<string>('globalThis.answers');
    assert.deepEqual(errors, []);
    assertAlike(JSON.parse(answered), plainAnswers(), 'answers');
    console.log(`   Chromium ${browser.version()}`);
  } finally {
    await browser.close();
  }
}

/** Equal in shape and words; numbers to 8 ulp, for the language leaves the last digit of `**` to each engine. */
function assertAlike(actual: unknown, expected: unknown, path: string): void {
  if (typeof actual === 'number' && typeof expected === 'number') {
    assert.ok(Math.abs(actual - expected) <= 8 * Number.EPSILON * Math.abs(expected), `${path}: ${actual} against ${expected}`);
  } else if (isRecord(actual) && isRecord(expected)) {
    assert.deepEqual(Object.keys(actual), Object.keys(expected), path);
    for (const [key, value] of Object.entries(actual)) assertAlike(value, expected[key], `${path}.${key}`);
  } else assert.deepEqual(actual, expected, path);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function linters(): void {
  execFileSync(process.execPath, [tool('publint/src/cli.js'), 'run', tarball, '--strict'], { stdio: 'inherit' });
  // The oldest resolution knows no exports map and no subpaths; engines rule out the node versions that have no other.
  execFileSync(process.execPath, [tool('@arethetypeswrong/cli/dist/index.js'), tarball, '--profile', 'node16'], { stdio: 'inherit' });
}

try {
  mkdirSync(scratch, { recursive: true });
  for (const [name, step] of steps) {
    console.log(`-- ${name}`);
    await step();
  }
  console.log(`All ${steps.length} package checks hold.`);
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
