import { describe, expect, test } from 'vitest';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import { parseSchedule } from '../../../src/schedule/parse-schedule.ts';
import type { ScheduledPoweredRun, ScheduledTwoWireRun } from '../../../src/schedule/schedule.ts';
import { type ScheduleFromRowsInput, scheduleFromRows } from '../../../src/schedule/schedule-from-rows.ts';
import { expectInputError, expectPlain, frozen } from '../../helpers/expectations.ts';

const POWERED = { Run: 'R-1', Switch: 'S', Port: 1, 'PoE class': 3, Cable: 'cat6', Length: 65 };

const faults = (result: ReturnType<typeof scheduleFromRows>): unknown[] =>
  result.findings.filter(({ severity }) => severity !== 'note').map(({ code, severity, line, column }) => [code, severity, line, column]);

describe('rows of data', () => {
  test('say what the same rows in a file say', () => {
    const record = {
      Run: 'R-1',
      Switch: 'S',
      Port: '1',
      'PoE class': '3',
      Cable: 'cat6',
      Length: '212 ft',
      Ambient: '95 degF',
      Priority: 'high',
    };
    const file = `${Object.keys(record).join(',')}\n${Object.values(record).join(',')}\n`;
    const line = ({ schedule }: ReturnType<typeof scheduleFromRows>): unknown => schedule.runs.map(({ line: _, ...run }) => run);
    expect(line(scheduleFromRows({ runs: [record] }))).toEqual(line(parseSchedule({ runs: file })));
  });

  test('hold texts or numbers; a number is in the unit of the column', () => {
    const result = scheduleFromRows(
      frozen({
        runs: [
          { ...POWERED, 'PD power': 9.5, minimum_voltage: 37, 'Maximum resistance': 13, Connections: 2, Ambient: -15.5 },
          { run: 'C-1', cable: '18 AWG', length: 26n, supply: 24, load: '6 W', device: 12 },
        ],
        switches: [{ Switch: 'S', Type: 2, Ports: 24, Budget: 370 }],
      }),
    );
    expect(faults(result)).toEqual([]);
    const [powered, wired] = result.schedule.runs as [ScheduledPoweredRun, ScheduledTwoWireRun];
    expect(powered.input).toMatchObject({ pdPower: 9.5, minimumVoltage: 37, maximumResistance: { ohms: 13 }, connections: 2 });
    expect(powered.input.installed).toMatchObject([{ length: 65, temperature: -15.5 }]);
    expect(wired).toMatchObject({ device: '12', input: { length: 26, supplyVoltage: 24, load: { power: 6 } } });
    expect(result.schedule.switches).toMatchObject([{ switch: 'S', type: 2, ports: 24, budget: 370 }]);
    expectPlain(result);
  });

  test('may lack cells, and may have them in any order', () => {
    const result = scheduleFromRows({
      runs: [POWERED, { Length: 5, Cable: 'cat6', 'PoE class': 3, Port: 2, Switch: 'S', Run: 'R-2', Priority: 'high' }],
    });
    expect(result.schedule.runs.map((run) => [run.run, (run as ScheduledPoweredRun).priority])).toEqual([
      ['R-1', 'low'],
      ['R-2', 'high'],
    ]);
    expect(faults(result)).toEqual([]);
  });

  test.each([
    ['NaN', Number.NaN, 'unreadable-value'],
    ['Infinity', Number.POSITIVE_INFINITY, 'unreadable-value'],
    ['-5', -5, 'value-out-of-range'],
    ['true', true, 'unreadable-value'],
    ['1e21', 1e21, 'unreadable-value'],
  ])('a length of %s is a finding', (_name, length, code) => {
    const result = scheduleFromRows({ runs: [POWERED, { ...POWERED, Run: 'R-2', Port: 2, Length: length }] });
    expect(result.schedule.runs.map(({ run }) => run)).toEqual(['R-1']);
    expect(faults(result)).toEqual([[code, 'error', 2, 'Length']]);
  });

  test.each<[string, unknown]>([
    ['an object', { value: 65 }],
    ['a list', [65]],
    ['an object without a prototype', Object.create(null)],
    ['a function', () => 65],
    ['a symbol', Symbol('65')],
    ['a date', new Date(0)],
  ])('%s is no cell', (_name, length) => {
    const result = scheduleFromRows({ runs: [{ ...POWERED, Length: length }] });
    expect(result.schedule.runs).toEqual([]);
    expect(faults(result)).toEqual([['unreadable-value', 'error', 1, 'Length']]);
  });

  test.each<[string, unknown]>([
    ['nothing', undefined],
    ['null', null],
    ['a text', 'R-2,S,2'],
    ['a number', 2],
    ['a list', ['R-2', 'S', 2]],
    [
      'an object that does not let itself be read',
      {
        get Run(): string {
          throw new Error('no');
        },
      },
    ],
    ['a revoked proxy', revoked()],
  ])('%s is no row', (_name, row) => {
    const result = scheduleFromRows({ runs: [POWERED, row, { ...POWERED, Run: 'R-3', Port: 3 }] });
    expect(result.schedule.runs.map(({ run }) => run)).toEqual(['R-1', 'R-3']);
    expect(faults(result)).toEqual([['broken-row', 'error', 2, undefined]]);
  });

  test.each<[string, unknown]>([
    ['Run', {}],
    ['Switch', [50]],
    ['Port', {}],
    ['PoE class', []],
    ['Device', {}],
    ['Minimum voltage', [50]],
    ['Ambient', { celsius: 20 }],
    ['Cords', []],
  ])('%s that is no text has one finding', (column, cell) => {
    const result = scheduleFromRows({ runs: [{ Cords: '', Ambient: '', Device: '', 'Minimum voltage': '', ...POWERED, [column]: cell }] });
    expect(result.findings.filter((finding) => finding.column === column).map(({ code }) => code)).toEqual(['unreadable-value']);
    expect(faults(result)).toEqual([['unreadable-value', 'error', 1, column]]);
  });

  test('a limit that is no text leaves its run uncertain', () => {
    const { schedule } = scheduleFromRows({ runs: [{ ...POWERED, 'Minimum voltage': [50] }] });
    expect(checkSchedule(schedule).runs[0]).toMatchObject({
      outcome: 'uncertain',
      unread: [{ column: 'Minimum voltage', words: 'Minimum voltage could not be read: an object or a list', bearsOn: ['power'] }],
    });
  });

  test('no rows are a finding, as an empty file is', () => {
    expect(scheduleFromRows({ runs: [], switches: [] }).findings.map(({ code, file }) => [code, file])).toEqual([
      ['unusable-file', 'runs'],
      ['unusable-file', 'switches'],
    ]);
    expect(faults(scheduleFromRows({ runs: [{}] }))).toContainEqual(['missing-column', 'error', undefined, undefined]);
  });

  test('may spell a column each in its own way, but not twice in one row', () => {
    const second = { run: 'R-2', SWITCH: 'S', port: 2, Class: 3, cable: 'cat6', 'installed length': 7 };
    const result = scheduleFromRows({ runs: [POWERED, second, { ...second, Run: 'R-3' }] });
    expect(result.schedule.runs.map(({ run }) => run)).toEqual(['R-1', 'R-2', 'R-2']);
    expect(faults(result).slice(0, 1)).toEqual([['duplicate-column', 'error', 3, 'Run']]);
  });

  test('a unit in a key is the unit of its own numbers', () => {
    const { Length: _, ...rest } = POWERED;
    const result = scheduleFromRows({ runs: [{ ...rest, 'Length (ft)': 100 }] });
    expect((result.schedule.runs[0] as ScheduledPoweredRun).input.installed[0]?.length).toBeCloseTo(30.48, 9);
  });

  test('names that every object has are only names', () => {
    const record = JSON.parse('{ "__proto__": "x", "constructor": "y", "toString": "z" }') as object;
    const result = scheduleFromRows({
      runs: [{ ...POWERED, ...record }, Object.assign(JSON.parse('{"__proto__": 1}'), POWERED, { Run: 'R-2', Port: 2 })],
    });
    expect(result.schedule.runs).toHaveLength(2);
    expect(new Set(faults(result).map((fault) => (fault as unknown[])[0]))).toEqual(new Set(['unknown-column']));
  });
});

describe('arguments', () => {
  const as = (value: unknown): ScheduleFromRowsInput => value as ScheduleFromRowsInput;
  test('what is no list is refused', () => {
    expectInputError(() => scheduleFromRows(as(undefined)), 'input', 'missing');
    expectInputError(() => scheduleFromRows(as({})), 'runs', 'missing');
    for (const wrong of ['R-1', 3, null, {}, new Map()]) {
      expectInputError(() => scheduleFromRows(as({ runs: wrong })), 'runs', 'type');
      expectInputError(() => scheduleFromRows(as({ runs: [], switches: wrong })), 'switches', 'type');
    }
  });
});

function revoked(): object {
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  return proxy;
}
