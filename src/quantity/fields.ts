/**
 * One record for every key of an input: what it may be, in which unit, and what is taken where it is left out.
 *
 * From the records come the guards, the refusal of unknown keys, the defaults, and what a result lists as assumed. They hold
 * literals and arrow functions only, so that a bundler drops those of a function that is not used.
 * @module
 */
import type { SourceKey } from '../sources/sources.ts';
import {
  refuse,
  requireArray,
  requireBoolean,
  requireComputed,
  requireFinite,
  requireFraction,
  requireInteger,
  requireNonNegative,
  requireObject,
  requirePositive,
  requireTemperature,
} from './guards.ts';
import { InputError } from './input-error.ts';
import { type Interval, intervalOf } from './interval.ts';
import { pathOf, refuseUnknown, requireName } from './nearest.ts';

/** What one key may be; a field has exactly one of these. Numbers state their unit, `''` where they have none. */
export interface FieldKinds<In, Out = In> {
  /** From 1e-12 to 1e12, in this unit. */
  readonly positive: string;
  /** 0, or from 1e-12 to 1e12, in this unit. */
  readonly nonNegative: string;
  /** 0, or from 1e-30 to 1e30: a figure that another function of the library made, in this unit. */
  readonly computed: string;
  /** At most 1e12 either side of 0, in this unit. */
  readonly finite: string;
  /** From -100 to 400. */
  readonly temperature: '°C';
  /** From 0 to 1, of what this says, as in `supply voltage`. */
  readonly fraction: string;
  /** Between two numbers, both included; `is` says what it is. */
  readonly between: readonly [low: number, high: number];
  /** A whole number between two, both included. */
  readonly whole: readonly [low: number, high: number];
  readonly oneOf: () => readonly In[];
  readonly flag: true;
  /** `filled`: not only spaces. */
  readonly text: 'any' | 'filled';
  readonly object: () => FieldsOf<In>;
  /** An object with exactly one of its keys. */
  readonly exactlyOne: () => FieldsOf<In>;
  /** The field of every element. */
  readonly list: In extends readonly (infer Each)[] ? Field<Each, unknown> : never;
  /** A guard of its own, for what no other kind describes: it returns nothing, and throws. */
  readonly check: (value: In, path: string) => void;
  /** A reader of its own: what it returns stands in the input that was read. */
  readonly read: (value: In, path: string) => Out;
}

/** What may be said of any field. */
export interface FieldFacts {
  /** Whether `{ low, high }` will do in place of a number. */
  readonly range?: true;
  /** Of a number between two: what it is, as in `a ratio`; its unit. */
  readonly is?: string;
  readonly unit?: string;
  /** Of a list that may not be empty: what it needs one of. */
  readonly least?: string;
  /** Of an own guard or reader: the name of the type. */
  readonly type?: string;
  /** Where the default is from. A default without a source is a choice, and no assumption about the world. */
  readonly source?: SourceKey;
  /** One line on what it means. */
  readonly about?: string;
}

type Kind<In, Out, Name extends keyof FieldKinds<In, Out>> = { readonly [K in Name]: Pick<FieldKinds<In, Out>, K> }[Name];
type NumberKind = 'positive' | 'nonNegative' | 'computed' | 'finite' | 'temperature' | 'fraction' | 'between' | 'whole' | 'oneOf';

/** The record of a key that holds `In` and is read as `Out`. */
export type Field<In, Out = In> = FieldFacts & (Kind<In, Out, 'check' | 'read'> | SuitableKind<In, Out>);

type SuitableKind<In, Out> = [In] extends [number | Interval]
  ? Kind<In, Out, NumberKind>
  : [In] extends [string]
    ? Kind<In, Out, 'oneOf' | 'text'>
    : [In] extends [boolean]
      ? Kind<In, Out, 'flag'>
      : [In] extends [readonly unknown[]]
        ? Kind<In, Out, 'list'>
        : [In] extends [object]
          ? Kind<In, Out, 'object' | 'exactlyOne'>
          : never;

type Given<T> = Exclude<T, undefined>;
/** What a key is read as: what `Made` says, or what it holds. */
type ReadAs<T, Made, K extends keyof T> = K extends keyof Made ? Made[K] : Given<T[K]>;

/** A field that is taken when it is absent. A field that several inputs share is one record, and stands in them as `() => RECORD`. */
export type DefaultField<In, Out = In> = Field<In, Out> & { readonly default: In };
/** A field that may be absent. */
export type OptionalField<In, Out = In> = Field<In, Out> & { readonly optional: true };

