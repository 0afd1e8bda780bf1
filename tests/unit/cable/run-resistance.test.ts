import { describe, expect, test } from 'vitest';
import { type Cable, cable } from '../../../src/cable/cable.ts';
import { cableNames } from '../../../src/cable/cables.ts';
import { RUN_PIECE_FIELDS } from '../../../src/cable/read-cable.ts';
import { RUN_RESISTANCE_FIELDS, type RunResistanceInput, runResistance, type Segment } from '../../../src/cable/run-resistance.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';
import { expectHeld } from '../../helpers/held-to-fields.ts';

const cat5e = frozen(cable('cat5e'));
const cord = frozen(cable('cord-26'));

test('100 m at 9.38 Ω/100 m: 18.76 as a meter reads it, 9.38 as 2-pair power sees it, 4.69 over four pairs', () => {
  const run = runResistance({ segments: [{ cable: cat5e, length: 100 }] });
  expectPlain(run);
  expectWithin(run.pairLoop, 18.76, 1e-15);
  expectWithin(run.twoPair, 9.38, 1e-15);
  expectWithin(run.fourPair, 4.69, 1e-15);
  expect(run).toMatchObject({ length: 100, basis: 'maximum' });
});

test('nothing at all is a run of 0 m and 0 Ω', () => {
  expect(runResistance({ segments: [] })).toStrictEqual({ pairLoop: 0, twoPair: 0, fourPair: 0, length: 0, basis: 'maximum' });
  expect(runResistance({ segments: [{ cable: cat5e, length: 0 }] })).toStrictEqual(runResistance({ segments: [] }));
});

test('a connection adds 0.2 Ω to each conductor: 0.4 to the pair loop, 0.2 to one pairset, 0.1 to two', () => {
  expect(runResistance({ segments: [], connections: 1 })).toMatchObject({ pairLoop: 0.4, twoPair: 0.2, fourPair: 0.1 });
  expectWithin(runResistance({ segments: [], connections: 4 }).pairLoop, 1.6, 1e-15);
  expect(runResistance({ segments: [], connections: 3, connectionResistance: 0 }).pairLoop).toBe(0);
  expectWithin(runResistance({ segments: [], connections: 2, connectionResistance: 0.05 }).twoPair, 0.1, 1e-15);
});

test('each segment has its own cable, length and temperature; cords count like any other', () => {
  const run = runResistance({
    segments: [
      { cable: cat5e, length: 80, temperature: 45 },
      { cable: cat5e, length: 10 },
      { cable: cord, length: 5, temperature: -10 },
    ],
    connections: 3,
  });
  const oneWay = 80 * 0.0938 * (1 + 0.00393 * 25) + 10 * 0.0938 + 5 * 0.14 * (1 - 0.00393 * 30) + 3 * 0.2;
  expectWithin(run.twoPair, oneWay, 1e-14);
  expect(run.length).toBe(95);
});

test('nominal copper is asked for by name and is less than the maximum', () => {
  const segments = [{ cable: cat5e, length: 90 }];
  const nominal = runResistance({ segments, basis: 'nominal' });
  expect(nominal.basis).toBe('nominal');
  expectWithin(nominal.twoPair, 90 * cat5e.nominalResistancePerMetre, 1e-15);
  expect(nominal.twoPair).toBeLessThan(runResistance({ segments, basis: 'maximum' }).twoPair);
});

test('undefined means absent, and a frozen input is left alone', () => {
  const input: RunResistanceInput = frozen({
    segments: [{ cable: cat5e, length: 90, temperature: undefined }],
    connections: undefined,
    connectionResistance: undefined,
    basis: undefined,
  });
  expect(runResistance(input)).toStrictEqual(runResistance({ segments: [{ cable: cat5e, length: 90 }] }));
});

test('a cable is given by its name as well', () => {
  const named = runResistance({
    segments: [
      { cable: 'cat5e', length: 80, temperature: 45 },
      { cable: 'cord-26', length: 5 },
    ],
  });
  expect(named).toStrictEqual(
    runResistance({
      segments: [
        { cable: cat5e, length: 80, temperature: 45 },
        { cable: cord, length: 5 },
      ],
    }),
  );
  for (const name of cableNames) {
    expect(runResistance({ segments: [{ cable: name, length: 9 }] })).toEqual(
      runResistance({ segments: [{ cable: cable(name), length: 9 }] }),
    );
  }
});

