/** The longest two-wire run: drops in volts, ampacities and ranges of supply against the core, which bounds each at another voltage. */
import { expect, test } from 'vitest';
import { maximumRun } from '../../src/plan/maximum-run.ts';
import { showWorking } from '../../src/working/index.ts';
import { LIMIT_WORDS } from '../../src/working/sheets/limit-words.ts';
import { seeded } from '../helpers/random.ts';
import { workings } from '../helpers/random-workings.ts';

const INPUTS = 2000;
const NAMES = new Map(Object.entries(LIMIT_WORDS).map(([name, words]) => [words, name]));

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
      expect(working.result.meaning).toContain(LIMIT_WORDS[core.governedBy]);
    }
  }
  expect([...bounded].sort()).toEqual(['ampacity', 'collapse', 'device-resistance', 'device-voltage', 'voltage-drop']);
  expect([...refused].sort()).toEqual(['ampacity', 'device-overvoltage', 'device-voltage', 'voltage-drop']);
});
