/**
 * NEC (NFPA 70) Chapter 9 Table 8, resistance to direct current at 75 °C, against `necTable8`.
 *
 * Uncoated copper and aluminium: read in a printable chart that transcribes the 2026 edition. Coated copper and every Ω/km figure: from
 * memory, no copy was reached.
 */
import { describe, expect, test } from 'vitest';
import { awg } from '../../src/conductor/awg.ts';
import type { AwgSize } from '../../src/conductor/gauge.ts';
import { necTable8 } from '../../src/conductor/nec-table-8.ts';
import { resistancePerMetre } from '../../src/conductor/resistance-per-metre.ts';
import { toOhmsPerKilofoot, toOhmsPerKilometre } from '../../src/quantity/convert-electrical.ts';
import { source } from '../../src/sources/source.ts';
import { expectPrinted, expectWithin, lastDigit, rows } from '../helpers/expectations.ts';

function wire(cells: readonly string[]): ReturnType<typeof necTable8> {
  const [gauge = '', strands, material, coating] = cells;
  const size = /^0+$/.test(gauge) ? (`${gauge.length}/0` as AwgSize) : Number(gauge);
  return necTable8({
    size,
    stranding: strands === '1' ? 'solid' : 'stranded',
    material: material as 'copper' | 'aluminium',
    coating: coating as 'uncoated' | 'coated',
  });
}

// gauge | strands | metal | coating | Ω/1000 ft at 75 °C | how it is known
const TABLE = `
    18   1  copper     uncoated    7.77  read
    18   1  copper     coated      8.08  memory
    18   1  aluminium  uncoated    12.8  read
    18   7  copper     uncoated    7.95  read
    18   7  copper     coated      8.45  memory
    18   7  aluminium  uncoated    13.1  read
    16   1  copper     uncoated    4.89  read
    16   1  copper     coated      5.08  memory
    16   1  aluminium  uncoated    8.05  read
    16   7  copper     uncoated    4.99  read
    16   7  copper     coated      5.29  memory
    16   7  aluminium  uncoated    8.21  read
    14   1  copper     uncoated    3.07  read
    14   1  copper     coated      3.19  memory
    14   1  aluminium  uncoated    5.06  read
    14   7  copper     uncoated    3.14  read
    14   7  copper     coated      3.26  memory
    14   7  aluminium  uncoated    5.17  read
    12   1  copper     uncoated    1.93  read
    12   1  copper     coated      2.01  memory
    12   1  aluminium  uncoated    3.18  read
    12   7  copper     uncoated    1.98  read
    12   7  copper     coated      2.05  memory
    12   7  aluminium  uncoated    3.25  read
    10   1  copper     uncoated    1.21  read
    10   1  copper     coated      1.26  memory
    10   1  aluminium  uncoated    2.00  read
    10   7  copper     uncoated    1.24  read
    10   7  copper     coated      1.29  memory
    10   7  aluminium  uncoated    2.04  read
     8   1  copper     uncoated   0.764  read
     8   1  copper     coated     0.786  memory
     8   1  aluminium  uncoated    1.26  read
     8   7  copper     uncoated   0.778  read
     8   7  copper     coated     0.809  memory
     8   7  aluminium  uncoated    1.28  read
     6   7  copper     uncoated   0.491  read
     6   7  copper     coated     0.510  memory
     6   7  aluminium  uncoated   0.808  read
     4   7  copper     uncoated   0.308  read
     4   7  copper     coated     0.321  memory
     4   7  aluminium  uncoated   0.508  read
     3   7  copper     uncoated   0.245  read
     3   7  copper     coated     0.254  memory
     3   7  aluminium  uncoated   0.403  read
     2   7  copper     uncoated   0.194  read
     2   7  copper     coated     0.201  memory
     2   7  aluminium  uncoated   0.319  read
     1  19  copper     uncoated   0.154  read
     1  19  copper     coated     0.160  memory
     1  19  aluminium  uncoated   0.253  read
     0  19  copper     uncoated   0.122  read
     0  19  copper     coated     0.127  memory
     0  19  aluminium  uncoated   0.201  read
    00  19  copper     uncoated  0.0967  read
    00  19  copper     coated     0.101  memory
    00  19  aluminium  uncoated   0.159  read
   000  19  copper     uncoated  0.0766  read
   000  19  copper     coated    0.0797  memory
   000  19  aluminium  uncoated   0.126  read
  0000  19  copper     uncoated  0.0608  read
  0000  19  copper     coated    0.0626  memory
  0000  19  aluminium  uncoated   0.100  read
`;

