/** Sources about cables, channels and connecting hardware. @module */
/** Citations by key. */
export const CABLING_SOURCES = {
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
} as const;
