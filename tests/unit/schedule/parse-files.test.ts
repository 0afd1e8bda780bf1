import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/schedule/finding.ts';
import { type ParseScheduleInput, parseSchedule } from '../../../src/schedule/parse-schedule.ts';
import type { ParsedSchedule } from '../../../src/schedule/read/read-schedule.ts';
import type { ScheduledPoweredRun } from '../../../src/schedule/schedule.ts';
import { expectInputError, expectPlain } from '../../helpers/expectations.ts';

const HEADER = 'Run,Switch,Port,Device,PoE class,Cable,Length';
const row = (number: number, device = 'x'): string => `R-${number},S,${number},${device},3,cat6,${number} m`;
const GOOD = [HEADER, row(1), row(2), row(3)];

function read(runs: string | Uint8Array, switches?: string | Uint8Array): ParsedSchedule {
  return parseSchedule({ runs, switches, runsFile: 'runs.csv', switchesFile: 'switches.csv' });
}

/** Names of the runs that were read, each with its line. */
const lines = ({ schedule }: ParsedSchedule): (readonly [string, number | undefined])[] =>
  schedule.runs.map(({ run, line }) => [run, line]);

const faults = ({ findings }: ParsedSchedule): Finding[] => findings.filter(({ severity }) => severity !== 'note');

/** Code, severity, line and column of everything that is not a default. */
const places = (result: ParsedSchedule): unknown[] =>
  faults(result).map(({ code, severity, line, column }) => [code, severity, line, column]);

const ALL = [
  ['R-1', 2],
  ['R-2', 3],
  ['R-3', 4],
];

describe('how the text may be written', () => {
  test.each([
    ['\\n', GOOD.join('\n')],
    ['\\n at the end', `${GOOD.join('\n')}\n`],
    ['\\r\\n', `${GOOD.join('\r\n')}\r\n`],
    ['\\r', `${GOOD.join('\r')}\r`],
    ['all three', `${GOOD[0]}\r\n${GOOD[1]}\r${GOOD[2]}\n${GOOD[3]}`],
    ['a byte-order mark', `\ufeff${GOOD.join('\n')}`],
    ['semicolons', GOOD.join('\n').replaceAll(',', ';')],
    ['tabs', GOOD.join('\n').replaceAll(',', '\t')],
    ['quotes everywhere', GOOD.map((line) => `"${line.split(',').join('","')}"`).join('\n')],
    ['blanks around cells', GOOD.join('\n').replaceAll(',', ' , ')],
    ['blanks around quotes', GOOD.map((line) => `"${line.split(',').join('" , "')}"`).join('\n')],
    ['empty cells at the end of every row', GOOD.map((line) => `${line},,,`).join('\n')],
    ['empty cells at the end of some rows', GOOD.map((line, index) => (index === 2 ? `${line},,` : line)).join('\n')],
  ])('%s', (_name, text) => {
    for (const content of [text, new TextEncoder().encode(text)]) {
      const result = read(content);
      expect(lines(result)).toEqual(ALL);
      expect(faults(result)).toEqual([]);
      expectPlain(result);
    }
  });

  test('columns in any order, names in any spelling', () => {
    const result = read('LENGTH (m) ,cable_type?,circuit,poe-Class,SWITCH,p o r t,Cable\n65,x,R-1,3,S,1,cat6\n');
    expect(lines(result)).toEqual([['R-1', 2]]);
    expect(places(result)).toEqual([['unknown-column', 'warning', 1, 'cable_type?']]);
  });

  test.each([
    ['Circuit', 'Run'],
    ['Cable number', 'Run'],
    ['Class', 'PoE class'],
    ['Installed length', 'Length'],
  ])('%s is %s', (also, name) => {
    expect(lines(read(GOOD.join('\n').replace(name, also)))).toEqual(ALL);
  });

  test('the line that tells a spreadsheet the delimiter is no header', () => {
    expect(lines(read(`sep=;\n${GOOD.join('\n').replaceAll(',', ';')}`))).toEqual(ALL.map(([run, line]) => [run, Number(line) + 1]));
  });

  test('blank lines and rows of empty cells count as lines and are no rows', () => {
    const result = read(`\n\n${GOOD[0]}\n\n${GOOD[1]}\n   \n,,,,,,\n${GOOD[2]}\n\n\n${GOOD[3]}\n\n`);
    expect(lines(result)).toEqual([
      ['R-1', 5],
      ['R-2', 8],
      ['R-3', 11],
    ]);
    expect(faults(result)).toEqual([]);
  });

  test('Windows-1252 is read, and said', () => {
    const text = 'Run,Switch,Port,PoE class,Cable,Length,Ambient\nR-1,S,1,3,cat6,65 m,35 °C\n';
    const result = read(Uint8Array.from(text, (character) => character.charCodeAt(0)));
    expect((result.schedule.runs[0] as ScheduledPoweredRun).input.installed[0]?.temperature).toBe(35);
    expect(places(result)).toEqual([['other-encoding', 'warning', undefined, undefined]]);
  });
});

