/** Every document a number comes from, cited by key. No other room imports this at run time. @module */

/** How sure a citation is. */
export type SourceStatus =
  /** A source that a reader can open, and that was read. */
  | 'published'
  /** Well known, not re-read: check it in the document before relying on it. */
  | 'memory'
  /** A fact of the trade for which no document was found. */
  | 'common practice'
  /** Arithmetic on figures of the other kinds, or a rule of this library. */
  | 'derived';

/** One cited document. */
export interface Source {
  readonly title: string;
  /** Edition, table or clause. */
  readonly locus: string;
  readonly status: SourceStatus;
  /** What a reader must know before trusting the figure. */
  readonly note?: string;
}

/** The citations, by key. Tables and results carry the keys. */
export const SOURCES = {
  'astm-b258': {
    title: 'ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid round wires',
    locus: 'diameter progression d = 0.005 in · 92^((36-n)/39)',
    status: 'published',
    note: 'The progression was read in the GNU units definitions and in an encyclopedia article, not in the standard.',
  },
  'iec-60028': {
    title: 'IEC 60028 (IACS), International standard of resistance for copper',
    locus: 'conductivity 58 MS/m at 20 °C, temperature coefficient 0.00393/K',
    status: 'published',
    note: 'Read in secondary copies: GNU units, NDT Resource Center, ASTM B233 tables.',
  },
  'astm-b496': {
    title: 'ASTM B496, Compact round concentric-lay-stranded copper conductors',
    locus: 'standard increment of 2 % in resistance for the lay of the strands',
    status: 'published',
    note: 'Read in a public summary.',
  },
  'astm-b3': {
    title: 'ASTM B3, Soft or annealed copper wire',
    locus: 'diameter tolerance ±1 % from 0.0100 in up, ±0.0001 in below',
    status: 'memory',
    note: 'Read for copper-clad aluminium; the same rule for copper is remembered. ±1 % of diameter is ±2 % of resistance.',
  },
  'data-sheet': {
    title: 'The data sheet of the cable or device',
    locus: 'as stated by the caller',
    status: 'published',
  },
  'tia-568.2-d-cable': {
    title: 'ANSI/TIA-568.2-D, Balanced twisted-pair telecommunications cabling and components',
    locus: 'DC resistance of horizontal cable: at most 9.38 Ω/100 m per conductor at 20 °C',
    status: 'published',
    note: 'Three weak secondary copies agree; the standard itself was not read.',
  },
  'tia-568.2-d-cord': {
    title: 'ANSI/TIA-568.2-D, Balanced twisted-pair telecommunications cabling and components',
    locus: 'DC resistance of 24 and 26 AWG cord cable: at most 14.0 Ω/100 m per conductor at 20 °C',
    status: 'memory',
  },
  'usb-28-awg': {
    title: 'USB 2.0 specification, cable conductor resistance',
    locus: '28 AWG stranded: at most 23.2 Ω/100 m',
    status: 'published',
    note: 'Stands in for the limit of 28 AWG cords until the annex of ANSI/TIA-568.2-D is read; read in a public copy.',
  },
  'tia-568.2-d-connection': {
    title: 'ANSI/TIA-568.2-D, Balanced twisted-pair telecommunications cabling and components',
    locus: 'connecting hardware: at most 200 mΩ per conductor, input to output',
    status: 'memory',
  },
  'tia-568-channel': {
    title: 'ANSI/TIA-568, Commercial building telecommunications cabling',
    locus: 'channel at most 100 m',
    status: 'published',
    note: 'Read in trade publications that restate it.',
  },
  'tia-568-permanent-link': {
    title: 'ANSI/TIA-568, Commercial building telecommunications cabling',
    locus: 'permanent link (installed cable) at most 90 m',
    status: 'published',
    note: 'Read in trade publications that restate it.',
  },
  'tia-568.2-d-loop': {
    title: 'ANSI/TIA-568.2-D, Balanced twisted-pair telecommunications cabling and components',
    locus: 'channel DC loop resistance at most 25 Ω at 20 °C',
    status: 'published',
    note: 'Read in a trade publication that restates it.',
  },
  'iso-11801-channel': {
    title: 'ISO/IEC 11801, Generic cabling for customer premises',
    locus: 'channel at most 100 m',
    status: 'published',
    note: 'Read in trade publications that restate it.',
  },
  'iso-11801-permanent-link': {
    title: 'ISO/IEC 11801, Generic cabling for customer premises',
    locus: 'permanent link at most 90 m',
    status: 'published',
    note: 'Read in trade publications that restate it.',
  },
  'iso-11801-channel-loop': {
    title: 'ISO/IEC 11801-1, Generic cabling for customer premises',
    locus: 'Class D and up: channel DC loop resistance at most 25 Ω at 20 °C',
    status: 'memory',
  },
  'iso-11801-permanent-link-loop': {
    title: 'ISO/IEC 11801-1, Generic cabling for customer premises',
    locus: 'Class D and up: permanent-link DC loop resistance at most 21 Ω at 20 °C',
    status: 'memory',
  },
  'channel-connections': {
    title: 'ANSI/TIA-568 and ISO/IEC 11801, channel model',
    locus: 'at most four connections in a channel',
    status: 'memory',
  },
  'ieee-802.3-class': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'class table: PSE output power and PD input power',
    status: 'published',
    note: 'Read in the Ethernet Alliance overview of 802.3bt and in datasheets that restate the table, not in the standard.',
  },
  'ieee-802.3-pse-voltage': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'PSE output voltage: at least 44 V (Type 1), 50 V (Types 2 and 3), 52 V (Type 4), at most 57 V',
    status: 'published',
    note: 'Read in datasheets and a component distributor’s table.',
  },
  'ieee-802.3-pd-voltage': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'PD input voltage: at least 37 V (classes 0 to 3), 42.5 V (4), 44.3 V (5), 42.5 V (6), 42.9 V (7), 41.1 V (8)',
    status: 'memory',
    note: 'Classes 0 to 4 were read in datasheets, class 8 in a weak source; 5 to 7 are remembered and agree with the arithmetic.',
  },
  'ieee-802.3-channel': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'channel resistance: at most 20 Ω (Type 1), 12.5 Ω per pairset (Types 2 to 4), so 6.25 Ω over both pairsets',
    status: 'published',
    note: '20 and 12.5 Ω were read in datasheets; 6.25 Ω is two pairsets of 12.5 Ω in parallel.',
  },
  collapse: {
    title: 'Maximum power transfer',
    locus: 'a line of resistance R fed at V delivers at most V²/4R',
    status: 'derived',
  },
  'switch-data-sheet': {
    title: 'The data sheet of the switch',
    locus: 'published PoE budget, as stated by the caller',
    status: 'published',
  },
  'supply-ratings': {
    title: 'The ratings of the power supplies',
    locus: 'sum of the ratings less the system load: an estimate, not a published budget',
    status: 'derived',
  },
} as const;

/** A key of the bibliography. */
export type SourceKey = keyof typeof SOURCES;
