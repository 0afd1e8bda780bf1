/** The slips that people make, in words. @module */

/** A well-known slip. */
export type SlipName = keyof typeof SLIP_WORDS;

/** What each slip is. */
export const SLIP_WORDS = {
  'one-way-length': 'the length one way was taken for the loop: the current goes out and comes back',
  'pair-loop-for-pairset': 'the pair loop, 2 r, was taken for the loop that power sees: r over one pairset, r/2 over two',
  'pairset-for-pair-loop': 'one pairset, r, was taken for the pair loop, 2 r',
  'pairset-for-four-pair': 'one pairset, r, was taken for two pairsets in parallel, r/2',
  'four-pair-for-pairset': 'two pairsets in parallel, r/2, were taken for one, r',
  'cold-resistance': 'the resistance at 20 °C was used, although the conductor is at another temperature',
  'coefficient-from-wrong-temperature':
    'the coefficient was reckoned from the temperature of the known resistance, not from that at which it is stated',
  'connections-left-out': 'the resistance of the connections was left out',
  'feet-for-metres': 'the length in feet was used as if it were in metres',
  'metres-for-feet': 'the length in metres was used as if it were in feet',
  'diameter-for-radius': 'the diameter was taken for the radius: the area of a disc is π d²/4',
  'pse-power-over-pd-voltage': 'the current was taken as the power of the port over the voltage at the device: two ends in one formula',
  'power-at-wrong-end': 'the current was taken as the power of the load over the voltage of the supply: P = V I holds at one end at a time',
  'unstable-root': 'the other root of the quadratic was taken, at which no load settles',
  'class-power-for-pd-power': 'the power of the class at the port was taken for the power at the device',
  'allowed-for-available': 'the power that the class allows the device was taken for what arrives at it: over a better run more does',
  'pd-power-for-class-power': 'the power that the class allows the device was set aside, not the power of the class at the port',
  'run-loss-left-out': 'the power of the devices was added up, without the heat in their runs',
  'reserve-left-out': 'nothing was kept back: the reserve was left out',
  'percent-of-wrong-voltage': 'the drop was set against the voltage at the load, not that of the supply',
  'pair-current-for-conductor-current':
    'the current of a pair was taken for that of each of its two wires: the heat comes out four times as much',
  'ambient-factor-left-out': 'the factor for the air around the bundle was left out: the figure of the table is for air of 30 °C',
  'idle-conductors-left-out': 'conductors without current were left out of the mean: it is over every conductor',
  'radiation-left-out': 'convection alone was counted: a warm surface radiates as well',
  'celsius-for-kelvin': 'radiation was reckoned from temperatures in °C: it goes by the temperature above absolute zero',
  'series-for-parallel': 'resistances side by side were added, as if they were one behind the other',
  'unbalance-of-one': 'the difference was set against one of the two alone, not against their sum',
  'lesser-of-two-limits': 'the lesser of two limits was taken, where the greater applies',
  'even-division': 'the current was divided evenly, although what it divides between is unlike',
  'direct-ratio': 'the larger resistance was given the larger current: side by side, it takes the smaller one',
  'load-for-line': 'the voltage at the load over its current is the resistance of the load, not that of the line',
  'leads-left-in': 'the resistance of the leads was left in the reading',
  'wrong-sign': 'the figure is right, its sign is not',
  'percent-for-fraction': 'the answer is in percent and does not say so: a fraction was asked for',
  'fraction-for-percent': 'the fraction was written with a % sign: it is a hundred times too small',
  'feet-in-answer': 'the answer is in feet and does not say so',
  'source-resistance-left-out': 'the resistance inside the supply was left out: the current flows through it as well',
  'times-thousand': 'the answer is a thousand times too large: milli, or kilo, in its unit',
  'over-thousand': 'the answer is a thousand times too small: milli, or kilo, in its unit',
  'per-100-m-for-per-km': 'a resistance in Ω/100 m was used as if it were in Ω/km',
  'per-km-for-per-100-m': 'a resistance in Ω/km was used as if it were in Ω/100 m',
  'own-tap-only': 'each section was given the current of its own tap alone: it carries that of all the taps beyond as well',
  'middle-for-worst': 'the middle of every range was taken, where the least asks for the worst end of each',
  'rounded-early': 'a step on the way was rounded to two or three figures',
} as const;
