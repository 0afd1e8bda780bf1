import { describe, expect, test } from 'vitest';
import { assumptionsOf, type DefaultField, type Fields, readInput, unitOf } from '../../../src/quantity/fields.ts';
import type { Interval } from '../../../src/quantity/interval.ts';
import type { Celsius, Metres, Ohms } from '../../../src/quantity/units.ts';
import { as, expectInputError } from '../../helpers/expectations.ts';

interface Piece {
  readonly cable: string | { readonly name: string };
  readonly length: Metres;
  readonly temperature?: Celsius | undefined;
}

interface Draw {
  readonly power?: number | undefined;
  readonly current?: number | undefined;
}

interface Limits {
  readonly fraction?: number | undefined;
}

interface Input {
  readonly installed: readonly Piece[];
  readonly cords?: readonly Piece[] | undefined;
  readonly connections?: number | undefined;
  readonly jointResistance?: Ohms | undefined;
  readonly ambient?: Celsius | Interval | undefined;
  readonly basis?: 'nominal' | 'maximum' | undefined;
  readonly pairs?: 2 | 4 | undefined;
  readonly screened?: boolean | undefined;
  readonly label?: string | undefined;
  readonly title?: string | undefined;
  readonly draw?: Draw | undefined;
  readonly limits?: Limits | undefined;
  readonly allowance?: number | undefined;
  readonly share?: number | undefined;
  readonly shift?: number | undefined;
  readonly made?: number | undefined;
  readonly odd?: number | undefined;
}

interface Made {
  readonly cable: { readonly name: string };
}

const PIECE: Fields<Piece, 'temperature', Made> = {
  cable: { read: (value, path) => (typeof value === 'string' ? { name: `${value} at ${path}` } : value), type: 'Cable' },
  length: { nonNegative: 'm' },
  temperature: { temperature: '°C', default: 20, source: 'iec-60028' },
};

type Filled = 'cords' | 'connections' | 'jointResistance' | 'screened' | 'limits';

const FIELDS: Fields<Input, Filled, { installed: readonly unknown[] }> = {
  installed: { list: { object: () => PIECE }, least: 'piece' },
  cords: { list: { object: () => PIECE }, default: [], source: 'three-loops' },
  connections: () => CONNECTIONS,
  jointResistance: { nonNegative: 'Ω', default: 0.2, source: 'tia-568.2-d-connection', about: 'Input to output of one connection.' },
  ambient: { temperature: '°C', range: true, optional: true },
  basis: { oneOf: () => ['nominal', 'maximum'], optional: true },
  pairs: { oneOf: () => [2, 4], optional: true },
  screened: { flag: true, default: false },
  label: { text: 'any', optional: true },
  title: { text: 'filled', optional: true },
  draw: { exactlyOne: () => DRAW, optional: true },
  limits: { object: () => LIMITS, default: {} },
  allowance: { between: [1, 2], is: 'a ratio', unit: 'of nominal', optional: true },
  share: { fraction: 'supply voltage', optional: true },
  shift: { finite: 'K', optional: true },
  made: { computed: 'Ω', optional: true },
  odd: {
    check: (value, path) => {
      if (value % 2 === 0) throw new RangeError(`${path} is even`);
    },
    optional: true,
  },
};

const CONNECTIONS: DefaultField<number> = { whole: [0, 1000], default: 0, source: 'channel-connections' };
const DRAW: Fields<Draw> = { power: { nonNegative: 'W', optional: true }, current: { positive: 'A', optional: true } };
const LIMITS: Fields<Limits, 'fraction'> = {
  fraction: { between: [0, 0.99], is: 'a fraction', default: 0.03, source: 'ieee-802.3-unbalance' },
};

const LEAST: Input = { installed: [{ cable: 'cat6', length: 3 }] };
const read = (more: object): ReturnType<typeof readInput<Input, Filled, { installed: readonly unknown[] }>> =>
  readInput(FIELDS, { ...LEAST, ...more });
const refused = (more: object, parameter: string): string => expectInputError(() => read(more), parameter).message;

