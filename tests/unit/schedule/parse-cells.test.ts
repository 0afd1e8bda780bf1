import { describe, expect, test } from 'vitest';
import type { Finding } from '../../../src/schedule/finding.ts';
import { parseSchedule } from '../../../src/schedule/parse-schedule.ts';
import type { ScheduledPoweredRun, ScheduledRun, ScheduledSwitch, ScheduledTwoWireRun } from '../../../src/schedule/schedule.ts';
import type { FindingCode } from '../../../src/words/finding-words.ts';

// Every text below stands in an otherwise good row. What it gives is either a value, known by hand, or a finding at its
// place. 1 ft = 0.3048 m exactly; °C = (°F - 32) / 1.8.

const POWERED = { Run: 'R-1', Switch: 'S', Port: '1', 'PoE class': '3', Cable: 'cat6', Length: '65 m' };
const TWO_WIRE = { Run: 'C-1', Cable: '18 AWG', Length: '26 m', Supply: '21 V to 27.6 V', Load: '6 W' };
const SWITCH = { Switch: 'S', Type: '2', Ports: '24', Budget: '370' };

interface Outcome {
  readonly run: ScheduledRun | undefined;
  /** Errors and warnings, without those that only say that a column is not there. */
  readonly faults: readonly Finding[];
}

function csv(record: Readonly<Record<string, string>>, delimiter: string): string {
  const quoted = (cells: readonly string[]): string => cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(delimiter);
  return `${quoted(Object.keys(record))}\n${quoted(Object.values(record))}\n`;
}

function read(record: Readonly<Record<string, string>>, delimiter = ','): Outcome {
  const { schedule, findings } = parseSchedule({ runs: csv(record, delimiter) });
  return { run: schedule.runs[0], faults: findings.filter(({ severity }) => severity !== 'note') };
}

const input = (run: ScheduledRun | undefined): ScheduledPoweredRun['input'] => (run as ScheduledPoweredRun).input;
const wired = (run: ScheduledRun | undefined): ScheduledTwoWireRun['input'] => (run as ScheduledTwoWireRun).input;

/** A good cell gives its value and no fault. */
function gives(record: Readonly<Record<string, string>>, take: (run: ScheduledRun | undefined) => unknown, delimiter?: string) {
  return (column: string, text: string, value: unknown): void => {
    const { run, faults } = read({ ...record, [column]: text }, delimiter);
    expect(faults).toEqual([]);
    expect(run).toBeDefined();
    const taken = take(run);
    if (typeof value === 'number') expect(taken).toBeCloseTo(value, 9);
    else expect(taken).toEqual(value);
  };
}

/** A bad cell is one finding at its place, and costs the run only where the run cannot do without it. */
function refuses(record: Readonly<Record<string, string>>, lost: boolean, delimiter?: string) {
  return (column: string, text: string, code: FindingCode): void => {
    const { run, faults } = read({ ...record, [column]: text }, delimiter);
    expect(faults.map((fault) => [fault.code, fault.severity, fault.line, fault.column])).toEqual([[code, 'error', 2, column]]);
    const [fault] = faults as [Finding];
    expect(fault.message).toContain(fault.allowed);
    expect(fault.received).not.toBe('');
    expect(run === undefined).toBe(lost);
  };
}

type Row<T> = readonly (readonly [text: string, expected: T])[];

