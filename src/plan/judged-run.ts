/** The one shape of a judged run, and the one place where checks and doubts become verdicts. @module */
import type { Check, Deciding, Draft } from '../limits/check.ts';
import type { Aspect } from '../limits/limit.ts';
import { type Verdict, worse } from '../limits/verdict.ts';
import type { Assumption } from '../quantity/fields.ts';
import { governingCheck } from './governing-check.ts';

/** Something that is given and not understood, or that can be read in more than one way: no verdict it bears on is better than `uncertain`. */
export interface Doubt {
  readonly code: DoubtCode;
  /** Path of the input that would settle it. */
  readonly parameter: string;
  /** The verdict it bears on. */
  readonly aspect: Aspect;
}

/** What a doubt is about. */
export type DoubtCode =
  /** One figure where there is a range. */
  | 'one-figure'
  /** Nothing is stated that the result could be held against. */
  | 'not-stated'
  /** A figure that means one thing or another. */
  | 'two-readings';

/** The verdicts of a run: one for each aspect that was judged, and the worst of them. */
export interface RunVerdict {
  readonly power: Verdict;
  /** Absent where no cabling standard was applied. */
  readonly cabling?: Verdict;
  readonly heat?: Verdict;
  readonly measured?: Verdict;
  readonly worst: Verdict;
}

/** What every judged run has. */
export interface JudgedRun {
  /** As the input has it. */
  readonly label?: string;
  readonly verdict: RunVerdict;
  /** Every check; `aspect` says which verdict it belongs to. */
  readonly checks: readonly Check[];
  /** The check that is closest to its limit, or furthest beyond it; absent where there is no limit at all. */
  readonly governing?: Check;
  /** What was taken for what the caller left out. */
  readonly assumptions: readonly Assumption[];
  /** What a person must know before building it. */
  readonly cautions: readonly string[];
  readonly doubts: readonly Doubt[];
  /** The inputs any one of which would settle an `uncertain` verdict. */
  readonly deciding?: readonly Deciding[];
}

/** What judging adds to the checks. @internal */
export type Judgement = Pick<JudgedRun, 'verdict' | 'deciding'> & { governing?: Check };

/** Verdicts by the checks and the doubts: a fail stays a fail, and nothing else is better than uncertain while a doubt bears on it. @internal */
export function judgement(checks: readonly Check[], doubts: readonly Doubt[], isCabling: boolean): Judgement {
  const power = verdictOn('power', checks, doubts);
  const judged: Draft<Judgement> = { verdict: { power, worst: power } };
  if (isCabling) {
    const cabling = verdictOn('cabling', checks, doubts);
    judged.verdict = { power, cabling, worst: worse(power, cabling) };
  }
  if (checks.length > 0) judged.governing = governingCheck(checks);
  if (judged.verdict.worst === 'uncertain') {
    const settling = [...checks.flatMap(({ deciding = [] }) => deciding), ...doubts].map(({ parameter }) => parameter);
    judged.deciding = [...new Set(settling)].map((parameter) => ({ parameter }));
  }
  return judged;
}

function verdictOn(aspect: Aspect, checks: readonly Check[], doubts: readonly Doubt[]): Verdict {
  let worst: Verdict = doubts.some((doubt) => doubt.aspect === aspect) ? 'uncertain' : 'pass';
  for (const check of checks) if (check.aspect === aspect) worst = worse(worst, check.verdict);
  return worst;
}
