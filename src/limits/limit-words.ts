/** What is said of each limit: the words that stand beside its record. @module */
import { LIMITS, type LimitName } from './all.ts';
import type { LimitWords } from './limit.ts';
import * as records from './records.ts';

/** Records of a name of their own: `PSE_VOLTAGE_TOP` is the other end of a limit. */
type Listed = Exclude<keyof typeof records, `${string}_WORDS` | 'PSE_VOLTAGE_TOP'>;

/** The words of `PD_POWER` are `PD_POWER_WORDS`. A limit without words does not compile. @internal */
export const LIMIT_WORDS: Readonly<Record<LimitName, LimitWords>> = /* @__PURE__ */ (() => {
  const words: Readonly<Record<`${Listed}_WORDS`, LimitWords>> = records;
  const wordsOf = (name: LimitName) => words[`${name.toUpperCase().replaceAll('-', '_') as Listed}_WORDS`];
  return Object.fromEntries(LIMITS.map(({ name }) => [name, wordsOf(name)])) as Record<LimitName, LimitWords>;
})();