describe('lengths', () => {
  const good: Row<readonly number[]> = [
    ['65 m', [65]],
    ['65m', [65]],
    ['65', [65]],
    ['65.0', [65]],
    ['+65 m', [65]],
    ['6.5e1 m', [65]],
    ['.5 km', [500]],
    ['  65   m ', [65]],
    ['65\u00a0m', [65]],
    ['212 ft', [64.6176]],
    ["212'", [64.6176]],
    ['212 feet', [64.6176]],
    ['0.2 kft', [60.96]],
    ['1500 mm', [1.5]],
    ['65 metres', [65]],
    ['30 m + 12 m', [30, 12]],
    ['30m+12m', [30, 12]],
    ['30 + 40 ft', [30, 12.192]],
    ['30 m\n+ 12 m', [30, 12]],
    ['100 km', [100_000]],
    ['0.001 m', [0.001]],
  ];
  test.each(good)('%j', (text, values) => {
    const { run, faults } = read({ ...POWERED, Length: text });
    expect(faults).toEqual([]);
    const lengths = input(run).installed.map(({ length }) => length);
    expect(lengths).toHaveLength(values.length);
    for (const [index, value] of values.entries()) expect(lengths[index]).toBeCloseTo(value, 9);
  });

  const bad: Row<FindingCode> = [
    ['far', 'unreadable-value'],
    ['65 metre s', 'unreadable-value'],
    ['65 yd', 'unreadable-value'],
    ['65 W', 'unreadable-value'],
    ['65 ohm', 'unreadable-value'],
    ['m', 'unreadable-value'],
    ['65 m 20', 'unreadable-value'],
    ['6 5 m', 'unreadable-value'],
    ['1,200 ft', 'unreadable-value'],
    ['1,200', 'unreadable-value'],
    ['65,5 m', 'unreadable-value'],
    ['1.200,5 m', 'unreadable-value'],
    ['1 200 m', 'unreadable-value'],
    ['1_200 m', 'unreadable-value'],
    ['0x41', 'unreadable-value'],
    ['NaN', 'unreadable-value'],
    ['Infinity', 'unreadable-value'],
    ['=65', 'unreadable-value'],
    ['=HYPERLINK("x")', 'unreadable-value'],
    ['@65', 'unreadable-value'],
    ['#REF!', 'unreadable-value'],
    ['#######', 'unreadable-value'],
    ['~65 m', 'unreadable-value'],
    ['65 m?', 'unreadable-value'],
    ['65-70 m', 'unreadable-value'],
    ['65 m +', 'unreadable-value'],
    ['+ + 65', 'unreadable-value'],
    ['65 m + far', 'unreadable-value'],
    ['65"', 'unreadable-value'],
    ["65' 6", 'unreadable-value'],
    ['\u0666\u0665 m', 'unreadable-value'],
    ['\uff16\uff15 m', 'unreadable-value'],
    ['65\0m', 'unreadable-value'],
    ['\ud800', 'unreadable-value'],
    ['__proto__', 'unreadable-value'],
    ['1 constructor', 'unreadable-value'],
    ['1 toString', 'unreadable-value'],
    ['true', 'unreadable-value'],
    ['-', 'unreadable-value'],
    ['n/a', 'unreadable-value'],
    ['9'.repeat(2000), 'unreadable-value'],
    [`${'1 + '.repeat(400)}1`, 'unreadable-value'],
    ['-5 m', 'value-out-of-range'],
    ['\u22125 m', 'value-out-of-range'],
    ['-0.001', 'value-out-of-range'],
    ['30 m + -1 m', 'value-out-of-range'],
    ['101 km', 'value-out-of-range'],
    ['1e9 m', 'value-out-of-range'],
    ['1e400 m', 'value-out-of-range'],
    ['1e-300 m', 'value-out-of-range'],
  ];
  test.each(bad)('%j is refused', (text, code) => refuses(POWERED, true)('Length', text, code));

  test.each([['0'], ['-0 m'], ['0 m + 0 ft']])('%j is used, with a doubt', (text) => {
    const { run, faults } = read({ ...POWERED, Length: text });
    expect(faults.map(({ code, severity }) => [code, severity])).toEqual([['value-out-of-range', 'warning']]);
    for (const { length } of input(run).installed) expect(Object.is(length, 0)).toBe(true);
  });
});

describe('a comma', () => {
  const good: readonly (readonly [delimiter: string, text: string, value: number])[] = [
    [';', '65,5 m', 65.5],
    ['\t', '65,5', 65.5],
    [';', '0,305', 0.305],
    [';', '1200 m', 1200],
    [';', '65.5 m', 65.5],
  ];
  test.each(good)('with %j between the cells, %j is a decimal', (delimiter, text, value) =>
    gives(POWERED, (run) => input(run).installed[0]?.length, delimiter)('Length', text, value),
  );
  test.each([',', ';', '\t'])('with %j between the cells, 1,200 ft may be two things', (delimiter) =>
    refuses(POWERED, true, delimiter)('Length', '1,200 ft', 'unreadable-value'),
  );
  test.each([
    [';', 'Length', '1.200 m'],
    ['\t', 'Length', '1.200 ft'],
    [';', 'Length (ft)', '1.200'],
    [';', 'Length', '30 m + 12.345 m'],
  ])('with %j between the cells, %s %s may be two things', (delimiter, column, text) => {
    const { Length: _length, ...rest } = POWERED;
    const { run, faults } = read({ ...rest, [column]: text }, delimiter);
    expect(run).toBeUndefined();
    expect(faults.map(({ code, severity, received, message }) => [code, severity, received, message])).toEqual([
      ['unreadable-value', 'error', text, expect.stringContaining('a point here may be a decimal sign or a thousands mark')],
    ]);
  });

  test.each([
    ['1.2 m', 1.2],
    ['0.305 m', 0.305],
    ['1.2000 m', 1.2],
    ['1234.567 m', 1234.567],
  ])('%s in a file with decimal commas can be one thing only', (text, metres) =>
    gives(POWERED, (run) => input(run).installed[0]?.length, ';')('Length', text, metres),
  );

  test.each([',', ';'])('with %j between the cells, a bundle of 1,000 or 1.000 may be two things', (delimiter) => {
    refuses(POWERED, false, delimiter)('Bundle', '1,000', 'unreadable-value');
    refuses(POWERED, false, delimiter)('Bundle', '1.000', 'unreadable-value');
  });
});