describe('files that cannot be used', () => {
  const UTF16 = Uint8Array.from([0xff, 0xfe, ...[...GOOD.join('\n')].flatMap((character) => [character.charCodeAt(0), 0])]);
  test.each<[string, string | Uint8Array]>([
    ['nothing at all', ''],
    ['a byte-order mark alone', '\ufeff'],
    ['no bytes', new Uint8Array()],
    ['blank lines', '\n\n  \r\n'],
    ['a header line alone', HEADER],
    ['a header line and blank lines', `${HEADER}\n\n,,,,,,\n`],
    ['UTF-16, little end first', UTF16],
    ['UTF-16, big end first', Uint8Array.from([0xfe, 0xff, 0, 82])],
    ['UTF-16 without its mark', UTF16.slice(2)],
    ['a picture', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 73, 72, 68, 82])],
    ['a zipped workbook', Uint8Array.from([0x50, 0x4b, 3, 4, 20, 0, 6, 0, 8, 0, 0, 0])],
    ['rows full of NUL', `${HEADER}\n${'\0,'.repeat(50)}\n`],
  ])('%s', (_name, content) => {
    const result = read(content, content);
    expect(result.schedule).toEqual({ runs: [], switches: [] });
    for (const file of ['runs.csv', 'switches.csv']) {
      const unusable = result.findings.filter((finding) => finding.file === file && finding.code === 'unusable-file');
      expect(unusable.map(({ severity, line }) => [severity, line])).toEqual([['error', undefined]]);
      expect(unusable[0]?.message).toContain(file);
    }
  });

  test('an unusable switch file costs the switches, not the runs, and no run is blamed for it', () => {
    const result = read(GOOD.join('\n'), '');
    expect(lines(result)).toEqual(ALL);
    expect(faults(result).map(({ code, file }) => [code, file])).toEqual([['unusable-file', 'switches.csv']]);
  });

  test.each([
    [
      'a title above the header',
      `Tidemill Playhouse, all runs\n${GOOD.join('\n')}`,
      'line 1 does not look like the header line ("Tidemill Playhouse, all runs"): nothing may stand above the names of the columns, and cells are separated by commas, semicolons or tabs',
    ],
    ['bars between the cells', GOOD.join('\n').replaceAll(',', '|'), ': cells are separated by commas, semicolons or tabs, not by |'],
    ['blank lines and a title', `\n\nAll runs\n${GOOD.join('\n')}`, 'line 3 does not look like the header line ("All runs")'],
  ])('%s is said, once', (_name, content, words) => {
    const missing = faults(read(content)).filter(({ code }) => code === 'missing-column');
    expect(missing[0]?.message).toContain(words);
    expect(missing.filter(({ message }) => message.includes('does not look like'))).toHaveLength(1);
  });

  test('a header line that lacks a column is still a header line', () => {
    const [missing] = faults(read(GOOD.join('\n').replace('Cable', 'Other'))).filter(({ code }) => code === 'missing-column');
    expect(missing?.message).toBe('there is no column Cable: no run can be judged');
  });

  test('a table of something else names what is missing, once', () => {
    const result = read('Title,Author\nSeagull,Chekhov\nHamlet,Shakespeare\n');
    expect(result.schedule.runs).toEqual([]);
    expect(faults(result).map(({ code, line }) => [code, line])).toEqual(Array.from({ length: 4 }, () => ['missing-column', undefined]));
  });
});

