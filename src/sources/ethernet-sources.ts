/** Sources about IEEE 802.3 power and switches. @module */
/** Citations by key. */
export const ETHERNET_SOURCES = {
  'ieee-802.3-class': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'class table: PSE output power and PD input power',
    status: 'published',
    note: 'Read in the Ethernet Alliance overview of 802.3bt and in datasheets, not in the standard.',
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
    note: 'Classes 0 to 4 were read in datasheets, 8 in a weak source; 5 to 7 are remembered and agree with the arithmetic.',
  },
  'ieee-802.3-cabling': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'cabling: Category 3 and up (Class C) for Type 1, Category 5 and up (Class D) for Types 2 to 4',
    status: 'published',
    note: 'Types 1 and 2 read in a datasheet that restates it; Types 3 and 4 are remembered.',
  },
  'ieee-802.3-channel': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'channel resistance: at most 20 Ω (Type 1), 12.5 Ω per pairset (Types 2 to 4), so 6.25 Ω over both pairsets',
    status: 'published',
    note: '20 and 12.5 Ω were read in datasheets; 6.25 Ω is two pairsets in parallel.',
  },
  'ieee-802.3-power-later': {
    title: 'IEEE Std 802.3at and 802.3bt, as restated by the Ethernet Alliance (2018) and TI SLVS885G',
    locus: 'classes 0 and 3: 13.0 W at the device, where 802.3af prints 12.95 W',
    status: 'published',
    note: 'One limit, printed twice: 12.95 W is what 15.4 W at 44 V deliver over 20 Ω, 13.0 W is that rounded up.',
  },
  'ieee-802.3-peak': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'PD peak operating power by class; at 5 % duty for at most 50 ms',
    status: 'memory',
    note: 'The 5 % duty was read in an excerpt of 802.3cq-2020; the rest was not.',
  },
  'ieee-802.3-dual-signature': {
    title: 'IEEE Std 802.3-2022, clause 145',
    locus: 'dual-signature classes 1 to 5, per pairset',
    status: 'memory',
    note: 'That each pairset has a class of its own, 1 to 5, was read; the powers were not. 45 W at 52 V over 12.5 Ω leave 35.64 W.',
  },
  'ieee-802.3-current': {
    title: 'IEEE Std 802.3-2022, Tables 33-1, 145-1 and 145-16',
    locus: 'continuous current of a pairset: 0.35 A (Type 1), 0.6 A (Types 2 and 3), 0.96 A (Type 4); 1.92 A and 99.9 W in all (Type 4)',
    status: 'published',
    note: 'Read in an application note, a catalogue page and a header of the Linux kernel.',
  },
  'ieee-802.3-unbalanced-current': {
    title: 'IEEE Std 802.3-2022, clause 145',
    locus: 'highest current of a pairset with pair-to-pair unbalance: 0.55, 0.682, 0.781, 0.932 A (classes 5 to 8)',
    status: 'memory',
    note: 'Remembered with doubt: nothing is judged by them.',
  },
  'ieee-802.3-turn-on': {
    title: 'IEEE Std 802.3-2022, Table 33-18',
    locus: 'a device turns on at or below 42 V rising, off at or above 30 V falling; at most 57 V at its input',
    status: 'published',
    note: 'Read in TI SLVSB97C and SLVS885G for Types 1 and 2; taken to hold for Types 3 and 4.',
  },
  'ieee-802.3-start-up': {
    title: 'IEEE Std 802.3-2022, 33.3.7',
    locus: 'at most 13 W during the first 80 ms after power-up, whatever class is granted later',
    status: 'published',
    note: 'Read in TI SLVS885G for Type 2; taken to hold for Types 3 and 4.',
  },
  'ieee-802.3-signalling': {
    title: 'IEEE Std 802.3-2022, clauses 33 and 145',
    locus: 'detection, classification, maintain power signature, Autoclass',
    status: 'published',
    note: 'Read in datasheets of TI, Linear Technology and Microchip; the windows of the port and classes 5 to 8 in a weak source.',
  },
  'ieee-802.3-unbalance': {
    title: 'IEEE Std 802.3-2022, 33.1.4.2 and 145.1.3',
    locus: 'within a pair 3 % or 0.2 Ω, between pairs 7 % or 0.1 Ω, whichever is more',
    status: 'memory',
    note: '(Rmax - Rmin) / (Rmax + Rmin) was read in a book preview; the four figures were not.',
  },
  'iso-iec-29125': {
    title: 'ISO/IEC TS 29125:2017/Amd 1, scope',
    locus: 'current of one conductor covered by the document: 0.5 A with four powered pairs',
    status: 'published',
  },
  'ieee-802.3-lldp': {
    title: 'IEEE Std 802.3-2022, clause 79, and IEEE Std 802.3.2-2025',
    locus: 'Power via MDI: requested and allocated power in 0.1 W at the input of the device; fields and their values',
    status: 'published',
    note: 'Read in the IEEE YANG modules, an IEEE MIB module and a packet dissector, not in the standard.',
  },
  'ieee-802.3-lldp-limits': {
    title: 'IEEE Std 802.3-2022, 33.6.3, 79.3.2 and 145.5.3',
    locus: 'largest requested value by class in 0.1 W, and the range of the fields',
    status: 'memory',
    note: 'Each is the class power of the device rounded up to 0.1 W.',
  },
  'rfc-3621': {
    title: 'RFC 3621, Power Ethernet MIB (2003)',
    locus: 'enumerations of ports and of the main power supply',
    status: 'published',
    note: 'No value exists for classes 5 to 8, nor for four-pair power.',
  },
  'measured-power': {
    title: 'Power measured at the port',
    locus: 'as stated by the caller: it holds for the moment at which it was read',
    status: 'published',
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
