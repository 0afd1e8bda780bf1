/** Homework looked at: right, or wrong, and then by which well-known slip. @module */
import { requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { WorkingInputs, WorkingName } from './book/sheets.ts';
import { evaluateSheet } from './engine/evaluate-sheet.ts';
import { isRounded, shownFigure } from './engine/figures.ts';
import { type Slipped, type SlipValues, slipValues } from './engine/slip-values.ts';
import { SLIP_WORDS, type SlipName } from './engine/slip-words.ts';
import type { Working, WorkingResult, WorkingStep } from './engine/working.ts';
import type { WorkingUnit } from './engine/working-unit.ts';
import { readAnswer, wordOf } from './read-answer.ts';
import { resultOf, workingOf } from './show-working.ts';

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
  /** What the core function calls it, as in `results` of the working, or the symbol of a step; the result of the working if absent. */
  readonly of?: string | undefined;
}

/** What became of an answer. */
export interface AnswerReview {
  /**
   * Right means: within half a unit of the last figure that the answer gives, and no more than a tenth off: 1 A is not right for
   * 0.6 A, but has too few figures to tell. Of 0, which has no figure that counts: nothing at all. A temperature in °C may be more
   * than a tenth off, as its zero is where it is by agreement.
   */
  readonly verdict: 'right' | 'wrong';
  /** The figure that was asked for. */
  readonly expected: WorkingResult;
  /** The answer, in the unit of the result; absent where it, or the right answer, is the word no. */
  readonly answer?: number;
  /** Half a unit of the last figure of the answer, in the unit of the result. */
  readonly tolerance?: number;
  /** Every slip that gives just this answer; empty where it is right, has too few figures to tell, or no slip does. */
  readonly slips: readonly FoundSlip[];
  /** The step to look at first; absent where the answer is right or has too few figures, and where no step says that there is none. */
  readonly check?: WorkingStep;
  /** All of it in a sentence or two. */
  readonly message: string;
}

/**
 * Looks at an answer: right within the figures it gives, or wrong, and if a well-known slip gives just that figure, which.
 *
 * Each slip is the sheet itself with the wrong formula in place, worked through for this input. Where two slips give the same
 * figure both are named; a step that was rounded on the way is named only where no other slip fits and the answer has three
 * figures or more; where none fits, nothing is claimed. A slip, too, must be within a tenth of the answer. Where the physics says
 * no, the right answer is the word no.
 *
 * @param name - The calculation, as for {@link showWorking}.
 * @param input - Its input.
 * @param answer - A number in the unit of the result, or text with a unit, such as `8.4 ohm`, or the word no (or any, of what
 *   nothing bounds). The figures written are those that count: 8.4 is right from 8.35 to 8.45, and 8 from 7.5 to 8.5 if that is within a tenth of it. A decimal
 *   comma, parted thousands and powers of ten are read; a comma that may be either is refused.
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
  return reviewerOf(name, input).review(answer, options);
}

/** One question, and whoever answers it. @internal */
export interface Reviewer {
  readonly working: Working;
  readonly review: (answer: number | string, options?: ReviewOptions) => AnswerReview;
  readonly slips: SlipValues;
}

/** Looks at many answers to one question: what a slip comes to is then worked out once. @internal */
export function reviewerOf<Name extends WorkingName>(name: Name, input: WorkingInputs[Name]): Reviewer {
  const { working, sheet, reading } = workingOf(name, input);
  const slips = slipValues(sheet, reading);
  const { noAt } = evaluateSheet(sheet, reading);
  const underNought = working.steps.find(({ symbol }) => symbol === noAt);
  return { working, slips, review: (answer, options = {}) => reviewed(working, slips, underNought, answer, options) };
}

