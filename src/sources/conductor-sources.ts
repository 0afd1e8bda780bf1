/** Sources about wire: gauges, metals, stranding. @module */
/** Citations by key. */
export const CONDUCTOR_SOURCES = {
  'astm-b258': {
    title: 'ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid round wires',
    locus: 'diameter progression d = 0.005 in · 92^((36-n)/39)',
    status: 'published',
    note: 'Read in the GNU units definitions and in an encyclopedia article, not in the standard.',
  },
  'astm-b258-rounded': {
    title: 'ASTM B258, Standard nominal diameters and cross-sectional areas of AWG sizes of solid round wires',
    locus: 'tabulated diameters: the progression to the nearest 0.0001 in',
    status: 'published',
    note: 'Read as Table 1 of ASTM B3-95 in a public text copy; B33-04 agrees.',
  },
  'iec-60028': {
    title: 'IEC 60028 (IACS), International standard of resistance for copper',
    locus: 'conductivity 58 MS/m at 20 °C, temperature coefficient 0.00393/K, density 8.89 g/cm³',
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
    note: 'Read for copper-clad aluminium; that copper has the same is remembered. ±1 % of diameter is ±2 % of resistance.',
  },
  'astm-b1': {
    title: 'ASTM B1, Hard-drawn copper wire',
    locus: 'greatest mass resistivity by diameter',
    status: 'memory',
  },
  'astm-b33': {
    title: 'ASTM B33-04, Tin-coated soft or annealed copper wire',
    locus: 'Table 2: greatest mass resistivity by diameter',
    status: 'published',
    note: 'Read in a public text copy.',
  },
  'iec-60889': {
    title: 'IEC 60889, Hard-drawn aluminium wire',
    locus: 'resistivity 0.028264 Ω·mm²/m (61 % IACS), 0.00403/K, density 2.703 g/cm³',
    status: 'memory',
    note: '2.826e-8 Ω·m and 0.00403/K were read in copies of IEC 60287-1-1 Table 1; the rest is remembered.',
  },
  'astm-b233': {
    title: 'ASTM B233, Aluminum 1350 drawing stock for electrical purposes',
    locus: 'greatest resistivity by temper',
    status: 'published',
    note: 'Read in a summary page; the temperature coefficients, of ASTM B193, are remembered.',
  },
  'astm-b566': {
    title: 'ASTM B566, Copper-clad aluminum wire',
    locus: 'conductivity at least 62.9 % (10 % copper) and 64.4 % IACS (15 %), density 3.32 and 3.63 g/cm³',
    status: 'published',
    note: 'Read in a wire maker’s data (mwswire.com); the temperature coefficient 0.00405/K is remembered.',
  },
  'clad-aluminium-unknown': {
    title: 'Copper-clad aluminium of unknown make',
    locus: '1.40 to 1.60 times the resistance of copper of the same size',
    status: 'published',
    note: 'Two trade articles: 1.40 (attock.co.uk), 1.55 to 1.60 (dtechcables.com). 62.9 % IACS gives 1.59.',
  },
  'astm-b227': {
    title: 'ASTM B227, Hard-drawn copper-clad steel wire',
    locus: 'resistivity 0.04397 Ω·mm²/m (the name “40 %”) and 0.05862 Ω·mm²/m (“30 %”)',
    status: 'memory',
    note: 'Both give the resistances of a wire maker’s table (mvasite.mvapower.com) to 0.1 %. No temperature coefficient found.',
  },
  'phosphor-bronze': {
    title: 'Phosphor bronze C50700 wire, a maker’s data',
    locus: '3.59e-8 Ω·m, 48 % IACS, 21.7 Ω·cmil/ft, 8.89 g/cm³',
    status: 'published',
    note: 'lfa-wire.com. Temperature coefficient not stated.',
  },
  'phosphor-bronze-c51000': {
    title: 'Phosphor bronze C51000 (5 % tin), handbook figure',
    locus: '15 % IACS',
    status: 'memory',
  },
  'bronze-contact-wire': {
    title: 'Conductors, electric (baumarktwissen.eu)',
    locus: 'bronze contact wire: 0.04 to 0.05 Ω·mm²/m',
    status: 'published',
  },
  crc: {
    title: 'CRC Handbook of Chemistry and Physics, Electrical resistivity of pure metals',
    locus: 'silver: 1.587e-8 Ω·m at 293 K',
    status: 'published',
    note: 'Read in public text copies; 0.003819/K in Kuphaldt, Lessons in Electric Circuits, from the 78th edition.',
  },
  'iec-60228': {
    title: 'IEC 60228:2004, Conductors of insulated cables',
    locus: 'Tables 1, 2, 3 and 4: greatest resistance at 20 °C of classes 1, 2, 5 and 6',
    status: 'published',
    note: 'Read in four public copies, which agree; class 6 in one, in one column with class 5.',
  },
  'below-iec-60228': {
    title: 'Sizes under 0.5 mm², printed beside DIN VDE 0295 / IEC 60228 / HD 383',
    locus: 'greatest resistance at 20 °C of bunched conductors, 0.05 to 0.34 mm²',
    status: 'published',
    note: 'No IEC 60228 sizes. Read in one extract (etechnik-synergie.com); another has other figures at 0.25 and 0.34 mm².',
  },
  'nec-table-8': {
    title: 'NFPA 70, National Electrical Code, 2026 edition',
    locus: 'Chapter 9 Table 8: uncoated copper and aluminium, Ω/1000 ft at 75 °C',
    status: 'published',
    note: 'Read in a printable chart that transcribes the table.',
  },
  'nec-table-8-coated': {
    title: 'NFPA 70, National Electrical Code',
    locus: 'Chapter 9 Table 8: coated copper, Ω/1000 ft at 75 °C',
    status: 'memory',
  },
} as const;
