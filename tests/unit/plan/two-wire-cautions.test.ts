/** When a two-wire run carries a caution: above 60 V, and above 100 VA. */
import { describe, expect, test } from 'vitest';
import { conductorFromResistance } from '../../../src/conductor/index.ts';
import { checkTwoWireRun, type TwoWireRunInput } from '../../../src/plan/index.ts';

/** 10 Ω/km, a stated maximum: a loop of 0.02 Ω for each metre, 0.5 Ω for 25 m. */
const conductor = conductorFromResistance({ ohmsPerKilometre: 10 });
const between = (low: number, high: number = low): TwoWireRunInput['supplyVoltage'] => ({ low, high });

function cautions(change: Partial<TwoWireRunInput>): string[] {
  const run = checkTwoWireRun({ supplyVoltage: between(50), conductor, length: 0, load: { power: 1 }, ...change });
  return run.cautions.map((words) => (words.startsWith('Above 60 V') ? 'voltage' : words.startsWith('More than 100 VA') ? 'power' : words));
}

describe('the voltage', () => {
  test('at 60 V is still extra-low, and a hair above it is not', () => {
    expect(cautions({ supplyVoltage: between(60) })).toEqual([]);
    expect(cautions({ supplyVoltage: between(60.000001) })).toEqual(['voltage']);
  });

  test('counts at the highest supply', () => {
    expect(cautions({ supplyVoltage: between(48, 61) })).toEqual(['voltage']);
    expect(cautions({ supplyVoltage: between(48, 60) })).toEqual([]);
  });
});

describe('the power', () => {
  test('of 100 W is within a Class 2 source, and a hair above it is not', () => {
    expect(cautions({ load: { power: 100 } })).toEqual([]);
    expect(cautions({ load: { power: 100.0001 } })).toEqual(['power']);
  });

  test('is what the supply gives, the loss of the line with it', () => {
    // 2 A at 50 V are 100 W, of which 2 W stay in 0.5 Ω of line; 2.001 A are 100.05 W, of which the load has 98.05 W.
    expect(cautions({ length: 25, load: { current: 2 } })).toEqual([]);
    expect(cautions({ length: 25, load: { current: 2.001 } })).toEqual(['power']);
  });

  test('of a resistance counts at the highest supply: 25 Ω take 100 W at 50 V', () => {
    expect(cautions({ supplyVoltage: between(40, 50), load: { resistance: 25 } })).toEqual([]);
    expect(cautions({ supplyVoltage: between(40, 50.1), load: { resistance: 25 } })).toEqual(['power']);
  });

  test('says nothing of a load that no supply in the range carries', () => {
    expect(cautions({ length: 2500, load: { power: 200 } })).toEqual([]);
  });
});

test('both at once, the voltage first', () => {
  expect(cautions({ supplyVoltage: between(61), load: { power: 101 } })).toEqual(['voltage', 'power']);
});
