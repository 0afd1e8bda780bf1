/** Where published sources disagree, or print what cannot be, and what this library takes instead; docs/sources.md lists them. @module */

/** One disagreement. */
export interface Disagreement {
  /** What it is about. */
  readonly about:
    | 'gauges'
    | 'metals'
    | 'temperature'
    | 'metric sizes'
    | 'strands'
    | 'NEC Table 8'
    | 'worked examples'
    | 'cabling'
    | 'ethernet';
  /** Who prints what. */
  readonly printed: string;
  /** What is taken here, and why. */
  readonly taken: string;
}

/** In the order of the page. */
export const DISAGREEMENTS: readonly Disagreement[] = [
  {
    about: 'gauges',
    printed:
      'Two families of wire table: unrounded diameters (HyperPhysics, Kuphaldt), and diameters rounded to 0.0001 in (ASTM B258, B3, B33, NEC).',
    taken: 'Unrounded by default; `family: "astm-b258"` for the other. Resistance differs by up to 0.26 % to 21 AWG, 2.9 % at 40 AWG.',
  },
  {
    about: 'gauges',
    printed:
      'ASTM B3-95 Table 1, mm² column: 4, 7, 19, 20, 21 and 28 AWG are one or two units of the last figure off the square of their own diameter.',
    taken: 'π/4 times the diameter squared. Below 30 AWG that column has two figures: use the circular mils.',
  },
  {
    about: 'gauges',
    printed: 'Kuphaldt: 24 AWG weighs 1.233 lb/1000 ft; 1 AWG 253.5; 0 and 4 AWG, and the area of 22 AWG (642.5 cmil), are rounded twice.',
    taken: '1.223 lb/1000 ft and 253.3, from 8.89 g/cm³; 642.45 cmil.',
  },
  {
    about: 'gauges',
    printed:
      'HyperPhysics, area: five figures from diameters rounded on the way, up to 0.02 % off. Its short metric table has 14, 20 and 22 AWG low by 0.1, 0.3 and 0.5 %, and 29 AWG is cut to 81.83 Ω/1000 ft.',
    taken: 'The progression itself.',
  },
  {
    about: 'gauges',
    printed:
      'A much copied chart (us.misumi-ec.com) heads its 20 °C figures 25 °C. Its 65 °C figures are right for that base, cut, within 0.3 %.',
    taken: '20 °C. Believed as 25 °C the column would be 1.9 % low.',
  },
  {
    about: 'gauges',
    printed: 'An old chart (aelinik.online.fr) has 10 AWG at 0.8441 Ω/1000 ft, 8 AWG at 0.6529, 11 AWG at 1.254.',
    taken: '0.9989, 0.6282 and 1.260. A case of bad data.',
  },
  {
    about: 'gauges',
    printed:
      'Appendix H (ohms per mile at 25 °C, 4/0 to 4 AWG) lies 0.05 to 0.36 % from copper of 58 MS/m; its conductivity is not stated.',
    taken: '58 MS/m.',
  },
  {
    about: 'metals',
    printed:
      'Copper: 1.7241e-8 Ω·m (IEC 60028), 1.72e-8 (OpenStax College Physics), 1.68e-8 (OpenStax University Physics), 1.678e-8 (pure: CRC, Matula).',
    taken:
      '1/58 Ω·mm²/m: the standard of wire. Pure copper is 2.7 % better. The US mass resistivity before 1913, 0.15292 Ω·g/m², is superseded.',
  },
  {
    about: 'metals',
    printed: 'Aluminium: 2.650e-8 Ω·m (pure: CRC, OpenStax), 2.826e-8 (conductor grade: IEC 60287).',
    taken: '0.028264 Ω·mm²/m for conductors: 61 % IACS.',
  },
  {
    about: 'metals',
    printed:
      'Gold: 2.214e-8 Ω·m (CRC), 2.44e-8 (OpenStax), 10 % apart. Its coefficient 0.003715 and 0.0034/K; that of aluminium 0.004308 and 0.0039/K.',
    taken: 'Neither: gold is no wire metal here.',
  },
  {
    about: 'metals',
    printed:
      'Copper-clad aluminium: at least 62.9 and 64.4 % IACS, while the same maker’s resistances per gauge are those of 64.6 and 66.6 %; a rule of mixtures gives 64.9 and 66.9 %. Other texts have 63 to 65 % of copper for 10 to 15 %, and 62 to 68 % IACS for any. Trade articles say 1.40 to 1.60 times copper.',
    taken: 'The minimum; of unknown make 1.60 for the worst and 1.40 for the best.',
  },
  {
    about: 'metals',
    printed: 'An interpretation of a Chinese standard (cn.raytron.group) prints 0.136 Ω/km for 0.50 mm clad wire.',
    taken: 'A factor of 1000 low: 136 Ω/km.',
  },
  {
    about: 'metals',
    printed: 'Copper-clad steel is sold as “40 %” and “30 %”; the printed resistances are those of 39.2 and 29.4 % IACS.',
    taken: '0.04397 and 0.05862 Ω·mm²/m, remembered from ASTM B227, which reproduce them to 0.1 %.',
  },
  {
    about: 'metals',
    printed: 'Phosphor bronze C50700: 3.59e-8 Ω·m, 48 % IACS and 21.7 Ω·cmil/ft do not quite agree (21.6).',
    taken: '3.59e-8 Ω·m.',
  },
  {
    about: 'temperature',
    printed:
      'Coefficient of copper: 0.00393/K (IEC 60028), 0.0039 (OpenStax), 0.004041 (pure, CRC by Kuphaldt), 0.0043 at 0 °C (Bird), 0.004 (behind the printed factors of IEC 60228).',
    taken:
      '0.00393/K at 20 °C times the conductivity; 0.00427/K at 0 °C is the same line. A coefficient without its reference temperature means nothing.',
  },
  {
    about: 'temperature',
    printed:
      'IEC 60228 factors to 20 °C, as printed, are 250/(230 + t); that the standard also gives 254.5/(234.5 + t) for copper is remembered.',
    taken: 'The line of 0.00393/K; the factors differ from it by up to 0.4 % at 100 °C.',
  },
  {
    about: 'temperature',
    printed: 'NBS wire tables (memory): 10 AWG at 0 °C 0.9203 Ω/1000 ft.',
    taken: '0.9204.',
  },
  {
    about: 'metric sizes',
    printed: '0.25 and 0.34 mm²: 76 and 53 Ω/km (etechnik-synergie.com), 110 and 55 Ω/km (Leibniz University Hannover wiki).',
    taken: '76 and 53 Ω/km, the limits; 110 would be 59 % above the metal.',
  },
  {
    about: 'metric sizes',
    printed:
      '50 mm²: class 5 (0.386 Ω/km) lies below class 2 (0.387 Ω/km). At 0.22 mm² the limit is 22 % above the metal, against 4 to 16 % elsewhere.',
    taken: 'As printed: a size is a label.',
  },
  {
    about: 'strands',
    printed:
      'Stranded wire chart: 28 and 30 AWG of seven strands repeat solid wire (9.5 and 11 % high); other rows up to 3.6 % off the area of their strands, without any lay.',
    taken: 'Area of the strands, and 2 % for the lay (ASTM B496).',
  },
  {
    about: 'strands',
    printed: 'A supplier table prints 50/0.25 as 2.48 mm².',
    taken: '2.454 mm².',
  },
  {
    about: 'strands',
    printed: '42/0.10 sold as 0.34 mm², with 2 % for the lay, is 53.3 Ω/km; the printed limit is 53.',
    taken: 'Both as they are: the limit leaves this construction no lay.',
  },
  {
    about: 'NEC Table 8',
    printed:
      '10 AWG solid 1.21 Ω/1000 ft (1.215 by resistivity), 12 AWG stranded 1.98 (1.971): rounding, within 0.5 %. The Ω/km column is remembered; 3/0 coated as 0.2610 for 0.2615.',
    taken: 'The Ω/1000 ft column as printed.',
  },
  {
    about: 'worked examples',
    printed: 'OpenStax College Physics m42714: 1 km of 00 AWG at 100 A loses 25.5 W.',
    taken: '2.55 kW; 25.5 is the drop in volts.',
  },
  {
    about: 'worked examples',
    printed: 'OpenStax University Physics m58735 calls 42.40 mm² 0 gauge.',
    taken: '1 AWG.',
  },
  {
    about: 'worked examples',
    printed: 'Copper and iron wires of equal resistance: -17 °C and 2.91 °C in two OpenStax books; iron has 0.0050 and 0.0065/K.',
    taken: 'Both reproduce.',
  },
  {
    about: 'worked examples',
    printed: 'A treatise on building construction has No. 4 wire at 0.259 Ω/1000 ft, temperature unstated.',
    taken: '0.2485 at 20 °C.',
  },
  {
    about: 'worked examples',
    printed: 'Beiser 5.14 answers 209 ft: the whole wire, there and back.',
    taken: 'Lengths here are one way; a loop is two conductors.',
  },
];
