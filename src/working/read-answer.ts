/** An answer as people write it: a number, its figures, its unit. @module */
import { InputError, isInputError } from '../quantity/input-error.ts';
import { parseQuantity, type QuantityName } from '../quantity/parse-quantity.ts';
import type { WorkingUnit } from './engine/working-unit.ts';

/** An answer in the unit of the result, and half a unit of its last figure. */
export interface ReadAnswer {
  readonly value: number;
  readonly tolerance: number;
}

/** A number, and what stands after it. */
const NUMBER = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/;

/** That it cannot be, of whatever it is. */
const CANNOT =
  "(?:(?:is|are) (?:impossible|infeasible|not possible|not feasible)|(?:does not|doesn[’']t|do not|don[’']t|will not|won[’']t) (?:work|settle|carry it)" +
  "|(?:cannot|can not|can[’']t) (?:be|be done|be carried|be met|be fed|work|exist|settle|carry (?:it|this|that|the load|the power|these loads)))";

/** Words by which an answer says that there is none: only such as can mean nothing else. */
const NO = new RegExp(
  `^(?:no|none|never|impossible|infeasible|not possible|not feasible|(?:there is )?(?:no|none) (?:such )?(?:solution|answer|current|voltage|length|power|figure|steady state)` +
    `|(?:(?:no|impossible)[,:;.]? )?(?:(?:it|this|that|the (?:line|run|cable|network|load|device|bundle|supply)) )?${CANNOT})[.!]*$`,
  'i',
);

/** Words by which an answer says that any figure will do. */
const ANY =
  /^(?:any(?: (?:length|run|figure|number|value|voltage|current|power|load|resistance|temperature|conductor))?(?: (?:will do|works|at all))?|no (?:upper )?(?:limit|bound|maximum)|unlimited|unbounded|infinite|infinity)[.!]*$/i;

/** Whether the answer is that there is none (`no`), or that any will do (`any`); nothing where it is a figure. */
export function wordOf(answer: number | string): 'no' | 'any' | undefined {
  if (typeof answer !== 'string') return undefined;
  const text = answer.trim();
  if (ANY.test(text)) return 'any';
  return NO.test(text) ? 'no' : undefined;
}

const QUANTITY: Readonly<Partial<Record<WorkingUnit, QuantityName>>> = {
  m: 'length',
  mm: 'length',
  'mm²': 'area',
  Ω: 'resistance',
  'Ω/m': 'resistancePerLength',
  V: 'voltage',
  A: 'current',
  W: 'power',
  '°C': 'temperature',
  K: 'temperatureDifference',
};

/**
 * Reads an answer.
 *
 * @throws InputError If it is no number, one that can be read in two ways, or one of another unit.
 */
export function readAnswer(answer: number | string, unit: WorkingUnit): ReadAnswer {
  if (typeof answer === 'number') {
    if (!Number.isFinite(answer)) throw new InputError('range', 'answer', 'a finite number', answer);
    return withTolerance(answer + 0, String(answer), 1); // no -0
  }
  if (typeof answer !== 'string') throw new InputError(answer === undefined ? 'missing' : 'type', 'answer', 'a number or a text', answer);
  const { mantissa, rest: spelt } = partsOf(answer, unit);
  const { rest, times } = unitOf(spelt);
  if (!Number.isFinite(Number(mantissa))) throw new InputError('range', 'answer', 'a finite number', answer);
  if (rest === '' || (times === 1 && bare(rest) === bare(unit))) return withTolerance(Number(mantissa) + 0, mantissa, 1);
  if (unit === '1' && /^(?:%|per ?cent|pct)$/.test(rest)) return withTolerance(Number(mantissa) / 100 + 0, mantissa, 0.01);
  const quantity = QUANTITY[unit];
  if (quantity === undefined)
    throw new InputError('unreadable', 'answer', unit === '1' ? 'a number without a unit' : `a number in ${unit}`, answer);
  // A millimetre is read as a thousandth of a metre.
  const perRead = (unit === 'mm' ? 1000 : 1) * times;
  const read = (number: string): number => {
    try {
      return parseQuantity(`${number} ${rest}`, { quantity }).value * perRead;
    } catch (error) {
      if (!isInputError(error)) throw error;
      throw new InputError(error.code, 'answer', error.expected, answer);
    }
  };
  // A degree of another scale, whose zero is another too.
  return withTolerance(read(mantissa), mantissa, unit === '°C' ? read('1') - read('0') : read('1'));
}

/** A unit as parseQuantity spells it, and how many of that it is. */
function unitOf(spelt: string): { readonly rest: string; readonly times: number } {
  const rest = spelt
    .replace(/^(m|k|µ|μ)?amp(?:ere)?s?$/i, (_all, prefix: string = '') => `${prefix.toLowerCase()}A`)
    .replace(/^milli-?amp(?:ere)?s?$/i, 'mA')
    .replace(/\s+per\s+(?:(metre|meter)|(kilomet(?:re|er))|(foot))?/i, (_all, metre?: string, kilometre?: string, foot?: string) =>
      metre !== undefined ? '/m' : kilometre !== undefined ? '/km' : foot !== undefined ? '/ft' : '/',
    )
    .replace(/(ohm)s(?=\s*\/)/i, '$1')
    .replace(/^(?:sq(?:uare|\.)?\s*mm|mm\s*sq(?:uared?|\.)?)$/i, 'mm²');
  // A milliohm is not listed by every length.
  const milli = /^m(?:Ω|\u2126|ohm)\s*\/\s*(.+)$/.exec(rest)?.[1];
  return milli === undefined ? { rest, times: 1 } : { rest: `ohm/${milli}`, times: 0.001 };
}