describe('columns', () => {
  test.each(['Switch', 'Port', 'PoE class', 'Cable', 'Length'])('without %s there is one finding, not one for each row', (name) => {
    const result = read(GOOD.join('\n').replace(name, 'Other'));
    expect(result.schedule.runs).toEqual([]);
    expect(places(result)).toContainEqual(['missing-column', 'error', undefined, undefined]);
    expect(faults(result).filter(({ code }) => code === 'missing-column')).toHaveLength(1);
    expect(faults(result)).toHaveLength(2);
  });

  test('without Run the lines name the runs', () => {
    const result = read(GOOD.join('\n').replace('Run', 'Other'));
    expect(result.schedule.runs.map(({ run }) => run)).toEqual(['line 2', 'line 3', 'line 4']);
    expect(faults(result).map(({ code }) => code)).toEqual(['unknown-column', 'missing-column']);
  });

  test('of two that mean the same the first is used', () => {
    const result = read('Run,Switch,Port,PoE class,Cable,Length,Installed length\nR-1,S,1,3,cat6,65 m,99 m\n');
    expect((result.schedule.runs[0] as ScheduledPoweredRun).input.installed[0]?.length).toBe(65);
    expect(places(result)).toEqual([['duplicate-column', 'error', 1, 'Installed length']]);
  });

  test.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])('%s is only a name that is not known', (name) => {
    const result = read(GOOD.map((line, index) => `${line},${index === 0 ? name : 'x'}`).join('\n'));
    expect(lines(result)).toEqual(ALL);
    expect(places(result)).toEqual([['unknown-column', 'warning', 1, name]]);
  });

  test('a stray quote in the header line costs nothing', () => {
    for (const header of [`"${HEADER}`, HEADER.replace('Device', '"Device'), HEADER.replace('Length', '"Length')]) {
      const result = read([header, ...GOOD.slice(1)].join('\n'));
      expect(lines(result), header).toEqual(ALL);
      expect(places(result)).toEqual([['broken-row', 'warning', 1, undefined]]);
    }
  });

  test('a header cell of two lines moves the rows down', () => {
    expect(lines(read(`${HEADER.replace('PoE class', '"PoE\nclass"')}\n${GOOD.slice(1).join('\n')}`))).toEqual(
      ALL.map(([run, line]) => [run, Number(line) + 1]),
    );
  });
});

