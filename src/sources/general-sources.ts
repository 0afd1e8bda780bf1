/** Sources about laws of circuits, and figures the caller brings. @module */
/** Citations by key. */
export const GENERAL_SOURCES = {
  'data-sheet': {
    title: 'The data sheet of the cable or device',
    locus: 'as stated by the caller',
    status: 'published',
  },
  collapse: {
    title: 'Maximum power transfer',
    locus: 'a line of resistance R fed at V delivers at most V²/4R',
    status: 'derived',
  },
} as const;
