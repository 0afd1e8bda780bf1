/** The two kinds of run, each as a list of checks. @module */
import type { Check } from '../limits/check.ts';
import { InputError } from '../quantity/input-error.ts';
import { checkPoweredRun, type PoweredRunInput } from './powered-run.ts';
import { checkTwoWireRun, type TwoWireRunInput, type UnequalTwoWireRunInput } from './two-wire-run.ts';

/** A run to a powered device is told from a two-wire one by its class; one that has both is neither. @internal */
export function isPowered<P extends object, T extends object>(input: P | T): input is P {
  const { poeClass, installed, cable, conductor, out } = input as Record<string, unknown>;
  const powered = poeClass !== undefined || installed !== undefined || cable !== undefined;
  if (powered && (conductor !== undefined || out !== undefined)) {
    throw new InputError(
      'conflict',
      conductor === undefined ? 'out' : 'conductor',
      'nothing beside poeClass: a run is powered by a port, or two-wire',
      conductor ?? out,
    );
  }
  return powered;
}

/** @internal */
export function poweredChecks(input: PoweredRunInput): readonly Check[] {
  const { powerChecks, cablingChecks } = checkPoweredRun(input);
  return [...powerChecks, ...cablingChecks];
}

/** Verdicts by their margins: that one supply figure leaves a pass uncertain is not what is asked here. @internal */
export function twoWireChecks(input: TwoWireRunInput | UnequalTwoWireRunInput): readonly Check[] {
  return checkTwoWireRun(input).checks;
}
