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

/** The parts of each item of a list, as in `rack:24V,desk:21V`. */
const items = (text: string, least: number, most: number, such: string): string[][] =>
  text.split(',').map((item) => {
    const parts = item.trim().split(':');
    if (parts.length < least || parts.length > most) throw new InputError('unreadable', 'value', such, text);
    return parts;
  });

/** `rack:24V`. */
const supplies: Reader = (text) =>
  items(text, 2, 2, 'supplies and their voltages, such as rack:24V,desk:21V').map(([at = '', volts = '']) => ({
    at,
    voltage: quantity('voltage')(volts),
  }));

/** `rack:left:2ohm,left:right:18awg:60m:30degC`. */
const sections: Reader = (text) =>
  items(text, 3, 5, 'sections, such as rack:left:2ohm,left:right:18awg:60m:30degC').map(([from = '', to = '', line = '', length, at]) => {
    if (length === undefined) return { from, to, resistance: quantity('resistance')(line) };
    const metres = quantity('length')(length);
    return {
      from,
      to,
      conductor: conductor(line),
      length: metres,
      ...(at === undefined ? {} : { temperature: quantity('temperature')(at) }),
    };
  });

/** `left:5W,right:200mA`. */
const taps: Reader = (text) =>
  items(text, 2, 2, 'taps and what they draw, such as left:5W,right:200mA').map(([at = '', draw = '']) => {
    for (const kind of ['power', 'current', 'resistance'] as const) {
      try {
        return { at, load: { [kind]: quantity(kind)(draw) } };
      } catch (error) {
        if (!isInputError(error)) throw error;
      }
    }
    throw new InputError('unreadable', 'value', 'taps and what they draw, in W, A or ohm, such as left:5W,right:200mA', text);
  });
/** `8x300mA,4x0A`: eight conductors of 300 mA, four of none. */
const currents = (text: string): number[] =>
  text.split(',').flatMap((group) => {
    const [, count = '1', each = ''] = /^(?:(\d+)x)?(.*)$/.exec(group.trim()) ?? [];
    if (!(Number(count) <= 10_000)) throw new InputError('unreadable', 'value', 'currents, such as 8x300mA,4x0A', text);
    return Array<number>(Number(count)).fill(parseQuantity(each, { quantity: 'current' }).value);
  });

/** A diameter. */
const millimetres: Reader = (text) => parseQuantity(text, { quantity: 'length' }).value * 1000;

const yesOrNo: Reader = (text) => {
  if (text !== 'yes' && text !== 'no') throw new InputError('unreadable', 'value', 'yes or no', text);
  return text === 'yes';
};

/** `10%`, `0.1`, or `2.4V`. */
const drop: Reader = (text) => {
  if (text.endsWith('%')) return (number(text.slice(0, -1)) as number) / 100;
  return /[a-z]$/i.test(text) ? { volts: parseQuantity(text, { quantity: 'voltage' }).value } : number(text);
};

/** A port as it is typed: which of its powers is meant, the basis says. */
interface TypedPort {
  readonly port: number;
  readonly poeClass: number;
  readonly power?: number;
  readonly resistance?: number;
}

/** `24x4,2x3:9W:4.2ohm`: 24 ports of class 4, and 2 of class 3 with a power and the loop that it sees. */
const ports: Reader = (text): TypedPort[] => {
  const groups = text.split(',').map((group) => /^(\d+)x([0-8])(?::([^:]+))?(?::([^:]+))?$/.exec(group.trim()));
  const found: TypedPort[] = [];
  for (const group of groups) {
    const [, count, poeClass, power, loop] = group ?? [];
    if (!(Number(count) <= 1000)) {
      throw new InputError('unreadable', 'value', 'ports and their classes, such as 24x4,2x3 or 24x4:13W:5ohm', text);
    }
    const port = {
      poeClass: Number(poeClass),
      ...(power === undefined ? {} : { power: parseQuantity(power, { quantity: 'power' }).value }),
      ...(loop === undefined ? {} : { resistance: parseQuantity(loop, { quantity: 'resistance' }).value }),
    };
    for (let index = 0; index < Number(count); index++) found.push({ port: found.length + 1, ...port });
  }
  return found;
};

/** `2`, or `1-2:9ohm/9.3ohm,3-6:9.1ohm/9.2ohm`, and of a reading `1-2:14.1ohm,3-6:open`. */
const pairs: Reader = (text) => {
  if (/^\d+$/.test(text.trim())) return Number(text);
  const ohms = (part: string): unknown => (part.trim() === 'open' ? 'open' : quantity('resistance')(part));
  const read = text.split(',').map((part) => {
    const [, name = '', of] = /^\s*(\d-\d)\s*:(.*)$/.exec(part) ?? [];
    if (of === undefined) throw new InputError('unreadable', 'value', 'pairs by their pins, such as 1-2:9ohm/9.3ohm,3-6:9ohm/9.1ohm', text);
    const each = of.split('/').map(ohms);
    return [name.replace('-', ','), each.length === 1 ? each[0] : each] as const;
  });
  return Object.fromEntries(read);
};

/** `0.3ohm`, or by pair. */
const pairResistance: Reader = (text) => (text.includes(':') ? pairs(text) : quantity('resistance')(text));

/** `1-2,4-5`. */
const pairNames: Reader = (text) => text.split(',').map((name) => name.trim().replace('-', ','));