describe('whole numbers', () => {
  const good: readonly (readonly [column: string, text: string, value: number])[] = [
    ['PoE class', '0', 0],
    ['PoE class', '8', 8],
    ['PoE class', 'Class 4', 4],
    ['PoE class', 'class4', 4],
    ['PoE class', '04', 4],
    ['PoE class', '4.0', 4],
    ['Port', '1', 1],
    ['Port', 'Port 12', 12],
    ['Port', '+7', 7],
    ['Port', '1000000', 1_000_000],
    ['Connections', '0', 0],
    ['Connections', '6', 6],
    ['Connections', '1000', 1000],
  ];
  test.each(good)('%s %j', (column, text, value) =>
    gives(POWERED, (run) => {
      const { port } = run as ScheduledPoweredRun;
      return column === 'Port' ? port : column === 'Connections' ? input(run).connections : input(run).poeClass;
    })(column, text, value),
  );

  const lost: readonly (readonly [column: string, text: string, code: FindingCode])[] = [
    ['PoE class', '9', 'value-out-of-range'],
    ['PoE class', '-1', 'value-out-of-range'],
    ['PoE class', '2.5', 'value-out-of-range'],
    ['PoE class', '99999999999999999999', 'value-out-of-range'],
    ['PoE class', 'four', 'unreadable-value'],
    ['PoE class', 'IV', 'unreadable-value'],
    ['PoE class', '4 W', 'unreadable-value'],
    ['PoE class', 'length', 'unreadable-value'],
    ['PoE class', '__proto__', 'unreadable-value'],
    ['PoE class', '3-4', 'unreadable-value'],
    ['Port', '0', 'value-out-of-range'],
    ['Port', '-3', 'value-out-of-range'],
    ['Port', '1.5', 'value-out-of-range'],
    ['Port', '1000001', 'value-out-of-range'],
    ['Port', 'twelve', 'unreadable-value'],
    ['Port', '1/0/12', 'unreadable-value'],
    ['Port', '1e3', 'unreadable-value'],
    ['Port', '0x10', 'unreadable-value'],
    ['Port', '1 2', 'unreadable-value'],
  ];
  test.each(lost)('%s %j costs the run', (column, text, code) => refuses(POWERED, true)(column, text, code));

  const kept: readonly (readonly [text: string, code: FindingCode])[] = [
    ['-1', 'value-out-of-range'],
    ['1001', 'value-out-of-range'],
    ['2.5', 'value-out-of-range'],
    ['two', 'unreadable-value'],
    ['2 couplers', 'unreadable-value'],
    ['2+2', 'unreadable-value'],
  ];
  test.each(kept)('Connections %j costs itself alone', (text, code) => refuses(POWERED, false)('Connections', text, code));
});

describe('what the device asks for', () => {
  const good: readonly (readonly [
    column: string,
    text: string,
    key: 'pdPower' | 'minimumVoltage' | 'maximumResistance',
    value: unknown,
  ])[] = [
    ['PD power', '9.5', 'pdPower', 9.5],
    ['PD power', '9.5 W', 'pdPower', 9.5],
    ['PD power', '9500 mW', 'pdPower', 9.5],
    ['PD power', '0.0095 kW', 'pdPower', 0.0095e3],
    ['PD power', '12.95', 'pdPower', 12.95],
    ['PD power', '13.0', 'pdPower', 13],
    ['Minimum voltage', '37', 'minimumVoltage', 37],
    ['Minimum voltage', '37 V', 'minimumVoltage', 37],
    ['Minimum voltage', '37000 mV', 'minimumVoltage', 37],
    ['Maximum resistance', '13', 'maximumResistance', { ohms: 13, loop: 'unstated' }],
    ['Maximum resistance', '13 ohm', 'maximumResistance', { ohms: 13, loop: 'unstated' }],
    ['Maximum resistance', '13 \u03a9', 'maximumResistance', { ohms: 13, loop: 'unstated' }],
    ['Maximum resistance', '13 \u2126', 'maximumResistance', { ohms: 13, loop: 'unstated' }],
    ['Maximum resistance', '13 Ohms', 'maximumResistance', { ohms: 13, loop: 'unstated' }],
  ];
  test.each(good)('%s %j', (column, text, key, value) => gives(POWERED, (run) => input(run)[key])(column, text, value));

  const bad: readonly (readonly [column: string, text: string, code: FindingCode])[] = [
    ['PD power', '0', 'value-out-of-range'],
    ['PD power', '-5 W', 'value-out-of-range'],
    ['PD power', '5 V', 'unreadable-value'],
    ['PD power', '5 VA', 'unreadable-value'],
    ['PD power', 'max', 'unreadable-value'],
    ['PD power', '5 Mw', 'unreadable-value'],
    ['PD power', '3,84 W', 'unreadable-value'],
    ['PD power', '=SUM(A1)', 'unreadable-value'],
    ['Minimum voltage', '0 V', 'value-out-of-range'],
    ['Minimum voltage', '-48 V', 'value-out-of-range'],
    ['Minimum voltage', '37-57 V', 'unreadable-value'],
    ['Minimum voltage', '37 VDC', 'unreadable-value'],
    ['Maximum resistance', '0 ohm', 'value-out-of-range'],
    ['Maximum resistance', '-13', 'value-out-of-range'],
    ['Maximum resistance', '13 ohm/km', 'unreadable-value'],
    ['Maximum resistance', '13R', 'unreadable-value'],
  ];
  test.each(bad)('%s %j is not used', (column, text, code) => {
    refuses(POWERED, false)(column, text, code);
    const given = input(read({ ...POWERED, [column]: text }).run);
    expect([given.pdPower, given.minimumVoltage, given.maximumResistance]).toEqual([undefined, undefined, undefined]);
  });

  const loops: Row<string> = [
    ['pair loop', 'pairLoop'],
    ['Pair-Loop', 'pairLoop'],
    ['one pairset', 'twoPair'],
    ['1 pairset', 'twoPair'],
    ['two pairsets', 'fourPair'],
    ['TWO_PAIRSETS', 'fourPair'],
    ['unstated', 'unstated'],
    ['', 'unstated'],
  ];
  test.each(loops)('loop %j', (text, loop) =>
    gives({ ...POWERED, 'Maximum resistance': '20' }, (run) => input(run).maximumResistance)('Resistance loop', text, { ohms: 20, loop }),
  );
  test.each([['loop'], ['both'], ['constructor'], ['__proto__'], ['3 pairsets']])('loop %j is not known', (text) =>
    refuses({ ...POWERED, 'Maximum resistance': '20' }, false)('Resistance loop', text, 'unknown-name'),
  );
  test('a loop without a resistance contradicts itself', () => {
    const { run, faults } = read({ ...POWERED, 'Maximum resistance': '', 'Resistance loop': 'pair loop' });
    expect(faults.map(({ code, severity, column }) => [code, severity, column])).toEqual([
      ['conflicting-values', 'warning', 'Resistance loop'],
    ]);
    expect(input(run).maximumResistance).toBeUndefined();
  });

  // PSE and PD powers of IEEE Std 802.3-2022, clauses 33 and 145.
  const pse: readonly (readonly [poeClass: string, typed: string, used: number])[] = [
    ['0', '15.4 W', 12.95],
    ['1', '4 W', 3.84],
    ['2', '7 W', 6.49],
    ['3', '15.4', 12.95],
    ['4', '30 W', 25.5],
    ['5', '45', 40],
    ['6', '60 W', 51],
    ['7', '75 W', 62],
    ['8', '90000 mW', 71.3],
  ];
  test.each(pse)('class %s with %s at the device is the power at the port', (poeClass, typed, used) => {
    const { run, faults } = read({ ...POWERED, 'PoE class': poeClass, 'PD power': typed });
    expect(faults.map(({ code, severity, line, column }) => [code, severity, line, column])).toEqual([
      ['pse-power-as-pd-power', 'error', 2, 'PD power'],
    ]);
    expect(faults[0]?.message).toContain(`may draw ${used} W`);
    expect(input(run).pdPower).toBe(used);
  });
  test.each([['29.9'], ['31'], ['25.5'], ['15.4']])('class 4 with %s W is taken as it is', (text) =>
    gives({ ...POWERED, 'PoE class': '4' }, (run) => input(run).pdPower)('PD power', text, Number(text)),
  );
});

