/**
 * Uses the packed tarball as strangers would: installed into a scratch project, from every module format, from
 * TypeScript, in a bundle without node, and in a real browser; run by `npm run test:package` on the built package.
 * @module
 */
import assert from 'node:assert/strict';
import { execFileSync, spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { ROOT } from '../support/files.ts';

const CHROMIUM = '/usr/bin/chromium';
const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { version: string };
const scratch = mkdtempSync(join(tmpdir(), 'farend-package-'));
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

/** Questions to the root entry, as an expression on `farend`: tables, arithmetic, a no, an error. */
const CORE_PROBE = `(() => {
  const run = farend.runResistance({ segments: [{ cable: farend.cable('cat5e'), length: 90, temperature: 45 }], connections: 2 });
  const answers = {
    run,
    gauges: [-3, 0, 12, 24, 40].map((size) => farend.awg(size)),
    classes: [0, 1, 2, 3, 4, 5, 6, 7, 8].map((poeClass) => farend.powerAtPd({ poeClass, resistance: run })),
    no: farend.operatingPoint({ supplyVoltage: 50, resistance: 12.5, load: { power: 60 } }),
    longest: farend.maximumRun({ cable: farend.cable('cat6'), poeClass: 4 }),
    budget: farend.switchBudget({ capacity: 30, basis: 'class', ports: [{ port: 1, poeClass: 4 }, { port: 2, poeClass: 3 }] }),
    read: farend.parseQuantity('212 ft'),
  };
  try {
    farend.awg(41);
  } catch (error) {
    answers.error = [farend.isInputError(error), error instanceof farend.InputError, JSON.stringify(error)];
  }
  return JSON.stringify(answers);
})()`;

/** A question to the schedule entry. */
const SCHEDULE_PROBE = `(() => {
  const read = (name) => require('node:fs').readFileSync(name, 'utf8');
  const { schedule: parsed, findings } = schedule.parseSchedule({ runs: read('runs.csv'), switches: read('switches.csv') });
  return JSON.stringify([findings, schedule.checkSchedule(parsed)]);
})()`;

const steps: readonly (readonly [string, () => void | Promise<void>])[] = [
  ['the tarball holds the build, the licence, the pages and nothing else', packAndInstall],
  ['an import and a require give the same answers', importAndRequire],
  ['one InputError for every entry and format', oneInputError],
  ['the CommonJS files alone, as older tools load them', commonJsAlone],
  ['types: nodenext from ESM and CommonJS, bundler', types],
  ['the command', command],
  ['no node in the core', withoutNode],
  ['a real browser', inBrowser],
  ['publint and attw', linters],
];

let coreAnswers = '';
let bundled = '';
let tarball = '';

function packAndInstall(): void {
  const [packed] = JSON.parse(run('npm', ['pack', '--json', '--pack-destination', scratch], ROOT)) as [
    { filename: string; files: { path: string }[] },
  ];
  tarball = join(scratch, packed.filename);
  const unexpected = packed.files
    .map(({ path }) => path)
    .filter((path) => !/^(?:dist\/|(?:package\.json|LICENSE|README\.md|CHANGELOG\.md)$)/.test(path));
  assert.deepEqual(unexpected, []);
  for (const path of ['LICENSE', 'README.md', 'CHANGELOG.md', 'dist/cli.js', 'dist/index.d.ts', 'dist/index.d.cts']) {
    assert.ok(
      packed.files.some((file) => file.path === path),
      `${path} is in the tarball`,
    );
  }
  write('package.json', '{ "name": "scratch", "private": true }\n');
  run('npm', ['install', '--no-audit', '--no-fund', '--prefer-offline', tarball]);
  copyFileSync(join(ROOT, 'examples/tidemill-playhouse.csv'), join(scratch, 'runs.csv'));
  copyFileSync(join(ROOT, 'examples/tidemill-playhouse-switches.csv'), join(scratch, 'switches.csv'));
  const installed = JSON.parse(readFileSync(join(scratch, 'node_modules/farend/package.json'), 'utf8')) as { dependencies: object };
  assert.deepEqual(Object.keys(installed.dependencies).sort(), ['mathjs', 'zod']);
}

function importAndRequire(): void {
  const { imported, required } = bothFormats('core', "'farend'", CORE_PROBE.replaceAll('farend.', 'entry.'));
  assert.equal(imported, required);
  coreAnswers = imported;
  const answers = JSON.parse(imported) as { error: unknown[]; classes: unknown[] };
  assert.equal(answers.classes.length, 9);
  assert.deepEqual(answers.error.slice(0, 2), [true, true]);
  const schedule = bothFormats('schedule', "'farend/schedule'", SCHEDULE_PROBE.replaceAll('schedule.', 'entry.'));
  assert.equal(schedule.imported, schedule.required);
  assert.ok(schedule.imported.length > 1000);
  // The working of a class 4 device at its worst, and the same error class as that of the core.
  const probe = `JSON.stringify([
    entry.showWorking('powerAtPd', { poeClass: 4, resistance: 12.5 }).result.shown,
    entry.reviewAnswer('powerAtPd', { poeClass: 4, resistance: 12.5 }, '30 W').slips.length,
    (() => { try { entry.showWorking('awg', { size: 41 }); } catch (error) { return error instanceof require('farend').InputError; } })(),
  ])`;
  const working = bothFormats('working', "'farend/working'", probe);
  assert.equal(working.imported, working.required);
  assert.deepEqual(JSON.parse(working.imported), ['25.5 W', 1, true]);
}

/** What a probe on `entry` prints when its module is imported, and when it is required. */
function bothFormats(name: string, specifier: string, probe: string): { imported: string; required: string } {
  const esm = `import { createRequire } from 'node:module';\nimport * as entry from ${specifier};\nconst require = createRequire(import.meta.url);\n`;
  return {
    imported: node(write(`${name}.mjs`, `${esm}console.log(${probe});\n`)),
    required: node(write(`${name}.cjs`, `const entry = require(${specifier});\nconsole.log(${probe});\n`)),
  };
}

function oneInputError(): void {
  const text = `
    import { createRequire } from 'node:module';
    import * as imported from 'farend';
    import * as importedSchedule from 'farend/schedule';
    const require = createRequire(import.meta.url);
    const required = require('farend');
    const requiredSchedule = require('farend/schedule');
    const caught = (run) => { try { run(); } catch (error) { return error; } };
    const errors = {
      'imported farend': caught(() => imported.awg(41)),
      'required farend': caught(() => required.awg(41)),
      'imported schedule': caught(() => importedSchedule.parseSchedule({ runs: 41 })),
      'required schedule': caught(() => requiredSchedule.parseSchedule({ runs: 41 })),
    };
    console.log(JSON.stringify(Object.entries(errors).map(([name, error]) => [
      name, error instanceof imported.InputError, error instanceof required.InputError, imported.isInputError(error), required.isInputError(error),
    ])));`;
  const rows = JSON.parse(node(write('one-error.mjs', text))) as [string, ...boolean[]][];
  for (const [name, ...same] of rows) assert.deepEqual(same, [true, true, true, true], `the error of ${name}`);
  assert.equal(rows.length, 4);
}

function commonJsAlone(): void {
  // Without the module-sync condition a require takes the .cjs files, which then stand beside the imported ones.
  const text = `
    const core = require('farend');
    const schedule = require('farend/schedule');
    const caught = (run) => { try { run(); } catch (error) { return error; } };
    const error = caught(() => schedule.parseSchedule({ runs: 41 }));
    import('farend').then((imported) => console.log(JSON.stringify([
      require.resolve('farend').endsWith('index.cjs'), error instanceof core.InputError, core.isInputError(error),
      imported.InputError !== core.InputError, imported.isInputError(error),
    ])));`;
  const file = write('alone.cjs', text);
  assert.deepEqual(JSON.parse(node('--no-experimental-require-module', file)), [true, true, true, true, true]);
  const answers = node('--no-experimental-require-module', 'core.cjs');
  assert.equal(answers, coreAnswers);
}

function types(): void {
  const text = `
import { awg, type Conductor, feet, loopResistance, type Metres, type Ohms, operatingPoint, poeClass } from 'farend';
import { checkSchedule, parseSchedule, reportText } from 'farend/schedule';
import { showWorking, type Working } from 'farend/working';
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
  assert.equal(stdout.match(/error TS/g)?.length, 2, stdout);
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

async function withoutNode(): Promise<void> {
  const result = await build({
    stdin: { contents: `import * as farend from 'farend';\nglobalThis.answers = ${CORE_PROBE};\n`, resolveDir: scratch },
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
  assert.deepEqual(JSON.parse(realm.answers ?? ''), JSON.parse(coreAnswers));
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
    const answers = await page.evaluate<string>('globalThis.answers');
    assert.deepEqual(errors, []);
    assertAlike(JSON.parse(answers), JSON.parse(coreAnswers), 'answers');
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
