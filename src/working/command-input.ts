/** The input of a calculation from `key=value` as people type it. @module */
import { runResistance, type Segment } from '../cable/run-resistance.ts';
import { InputError, isInputError } from '../quantity/input-error.ts';
import { sheets, type WorkingName } from './book/sheets.ts';
import { KEYS, NEEDED, SUCH_AS } from './command-keys.ts';
import { oneVoltage, type Reader, ranged, type TypedPort, voltage } from './command-readers.ts';

/** What the power of a typed port is called on each basis. */
const POWER_OF: Readonly<Record<string, string>> = { requested: 'requested', measured: 'measured' };

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
const OF_RUN: readonly string[] = ['run', 'connections', 'connectionResistance'];

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
    const allowed: readonly string[] = sheets[name].keys;
    if (at < 0 || !allowed.includes(key)) {
      throw new InputError('unknown', key, `a key and its value, of ${allowed.map((one) => `${one}=`).join(', ')}`, text);
    }
    const [path, read] = KEYS[key] as readonly [string, Reader];
    const [outer = '', inner] = path.split('.');
    const value = readAs(key, readerOf(name, key, read), text.slice(at + 1));
    const stated = input[outer];
    if (stated !== undefined && (typeof stated === 'string' ? inner !== undefined : typeof value === 'string')) {
      throw new InputError('conflict', key, `no other word about the ${outer}`, text);
    }
    if (inner === undefined) input[outer] = value;
    else input[outer] = { ...(input[outer] as object | undefined), [inner]: value };
    given.add(key);
  }
  requireNeeded(name, given);
  return asTheCoreHasIt(name, sheets[name].keys.includes('run') ? withRun(input) : input);
}

/** Of bounds every figure may be two. */
function readerOf(name: WorkingName, key: string, read: Reader): Reader {
  if (name === 'bounds') return OF_RUN.includes(key) ? read : ranged(read);
  return read === voltage && ONE_VOLTAGE.includes(name) ? oneVoltage : read;
}

/** Says which key is missing, by the name that it has here. */
function requireNeeded(name: WorkingName, given: ReadonlySet<string>): void {
  for (const needed of NEEDED[name]) {
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
    const called = POWER_OF[String(input['basis'])] ?? 'pdPower';
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
