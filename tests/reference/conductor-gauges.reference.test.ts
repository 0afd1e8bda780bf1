/**
 * Every figure of the wire tables that could be read, in both families of diameters, against `awg`.
 *
 * Read in public copies, not in the purchased standards. What does not reproduce is named with its reason, here and in docs/sources.md.
 */
import { awg } from '../../src/conductor/awg.ts';
import type { AwgFamily } from '../../src/conductor/gauge.ts';
import { material } from '../../src/conductor/material.ts';
import { resistancePerMetre } from '../../src/conductor/resistance-per-metre.ts';
import { toOhmsPerKilofoot, toOhmsPerKilometre } from '../../src/quantity/convert-electrical.ts';
import { toCircularMils, toInches } from '../../src/quantity/convert-length.ts';
import { rows } from '../helpers/expectations.ts';
import { type PublishedCell, publishedColumn } from '../helpers/published-column.ts';

type Wire = ReturnType<typeof awg>;

const OFF = 'one or two units of the last figure off the square of its own diameter';
const CUT = 'reckoned on from rounded figures, and cut';

const at65 = (wire: Wire): number => resistancePerMetre(wire, 65);
const poundsPerKilofoot = (wire: Wire): number =>
  (wire.area * (material({ name: 'annealed-copper' }).density as number) * 304.8) / 453.59237;
const perKilofoot = (wire: Wire): number => toOhmsPerKilofoot(wire.resistancePerMetre);
const perKilometre = (wire: Wire): number => toOhmsPerKilometre(wire.resistancePerMetre);

function column(table: string, index: number, family: AwgFamily, compute: (wire: Wire) => number): PublishedCell[] {
  return rows(table).map((cells) => ({
    row: `${cells[0]} AWG`,
    printed: cells[index] as string,
    computed: compute(awg(Number(cells[0]), { family })),
  }));
}

// ASTM B3-95 Table 1, the nominal diameters of ASTM B258: gauge | in | mm | cmil | mm²
const B3 = `
   -3    0.4600    11.684    211600     107.0
   -2    0.4096    10.404    167800      85.0
   -1    0.3648     9.266    133100      67.4
    0    0.3249     8.252    105600      53.5
    1    0.2893     7.348     83690      42.4
    2    0.2576     6.543     66360      33.6
    3    0.2294     5.827     52620      26.7
    4    0.2043     5.189     41740      21.2
    5    0.1819     4.620     33090      16.8
    6    0.1620     4.115     26240      13.3
    7    0.1443     3.665     20820      10.5
    8    0.1285     3.264     16510      8.37
    9    0.1144     2.906     13090      6.63
   10    0.1019     2.588     10380      5.26
   11    0.0907     2.304      8230      4.17
   12    0.0808     2.052      6530      3.31
   13    0.0720     1.829      5180      2.63
   14    0.0641     1.628      4110      2.08
   15    0.0571     1.450      3260      1.65
   16    0.0508     1.290      2580      1.31
   17    0.0453     1.151      2050      1.04
   18    0.0403     1.024      1620     0.823
   19    0.0359     0.912      1290     0.654
   20    0.0320     0.813      1020     0.517
   21    0.0285     0.724       812     0.411
   22    0.0253     0.643       640     0.324
   23    0.0226     0.574       511     0.259
   24    0.0201     0.511       404     0.205
   25    0.0179     0.455       320     0.162
   26    0.0159     0.404       253     0.128
   27    0.0142     0.361       202     0.102
   28    0.0126     0.320       159     0.081
   29    0.0113     0.287       128     0.065
   30    0.0100     0.254       100     0.051
   31    0.0089     0.226      79.2     0.040
   32    0.0080     0.203      64.0     0.032
   33    0.0071     0.180      50.4     0.026
   34    0.0063     0.160      39.7     0.020
   35    0.0056     0.142      31.4     0.016
   36    0.0050     0.127      25.0     0.013
   37    0.0045     0.114      20.2     0.010
   38    0.0040     0.102      16.0    0.0081
   39    0.0035     0.089      12.2    0.0062
   40    0.0031     0.079      9.61    0.0049
`;
publishedColumn(
  'ASTM B3-95 Table 1, diameter [in]',
  column(B3, 1, 'astm-b258', (wire) => toInches(wire.diameter)),
);
publishedColumn(
  'ASTM B3-95 Table 1, diameter [mm]',
  column(B3, 2, 'astm-b258', (wire) => wire.diameter),
);
publishedColumn(
  'ASTM B3-95 Table 1, area [cmil]',
  column(B3, 3, 'astm-b258', (wire) => toCircularMils(wire.area)),
  {
    figures: (row) => (Number.parseInt(row, 10) <= 10 ? 4 : 3),
  },
);
publishedColumn(
  'ASTM B3-95 Table 1, area [mm²]',
  column(B3, 4, 'astm-b258', (wire) => wire.area),
  {
    exceptions: {
      '-3 AWG': 'three figures, 107',
      '4 AWG': OFF,
      '7 AWG': OFF,
      '19 AWG': OFF,
      '20 AWG': OFF,
      '21 AWG': OFF,
      '28 AWG': OFF,
    },
  },
);

