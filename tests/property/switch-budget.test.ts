/** Laws of the switch budget, on random switches. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BudgetedPort, type PoeClassNumber, type PortPriority, type PseType, poeClass, switchBudget } from '../../src/index.ts';

const RANK: Record<PortPriority, number> = { critical: 0, high: 1, low: 2 };

const ports = fc
  .uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 0, maxLength: 48 })
  .chain((numbers) =>
    fc.tuple(
      ...numbers.map((port) =>
        fc.record({
          port: fc.constant(port),
          poeClass: fc.integer({ min: 0, max: 8 }) as fc.Arbitrary<PoeClassNumber>,
          pseType: fc.constantFrom<PseType | undefined>(undefined, 1, 2, 3, 4),
          share: fc.double({ min: 0.01, max: 1, noNaN: true }),
          priority: fc.constantFrom<PortPriority | undefined>(undefined, 'critical', 'high', 'low'),
        }),
      ),
    ),
  )
  // A request is at most what the class that the port grants allows: 3.84 W is within all of them.
  .map((list) => list.map(({ share, ...port }) => ({ ...port, requested: share * 3.84 })));
const capacity = fc.oneof(fc.double({ min: 0.1, max: 2000, noNaN: true }), fc.integer({ min: 0, max: 2000 }));
const basis = fc.constantFrom('class' as const, 'requested' as const);
const policy = fc.constantFrom('strict' as const, 'fill' as const);
const numbersOf = (list: readonly BudgetedPort[]): number[] => list.map(({ port }) => port);

test('never powers more than the capacity; every port is powered or denied; headroom is the difference', () => {
  fc.assert(
    fc.property(capacity, ports, basis, policy, (watts, list, by, how) => {
      const budget = switchBudget({ capacity: watts, ports: list, basis: by, policy: how });
      expect(budget.allocated).toBeLessThanOrEqual(watts);
      expect(budget.headroom).toBeGreaterThanOrEqual(0);
      expect(budget.headroom).toBeCloseTo(watts - budget.allocated, 8);
      expect([...numbersOf(budget.powered), ...numbersOf(budget.denied)].sort((a, b) => a - b)).toEqual(
        list.map(({ port }) => port).sort((a, b) => a - b),
      );
      const sum = budget.powered.reduce((total, { power }) => total + power, 0);
      expect(budget.allocated).toBeCloseTo(sum, 6);
    }),
    { numRuns: 2000 },
  );
});

test('no higher priority is denied while a lower one of the same or greater draw stays powered', () => {
  fc.assert(
    fc.property(capacity, ports, basis, policy, (watts, list, by, how) => {
      const { powered, denied } = switchBudget({ capacity: watts, ports: list, basis: by, policy: how });
      for (const out of denied) {
        for (const kept of powered) {
          const outranked = RANK[out.priority] < RANK[kept.priority] || (out.priority === kept.priority && out.port < kept.port);
          if (outranked) expect(kept.power).toBeLessThan(out.power);
        }
      }
    }),
    { numRuns: 2000 },
  );
});

test('under strict, adding capacity never sheds anyone, and the powered are a prefix of the ranking', () => {
  fc.assert(
    fc.property(capacity, fc.double({ min: 0, max: 500, noNaN: true }), ports, basis, (watts, more, list, by) => {
      const extra = more < 1e-12 ? 0 : more;
      const before = numbersOf(switchBudget({ capacity: watts, ports: list, basis: by }).powered);
      const after = numbersOf(switchBudget({ capacity: watts + extra, ports: list, basis: by }).powered);
      expect(after.slice(0, before.length)).toEqual(before);
    }),
    { numRuns: 2000 },
  );
});

test('fill powers all that strict does', () => {
  fc.assert(
    fc.property(capacity, ports, basis, (watts, list, by) => {
      const strict = numbersOf(switchBudget({ capacity: watts, ports: list, basis: by }).powered);
      const fill = numbersOf(switchBudget({ capacity: watts, ports: list, basis: by, policy: 'fill' }).powered);
      expect(fill).toEqual(expect.arrayContaining(strict));
    }),
    { numRuns: 1000 },
  );
});

test('the order of the input does not matter', () => {
  fc.assert(
    fc.property(capacity, ports, basis, policy, fc.integer(), (watts, list, by, how, seed) => {
      const shuffled = [...list].sort((a, b) => ((a.port * 7919 + seed) % 101) - ((b.port * 7919 + seed) % 101));
      const input = { capacity: watts, basis: by, policy: how } as const;
      expect(switchBudget({ ...input, ports: shuffled })).toEqual(switchBudget({ ...input, ports: list }));
    }),
    { numRuns: 1000 },
  );
});

test('a request never takes more than its class is set aside, nor less than the device itself draws', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 8 }) as fc.Arbitrary<PoeClassNumber>,
      fc.double({ min: 1e-3, max: 1, noNaN: true }),
      (c, share) => {
        const limits = poeClass(c);
        const requested = share * limits.pdPower;
        const { powered } = switchBudget({ capacity: 1000, basis: 'requested', ports: [{ port: 1, poeClass: c, requested }] });
        expect(powered[0]?.power).toBeLessThanOrEqual(limits.psePower);
        expect(powered[0]?.power).toBeGreaterThan(requested * (1 - 1e-15));
      },
    ),
  );
});
