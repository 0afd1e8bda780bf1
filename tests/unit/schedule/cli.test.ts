import { spawn, spawnSync } from 'node:child_process';
import { linkSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type CommandWorld, main } from '../../../src/cli.ts';
import { DATA_EDITION } from '../../../src/sources/data-edition.ts';
import { ROOT } from '../../support/files.ts';

const RUNS = 'Run,Switch,Port,Device,PoE class,Cable,Length,Connections,Cords,Ambient,PD power,Priority\n';
const REST = ',2,2 m cord-24,20,10 W,low\n';
const GOOD = `${RUNS}HP-01,Foyer,1,Help point,3,cat6,40 m${REST}`;
const LONG = `${GOOD}HP-02,Foyer,2,Help point,3,cat6,94 m${REST}`;
const NEAR = `${GOOD}HP-03,Foyer,3,Help point,3,cat6,88 m${REST}`;
const BAD = `${GOOD}HP-04,Foyer,4,Help point,3,cat6,far${REST}`;
const SWITCHES = 'Switch,Type,Ports,Budget,Minimum output voltage\nFoyer,802.3at,8,100 W,50 V\n';
const POOR = 'Switch,Type,Ports,Budget,Minimum output voltage\nFoyer,802.3at,8,10 W,50 V\n';

const FILES: Readonly<Record<string, string>> = {
  'good.csv': GOOD,
  'long.csv': LONG,
  'near.csv': NEAR,
  'bad.csv': BAD,
  'switches.csv': SWITCHES,
  'poor.csv': POOR,
  'empty.csv': '',
  'binary.csv': 'PK\u0003\u0004\u0000\u0000\u0000\u0000',
  'header.csv': RUNS,
};

/** A module that makes standard output a full disk. */
const FULL = `data:text/javascript,${encodeURIComponent(
  "process.stdout._write = (chunk, encoding, done) => done(Object.assign(new Error('no room'), { code: 'ENOSPC' }));",
)}`;

/** What the command did in a world of a few files. */
async function run(
  line: string,
  world: Partial<CommandWorld> & { readonly input?: string } = {},
): Promise<{ code: number; out: string; complaints: string; written: Record<string, string> }> {
  let out = '';
  let complaints = '';
  const written: Record<string, string> = {};
  const code = await main(line.split(' ').filter(Boolean), {
    readInput: async () => new TextEncoder().encode(world.input ?? ''),
    readFile: async (path) => {
      if (!Object.hasOwn(FILES, path)) throw Object.assign(new Error(`ENOENT: ${path}`), { code: 'ENOENT' });
      return new TextEncoder().encode(FILES[path]);
    },
    writeFile: async (path, pieces) => {
      if (path.includes('/')) throw Object.assign(new Error('ENOENT'), { code: 'ENOENT' });
      written[path] = [...pieces].join('');
    },
    identify: async (path) => (Object.hasOwn(FILES, path.replace('./', '')) ? path.replace('./', '') : undefined),
    print: (text) => {
      out += text;
    },
    complain: (text) => {
      complaints += text;
    },
    environment: {},
    ...world,
  });
  return { code, out, complaints, written };
}

