/**
 * Where each thing of version 0.1 stands now: the one table by which the frozen records are put to the library of today.
 *
 * 1. A shape that changes is a {@link Move} in `MOVES`, keyed by the names of 0.1: the function's new name, its new arguments, where its paths went.
 * 2. It is inert until its `shape` is listed in `LANDED`; add it there in the commit that changes the shape.
 * 3. A path is a prefix: `['power.operating', 'operating']` moves all below it. `*` stands for a key, `[*]` for an index, `**` for any beginning;
 *    they come back in order on the right. A `$` at the end asks for the whole path. Right only: `[aspect=power]` keeps the elements that say so,
 *    `[=name]` is the element with the name that the old one had. The first rule of a move that fits is used; the next move goes on from there.
 * 4. A path that has no successor is `gone('why')`; a third member limits a rule to the records that it is true of.
 * 5. A number that is another one now is an entry of `MOVED`: which, why, what it has to be, and words that the changelog has under "Numbers that moved".
 *    An outcome (an error where there was a result, or another error) is the path `outcome`: `result`, or the code and the parameter.
 * @module
 */
import type { FrozenRecord } from './corpus.ts';

/** The shapes of {@link MOVES} and {@link MOVED} that the library has by now. */
export const LANDED: readonly string[] = [
  ...['deciding', 'one object', 'port limit', 'assumptions of a port', 'names of figures', 'least resistance'],
  ...['powered run', 'two-wire run', 'remedies', 'cable names', 'report rows', 'steps of cabling'],
];

/** A path without a successor, and why. */
export interface Gone {
  readonly gone: string;
}

/** A path of 0.1, where it went, and of which records that holds. */
export type PathMove = readonly [from: string, to: string | Gone, when?: (record: FrozenRecord, path: string) => boolean];

/** What became of some functions of 0.1. */
export interface Move {
  /** Name of the change, for {@link LANDED}. */
  readonly shape: string;
  /** Names in 0.1, or `*` for all. */
  readonly functions: readonly string[];
  /** Its name now, if that is another one. */
  readonly to?: string;
  /** Its arguments now, from those of 0.1. */
  readonly args?: (args: readonly unknown[]) => readonly unknown[];
  readonly paths?: readonly PathMove[];
  /** Errors, as code and parameter with a blank between; by the same rules as paths. */
  readonly errors?: readonly (readonly [from: string, to: string])[];
}

/** A value that changed. */
export interface Change {
  readonly was: unknown;
  readonly is: unknown;
  readonly record: FrozenRecord;
  /** The whole result of today, or the error. */
  readonly now: unknown;
}

/** Values that changed on purpose. */
export interface Moved {
  /** Holds from the day that this shape lands; from now on if absent. */
  readonly shape?: string;
  readonly functions: readonly string[];
  /** Path in 0.1, by the rules of {@link PathMove}. */
  readonly path: string;
  readonly reason: string;
  /** Words of the changelog, under "Numbers that moved"; of an outcome, anywhere since 0.1. */
  readonly changelog: string;
  /** What the new value has to be. */
  readonly holds: (change: Change) => boolean;
}

/** A path without a successor. */
export function gone(reason: string): Gone {
  return { gone: reason };
}

/** The parts of a result that are the result of another function: its moves hold there too. */
export function partsOf(record: FrozenRecord): Readonly<Record<string, string>> {
  if (record.name === 'bounds') {
    const of = String(record.args[0]);
    return { best: of, nominal: of, worst: of, fields: of };
  }
  return PARTS[record.name] ?? {};
}

const PARTS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  warmRun: { run: 'checkPoweredRun' },
  checkPoweredRun: { power: 'powerAtPd' },
  supplyLoss: { before: 'switchBudget', after: 'switchBudget' },
  budgetSteps: { initial: 'switchBudget', 'steps[*].budget': 'switchBudget' },
  roomForMore: { budget: 'switchBudget' },
  switchMains: { budget: 'switchBudget' },
};

/** Whether the run was judged by no cabling standard. */
const judgedByNoStandard = ({ args }: FrozenRecord): boolean =>
  args.some((arg) => typeof arg === 'object' && arg !== null && 'cabling' in arg && arg.cabling === 'none');

/** Whether a working asks the tables of warm cable or of cords: 0.1 took the figures that the core had found. */
const workedByCablingTables = ({ args: [name, input] }: FrozenRecord): boolean => {
  const { poeClass, cabling, cords, temperature = 20 } = input as Readonly<Record<string, unknown>>;
  return name === 'maximumRun' && poeClass !== undefined && cabling !== 'none' && (Array.isArray(cords) || Number(temperature) > 20);
};

