/**
 * Adding a thing touches one record, its words and one test. One of each is added here in memory, compiled with the whole
 * library, and asked for by everything that is made from the record. DEVELOPERS.md shows the same records.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type * as Root from '../../src/index.ts';
import type * as Schedule from '../../src/schedule/index.ts';
import type * as Words from '../../src/words/index.ts';
import type * as WorkingRoom from '../../src/working/index.ts';
import { compileErrors, type Edit, edited } from '../support/edited.ts';
import { ROOT } from '../support/files.ts';

/** What is added: the record as DEVELOPERS.md shows it, and where it is listed and used. */
interface Addition {
  readonly record: Edit;
  readonly rest: readonly Edit[];
}

const LIMIT: Addition = {
  record: {
    file: 'limits/house-loop.ts',
    head: "/** A rule of the house: no line of more ohms than that. @module */\nimport type { Limit, LimitWords } from './limit.ts';\n",
    lines: `export const HOUSE_LOOP: Limit<'house-loop'> = {
  name: 'house-loop', aspect: 'power', unit: 'Ω', source: 'library-default',
  asResistance: (_supplyVoltage, _load, bound) => bound };
export const HOUSE_LOOP_WORDS: LimitWords = {
  title: 'Loop the house allows', subject: 'the loop', fails: 'the line has {value}; the house allows {limit}', wayOut: 'a shorter line' };
`,
  },
  rest: [
    { file: 'limits/records.ts', before: "export * from './insertion-loss-length.ts'", lines: "export * from './house-loop.ts';\n" },
    { file: 'limits/all.ts', before: 'records.PD_POWER, ', lines: 'records.HOUSE_LOOP, ' },
    {
      file: 'plan/two-wire-limits.ts',
      before: 'import type { CheckUnit, Limit }',
      lines: "import { HOUSE_LOOP } from '../limits/house-loop.ts';\n",
    },
    {
      file: 'plan/two-wire-limits.ts',
      before: '  return found;\n',
      lines: '  add(HOUSE_LOOP, 40, low, 0, (_, resistance) => resistance);\n',
    },
  ],
};

const COLUMN: Addition = {
  record: {
    file: 'schedule/columns/run-columns.ts',
    before: "  load: {\n    title: 'Load',",
    lines: `  floor: {
    title: 'Floor', also: ['Storey'], about: 'where the device is', allowed: 'a whole number from 0 to 99',
    read: whole({ from: 0, to: 99 }), instead: 'the run has no floor' },
`,
  },
  rest: [
    { file: 'schedule/columns/run-columns.ts', before: '  readonly load: Column<Load>;\n', lines: '  readonly floor: Column<number>;\n' },
    {
      file: 'schedule/read/powered-row.ts',
      before: "  const priority = reader.orNoted('priority')",
      lines: "  reader.optional('floor');\n",
    },
  ],
};

const CABLE: Addition = {
  record: {
    file: 'cable/cables.ts',
    before: "  'cord-24': [",
    lines: "  cat8: ['8', 'horizontal', 22, null, true, [0.0938, 'tia-568.2-d-cable'], null],\n",
  },
  rest: [],
};

const INPUT: Addition = {
  record: {
    file: 'plan/powered-input.ts',
    before: "  label: { text: 'any', optional: true },\n",
    lines: "  spareLength: { nonNegative: 'm', default: 3, source: 'library-default', about: 'coiled up at the device' },\n",
  },
  rest: [
    {
      file: 'plan/powered-input.ts',
      before: '  /** Comes back in the judged run; a search takes it and leaves it. */',
      lines: '  /** Coiled up at the device; 3 if absent. [m] */\n  readonly spareLength?: number | undefined;\n',
    },
    { file: 'plan/powered-input.ts', before: "'cords' | 'connections' | 'connectionResistance' | 'cabling'", lines: "'spareLength' | " },
  ],
};

