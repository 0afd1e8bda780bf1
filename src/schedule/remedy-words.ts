/** Remedies in words that a person can carry out; every figure is already on the safe side. @module */
import type { Remedy } from '../plan/remedy.ts';
import { amount } from './amount.ts';

/** @internal */
export function remedyInWords({ remedy, from, to, use, also = [], verdict }: Remedy): string {
  const narrow = verdict.power === 'marginal' || verdict.cabling === 'marginal' ? ' (then close to a limit)' : '';
  const doubt = verdict.power === 'uncertain' || verdict.cabling === 'uncertain' ? ' (then still uncertain)' : '';
  const steps = [change(remedy, from, to, use), ...also.map((step) => lowered(change(step.remedy, step.from, step.to, step.use)))];
  return `${steps.join('; and ')}${doubt || narrow}`;
}

function change(remedy: Remedy['remedy'], from: number, to: number, use = ''): string {
  switch (remedy) {
    case 'higher-port-type':
      return `Move it to a Type ${to} port, in place of Type ${from}`;
    case 'four-pair':
      return `Power it over ${to} pairs, if both the port and the device support that`;
    case 'thicker-cords':
      return `Use ${to} AWG cords in place of ${from} AWG`;
    case 'shorter-cords':
      return `Shorten the cords from ${amount(from, 'm')} to at most ${down(to, 'm', 1)} in all`;
    case 'fewer-connections':
      return `Make do with ${to} connections in place of ${from}`;
    case 'cooler-route':
      return `Keep the installed cable at ${down(to, '°C', 0)} or cooler, in place of ${amount(from, '°C')}`;
    case 'better-connections':
      return `Re-make or replace the connections so that each is at most ${down(to, 'Ω', 2)} per conductor, in place of ${amount(from, 'Ω')}`;
    case 'thicker-cable':
      return `Replace the installed cable by ${use} (${to} AWG)`;
    case 'replace-part':
      return `Replace at least ${amount(to, 'm')} of the installed ${amount(from, 'm')} by ${use}`;
    case 'paralleled-cores':
      return `Join ${to} cores in parallel for each way`;
    case 'higher-supply':
      return `Use a supply that stays at ${amount(to, 'V')} or above, in place of ${amount(from, 'V')}; the device and its neighbours must bear it`;
    case 'switch-between':
      return `Put a switch with its own power about ${amount(to, 'm')} along the ${amount(from, 'm')}`;
    case 'thicker-conductor':
      return `Use ${to} AWG copper or thicker, in place of ${from} AWG`;
    case 'shorter-run':
      return `Shorten the installed cable from ${amount(from, 'm')} to at most ${down(to, 'm', 1)}`;
  }
}

/** Rounded down, whatever finer figure arrives: more is never safer. */
function down(value: number, unit: string, decimals: number): string {
  const lower = Number(value.toFixed(decimals)) > value ? value - 0.5 * 10 ** -decimals : value;
  return amount(lower, unit, decimals);
}

function lowered(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}
