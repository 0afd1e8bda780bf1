/** Remedies in words that a person can carry out; every figure is already on the safe side. @module */
import type { Remedy, RemedyName, RemedyStep } from '../plan/remedy.ts';
import { requireArray, requireObject, requireOneOf } from '../quantity/guards.ts';
import { amount, filled } from './amount.ts';

/**
 * What to do, and how many decimals its figure has: it is rounded down, for more is never safer.
 *
 * @example
 * REMEDY_WORDS['paralleled-cores'].words; // => 'Join {count} cores in parallel for each way'
 */
export const REMEDY_WORDS: Readonly<Record<RemedyName, { readonly words: string; readonly decimals?: number }>> = {
  'higher-port-type': { words: 'Move it to a Type {count} port, in place of Type {before}' },
  'four-pair': { words: 'Power it over {count} pairs, if both the port and the device support that' },
  'thicker-cords': { words: 'Use {to} cords in place of {from}' },
  'shorter-cords': { words: 'Shorten the cords from {from} to at most {to} in all', decimals: 1 },
  'fewer-connections': { words: 'Make do with {count} connections in place of {before}' },
  'cooler-route': { words: 'Keep the installed cable at {to} or cooler, in place of {from}', decimals: 0 },
  'better-connections': {
    words: 'Re-make or replace the connections so that each is at most {to} per conductor, in place of {from}',
    decimals: 2,
  },
  'thicker-cable': { words: 'Replace the installed cable by {use} ({to})' },
  'replace-part': { words: 'Replace at least {to} of the installed {from} by {use}' },
  'paralleled-cores': { words: 'Join {count} cores in parallel for each way' },
  'higher-supply': {
    words: 'Use a supply that stays at {to} or above, in place of {from}; the device and its neighbours must bear it',
  },
  'switch-between': { words: 'Put a switch with its own power about {to} along the {from}' },
  'thicker-conductor': { words: 'Use {to} copper or thicker, in place of {from}' },
  'shorter-run': { words: 'Shorten the installed cable from {from} to at most {to}', decimals: 1 },
};

/**
 * A remedy as a sentence, without its full stop.
 *
 * @param remedy - One of the remedies of a run.
 * @returns What to do, and what is left to doubt then; figures rounded to the safe side.
 * @throws {@link InputError} If it is no remedy.
 * @example
 * describeRemedy({ remedy: 'shorter-run', from: 94, to: 90, unit: 'm', verdict: { power: 'pass', cabling: 'pass', worst: 'pass' } });
 * // => 'Shorten the installed cable from 94 m to at most 90 m'
 */
export function describeRemedy(remedy: Remedy): string {
  requireObject(remedy, 'remedy', 'a remedy of a run');
  const { also = [], verdict } = remedy;
  requireArray(also, 'remedy.also', 'a list of changes');
  requireObject(verdict, 'remedy.verdict', 'the verdicts that the run then has');
  const steps = [change(remedy), ...also.map((step) => lowered(change(step)))];
  const verdicts = [verdict.power, verdict.cabling];
  const narrow = verdicts.includes('marginal') ? ' (then close to a limit)' : '';
  const doubt = verdicts.includes('uncertain') ? ' (then still uncertain)' : '';
  return `${steps.join('; and ')}${doubt || narrow}`;
}

function change({ remedy, from, to, unit, use = '' }: RemedyStep): string {
  requireOneOf(remedy, Object.keys(REMEDY_WORDS), 'remedy.remedy');
  const { words, decimals } = REMEDY_WORDS[remedy];
  return filled(words, {
    from: amount(from, unit),
    to: decimals === undefined ? amount(to, unit) : down(to, unit, decimals),
    before: from,
    count: to,
    use,
  });
}

/** Rounded down, whatever finer figure arrives. */
function down(value: number, unit: string, decimals: number): string {
  const lower = Number(value.toFixed(decimals)) > value ? value - 0.5 * 10 ** -decimals : value;
  return amount(lower, unit, decimals);
}

function lowered(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