function reviewed(
  { feasible, no, result, results, steps }: Working,
  slips: SlipValues,
  underNought: WorkingStep | undefined,
  answer: number | string,
  options: ReviewOptions,
): AnswerReview {
  requireObject(options, 'options', 'an object with of');
  const requested = options.of;
  const step = steps.find(({ symbol }) => symbol === requested);
  const named = results.find(({ core }) => core !== undefined && core === requested) ?? (step === undefined ? undefined : resultOf(step));
  // What a working comes to before, or in spite of, its no can be asked about as well.
  const exists = feasible || named !== undefined;
  const expected = named ?? (requested === undefined || !feasible ? result : undefined);
  if (expected === undefined) {
    const names = [...results.map(({ core }) => core), ...steps.map(({ symbol }) => symbol)].map((name) => `'${name}'`).join(', ');
    throw new InputError('unknown', 'options.of', `one of ${names}`, requested);
  }
  const firstOf = (): WorkingStep => {
    const under = slips.under(expected.symbol, true);
    return steps.find(({ symbol }) => under.has(symbol)) as WorkingStep;
  };
  const word = wordOf(answer);
  if (word !== undefined) {
    // Any figure will do only where nothing bounds it.
    if (!exists && (word === 'no' || no?.includes('nothing bounds') === true))
      return { verdict: 'right', expected, slips: [], message: `Right: ${no}.` };
    if (!exists) return wrongNo(no, expected, underNought);
    const check = firstOf();
    return { verdict: 'wrong', expected, slips: [], check, message: `Wrong: there is an answer. Check first: ${check.meaning}.` };
  }
  if (!exists) {
    // Whatever figure it is, and of whatever unit.
    if (typeof answer !== 'string' || !/\d/.test(answer)) readAnswer(answer, '1');
    return wrongNo(no, expected, underNought);
  }
  const { value, tolerance } = readAnswer(answer, expected.unit);
  const common = { expected, answer: value, tolerance };
  const isWithin = (figure: number): boolean => Math.abs(figure - value) <= tolerance;
  const agrees = (figure: number): boolean => isWithin(figure) && isNear(value, figure, expected.unit);
  if (isWithin(expected.value) && !agrees(expected.value)) {
    return { ...common, verdict: 'wrong', slips: [], message: tooFew(value, tolerance, expected.unit) };
  }
  if (agrees(expected.value)) {
    return {
      ...common,
      verdict: 'right',
      slips: [],
      message: `Right: ${expected.symbol} ${isRounded(expected.value, false) ? '≈' : '='} ${expected.shown}.`,
    };
  }
  const found: Slipped[] = [];
  const consider = (list: Iterable<Slipped>): void => {
    for (const one of list) if (agrees(one.value) && !found.some(({ slip }) => slip === one.slip)) found.push(one);
  };
  consider(slips.slipped(expected));
  if (found.length === 0 && tolerance <= OF_THREE_FIGURES * Math.abs(value)) consider(slips.rounded(expected));
  const check = checkFirst(found[0], steps, expected, slips) ?? firstOf();
  const fits = found.map(({ slip, value: gives }) => ({
    slip,
    says: SLIP_WORDS[slip],
    value: gives,
    shown: shownFigure(gives, expected.unit, false),
  }));
  return { ...common, verdict: 'wrong', slips: fits, check, message: messageOf(fits, check) };
}

/** Half a unit of the last of three figures, as a share of the least number of three, and a hair more. */
const OF_THREE_FIGURES = 0.00501;
/** The most that an answer may be off, whatever few figures it gives. */
const A_TENTH = 0.1;

/** Whether an answer is no more than a tenth off; a nought is exact, and degrees Celsius have their zero by agreement. */
function isNear(answer: number, figure: number, unit: WorkingUnit): boolean {
  return answer === 0 || unit === '°C' || Math.abs(answer - figure) <= A_TENTH * Math.abs(figure);
}

/** A figure that may stand for the right one, and for ones that are far from it. */
function tooFew(value: number, tolerance: number, unit: WorkingUnit): string {
  const [low, high] = [value - tolerance, value + tolerance].map((end) => shownFigure(Number(end.toPrecision(6)), unit, false));
  return `Wrong: too few figures to tell. It may stand for anything from ${low} to ${high}: give two figures or more.`;
}

/** A figure, or any figure, where there is none. */
function wrongNo(no: string | undefined, expected: WorkingResult, check: WorkingStep | undefined): AnswerReview {
  const message = `Wrong: ${no}.`;
  if (check === undefined) return { verdict: 'wrong', expected, slips: [], message };
  return { verdict: 'wrong', expected, slips: [], check, message: `${message} Check first: ${check.meaning}.` };
}

/** The first step that a slip went wrong at, or that a wrong given enters, of those that the result rests on: of the one that governs, if it can be. */
function checkFirst(
  slipped: Slipped | undefined,
  steps: readonly WorkingStep[],
  expected: WorkingResult,
  slips: SlipValues,
): WorkingStep | undefined {
  if (slipped === undefined) return undefined;
  const { at } = slipped;
  const own = steps.find(({ symbol }) => symbol === expected.symbol);
  const among = (governing: boolean): WorkingStep | undefined => {
    const under = slips.under(expected.symbol, governing);
    return steps.find(({ symbol }) => at.has(symbol) && under.has(symbol));
  };
  return among(true) ?? among(false) ?? own;
}

function messageOf(found: readonly FoundSlip[], check: WorkingStep): string {
  const look = `Check first: ${check.meaning}.`;
  if (found.length === 0) return `Wrong. ${look}`;
  const [only] = found;
  if (found.length === 1) return `Wrong: ${only?.says}. ${look}`;
  return `Wrong. ${found.length} slips give this same figure: ${found.map(({ says }) => says).join('; or ')}. ${look}`;
}
