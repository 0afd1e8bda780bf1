/** An input with its cables looked up: the one place of the working where a name becomes a cable. @module */
import { type Cable, type CableName, cable } from '../../cable/index.ts';
import type { CableOrName } from '../../cable/read-cable.ts';

/** What an input is once every name of a cable in it stands for the cable. */
export type WithCables<Input> = Input extends CableOrName
  ? Cable
  : Input extends number
    ? Input
    : Input extends object
      ? { readonly [Key in keyof Input]: WithCables<Input[Key]> }
      : Input;

/** Looks the cables up; an input that its guard has let pass. */
export function withCables<Input>(input: Input, key?: string): WithCables<Input> {
  const found = (): unknown => {
    if (Array.isArray(input)) return input.map((item: unknown) => withCables(item, key));
    if (typeof input !== 'object' || input === null) return typeof input === 'string' && isCable(key) ? cable(input as CableName) : input;
    return Object.fromEntries(Object.entries(input).map(([inner, value]) => [inner, withCables<unknown>(value, inner)]));
  };
  return found() as WithCables<Input>;
}

function isCable(key: string | undefined): boolean {
  return key === 'cable' || key === 'candidates';
}
