/** Repeatable random numbers for the oracles: the same cases on every machine, and a larger sample by asking for more. @module */

/** A source of uniform numbers in [0, 1). */
export type Random = () => number;

/** Counter-based mixing of 32-bit words (the finaliser of MurmurHash3), two words to a 53-bit fraction. */
export function seeded(seed: number): Random {
  let counter = seed | 0;
  const word = (): number => {
    counter = (counter + 0x9e3779b9) | 0;
    let x = counter;
    x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
    x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
    return (x ^ (x >>> 16)) >>> 0;
  };
  return () => ((word() >>> 5) * 67108864 + (word() >>> 6)) / 9007199254740992;
}

/** Every decade from `low` to `high` equally likely. */
export function logUniform(random: Random, low: number, high: number): number {
  const value = Math.exp(Math.log(low) + (Math.log(high) - Math.log(low)) * random());
  return Math.min(Math.max(value, low), high);
}

/** Every number from `low` to `high` equally likely. */
export function uniform(random: Random, low: number, high: number): number {
  return low + (high - low) * random();
}

/** A whole number from `low` to `high`, both included. */
export function whole(random: Random, low: number, high: number): number {
  return low + Math.floor(random() * (high - low + 1));
}

/** One of a list. */
export function pick<T>(random: Random, from: readonly T[]): T {
  return from[whole(random, 0, from.length - 1)] as T;
}
