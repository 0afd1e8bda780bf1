/** The slips that people make, in words. @module */

/** A well-known slip. */
export type SlipName = keyof typeof SLIP_WORDS;

/** What each slip is. */
export const SLIP_WORDS = {
  'one-way-length': 'the length one way was taken for the loop: the current goes out and comes back',
  'pair-loop-for-pairset': 'the pair loop, 2 r, was taken for what power over one pairset sees, r',
  'pairset-for-pair-loop': 'one pairset, r, was taken for the pair loop, 2 r',
  'pairset-for-four-pair': 'one pairset, r, was taken for two pairsets in parallel, r/2',
  'four-pair-for-pairset': 'two pairsets in parallel, r/2, were taken for one, r',
  'cold-resistance': 'the resistance at 20 °C was used, although the conductor is at another temperature',
  'feet-for-metres': 'the length in feet was used as if it were in metres',
  'metres-for-feet': 'the length in metres was used as if it were in feet',
  'diameter-for-radius': 'the diameter was taken for the radius: the area of a disc is π d²/4',
  'pse-power-over-pd-voltage': 'the current was taken as the power of the port over the voltage at the device: two ends in one formula',
  'power-at-wrong-end': 'the current was taken as the power of the load over the voltage of the supply: P = V I holds at one end at a time',
  'unstable-root': 'the other root of the quadratic was taken, at which no load settles',
  'class-power-for-pd-power': 'the power of the class at the port was taken for the power at the device',
  'percent-of-wrong-voltage': 'the drop was set against the voltage at the load, not that of the supply',
  'source-resistance-left-out': 'the resistance inside the supply was left out: the current flows through it as well',
  'times-thousand': 'the answer is a thousand times too large: milli, or kilo, in its unit',
  'over-thousand': 'the answer is a thousand times too small: milli, or kilo, in its unit',
  'per-100-m-for-per-km': 'a resistance in Ω/100 m was used as if it were in Ω/km',
  'per-km-for-per-100-m': 'a resistance in Ω/km was used as if it were in Ω/100 m',
  'rounded-early': 'a step on the way was rounded to two or three figures',
} as const;