/** Verdict of cabling of a run that no standard judged. */
const NO_STANDARD = gone('a run that no cabling standard judges has no verdict of cabling');

/** Whether a path is about a two-wire run of a report. */
const aboutTwoWire = ({ result }: FrozenRecord, path: string): boolean => {
  const runs = (Array.isArray(result) ? result : (result as { readonly runs?: unknown } | undefined)?.runs) as readonly { kind: string }[];
  return runs[Number(/\[(\d+)\]/.exec(path)?.[1])]?.kind === 'two-wire';
};

/** Where the facts of one run of a report went: to the names that a judged run has. */
function rowPaths(at: string): PathMove[] {
  const twoWire: readonly (readonly [string, string])[] = [
    ['loops.pairLoop', 'resistance'],
    ['installedLength', 'length'],
    ['channelLength', 'length'],
    ['farEnd.totalCurrent', 'operating.current'],
    ['farEnd.conductorCurrent', 'operating.current'],
  ];
  const both: readonly (readonly [string, string])[] = [
    ['loops.', 'resistance.'],
    ['pairLoopAt20', 'at20.pairLoop'],
    ['farEnd.feasible', 'operating.feasible'],
    ['farEnd.voltage', 'operating.loadVoltage'],
    ['farEnd.power', 'operating.loadPower'],
    ['farEnd.maximumPower', 'operating.maximumLoadPower'],
    ['farEnd.maximumCurrent', 'operating.maximumCurrent'],
    ['farEnd.', ''],
    ['availablePower', 'available'],
    ['allowedPower', 'allowed'],
    ['pseType', 'classLimits.type'],
    ['pairs', 'classLimits.pairs'],
    ['powerChecks', 'checks[aspect=power]'],
    ['cablingChecks', 'checks[aspect=cabling]'],
    ['heat.checks', 'checks[aspect=heat]'],
    ['heat.verdict', 'verdict.heat'],
  ];
  const here = (rules: readonly (readonly [string, string])[]): [string, string][] => rules.map(([from, to]) => [at + from, at + to]);
  const isUnjudged = (record: FrozenRecord, path: string): boolean => judgedByNoStandard(record) || aboutTwoWire(record, path);
  return [
    [`${at}remedies[*].verdict.cabling`, NO_STANDARD, isUnjudged],
    ...here(twoWire).map(([from, to]): PathMove => [from, to, aboutTwoWire]),
    ...here(both),
  ];
}

/** Arguments that stand in one object now, by these keys; `...` for one whose own keys stand in it. */
const together =
  (...keys: readonly string[]) =>
  (args: readonly unknown[]): readonly unknown[] => [
    Object.assign({}, ...keys.slice(0, args.length).map((key, index) => (key === '...' ? args[index] : { [key]: args[index] }))),
  ];

/** What the first argument of 0.1 is called now. */
const FIRST: Readonly<Record<string, string>> = {
  material: 'name',
  necTable8: 'size',
  strandConstruction: 'construction',
  toMaximum: 'conductor',
  toNominal: 'conductor',
  strandedLead: 'gauge',
};

const lower = (one: unknown, other: unknown): boolean => typeof one === 'number' && typeof other === 'number' && one < other;

/** How many explanations of a reading hold. */
function consistentIn(measured: unknown): number {
  const { explanations } = measured as { readonly explanations: readonly { readonly status: string }[] };
  return explanations.filter(({ status }) => status === 'consistent').length;
}

