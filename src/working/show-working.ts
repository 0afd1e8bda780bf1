/** The same question as the core, answered as a worked example. @module */
import { requireOneOf } from '../quantity/guards.ts';
import { evaluateSheet } from './evaluate-sheet.ts';
import { isRounded, latexFigure, shownFigure } from './figures.ts';
import { type Notation, written } from './formula.ts';
import type { Reading, ReadingPasses, Sheet, SheetStep } from './sheet.ts';
import { sheets, type WorkingInputs, type WorkingName } from './sheets.ts';
import { passesTable, tableOf } from './tables.ts';
import type { WorkedGiven, WorkedStep } from './worked.ts';
import type { Working, WorkingGiven, WorkingResult, WorkingStep, WorkingTable } from './working.ts';

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
): { readonly working: Working; readonly sheet: Sheet<WorkingInputs[Name]>; readonly reading: Reading } {
  const sheet = sheetOf(name);
  sheet.guard(input);
  const reading = sheet.read(input);
  return { working: shown(name, sheet, reading), sheet, reading };
}

function shown<Input>(name: WorkingName, sheet: Sheet<Input>, reading: Reading): Working {
  const { givens, steps, passes, no } = evaluateSheet(sheet, reading);
  const figures = new Map<string, WorkedGiven | WorkedStep>([...givens, ...steps].map((figure) => [figure.symbol, figure]));
  const placed = tablesOf(sheet, passes, [...givens, ...steps]);
  const shownSteps = steps.map((step) => ({ ...shownStep(governing(step, [...givens, ...steps]), figures), ...placed.place(step) }));
  const results = shownSteps.filter(({ core }) => core !== undefined).map(resultOf);
  const last = shownSteps.at(-1);
  if (last === undefined) throw new Error(`the sheet ${name} has no step`);
  const range = rangeOf(steps.at(-1)?.range, shownSteps);
  const beware = steps.flatMap(({ beware: words, value }) => (words !== undefined && value < 0 ? [words] : []));
  return {
    name,
    title: sheet.title,
    feasible: no === undefined,
    ...(no === undefined ? {} : { no }),
    givens: givens.map((given) => ({ ...shownGiven(given), ...placed.place(given) })),
    steps: shownSteps,
    tables: placed.tables,
    result: resultOf(last),
    ...(no === undefined && range !== undefined ? { range } : {}),
    ...(no !== undefined && reading.isPlainNo === true ? { isPlainNo: true } : {}),
    results,
    assumptions: [...sheet.assumptions, ...(reading.assumptions ?? [])],
    validity: sheet.validity,
    cautions: [...new Set([...sheet.cautions, ...(reading.cautions ?? []), ...beware])],
  };
}

/** The tables of a working, and for a figure which of them it stands in. */
function tablesOf<Input>(
  sheet: Sheet<Input>,
  passes: ReadingPasses | undefined,
  figures: readonly (WorkedGiven | WorkedStep)[],
): { readonly tables: readonly WorkingTable[]; readonly place: (figure: WorkedGiven | WorkedStep) => { readonly table?: number } } {
  const tables: WorkingTable[] = passes === undefined ? [] : [passesTable(passes)];
  const at = new Map<string, number>();
  for (const table of sheet.tables ?? []) {
    const drawn = tableOf(table, sheet, figures);
    if (drawn === undefined) continue;
    for (const list of table.lists) at.set(list, tables.length);
    tables.push(drawn);
  }
  const columns = new Set([...sheet.givens, ...sheet.steps].map(({ symbol }) => symbol));
  const place = ({ each, template }: WorkedGiven | WorkedStep): { readonly table?: number } => {
    // What explains a no is about one row, and stands on its own.
    const table = each === undefined || !columns.has(template) ? undefined : at.get(each);
    return table === undefined ? {} : { table };
  };
  return { tables, place };
}

/** The sheet of a name. */
function sheetOf<Name extends WorkingName>(name: Name): Sheet<WorkingInputs[Name]> {
  if (typeof name !== 'string' || !Object.hasOwn(sheets, name)) requireOneOf(name, Object.keys(sheets), 'name');
  return sheets[name];
}

/** A least of a list says whose it is; where all are nothing, it is nobody's. */
function governing(step: WorkedStep, figures: readonly (WorkedGiven | WorkedStep)[]): WorkedStep {
  const { least } = step;
  if (least === undefined) return step;
  const governs = figures.filter(({ template, value }) => least.includes(template) && value === step.value);
  if (step.value === 0 && governs.length > 1) return { ...step, meaning: step.meaning.replace(/[:,][^:,]*$/, '') };
  return { ...step, meaning: `${step.meaning} ${governs[0]?.label ?? ''}` };
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
  const of = (name: string): WorkedGiven | WorkedStep => figures.get(name) as WorkedGiven | WorkedStep;
  const isGiven = (figure: WorkedGiven | WorkedStep): boolean => !('formula' in figure);
  const symbolic = (tex: boolean): Notation => ({ tex, symbol: (name) => (tex ? of(name).latex : name), isCompound: () => false });
  const numeric = (tex: boolean): Notation => ({
    tex,
    symbol: (name) => {
      const figure = of(name);
      const text = (tex ? latexFigure : shownFigure)(figure.value, figure.unit, isGiven(figure));
      // A figure that stands alone needs no brackets.
      return figure.value < 0 && parsed.node.type !== 'SymbolNode' ? (tex ? `\\left(${text}\\right)` : `(${text})`) : text;
    },
    // A figure under 0 has its brackets already; a power of ten needs them as a unit does.
    isCompound: (name) =>
      of(name).value >= 0 &&
      (of(name).unit !== '1' || (tex ? latexFigure : shownFigure)(of(name).value, '1', isGiven(of(name))).includes(tex ? '^' : 'e')),
  });
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