describe('farend check', () => {
  test.each([
    ['every run passes', 'check good.csv', 0],
    ['every run passes on its switch', 'check good.csv --switches switches.csv', 0],
    ['a run is close to a limit', 'check near.csv', 0],
    ['a run fails', 'check long.csv', 1],
    ['it fails on cabling alone, and only power is asked for', 'check long.csv --cabling none', 0],
    ['a port is denied', 'check good.csv --switches poor.csv', 1],
    ['a cell cannot be read, other rows can', 'check bad.csv', 1],
    ['the file is not there', 'check gone.csv', 2],
    ['the switch file is not there', 'check good.csv --switches gone.csv', 2],
    ['the file is empty', 'check empty.csv', 2],
    ['the file is binary', 'check binary.csv', 2],
    ['the file has a header and no row', 'check header.csv', 2],
  ])('when %s: %s gives %i', async (_when, line, code) => {
    expect((await run(line)).code).toBe(code);
  });

  test.each([
    ['', 'say what to do'],
    ['audit good.csv', 'no command "audit"'],
    ['check', 'needs the file of runs'],
    ['check good.csv long.csv', '"long.csv" is one too many'],
    ['check good.csv --colour', 'farend: there is no option --colour; farend --help says more\n'],
    ['check good.csv -x', 'farend: there is no option -x; farend --help says more\n'],
    ['check good.csv --format', 'farend: --format needs a value after it; farend --help says more\n'],
    ['check good.csv --format --output x', 'farend: --format needs a value after it; farend --help says more\n'],
    ['check good.csv --full=yes', 'farend: --full takes no value; farend --help says more\n'],
    ['check good.csv --help=yes', 'farend: --help takes no value; farend --help says more\n'],
    ['check good.csv --format pdf', '--format is text, markdown, csv or json, not "pdf"'],
    ['check good.csv --cabling TIA', '--cabling is TIA-568, ISO/IEC-11801 or none, not "TIA"'],
    ['check good.csv --cabling constructor', '--cabling is'],
    ['check good.csv --policy fair', '--policy is strict or fill, not "fair"'],
    ['check good.csv --basis guess', '--basis is class or requested'],
    ['check - --switches -', 'only one of the two files'],
    ['check good.csv --switches=', '--switches needs'],
    ['check good.csv --output=', '--output needs'],
    ['check good.csv --output good.csv', 'good.csv is read by this command'],
    ['check good.csv --output ./good.csv', './good.csv is read by this command'],
    ['check good.csv --switches switches.csv --output switches.csv --format csv', 'switches.csv is read by this command'],
    ['check good.csv --output no/where.txt', 'no/where.txt cannot be written: there is no such file or folder'],
    ['check gone.csv', 'gone.csv cannot be read: there is no such file or folder'],
  ])('farend %s is refused in plain words', async (line, words) => {
    const { code, complaints, out } = await run(line);
    expect(code).toBe(2);
    expect(complaints).toContain(words);
    expect(complaints).not.toMatch(/\n {4}at /);
    expect(out).toBe('');
  });

  test('reads the runs, or the switches, from standard input', async () => {
    const runs = await run('check - --switches switches.csv', { input: LONG });
    expect([runs.code, runs.out.split('\n')[0]]).toEqual([1, 'SCHEDULE CHECKED: standard input']);
    expect((await run('check good.csv --switches -', { input: POOR })).out).toContain('1 DENIED');
  });

  test('writes text, Markdown, CSV and JSON', async () => {
    expect((await run('check long.csv')).out).toContain('WHAT FAILS, AND WHAT PUTS IT RIGHT');
    expect((await run('check long.csv --format markdown')).out).toContain('## What fails, and what puts it right');
    expect((await run('check long.csv --format csv')).out).toContain('\r\nHP-01,Help point,powered,');
    const { out } = await run('check long.csv --format json --cabling iso/iec-11801 --basis requested --policy fill');
    const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { version: string };
    expect(JSON.parse(out)).toMatchObject({
      schema: 1,
      version,
      file: 'long.csv',
      dataEdition: DATA_EDITION,
      settings: { cabling: 'ISO/IEC 11801', budget: { basis: 'requested', policy: 'fill' } },
      runs: [
        { run: 'HP-01', outcome: expect.stringMatching(/^(?:pass|fail)$/), verdict: { worst: expect.any(String) } },
        { run: 'HP-02', checks: expect.arrayContaining([expect.objectContaining({ aspect: 'power' })]) },
      ],
      totals: { runs: 2 },
    });
  });

  test('writes JSON of nothing, too', async () => {
    expect(JSON.parse((await run('check header.csv --format json')).out)).toMatchObject({ runs: [], totals: { runs: 0 } });
  });

  test('with --output writes the file and says where, on the other stream', async () => {
    const { code, out, complaints, written } = await run('check long.csv --output report.md --format markdown', { columns: 80 });
    expect([code, out]).toEqual([1, '']);
    expect(written['report.md']).toContain('# Schedule checked: long.csv');
    expect(complaints).toBe('2 runs: 1 FAIL, 1 pass\nThe report is in report.md\n');
  });

  test('with --full shows the figures of every run', async () => {
    expect((await run('check good.csv')).out).not.toContain('FIGURES OF');
    expect((await run('check good.csv --full')).out).toContain('FIGURES OF EVERY RUN');
    expect((await run('check good.csv --full --format markdown')).out).toContain('## Checks of every run');
    expect((await run('check good.csv --full --output report.txt')).written['report.txt']).toContain('FIGURES OF EVERY RUN');
  });

  test('names a file once', async () => {
    expect((await run('check empty.csv --format csv')).complaints).toContain('farend: empty.csv: it is empty\n');
    expect((await run('check empty.csv')).out).toContain('ERROR  empty.csv: it is empty');
  });

  test('as CSV says beside the table what is wrong in the files', async () => {
    const { complaints } = await run('check bad.csv --format csv');
    expect(complaints).toMatch(/^farend: bad\.csv, line 3: .*far/);
  });

  test('names files without their folders', async () => {
    const { out } = await run('check good.csv');
    expect(out).not.toContain('/good.csv');
  });
});

