/**
 * Runs built at random, read by a meter within its accuracy, and asked back: the truth is never called inconsistent, and copper and
 * clad aluminium are told apart exactly where the two sets of readings do not touch.
 *
 * The reading is reckoned here from the conductors, not by the library: metres times ohms per metre at a temperature, and joints. What a
 * conductor of a gauge may have is stated again from where it is from: 1/58 Ω·mm²/m and 0.127 mm · 92^((36-n)/39) (ASTM B258), 2 % for
 * diameter (ASTM B3) and 2 % for copper purer than the standard's, 9.38 Ω/100 m at most (ANSI/TIA-568.2-D), clad aluminium at 1.40 to 1.60 of copper (two trade sources).
 */
import { describe, expect, test } from 'vitest';
import {
  type Cable,
  cable,
  type ExplanationName,
  type FromMeasurement,
  type FromMeasurementInput,
  fromMeasurement,
  type RunPair,
} from '../../src/index.ts';
import { seeded } from '../helpers/random.ts';

const CASES = 20_000;
const PAIRS: readonly RunPair[] = ['1,2', '3,6', '4,5', '7,8'];
const solid = (gauge: number): number => 4 / (Math.PI * 58 * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2);
const COPPER = 0.00393;
const CLAD = 0.00405;

/** What of a run is as nobody thought. */
const TWISTS = [
  'none',
  'longer',
  'shorter',
  'hotter',
  'clad',
  'thinner',
  'one joint',
  'joints',
  'one longer',
  'one shorter',
  'open',
  'leads',
] as const;
type Twist = (typeof TWISTS)[number];
const TRUTH: Readonly<Record<Twist, ExplanationName>> = {
  none: 'as-described',
  longer: 'longer',
  shorter: 'shorter',
  hotter: 'hotter',
  clad: 'clad-aluminium',
  thinner: 'thinner-gauge',
  'one joint': 'one-bad-joint',
  joints: 'many-joints',
  'one longer': 'one-pair-longer',
  'one shorter': 'one-pair-shorter',
  open: 'not-shorted',
  leads: 'leads-not-nulled',
};

interface Built {
  readonly input: FromMeasurementInput;
  readonly twist: Twist;
  readonly length: number;
  readonly accuracy: { readonly fraction: number; readonly fixed: number };
}

function build(random: () => number, twist: Twist): Built {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const name = random() < 0.5 ? 'cat5e' : 'cat6';
  const gauge = name === 'cat5e' ? 24 : 23;
  const thought = between(1, 120);
  const length = twist === 'longer' ? thought * between(1, 2) : twist === 'shorter' ? thought * between(0.3, 1) : thought;
  const temperature = between(-10, 50);
  const truly = twist === 'hotter' ? between(temperature, 90) : temperature;
  const thin = gauge + 1 + Math.floor(random() * 2);
  const connections = Math.floor(random() * 5);
  const accuracy = { fraction: between(0, 0.02), fixed: between(0, 1) };
  const leadResistance = twist === 'leads' ? 0 : between(0, 0.5);
  const count = twist.startsWith('one') ? 2 + Math.floor(random() * 3) : 1 + Math.floor(random() * 4);
  const odd = Math.floor(random() * count);
  const forgotten = twist === 'leads' ? random() : 0;

  const pairs: Partial<Record<RunPair, number | 'open'>> = {};
  for (const [index, pair] of PAIRS.slice(0, count).entries()) {
    if (twist === 'open' && index === odd && count > 1) {
      pairs[pair] = 'open';
      continue;
    }
    const one = index === odd;
    const perMetre =
      twist === 'clad'
        ? solid(gauge) * between(1.4, 1.6)
        : twist === 'thinner'
          ? solid(thin) * between(0.96, 1.02)
          : between(0.96 * solid(gauge), 0.0938);
    const own = twist === 'one longer' && one ? length * between(1, 2) : twist === 'one shorter' && one ? length * between(0, 1) : length;
    const warm = 1 + (twist === 'clad' ? CLAD : COPPER) * (truly - 20);
    let ohms = 2 * own * perMetre * warm + leadResistance + forgotten;
    for (let i = 0; i < 2 * connections; i++) ohms += between(0, 0.2);
    if (twist === 'joints' || (twist === 'one joint' && one)) ohms += between(0, 5);
    if (twist === 'open' && count === 1) ohms += 5000;
    // The meter shows m with |m - ohms| at most f m + c.
    const off = between(-1, 1);
    const shown = (ohms + off * accuracy.fixed) / (1 - off * accuracy.fraction);
    pairs[pair] = shown > 0 ? shown : 0;
  }
  const input: FromMeasurementInput = {
    pairs,
    leadResistance,
    temperature,
    knownLength: thought,
    cable: cable(name),
    scope: 'channel',
    connections,
    accuracy,
  };
  return { input, twist, length, accuracy };
}

