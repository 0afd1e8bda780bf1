/** Either kind of run, and what is found of it while one quantity is left open. @module */
import type { Check } from '../limits/check.ts';
import { type AnyFields, readInput } from '../quantity/fields.ts';
import { requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { POWERED_RUN_FIELDS, type PoweredFacts } from './powered-input.ts';
import { judgePoweredRun } from './powered-run.ts';
import { TWO_WIRE_RUN_FIELDS, type TwoWireRunInput } from './two-wire-input.ts';
import { judgeTwoWireRun } from './two-wire-run.ts';

/** A run to a powered device is told from a two-wire one by its class; one that has both is neither. @internal */
export function isPowered<P extends object, T extends object>(input: P | T): input is P {
  requireObject(input, 'input', 'a run to a powered device, or a two-wire run');
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

/** A run of which some keys are left open, others belong to the question. */
interface Open {
  /** Keys of a powered run, and of a two-wire run, that are asked for. */
  readonly powered?: readonly (keyof PoweredFacts)[];
  readonly twoWire?: readonly string[];
  /** Fields of the question itself. */
  readonly others?: AnyFields;
}

/** The run that was read, and its checks once what is open is filled in. @internal */
export type OpenRun<Others> =
  | {
      readonly kind: 'powered';
      readonly run: PoweredFacts & Others;
      readonly checksWith: (change: Partial<PoweredFacts>) => readonly Check[];
    }
  | {
      readonly kind: 'two-wire';
      readonly run: TwoWireRunInput & Others;
      readonly checksWith: (change: Partial<TwoWireRunInput>) => readonly Check[];
    };

/** Reads either kind of run; its verdicts go by margins: a pass that is uncertain for its one supply figure counts as a pass. @internal */
export function openRun<Others>(input: object, { powered = [], twoWire = [], others = {} }: Open): OpenRun<Others> {
  if (isPowered(input)) {
    const run = read<PoweredFacts & Others>({ ...without(POWERED_RUN_FIELDS, powered), ...others }, input);
    return { kind: 'powered', run, checksWith: (change) => judgePoweredRun({ ...run, ...change }).checks };
  }
  const run = read<TwoWireRunInput & Others>({ ...without(TWO_WIRE_RUN_FIELDS, twoWire), ...others }, input);
  return { kind: 'two-wire', run, checksWith: (change) => judgeTwoWireRun({ ...run, ...change }).checks };
}

/** The fields but for some keys. @internal */
export function without(fields: object, keys: readonly string[]): AnyFields {
  return Object.fromEntries(Object.entries(fields).filter(([key]) => !keys.includes(key)));
}

function read<Made>(fields: AnyFields, input: object): Made {
  return readInput(fields as never, input as never) as Made;
}
