/** The same question as the core, answered as a worked example. @module */
import { requireOneOf } from '../quantity/guards.ts';
import { sheets, type WorkingInputs, type WorkingName } from './book/sheets.ts';
import { evaluateSheet } from './engine/evaluate-sheet.ts';
import { isRounded, latexFigure, shownFigure } from './engine/figures.ts';
import { type Notation, written } from './engine/formula.ts';
import type { ReadInput } from './engine/lines.ts';
import type { ReadingPasses, Sheet, SheetStep, Some } from './engine/sheet.ts';
import { passesTable, tableOf } from './engine/tables.ts';
import { withCables } from './engine/with-cables.ts';
import type { WorkedGiven, WorkedStep } from './engine/worked.ts';
import type { Working, WorkingGiven, WorkingResult, WorkingStep, WorkingTable } from './engine/working.ts';
import type { WorkingUnit } from './engine/working-unit.ts';

/**
 * A calculation of the core as a worked example: formula, numbers in it, result, and where the rule comes from, line by line.
 *
 * Every line is evaluated by mathjs as `(formula) to unit`, apart from the core: of the core only the guards of the input and
 * the published tables are used. No line rounds. A physical no ends the working with the figure that explains it. Within
 * 1e-12 of the power at which a line collapses the two may differ on whether it does: the core is exact there, plain
 * arithmetic is not.
 *
 * @param name - The calculation, as the core function is called.
 * @param input - What that function takes; where it takes several arguments, one object with them all.
 * @returns Givens, steps and result, as plain data; each figure in the unit it names.
 * @throws {@link InputError} If there is no sheet of that name, or where the core function throws.
 * @example A class 4 camera behind 8.44 Ω
 * const working = showWorking('powerAtPd', { poeClass: 4, resistance: 8.44 });
 * [working.result.shown, working.steps.at(-1)?.substituted]; // => ['26.96 W', '30 W - (0.6 A)^2 * 8.44 Ω']
 * @example A line that cannot carry its load
 * const { feasible, no, result } = showWorking('operatingPoint', { supplyVoltage: 50, resistance: 12.5, load: { power: 60 } });
 * [feasible, no, result.shown]; // => [false, 'the line cannot carry the load: there is no such current', '50 W']
 */
export function showWorking<Name extends WorkingName>(name: Name, input: WorkingInputs[Name]): Working {
  return workingOf(name, input).working;
}

/** The working, and the sheet and the reading that it is of. @internal */
export function workingOf<Name extends WorkingName>(
  name: Name,
  input: WorkingInputs[Name],
): { readonly working: Working; readonly sheet: Sheet<WorkingInputs[Name]>; readonly reading: ReadInput } {
  if (typeof name !== 'string' || !Object.hasOwn(sheets, name)) requireOneOf(name, Object.keys(sheets), 'name');
  const sheet = sheets[name];
  const answer = sheet.guard(input);
  const facts = withCables(input);
  const reading = { ...sheet.read(facts, answer), input: facts };
  return { working: shown(name, sheet, reading), sheet, reading };
}

function shown<Input>(name: WorkingName, sheet: Sheet<Input>, reading: ReadInput): Working {
  const { givens, steps, passes, no } = evaluateSheet(sheet, reading);
  const all = [...givens, ...steps];
  const figures = new Map<string, WorkedGiven | WorkedStep>(all.map((figure) => [figure.symbol, figure]));
  const { tables, tableAt } = tablesOf(sheet, passes, all);
  const shownSteps = steps.map((step) => ({ ...shownStep(governing(step, all), figures), ...tableAt(step) }));
  const last = shownSteps.at(-1);
  if (last === undefined) throw new Error(`the sheet ${name} has no step`);
  const range = no === undefined ? rangeOf(steps.at(-1)?.range, shownSteps) : undefined;
  const beware = steps.map(({ beware: words, value }) => value < 0 && words);
  return {
    name,
    title: sheet.title,
    feasible: no === undefined,
    ...(no === undefined ? {} : { no }),
    givens: givens.map((given) => ({ ...shownGiven(given), ...tableAt(given) })),
    steps: shownSteps,
    tables,
    result: resultOf(last),
    ...(range === undefined ? {} : { range }),
    ...(no !== undefined && reading.isPlainNo === true ? { isPlainNo: true } : {}),
    results: shownSteps.filter(({ core }) => core !== undefined).map(resultOf),
    assumptions: texts(sheet.assumptions, reading.assumptions),
    validity: sheet.validity,
    cautions: [...new Set(texts(sheet.cautions, reading.cautions, beware))],
  };
}

/** The texts of some lists that apply. */
function texts(...lists: readonly (Some<string> | undefined)[]): string[] {
  return lists.flatMap((list) => list ?? []).filter((text) => typeof text === 'string');
}

