/** The one error this library throws: an argument that has no meaning for the formula. @module */

/** What is wrong with an argument: its type, its size, its name, its absence, or its company. */
export type InputErrorCode = 'type' | 'range' | 'unknown' | 'missing' | 'conflict' | 'unreadable';

/** The plain-data form of an {@link InputError}, as `JSON.stringify` writes it. */
export interface InputErrorJson {
  readonly name: 'InputError';
  readonly code: InputErrorCode;
  readonly parameter: string;
  readonly expected: string;
  /** What arrived: a text or a finite number as it was, anything else in words. */
  readonly received: string | number;
  readonly message: string;
}

/**
 * An argument lies outside the domain where the formula has a meaning.
 *
 * Wrong inputs throw this; a physical "no" (a load that a line cannot carry) is a result, not an error. `structuredClone`
 * keeps the message and the stack of an error and nothing else: to a worker send `toJSON()`, and rebuild it there.
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

  constructor(
    code: InputErrorCode,
    parameter: string,
    expected: string,
    received: unknown,
    message: string = `${parameter}: expected ${expected}, received ${describe(received)}`,
  ) {
    super(message);
    this.code = code;
    this.parameter = parameter;
    this.expected = expected;
    this.received = received;
  }

  /** The same facts as plain data: a bare Error turns into `{}` in JSON. */
  toJSON(): InputErrorJson {
    const { received, message } = this;
    return {
      ...this,
      received: typeof received === 'string' || Number.isFinite(received) ? (received as string | number) : describe(received),
      message,
    };
  }

  /**
   * The error again, from its plain data.
   *
   * @param json - What `toJSON` made, perhaps on another machine.
   * @returns An InputError with the same facts; what was received is as plain as the data.
   * @example
   * const sent = JSON.stringify(new InputError('range', 'length', 'a number from 0', -1));
   * InputError.fromJSON(JSON.parse(sent)).message; // => 'length: expected a number from 0, received -1'
   */
  static fromJSON(json: InputErrorJson): InputError {
    const { code, parameter, expected, received, message } = json;
    return new InputError(code, parameter, expected, received, message);
  }
}

/**
 * Tells an {@link InputError} from any other thrown value, also when it comes from another copy of the library or as its
 * plain data.
 *
 * @param error - Anything that was caught, or read from JSON.
 * @returns Whether it is an InputError or what its `toJSON` makes.
 * @example
 * isInputError(new Error('no')); // => false
 * @example
 * isInputError(new InputError('range', 'length', 'a number from 0', -1).toJSON()); // => true
 */
export function isInputError(error: unknown): error is InputError | InputErrorJson {
  // By name, not by class: a second copy of the library has a class of its own.
  const { name, parameter } = Object(error) as Partial<InputErrorJson>;
  return name === 'InputError' && typeof parameter === 'string';
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