const CALCULATION: Addition = {
  record: {
    file: 'working/book/short-current.ts',
    head: `/** What flows where a line is shorted. @module */
import { requirePositive } from '../../quantity/guards.ts';
import type { Ohms, Volts } from '../../quantity/units.ts';
import type { BookSheet } from '../engine/rows.ts';
export interface ShortCurrentInput {
  readonly supplyVoltage: Volts;
  readonly resistance: Ohms;
}
`,
    lines: `export const shortCurrentSheet: BookSheet<ShortCurrentInput, never> = {
  title: 'The current of a short', needs: ['supplyVoltage', 'resistance'], assumptions: [], validity: 'Direct current.', slips: [],
  givens: [['V', 'V', 'supply voltage', 'supplyVoltage'], ['R', 'Ω', 'resistance of the line', 'resistance']],
  steps: [['I', 'A', 'V / R', 'current of the short', { core: 'current' }]],
  guard: ({ supplyVoltage }) => requirePositive(supplyVoltage, 'supplyVoltage', 'V'), read: () => ({}) };
`,
  },
  rest: [
    {
      file: 'working/book/sheets.ts',
      before: 'import { switchBudgetSheet }',
      lines: "import { type ShortCurrentInput, shortCurrentSheet } from './short-current.ts';\n",
    },
    {
      file: 'working/book/sheets.ts',
      before: '  readonly switchBudget: ',
      lines: '  readonly shortCurrent: ShortCurrentInput;\n',
    },
    { file: 'working/book/sheets.ts', before: '  switchBudget: switchBudgetSheet,', lines: '  shortCurrent: shortCurrentSheet,\n' },
  ],
};

const ADDITIONS = { LIMIT, COLUMN, CABLE, INPUT, CALCULATION };
const ALL = Object.values(ADDITIONS).flatMap(({ record, rest }) => [record, ...rest]);
const MODULE =
  "export * from './src/index.ts'; export * from './src/schedule/index.ts'; export * from './src/words/index.ts'; export * from './src/working/index.ts';";

type Library = typeof Root & typeof Schedule & typeof Words & typeof WorkingRoom;
let library: Library;
beforeAll(async () => {
  library = (await edited(ALL, MODULE)) as unknown as Library;
});

test('the library compiles with one of each: nothing else has to know of them', () => {
  expect(compileErrors(ALL)).toEqual([]);
});

test('a limit without words does not compile', () => {
  const { lines } = LIMIT.record;
  const record = { ...LIMIT.record, lines: lines.slice(0, lines.indexOf('export const HOUSE_LOOP_WORDS')) };
  expect(compileErrors([record, ...LIMIT.rest], ['limits/limit-words.ts']).join()).toContain('HOUSE_LOOP_WORDS');
});

test('an input without a field does not compile', () => {
  expect(compileErrors(INPUT.rest, ['plan/powered-input.ts']).join()).toContain('spareLength');
});

