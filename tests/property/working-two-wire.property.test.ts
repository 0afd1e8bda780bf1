/** Two-wire lines: drops in volts, ampacities and ranges of supply against the core, which bounds each at another voltage. */
import { expect, test } from 'vitest';
import type { CheckName } from '../../src/limits/check.ts';
import { LIMIT_WORDS } from '../../src/limits/limit-words.ts';
import { maximumRun } from '../../src/plan/maximum-run.ts';
import { showWorking } from '../../src/working/index.ts';
import { seeded } from '../helpers/random.ts';
import { workings } from '../helpers/random-workings.ts';

const INPUTS = 2000;
const NAMES = new Map(Object.entries(LIMIT_WORDS).map(([name, { subject }]) => [subject, name]));

test(`every limit of ${INPUTS} two-wire circuits is that of the core, to 1e-12`, () => {
  const random = seeded(14);
  const bounded = new Set<string>();
  const refused = new Set<string>();
  for (let done = 0; done < INPUTS; ) {
    const input = workings.maximumRun.question(random);
    if (!('load' in input)) continue;
    done++;
    const working = showWorking('maximumRun', input);
    const core = maximumRun(input);
    const limits = new Map(core.limits.map((limit) => [limit.limit as string, limit]));
    if (core.feasible) expect(working.feasible).toBe(core.unbounded !== true);
    else {
      expect(limits.get(NAMES.get(/^no length meets the limit on (.+):/.exec(working.no ?? '')?.[1] ?? '') ?? '')).toHaveProperty(
        'shortfall',
      );
      refused.add(core.governedBy);
      continue;
    }
    for (const { symbol, meaning, value } of working.steps) {
      const [words = '', says = ''] = meaning.split(': ');
      const label = NAMES.get(words) ?? '';
      const figure = says.startsWith('the length')
        ? limits.get(label)?.length
        : symbol.startsWith('X_')
          ? limits.get(label)?.resistance
          : undefined;
      if (figure === undefined) continue;
      expect(Math.abs(value - figure), `${symbol} of ${JSON.stringify(input)}`).toBeLessThanOrEqual(1e-12 * figure);
      bounded.add(label);
    }
    // What bounds nothing has no line.
    const lengths = core.limits.filter(({ length }) => length !== undefined);
    expect(working.steps.filter(({ symbol }) => /^L_\d+$/.test(symbol))).toHaveLength(lengths.length);
    if (core.unbounded !== true) {
      expect(Math.abs(working.result.value - core.length)).toBeLessThanOrEqual(1e-12 * core.length);
      expect(working.result.meaning).toContain(LIMIT_WORDS[core.governedBy].subject);
    }
  }
  expect([...bounded].sort()).toEqual(['ampacity', 'collapse', 'device-resistance', 'device-voltage', 'voltage-drop']);
  expect([...refused].sort()).toEqual(['ampacity', 'device-overvoltage', 'device-voltage', 'voltage-drop']);
});

/** What governs a line, by the kind of load and how the limit is stated, on each of the sheets that solve for something else. */
const GOVERNING = {
  highestLoad: ['power volts', 'power ampacity', 'current volts', 'current ampacity', 'resistance volts', 'resistance ampacity'],
  lowestSupplyVoltage: ['power volts', 'power ampacity'],
  highestTemperature: ['power volts', 'power ampacity', 'current volts', 'resistance volts'],
} as const;

test.each(['highestLoad', 'lowestSupplyVoltage', 'highestTemperature'] as const)(
  'drops in volts and ampacities govern %s where the core says so, of each kind of load',
  (name) => {
    const random = seeded(15);
    const wanted = new Set<string>(GOVERNING[name]);
    for (let tries = 0; tries < INPUTS && wanted.size > 0; tries++) {
      const input = workings[name].question(random);
      if ('poeClass' in input) continue;
      const core = workings[name].answer(input as never) as { readonly feasible: boolean; readonly governedBy?: CheckName };
      if (!core.feasible || core.governedBy === undefined) continue;
      const { result } = showWorking(name, input as never);
      expect(result.meaning, JSON.stringify(input)).toContain(`set by ${LIMIT_WORDS[core.governedBy].subject}`);
      const kind = 'load' in input ? Object.keys(input.load)[0] : ((input as { readonly kind?: string }).kind ?? 'power');
      if (core.governedBy === 'ampacity') wanted.delete(`${kind} ampacity`);
      if (core.governedBy === 'voltage-drop' && typeof input.permittedDrop === 'object') wanted.delete(`${kind} volts`);
    }
    expect([...wanted]).toEqual([]);
  },
);
