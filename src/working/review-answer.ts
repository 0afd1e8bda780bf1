/** Homework looked at: right, or wrong, and then by which well-known slip. @module */
import { requireObject } from '../quantity/guards.ts';
import { InputError, isInputError } from '../quantity/input-error.ts';
import { parseQuantity, type QuantityName } from '../quantity/parse-quantity.ts';
import { evaluateSheet, type SheetChange, type Worked, type WorkedStep } from './evaluate-sheet.ts';
import { shownFigure } from './figures.ts';
import type { Reading, Sheet, SheetSlip } from './sheet.ts';
import type { WorkingInputs, WorkingName } from './sheets.ts';
import { sheetOf, showWorking } from './show-working.ts';
import { SLIP_WORDS, type SlipName } from './slip-words.ts';
import type { WorkingResult, WorkingStep } from './working.ts';
import type { WorkingUnit } from './working-unit.ts';

/** A slip that gives just the answer that was handed in. */
export interface FoundSlip {
  readonly slip: SlipName;
  /** What was done, in words. */
  readonly says: string;
  /** What the slip gives, in the unit of the result. */
  readonly value: number;
  readonly shown: string;
}

/** Which figure was asked for. */
export interface ReviewOptions {
  /** What the core function calls it, as in `results` of the working; the result of the working if absent. */
  readonly of?: string | undefined;
}

/** What became of an answer. */
export interface AnswerReview {
  /** Right means: within half a unit of the last figure that the answer gives. */
  readonly verdict: 'right' | 'wrong';
  /** The figure that was asked for. */
  readonly expected: WorkingResult;
  /** The answer, in the unit of the result; absent where it, or the right answer, is the word no. */
  readonly answer?: number;
  /** Half a unit of the last figure of the answer, in the unit of the result. */
  readonly tolerance?: number;
  /** Every slip that gives just this answer; empty where it is right, or no slip does. */
  readonly slips: readonly FoundSlip[];
  /** The step to look at first; absent where the answer is right. */
  readonly check?: WorkingStep;
  /** All of it in a sentence or two. */
  readonly message: string;
}

