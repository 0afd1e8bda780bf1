/**
 * IEC 60228:2004 maximum resistances at 20 °C [Ω/km], plain copper: classes 1 and 2 (solid, stranded), class 5 and 6 (flexible).
 *
 * Read in a cable maker's and a connector maker's reproduction of tables A.1 and A.2 and an extract of DIN VDE 0295 / HD 383, which agree.
 */
import { expect, test } from 'vitest';
import { conductorFromResistance } from '../../src/conductor/conductor-from-resistance.ts';
import { loopResistance } from '../../src/conductor/loop-resistance.ts';
import { expectWithin, rows } from '../helpers/expectations.ts';

// mm² | class 1 and 2 | class 5 and 6
const LIMITS = `
  0.5   36.0   39.0
  0.75  24.5   26.0
  1     18.1   19.5
  1.5   12.1   13.3
  2.5   7.41   7.98
  4     4.61   4.95
  6     3.08   3.30
  10    1.83   1.91
  16    1.15   1.21
  25    0.727  0.780
  35    0.524  0.554
  50    0.387  0.386
  70    0.268  0.272
  95    0.193  0.206
`;

test.each(rows(LIMITS))('%s mm²: the limit (%s, flexible %s Ω/km) implies less copper than the label says', (nominal, rigid, flexible) => {
  const implied = (ohms: string | undefined): number => conductorFromResistance({ ohmsPerKilometre: Number(ohms) }).area;
  // 4.4 to 12.2 % above ρL/A for classes 1 and 2, 10.4 to 15.7 % for classes 5 and 6: the area is a label, not a measure.
  expect(Number(nominal) / implied(rigid)).toBeGreaterThan(1.043);
  expect(Number(nominal) / implied(rigid)).toBeLessThan(1.123);
  expect(Number(nominal) / implied(flexible)).toBeGreaterThan(1.103);
  expect(Number(nominal) / implied(flexible)).toBeLessThan(1.158);
});

test.each(rows(LIMITS))('%s mm²: 100 m out and back of class 5 is a fifth of the printed figure', (_nominal, _rigid, flexible) => {
  const conductor = conductorFromResistance({ ohmsPerKilometre: Number(flexible), stranding: 'stranded' });
  expectWithin(loopResistance({ conductor, length: 100 }), Number(flexible) / 5, 1e-15);
});