/** What moved, in the order in which the moves are applied. */
export const MOVES: readonly Move[] = [
  { shape: 'one object', functions: ['loadability'], args: together('...', '...') },
  { shape: 'one object', functions: ['dualSignature'], args: together('...', '...') },
  {
    shape: 'one object',
    functions: ['assignedClass'],
    args: together('requestedClass', 'pseType'),
    errors: [['* requested', '* requestedClass']],
  },
  { shape: 'one object', functions: ['*'], errors: [['* requested', '* poeClass']] },
  { shape: 'one object', functions: ['maximumTaps'], errors: [['* taps[0].load', '* load']] },
  { shape: 'one object', functions: ['pseVoltageCheck'], args: together('pseVoltage', 'pseType') },
  { shape: 'one object', functions: ['lldpFieldName'], args: together('field', 'value') },
  { shape: 'one object', functions: ['rfc3621Name'], args: together('object', 'value') },
  { shape: 'one object', functions: ['roomForMore'], args: together('budget', 'device') },
  { shape: 'one object', functions: ['budgetSteps'], args: together('budget', 'steps') },
  { shape: 'port limit', functions: ['classAssignment'], paths: [['assignedClass', 'granted']] },
  {
    shape: 'assumptions of a port',
    functions: ['psePowerFor', 'pairUnbalance'],
    paths: [['assumptions', gone('they are records now: what was taken, its value, its source')]],
  },
  ...['material', 'necTable8', 'strandConstruction', 'toMaximum', 'toNominal', 'strandedLead'].map(
    (name): Move => ({
      shape: 'one object',
      functions: [name],
      args: ([first, options]) => [{ [FIRST[name] as string]: first, ...(options as object | undefined) }],
      errors: [[`* options.${name.startsWith('to') ? 'allowance' : '*'}`, `* ${name.startsWith('to') ? 'allowance' : '*'}`]],
    }),
  ),
  {
    shape: 'one object',
    functions: ['cableCores'],
    args: ([cable, cores]) => [{ cable, cores }],
  },
  {
    shape: 'one object',
    functions: ['temperatureCoefficientAt'],
    args: ([coefficient, at, from]) => [{ coefficient, at, from }],
  },
  {
    shape: 'one object',
    functions: ['zeroResistanceTemperature'],
    args: ([coefficient, from]) => [{ coefficient, from }],
  },
  {
    shape: 'one object',
    functions: ['resistanceAtTemperature'],
    args: ([line, at]) => [at === undefined ? line : { ...(line as object), at }],
    errors: [['* line.*', '* *']],
  },
  {
    shape: 'one object',
    functions: ['temperatureFromResistance'],
    args: ([line, laterResistance]) => [laterResistance === undefined ? line : { ...(line as object), laterResistance }],
    errors: [
      ['* resistance', '* laterResistance'],
      ['* line.*', '* *'],
    ],
  },
  {
    shape: 'one object',
    functions: ['temperatureCoefficientFrom'],
    args: ([first, second, at]) => [{ first, second, at }],
  },
  {
    shape: 'names of figures',
    functions: ['cablingFigure'],
    paths: [['of$', 'about']],
  },
  {
    shape: 'names of figures',
    functions: ['cable', 'defineCable', 'smallestConductor'],
    paths: [['**limits[*].of', '**limits[*].circuit']],
  },
  {
    // Of a cable that is half there the other half is named first.
    shape: 'cable names',
    functions: ['fromMeasurement', 'checkBundle'],
    errors: [['missing cable.nominalResistancePerMetre', 'missing cable.maximumResistancePerMetre']],
  },
  {
    shape: 'one object',
    functions: ['warmRun'],
    errors: [['missing installation.filmCoefficient', 'type installation']],
  },
  {
    shape: 'powered run',
    functions: ['checkPoweredRun'],
    paths: [
      ['power.checks$', gone('they are those of `checks` that judge power')],
      ['power.checks[*]', 'checks[aspect=power][=name]'],
      ['power.verdict', gone('the verdict of power is `verdict.power`, which also judges the resistance and the metal')],
      ['power.feasible', 'operating.feasible'],
      ['power.limits', 'classLimits'],
      ['power.resistance', 'poweredLoop'],
      ['power.', ''],
      ['powerChecks', 'checks[aspect=power]'],
      ['cablingChecks', 'checks[aspect=cabling]'],
      ['verdict.cabling', NO_STANDARD, judgedByNoStandard],
    ],
  },
  {
    shape: 'two-wire run',
    functions: ['checkTwoWireRun'],
    paths: [
      ['atLowest', 'operating'],
      ['verdict$', 'verdict.power'],
    ],
  },
  {
    shape: 'remedies',
    functions: ['poweredRunRemedies'],
    to: 'remedies',
    paths: [['[*].verdict.cabling', NO_STANDARD, judgedByNoStandard]],
  },
  {
    shape: 'remedies',
    functions: ['twoWireRemedies'],
    to: 'remedies',
    paths: [['[*].verdict.cabling', gone('no cabling standard judges a two-wire run')]],
  },
  { shape: 'deciding', functions: ['*'], paths: [['**deciding[*]', '**deciding[*].parameter']] },
  {
    shape: 'steps of cabling',
    functions: ['working'],
    paths: [
      ['steps', gone('lengths of warm cable and of cords are worked from the tables, in steps of their own'), workedByCablingTables],
      ['givens', gone('the tables are among what is given'), workedByCablingTables],
    ],
  },
  { shape: 'report rows', functions: ['schedule', 'scheduleOfRows'], paths: rowPaths('runs[*].') },
  {
    shape: 'report rows',
    functions: ['checkRun'],
    to: 'checkRow',
    args: ([run, options]) => {
      const { switch: fedBy, ...others } = options as { readonly switch?: unknown };
      return [{ ...(run as object), ...others, fedBy }];
    },
    paths: rowPaths('[*].'),
    errors: [['conflict options.switch', 'conflict fedBy']],
  },
];

