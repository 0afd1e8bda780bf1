/** Sources about IEEE 802.3 power and switches. @module */
/** Citations by key. */
export const ETHERNET_SOURCES = {
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