describe('colour', () => {
  const ESCAPE = String.fromCharCode(27);
  test.each([
    ['on a terminal', { columns: 80 }, true],
    ['into a file or pipe', {}, false],
    ['where NO_COLOR is set', { columns: 80, environment: { NO_COLOR: '1' } }, false],
    ['where NO_COLOR is empty, which is not set', { columns: 80, environment: { NO_COLOR: '' } }, true],
    ['on a dumb terminal', { columns: 80, environment: { TERM: 'dumb' } }, false],
  ])('%s', async (_where, world, coloured) => {
    expect((await run('check long.csv', world)).out.includes(ESCAPE)).toBe(coloured);
  });

  test('is for the text report alone', async () => {
    expect((await run('check long.csv --format markdown', { columns: 80 })).out).not.toContain(ESCAPE);
    expect((await run('check long.csv --output report.txt', { columns: 80 })).written['report.txt']).not.toContain(ESCAPE);
  });

  test('and the width of the terminal is used, within reason', async () => {
    const widest = async (columns: number): Promise<number> =>
      Math.max(...(await run('check long.csv', { columns, environment: { NO_COLOR: '1' } })).out.split('\n').map((line) => line.length));
    expect(await widest(100)).toBeLessThanOrEqual(100);
    expect(await widest(100)).toBeGreaterThan(80);
    expect(await widest(1)).toBeLessThanOrEqual(72);
    expect(await widest(10_000)).toBeLessThanOrEqual(140);
  });
});

describe('help and version', () => {
  test('help goes to standard output, fits 80 columns and names options and exit codes', async () => {
    const { code, out } = await run('--help');
    expect(code).toBe(0);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    for (const word of ['--switches', '--format', '--output', '--cabling', '--version', 'NO_COLOR', 'exit code', 'not a licence'])
      expect(out).toContain(word);
    expect((await run('check good.csv -h')).out).toBe(out);
  });

  test('version is that of the package', async () => {
    const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { version: string };
    expect((await run('--version')).out).toBe(`${version}\n`);
  });
});

describe('as a process', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'farend-'));
    for (const [name, text] of Object.entries(FILES)) writeFileSync(join(folder, name), text);
  });
  afterAll(() => rmSync(folder, { recursive: true }));
  const command = [join(ROOT, 'node_modules/tsx/dist/cli.mjs'), join(ROOT, 'src/cli.ts')];

  test('reads, writes and exits', () => {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [...command, 'check', '-', '--switches', 'switches.csv', '--output', 'out.csv', '--format', 'csv'],
      {
        cwd: folder,
        input: LONG,
        encoding: 'utf8',
      },
    );
    expect([status, stdout, stderr]).toEqual([1, '', '2 runs: 1 FAIL, 1 pass\nThe report is in out.csv\n']);
    expect(readFileSync(join(folder, 'out.csv'), 'utf8').split('\r\n')).toHaveLength(4);
  });

  test('runs through a link, as a package manager makes one', () => {
    const link = join(folder, 'link.ts');
    symlinkSync(join(ROOT, 'src/cli.ts'), link);
    const { status, stdout } = spawnSync(process.execPath, [command[0] as string, link, 'check', 'good.csv'], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(status).toBe(0);
    expect(stdout).toContain('1 run: 1 pass');
  });

  test.each(['good.csv', './good.csv', '../FOLDER/good.csv', 'other.csv', 'twin.csv'])('never writes over its own schedule: %s', (name) => {
    rmSync(join(folder, 'other.csv'), { force: true });
    rmSync(join(folder, 'twin.csv'), { force: true });
    symlinkSync('good.csv', join(folder, 'other.csv'));
    linkSync(join(folder, 'good.csv'), join(folder, 'twin.csv'));
    const output = name.replace('FOLDER', basename(folder));
    const { status, stderr } = spawnSync(process.execPath, [...command, 'check', 'good.csv', '--output', output], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(status).toBe(2);
    expect(stderr).toMatch(/^farend: .* is read by this command, so the report cannot be written over it; give --output another name\n$/);
    expect(readFileSync(join(folder, 'good.csv'), 'utf8')).toBe(GOOD);
  });

  test('says in one line that its output cannot be written', async () => {
    const child = spawn(process.execPath, [command[0] as string, '--import', FULL, command[1] as string, 'check', 'good.csv'], {
      cwd: folder,
    });
    let complaints = '';
    child.stderr.on('data', (chunk) => {
      complaints += String(chunk);
    });
    const code = await new Promise((resolve) => child.once('close', resolve));
    expect([code, complaints]).toEqual([2, 'farend: standard output cannot be written: the disk is full\n']);
  });

  test('ends in peace when its reader has seen enough', async () => {
    const many = Array.from({ length: 3000 }, (_, index) => `R-${index},Foyer,${index + 1},Help point,3,cat6,40 m${REST}`).join('');
    writeFileSync(join(folder, 'many.csv'), RUNS + many);
    const child = spawn(process.execPath, [...command, 'check', 'many.csv', '--format', 'csv'], { cwd: folder });
    let complaints = '';
    child.stderr.on('data', (chunk) => {
      complaints += String(chunk);
    });
    child.stdout.once('data', () => child.stdout.destroy());
    const code = await new Promise((resolve) => child.once('close', resolve));
    expect(complaints).toBe('');
    expect(code).toBe(0);
  });
});
