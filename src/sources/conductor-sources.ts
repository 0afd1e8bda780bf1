/** Sources about wire: gauges, metals, stranding. @module */
/** Citations by key. */
export const CONDUCTOR_SOURCES = {
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
} as const;