/** A number, and what stands after it. */
const NUMBER = /^\s*([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/;

/** Words by which an answer says that there is none. */
const NO = /^(?:no|none|never|impossible|infeasible|not possible)\.?$/i;

/**
 * Looks at an answer: right within the figures it gives, or wrong, and if a well-known slip gives just that figure, which.
 *
 * Each slip is the sheet itself with the wrong formula in place, worked through for this input. Where two slips give the same
 * figure both are named; a step that was rounded on the way is named only where no other slip fits; where none fits, nothing
 * is claimed. Where the physics says no, the right answer is the word no.
 *
 * @param name - The calculation, as for {@link showWorking}.
 * @param input - Its input.
 * @param answer - A number in the unit of the result, or text with a unit, such as `8.4 ohm`, or the word no. The figures
 *   written are those that count: 8.4 is right from 8.35 to 8.45.
 * @param options - Which of the results was asked for, if not the last.
 * @returns The verdict, the slips that fit, and the step to check first.
 * @throws {@link InputError} As {@link showWorking}, if the answer is no number of that kind, or there is no such result.
 * @example A class 4 camera behind 8.44 Ω: what is available to it, by one who took the power of the port
 * const review = reviewAnswer('powerAtPd', { poeClass: 4, resistance: 8.44 }, '30 W');
 * [review.verdict, review.slips.map(({ slip }) => slip)]; // => ['wrong', ['class-power-for-pd-power']]
 * @example
 * reviewAnswer('powerAtPd', { poeClass: 4, resistance: 8.44 }, '27.0 W').verdict; // => 'right'
 */
export function reviewAnswer<Name extends WorkingName>(
  name: Name,
  input: WorkingInputs[Name],
  answer: number | string,
  options: ReviewOptions = {},
): AnswerReview {
  const working = showWorking(name, input);
  requireObject(options, 'options', 'an object with of');
  const { feasible, no, result, results, steps } = working;
  const asked = options.of;
  const expected = asked === undefined || !feasible ? result : results.find(({ core }) => core === asked);
  if (expected === undefined) {
    const names = results.map(({ core }) => `'${core}'`).join(', ');
    throw new InputError('unknown', 'options.of', `one of ${names}`, asked);
  }
  const first = steps[0] as WorkingStep;
  if (typeof answer === 'string' && NO.test(answer.trim())) {
    if (!feasible) return { verdict: 'right', expected, slips: [], message: `Right: ${no}.` };
    return { verdict: 'wrong', expected, slips: [], check: first, message: `Wrong: there is an answer. Check first: ${first.meaning}.` };
  }
  if (!feasible) {
    // Whatever figure it is, and of whatever unit.
    if (typeof answer === 'number' || !NUMBER.test(String(answer))) readAnswer(answer, '1');
    const check = steps.at(-2) ?? first;
    return { verdict: 'wrong', expected, slips: [], check, message: `Wrong: ${no}. Check first: ${check.meaning}.` };
  }
  const { value, tolerance } = readAnswer(answer, expected.unit);
  const common = { expected, answer: value, tolerance };
  if (agrees(expected.value, value, tolerance)) {
    return { ...common, verdict: 'right', slips: [], message: `Right: ${expected.symbol} = ${expected.shown}.` };
  }
  const sheet = sheetOf(name);
  const reading = sheet.read(input);
  const worked = evaluateSheet(sheet, reading);
  const index = steps.findIndex(({ symbol, core }) => symbol === expected.symbol && core === expected.core);
  const found = fitting(sheet, reading, worked, index, expected, value, tolerance);
  const check = checkFirst(found, worked, steps) ?? first;
  return { ...common, verdict: 'wrong', slips: found.map(({ change: _change, ...slip }) => slip), check, message: messageOf(found, check) };
}

/** A slip that fits, and what was changed for it. */
type Fit = FoundSlip & { readonly change: SheetChange };

function fitting<Input>(
  sheet: Sheet<Input>,
  reading: Reading,
  worked: Worked,
  index: number,
  expected: WorkingResult,
  answer: number,
  tolerance: number,
): Fit[] {
  const found: Fit[] = [];
  const consider = (slip: SlipName, change: SheetChange, factor: number = 1): void => {
    if (!concerns(change, worked)) return;
    const value = slipValue(sheet, reading, change, expected.symbol);
    if (value === undefined || !agrees(value * factor, answer, tolerance)) return;
    if (found.some((other) => other.slip === slip)) return;
    found.push({ slip, says: SLIP_WORDS[slip], value: value * factor, shown: shownFigure(value * factor, expected.unit, false), change });
  };
  for (const { slip, when, ...change } of [...sheet.slips, ...slipsOfUnits(worked)]) {
    if (when === undefined || reading.cases?.includes(when)) consider(slip, change);
  }
  if (expected.unit !== '1' && expected.unit !== '°C') {
    consider('times-thousand', {}, 1000);
    consider('over-thousand', {}, 0.001);
  }
  if (found.length > 0) return found;
  for (const figures of [2, 3]) {
    for (const { symbol } of worked.steps.slice(0, index)) consider('rounded-early', { rounded: { symbol, figures } });
  }
  return found;
}

/** Whether the change is about anything that this input has. */
function concerns({ givens = {}, steps = {}, rounded }: SheetChange, worked: Worked): boolean {
  if (rounded !== undefined || Object.keys(givens).length + Object.keys(steps).length === 0) return true;
  return (
    worked.givens.some(({ template }) => Object.hasOwn(givens, template)) ||
    worked.steps.some(({ template }) => Object.hasOwn(steps, template))
  );
}

/** What the changed sheet gives for a symbol; nothing where it gives none. @internal */
export function slipValue<Input>(sheet: Sheet<Input>, reading: Reading, change: SheetChange, symbol: string): number | undefined {
  try {
    return evaluateSheet(sheet, reading, { ...change, heedless: true }).steps.find((step) => step.symbol === symbol)?.value;
  } catch {
    // A slip may take one given for another that this input does not have.
    return undefined;
  }
}

/** Slips that go with the unit of a given, on any sheet. */
function slipsOfUnits({ givens }: Worked): SheetSlip[] {
  const scaled = (unit: WorkingUnit, by: string): Record<string, string> =>
    Object.fromEntries(givens.filter((given) => given.unit === unit).map(({ template }) => [template, `${template} ${by}`]));
  return [
    { slip: 'feet-for-metres', givens: scaled('m', '/ 0.3048') },
    { slip: 'metres-for-feet', givens: scaled('m', '* 0.3048') },
    { slip: 'per-100-m-for-per-km', givens: scaled('Ω/m', '/ 10') },
    { slip: 'per-km-for-per-100-m', givens: scaled('Ω/m', '* 10') },
  ].filter(({ givens: changed }) => Object.keys(changed).length > 0) as SheetSlip[];
}

function agrees(value: number, answer: number, tolerance: number): boolean {
  return Math.abs(value - answer) <= tolerance;
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
};

/** The answer in the unit of the result, and half a unit of its last figure. @internal */
export function readAnswer(answer: number | string, unit: WorkingUnit): { value: number; tolerance: number } {
  if (typeof answer === 'number') {
    if (!Number.isFinite(answer)) throw new InputError('range', 'answer', 'a finite number', answer);
    return withTolerance(answer, String(answer), 1);
  }
  if (typeof answer !== 'string') throw new InputError(answer === undefined ? 'missing' : 'type', 'answer', 'a number or a text', answer);
  const text = answer.trim();
  const [, mantissa, rest = ''] = NUMBER.exec(text) ?? [];
  if (mantissa === undefined)
    throw new InputError('unreadable', 'answer', `a number${unit === '1' ? '' : ` with its unit, such as 12.5 ${unit}`}`, answer);
  if (rest === '' || rest === unit) return withTolerance(Number(mantissa), mantissa, 1);
  if (unit === '1' && rest === '%') return withTolerance(Number(mantissa) / 100, mantissa, 0.01);
  const quantity = QUANTITY[unit];
  if (quantity === undefined)
    throw new InputError('unreadable', 'answer', unit === '1' ? 'a number without a unit' : `a number in ${unit}`, answer);
  // A millimetre is read as a thousandth of a metre.
  const perRead = unit === 'mm' ? 1000 : 1;
  const read = (quantityText: string): number => {
    try {
      return parseQuantity(quantityText, { quantity }).value * perRead;
    } catch (error) {
      if (!isInputError(error)) throw error;
      throw new InputError(error.code, 'answer', error.expected, answer);
    }
  };
  return withTolerance(read(text), mantissa, read(`1 ${rest}`));
}

function withTolerance(value: number, written: string, scale: number): { value: number; tolerance: number } {
  const [mantissa = '', exponent = '0'] = written.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length;
  // 26960 may have been written to four figures: zeros at the end of a whole number count only among its first three.
  const idle = decimals === undefined ? (/^[+-]?\d{3}\d*?(0*)$/.exec(mantissa)?.[1]?.length ?? 0) : 0;
  const last = 10 ** (Number(exponent) - (decimals ?? -idle));
  // A figure that was rounded just at the half is right, whichever way: hence a hair more than half a unit.
  return { value, tolerance: 0.5 * last * scale * (1 + 1e-9) + 1e-9 * Math.abs(value) };
}

/** The first step that a slip went wrong at, or that a wrong given enters. */
function checkFirst(found: readonly Fit[], worked: Worked, steps: readonly WorkingStep[]): WorkingStep | undefined {
  const change = found[0]?.change;
  if (change === undefined) return undefined;
  const at = worked.steps.findIndex(
    ({ template, symbol, parsed }: WorkedStep) =>
      change.steps?.[template] !== undefined ||
      change.rounded?.symbol === symbol ||
      parsed.symbols.some((name) => worked.givens.some((given) => given.symbol === name && change.givens?.[given.template] !== undefined)),
  );
  return steps[at < 0 ? steps.length - 1 : at];
}

function messageOf(found: readonly Fit[], check: WorkingStep): string {
  const look = `Check first: ${check.meaning}.`;
  if (found.length === 0) return `Wrong. ${look}`;
  const [only] = found;
  if (found.length === 1) return `Wrong: ${only?.says}. ${look}`;
  return `Wrong. ${found.length} slips give this same figure: ${found.map(({ says }) => says).join('; or ')}. ${look}`;
}