describe('cables', () => {
  const good: Row<readonly string[]> = [
    ['cat5e', ['cat5e']],
    ['Cat 5e', ['cat5e']],
    ['CAT-5E', ['cat5e']],
    ['Category 5e', ['cat5e']],
    ['category_6', ['cat6']],
    ['Cat 6A', ['cat6a']],
    ['Category 6A', ['cat6a']],
    ['Cat.5e', ['cat5e']],
    ['Cat. 6', ['cat6']],
    ['6a', ['cat6a']],
    ['5E', ['cat5e']],
    ['cord-24', ['cord-24']],
    ['Cord 28', ['cord-28']],
  ];
  test.each(good)('%j', (text, names) =>
    gives(POWERED, (run) => input(run).installed.map(({ cable }) => cable.name))('Cable', text, names),
  );

  const bad: Row<FindingCode> = [
    ['cat9', 'unknown-name'],
    ['cat', 'unknown-name'],
    ['5', 'unknown-name'],
    ['9z', 'unknown-name'],
    ['cat6 2 pairs', 'conflicting-values'],
    ['6', 'unknown-name'],
    ['coax', 'unknown-name'],
    ['cat6 or cat6a', 'unknown-name'],
    ['constructor', 'unknown-name'],
    ['__proto__', 'unknown-name'],
    ['hasOwnProperty', 'unknown-name'],
    ['=cat6', 'unknown-name'],
    ['cat6 +', 'unreadable-value'],
    ['18 AWG', 'conflicting-values'],
    ['39 ohm/km', 'conflicting-values'],
  ];
  test.each(bad)('%j is refused', (text, code) => refuses(POWERED, true)('Cable', text, code));

  test('a cable for each length', () => {
    const { run, faults } = read({ ...POWERED, Cable: 'cat6 + cat5e', Length: '30 m + 40 m', Ambient: '20 + 50' });
    expect(faults).toEqual([]);
    expect(input(run).installed.map(({ cable, length, temperature }) => [cable.name, length, temperature])).toEqual([
      ['cat6', 30, 20],
      ['cat5e', 40, 50],
    ]);
  });
  test.each([
    ['cat6 + cat5e', '30 m'],
    ['cat6 + cat5e', '30 m + 20 m + 10 m'],
  ])('%j for %j does not add up', (cable, length) => {
    const { run, faults } = read({ ...POWERED, Cable: cable, Length: length });
    expect(run).toBeUndefined();
    expect(faults.map(({ code, column }) => [code, column])).toEqual([['conflicting-values', 'Length']]);
  });
});