/** Numbers, verdicts, names and outcomes that are others now. */
export const MOVED: readonly Moved[] = [
  {
    shape: 'powered run',
    functions: ['highestTemperature'],
    path: 'outcome',
    reason: 'as in the check of a run',
    changelog: 'a `null` where the installed pieces belong is of the wrong type',
    holds: ({ was, is }) => was === 'missing installed' && is === 'type installed',
  },
  {
    shape: 'powered run',
    functions: [
      'checkPoweredRun',
      'warmRun',
      'maximumRun',
      'highestLoad',
      'highestTemperature',
      'lowestSupplyVoltage',
      'smallestConductor',
    ],
    path: 'outcome',
    reason: 'of two things that are wrong the one that can be seen of a key alone is told',
    changelog: 'Every key is looked at before two of them are compared',
    holds: ({ was, is }) => String(was).startsWith('conflict ') && /^(?:type|range|missing|unknown) /.test(String(is)),
  },
  ...['givens', 'steps', 'result', 'results', 'range', 'expected'].map(
    (path): Moved => ({
      shape: 'least resistance',
      functions: ['working', 'review'],
      path,
      reason: 'the sheets of readings use the same least resistance',
      changelog: 'the least resistance of a conductor of a gauge',
      holds: ({ record }) => ['expectedReading', 'fromMeasurement'].includes(String(record.args[0])),
    }),
  ),
  {
    shape: 'least resistance',
    functions: ['expectedReading', 'schedule', 'scheduleOfRows', 'checkRun'],
    path: '**low',
    reason: 'the least that a conductor can have is one figure: 4 % under nominal, 14 % for strands',
    changelog: 'the least resistance of a conductor of a gauge',
    holds: ({ was, is }) => lower(is, was) && (is as number) > (was as number) * 0.93,
  },
  {
    shape: 'least resistance',
    functions: ['fromMeasurement'],
    path: '**high',
    reason: 'conductors that have less let the same reading be of a longer run',
    changelog: 'the least resistance of a conductor of a gauge',
    holds: ({ was, is }) => lower(was, is),
  },
  {
    shape: 'least resistance',
    functions: ['fromMeasurement'],
    path: 'explanations[*].takes.low',
    reason: 'conductors that have less leave the same reading less of the rest',
    changelog: 'the least resistance of a conductor of a gauge',
    holds: ({ was, is }) => lower(is, was),
  },
  {
    shape: 'least resistance',
    functions: ['fromMeasurement', 'schedule', 'scheduleOfRows', 'checkRun'],
    path: '**distance',
    reason: 'wider bounds miss a reading by less',
    changelog: 'the least resistance of a conductor of a gauge',
    holds: ({ was, is }) => lower(is, was),
  },
  {
    shape: 'least resistance',
    functions: ['fromMeasurement', 'schedule', 'scheduleOfRows', 'checkRun'],
    path: '**status',
    reason: 'wider bounds hold more readings',
    changelog: 'the least resistance of a conductor of a gauge',
    holds: ({ was, is }) => was === 'inconsistent' && is === 'consistent',
  },
  {
    shape: 'least resistance',
    functions: ['fromMeasurement'],
    path: 'cannotTell',
    reason: 'what more is consistent cannot be told apart either',
    changelog: 'the least resistance of a conductor of a gauge',
    holds: ({ record, now }) => consistentIn(now) > consistentIn(record.result),
  },
  {
    shape: 'least resistance',
    functions: ['schedule', 'scheduleOfRows', 'checkRun'],
    path: '**measured.consistentWith',
    reason: 'wider bounds hold more readings',
    changelog: 'the least resistance of a conductor of a gauge',
    holds: ({ was, is }) => typeof was === typeof is,
  },
  {
    shape: 'cable names',
    functions: ['*'],
    path: 'outcome',
    reason: 'where a cable belongs a name will do: one that is none is unknown, not of the wrong type',
    changelog: 'a cable or its name',
    holds: ({ was, is }) => was === `type ${String(is).replace(/^unknown /, '')}` && /(?:^|[. ])(?:cable|cord)$/.test(String(is)),
  },
];
