/** The two kinds of run, each as a list of checks. @module */
import type { Check } from '../circuit/check.ts';
import { checkPoweredRun, type PoweredRunInput } from './powered-run.ts';
import { checkTwoWireRun, type TwoWireRunInput } from './two-wire-run.ts';

/** A run to a powered device is told from a two-wire one by its installed cable. @internal */
export function isPowered<P extends object, T extends object>(input: P | T): input is P {
  return typeof input === 'object' && input !== null && ('installed' in input || 'poeClass' in input);
}

/** @internal */
export function poweredChecks(input: PoweredRunInput): readonly Check[] {
  const { powerChecks, cablingChecks } = checkPoweredRun(input);
  return [...powerChecks, ...cablingChecks];
}

/** Verdicts by their margins: that one supply figure leaves a pass uncertain is not what is asked here. @internal */
export function twoWireChecks(input: TwoWireRunInput): readonly Check[] {
  return checkTwoWireRun(input).checks;
}
