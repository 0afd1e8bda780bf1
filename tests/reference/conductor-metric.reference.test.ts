/**
 * Every maximum of IEC 60228:2004 Tables 1 to 4, 0.5 to 95 mm², and the sizes printed beside it, against `metric`.
 *
 * Read in a cable maker's reproduction (kabelmetal-indonesia.com), a connector catalogue (storage.electrika.com, page 211), uecables.com
 * and an extract of DIN VDE 0295 / IEC 60228 / HD 383 (etechnik-synergie.com), which agree. Class 6 and the small sizes: the last only.
 */
import { describe, expect, test } from 'vitest';
import { metric } from '../../src/conductor/metric.ts';
import { resistancePerMetre } from '../../src/conductor/resistance-per-metre.ts';
import { toOhmsPerKilometre } from '../../src/quantity/convert-electrical.ts';
import { expectPrinted, rows } from '../helpers/expectations.ts';

// mm² | class | metal | coating | Ω/km at 20 °C
const MAXIMA = `
  0.5    1         copper     plain         36.0
  0.5    1         copper     metal-coated  36.7
  0.5    2         copper     plain         36.0
  0.5    2         copper     metal-coated  36.7
  0.5    5         copper     plain         39.0
  0.5    5         copper     metal-coated  40.1
  0.5    6         copper     plain         39.0
  0.5    6         copper     metal-coated  40.1
  0.75   1         copper     plain         24.5
  0.75   1         copper     metal-coated  24.8
  0.75   2         copper     plain         24.5
  0.75   2         copper     metal-coated  24.8
  0.75   5         copper     plain         26.0
  0.75   5         copper     metal-coated  26.7
  0.75   6         copper     plain         26.0
  0.75   6         copper     metal-coated  26.7
  1      1         copper     plain         18.1
  1      1         copper     metal-coated  18.2
  1      2         copper     plain         18.1
  1      2         copper     metal-coated  18.2
  1      5         copper     plain         19.5
  1      5         copper     metal-coated  20.0
  1      6         copper     plain         19.5
  1      6         copper     metal-coated  20.0
  1.5    1         copper     plain         12.1
  1.5    1         copper     metal-coated  12.2
  1.5    2         copper     plain         12.1
  1.5    2         copper     metal-coated  12.2
  1.5    5         copper     plain         13.3
  1.5    5         copper     metal-coated  13.7
  1.5    6         copper     plain         13.3
  1.5    6         copper     metal-coated  13.7
  2.5    1         copper     plain         7.41
  2.5    1         copper     metal-coated  7.56
  2.5    2         copper     plain         7.41
  2.5    2         copper     metal-coated  7.56
  2.5    5         copper     plain         7.98
  2.5    5         copper     metal-coated  8.21
  2.5    6         copper     plain         7.98
  2.5    6         copper     metal-coated  8.21
  4      1         copper     plain         4.61
  4      1         copper     metal-coated  4.70
  4      2         copper     plain         4.61
  4      2         copper     metal-coated  4.70
  4      5         copper     plain         4.95
  4      5         copper     metal-coated  5.09
  4      6         copper     plain         4.95
  4      6         copper     metal-coated  5.09
  6      1         copper     plain         3.08
  6      1         copper     metal-coated  3.11
  6      2         copper     plain         3.08
  6      2         copper     metal-coated  3.11
  6      5         copper     plain         3.30
  6      5         copper     metal-coated  3.39
  6      6         copper     plain         3.30
  6      6         copper     metal-coated  3.39
  10     1         copper     plain         1.83
  10     1         copper     metal-coated  1.84
  10     2         copper     plain         1.83
  10     2         copper     metal-coated  1.84
  10     5         copper     plain         1.91
  10     5         copper     metal-coated  1.95
  10     6         copper     plain         1.91
  10     6         copper     metal-coated  1.95
  10     1         aluminium  plain         3.08
  10     2         aluminium  plain         3.08
  16     1         copper     plain         1.15
  16     1         copper     metal-coated  1.16
  16     2         copper     plain         1.15
  16     2         copper     metal-coated  1.16
  16     5         copper     plain         1.21
  16     5         copper     metal-coated  1.24
  16     6         copper     plain         1.21
  16     6         copper     metal-coated  1.24
  16     1         aluminium  plain         1.91
  16     2         aluminium  plain         1.91
  25     1         copper     plain         0.727
  25     2         copper     plain         0.727
  25     2         copper     metal-coated  0.734
  25     5         copper     plain         0.780
  25     5         copper     metal-coated  0.795
  25     6         copper     plain         0.780
  25     6         copper     metal-coated  0.795
  25     1         aluminium  plain         1.20
  25     2         aluminium  plain         1.20
  35     1         copper     plain         0.524
  35     2         copper     plain         0.524
  35     2         copper     metal-coated  0.529
  35     5         copper     plain         0.554
  35     5         copper     metal-coated  0.565
  35     6         copper     plain         0.554
  35     6         copper     metal-coated  0.565
  35     1         aluminium  plain         0.868
  35     2         aluminium  plain         0.868
  50     1         copper     plain         0.387
  50     2         copper     plain         0.387
  50     2         copper     metal-coated  0.391
  50     5         copper     plain         0.386
  50     5         copper     metal-coated  0.393
  50     6         copper     plain         0.386
  50     6         copper     metal-coated  0.393
  50     1         aluminium  plain         0.641
  50     2         aluminium  plain         0.641
  70     1         copper     plain         0.268
  70     2         copper     plain         0.268
  70     2         copper     metal-coated  0.270
  70     5         copper     plain         0.272
  70     5         copper     metal-coated  0.277
  70     6         copper     plain         0.272
  70     6         copper     metal-coated  0.277
  70     1         aluminium  plain         0.443
  70     2         aluminium  plain         0.443
  95     1         copper     plain         0.193
  95     2         copper     plain         0.193
  95     2         copper     metal-coated  0.195
  95     5         copper     plain         0.206
  95     5         copper     metal-coated  0.210
  95     6         copper     plain         0.206
  95     6         copper     metal-coated  0.210
  95     1         aluminium  plain         0.320
  95     2         aluminium  plain         0.320
  0.05   bunched   copper     plain         380
  0.05   bunched   copper     metal-coated  392
  0.08   bunched   copper     plain         237
  0.08   bunched   copper     metal-coated  244
  0.11   bunched   copper     plain         170
  0.11   bunched   copper     metal-coated  175
  0.12   bunched   copper     plain         150
  0.12   bunched   copper     metal-coated  155
  0.14   bunched   copper     plain         134
  0.14   bunched   copper     metal-coated  138
  0.22   bunched   copper     plain         96
  0.22   bunched   copper     metal-coated  99
  0.25   bunched   copper     plain         76
  0.25   bunched   copper     metal-coated  79
  0.34   bunched   copper     plain         53
  0.34   bunched   copper     metal-coated  56
`;

