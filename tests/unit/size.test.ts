import { describe, expect, test } from 'vitest';
import { bundle, everything, gzippedSize, PROBES } from '../support/bundle.ts';

const codeOf = (name: string): string => PROBES.find((probe) => probe.name === name)?.code ?? '';

describe('the weight of one import', () => {
  test.each(PROBES.map((probe) => [probe.name, probe.ceiling, probe.code] as const))(
    '%s weighs at most %s kB',
    async (_name, ceiling, code) => {
      const size = gzippedSize(await bundle(code));
      expect(size, 'something was bundled at all').toBeGreaterThan(0.1);
      expect(size).toBeLessThanOrEqual(ceiling);
    },
  );
});

describe('nobody pays for a table that is not used', () => {
  // A word of each table, and the entry that has it.
  const words: readonly (readonly [table: string, word: string, entry: string])[] = [
    ['gauges', 'AWG', 'farend'],
    ['materials', 'annealed-copper', 'farend'],
    ['named cables', 'Category', 'farend'],
    ['names of cables', 'cat5e', 'farend'],
    ['the cabling rules', 'TIA-568', 'farend'],
    ['the bibliography', 'IEEE Std', 'farend/sources'],
  ];

  test.each(words)('%s are in their entry and not behind operatingPoint', async (_table, word, entry) => {
    expect(await bundle(everything(entry))).toContain(word);
    expect(await bundle(codeOf('operatingPoint'))).not.toContain(word);
  });

  test.each(PROBES.map(({ name }) => name))('%s carries no bibliography', async (name) => {
    const text = await bundle(codeOf(name));
    for (const word of ['IEEE Std', 'ANSI', 'edition', 're-read']) expect(text).not.toContain(word);
  });

  test('powerAtPd carries no cable', async () => {
    expect(await bundle(codeOf('powerAtPd'))).not.toMatch(/cat5e|Category|AWG/);
  });
});