// ASTM B33-04 Table 1, the exact square of the rounded diameter: gauge | cmil | mm | mm²
const B33 = `
   -3  211600.00   11.6840  107.2193
   -2  167772.16   10.4038   85.0114
   -1  133079.04    9.2659   67.4321
    0  105560.01    8.2525   53.4880
    9  13087.36    2.9058    6.6315
   10  10383.61    2.5883    5.2615
   11   8226.49    2.3038    4.1684
   12   6528.64    2.0523    3.3081
   13   5184.00    1.8288    2.6268
   14   4108.81    1.6281    2.0820
   15   3260.41    1.4503    1.6521
   16   2580.64    1.2903    1.3076
   17   2052.09    1.1506    1.0398
`;
publishedColumn(
  'ASTM B33-04 Table 1, area [cmil]',
  column(B33, 1, 'astm-b258', (wire) => toCircularMils(wire.area)),
);
publishedColumn(
  'ASTM B33-04 Table 1, diameter [mm]',
  column(B33, 2, 'astm-b258', (wire) => wire.diameter),
);
publishedColumn(
  'ASTM B33-04 Table 1, area [mm²]',
  column(B33, 3, 'astm-b258', (wire) => wire.area),
);

// Unrounded diameters. Kuphaldt, Lessons in Electric Circuits vol. I ch. 12: in, cmil, lb/kft; HyperPhysics, Wire gauges (credited there to
// Floyd, Electric Circuit Fundamentals, 2nd ed.): cmil, ohm/kft. Trailing zeros of HyperPhysics are lost in the copy.
const UNROUNDED = `
   -3    0.4600    211600     640.5    211600     0.049
   -2    0.4096    167800     507.9    167810    0.0618
   -1    0.3648    133100     402.8    133080     0.078
    0    0.3249    105500     319.5    105530    0.0983
    1    0.2893     83690     253.5     83694     0.124
    2    0.2576     66370     200.9     66373    0.1563
    3    0.2294     52630     159.3     52634     0.197
    4    0.2043     41740     126.4     41742    0.2485
    5    0.1819     33100     100.2     33102    0.3133
    6    0.1620     26250     79.46     26250    0.3951
    7    0.1443     20820     63.02     20816    0.4982
    8    0.1285     16510     49.97     16509    0.6282
    9    0.1144     13090     39.63     13094    0.7921
   10    0.1019     10380     31.43     10381    0.9989
   11   0.09074      8234     24.92      8234      1.26
   12   0.08081      6530     19.77      6529     1.588
   13   0.07196      5178     15.68    5178.4     2.003
   14   0.06408      4107     12.43    4106.8     2.525
   15   0.05707      3257     9.858    3256.7     3.184
   16   0.05082      2583     7.818    2582.9     4.016
   17   0.04526      2048     6.200    2048.2     5.064
   18   0.04030      1624     4.917    1624.3     6.385
   19   0.03589      1288     3.899    1288.1     8.051
   20   0.03196      1022     3.092    1021.5     10.15
   21   0.02846     810.1     2.452     810.1      12.8
   22   0.02535     642.5     1.945     642.4     16.14
   23   0.02257     509.5     1.542    509.45     20.36
   24   0.02010     404.0     1.233    404.01     25.67
   25   0.01790     320.4    0.9699     320.4     32.37
   26   0.01594     254.1    0.7692     254.1     40.81
   27   0.01420     201.5    0.6100     201.5     51.47
   28   0.01264     159.8    0.4837    159.79      64.9
   29   0.01126     126.7    0.3836    126.72     81.83
   30   0.01003     100.5    0.3042     100.5     103.2
   31  0.008928     79.70    0.2413      79.7     130.1
   32  0.007950     63.21    0.1913     63.21     164.1
   33  0.007080     50.13    0.1517     50.13     206.9
   34  0.006305     39.75    0.1203     39.75     260.9
   35  0.005615     31.52   0.09542     31.52       329
   36  0.005000     25.00   0.07567        25     414.8
   37  0.004453     19.83   0.06001     19.83     523.1
   38  0.003965     15.72   0.04759     15.72     659.6
   39  0.003531     12.47   0.03774     12.47     831.8
   40  0.003145     9.888   0.02993      9.89      1049
`;
publishedColumn(
  'Kuphaldt, diameter [in]',
  column(UNROUNDED, 1, 'formula', (wire) => toInches(wire.diameter)),
);
publishedColumn(
  'Kuphaldt, area [cmil]',
  column(UNROUNDED, 2, 'formula', (wire) => toCircularMils(wire.area)),
  {
    figures: () => 4,
    exceptions: { '22 AWG': '642.45, rounded twice' },
  },
);
publishedColumn('Kuphaldt, mass [lb/1000 ft] at 8.89 g/cm³', column(UNROUNDED, 3, 'formula', poundsPerKilofoot), {
  exceptions: {
    '0 AWG': '319.45, rounded twice',
    '1 AWG': '0.06 % high',
    '4 AWG': '126.35, rounded twice',
    '24 AWG': 'a misprint for 1.223',
  },
});
publishedColumn(
  'HyperPhysics, area [cmil]',
  column(UNROUNDED, 4, 'formula', (wire) => toCircularMils(wire.area)),
  {
    within: { fraction: 2e-4, reason: 'five figures from diameters rounded on the way' },
  },
);
publishedColumn('HyperPhysics, resistance [Ω/1000 ft]', column(UNROUNDED, 5, 'formula', perKilofoot), {
  exceptions: { '29 AWG': '81.835, cut' },
});