/** A unit without the signs that people leave out: `W/m2K` as `W/(m²·K)`. */
function bare(unit: string): string {
  const [over = '', ...under] = unit
    .replaceAll(/[\s·*×^().]/g, '')
    .replaceAll(/ohms?|\u2126/gi, 'Ω')
    .replaceAll('²', '2')
    .split('/');
  return under.length === 0 ? over : `${over}/${under.join('')}`;
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Digits with a decimal point, and what stands after them, out of the ways in which people write numbers. */
function partsOf(answer: string, unit: WorkingUnit): { mantissa: string; rest: string } {
  const text = answer
    .replaceAll(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .replaceAll(/[\u2212\u2013\u207b]/g, '-')
    .trim()
    .replace(/^(?:[≈~]|(?:about|around|roughly|circa|ca|approx|approximately)\b\.?)\s*/i, '');
  refuseFraction(text, answer, unit);
  const match = NUMBER.exec(oneWay(powerOfTen(text), answer));
  if (match !== null) return { mantissa: match[1] as string, rest: (match[2] as string).replace(/\.$/, '') };
  throw new InputError(
    'unreadable',
    'answer',
    `a number${unit === '1' ? '' : ` with its unit, such as 12.5 ${unit}`}, or the word no`,
    answer,
  );
}

const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 0.125,
  '⅜': 0.375,
  '⅝': 0.625,
  '⅞': 0.875,
};

/** A fraction does not say how many figures of it count. */
function refuseFraction(text: string, answer: string, unit: WorkingUnit): void {
  const sign = /^([+-]?)(\d*)\s*([½¼¾⅓⅔⅛⅜⅝⅞])/.exec(text);
  const slash = /^([+-]?)(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)(?![\d.,])/.exec(text);
  const found = sign ?? slash;
  if (found === null) return;
  const part = sign === null ? Number(slash?.[3]) / Number(slash?.[4]) : (FRACTIONS[sign[3] as string] as number);
  const value = Number((Number(found[2] ?? 0) + part).toPrecision(3));
  const decimal = `${found[1] === '-' ? '-' : ''}${value}${unit === '1' ? '' : ` ${unit}`}`;
  throw new InputError('unreadable', 'answer', `a decimal in place of the fraction, such as ${decimal}`, answer);
}

/** `4.25 × 10^1 V` and `4.25·10⁻³ V` as `4.25e1 V`. */
function powerOfTen(text: string): string {
  return text.replace(
    /^([+-]?[\d.,]+)\s*[×x*·]\s*10\s*(?:\^\s*\(?\s*([+-]?\d+)\s*\)?|(-?[⁰¹²³⁴⁵⁶⁷⁸⁹]+))/,
    (_all, number: string, plain: string | undefined, raised: string | undefined) =>
      `${number}e${plain ?? [...(raised as string)].map((sign) => (sign === '-' ? sign : RAISED.indexOf(sign))).join('')}`,
  );
}

/** A number with groups of thousands, or with a decimal comma, as one without. */
function oneWay(text: string, answer: string): string {
  const grouped = /^([+-]?[1-9]\d{0,2}(?:([ '’.,])\d{3})(?:\2\d{3})*)(?:([.,])(\d+))?(?![\d.,])/.exec(text);
  if (grouped !== null) {
    const [all, whole = '', separator = '', mark, decimals] = grouped;
    const groups = whole.split(separator).length - 1;
    const isOneGroup = groups === 1 && mark === undefined;
    if (separator === ',' && isOneGroup) {
      const [plain, point] = [whole.replace(',', ''), whole.replace(',', '.')];
      throw new InputError('unreadable', 'answer', `a number that can be read in one way: ${plain} or ${point}`, answer);
    }
    if (mark !== separator && !(separator === '.' && isOneGroup)) {
      return `${whole.replaceAll(separator, '')}${decimals === undefined ? '' : `.${decimals}`}${text.slice(all.length)}`;
    }
  }
  return text.replace(/^([+-]?\d*),(\d+)(?![\d.,])/, '$1.$2');
}

function withTolerance(value: number, written: string, scale: number): ReadAnswer {
  const [mantissa = '', exponent = '0'] = written.toLowerCase().split('e');
  // A nought has no figure that counts: 0 is no rounded 0.4, and only nothing is nothing.
  if (!/[1-9]/.test(mantissa)) return { value, tolerance: 1e-9 * scale };
  const decimals = mantissa.split('.')[1]?.length;
  // 26960 may have been written to four figures: zeros at the end of a whole number count only among its first three.
  const idle = decimals === undefined ? (/^[+-]?\d{3}\d*?(0*)$/.exec(mantissa)?.[1]?.length ?? 0) : 0;
  const last = 10 ** (Number(exponent) - (decimals ?? -idle));
  // A figure that was rounded just at the half is right, whichever way: hence a hair more than half a unit.
  return { value, tolerance: 0.5 * last * scale * (1 + 1e-9) + 1e-9 * Math.abs(value) };
}