describe('quotes', () => {
  test('lines are right after cells of several lines', () => {
    const result = read([HEADER, row(1, '"north\n\ndoor"'), row(2, '"a ""b"", c"'), row(3, '"\n"'), `R-4,S,4,x,9,cat6,4 m`].join('\n'));
    expect(lines(result)).toEqual([
      ['R-1', 2],
      ['R-2', 5],
      ['R-3', 6],
    ]);
    expect(result.schedule.runs.map(({ device }) => device)).toEqual(['north door', 'a "b", c', undefined]);
    expect(places(result)).toEqual([['value-out-of-range', 'error', 8, 'PoE class']]);
  });

  test('quotes inside a cell are text', () => {
    const result = read([HEADER, row(1, '6" pipe'), row(2, '"6" pipe"'), row(3, 'pipe 6"')].join('\n'));
    expect(result.schedule.runs.map(({ device }) => device)).toEqual(['6" pipe', '6" pipe', 'pipe 6"']);
    expect(faults(result)).toEqual([]);
  });

  const CELLS = 7;
  test.each(Array.from({ length: CELLS }, (_, cell) => [cell] as const))('an unclosed quote before cell %i costs its row alone', (cell) => {
    const cells = row(2).split(',');
    cells[cell] = `"${cells[cell]}`;
    for (const after of [row(3), row(3, '"Lamp, red"'), row(3, 'pipe 6"'), row(3, '""'), row(3, '"two\nlines"')]) {
      const result = read([HEADER, row(1), cells.join(','), after].join('\n'));
      expect(lines(result), after).toEqual([
        ['R-1', 2],
        ['R-3', 4],
      ]);
      expect(places(result)).toEqual([['broken-row', 'error', 3, undefined]]);
      expect(faults(result)[0]?.received).toBe(cells.join(','));
    }
  });

  test('many unclosed quotes cost their rows and no time', () => {
    const rows = Array.from({ length: 20_000 }, (_, index) => row(index + 1, index % 2 === 0 ? '"open' : 'x'));
    const result = read([HEADER, ...rows].join('\n'));
    expect(result.schedule.runs).toHaveLength(10_000);
    expect(faults(result).filter(({ code }) => code === 'broken-row')).toHaveLength(10_000);
  });

  test('an unclosed quote in the last row', () => {
    expect(places(read([HEADER, row(1), row(2, '"open')].join('\n')))).toEqual([['broken-row', 'error', 3, undefined]]);
  });
});

describe('rows of the wrong width', () => {
  test('too many cells: which is which is not known', () => {
    const result = read([HEADER, row(1), `${row(2)},5`, row(3)].join('\n'));
    expect(lines(result)).toEqual([
      ['R-1', 2],
      ['R-3', 4],
    ]);
    expect(places(result)).toEqual([['broken-row', 'error', 3, undefined]]);
    expect(faults(result)[0]?.message).toContain('8 cells where the header has 7');
  });

  test('too few cells: those at the end are empty', () => {
    const result = read([`${HEADER},Cords,Priority`, `${row(1)},none`, row(2), 'R-3,S,3'].join('\n'));
    expect(lines(result)).toEqual([
      ['R-1', 2],
      ['R-2', 3],
    ]);
    expect(places(result)).toEqual([
      ['broken-row', 'warning', 2, undefined],
      ['broken-row', 'warning', 3, undefined],
      ['broken-row', 'warning', 4, undefined],
      ['missing-value', 'error', 4, 'PoE class'],
      ['missing-value', 'error', 4, 'Cable'],
      ['missing-value', 'error', 4, 'Length'],
    ]);
  });
});

