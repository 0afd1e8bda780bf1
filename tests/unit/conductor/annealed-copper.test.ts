/** The short way to annealed copper gives the figures of the long one, bit for bit. */
import { expect, test } from 'vitest';
import { annealedCopperPerMetre } from '../../../src/conductor/annealed-copper.ts';
import { COPPER_COEFFICIENT } from '../../../src/conductor/copper-standard.ts';
import { awg } from '../../../src/index.ts';

test.each(['solid', 'stranded'] as const)('every gauge, %s', (stranding) => {
  for (let gauge = -3; gauge <= 40; gauge++) {
    const long = awg(gauge, { stranding });
    expect(annealedCopperPerMetre(gauge, stranding)).toBe(long.resistancePerMetre);
    expect(COPPER_COEFFICIENT).toBe(long.temperatureCoefficient);
  }
});
