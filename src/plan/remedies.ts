/** Changes that put a failing run right, each computed and checked again. @module */
import { cable } from '../cable/cable.ts';
import type { Segment } from '../cable/run-resistance.ts';
import { awg } from '../conductor/awg.ts';
import type { PseType } from '../ethernet/class-table.ts';
import type { Metres } from '../quantity/units.ts';
import { checkPoweredRun, type PoweredRunInput } from './powered-run.ts';
import type { Remedy } from './remedy.ts';
import { checkTwoWireRun, type TwoWireRunInput } from './two-wire-run.ts';

/** Two cords, one at each end, of a length that still reaches: below this a person cannot plug anything in. */
const LEAST_CORDS: Metres = 2;
/** A run has a plug at each end. */
const LEAST_CONNECTIONS = 2;

/**
 * Single changes, any one of which makes a failing run to a powered device pass, least disturbance first.
 *
 * Only what a person can carry out: the device fixes its class, so a port of a higher type, never a higher class; four
 * pairs only where the port can (whether the device can is for its data sheet); never a voltage above the port's type.
 * Lengths are rounded down to 0.1 m, temperatures to 1 °C. Each change was put into the run and passed every check that
 * the run is held against; `uncertain` verdicts are left as they are.
 *
 * @param input - The run, as for {@link checkPoweredRun}.
 * @returns The changes; none for a run that does not fail, or that no single change puts right.
 * @throws {@link InputError} As {@link checkPoweredRun}.
 * @example A class 4 camera on 90 m of warm cable with thin cords: too long for a signal
 * const remedies = poweredRunRemedies({
 *   installed: [{ cable: cable('cat5e'), length: 80, temperature: 40 }],
 *   cords: [{ cable: cable('cord-28'), length: 10 }],
 *   connections: 4,
 *   poeClass: 4,
 * });
 * remedies.map(({ remedy, to }) => [remedy, to]); // => [['thicker-cords', 24], ['shorter-cords', 8], ['cooler-route', 27], ['shorter-run', 76.3]]
 */
export function poweredRunRemedies(input: PoweredRunInput): Remedy[] {
  const before = checkPoweredRun(input);
  if (before.verdict.power !== 'fail' && before.verdict.cabling !== 'fail') return [];
  const { installed, cords = [], connections = 0 } = input;
  const type = before.power.limits.type;
  const found: Remedy[] = [];

  for (let stronger = type + 1; stronger <= 4; stronger++) {
    // A voltage measured at today's port says nothing about another one.
    if (attempt({ pseType: stronger as PseType, pseVoltage: undefined }, 'higher-port-type', type, stronger, 'type')) break;
  }
  if (before.power.limits.pairs === 2 && type >= 3) attempt({ pairs: 4 }, 'four-pair', 2, 4, 'pairs');

  const thinnest = Math.max(...cords.map(({ cable }) => cable.gauge), 0);
  if (thinnest > 24) {
    const thicker = cords.map((cord) => (cord.cable.gauge > 24 ? { ...cord, cable: cable('cord-24') } : cord));
    attempt({ cords: thicker }, 'thicker-cords', thinnest, 24, 'AWG');
  }
  const cordsLength = lengthOf(cords);
  if (cordsLength > LEAST_CORDS) {
    const to = largestOnGrid(cordsLength, 10, (length) => judge({ cords: scaled(cords, length / cordsLength) }) !== undefined);
    if (to >= LEAST_CORDS) attempt({ cords: scaled(cords, to / cordsLength) }, 'shorter-cords', cordsLength, to, 'm');
  }
  for (let fewer = connections - 1; fewer >= LEAST_CONNECTIONS; fewer--) {
    if (attempt({ connections: fewer }, 'fewer-connections', connections, fewer, 'connections')) break;
  }
  const hottest = Math.max(...installed.map(({ temperature = 20 }) => temperature));
  if (hottest > 20) {
    const to = largestOnGrid(hottest, 1, (most) => judge({ installed: cooledTo(installed, most) }) !== undefined);
    if (to >= 20) attempt({ installed: cooledTo(installed, to) }, 'cooler-route', hottest, to, '°C');
  }
  const installedLength = lengthOf(installed);
  const to = largestOnGrid(
    installedLength,
    10,
    (length) => judge({ installed: scaled(installed, length / installedLength) }) !== undefined,
  );
  if (to > 0) attempt({ installed: scaled(installed, to / installedLength) }, 'shorter-run', installedLength, to, 'm');
  return found;

  function judge(change: Partial<PoweredRunInput>): Remedy['verdict'] | undefined {
    const { verdict } = checkPoweredRun({ ...input, ...change });
    return verdict.power === 'fail' || verdict.cabling === 'fail' ? undefined : verdict;
  }

  function attempt(change: Partial<PoweredRunInput>, remedy: Remedy['remedy'], from: number, to: number, unit: Remedy['unit']): boolean {
    const verdict = judge(change);
    if (verdict !== undefined) found.push({ remedy, from, to, unit, verdict });
    return verdict !== undefined;
  }
}