/** The tables of a working, and for a figure which of them it stands in. */
function tablesOf<Input>(
  sheet: Sheet<Input>,
  passes: ReadingPasses | undefined,
  figures: readonly (WorkedGiven | WorkedStep)[],
): { readonly tables: readonly WorkingTable[]; readonly tableAt: (figure: WorkedGiven | WorkedStep) => { readonly table?: number } } {
  const tables: WorkingTable[] = passes === undefined ? [] : [passesTable(passes)];
  const numbers = new Map<string | undefined, number>();
  for (const row of sheet.tables ?? []) {
    const table = tableOf(row, sheet, figures);
    if (table === undefined) continue;
    for (const list of row.slice(2)) numbers.set(list, tables.length);
    tables.push(table);
  }
  const columns = new Set([...sheet.givens, ...sheet.steps].map(({ symbol }) => symbol));
  const tableAt = ({ each, template }: WorkedGiven | WorkedStep): { readonly table?: number } => {
    // What explains a no is about one row, and stands on its own.
    const table = columns.has(template) ? numbers.get(each) : undefined;
    return table === undefined ? {} : { table };
  };
  return { tables, tableAt };
}

/** A least of a list says whose it is; where all are nothing, it is nobody's. */
function governing(step: WorkedStep, figures: readonly (WorkedGiven | WorkedStep)[]): WorkedStep {
  const { least, meaning, core } = step;
  if (least === undefined) return step;
  const governs = figures.filter(({ template, value }) => least.includes(template) && value === step.value);
  const [first] = governs;
  if (step.value === 0 && governs.length > 1) return { ...step, meaning: meaning.replace(/[:,][^:,]*$/, '') };
  const named = { ...step, meaning: `${meaning} ${first?.label ?? ''}` };
  return core === undefined ? named : { ...named, core: core.replace('@', String((first?.number ?? 1) - 1)) };
}

/** The ends of a range, of which the last step is the upper one. */
function rangeOf(range: SheetStep['range'], steps: readonly WorkingStep[]): Working['range'] {
  const low = steps.find(({ symbol }) => symbol === range?.low);
  const high = steps.at(-1);
  return range === undefined || low === undefined || high === undefined ? undefined : { meaning: range.meaning, low, high };
}

function shownGiven({ symbol, meaning, value, unit, core, source, latex }: WorkedGiven): WorkingGiven {
  return {
    symbol,
    meaning,
    value,
    unit,
    shown: shownFigure(value, unit, true),
    rounded: isRounded(value, true),
    core,
    ...(source === undefined ? {} : { source }),
    latex: { symbol: latex, value: latexFigure(value, unit, true) },
  };
}

function shownStep(step: WorkedStep, figures: ReadonlyMap<string, WorkedGiven | WorkedStep>): WorkingStep {
  const { symbol, meaning, value, unit, source, core, latex, parsed } = step;
  const figureOf = (name: string): WorkedGiven | WorkedStep => figures.get(name) as WorkedGiven | WorkedStep;
  const symbolic = (tex: boolean): Notation => ({ tex, symbol: (name) => (tex ? figureOf(name).latex : name), isCompound: () => false });
  const numeric = (tex: boolean): Notation => {
    const print = (figure: WorkedGiven | WorkedStep, unit: WorkingUnit): string =>
      (tex ? latexFigure : shownFigure)(figure.value, unit, !('formula' in figure));
    return {
      tex,
      symbol: (name) => {
        const figure = figureOf(name);
        const text = print(figure, figure.unit);
        // A figure that stands alone needs no brackets.
        return figure.value < 0 && parsed.node.type !== 'SymbolNode' ? (tex ? `\\left(${text}\\right)` : `(${text})`) : text;
      },
      // A figure under 0 has its brackets already; a power of ten needs them as a unit does.
      isCompound: (name) => {
        const figure = figureOf(name);
        return figure.value >= 0 && (figure.unit !== '1' || print(figure, '1').includes(tex ? '^' : 'e'));
      },
    };
  };
  return {
    symbol,
    meaning,
    formula: written(parsed.node, symbolic(false)),
    substituted: parsed.isNothing ? shownFigure(0, unit, false) : written(parsed.node, numeric(false)),
    value,
    unit,
    shown: shownFigure(value, unit, false),
    rounded: isRounded(value, false),
    source,
    ...(core === undefined ? {} : { core }),
    latex: {
      symbol: latex,
      formula: written(parsed.node, symbolic(true)),
      substituted: parsed.isNothing ? latexFigure(0, unit, false) : written(parsed.node, numeric(true)),
      value: latexFigure(value, unit, false),
    },
  };
}

/** A step as a figure that may be asked for. @internal */
export function resultOf({ symbol, meaning, value, unit, shown, core }: WorkingStep): WorkingResult {
  return { symbol, meaning, value, unit, shown, ...(core === undefined ? {} : { core }) };
}