test('the guards accept and refuse what the fields do', () => {
  expectHeld(RUN_RESISTANCE_FIELDS, { segments: [{ cable: 'cat6', length: 3 }] }, runResistance);
  expectHeld(RUN_PIECE_FIELDS, { cable: 'cat6', length: 3 }, (piece) => runResistance({ segments: [piece] }), { path: 'segments[0]' });
});

describe('refuses, with the path', () => {
  const third = (segment: unknown): RunResistanceInput => ({
    segments: [{ cable: cat5e, length: 1 }, { cable: cat5e, length: 1 }, as<Segment>(segment)],
  });

  test.each(NOT_NUMBERS)('%s for any number', (_label, value, code) => {
    const number = as<number>(value);
    expectInputError(() => runResistance(third({ cable: cat5e, length: number })), 'segments[2].length', code);
    if (value !== null)
      expectInputError(() => runResistance(third({ cable: cat5e, length: 1, temperature: number })), 'segments[2].temperature', code);
    expectInputError(() => runResistance({ segments: [], connections: number }), 'connections', code);
    expectInputError(() => runResistance({ segments: [], connectionResistance: number }), 'connectionResistance', code);
  });

  test('a negative or absent length, a temperature out of range', () => {
    expectInputError(() => runResistance(third({ cable: cat5e, length: -1 })), 'segments[2].length', 'range');
    expectInputError(() => runResistance(third({ cable: cat5e })), 'segments[2].length', 'missing');
    expectInputError(() => runResistance(third({ cable: cat5e, length: 1, temperature: 401 })), 'segments[2].temperature', 'range');
  });

  test('connections that are negative, broken or too many', () => {
    for (const connections of [-1, 1.5, 1001]) expectInputError(() => runResistance({ segments: [], connections }), 'connections', 'range');
    expectInputError(() => runResistance({ segments: [], connectionResistance: -0.2 }), 'connectionResistance', 'range');
  });

  test('a basis that is not on the list', () => {
    for (const basis of ['measured', 'constructor', 7, null]) {
      expectInputError(() => runResistance(as<RunResistanceInput>({ segments: [], basis })), 'basis', 'unknown');
    }
  });

  test('what is no segment and no cable', () => {
    for (const segment of [null, 'cat5e', 7, []]) expectInputError(() => runResistance(third(segment)), 'segments[2]', 'type');
    expectInputError(() => runResistance(third(undefined)), 'segments[2]', 'missing');
    for (const wrong of [null, 7]) expectInputError(() => runResistance(third({ cable: wrong, length: 1 })), 'segments[2].cable', 'type');
    expect(expectInputError(() => runResistance(third({ cable: 'Cat6', length: 1 })), 'segments[2].cable', 'unknown').message).toBe(
      'segments[2].cable: "Cat6" is unknown; did you mean "cat6"?',
    );
    expectInputError(() => runResistance(third({ length: 1 })), 'segments[2].cable', 'missing');
    expectInputError(() => runResistance(third({ cable: {}, length: 1 })), 'segments[2].cable.maximumResistancePerMetre', 'missing');
    const cableWith = (more: Partial<Cable>): unknown => ({ cable: { ...cat5e, ...more }, length: 1 });
    expectInputError(
      () => runResistance(third(cableWith({ maximumResistancePerMetre: 0 }))),
      'segments[2].cable.maximumResistancePerMetre',
      'range',
    );
    expectInputError(
      () => runResistance(third(cableWith({ temperatureCoefficient: -1 }))),
      'segments[2].cable.temperatureCoefficient',
      'range',
    );
    expectInputError(
      () => runResistance({ ...third(cableWith({ nominalResistancePerMetre: Number.NaN })), basis: 'nominal' }),
      'segments[2].cable.nominalResistancePerMetre',
      'range',
    );
  });

  test('a hole in the list of segments', () => {
    const segments: Segment[] = [{ cable: cat5e, length: 1 }];
    segments.length = 2;
    expectInputError(() => runResistance({ segments }), 'segments[1]', 'missing');
  });

  test('segments that are no list, and an input that is no object', () => {
    for (const segments of [null, {}, 'cat5e', { length: 0 }])
      expectInputError(() => runResistance(as<RunResistanceInput>({ segments })), 'segments', 'type');
    expectInputError(() => runResistance(as<RunResistanceInput>({})), 'segments', 'missing');
    for (const input of [null, 7, 'x', []]) expectInputError(() => runResistance(as<RunResistanceInput>(input)), 'input', 'type');
    expectInputError(() => runResistance(as<RunResistanceInput>(undefined)), 'input', 'missing');
  });
});
