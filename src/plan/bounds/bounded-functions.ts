/** The functions that `bounds` bounds: how a result of each is scored, and what corners do not bound. @module */
import { type RunResistance, runResistance } from '../../cable/run-resistance.ts';
import { type FarEndFault, farEndFaultCurrent } from '../../circuit/far-end-fault.ts';
import { type Loadability, loadability } from '../../circuit/loadability.ts';
import { type OperatingPoint, operatingPoint } from '../../circuit/operating-point.ts';
import { type Network, solveNetwork } from '../../circuit/solve-network.ts';
import { maximumTaps, type TapCount } from '../../circuit/tap-count.ts';
import { voltageDrop } from '../../circuit/voltage-drop.ts';
import { type PowerAtPd, powerAtPd } from '../../ethernet/power-at-pd.ts';
import type { Check } from '../../limits/check.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Ohms } from '../../quantity/units.ts';
import { governingCheck } from '../governing-check.ts';
import { type HighestLoad, highestLoad } from '../highest-load.ts';
import { type HighestTemperature, highestTemperature } from '../highest-temperature.ts';
import { type LowestSupplyVoltage, lowestSupplyVoltage } from '../lowest-supply-voltage.ts';
import { maximumRun } from '../maximum-run.ts';
import { checkPoweredRun, type PoweredRun } from '../powered-run.ts';
import type { MaximumRun } from '../run-limit.ts';
import { type SmallestConductor, smallestConductor } from '../smallest-conductor.ts';
import { checkTwoWireRun, type TwoWireRun } from '../two-wire-run.ts';

/** One function whose results are bounded by the corners of its input. @internal */
export interface BoundedFunction<R = unknown> {
  fn(): (input: never) => R;
  /** Every check of a result; a function without it judges nothing. */
  checks?(result: R): readonly Check[];
  /** Higher is better; what cannot be done is worse than anything that can. The margin that governs, if absent. */
  score?(result: R): number;
  /**
   * Keys of the result whose numbers corners do not bound: checks and limits, which differ from corner to corner and are bounded
   * by name instead; the window of a port voltage, whose margin is greatest in the middle; a channel whose cords vary, since more
   * cord leaves less installed cable.
   */
  readonly unbounded?: readonly string[];
  /** It judges a two-wire run at both ends of its supply: a range of that is its own business. */
  readonly judgesSupply?: true;
}

/** Every one of them, and what it returns. */
interface Results {
  readonly operatingPoint: OperatingPoint;
  readonly voltageDrop: OperatingPoint;
  readonly runResistance: RunResistance;
  readonly powerAtPd: PowerAtPd;
  readonly checkPoweredRun: PoweredRun;
  readonly checkTwoWireRun: TwoWireRun;
  readonly maximumRun: MaximumRun;
  readonly smallestConductor: SmallestConductor;
  readonly highestTemperature: HighestTemperature;
  readonly lowestSupplyVoltage: LowestSupplyVoltage;
  readonly highestLoad: HighestLoad;
  readonly farEndFaultCurrent: FarEndFault;
  readonly solveNetwork: Network;
  readonly loadability: Loadability;
  readonly maximumTaps: TapCount;
}