describe('reading an input', () => {
  test('fills the defaults in, keeps nothing that is absent, and leaves the input alone', () => {
    const input = Object.freeze({ ...LEAST, label: undefined });
    expect(readInput(FIELDS, input)).toStrictEqual({
      installed: [{ cable: { name: 'cat6 at installed[0].cable' }, length: 3, temperature: 20 }],
      cords: [],
      connections: 0,
      jointResistance: 0.2,
      screened: false,
      limits: { fraction: 0.03 },
    });
  });

  test('keeps what is stated', () => {
    const stated = {
      connections: 4,
      ambient: { low: 10, high: 30 },
      basis: 'nominal',
      pairs: 4,
      screened: true,
      label: '',
      title: 'x',
      draw: { power: 0, current: undefined },
      allowance: 2,
      share: 1,
      shift: -7,
      made: 1e-30,
      odd: 3,
    };
    expect(read(stated)).toMatchObject({ ...stated, draw: { power: 0 } });
    expect(read({ ambient: -100 }).ambient).toBe(-100);
  });

  test('the type of what was read has its defaults', () => {
    const connections: number = read({}).connections;
    // @ts-expect-error: it may be absent
    const label: string = read({}).label;
    expect([connections, label]).toEqual([0, undefined]);
  });

  test('the sentences are those of the guards, with the path', () => {
    expect(refused({ connections: 1.5 }, 'connections')).toBe('connections: expected a whole number from 0 to 1000, received 1.5');
    expect(refused({ jointResistance: -1 }, 'jointResistance')).toBe(
      'jointResistance: expected 0 or a number from 1e-12 to 1e12 Ω, received -1',
    );
    expect(refused({ draw: { current: 0 } }, 'draw.current')).toBe('draw.current: expected a number from 1e-12 to 1e12 A, received 0');
    expect(refused({ ambient: 500 }, 'ambient')).toBe('ambient: expected a temperature from -100 to 400 °C, received 500');
    expect(refused({ allowance: 3 }, 'allowance')).toBe('allowance: expected a ratio from 1 to 2 of nominal, received 3');
    expect(refused({ allowance: '1' }, 'allowance')).toContain('received "1"');
    expect(refused({ limits: { fraction: 1 } }, 'limits.fraction')).toBe('limits.fraction: expected a fraction from 0 to 0.99, received 1');
    expect(refused({ share: 1.5 }, 'share')).toBe('share: expected a fraction of the supply voltage from 0 to 1, received 1.5');
    expect(refused({ shift: 1e13 }, 'shift')).toBe('shift: expected a number of at most 1e12, received 10000000000000');
    expect(refused({ made: 1e-31 }, 'made')).toBe('made: expected 0 or a number from 1e-30 to 1e30 Ω, received 1e-31');
    expect(refused({ screened: 1 }, 'screened')).toBe('screened: expected true or false, received 1');
    expect(refused({ label: 7 }, 'label')).toBe('label: expected a text, received 7');
    expect(refused({ title: ' ' }, 'title')).toBe('title: expected a text that is not empty, received " "');
    expect(refused({ basis: 'Nominal' }, 'basis')).toBe('basis: "Nominal" is unknown; did you mean "nominal"?');
    expect(refused({ pairs: 3 }, 'pairs')).toBe('pairs: expected one of 2, 4, received 3');
    expect(() => read({ odd: 2 })).toThrow('odd is even');
  });

  test('what is missing, and what is no object or list', () => {
    expectInputError(() => readInput(FIELDS, as<Input>({})), 'installed', 'missing');
    expectInputError(() => readInput(FIELDS, as<Input>(undefined)), 'input', 'missing');
    expect(expectInputError(() => readInput(FIELDS, as<Input>(7)), 'input', 'type').message).toBe(
      'input: expected an object with installed, received 7',
    );
    expect(expectInputError(() => readInput(LIMITS, as<Limits>(null), 'options'), 'options', 'type').expected).toBe('an object');
    expect(refused({ installed: {} }, 'installed')).toBe(
      'installed: expected a list of { cable, length, temperature }, received an object',
    );
    expect(expectInputError(() => read({ installed: [] }), 'installed', 'missing').expected).toBe('at least one piece');
    expect(refused({ installed: [7] }, 'installed[0]')).toBe('installed[0]: expected an object with cable and length, received 7');
    expectInputError(() => read({ installed: [{ cable: 'cat6' }] }), 'installed[0].length', 'missing');
    // A hole in a list is not passed over.
    expectInputError(() => read({ installed: Array(2) }), 'installed[0]', 'missing');
  });

  test('an unknown key at any depth, by its path', () => {
    expect(refused({ conections: 2 }, 'conections')).toBe('conections: unknown; did you mean connections?');
    expect(refused({ installed: [{ cable: 'cat6', length: 3, temprature: 40 }] }, 'installed[0].temprature')).toBe(
      'installed[0].temprature: unknown; did you mean temperature?',
    );
    expect(refused({ limits: { floor: 1 } }, 'limits.floor')).toBe('limits.floor: unknown; the keys are fraction');
    expect(refused({ draw: { powr: 1 } }, 'draw.powr')).toBe('draw.powr: unknown; did you mean power?');
    // A misspelt key is named before the value that it leaves missing.
    expectInputError(() => readInput(LIMITS, as<Limits>({ fractoin: 'x' })), 'fractoin', 'unknown');
    expect(() => read({ conections: undefined })).not.toThrow();
  });

  test('exactly one of a choice', () => {
    for (const draw of [{}, { power: 1, current: 1 }]) {
      const { code, expected } = expectInputError(() => read({ draw }), 'draw');
      expect([code, expected]).toEqual(['conflict', 'exactly one of power and current']);
    }
    expect(refused({ draw: 7 }, 'draw')).toBe('draw: expected an object with power or current, received 7');
  });

  test('a range has two ends in order, each in the domain', () => {
    expect(expectInputError(() => read({ ambient: { low: 30, high: 10 } }), 'ambient.high', 'conflict').expected).toBe(
      'at least 30, the low bound',
    );
    expectInputError(() => read({ ambient: { low: 30 } }), 'ambient.high', 'missing');
    expectInputError(() => read({ ambient: { low: -200, high: 3 } }), 'ambient.low', 'range');
    for (const ambient of [null, [1, 2]]) expectInputError(() => read({ ambient }), 'ambient', 'type');
    // A field that takes no range takes no object.
    expectInputError(() => read({ connections: { low: 0, high: 3 } }), 'connections', 'type');
  });
});

