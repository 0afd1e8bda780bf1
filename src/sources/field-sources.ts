/** Sources about readings taken in the field. @module */
/** Citations by key. */
export const FIELD_SOURCES = {
  'field-loop-reading': {
    title: 'A connector maker on loop resistance',
    locus: 'the pair is shorted at the far end; the reading is the sum of both conductors',
    status: 'published',
    note: 'Also that worn, dirty or badly terminated contacts are the usual reason of high readings.',
  },
  'field-tester-accuracy': {
    title: 'IEC 61935-1, field testers of balanced cabling',
    locus: 'DC loop resistance within 1 % and 1 Ω',
    status: 'memory',
  },
  'pair-twist': {
    title: 'Twist of the pairs of data cable',
    locus: 'a pair is up to 4 % longer than its cable',
    status: 'common practice',
  },
  'field-practice': {
    title: 'What a meter shows of leads and open pairs',
    locus: 'leads that were not nulled add up to 1 Ω; no shorted pair of a building reads above 1 kΩ',
    status: 'common practice',
  },
} as const;