test.each(rows(TABLE).map((cells) => [cells.slice(0, 4).join(' '), cells] as const))('%s', (_name, cells) => {
  const conductor = wire(cells);
  expectPrinted(toOhmsPerKilofoot(resistancePerMetre(conductor, 75)), cells[4] as string, 1e-6);
  expect(source(conductor.source).status).toBe(cells[5] === 'read' ? 'published' : 'memory');
  expect(conductor.strands ?? 1).toBe(Number(cells[1]));
});

// Remembered: gauge | strands | metal | coating | Ω/km at 75 °C
const METRIC = `
    18   1  copper     uncoated    25.5
    18   1  copper     coated      26.5
    18   1  aluminium  uncoated    42.0
    18   7  copper     uncoated    26.1
    18   7  copper     coated      27.7
    18   7  aluminium  uncoated    42.8
    16   1  copper     uncoated    16.0
    16   1  copper     coated      16.7
    16   1  aluminium  uncoated    26.4
    16   7  copper     uncoated    16.4
    16   7  copper     coated      17.3
    16   7  aluminium  uncoated    26.9
    14   1  copper     uncoated    10.1
    14   1  copper     coated      10.4
    14   1  aluminium  uncoated    16.6
    14   7  copper     uncoated    10.3
    14   7  copper     coated      10.7
    14   7  aluminium  uncoated    16.9
    12   1  copper     uncoated    6.34
    12   1  copper     coated      6.57
    12   1  aluminium  uncoated   10.45
    12   7  copper     uncoated    6.50
    12   7  copper     coated      6.73
    12   7  aluminium  uncoated   10.69
    10   1  copper     uncoated   3.984
    10   1  copper     coated     4.148
    10   1  aluminium  uncoated   6.561
    10   7  copper     uncoated   4.070
    10   7  copper     coated     4.226
    10   7  aluminium  uncoated   6.679
     8   1  copper     uncoated   2.506
     8   1  copper     coated     2.579
     8   1  aluminium  uncoated   4.125
     8   7  copper     uncoated   2.551
     8   7  copper     coated     2.653
     8   7  aluminium  uncoated   4.204
     6   7  copper     uncoated   1.608
     6   7  copper     coated     1.671
     6   7  aluminium  uncoated   2.652
     4   7  copper     uncoated   1.010
     4   7  copper     coated     1.053
     4   7  aluminium  uncoated   1.666
     3   7  copper     uncoated   0.802
     3   7  copper     coated     0.833
     3   7  aluminium  uncoated   1.320
     2   7  copper     uncoated   0.634
     2   7  copper     coated     0.661
     2   7  aluminium  uncoated   1.045
     1  19  copper     uncoated   0.505
     1  19  copper     coated     0.524
     1  19  aluminium  uncoated   0.829
     0  19  copper     uncoated   0.399
     0  19  copper     coated     0.415
     0  19  aluminium  uncoated   0.660
    00  19  copper     uncoated  0.3170
    00  19  copper     coated     0.329
    00  19  aluminium  uncoated   0.523
   000  19  copper     uncoated  0.2512
   000  19  copper     coated    0.2610
   000  19  aluminium  uncoated   0.413
  0000  19  copper     uncoated  0.1996
  0000  19  copper     coated    0.2050
  0000  19  aluminium  uncoated   0.328
`;
describe('the metric column, remembered, is the other one within the rounding of both', () => {
  test.each(rows(METRIC).map((cells) => [cells.slice(0, 4).join(' '), cells] as const))('%s', (_name, cells) => {
    const ohms = toOhmsPerKilometre(resistancePerMetre(wire(cells), 75));
    const other = rows(TABLE).find((row) => row.slice(0, 4).join(' ') === cells.slice(0, 4).join(' ')) as string[];
    const printed = cells[4] as string;
    const rounding = lastDigit(printed) + lastDigit(other[4] as string) / 0.3048;
    expect(Math.abs(ohms - Number(printed))).toBeLessThanOrEqual(1.2 * rounding); // 3/0 coated is remembered as 0.2610, for 0.2615
  });
});

describe('what the table is made of: resistivity, rounded diameters, 2 % for the lay', () => {
  test.each(
    rows(TABLE)
      .filter((row) => row[3] === 'uncoated')
      .map((cells) => [cells.slice(0, 4).join(' '), cells] as const),
  )('%s: within 0.5 %%', (_name, cells) => {
    const conductor = wire(cells);
    const size = conductor.name.split(' ')[0] as string;
    const ideal = awg(size.includes('/') ? (size as AwgSize) : Number(size), {
      family: 'astm-b258',
      stranding: conductor.stranding,
      material: conductor.material as 'annealed-copper' | 'aluminium',
    });
    expectWithin(resistancePerMetre(conductor, 75), resistancePerMetre(ideal, 75), 0.005);
    expectWithin(conductor.resistancePerMetre, ideal.resistancePerMetre, 0.005);
  });
});