/** Gauges a van carries for two-wire runs, thinnest first. Common practice, no source. */
const GAUGES: readonly number[] = [22, 20, 18, 16, 14, 12, 10];

/**
 * Single changes, any one of which makes a failing two-wire run pass: a thicker conductor, or a shorter run.
 *
 * @param input - The run, as for {@link checkTwoWireRun}.
 * @returns The changes; none for a run that does not fail.
 * @throws {@link InputError} As {@link checkTwoWireRun}.
 * @example
 * const remedies = twoWireRemedies({
 *   supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(22), length: 90, load: { power: 6 }, minimumVoltage: 19,
 * });
 * remedies.map(({ remedy, to }) => [remedy, to]); // => [['thicker-conductor', 20], ['shorter-run', 58.6]]
 */
export function twoWireRemedies(input: TwoWireRunInput): Remedy[] {
  if (checkTwoWireRun(input).verdict !== 'fail') return [];
  const { conductor, length } = input;
  const found: Remedy[] = [];
  for (const to of GAUGES) {
    const thicker = awg(to, { stranding: conductor.stranding });
    // A conductor known only by its resistance is compared, and named, by the copper it is equal to.
    if (thicker.area <= conductor.area) continue;
    if (attempt({ conductor: thicker }, 'thicker-conductor', equivalentGauge(conductor.diameter), to, 'AWG')) break;
  }
  const to = largestOnGrid(length, 10, (shorter) => judge({ length: shorter }) !== undefined);
  if (to > 0) attempt({ length: to }, 'shorter-run', length, to, 'm');
  return found;

  function judge(change: Partial<TwoWireRunInput>): Remedy['verdict'] | undefined {
    const { verdict } = checkTwoWireRun({ ...input, ...change });
    return verdict === 'fail' ? undefined : { power: verdict, cabling: 'pass' };
  }

  function attempt(change: Partial<TwoWireRunInput>, remedy: Remedy['remedy'], from: number, to: number, unit: Remedy['unit']): boolean {
    const verdict = judge(change);
    if (verdict !== undefined) found.push({ remedy, from, to, unit, verdict });
    return verdict !== undefined;
  }
}

/** The whole gauge nearest to a diameter (ASTM B258). [AWG] */
function equivalentGauge(diameter: number): number {
  return Math.round(36 - 39 * (Math.log(diameter / 0.127) / Math.log(92)));
}

function lengthOf(pieces: readonly Segment[]): Metres {
  return pieces.reduce((sum, { length }) => sum + length, 0);
}

function scaled(pieces: readonly Segment[], factor: number): Segment[] {
  return pieces.map((piece) => ({ ...piece, length: piece.length * factor }));
}

function cooledTo(pieces: readonly Segment[], most: number): Segment[] {
  return pieces.map((piece) => ({ ...piece, temperature: Math.min(piece.temperature ?? 20, most) }));
}

/** The largest multiple of `1/perUnit` under `from` that passes, by halving: longer, or hotter, is never better. */
function largestOnGrid(from: number, perUnit: number, passes: (value: number) => boolean): number {
  let low = 0;
  let high = Math.ceil(from * perUnit);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (passes(middle / perUnit)) low = middle;
    else high = middle;
  }
  return low / perUnit;
}
