/** How the value of a key is read, as people type it. @module */
import { cable } from '../cable/cable.ts';
import type { CableName } from '../cable/cables.ts';
import type { Segment } from '../cable/run-resistance.ts';
import { type AwgSize, awg } from '../conductor/awg.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import { metric } from '../conductor/metric.ts';
import { InputError, isInputError } from '../quantity/input-error.ts';
import { parseQuantity, type QuantityName } from '../quantity/parse-quantity.ts';

/** How the value of a key is read. */
export type Reader = (text: string) => unknown;

/** Such as people type it. */
const SUCH_AS: Readonly<Record<QuantityName, string>> = {
  length: '212ft',
  area: '0.5mm2',
  resistance: '8.44ohm',
  resistancePerLength: '96ohm/km',
  voltage: '24V',
  current: '0.5A',
  power: '12.95W',
  temperature: '40degC',
  temperatureDifference: '5K',
};

/** A quantity in the unit that the core takes. A bare 212 might be feet: without a unit it is refused. */
function measure(text: string, kind: QuantityName): number {
  if (/^[\s\d.,+-]*(?:e[+-]?\d+)?\s*$/i.test(text))
    throw new InputError('unreadable', 'value', `a figure with its unit, such as ${SUCH_AS[kind]}`, text);
  return parseQuantity(text, { quantity: kind }).value;
}

/** A quantity with its unit. */
export const quantity =
  (kind: QuantityName): Reader =>
  (text) =>
    measure(text, kind);

/** A number without a unit. */
export const number: Reader = (text) => {
  const value = Number(text);
  if (text.trim() === '' || !Number.isFinite(value)) throw new InputError('unreadable', 'value', 'a number', text);
  return value;
};

/** In Ω·mm²/m. */
const RESISTIVITY_UNITS: Readonly<Record<string, readonly [multiply: number, divide: number]>> = {
  'Ωmm²/m': [1, 1],
  Ωm: [1_000_000, 1],
  µΩm: [1, 1],
  nΩm: [1, 1000],
  µΩcm: [1, 100],
};

/** `0.0172ohm.mm2/m`, `17.2nohm.m`, `1.72e-8ohm.m`. */
export const resistivity: Reader = (text) => {
  const [, figure = '', unit = ''] = /^\s*([\d.]+(?:e[-+]?\d+)?)\s*(\D.*)$/i.exec(text) ?? [];
  const plain = unit
    .replace(/ohms?|\u2126/i, 'Ω')
    .replace(/^[u\u03bc]/, 'µ')
    .replaceAll(/mm(?:2|\^2)/g, 'mm²')
    .replaceAll(/[\s·.*]/g, '');
  const factor = Object.hasOwn(RESISTIVITY_UNITS, plain) ? RESISTIVITY_UNITS[plain] : undefined;
  if (factor === undefined) {
    throw new InputError('unreadable', 'value', 'a resistivity with its unit, such as 0.0172ohm.mm2/m, 17.2nohm.m or 1.72e-8ohm.m', text);
  }
  return ((number(figure) as number) * factor[0]) / factor[1];
};

/** `0.00393`, or `0.00393/K`. */
export const perKelvin: Reader = (text) => number(text.replace(/ ?\/ ?K$/, ''));

/** A word as it stands. */
export const word: Reader = (text) => text;

/** `24awg`, `2/0awg`, `18awg-stranded`, `0.5mm2-class5`, `96ohm/km`. */
export const conductor: Reader = (text): Conductor => {
  const gauge = /^(-?\d+|[1-4]\/0) ?awg(-stranded)?$/i.exec(text);
  if (gauge !== null) {
    const [, size = '', stranded] = gauge;
    return awg((size.includes('/') ? size : Number(size)) as AwgSize, { stranding: stranded === undefined ? 'solid' : 'stranded' });
  }
  const flexible = /^(.*mm(?:2|²|\^2)) ?-?class ?([1256])$/.exec(text);
  if (flexible !== null) {
    const [, area = '', conductorClass] = flexible;
    return metric(measure(area, 'area'), { class: Number(conductorClass) as 1 | 2 | 5 | 6 });
  }
  if (/ohms?\/|Ω\//i.test(text)) {
    return conductorFromResistance({ ohmsPerKilometre: measure(text, 'resistancePerLength') * 1000 });
  }
  throw new InputError('unreadable', 'value', 'a conductor, such as 24awg, 18awg-stranded, 0.5mm2-class5 or 96ohm/km', text);
};

/** `cat5e`. */
export const named: Reader = (text) => cable(text as CableName);

/** `cat5e:90m:40degC,cord-26:5m`. */
export const pieces = (text: string): Segment[] =>
  text.split(',').map((piece) => {
    const [name = '', length, temperature, ...more] = piece.trim().split(':');
    if (length === undefined || more.length > 0) {
      throw new InputError('unreadable', 'value', 'pieces of cable, such as cat5e:90m:40degC,cord-26:5m', text);
    }
    return {
      cable: cable(name as CableName),
      length: measure(length, 'length'),
      ...(temperature === undefined ? {} : { temperature: measure(temperature, 'temperature') }),
    };
  });