type Shared<F> = F | (() => Shared<F>);

/** The record of every key of an object, whatever they are read as. */
type FieldsOf<T> = { readonly [K in keyof Required<T>]: Shared<Field<Given<T[K]>, unknown>> };

/**
 * The record of every key of the input `T`, so that none can be forgotten.
 *
 * A key that may be left out is `optional: true`, or one of `Defaulted` and has a `default`. `Made` says of keys with a reader of
 * their own what they are read as.
 */
export type Fields<T, Defaulted extends keyof T = never, Made = unknown> = {
  readonly [K in keyof Required<T>]: Shared<
    K extends Defaulted
      ? DefaultField<Given<T[K]>, ReadAs<T, Made, K>>
      : undefined extends T[K]
        ? OptionalField<Given<T[K]>, ReadAs<T, Made, K>>
        : Field<Given<T[K]>, ReadAs<T, Made, K>>
  >;
};

/** An input that was read: defaults filled in, nothing but its known keys. */
export type Read<T, Defaulted extends keyof T = never, Made = unknown> = {
  readonly [K in Exclude<keyof T, Defaulted>]: undefined extends T[K] ? ReadAs<T, Made, K> | undefined : ReadAs<T, Made, K>;
} & { readonly [K in Defaulted]-?: ReadAs<T, Made, K> };

/** Any field, as whoever walks over them sees it. */
export type AnyField = FieldFacts & {
  readonly [K in Exclude<keyof FieldKinds<unknown>, 'list' | 'object' | 'exactlyOne'>]?: FieldKinds<never, unknown>[K];
} & {
  readonly list?: AnyField;
  readonly object?: () => AnyFields;
  readonly exactlyOne?: () => AnyFields;
  readonly optional?: true;
  readonly default?: unknown;
};

/** Any record of fields. */
export type AnyFields = Readonly<Record<string, Shared<AnyField>>>;

/** Something that a result rests on and that nobody stated. */
export interface Assumption {
  /** Path of the key that was left out, as in `installed[0].temperature`. */
  readonly parameter: string;
  /** What was taken, in `unit`; `none` of a list. */
  readonly value: number | string | boolean;
  readonly unit?: string;
  readonly source: SourceKey;
}

/**
 * An input that is checked key by key, with its defaults filled in; what is `undefined` is absent.
 *
 * @param fields - The record of every key.
 * @param input - What the caller handed over.
 * @param path - Where it stands, as in `segments[3]`; empty for the one argument of a function.
 * @returns A new object of the known keys.
 * @throws {@link InputError} If it is no object, has a key that is not known, or a value is outside its domain.
 * @internal
 */
export function readInput<T, Defaulted extends keyof T, Made>(
  fields: Fields<T, Defaulted, Made>,
  input: T,
  path = '',
): Read<T, Defaulted, Made> {
  return readObject(fields as unknown as AnyFields, input, path) as Read<T, Defaulted, Made>;
}

/** Every field by its name, shared ones too. @internal */
export function fieldsIn(fields: AnyFields): readonly (readonly [name: string, field: AnyField])[] {
  return Object.entries(fields).map(([name, field]) => [name, ownField(field)]);
}

function ownField(field: Shared<AnyField>): AnyField {
  return typeof field === 'function' ? ownField(field()) : field;
}

function readObject(fields: AnyFields, input: unknown, path: string): unknown {
  const entries = fieldsIn(fields);
  const needed = entries.flatMap(([name, field]) => (mayBeAbsent(field) ? [] : name));
  requireObject(input, path === '' ? 'input' : path, needed.length > 0 ? `an object with ${listed(needed, 'and')}` : 'an object');
  refuseUnknown(input as object, Object.keys(fields), path);
  const found: Record<string, unknown> = {};
  for (const [name, field] of entries) {
    const { [name]: given = field.default } = input as Record<string, unknown>;
    if (given === undefined && mayBeAbsent(field)) continue;
    found[name] = readField(field, given, pathOf(path, name));
  }
  return found;
}

function mayBeAbsent(field: AnyField): boolean {
  return field.optional === true || field.default !== undefined;
}

