import { describe, expect, test } from 'vitest';
import { bundle, gzippedSize, PROBES } from '../support/bundle.ts';

const codeOf = (name: string): string => PROBES.find((probe) => probe.name === name)?.code ?? '';

describe('the weight of one import', () => {
  test.each(PROBES.map((probe) => [probe.name, probe.ceiling, probe.code] as const))(
    '%s weighs at most %s kB',
    async (_name, ceiling, code) => {
      const size = gzippedSize(await bundle(code, 'src/index.ts'));
      expect(size, 'something was bundled at all').toBeGreaterThan(0.1);
      expect(size).toBeLessThanOrEqual(ceiling);
    },
  );
});

describe('nobody pays for a table that is not used', () => {
  // A word of each table, as the bundle of the whole core shows it.
  const words = {
    gauges: 'AWG',
    materials: 'annealed-copper',
    'named cables': 'Category',
    'names of cables': 'cat5e',
    'the cabling rules': 'TIA-568',
    'the bibliography': 'IEEE',
  };

  test.each(Object.entries(words))('%s are in the core and not behind operatingPoint', async (_name, word) => {
    expect(await bundle(codeOf('whole core'), 'src/index.ts')).toContain(word);
    expect(await bundle(codeOf('operatingPoint'), 'src/index.ts')).not.toContain(word);
  });

  test.each(['operatingPoint', 'awg', 'poeClass', 'cable', 'powerAtPd', 'maximumRun', 'switchBudget'])(
    '%s carries no bibliography',
    async (name) => {
      const text = await bundle(codeOf(name), 'src/index.ts');
      for (const word of ['IEEE Std', 'ANSI', 'edition', 're-read']) expect(text).not.toContain(word);
    },
  );

  test('powerAtPd carries no cable', async () => {
    expect(await bundle(codeOf('powerAtPd'), 'src/index.ts')).not.toMatch(/cat5e|Category|AWG/);
  });
});