describe('cords', () => {
  const good: Row<readonly (readonly [string, number])[]> = [
    ['2 m cord-24', [['cord-24', 2]]],
    ['2m cord 24', [['cord-24', 2]]],
    ['2 cord-24', [['cord-24', 2]]],
    ['5 m 28 AWG', [['cord-28', 5]]],
    ['5 m 28AWG', [['cord-28', 5]]],
    ['1500 mm cord-26', [['cord-26', 1.5]]],
    ['10 ft CORD-24', [['cord-24', 3.048]]],
    ["10' cord-24", [['cord-24', 3.048]]],
    [
      '2 m cord-24 + 5 m 28 AWG',
      [
        ['cord-24', 2],
        ['cord-28', 5],
      ],
    ],
    ['none', []],
    ['', []],
  ];
  test.each(good)('%j', (text, cords) => {
    const { run, faults } = read({ ...POWERED, Cords: text });
    expect(faults).toEqual([]);
    expect(input(run).cords?.map(({ cable, length }) => [cable.name, Number(length.toFixed(9))])).toEqual(cords);
  });

  const bad: Row<FindingCode> = [
    ['2 m', 'unreadable-value'],
    ['cord-24', 'unreadable-value'],
    ['2 m cord', 'unreadable-value'],
    ['2 m cord-22', 'unreadable-value'],
    ['2 m 22 AWG', 'unreadable-value'],
    ['two m cord-24', 'unreadable-value'],
    ['2 x 2 m cord-24', 'unreadable-value'],
    ['2 W cord-24', 'unreadable-value'],
    ['2 m cord-24, 5 m cord-28', 'unreadable-value'],
    ['2 m cord-24 + ', 'unreadable-value'],
    ['-2 m cord-24', 'value-out-of-range'],
    ['1001 m cord-24', 'value-out-of-range'],
  ];
  test.each(bad)('%j is refused', (text, code) => refuses(POWERED, false)('Cords', text, code));
});

describe('temperatures', () => {
  const good: Row<number> = [
    ['35 \u02daC', 35],
    ['95\u02daF', 35],
    ['35', 35],
    ['35 \u00b0C', 35],
    ['35\u00b0C', 35],
    ['35 \u00baC', 35],
    ['35 degC', 35],
    ['35 C', 35],
    ['95 degF', 35],
    ['95 \u00b0F', 35],
    ['-15 \u00b0C', -15],
    ['\u221215', -15],
    ['+35 \u00b0C', 35],
    ['-100', -100],
    ['0', 0],
    ['', 20],
  ];
  test.each(good)('%j', (text, value) => gives(POWERED, (run) => input(run).installed[0]?.temperature)('Ambient', text, value));

  const bad: Row<FindingCode> = [
    ['hot', 'unreadable-value'],
    ['35 K', 'unreadable-value'],
    ['35 m', 'unreadable-value'],
    ['35\u00b0', 'unreadable-value'],
    ['20-30 \u00b0C', 'unreadable-value'],
    ['35,5 \u00b0C', 'unreadable-value'],
    ['401', 'value-out-of-range'],
    ['-101 \u00b0C', 'value-out-of-range'],
    ['-273.15', 'value-out-of-range'],
    ['1000 degF', 'value-out-of-range'],
    ['20 + 30', 'conflicting-values'],
  ];
  test.each(bad)('%j is refused', (text, code) => {
    const { run, faults } = read({ ...POWERED, Ambient: text });
    expect(faults.map((fault) => [fault.code, fault.severity, fault.line, fault.column])).toEqual([[code, 'error', 2, 'Ambient']]);
    expect(input(run).installed[0]?.temperature).toBe(code === 'conflicting-values' ? 30 : 20);
  });

  test('95 without a unit is used, with a doubt: it may be Fahrenheit', () => {
    const { run, faults } = read({ ...POWERED, Ambient: '95' });
    expect(input(run).installed[0]?.temperature).toBe(95);
    expect(faults.map(({ severity, column }) => [severity, column])).toEqual([['warning', 'Ambient']]);
  });
});

describe('priorities and names', () => {
  test.each([
    ['critical', 'critical'],
    ['High', 'high'],
    [' LOW ', 'low'],
    ['', 'low'],
  ])('priority %j', (text, value) => gives(POWERED, (run) => (run as ScheduledPoweredRun).priority)('Priority', text, value));
  test.each([['urgent'], ['1'], ['__proto__'], ['toString'], ['high, low']])('priority %j is not known', (text) =>
    refuses(POWERED, false)('Priority', text, 'unknown-name'),
  );

  const names: Row<string> = [
    ['IC-01', 'IC-01'],
    ['  IC-01  ', 'IC-01'],
    ['IC  01', 'IC 01'],
    ['IC\n01', 'IC 01'],
    ['__proto__', '__proto__'],
    ['constructor', 'constructor'],
    ['=1+1', '=1+1'],
    ['@cmd', '@cmd'],
    ['"', '"'],
    ['Caf\u00e9 \u{1f3ad}', 'Caf\u00e9 \u{1f3ad}'],
    ['a\u001b[31mb', 'a\ufffd[31mb'],
    ['a\0b', 'a\ufffdb'],
    ['a\u202eb', 'a\ufffdb'],
    ['\ud800', '\ufffd'],
  ];
  test.each(names)('run %j', (text, value) => gives(POWERED, (run) => run?.run)('Run', text, value));
  test.each(names)('device %j', (text, value) => gives(POWERED, (run) => run?.device)('Device', text, value));
  test.each(names)('switch %j', (text, value) => gives(POWERED, (run) => (run as ScheduledPoweredRun).switch)('Switch', text, value));

  test('a run without a name is judged under the number of its line', () => {
    const { run, faults } = read({ ...POWERED, Run: ' ' });
    expect(run?.run).toBe('line 2');
    expect(faults.map(({ code, line, column }) => [code, line, column])).toEqual([['missing-value', 2, 'Run']]);
  });
  test.each(['Switch', 'Port', 'PoE class', 'Cable', 'Length'])('an empty %s costs the run', (column) => {
    const { run, faults } = read({ ...POWERED, [column]: '' });
    expect(run).toBeUndefined();
    expect(faults.map(({ code, severity, line, column: at }) => [code, severity, line, at])).toEqual([
      ['missing-value', 'error', 2, column],
    ]);
  });
});