/** `24awg,22awg,18awg-stranded`, or `cat5e,cat6a,cord-26`. */
export const choice: Reader = (text) =>
  text.split(',').map((one) => (/^(cat|cord)/.test(one.trim()) ? named(one.trim()) : conductor(one.trim())));

/** `24V`. */
export const oneVoltage: Reader = (text) => {
  if (text.includes('..')) throw new InputError('unreadable', 'value', 'a voltage: one here, not a range', text);
  return quantity('voltage')(text);
};

/** `24V`, or `21V..27.6V`. */
export const voltage: Reader = (text) => {
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
export const supplies: Reader = (text) =>
  items(text, 2, 2, 'supplies and their voltages, such as rack:24V,desk:21V').map(([at = '', volts = '']) => ({
    at,
    voltage: quantity('voltage')(volts),
  }));

/** `rack:left:2ohm,left:right:18awg:60m:30degC`. */
export const sections: Reader = (text) =>
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
export const taps: Reader = (text) =>
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
export const currents = (text: string): number[] =>
  text.split(',').flatMap((group) => {
    const [, count = '1', each = ''] = /^(?:(\d+)x)?(.*)$/.exec(group.trim()) ?? [];
    if (!(Number(count) <= 10_000)) throw new InputError('unreadable', 'value', 'currents, such as 8x300mA,4x0A', text);
    return Array<number>(Number(count)).fill(measure(each, 'current'));
  });

/** A diameter. */
export const millimetres: Reader = (text) => measure(text, 'length') * 1000;

/** `yes` or `no`. */
export const yesOrNo: Reader = (text) => {
  if (text !== 'yes' && text !== 'no') throw new InputError('unreadable', 'value', 'yes or no', text);
  return text === 'yes';
};

/** `10%`, `0.1`, or `2.4V`. */
export const drop: Reader = (text) => {
  if (text.endsWith('%')) return (number(text.slice(0, -1)) as number) / 100;
  return /[a-z]$/i.test(text) ? { volts: measure(text, 'voltage') } : number(text);
};

/** A port as it is typed: which of its powers is meant, the basis says. */
export interface TypedPort {
  readonly port: number;
  readonly poeClass: number;
  readonly power?: number;
  readonly resistance?: number;
}

/** `24x4,2x3:9W:4.2ohm`: 24 ports of class 4, and 2 of class 3 with a power and the loop that it sees. */
export const ports: Reader = (text): TypedPort[] => {
  const groups = text.split(',').map((group) => /^(\d+)x([0-8])(?::([^:]+))?(?::([^:]+))?$/.exec(group.trim()));
  const found: TypedPort[] = [];
  for (const group of groups) {
    const [, count, poeClass, power, loop] = group ?? [];
    if (!(Number(count) <= 1000)) {
      throw new InputError('unreadable', 'value', 'ports and their classes, such as 24x4,2x3 or 24x4:13W:5ohm', text);
    }
    const port = {
      poeClass: Number(poeClass),
      ...(power === undefined ? {} : { power: measure(power, 'power') }),
      ...(loop === undefined ? {} : { resistance: measure(loop, 'resistance') }),
    };
    for (let index = 0; index < Number(count); index++) found.push({ port: found.length + 1, ...port });
  }
  return found;
};

/** `2`, or `1-2:9ohm/9.3ohm,3-6:9.1ohm/9.2ohm`, and of a reading `1-2:14.1ohm,3-6:open`. */
export const pairs: Reader = (text) => {
  if (/^\d+$/.test(text.trim())) return Number(text);
  const ohms = (part: string): unknown => (part.trim() === 'open' ? 'open' : quantity('resistance')(part));
  const read = text.split(',').map((part) => {
    const [, name = '', ends] = /^\s*(\d-\d)\s*:(.*)$/.exec(part) ?? [];
    if (ends === undefined)
      throw new InputError('unreadable', 'value', 'pairs by their pins, such as 1-2:9ohm/9.3ohm,3-6:9ohm/9.1ohm', text);
    const each = ends.split('/').map(ohms);
    return [name.replace('-', ','), each.length === 1 ? each[0] : each] as const;
  });
  return Object.fromEntries(read);
};

/** `0.3ohm`, or by pair. */
export const pairResistance: Reader = (text) => (text.includes(':') ? pairs(text) : quantity('resistance')(text));

/** `1-2,4-5`. */
export const pairNames: Reader = (text) => text.split(',').map((name) => name.trim().replace('-', ','));

/** `3%`, or `0.03`. */
export const fraction: Reader = (text) => (text.endsWith('%') ? (number(text.slice(0, -1)) as number) / 100 : number(text));

/** One figure, or two with `..` between them. */
export const ranged =
  (read: Reader): Reader =>
  (text) => {
    const [low = '', high, ...more] = text.split('..');
    if (more.length > 0) throw new InputError('unreadable', 'value', 'a figure, or two with .. between them', text);
    return high === undefined ? read(low) : { low: read(low), high: read(high) };
  };
