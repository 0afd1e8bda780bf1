/** The edges of what a reading can be: nothing, less than its leads, no length, no drop. */
import { describe, expect, test } from 'vitest';
import { cable, defineCable } from '../../../src/index.ts';
import { reviewAnswer, showWorking, type Working, type WorkingInputs, workingText } from '../../../src/working/index.ts';
import { expectInputError, expectPlain } from '../../helpers/expectations.ts';
import { workings } from '../../helpers/random-workings.ts';
import { figureOf } from '../../helpers/workings/kit.ts';

/** Every figure that the core reports as well is just that. */
function held<Name extends 'fromMeasurement' | 'expectedReading' | 'loadedVoltage' | 'unbalance' | 'pairUnbalance'>(
  name: Name,
  input: WorkingInputs[Name],
): Working {
  const working = showWorking(name, input);
  const answer = (workings[name].answer as (of: WorkingInputs[Name]) => unknown)(input);
  expectPlain(working);
  expect(working.results.length).toBeGreaterThan(0);
  for (const { core = '', value } of working.results) {
    const figure = figureOf(answer, core) as number;
    expect(Math.abs(value - figure), `${core}: ${value} against ${figure}`).toBeLessThanOrEqual(1e-12 * Math.abs(figure));
  }
  expect(working.result.core).toBeDefined();
  expect(workingText(working)).toContain(working.result.shown);
  return working;
}

const cat5e = cable('cat5e');

describe('fromMeasurement', () => {
  test('the example of the core: 14.1 ohm of Category 5e is 75.2 to 87.2 m', () => {
    const { results } = held('fromMeasurement', { pairs: { '1,2': 14.1 }, cable: cat5e, scope: 'cable' });
    const shown = (core: string): string | undefined => results.find((result) => result.core === core)?.value.toFixed(1);
    expect([shown('lengths[0].length.low'), shown('lengths[0].length.high')]).toEqual(['75.2', '87.2']);
  });

  test('a meter that shows nothing', () => {
    const { result } = held('fromMeasurement', { pairs: { '1,2': 0, '7,8': 0 }, cable: cat5e, scope: 'cable', temperature: 30 });
    expect(result).toMatchObject({ core: 'lengths[0].length.high', value: 0 });
  });

  test('leads that have more than the meter shows, within its accuracy', () => {
    const { steps } = held('fromMeasurement', {
      pairs: { '1,2': 0.3, '3,6': 2 },
      leadResistance: 0.35,
      accuracy: { fixed: 0.1 },
      cable: cat5e,
      scope: 'cable',
    });
    expect(steps.find(({ symbol }) => symbol === 'm_1')).toMatchObject({ value: 0, formula: '0' });
  });

  test('where no length gives the readings, the last step says by how much, with a length that is known and without', () => {
    const pairs = { '1,2': 14, '3,6': 8 };
    for (const knownLength of [undefined, 20, { low: 200, high: 210 }]) {
      const { result } = held('fromMeasurement', { pairs, knownLength, cable: cat5e, scope: 'cable' });
      expect(result).toMatchObject({ core: 'lengths[0].distance', unit: 'Ω' });
      expect(result.value).toBeGreaterThan(1);
    }
    // Less than the cords alone.
    const cords = [{ cable: cable('cord-26'), length: 40 }];
    expect(held('fromMeasurement', { pairs: { '1,2': 1 }, cords, cable: cat5e, scope: 'channel' }).result.core).toBe('lengths[0].distance');
  });

  test('an open pair is taken for the mean of the others, and only open pairs are refused', () => {
    const open = held('fromMeasurement', { pairs: { '1,2': 8, '3,6': 'open', '4,5': 9, '7,8': 8.4 }, scope: 'cable' });
    expect(open.tables.map(({ title, rows }) => [title, rows.map(({ label }) => label)])).toEqual([
      ['Each pair that was read', ['pair 1,2', 'pair 4,5', 'pair 7,8']],
      ['Pairs that were not read', ['pair 3,6']],
    ]);
    expectInputError(() => showWorking('fromMeasurement', { pairs: { '1,2': 'open' }, scope: 'cable' }), 'pairs', 'conflict');
  });

  test('a length of twice the run is the resistance of one conductor', () => {
    const input = { pairs: { '4,5': 14.1 }, cable: cat5e, scope: 'cable' } as const;
    const review = reviewAnswer('fromMeasurement', input, '174.4 m');
    expect(review).toMatchObject({ verdict: 'wrong', slips: [{ slip: 'one-way-length' }] });
  });
});

