/** Solving for one unknown and putting it back: nothing fails, and a hair beyond it the governing check does. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  awg,
  type CableName,
  type Check,
  type CheckName,
  cable,
  checkPoweredRun,
  checkTwoWireRun,
  highestLoad,
  highestTemperature,
  type Load,
  lowestSupplyVoltage,
  type PoeClassNumber,
  type PoweredRunInput,
  smallestConductor,
  type TwoWireRunInput,
} from '../../src/index.ts';

const failing = (checks: readonly Check[]): CheckName[] => checks.filter(({ verdict }) => verdict === 'fail').map(({ name }) => name);
const powered = (input: PoweredRunInput): readonly Check[] => {
  return checkPoweredRun(input).checks;
};
const twoWire = (input: TwoWireRunInput): readonly Check[] => checkTwoWireRun(input).checks;

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const poweredRun: fc.Arbitrary<PoweredRunInput> = fc
  .record({
    cable: fc.constantFrom<CableName>('cat5e', 'cat6', 'cat6a').map((name) => cable(name)),
    length: number(20, 160),
    temperature: number(-10, 60),
    connections: fc.integer({ min: 0, max: 4 }),
    poeClass: fc.integer({ min: 0, max: 8 }) as fc.Arbitrary<PoeClassNumber>,
    pdPower: number(1, 3.8),
    minimumVoltage: number(36, 43),
  })
  .map(({ cable: own, length, temperature, ...rest }) => ({
    ...rest,
    cabling: 'none',
    installed: [{ cable: own, length, temperature }],
  }));
const twoWireRun: fc.Arbitrary<TwoWireRunInput> = fc
  .record({
    low: number(18, 26),
    conductor: fc.integer({ min: 12, max: 24 }).map((gauge) => awg(gauge, { stranding: 'stranded' })),
    length: number(10, 150),
    temperature: number(-10, 60),
    load: fc.oneof(
      fc.record({ power: number(0.5, 15) }),
      fc.record({ current: number(0.02, 0.6) }),
      fc.record({ resistance: number(40, 900) }),
    ) as fc.Arbitrary<Load>,
    minimumShare: number(0.6, 0.97),
    permittedDrop: fc.option(number(0.03, 0.4), { nil: undefined }),
    ampacity: fc.option(number(0.3, 3), { nil: undefined }),
  })
  .map(({ low, minimumShare, ...rest }) => ({ ...rest, supplyVoltage: { low, high: low + 4 }, minimumVoltage: low * minimumShare }));

/** Put back, nothing fails; a relative 1e-9 further, the check that governs does. */
function putBack(checksAt: (value: number) => readonly Check[], value: number, governedBy: CheckName, worse: 1 | -1): void {
  expect(failing(checksAt(value))).toEqual([]);
  const beyond = value + worse * Math.max(Math.abs(value) * 1e-9, 1e-9);
  const checks = checksAt(beyond);
  // Where the line gives way, the checks of what arrives are gone: collapse then stands for them.
  expect(failing(checks)).toContain(checks.some(({ name }) => name === governedBy) ? governedBy : 'collapse');
}

const runs = { numRuns: 400 };

test('highestTemperature of a powered run', () => {
  fc.assert(
    fc.property(poweredRun, (input) => {
      const found = highestTemperature(input);
      fc.pre(found.feasible && !found.unbounded);
      if (!found.feasible || found.unbounded) return;
      const at = (temperature: number) => powered({ ...input, installed: input.installed.map((piece) => ({ ...piece, temperature })) });
      putBack(at, found.temperature, found.governedBy, 1);
    }),
    runs,
  );
});

test('highestTemperature of a two-wire run', () => {
  fc.assert(
    fc.property(twoWireRun, (input) => {
      const found = highestTemperature(input);
      fc.pre(found.feasible && !found.unbounded);
      if (!found.feasible || found.unbounded) return;
      putBack((temperature) => twoWire({ ...input, temperature }), found.temperature, found.governedBy, 1);
    }),
    runs,
  );
});

test('lowestSupplyVoltage of both kinds of run', () => {
  fc.assert(
    fc.property(poweredRun, twoWireRun, (run, line) => {
      const port = lowestSupplyVoltage(run);
      if (port.feasible && !port.unbounded) {
        putBack((pseVoltage) => powered({ ...run, pseVoltage }), port.supplyVoltage, port.governedBy, -1);
      }
      const { supplyVoltage: _, ...unsupplied } = line;
      const supply = lowestSupplyVoltage(unsupplied);
      if (supply.feasible && !supply.unbounded) {
        const at = (low: number) => twoWire({ ...line, supplyVoltage: { low, high: low } });
        putBack(at, supply.supplyVoltage, supply.governedBy, -1);
      }
    }),
    runs,
  );
});

test('highestLoad of a powered run, and of a two-wire run as power, current and resistance', () => {
  fc.assert(
    fc.property(poweredRun, twoWireRun, fc.constantFrom('power' as const, 'current' as const, 'resistance' as const), (run, line, kind) => {
      const { pdPower: _, ...open } = run;
      const port = highestLoad(open);
      if (port.feasible && !port.unbounded && port.load.power !== undefined) {
        putBack((pdPower) => powered({ ...open, pdPower }), port.load.power, port.governedBy, 1);
      }
      const { load: __, ...bare } = line;
      const most = highestLoad({ ...bare, kind });
      if (!most.feasible || most.unbounded) return;
      const at = (value: number) => twoWire({ ...bare, load: { [kind]: value } as unknown as Load });
      putBack(at, most.load[kind] as number, most.governedBy, kind === 'resistance' ? -1 : 1);
    }),
    runs,
  );
});

test('smallestConductor passes, and the next thinner does not', () => {
  const gauges = [24, 22, 20, 18, 16, 14, 12];
  fc.assert(
    fc.property(twoWireRun, (input) => {
      const candidates = gauges.map((gauge) => awg(gauge));
      const { conductor: _, ...open } = input;
      const found = smallestConductor({ ...open, candidates });
      const at = (index: number) => failing(twoWire({ ...input, conductor: candidates[index] as (typeof candidates)[number] }));
      if (!found.feasible) {
        expect(at(candidates.length - 1)).toContain(found.governedBy);
        expect(found.shortfall).toBeGreaterThan(0);
        return;
      }
      const index = candidates.findIndex(({ name }) => name === found.conductor?.name);
      expect(at(index)).toEqual([]);
      if (index > 0) expect(at(index - 1)).not.toEqual([]);
    }),
    runs,
  );
});

test('where no value will do, the shortfall is positive and the limit it is missed by is named', () => {
  const weak = { installed: [{ cable: cable('cat5e'), length: 50 }], poeClass: 3, pdPower: 14 } as const;
  for (const found of [highestTemperature(weak), lowestSupplyVoltage(weak)]) {
    expect(found).toMatchObject({ feasible: false, governedBy: 'pd-power', unit: 'W' });
    if (!found.feasible) expect(found.shortfall).toBeCloseTo(1.05, 12);
  }
});

test('where nothing bounds it, that is said', () => {
  const idle = { supplyVoltage: { low: 21, high: 27 }, conductor: awg(18), length: 10, load: { power: 0 }, minimumVoltage: 20 };
  expect(highestTemperature(idle)).toMatchObject({ feasible: true, unbounded: true });
});