// HyperPhysics, the short metric table beside it: gauge | ohm/km
const SHORT = `
   10      3.28
   12      5.21
   14      8.28
   16      13.2
   18      20.9
   20      33.2
   22      52.7
   24      84.2
`;
publishedColumn('HyperPhysics, short table [Ω/km]', column(SHORT, 1, 'formula', perKilometre), {
  exceptions: { '14 AWG': '8.286, cut', '20 AWG': '0.3 % low', '22 AWG': '0.5 % low' },
});

// A much copied chart (us.misumi-ec.com, Copper wire resistance by AWG): gauge | ohm/kft and ohm/km, headed 25 °C | the same at 65 °C.
// The first two are the 20 °C figures; the others are 1.17685 of them.
const CHART = `
   -3    0.0490     0.161    0.0576     0.189
   -2    0.0618     0.203    0.0727     0.238
   -1    0.0779     0.256    0.0917     0.301
    0    0.0983     0.323    0.1156     0.379
    1    0.1239     0.407    0.1458     0.478
    2    0.1563     0.513    0.1839     0.603
    3    0.1970     0.646    0.2318     0.760
    4    0.2485     0.815    0.2924     0.959
    5    0.3133     1.028    0.3686     1.209
    6    0.3951     1.296    0.4648     1.525
    7    0.4982     1.634    0.5861     1.923
    8    0.6282     2.061    0.7390     2.425
    9    0.7921     2.599    0.9317     3.057
   10    0.9989     3.277     1.175     3.855
   11     1.260     4.132     1.482     4.862
   12     1.588     5.211     1.868     6.129
   13     2.003     6.571     2.355     7.726
   14     2.525     8.286     2.970     9.744
   15     3.184     10.45     3.745     12.29
   16     4.016     13.17     4.725     15.50
   17     5.064     16.62     5.957     19.54
`;
publishedColumn('chart headed 25 °C, in truth 20 °C [Ω/1000 ft]', column(CHART, 1, 'formula', perKilofoot));
publishedColumn('chart headed 25 °C, in truth 20 °C [Ω/km]', column(CHART, 2, 'formula', perKilometre), {
  exceptions: { '0 AWG': '0.3224', '17 AWG': '16.613' },
});
publishedColumn(
  'chart, 65 °C [Ω/1000 ft]',
  column(CHART, 3, 'formula', (wire) => toOhmsPerKilofoot(at65(wire))),
  {
    within: { fraction: 0.003, reason: CUT },
  },
);
publishedColumn(
  'chart, 65 °C [Ω/km]',
  column(CHART, 4, 'formula', (wire) => toOhmsPerKilometre(at65(wire))),
  {
    within: { fraction: 0.003, reason: CUT },
  },
);

// Appendix H, resistance of copper wire (scribd document 480630294): gauge | ohm/mile at 25 °C
const MILES = `
   -3     0.264
   -2     0.333
   -1     0.420
    0     0.528
    1     0.665
    2     0.839
    3     1.061
    4     1.335
`;
publishedColumn(
  'Appendix H, ohms per mile at 25 °C',
  column(MILES, 1, 'formula', (wire) => resistancePerMetre(wire, 25) * 1609.344),
  {
    within: { fraction: 0.0036, reason: 'conductivity and rounding are not stated' },
  },
);