describe('two-wire runs', () => {
  const supplies: Row<unknown> = [
    ['24 V', 24],
    ['24', 24],
    ['24000 mV', 24],
    ['21 V to 27.6 V', { low: 21, high: 27.6 }],
    ['21 to 27.6 V', { low: 21, high: 27.6 }],
    ['21-27.6 V', { low: 21, high: 27.6 }],
    ['21 \u2013 27.6', { low: 21, high: 27.6 }],
    ['21..27.6 V', { low: 21, high: 27.6 }],
    ['24 V to 24 V', { low: 24, high: 24 }],
  ];
  test.each(supplies)('supply %j', (text, value) => gives(TWO_WIRE, (run) => wired(run).supplyVoltage)('Supply', text, value));
  const badSupplies: Row<FindingCode> = [
    ['battery', 'unreadable-value'],
    ['24 W', 'unreadable-value'],
    ['24 VAC', 'unreadable-value'],
    ['21 to', 'unreadable-value'],
    ['to 27 V', 'unreadable-value'],
    ['21 V to high', 'unreadable-value'],
    ['21 - 24 - 27 V', 'unreadable-value'],
    ['24 \u00b1 10%', 'unreadable-value'],
    ['0 V', 'value-out-of-range'],
    ['-24 V', 'value-out-of-range'],
    ['0 V to 24 V', 'value-out-of-range'],
    ['27.6 V to 21 V', 'value-out-of-range'],
  ];
  test.each(badSupplies)('supply %j is refused', (text, code) => refuses(TWO_WIRE, true)('Supply', text, code));

  const loads: Row<unknown> = [
    ['6 W', { power: 6 }],
    ['6000 mW', { power: 6 }],
    ['250 mA', { current: 0.25 }],
    ['0.25 A', { current: 0.25 }],
    ['96 ohm', { resistance: 96 }],
    ['96 \u03a9', { resistance: 96 }],
  ];
  test.each(loads)('load %j', (text, value) => gives(TWO_WIRE, (run) => wired(run).load)('Load', text, value));
  const badLoads: Row<FindingCode> = [
    ['6', 'unreadable-value'],
    ['6 V', 'unreadable-value'],
    ['6 m', 'unreadable-value'],
    ['lamp', 'unreadable-value'],
    ['6 W + 6 W', 'unreadable-value'],
    ['6 ohm/km', 'unreadable-value'],
    ['0 W', 'value-out-of-range'],
    ['-6 W', 'value-out-of-range'],
    ['0 ohm', 'value-out-of-range'],
  ];
  test.each(badLoads)('load %j is refused', (text, code) => refuses(TWO_WIRE, true)('Load', text, code));

  const conductors: Row<string> = [
    ['18 AWG', '18 AWG'],
    ['18awg', '18 AWG'],
    ['AWG 18', '18 AWG'],
    ['18 AWG stranded', '18 AWG stranded'],
    ['18 AWG, Stranded', '18 AWG stranded'],
    ['18 AWG solid', '18 AWG'],
    ['0 AWG', '1/0 AWG'],
    ['4/0 AWG', '4/0 AWG'],
    ['40 AWG', '40 AWG'],
    ['39 ohm/km', '39 ohm/km'],
    ['39 \u03a9/km', '39 \u03a9/km'],
  ];
  test.each(conductors)('conductor %j', (text, name) => gives(TWO_WIRE, (run) => wired(run).conductor.name)('Cable', text, name));
  test('39 ohm/km is what one conductor has', () =>
    gives(TWO_WIRE, (run) => wired(run).conductor.resistancePerMetre)('Cable', '39 ohm/km', 0.039));
  // IEC 60228, greatest resistance at 20 °C of plain copper, classes 1, 2 and 5; below 0.5 mm² the rows printed beside it. [Ω/km]
  const metricSizes: Row<number> = [
    ['1.5 mm2 class 1', 12.1],
    ['1.5 mm2 solid', 12.1],
    ['2.5 mm² class 2', 7.41],
    ['2.5 mm2, stranded', 7.41],
    ['1.5 mm2 class 5', 13.3],
    ['0.75mm2 flexible', 26],
    ['0.22 mm2', 96],
    ['0.34 mm^2', 53],
  ];
  test.each(metricSizes)('conductor %j', (text, ohms) => {
    gives(TWO_WIRE, (run) => wired(run).conductor.resistancePerMetre)('Cable', text, ohms / 1000);
    expect(parseSchedule({ runs: csv({ ...TWO_WIRE, Cable: text }, ',') }).findings.map(({ column }) => column)).not.toContain('Cable');
  });
  test.each([
    [',', '0.75 mm2', 26],
    [';', '0,75 mm2', 26],
    [',', '1.5 mm²', 13.3],
  ])('with %j between the cells, %j is taken as class 5, and a note says so', (delimiter, text, ohms) => {
    const { schedule, findings } = parseSchedule({ runs: csv({ ...TWO_WIRE, Cable: text }, delimiter) });
    expect(wired(schedule.runs[0]).conductor.resistancePerMetre).toBeCloseTo(ohms / 1000, 9);
    expect(findings).toContainEqual({
      code: 'default-applied',
      severity: 'note',
      file: 'runs',
      line: 2,
      column: 'Cable',
      received: text,
      allowed: expect.anything(),
      message: 'run C-1: Cable states no class of conductor: class 5 of IEC 60228, flexible, at its maximum is used',
    });
  });

  // 9.38 Ω/100 m for one conductor of Category 5e (ANSI/TIA-568.2-D): one core each way, then two, then four side by side.
  test.each([
    ['cat5e 1 pair', 0.0938, 1, 'Category 5e, 1 pair'],
    ['cat5e, 2 pairs', 0.0469, 2, 'Category 5e, 2 pairs'],
    ['Cat. 5e 4 pairs', 0.02345, 4, 'Category 5e, 4 pairs'],
  ])('conductor %j', (text, ohms, cores, name) => {
    const { run, faults } = read({ ...TWO_WIRE, Cable: text });
    expect(faults).toEqual([]);
    expect(wired(run).conductor.resistancePerMetre).toBeCloseTo(ohms, 12);
    expect([wired(run).conductor.name, (run as ScheduledTwoWireRun).cores]).toEqual([name, cores]);
  });

  const badConductors: Row<FindingCode> = [
    ['18', 'unknown-name'],
    ['thick', 'unknown-name'],
    ['AWG', 'unknown-name'],
    ['-1 AWG', 'unknown-name'],
    ['18.5 AWG', 'unknown-name'],
    ['5/0 AWG', 'unknown-name'],
    ['18 AWG gold', 'unknown-name'],
    ['41 AWG', 'value-out-of-range'],
    ['99 AWG', 'value-out-of-range'],
    ['0 ohm/km', 'value-out-of-range'],
    ['1.6 mm2', 'value-out-of-range'],
    ['0 mm2', 'value-out-of-range'],
    ['120 mm2', 'value-out-of-range'],
    ['1.5 mm2 class 3', 'unknown-name'],
    ['0.22 mm2 class 1', 'unknown-name'],
    ['1,5 mm2', 'unreadable-value'],
    ['mm2', 'unknown-name'],
    ['cat5e 5 pairs', 'value-out-of-range'],
    ['cat5e 0 pairs', 'value-out-of-range'],
    ['cat9 1 pair', 'unknown-name'],
    ['18 AWG 1 pair', 'unknown-name'],
    ['39 ohm/mile', 'unreadable-value'],
    ['cat6', 'conflicting-values'],
    ['18 AWG + 20 AWG', 'conflicting-values'],
  ];
  test.each(badConductors)('conductor %j is refused', (text, code) => refuses(TWO_WIRE, true)('Cable', text, code));

  test('pieces of one conductor are one length', () => gives(TWO_WIRE, (run) => wired(run).length)('Length', '20 m + 10 ft', 23.048));

  test.each([
    ['Cords', '2 m cord-24'],
    ['PD power', '6 W'],
    ['Priority', 'high'],
  ])('%s has no meaning there', (column, text) => {
    const { run, faults } = read({ ...TWO_WIRE, [column]: text });
    expect(run).toBeDefined();
    expect(faults.map(({ code, severity, column: at }) => [code, severity, at])).toEqual([['conflicting-values', 'warning', column]]);
  });

  test.each([
    [{ ...POWERED, Supply: '24 V', Load: '6 W' }, 'conflicting-values'],
    [{ ...POWERED, Switch: '', Port: '', 'PoE class': '' }, 'missing-value'],
    [{ ...TWO_WIRE, Supply: '', Load: '' }, 'missing-value'],
  ] as const)('a run is fed one way: %j', (record, code) => {
    const { run, faults } = read(record);
    expect(run).toBeUndefined();
    expect(faults.map((fault) => [fault.code, fault.severity, fault.line, fault.column])).toEqual([[code, 'error', 2, undefined]]);
  });
});