test.each(rows(MAXIMA))('%s mm², class %s, %s, %s: at most %s Ω/km', (size, conductorClass, metal, coating, printed) => {
  const conductor = metric(Number(size), {
    class: conductorClass === 'bunched' ? undefined : (Number(conductorClass) as 1 | 2 | 5 | 6),
    coating: coating === 'plain' ? 'plain' : 'tinned',
    material: metal as 'copper' | 'aluminium',
  });
  expectPrinted(toOhmsPerKilometre(conductor.resistancePerMetre), printed as string);
  expect(conductor.basis).toBe('maximum');
});

describe('IEC 60228 reduction to 20 °C', () => {
  // uecables.com, factor k(t) as printed: °C, factor. It is 250/(230 + t), a coefficient of 0.004, and not the 254.5/(234.5 + t) of copper.
  const FACTORS = `
    5 1.064
    10 1.042
    15 1.020
    25 0.980
    30 0.962
    40 0.926
    50 0.893
    60 0.862
    70 0.833
    75 0.820
    80 0.806
    90 0.781
    100 0.758`;
  test.each(rows(FACTORS))('%s °C: the printed %s is that of 0.004/K, within 0.5 %% of ours', (temperature, printed) => {
    expectPrinted(1 / (1 + 0.004 * (Number(temperature) - 20)), printed as string);
    const ours = metric(1, { class: 1 }).resistancePerMetre / resistancePerMetre(metric(1, { class: 1 }), Number(temperature));
    expect(Math.abs(ours / Number(printed) - 1)).toBeLessThan(0.005);
  });
});