/** The value of one field, or one end of its range. */
function readField(field: AnyField, given: unknown, path: string, isEnd = false): unknown {
  if (field.range && !isEnd && typeof given === 'object') {
    return intervalOf(given as Interval, path, (end, at) => readField(field, end, at, true));
  }
  const number = given as number;
  if (field.positive !== undefined) requirePositive(number, path, field.positive);
  else if (field.nonNegative !== undefined) requireNonNegative(number, path, field.nonNegative);
  else if (field.computed !== undefined) requireComputed(number, path, field.computed);
  else if (field.finite !== undefined) requireFinite(number, path);
  else if (field.temperature) requireTemperature(number, path);
  else if (field.fraction) requireFraction(number, path, field.fraction);
  else if (field.between) requireBetween(number, field, path);
  else if (field.whole) requireInteger(number, ...field.whole, path);
  else if (field.oneOf) requireName(given, field.oneOf(), path);
  else if (field.flag) requireBoolean(given, path);
  else if (field.text) requireText(given, field.text, path);
  else if (field.object) return readObject(field.object(), given, path);
  else if (field.exactlyOne) return readChoice(field.exactlyOne(), given, path);
  else if (field.list) return readList(field, field.list, given, path);
  else if (field.read) return field.read(given as never, path);
  else field.check?.(given as never, path);
  return given;
}

function requireBetween(value: number, { between: [low, high] = [0, 0], is = 'a number', unit = '' }: AnyField, path: string): void {
  if (typeof value === 'number' && value >= low && value <= high) return;
  refuse(value, path, `${is} from ${low} to ${high} ${unit}`.trim());
}

function requireText(value: unknown, form: 'any' | 'filled', path: string): void {
  if (typeof value === 'string' && (form === 'any' || value.trim() !== '')) return;
  refuse(value, path, form === 'any' ? 'a text' : 'a text that is not empty', 'type');
}

function readList({ least }: AnyField, each: AnyField, given: unknown, path: string): unknown {
  const inside = each.object === undefined ? (least ?? 'values') : `{ ${Object.keys(each.object()).join(', ')} }`;
  requireArray(given, path, `a list of ${inside}`);
  const list = given as readonly unknown[];
  if (least !== undefined && list.length === 0) throw new InputError('missing', path, `at least one ${least}`, given);
  return Array.from(list, (element, index) => readField(each, element, `${path}[${index}]`));
}

function readChoice(choices: AnyFields, given: unknown, path: string): unknown {
  const names = Object.keys(choices);
  requireObject(given, path, `an object with ${listed(names, 'or')}`);
  refuseUnknown(given as object, names, path);
  const chosen = fieldsIn(choices).filter(([name]) => (given as Record<string, unknown>)[name] !== undefined);
  const [first] = chosen;
  if (first === undefined || chosen.length > 1) throw new InputError('conflict', path, `exactly one of ${listed(names, 'and')}`, given);
  const [name, field] = first;
  return { [name]: readField(field, (given as Record<string, unknown>)[name], pathOf(path, name)) };
}

function listed(names: readonly string[], word: 'and' | 'or'): string {
  return names.join(', ').replace(/, ([^,]*)$/, ` ${word} $1`);
}

/** The unit of a number; `undefined` of anything else and of a number without one. @internal */
export function unitOf({ positive, nonNegative, computed, finite, temperature, unit }: AnyField): string | undefined {
  return (positive ?? nonNegative ?? computed ?? finite ?? temperature ?? unit) || undefined;
}

/**
 * What a caller left out and the library took for it: the defaults that have a source, those of objects and lists inside too.
 *
 * @param fields - The record of every key.
 * @param input - What the caller handed over, known to be in order.
 * @param path - Where it stands; empty for the one argument of a function.
 * @internal
 */
export function assumptionsOf<T, Defaulted extends keyof T, Made>(
  fields: Fields<T, Defaulted, Made>,
  input: T,
  path = '',
): readonly Assumption[] {
  return fieldsIn(fields as unknown as AnyFields).flatMap(([name, field]) =>
    assumed(field, (input as Record<string, unknown>)[name], pathOf(path, name)),
  );
}

function assumed(field: AnyField, given: unknown, path: string): readonly Assumption[] {
  if (given === undefined) {
    if (field.source === undefined || field.default === undefined) return [];
    const unit = unitOf(field);
    const value = Array.isArray(field.default) ? 'none' : (field.default as Assumption['value']);
    return [{ parameter: path, value, ...(unit && { unit }), source: field.source }];
  }
  const { list, object } = field;
  if (list) return (given as readonly unknown[]).flatMap((element, index) => assumed(list, element, `${path}[${index}]`));
  return object ? assumptionsOf(object() as never, given as never, path) : [];
}