const fraction: Reader = (text) => (text.endsWith('%') ? (number(text.slice(0, -1)) as number) / 100 : number(text));
/** What the power of a typed port is called on each basis. */
const POWER_OF: Readonly<Record<string, string>> = { requested: 'requested', measured: 'measured' };

/** Every key: where its value goes, and how it is read. */
const KEYS: Readonly<Record<string, readonly [path: string, read: Reader]>> = {
  fn: ['fn', word],
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
  installed: ['installed', pieces],
  scope: ['scope', word],
  leadResistance: ['leadResistance', quantity('resistance')],
  accuracyFraction: ['accuracy.fraction', fraction],
  accuracyFixed: ['accuracy.fixed', quantity('resistance')],
  linkConnections: ['linkConnections', number],
  temperatureSpread: ['temperatureSpread', (text) => number(text.replace(/ ?K$/, ''))],
  cords: ['cords', pieces],
  run: ['resistance', (text) => runResistance({ segments: pieces(text) })],
  cable: ['cable', named],
  connections: ['connections', number],
  connectionResistance: ['connectionResistance', quantity('resistance')],
  basis: ['basis', word],
  supplyVoltage: ['supplyVoltage', voltage],
  power: ['load.power', quantity('power')],
  current: ['load.current', quantity('current')],
  openVoltage: ['openVoltage', quantity('voltage')],
  loadedVoltage: ['loadedVoltage', quantity('voltage')],
  loadCurrent: ['current', quantity('current')],
  voltageFraction: ['voltageAccuracy.fraction', fraction],
  voltageFixed: ['voltageAccuracy.fixed', quantity('voltage')],
  currentFraction: ['currentAccuracy.fraction', fraction],
  currentFixed: ['currentAccuracy.fixed', quantity('current')],
  loadResistance: ['load.resistance', quantity('resistance')],
  poeClass: ['poeClass', number],
  pseType: ['pseType', number],
  pairs: ['pairs', pairs],
  pairFraction: ['limits.pairFraction', fraction],
  pairFloor: ['limits.pairFloor', quantity('resistance')],
  pairToPairFraction: ['limits.pairToPairFraction', fraction],
  pairToPairFloor: ['limits.pairToPairFloor', quantity('resistance')],
  positive: ['positive', pairNames],
  psePairResistance: ['psePairResistance', pairResistance],
  pdPairResistance: ['pdPairResistance', pairResistance],
  pseVoltage: ['pseVoltage', voltage],
  pdPower: ['pdPower', quantity('power')],
  minimumVoltage: ['minimumVoltage', quantity('voltage')],
  maximumVoltage: ['maximumVoltage', quantity('voltage')],
  permittedDrop: ['permittedDrop', drop],
  ampacity: ['ampacity', quantity('current')],
  maximumResistance: ['maximumResistance', quantity('resistance')],
  loop: ['loop', word],
  cabling: ['cabling', word],
  kind: ['kind', word],
  candidates: ['candidates', choice],
  sourceResistance: ['sourceResistance', quantity('resistance')],
  tripCurrent: ['tripCurrent', quantity('current')],
  capacity: ['capacity', quantity('power')],
  reserve: ['reserve', (text) => (text.endsWith('%') ? (number(text.slice(0, -1)) as number) / 100 : number(text))],
  policy: ['policy', word],
  ports: ['ports', ports],
  supplies: ['supplies', supplies],
  sections: ['sections', sections],
  taps: ['taps', taps],
  code: ['code', word],
  gauge: ['gauge', number],
  bundle: ['bundle', number],
  temperatureRating: ['temperatureRating', quantity('temperature')],
  ambient: ['ambient', quantity('temperature')],
  halfLoaded: ['halfLoaded', yesOrNo],
  diameter: ['diameter', millimetres],
  surfaceTemperature: ['surfaceTemperature', quantity('temperature')],
  emissivity: ['emissivity', number],
  pairCurrent: ['pairCurrent', quantity('current')],
  energisedPairs: ['energisedPairs', number],
  installation: ['installation', word],
  filmCoefficient: ['installation.filmCoefficient', number],
  thermalResistivity: ['installation.thermalResistivity', number],
  outsideDiameter: ['outsideDiameter', millimetres],
  conductorCurrents: ['conductorCurrents', currents],
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
    const value = readAs(key, name === 'bounds' ? ranged(read) : read, text.slice(at + 1));
    const stated = input[outer];
    if (stated !== undefined && (typeof stated === 'string' ? inner !== undefined : typeof value === 'string')) {
      throw new InputError('conflict', key, `no other word about the ${outer}`, text);
    }
    if (inner === undefined) input[outer] = value;
    else input[outer] = { ...(input[outer] as object | undefined), [inner]: value };
  }
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

/** One figure, or two with `..` between them. */
const ranged =
  (read: Reader): Reader =>
  (text) => {
    const [low = '', high, ...more] = text.split('..');
    if (more.length > 0) throw new InputError('unreadable', 'value', 'a figure, or two with .. between them', text);
    return high === undefined ? read(low) : { low: read(low), high: read(high) };
  };

function readAs(key: string, read: Reader, text: string): unknown {
  try {
    return read(text);
  } catch (error) {
    if (!isInputError(error)) throw error;
    throw new InputError(error.code, key, error.expected, text);
  }
}