test.each(Object.entries(ADDITIONS))('DEVELOPERS.md shows the record, in five lines: %s', (_what, { record }) => {
  expect(readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8').includes(record.lines)).toBe(true);
  expect(record.lines.split('\n').length - 1).toBeLessThanOrEqual(5);
});

describe('a limit', () => {
  // The types of this library do not know it.
  const name = 'house-loop' as Root.CheckName;
  const line = (): Root.TwoWireCircuit => ({
    supplyVoltage: { low: 21, high: 27.6 },
    conductor: library.awg(24),
    load: { power: 2 },
    minimumVoltage: 9,
  });

  test('has a name and words', () => {
    expect(library.checkNames).toContain(name);
    expect(library.checkTitle(name)).toBe('Loop the house allows');
  });

  test('is a check of the run, decides about it, and is put in words', () => {
    const run = library.checkTwoWireRun({ ...line(), length: 300 });
    expect(run.governing).toMatchObject({ name, limit: 40, unit: 'Ω', verdict: 'fail', source: 'library-default' });
    expect(run.checks.map(library.describeCheck).find((words) => words.startsWith('Loop the house'))).toMatch(
      /^Loop the house allows, FAIL: the line has 5\d\.\d+ Ω; the house allows 40 Ω$/,
    );
  });

  test('is a limit of every unknown, to the safe side', () => {
    const longest = library.maximumRun(line());
    if (!longest.feasible || longest.unbounded) throw new Error('there is a longest');
    expect(longest.governedBy).toBe(name);
    expect(library.checkTwoWireRun({ ...line(), length: longest.length }).verdict.power).not.toBe('fail');
    expect(library.checkTwoWireRun({ ...line(), length: longest.length * (1 + 1e-9) }).verdict.power).toBe('fail');
    const hottest = library.highestTemperature({ ...line(), length: longest.length * 0.9 });
    expect(hottest).toMatchObject({ feasible: true, governedBy: name });
  });

  test('is put right by remedies', () => {
    expect(library.remedies({ ...line(), length: 300 }).map(({ remedy }) => remedy)).toContain('shorter-run');
  });
});

describe('a column', () => {
  const runs = (header: string, cell: string): Schedule.ParseScheduleInput => ({
    runs: `Run,Switch,Port,PoE class,Cable,Length,${header}\nHP-01,Foyer,1,3,cat6,60,${cell}`,
  });

  test.each(['Floor', 'storey', 'FLOOR_'])('is known as %s', (header) => {
    expect(library.parseSchedule(runs(header, '3')).findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
  });

  test('says what it wants, and what happens without it', () => {
    expect(library.parseSchedule(runs('Floor', 'roof')).findings).toContainEqual(
      expect.objectContaining({
        column: 'Floor',
        allowed: 'a whole number from 0 to 99',
        message: 'run HP-01: Floor "roof" cannot be read; write a whole number from 0 to 99; the run has no floor',
      }),
    );
  });

  test('stands in the blank file', () => {
    expect(library.templateCsv({ file: 'runs' }).split('\r\n')[0]).toContain('Floor,Load');
  });
});

describe('a cable', () => {
  const name = 'cat8' as Root.CableName;

  test('has a name, and a record with its source', () => {
    expect(library.cableNames).toContain(name);
    expect(library.cable(name)).toMatchObject({ name, title: 'Category 8', gauge: 22, screened: true, source: 'tia-568.2-d-cable' });
  });

  test('is taken wherever a cable is', () => {
    expect(library.runResistance({ segments: [{ cable: name, length: 100 }] }).twoPair).toBeCloseTo(9.38, 9);
    expect(library.maximumRun({ cable: name, poeClass: 4 })).toMatchObject({ feasible: true, governedBy: 'permanent-link-length' });
  });

  test('is meant by a name that is near', () => {
    const run = { installed: [{ cable: 'Cat8' as Root.CableName, length: 60 }], poeClass: 3 } as const;
    expect(() => library.checkPoweredRun(run)).toThrow('installed[0].cable: "Cat8" is unknown; did you mean "cat8"?');
  });

  test('is read in a schedule as people spell it', () => {
    const { schedule } = library.parseSchedule({ runs: 'Run,Switch,Port,PoE class,Cable,Length\nHP-01,Foyer,1,3,Category 8,60' });
    expect(schedule.runs[0]).toMatchObject({ input: { installed: [{ cable: { name } }] } });
  });
});

describe('an input', () => {
  const run = { installed: [{ cable: 'cat6', length: 60 }], poeClass: 3 } as const;
  const check = (more: object): Root.PoweredRun => library.checkPoweredRun({ ...run, ...more });

  test('is guarded', () => {
    expect(() => check({ spareLength: -1 })).toThrow('spareLength: expected 0 or a number from 1e-12 to 1e12 m, received -1');
    expect(() => check({ spareLength: '3' })).toThrow('spareLength: expected');
  });

  test('is meant by a key that is near', () => {
    expect(() => check({ spareLenght: 1 })).toThrow('spareLenght: unknown; did you mean spareLength?');
  });

  test('is assumed where it is left out', () => {
    const assumed = { parameter: 'spareLength', value: 3, unit: 'm', source: 'library-default' };
    expect(check({}).assumptions).toContainEqual(assumed);
    expect(check({ spareLength: 1 }).assumptions).not.toContainEqual(assumed);
  });
});

describe('a calculation', () => {
  // Neither its name nor its input is known to the types of this library.
  const name = 'shortCurrent' as 'loopResistance';
  const input = { supplyVoltage: 24, resistance: 9 } as never;

  test('is evaluated, and shown as a page', () => {
    const working = library.showWorking(name, input);
    expect(working.result).toMatchObject({ symbol: 'I', unit: 'A', shown: '2.667 A', core: 'current' });
    expect(library.workingText(working)).toContain('= 24 V / (9 Ω)');
    expect(library.workingLatex(working)).toContain('\\frac{24\\,\\mathrm{V}}{9\\,\\Omega}');
  });

  test('is guarded, and its answers looked at', () => {
    expect(() => library.showWorking(name, { supplyVoltage: 0, resistance: 9 } as never)).toThrow('supplyVoltage: expected');
    expect(library.reviewAnswer(name, input, '2.67 A').verdict).toBe('right');
    expect(library.reviewAnswer(name, input, '3 A').verdict).toBe('wrong');
  });

  test('is worked by the command', async () => {
    const printed: string[] = [];
    const code = await library.work(['shortCurrent', 'supplyVoltage=24V', 'resistance=9ohm'], {
      print: (text) => printed.push(text),
      complain: (text) => printed.push(text),
    } as Parameters<typeof library.work>[1]);
    expect([code, printed.join('').includes('The current of a short')]).toEqual([0, true]);
  });
});
