/** How large a random sample is: a part of it in the daily run, the whole before a change goes in. @module */

const WHOLE = process.env['FAREND_SAMPLES'] === 'whole';

/** The size of a sample: `whole` where the environment says `FAREND_SAMPLES=whole`, as `.ci/run` does, else `sampled`. */
export function sampleSize(whole: number, sampled: number): number {
  return WHOLE ? whole : sampled;
}
