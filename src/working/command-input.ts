/** The input of a calculation from `key=value` as people type it. @module */
import { runResistance, type Segment } from '../cable/run-resistance.ts';
import { InputError, isInputError } from '../quantity/input-error.ts';
import { sheets, type WorkingName } from './book/sheets.ts';
import { keysOf, PATHS, readerOf, SUCH_AS } from './command-keys.ts';
import { oneVoltage, type Reader, ranged, type TypedPort, voltage } from './command-readers.ts';

/** What the power of a typed port is called on each basis. */
const PORT_POWERS: Readonly<Record<string, string>> = { requested: 'requested', measured: 'measured' };

/** Where the voltage of the supply, or of the port, is one. */
const ONE_VOLTAGE: readonly WorkingName[] = [
  'operatingPoint',
  'mostPower',
  'voltageDrop',
  'farEndFaultCurrent',
  'powerAtPd',
  'pairUnbalance',
];

/** What a run is made of, and is no range. */
const RUN_KEYS: readonly string[] = ['run', 'connections', 'connectionResistance'];

/**
 * The input that `key=value` words describe.
 *
 * @throws InputError that names the key.
 */
export function inputFrom(name: WorkingName, words: readonly string[]): Record<string, unknown> {
  const input: Record<string, unknown> = {};
  const given = new Set<string>();
  for (const text of words) {
    const at = text.indexOf('=');
    const key = at < 0 ? text : text.slice(0, at);
    const allowed = keysOf(name);
    if (at < 0 || !allowed.includes(key)) {
      throw new InputError('unknown', key, `a key and its value, of ${allowed.map((one) => `${one}=`).join(', ')}`, text);
    }
    const [outer = '', inner] = (PATHS[key] ?? key).split('.');
    const value = readAs(key, readerFor(name, key), text.slice(at + 1));
    const stated = input[outer];
    if (stated !== undefined && (typeof stated === 'string' ? inner !== undefined : typeof value === 'string')) {
      throw new InputError('conflict', key, `no other word about the ${outer}`, text);
    }
    if (inner === undefined) input[outer] = value;
    else input[outer] = { ...(input[outer] as object | undefined), [inner]: value };
    given.add(key);
  }
  requireNeeded(name, given);
  return asTheCoreHasIt(name, keysOf(name).includes('run') ? withRun(input) : input);
}

/** How the value of a key of a calculation is read: of bounds every figure may be two. */
function readerFor(name: WorkingName, key: string): Reader {
  const read = readerOf(key);
  if (name === 'bounds') return RUN_KEYS.includes(key) ? read : ranged(read);
  return read === voltage && ONE_VOLTAGE.includes(name) ? oneVoltage : read;
}

/** Says which key is missing, by the name that it has here. */
function requireNeeded(name: WorkingName, given: ReadonlySet<string>): void {
  for (const needed of sheets[name].needs ?? []) {
    const keys = needed.split('|');
    if (keys.some((key) => given.has(key))) continue;
    const [first = ''] = keys;
    const such = SUCH_AS[first] === undefined ? '' : `, ${SUCH_AS[first]}`;
    const what = keys.length === 1 ? `a value, which ${name} needs${such}` : `one of ${keys.map((key) => `${key}=`).join(', ')}`;
    throw new InputError('missing', first, what, undefined);
  }
}

/** A run in its pieces as the loops that it makes. */
function withRun({ run, connections, connectionResistance, ...input }: Record<string, unknown>): Record<string, unknown> {
  if (run === undefined) {
    const stated = connections === undefined ? connectionResistance : connections;
    if (stated === undefined) return input;
    const key = connections === undefined ? 'connectionResistance' : 'connections';
    throw new InputError('conflict', key, 'a run= that has them', stated);
  }
  if (input['resistance'] !== undefined) throw new InputError('conflict', 'run', 'either run= or resistance=', run);
  const joints = { connections, connectionResistance } as { connections?: number; connectionResistance?: number };
  return { ...input, resistance: runResistance({ segments: run as Segment[], ...joints }) };
}

/** What is put together otherwise than it is typed. */
function asTheCoreHasIt(name: WorkingName, input: Record<string, unknown>): Record<string, unknown> {
  if (name === 'bounds') {
    const { fn, ...rest } = input;
    return { fn, input: rest };
  }
  if (name === 'switchBudget') {
    input['basis'] ??= 'class';
    const called = PORT_POWERS[String(input['basis'])] ?? 'pdPower';
    const typed = input['ports'] as readonly TypedPort[] | undefined;
    input['ports'] = typed?.map(({ power, ...port }) => (power === undefined ? port : { ...port, [called]: power }));
  }
  if (input['loop'] !== undefined || ('poeClass' in input && 'maximumResistance' in input)) {
    input['maximumResistance'] = { ohms: input['maximumResistance'], loop: input['loop'] ?? 'unstated' };
    delete input['loop'];
  }
  return input;
}

function readAs(key: string, read: Reader, text: string): unknown {
  try {
    return read(text);
  } catch (error) {
    if (!isInputError(error)) throw error;
    throw new InputError(error.code, key, error.expected, text);
  }
}
