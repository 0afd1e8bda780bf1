/** Sources about laws of circuits, and figures the caller brings. @module */
/** Citations by key. */
export const GENERAL_SOURCES = {
  'data-sheet': {
    title: 'The data sheet of the cable or device',
    locus: 'as stated by the caller',
    status: 'published',
  },
  'library-default': {
    title: 'A default of this library',
    locus: 'what a call takes for what its caller leaves out; listed among the assumptions of its result',
    status: 'derived',
  },
  collapse: {
    title: 'Maximum power transfer',
    locus: 'a line of resistance R fed at V delivers at most V²/4R',
    status: 'derived',
  },
  'circuit-laws': {
    title: 'OpenStax, University Physics, volume 2',
    locus:
      'Current and resistance; Direct-current circuits: V = I R, P = V I = I² R, R = ρ L/A, R = R0 (1 + α (T - T0)), series and parallel',
    status: 'published',
  },
  'constant-power': {
    title: 'A load of constant power behind a resistance',
    locus: 'V I = P + I² R, a quadratic in I; the load settles at the root with the smaller current',
    status: 'derived',
  },
  'network-newton': {
    title: 'A network of constant powers, by tangents',
    locus: 'P/V about a voltage W is 2 P/W - (P/W²) V; repeated from the no-load side it leads to the stable voltages, or nowhere',
    status: 'derived',
  },
  'bounds-by-ends': {
    title: 'Bounds at the ends of ranges',
    locus: 'a figure that only rises, or only falls, with each of its inputs is least and most where each is at one of its ends',
    status: 'derived',
  },
  'three-loops': {
    title: 'The three loops of a run',
    locus: 'r one wire, end to end: a pair loop is 2 r, one pairset r/2 out and r/2 back, two pairsets half of that',
    status: 'derived',
  },
} as const;