describe('switches', () => {
  function readSwitch(record: Readonly<Record<string, string>>): { entry: ScheduledSwitch | undefined; faults: readonly Finding[] } {
    const { schedule, findings } = parseSchedule({ runs: csv(POWERED, ','), switches: csv(record, ',') });
    return { entry: schedule.switches[0], faults: findings.filter(({ severity, file }) => severity !== 'note' && file === 'switches') };
  }

  const types: Row<number> = [
    ['1', 1],
    ['4', 4],
    ['Type 3', 3],
    ['802.3af', 1],
    ['802.3at', 2],
    ['IEEE 802.3at', 2],
    ['802.3at type 1', 1],
    ['802.3bt type 3', 3],
    ['802.3BT Type-4', 4],
  ];
  test.each(types)('type %j', (text, type) => {
    const { entry, faults } = readSwitch({ ...SWITCH, Type: text });
    expect(faults).toEqual([]);
    expect(entry?.type).toBe(type);
  });

  const bad: readonly (readonly [column: string, text: string, code: FindingCode, lost: boolean])[] = [
    ['Type', '5', 'unknown-name', true],
    ['Type', '802.3bt', 'unknown-name', true],
    ['Type', '802.3', 'unknown-name', true],
    ['Type', 'constructor', 'unknown-name', true],
    ['Ports', '0', 'value-out-of-range', true],
    ['Ports', '-24', 'value-out-of-range', true],
    ['Ports', '24.5', 'value-out-of-range', true],
    ['Ports', 'many', 'unreadable-value', true],
    ['Budget', '-1', 'value-out-of-range', false],
    ['Budget', '2000000', 'value-out-of-range', false],
    ['Budget', '370 V', 'unreadable-value', false],
    ['Supplies', '150 + 0', 'value-out-of-range', false],
    ['Supplies', '150 + x', 'unreadable-value', false],
    ['System load', '-35', 'value-out-of-range', false],
    ['System load', 'some', 'unreadable-value', false],
    ['Minimum output voltage', '58 V', 'value-out-of-range', false],
    ['Minimum output voltage', '0', 'value-out-of-range', false],
    ['Minimum output voltage', 'low', 'unreadable-value', false],
  ];
  test.each(bad)('%s %j is refused', (column, text, code, lost) => {
    const { entry, faults } = readSwitch({ ...SWITCH, [column]: text });
    expect(faults.map((fault) => [fault.code, fault.severity, fault.line, fault.column])).toEqual([[code, 'error', 2, column]]);
    expect(entry === undefined).toBe(lost);
  });

  test('supplies with a system load', () => {
    const { entry, faults } = readSwitch({ Switch: 'S', Type: '2', Ports: '8', Supplies: '150 W + 0.15 kW', 'System load': '35' });
    expect(faults).toEqual([]);
    expect(entry).toEqual({ switch: 'S', type: 2, ports: 8, line: 2, supplies: [{ power: 150 }, { power: 150 }], systemLoad: 35 });
  });
  test.each([
    ['Supplies', '150 W'],
    ['System load', '35 W'],
  ])('a published budget needs no %s', (column, text) => {
    const { entry, faults } = readSwitch({ ...SWITCH, [column]: text });
    expect(entry).toEqual({ switch: 'S', type: 2, ports: 24, line: 2, budget: 370 });
    expect(faults.map(({ code, severity, column: at }) => [code, severity, at])).toEqual([['conflicting-values', 'warning', column]]);
  });
  test('neither budget nor supplies', () => {
    const { entry, faults } = readSwitch({ ...SWITCH, Budget: '' });
    expect(entry).toEqual({ switch: 'S', type: 2, ports: 24, line: 2 });
    expect(faults.map(({ code, severity, line }) => [code, severity, line])).toEqual([['missing-value', 'warning', 2]]);
  });

  // Lowest voltages at the port: IEEE Std 802.3-2022, clauses 33 and 145.
  test.each([
    ['1', '44', true],
    ['1', '43.9', false],
    ['2', '50', true],
    ['2', '48 V', false],
    ['3', '50', true],
    ['4', '52', true],
    ['4', '50', false],
  ])('type %s with %s V at its ports', (type, text, within) => {
    const { entry, faults } = readSwitch({ ...SWITCH, Type: type, 'Minimum output voltage': text });
    expect(entry?.minimumVoltage).toBe(Number.parseFloat(text));
    expect(faults.map(({ code, severity }) => [code, severity])).toEqual(within ? [] : [['voltage-outside-type', 'warning']]);
  });
});