describe('runs, switches and ports', () => {
  const SWITCHES = 'Switch,Type,Ports,Budget\nS,2,24,370\n';

  test('a good pair of files has nothing to complain about', () => {
    const result = read(GOOD.join('\n'), SWITCHES);
    expect(faults(result)).toEqual([]);
    expect(result.schedule.switches).toEqual([{ switch: 'S', type: 2, ports: 24, line: 2, budget: 370 }]);
    expect(result.schedule.runs[0]).toEqual({
      kind: 'powered',
      run: 'R-1',
      device: 'x',
      line: 2,
      switch: 'S',
      port: 1,
      priority: 'low',
      input: expect.objectContaining({ poeClass: 3, cords: [], connections: 0 }),
    });
  });

  test('a name that is there twice: both runs are kept, the second is a finding', () => {
    const result = read([HEADER, row(1), row(2).replace('R-2', 'R-1')].join('\n'));
    expect(lines(result)).toEqual([
      ['R-1', 2],
      ['R-1', 3],
    ]);
    expect(places(result)).toEqual([['duplicate', 'error', 3, 'Run']]);
    expect(faults(result)[0]?.message).toContain('line 2');
  });

  test('a port that is taken, with a switch file and without', () => {
    for (const switches of [undefined, SWITCHES]) {
      const result = read([HEADER, row(1), row(2).replace('S,2', 'S,1')].join('\n'), switches);
      expect(result.schedule.runs).toHaveLength(2);
      expect(places(result)).toEqual([['duplicate', 'error', 3, 'Port']]);
      expect(faults(result)[0]).toMatchObject({ received: '1', file: 'runs.csv' });
      expect(faults(result)[0]?.message).toContain('R-1');
    }
  });

  test('a port beyond the switch', () => {
    const result = read([HEADER, row(24), row(25)].join('\n'), SWITCHES);
    expect(result.schedule.runs).toHaveLength(2);
    expect(places(result)).toEqual([['no-such-port', 'error', 3, 'Port']]);
    expect(faults(result)[0]).toMatchObject({ received: '25', allowed: '1 to 24' });
  });

  test('a switch that is not listed matters only where there is a list', () => {
    const other = GOOD.join('\n').replace('R-2,S', 'R-2,T');
    expect(faults(read(other))).toEqual([]);
    const result = read(other, SWITCHES);
    expect(result.schedule.runs).toHaveLength(3);
    expect(places(result)).toEqual([['unknown-switch', 'error', 3, 'Switch']]);
    expect(faults(result)[0]).toMatchObject({ received: 'T', allowed: 'one of S' });
  });

  test('letter case does not make another switch, unless two differ by nothing else', () => {
    const small = GOOD.join('\n').replaceAll(',S,', ',s,');
    const one = read(small, SWITCHES);
    expect(faults(one)).toEqual([]);
    expect((one.schedule.runs[0] as ScheduledPoweredRun).switch).toBe('S');
    const two = read(small.replaceAll(',s,', ',rack,'), 'Switch,Type,Ports,Budget\nRACK,2,24,370\nRack,3,24,370\n');
    expect(faults(two).map(({ code }) => code)).toEqual(['unknown-switch', 'unknown-switch', 'unknown-switch']);
  });

  test('a switch that is there twice: the first is used', () => {
    const result = read(GOOD.join('\n'), `${SWITCHES}S,3,8,60\n`);
    expect(result.schedule.switches).toEqual([{ switch: 'S', type: 2, ports: 24, line: 2, budget: 370 }]);
    expect(places(result)).toEqual([['duplicate', 'error', 3, 'Switch']]);
  });

  test('a switch whose row cannot be used is said to be so', () => {
    const result = read(GOOD.slice(0, 2).join('\n'), 'Switch,Type,Ports,Budget\nS,9,24,370\n');
    expect(result.schedule.runs).toHaveLength(1);
    expect(faults(result).map(({ code, file, line }) => [code, file, line])).toEqual([
      ['unknown-switch', 'runs.csv', 2],
      ['unknown-name', 'switches.csv', 2],
    ]);
    expect(faults(result)[0]?.message).toContain('cannot be used');
  });
});