const FUNCTIONS: { readonly [K in keyof Results]: BoundedFunction<Results[K]> } = {
  operatingPoint: { fn: () => operatingPoint, score: (point) => scoreOfPoint(point) },
  voltageDrop: { fn: () => voltageDrop, score: (point) => scoreOfPoint(point) },
  runResistance: { fn: () => runResistance, score: ({ length }) => length },
  powerAtPd: {
    fn: () => powerAtPd,
    checks: ({ checks }) => checks,
    score: ({ feasible, checks }) => (feasible ? scoreOfChecks(checks) : IMPOSSIBLE),
    unbounded: ['checks', 'limits', 'portVoltage'],
  },
  checkPoweredRun: {
    fn: () => checkPoweredRun,
    checks: ({ checks }) => checks,
    unbounded: ['checks', 'governing', 'classLimits', 'portVoltage', 'channelLength', 'assumptions'],
  },
  checkTwoWireRun: {
    fn: () => checkTwoWireRun,
    checks: ({ checks }) => checks,
    unbounded: ['checks', 'governing', 'assumptions'],
    judgesSupply: true,
  },
  maximumRun: {
    fn: () => maximumRun,
    score: (found) => scoreOfAnswer(found, ({ length }) => length),
    unbounded: ['limits', 'channelLength'],
    judgesSupply: true,
  },
  smallestConductor: {
    fn: () => smallestConductor,
    score: (found) => scoreOfAnswer(found, ({ margin }) => margin),
    unbounded: ['candidates'],
    judgesSupply: true,
  },
  highestTemperature: {
    fn: () => highestTemperature,
    score: (found) => scoreOfAnswer(found, ({ temperature }) => temperature),
    unbounded: ['limits'],
    judgesSupply: true,
  },
  lowestSupplyVoltage: {
    fn: () => lowestSupplyVoltage,
    score: (found) => scoreOfAnswer(found, ({ supplyVoltage }) => -supplyVoltage),
    unbounded: ['limits'],
  },
  highestLoad: {
    fn: () => highestLoad,
    score: (found) => scoreOfAnswer(found, ({ load }) => load.power ?? load.current ?? -(load.resistance as Ohms)),
    unbounded: ['limits'],
    judgesSupply: true,
  },
  farEndFaultCurrent: { fn: () => farEndFaultCurrent, checks: ({ check }) => [check], unbounded: ['assumptions'] },
  solveNetwork: {
    fn: () => solveNetwork,
    score: (network) => (network.feasible ? network.lowest.voltage : impossible(1 / (1 + network.loadability))),
  },
  loadability: { fn: () => loadability, score: (found) => (found.bounded ? found.factor : Number.MAX_VALUE) },
  maximumTaps: { fn: () => maximumTaps, score: ({ count }) => count },
};

/** The record of a function; the same function of another entry or module format is known by its name. @internal */
export function boundedFunction(fn: unknown): BoundedFunction {
  const records: Readonly<Record<string, BoundedFunction>> = FUNCTIONS;
  const names = Object.keys(records);
  const name = names.find((one) => records[one]?.fn() === fn) ?? names.find((one) => typeof fn === 'function' && fn.name === one);
  if (name !== undefined) return records[name] as BoundedFunction;
  throw new InputError(typeof fn === 'function' ? 'unknown' : 'type', 'fn', `one of the functions ${names.join(', ')}`, fn);
}

/** Higher is better. @internal */
export function scoreOf(record: BoundedFunction, result: unknown): number {
  return record.score === undefined ? scoreOfChecks(record.checks?.(result) ?? []) : record.score(result);
}

/** What can be done, however badly, scores more. */
const IMPOSSIBLE = -1e30;

/** The less impossible the nearer it comes: by what is missing, or the inverse of what there is. */
function impossible(missing: number): number {
  return IMPOSSIBLE * (1 + missing);
}

function scoreOfChecks(checks: readonly Check[]): number {
  return checks.length === 0 ? 0 : governingCheck(checks).marginFraction;
}

function scoreOfPoint(point: OperatingPoint): number {
  return point.feasible ? point.loadVoltage : impossible(1 / (1 + point.maximumLoadPower));
}

type Answer = { readonly feasible: boolean; readonly unbounded?: true | undefined; readonly shortfall?: number };
type Found<A> = Exclude<A, { readonly feasible: false } | { readonly unbounded: true }>;

function scoreOfAnswer<A extends Answer>(answer: A, value: (found: Found<A>) => number): number {
  if (!answer.feasible) return impossible(answer.shortfall ?? 0);
  return answer.unbounded ? Number.MAX_VALUE : value(answer as Found<A>);
}