describe('a unit in the header is the unit of bare numbers', () => {
  test.each([
    ['Length (m)', '100', 100],
    ['Length (ft)', '100', 30.48],
    ['Length [ft]', '100', 30.48],
    ['Length (ft)', '100 m', 100],
    ['length_(FT) ', '100 ft', 30.48],
  ])('%s %j', (header, text, value) => {
    const { Length: _, ...rest } = POWERED;
    const { run } = read({ ...rest, [header]: text });
    expect(input(run).installed[0]?.length).toBeCloseTo(value, 9);
  });
  test.each([
    ['Ambient (˚F)', '95', (run: ScheduledRun | undefined) => input(run).installed[0]?.temperature, 35],
    ['Ambient (°F)', '95', (run: ScheduledRun | undefined) => input(run).installed[0]?.temperature, 35],
    ['PD power (mW)', '9500', (run: ScheduledRun | undefined) => input(run).pdPower, 9.5],
  ] as const)('%s %j', (header, text, take, value) => gives(POWERED, take)(header, text, value));
  test('one that is no unit is a doubt about the whole column', () => {
    const { Length: _, ...rest } = POWERED;
    const { run, faults } = read({ ...rest, 'Length (yd)': '100' });
    expect(input(run).installed[0]?.length).toBe(100);
    expect(faults.map(({ severity, line, column }) => [severity, line, column])).toEqual([['warning', 1, 'Length (yd)']]);
  });
});