describe('defaults', () => {
  const notes = ({ findings }: ParsedSchedule): unknown[] =>
    findings.filter(({ severity }) => severity === 'note').map(({ code, line, column, message }) => [code, line, column, message]);

  test('each empty cell that a default fills is a note at its place', () => {
    const header = 'Run,Switch,Port,PoE class,PD power,Maximum resistance,Resistance loop,Cable,Length,Cords,Connections,Ambient,Priority';
    const result = read(`${header}\nR-1,S,1,3,,20,,cat6,65 m,,,,\nR-2,S,2,3,9 W,20,pair loop,cat6,65 m,none,0,20,low\n`);
    const at = (column: string, message: string): unknown => ['default-applied', 2, column, message];
    expect(notes(result).sort()).toEqual(
      [
        at('PD power', 'PD power is empty: all that its class allows is used'),
        at('Resistance loop', 'Resistance loop is empty: unstated is used, so it is judged as a pair loop'),
        at('Cords', 'Cords is empty: the run is judged without cords'),
        at('Connections', 'Connections is empty: 0 is used'),
        at('Ambient', 'Ambient is empty: 20 °C is used'),
        at('Priority', 'Priority is empty: low is used'),
      ].sort(),
    );
  });

  test('a column that is not there is one note for all rows', () => {
    const found = notes(read(GOOD.join('\n')));
    expect(found).toHaveLength(5);
    for (const note of found)
      expect(note).toEqual(['default-applied', undefined, undefined, expect.stringContaining('there is no column')]);
  });

  test('cords at 20 °C, and joints of a two-wire run, are said once', () => {
    const result = read(
      'Run,Switch,Port,PoE class,PD power,Cable,Length,Cords,Connections,Ambient,Priority,Supply,Load\n' +
        'R-1,S,1,3,9,cat6,65,2 m cord-24,2,40,low,,\nR-2,S,2,3,9,cat6,65,2 m cord-24,2,40,low,,\n' +
        'C-1,,,,,18 AWG,20,,2,40,,24 V,6 W\nC-2,,,,,18 AWG,20,,2,40,,24 V,6 W\n',
    );
    expect(notes(result)).toEqual([
      ['default-applied', undefined, undefined, expect.stringContaining('cords are taken at 20 °C')],
      ['default-applied', undefined, undefined, expect.stringContaining('0 ohm')],
    ]);
    expect(result.schedule.runs.map(({ kind, input }) => (kind === 'powered' ? input.cords?.[0]?.temperature : input.temperature))).toEqual(
      [20, 20, 40, 40],
    );
  });

  test('a default of a switch is noted as well', () => {
    const result = read(GOOD.join('\n'), 'Switch,Type,Ports,Supplies,System load,Minimum output voltage\nS,2,24,370 W,,\n');
    const found = result.findings.filter(({ severity, file }) => severity === 'note' && file === 'switches.csv');
    expect(found.map(({ line, column }) => [line, column])).toEqual([
      [2, 'System load'],
      [2, 'Minimum output voltage'],
    ]);
  });
});

describe('what is shown of a cell', () => {
  test('long texts are cut and control characters replaced', () => {
    const result = read([HEADER, row(1).replace('1 m', `"\u001b]8;;x\u0007${'9'.repeat(300)}"`)].join('\n'));
    const [fault] = faults(result);
    expect(fault?.received).toMatch(/^\ufffd\]8;;x\ufffd9+…$/);
    expect(fault?.received.length).toBeLessThan(100);
    expect(fault?.message).not.toMatch(/\p{Cc}/u);
  });
});

describe('arguments', () => {
  const as = (value: unknown): ParseScheduleInput => value as ParseScheduleInput;
  test('what is neither text nor bytes is refused', () => {
    expectInputError(() => parseSchedule(as(undefined)), 'input', 'missing');
    expectInputError(() => parseSchedule(as('Run')), 'input', 'type');
    expectInputError(() => parseSchedule(as({})), 'runs', 'missing');
    for (const wrong of [42, null, ['Run'], new Date(0), new Uint16Array(2)]) {
      expectInputError(() => parseSchedule(as({ runs: wrong })), 'runs', 'type');
      expectInputError(() => parseSchedule(as({ runs: '', switches: wrong })), 'switches', 'type');
    }
    expectInputError(() => parseSchedule(as({ runs: '', runsFile: 3 })), 'runsFile', 'type');
    expectInputError(() => parseSchedule(as({ runs: '', switchesFile: null })), 'switchesFile', 'type');
  });

  test('without names the files are called runs and switches', () => {
    expect(new Set(parseSchedule({ runs: '', switches: '' }).findings.map(({ file }) => file))).toEqual(new Set(['runs', 'switches']));
  });
});
