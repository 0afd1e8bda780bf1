/** Voltages and currents of small networks, by hand arithmetic. */
import { describe, expect, test } from 'vitest';
import { type Load, type NetworkInput, type NetworkSolution, solveNetwork } from '../../../src/circuit/index.ts';
import { expectInputError, expectPlain, frozen } from '../../helpers/expectations.ts';

function solved(network: NetworkInput): NetworkSolution {
  const found = solveNetwork(frozen(network));
  if (!found.feasible) expect.fail(`collapsed at ${found.at}`);
  expectPlain(found);
  return found;
}

describe('fed at both ends', () => {
  // 24 V at A and at D, 1 Ω between any two: 2 A at B, 1 A at C. Moments about D: (2 A · 2 Ω + 1 A · 1 Ω)/3 Ω = 5/3 A from A.
  const line: NetworkInput = {
    supplies: [
      { at: 'A', voltage: 24 },
      { at: 'D', voltage: 24 },
    ],
    sections: [
      { from: 'A', to: 'B', resistance: 1 },
      { from: 'B', to: 'C', resistance: 1 },
      { from: 'C', to: 'D', resistance: 1 },
    ],
    taps: [
      { at: 'B', load: { current: 2 } },
      { at: 'C', load: { current: 1 } },
    ],
  };

  test('currents have the direction of their sections', () => {
    const { currents } = solved(line);
    for (const [i, expected] of [5 / 3, -1 / 3, -4 / 3].entries()) expect(currents[i]).toBeCloseTo(expected, 12);
  });

  test('voltages, and the lowest of them', () => {
    const { voltages, lowest, nodes } = solved(line);
    expect(nodes.map(({ node }) => node)).toEqual(['A', 'D', 'B', 'C']);
    expect(voltages['B']).toBeCloseTo(24 - 5 / 3, 12);
    expect(voltages['C']).toBeCloseTo(24 - 4 / 3, 12);
    expect(lowest).toEqual({ node: 'B', voltage: voltages['B'] });
  });

  test('powers: what the supplies give, the taps take and the line loses', () => {
    const { supplyPower, loadPower, lineLoss, supplies } = solved(line);
    expect(supplyPower).toBeCloseTo(72, 12);
    // 25/9 + 1/9 + 16/9.
    expect(lineLoss).toBeCloseTo(42 / 9, 12);
    expect(loadPower).toBeCloseTo(72 - 42 / 9, 12);
    expect(supplies[0]?.current).toBeCloseTo(5 / 3, 12);
    expect(supplies[1]?.power).toBeCloseTo(32, 12);
  });
});

describe('one tap of each kind', () => {
  const behind = (ohms: number, volts: number, load: Load): NetworkSolution['taps'][number] =>
    solved({
      supplies: [{ at: 'A', voltage: volts }],
      sections: [{ from: 'A', to: 'B', resistance: ohms }],
      taps: [{ at: 'B', load }],
    }).taps[0] as NetworkSolution['taps'][number];

  test.each([
    // 50 V - 12.5 Ω · 0.8 A = 40 V, 32 W.
    [{ power: 32 }, 12.5, 50, 40, 0.8],
    [{ current: 0.8 }, 12.5, 50, 40, 0.8],
    [{ resistance: 50 }, 12.5, 50, 40, 0.8],
    // 24 V over 4 Ω and 8 Ω.
    [{ resistance: 8 }, 4, 24, 16, 2],
  ])('%j', (load, ohms, volts, voltage, current) => {
    const tap = behind(ohms, volts, load);
    expect(tap.voltage).toBeCloseTo(voltage, 12);
    expect(tap.current).toBeCloseTo(current, 12);
    expect(tap.power).toBeCloseTo(voltage * current, 12);
  });
});

test('a ring shares the current by its resistances', () => {
  // 3 A at B, 1 Ω one way round and 2 Ω the other: 2 A and 1 A.
  const { currents, voltages } = solved({
    supplies: [{ at: 'A', voltage: 12 }],
    sections: [
      { from: 'A', to: 'B', resistance: 1 },
      { from: 'A', to: 'C', resistance: 0.5 },
      { from: 'C', to: 'B', resistance: 1.5 },
    ],
    taps: [{ at: 'B', load: { current: 3 } }],
  });
  for (const [i, expected] of [2, 1, 1].entries()) expect(currents[i]).toBeCloseTo(expected, 12);
  expect(voltages['B']).toBeCloseTo(10, 12);
});

test('a supply of less voltage is fed by the other', () => {
  const { supplies, lineLoss, supplyPower } = solved({
    supplies: [
      { at: 'A', voltage: 50 },
      { at: 'D', voltage: 30 },
    ],
    sections: [{ from: 'A', to: 'D', resistance: 10 }],
    taps: [],
  });
  // 20 V over 10 Ω: 2 A; 100 W out of A, 60 W into D.
  expect(supplies.map(({ power }) => Math.round(power * 1e9) / 1e9)).toEqual([100, -60]);
  expect(lineLoss).toBeCloseTo(40, 12);
  expect(supplyPower).toBeCloseTo(40, 12);
});

test('a load that is twice too much: the node, and the half that is carried', () => {
  const found = solveNetwork({
    supplies: [{ at: 'A', voltage: 50 }],
    sections: [{ from: 'A', to: 'B', resistance: 12.5 }],
    taps: [{ at: 'B', load: { power: 100 } }],
  });
  expect(found).toMatchObject({ feasible: false, at: 'B', nearCollapse: false });
  expect(!found.feasible && found.loadability).toBeCloseTo(0.5, 9);
});

describe('nonsense is named', () => {
  const line: NetworkInput = {
    supplies: [{ at: 'A', voltage: 24 }],
    sections: [{ from: 'A', to: 'B', resistance: 1 }],
    taps: [{ at: 'B', load: { power: 1 } }],
  };
  test('a tap at no node', () => {
    expectInputError(() => solveNetwork({ ...line, taps: [{ at: 'Z', load: { power: 1 } }] }), 'taps[0].at');
  });
  test('a section that no supply reaches', () => {
    const sections = [...line.sections, { from: 'X', to: 'Y', resistance: 1 }];
    expect(() => solveNetwork({ ...line, sections })).toThrow(expect.objectContaining({ name: 'InputError' }));
  });
  test('no supply', () => {
    expectInputError(() => solveNetwork({ ...line, supplies: [] }), 'supplies');
  });
});
