/** maximumRun and the checks are inverse: put back, the length passes; 1e-9 more of it fails. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  awg,
  type CableName,
  type Check,
  cable,
  checkPoweredRun,
  checkTwoWireRun,
  type Load,
  maximumRun,
  type PoeClassNumber,
  type PseType,
  poeClass,
  runResistance,
} from '../../src/index.ts';

const horizontal = fc.constantFrom<CableName>('cat5e', 'cat6', 'cat6a').map((name) => cable(name));
const cords = fc.array(
  fc.record({
    cable: fc.constantFrom<CableName>('cord-24', 'cord-26', 'cord-28').map((name) => cable(name)),
    length: fc.double({ min: 0.5, max: 8, noNaN: true }),
    temperature: fc.option(fc.double({ min: -20, max: 60, noNaN: true }), { nil: undefined }),
  }),
  { maxLength: 3 },
);
const poweredRun = fc.record({
  cable: horizontal,
  poeClass: fc.integer({ min: 0, max: 8 }) as fc.Arbitrary<PoeClassNumber>,
  share: fc.double({ min: 0.05, max: 1, noNaN: true }),
  temperature: fc.double({ min: -30, max: 80, noNaN: true }),
  cords,
  connections: fc.integer({ min: 0, max: 4 }),
  pseVoltage: fc.option(fc.double({ min: 44, max: 57, noNaN: true }), { nil: undefined }),
  minimumVoltage: fc.option(fc.double({ min: 30, max: 43, noNaN: true }), { nil: undefined }),
  cabling: fc.constantFrom('TIA-568' as const, 'ISO/IEC 11801' as const, 'none' as const),
  maximumResistance: fc.option(
    fc.record({
      ohms: fc.double({ min: 3, max: 30, noNaN: true }),
      loop: fc.constantFrom('pairLoop' as const, 'twoPair' as const, 'fourPair' as const, 'unstated' as const),
    }),
    { nil: undefined },
  ),
});

const failing = (checks: readonly Check[]): string[] =>
  checks.filter(({ verdict }) => verdict === 'fail' || verdict === 'uncertain').map(({ name }) => name);

/** Distance in units of the last place of `limit`. */
function ulps(limit: number, value: number): number {
  return (limit - value) / 2 ** (Math.floor(Math.log2(limit)) - 52);
}

test('a powered run of the returned length passes every check, and 1e-9 more fails the governing one', () => {
  let governedByOhms = 0;
  fc.assert(
    fc.property(poweredRun, ({ share, ...run }) => {
      const pdPower = share * poeClass(run.poeClass).pdPower;
      const found = maximumRun({ ...run, pdPower });
      fc.pre(found.feasible && !found.unbounded && found.length > 1);
      if (!found.feasible || found.unbounded) return;
      const { cable: installedCable, temperature, ...rest } = run;
      const at = (length: number) => checkPoweredRun({ ...rest, pdPower, installed: [{ cable: installedCable, length, temperature }] });

      const there = at(found.length);
      expect(failing(there.checks)).toEqual([]);
      const beyond = at(found.length * (1 + 1e-9));
      expect(failing(beyond.checks)).toContain(found.governedBy);

      const limit = found.limits.find(({ limit: name }) => name === found.governedBy);
      if (limit?.resistance !== undefined && limit.loop !== undefined && !limit.limit.endsWith('-loop')) {
        const segments = [{ cable: installedCable, length: found.length, temperature }, ...run.cords];
        const value = runResistance({ segments, connections: run.connections })[limit.loop];
        expect(ulps(limit.resistance, value)).toBeGreaterThanOrEqual(0);
        expect(ulps(limit.resistance, value)).toBeLessThanOrEqual(4);
        governedByOhms++;
      }
    }),
    { numRuns: 5000 },
  );
  expect(governedByOhms).toBeGreaterThan(1000);
});

test('the power length alone passes every power check', () => {
  fc.assert(
    fc.property(poweredRun, ({ share: _, ...run }) => {
      const found = maximumRun(run);
      fc.pre(found.feasible && !found.unbounded && found.powerLength !== undefined);
      if (!found.feasible || found.unbounded || found.powerLength === undefined) return;
      const { cable: installedCable, temperature, ...rest } = run;
      const checked = checkPoweredRun({ ...rest, installed: [{ cable: installedCable, length: found.powerLength, temperature }] });
      expect(failing(checked.checks.filter(({ aspect }) => aspect === 'power'))).toEqual([]);
    }),
    { numRuns: 2000 },
  );
});

const load: fc.Arbitrary<Load> = fc.oneof(
  fc.record({ power: fc.double({ min: 0.1, max: 60, noNaN: true }) }),
  fc.record({ current: fc.double({ min: 0.01, max: 5, noNaN: true }) }),
  fc.record({ resistance: fc.double({ min: 5, max: 500, noNaN: true }) }),
);

test('a two-wire run of the returned length does not fail, and 1e-9 more fails the governing check', () => {
  fc.assert(
    fc.property(
      fc.record({
        low: fc.double({ min: 10, max: 30, noNaN: true }),
        conductor: fc.integer({ min: 8, max: 28 }).map((gauge) => awg(gauge, { stranding: 'stranded' })),
        temperature: fc.double({ min: -30, max: 80, noNaN: true }),
        load,
        minimumShare: fc.double({ min: 0.3, max: 0.99, noNaN: true }),
        permittedDrop: fc.option(fc.double({ min: 0.01, max: 0.4, noNaN: true }), { nil: undefined }),
      }),
      ({ low, minimumShare, ...rest }) => {
        const circuit = { ...rest, supplyVoltage: { low, high: low + 5 }, minimumVoltage: low * minimumShare };
        const found = maximumRun(circuit);
        fc.pre(found.feasible && !found.unbounded && found.length > 0.01);
        if (!found.feasible || found.unbounded) return;
        expect(failing(checkTwoWireRun({ ...circuit, length: found.length }).checks)).toEqual([]);
        const beyond = checkTwoWireRun({ ...circuit, length: found.length * (1 + 1e-9) });
        expect(failing(beyond.checks)).toContain(found.governedBy);
      },
    ),
    { numRuns: 5000 },
  );
});

test('a stronger type of port never shortens the power length', () => {
  fc.assert(
    fc.property(poweredRun, fc.integer({ min: 1, max: 3 }), ({ pseVoltage: _, share: __, ...run }, weak) => {
      const most = [3, 4, 6, 8][weak - 1] as number;
      fc.pre(run.poeClass <= most);
      const [weaker, stronger] = [weak, weak + 1].map((type) => maximumRun({ ...run, pseType: type as PseType }));
      if (!weaker?.feasible || weaker.unbounded || !stronger?.feasible || stronger.unbounded) return;
      expect(stronger.powerLength).toBeGreaterThanOrEqual(weaker.powerLength as number);
    }),
    { numRuns: 2000 },
  );
});
