/** The input of a calculation from `key=value` as people type it. @module */
import { cable } from '../cable/cable.ts';
import type { CableName } from '../cable/cables.ts';
import { runResistance, type Segment } from '../cable/run-resistance.ts';
import { type AwgSize, awg } from '../conductor/awg.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import { metric } from '../conductor/metric.ts';
import { InputError, isInputError } from '../quantity/input-error.ts';
import { parseQuantity, type QuantityName } from '../quantity/parse-quantity.ts';
import { sheets, type WorkingName } from './sheets.ts';

/** How the value of a key is read. */
type Reader = (text: string) => unknown;

const quantity =
  (kind: QuantityName): Reader =>
  (text) =>
    parseQuantity(text, { quantity: kind }).value;

const number: Reader = (text) => {
  const value = Number(text);
  if (text.trim() === '' || !Number.isFinite(value)) throw new InputError('unreadable', 'value', 'a number', text);
  return value;
};

const word: Reader = (text) => text;

/** `24awg`, `2/0awg`, `18awg-stranded`, `0.5mm2-class5`, `96ohm/km`. */
const conductor: Reader = (text): Conductor => {
  const gauge = /^(-?\d+|[1-4]\/0) ?awg(-stranded)?$/i.exec(text);
  if (gauge !== null) {
    const [, size = '', stranded] = gauge;
    return awg((size.includes('/') ? size : Number(size)) as AwgSize, { stranding: stranded === undefined ? 'solid' : 'stranded' });
  }
  const flexible = /^(.*mm(?:2|²|\^2)) ?-?class ?([1256])$/.exec(text);
  if (flexible !== null) {
    const [, area = '', of] = flexible;
    return metric(parseQuantity(area, { quantity: 'area' }).value, { class: Number(of) as 1 | 2 | 5 | 6 });
  }
  if (/ohms?\/|Ω\//i.test(text)) {
    return conductorFromResistance({ ohmsPerKilometre: parseQuantity(text, { quantity: 'resistancePerLength' }).value * 1000 });
  }
  throw new InputError('unreadable', 'value', 'a conductor, such as 24awg, 18awg-stranded, 0.5mm2-class5 or 96ohm/km', text);
};

const named: Reader = (text) => cable(text as CableName);

/** `cat5e:90m:40degC,cord-26:5m`. */
const pieces = (text: string): Segment[] =>
  text.split(',').map((piece) => {
    const [name = '', length, temperature, ...more] = piece.trim().split(':');
    if (length === undefined || more.length > 0) {
      throw new InputError('unreadable', 'value', 'pieces of cable, such as cat5e:90m:40degC,cord-26:5m', text);
    }
    return {
      cable: cable(name as CableName),
      length: parseQuantity(length, { quantity: 'length' }).value,
      ...(temperature === undefined ? {} : { temperature: parseQuantity(temperature, { quantity: 'temperature' }).value }),
    };
  });

/** `24awg,22awg,18awg-stranded`, or `cat5e,cat6a,cord-26`. */
const choice: Reader = (text) => text.split(',').map((one) => (/^(cat|cord)/.test(one.trim()) ? named(one.trim()) : conductor(one.trim())));

/** `24V`, or `21V..27.6V`. */
const voltage: Reader = (text) => {
  const [low = '', high, ...more] = text.split('..');
  const read = quantity('voltage');
  if (more.length > 0) throw new InputError('unreadable', 'value', 'a voltage, or two with .. between them', text);
  return high === undefined ? read(low) : { low: read(low), high: read(high) };
};

/** `24x4,2x3`: 24 ports of class 4, 2 of class 3. */
const ports: Reader = (text) => {
  const groups = text.split(',').map((group) => /^(\d+)x([0-8])$/.exec(group.trim()));
  const found: { port: number; poeClass: number }[] = [];
  for (const group of groups) {
    const count = Number(group?.[1] ?? Number.NaN);
    if (!(count <= 1000)) throw new InputError('unreadable', 'value', 'ports and their classes, such as 24x4,2x3', text);
    for (let index = 0; index < count; index++) found.push({ port: found.length + 1, poeClass: Number(group?.[2]) });
  }
  return found;
};

/** Every key: where its value goes, and how it is read. */
const KEYS: Readonly<Record<string, readonly [path: string, read: Reader]>> = {
  size: ['size', (text) => (text.includes('/') ? text : number(text))],
  stranding: ['stranding', word],
  material: ['material', word],
  family: ['family', word],
  strands: ['strands', number],
  resistance: ['resistance', quantity('resistance')],
  resistivity: ['resistivity', number],
  length: ['length', quantity('length')],
  area: ['area', quantity('area')],
  conductor: ['conductor', conductor],
  out: ['out', conductor],
  back: ['back', conductor],
  temperature: ['temperature', quantity('temperature')],
  at: ['at', quantity('temperature')],
  coefficient: ['coefficient', number],
  coefficientTemperature: ['coefficientTemperature', quantity('temperature')],
  segments: ['segments', pieces],
  cords: ['cords', pieces],
  run: ['resistance', (text) => runResistance({ segments: pieces(text) })],
  cable: ['cable', named],
  connections: ['connections', number],
  connectionResistance: ['connectionResistance', quantity('resistance')],
  basis: ['basis', word],
  supplyVoltage: ['supplyVoltage', voltage],
  power: ['load.power', quantity('power')],
  current: ['load.current', quantity('current')],
  loadResistance: ['load.resistance', quantity('resistance')],
  poeClass: ['poeClass', number],
  pseType: ['pseType', number],
  pairs: ['pairs', number],
  pseVoltage: ['pseVoltage', voltage],
  pdPower: ['pdPower', quantity('power')],
  minimumVoltage: ['minimumVoltage', quantity('voltage')],
  permittedDrop: ['permittedDrop', (text) => (text.endsWith('%') ? (number(text.slice(0, -1)) as number) / 100 : number(text))],
  maximumResistance: ['maximumResistance', quantity('resistance')],
  loop: ['loop', word],
  cabling: ['cabling', word],
  installed: ['installed', pieces],
  maximumVoltage: ['maximumVoltage', quantity('voltage')],
  kind: ['kind', word],
  candidates: ['candidates', choice],
  sourceResistance: ['sourceResistance', quantity('resistance')],
  tripCurrent: ['tripCurrent', quantity('current')],
  capacity: ['capacity', quantity('power')],
  reserve: ['reserve', (text) => (text.endsWith('%') ? (number(text.slice(0, -1)) as number) / 100 : number(text))],
  policy: ['policy', word],
  ports: ['ports', ports],
};

/**
 * The input that `key=value` words describe.
 *
 * @throws InputError that names the key.
 */
export function inputFrom(name: WorkingName, words: readonly string[]): Record<string, unknown> {
  const input: Record<string, unknown> = {};
  for (const text of words) {
    const at = text.indexOf('=');
    const key = at < 0 ? text : text.slice(0, at);
    const allowed: readonly string[] = sheets[name].keys;
    if (at < 0 || !allowed.includes(key)) {
      throw new InputError('unknown', key, `a key and its value, of ${allowed.map((one) => `${one}=`).join(', ')}`, text);
    }
    const [path, read] = KEYS[key] as readonly [string, Reader];
    const [outer = '', inner] = path.split('.');
    const value = readAs(key, read, text.slice(at + 1));
    if (inner === undefined) input[outer] = value;
    else input[outer] = { ...(input[outer] as object | undefined), [inner]: value };
  }
  if (name === 'switchBudget') input['basis'] = 'class';
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