describe('assumptions', () => {
  test('are the defaults with a source that nobody stated, inside objects and lists too', () => {
    expect(assumptionsOf(FIELDS, { installed: [{ cable: 'cat6', length: 3 }], jointResistance: 0, limits: {} })).toEqual([
      { parameter: 'installed[0].temperature', value: 20, unit: '°C', source: 'iec-60028' },
      { parameter: 'cords', value: 'none', source: 'three-loops' },
      { parameter: 'connections', value: 0, source: 'channel-connections' },
      { parameter: 'limits.fraction', value: 0.03, source: 'ieee-802.3-unbalance' },
    ]);
  });

  test('none where all is stated', () => {
    expect(assumptionsOf(PIECE, { cable: 'cat6', length: 3, temperature: 20 })).toEqual([]);
  });
});

test('the unit of a number', () => {
  expect([unitOf({ positive: 'm' }), unitOf({ positive: '' }), unitOf({ between: [0, 1], unit: 'K' }), unitOf({ flag: true })]).toEqual([
    'm',
    undefined,
    'K',
    undefined,
  ]);
});

test('no field can be forgotten, no default either, and no kind that does not suit its type', () => {
  // @ts-expect-error: temperature is missing
  const short: Fields<Piece> = { cable: { check: () => undefined }, length: { positive: 'm' } };
  // @ts-expect-error: a default is missing
  const bare: Fields<Limits, 'fraction'> = { fraction: { nonNegative: '' } };
  // @ts-expect-error: it may be left out, and that has to be said
  const silent: Fields<Limits> = { fraction: { nonNegative: '' } };
  // @ts-expect-error: a number is no flag
  const wrong: Fields<Limits> = { fraction: { flag: true, optional: true } };
  expect([short, bare, silent, wrong]).toHaveLength(4);
});
