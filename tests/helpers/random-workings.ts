/** Random questions for every formula sheet, the core's answer to each, and what people get wrong. @module */
import type { WorkingInputs, WorkingName } from '../../src/working/index.ts';
import type { Random } from './random.ts';
import { circuits } from './workings/circuits.ts';
import { conductors } from './workings/conductors.ts';
import { field } from './workings/field.ts';
import { heat } from './workings/heat.ts';
import type { Asked } from './workings/kit.ts';
import { networks } from './workings/networks.ts';
import { plans } from './workings/plans.ts';
import { powered } from './workings/powered.ts';
import { ranges } from './workings/ranges.ts';

/** Of each sheet. */
export const workings: { readonly [Name in WorkingName]: Asked<Name> } = {
  ...conductors,
  ...circuits,
  ...networks,
  ...powered,
  ...plans,
  ...heat,
  ...solving,
  ...field,
  ...ranges,
};

import { solving } from './workings/solving.ts';

/** Of each sheet. */

/** Every name of a sheet. */
export const NAMES: readonly WorkingName[] = Object.keys(workings) as WorkingName[];

/** A random question; name and input are typed together or not at all. */
export function questionOf(name: WorkingName, random: Random): never {
  return workings[name].question(random) as never;
}

/** A random question and the answer to it. */
export function asked(name: WorkingName, random: Random): { readonly input: never; readonly answer: unknown } {
  const input = questionOf(name, random);
  return { input, answer: (workings[name].answer as (of: WorkingInputs[WorkingName]) => unknown)(input) };
}