const explained = (found: FromMeasurement, name: ExplanationName) => found.explanations.find((explanation) => explanation.name === name);

describe(`${CASES} random runs`, () => {
  test('the truth is never called inconsistent, and what it takes holds the truth', () => {
    const random = seeded(20_261_125);
    const seen = new Map<Twist, { cases: number; told: number }>();
    for (let i = 0; i < CASES; i++) {
      const twist = TWISTS[i % TWISTS.length] as Twist;
      const { input, length } = build(random, twist);
      const found = fromMeasurement(input);
      const truth = explained(found, TRUTH[twist]);
      const label = () => `case ${i}, ${twist}: ${JSON.stringify(input)}`;
      expect(truth?.status, label()).toBe('consistent');
      if (twist === 'longer' || twist === 'shorter' || twist === 'none') {
        const thought = found.lengths[0];
        expect((thought?.length?.low ?? Number.NaN) - 1e-6, label()).toBeLessThanOrEqual(length);
        expect((thought?.length?.high ?? Number.NaN) + 1e-6, label()).toBeGreaterThanOrEqual(length);
      }
      // Without a known length the same run is as described by some length of its own, unless it is not what was described.
      if (twist === 'none' || twist === 'longer' || twist === 'shorter') {
        const { knownLength: _unknown, ...unknown } = input;
        expect(explained(fromMeasurement(unknown), 'as-described')?.status, label()).toBe('consistent');
      }
      const tally = seen.get(twist) ?? { cases: 0, told: 0 };
      const told = explained(found, 'as-described')?.status === 'inconsistent' ? 1 : 0;
      seen.set(twist, { cases: tally.cases + 1, told: tally.told + told });
    }
    // And it is not all called consistent: most of what is not as described is seen.
    expect(seen.get('none')?.told).toBe(0);
    for (const twist of ['longer', 'clad', 'thinner', 'one longer'] as const) {
      expect((seen.get(twist)?.told ?? 0) / (seen.get(twist)?.cases ?? 1), twist).toBeGreaterThan(0.3);
    }
  });

  test('with a known length copper and clad aluminium are told apart exactly where their readings do not touch', () => {
    const random = seeded(7_315);
    let apart = 0;
    let touching = 0;
    for (let i = 0; i < 4000; i++) {
      const { input, twist, length, accuracy } = build(random, i % 2 === 0 ? 'none' : 'clad');
      const gauge = (input.cable as Cable | undefined)?.gauge ?? 0;
      const warm = (coefficient: number): number => 1 + coefficient * ((input.temperature as number) - 20);
      const joints = 2 * (input.connections ?? 0) * 0.2;
      const copper = [0.96 * solid(gauge) * warm(COPPER) * 2 * length, 0.0938 * warm(COPPER) * 2 * length + joints] as const;
      const clad = [
        1.4 * 0.96 * solid(gauge) * warm(CLAD) * 2 * length,
        1.6 * 1.06 * solid(gauge) * warm(CLAD) * 2 * length + joints,
      ] as const;
      const found = fromMeasurement(input);
      const touches = ([low, high]: readonly [number, number]): boolean =>
        Object.values(input.pairs).every((shown) => {
          const off = accuracy.fraction * (shown as number) + accuracy.fixed;
          const lead = input.leadResistance ?? 0;
          return (shown as number) + off - lead >= low && (shown as number) - off - lead <= high;
        });
      expect(explained(found, 'as-described')?.status, JSON.stringify(input)).toBe(touches(copper) ? 'consistent' : 'inconsistent');
      expect(explained(found, 'clad-aluminium')?.status, JSON.stringify(input)).toBe(touches(clad) ? 'consistent' : 'inconsistent');
      const other = twist === 'clad' ? touches(copper) : touches(clad);
      if (other) touching++;
      else apart++;
    }
    expect(apart).toBeGreaterThan(1000);
    expect(touching).toBeGreaterThan(500);
  });
});