describe('expectedReading', () => {
  test('of cable without a length there are the connections', () => {
    expect(held('expectedReading', { installed: [{ cable: cat5e, length: 0 }], connections: 2 }).result.value).toBeCloseTo(0.8, 12);
    expect(held('expectedReading', { installed: [{ cable: cat5e, length: 0 }] }).result.value).toBe(0);
  });

  test('cords alone are in the channel and not in the link', () => {
    const { results } = held('expectedReading', {
      installed: [{ cable: cat5e, length: 0 }],
      cords: [{ cable: cable('cord-26'), length: 5 }],
    });
    expect(results.find(({ core }) => core === 'permanentLink.atTemperature.value')?.value).toBe(0);
  });

  test('clad aluminium, at its best and at its worst', () => {
    const clad = defineCable({
      name: 'tidemill-drum',
      title: 'Drum of the Tidemill Playhouse',
      gauge: 24,
      material: 'copper-clad-aluminium',
    });
    const { result, steps } = held('expectedReading', { installed: [{ cable: clad, length: 60, temperature: 40 }], temperatureSpread: 5 });
    expect(result.value).toBeGreaterThan(0);
    expect(steps.find(({ symbol }) => symbol === 'rt_1')?.source).toBe('clad-aluminium-40');
  });
});

describe('loadedVoltage', () => {
  test('a short at the far end, a device that is never fed, a drop that the meter cannot tell', () => {
    const common = { openVoltage: 24, current: 0.5 } as const;
    expect(held('loadedVoltage', { ...common, loadedVoltage: 0 }).result.value).toBe(3);
    expect(held('loadedVoltage', { ...common, loadedVoltage: 21.6, minimumVoltage: 25 }).result.value).toBe(-10.8);
    const { result } = held('loadedVoltage', { ...common, loadedVoltage: 24.05, voltageAccuracy: { fixed: 0.1 } });
    expect(result).toMatchObject({ core: 'resistance.value', value: 0 });
    held('loadedVoltage', { ...common, loadedVoltage: 0.05, voltageAccuracy: { fixed: 0.1 }, currentAccuracy: { fraction: 0.02 } });
  });
});

describe('pairs that are unlike', () => {
  test('alike conductors have no unbalance and no bias', () => {
    const pairs = { '1,2': [9, 9], '3,6': [9, 9] } as const;
    expect(held('unbalance', { pairs, limits: { pairFloor: 0, pairFraction: 0 } }).result).toMatchObject({ value: 0, unit: 'Ω' });
    const { results } = held('pairUnbalance', { pairs, poeClass: 3 });
    expect(results.find(({ core }) => core === 'largestBiasCurrent')?.value).toBe(0);
  });

  test('too unlike is a margin under 0 and no refusal', () => {
    const working = held('unbalance', { pairs: { '1,2': [9, 11], '3,6': [9, 9] } });
    expect(working).toMatchObject({ feasible: true, result: { meaning: 'the least margin of all: that of pair 1,2' } });
    expect(working.result.value).toBeLessThan(0);
  });

  test('a device that draws nothing, and a run that cannot feed one', () => {
    const pairs = { '4,5': [9, 11], '7,8': [9, 9] } as const;
    expect(held('pairUnbalance', { pairs, poeClass: 3, pdPower: 0 }).result.value).toBe(0);
    const long = { '4,5': [90, 110], '7,8': [90, 90] } as const;
    expect(showWorking('pairUnbalance', { pairs: long, poeClass: 4 })).toMatchObject({
      feasible: false,
      result: { core: 'maximumLoadPower' },
    });
  });
});
