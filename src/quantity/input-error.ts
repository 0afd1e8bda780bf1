/** The one error this library throws: an argument that has no meaning for the formula. @module */

/** What is wrong with an argument: its type, its size, its name, its absence, or its company. */
export type InputErrorCode = 'type' | 'range' | 'unknown' | 'missing' | 'conflict' | 'unreadable';

/** The plain-data form of an {@link InputError}, as `JSON.stringify` writes it. */
export interface InputErrorJson {
  readonly name: 'InputError';
  readonly code: InputErrorCode;
  readonly parameter: string;
  readonly expected: string;
  readonly received: string;
  readonly message: string;
}

/**
 * An argument lies outside the domain where the formula has a meaning.
 *
 * Wrong inputs throw this; a physical "no" (a load that a line cannot carry) is a result, not an error.
 *
 * @example
 * let message = '';
 * try { awg(41); } catch (error) { if (isInputError(error)) message = error.message; }
 * message; // => "size: expected a whole number from -3 to 40, or '1/0' to '4/0', received 41"
 */
export class InputError extends RangeError {
  override readonly name: 'InputError' = 'InputError' as const;
  /** The kind of mistake. */
  declare readonly code: InputErrorCode;
  /** Path of the argument, as in `segments[3].length`. */
  declare readonly parameter: string;
  /** What would have been accepted, in words. */
  declare readonly expected: string;
  /** What arrived, untouched. */
  declare readonly received: unknown;

  constructor(code: InputErrorCode, parameter: string, expected: string, received: unknown) {
    super(`${parameter}: expected ${expected}, received ${describe(received)}`);
    this.code = code;
    this.parameter = parameter;
    this.expected = expected;
    this.received = received;
  }

  /** The same facts as plain data: a bare Error turns into `{}` in JSON. */
  toJSON(): InputErrorJson {
    return { ...this, received: describe(this.received), message: this.message };
  }
}

/**
 * Tells an {@link InputError} from any other thrown value, also when it comes from another copy of the library.
 *
 * @param error - Anything that was caught.
 * @returns Whether it is an InputError.
 * @example
 * isInputError(new Error('no')); // => false
 */
export function isInputError(error: unknown): error is InputError {
  // By name, not by class: a second copy of the library has a class of its own.
  return error instanceof Error && error.name === 'InputError' && 'parameter' in error;
}

/** The argument as a person would write it; never throws, whatever arrives. @internal */
export function describe(value: unknown): string {
  if (typeof value === 'string') return JSON.stringify(value.length > 80 ? `${value.slice(0, 77)}...` : value);
  if (typeof value === 'bigint') return `${value}n`;
  if (typeof value === 'function') return 'a function';
  // `String(value)` throws on an object without a prototype.
  if (typeof value === 'object' && value !== null) return Array.isArray(value) ? 'an array' : 'an object';
  return String(value);
}
