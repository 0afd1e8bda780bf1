/** Changes that put a failing run to a powered device right, each computed and checked again. @module */
import { type Cable, cable } from '../cable/cable.ts';
import { isCopper } from '../cable/copper.ts';
import { cableResistancePerMetre, type Segment, segmentResistance } from '../cable/run-resistance.ts';
import type { PseType } from '../ethernet/class-table.ts';
import { assignedClass } from '../ethernet/poe-class.ts';
import type { Metres } from '../quantity/units.ts';
import { largestOnGrid, smallestOnGrid } from './grid.ts';
import { checkPoweredRun, type PoweredRunInput } from './powered-run.ts';
import type { Remedy, RemedyStep } from './remedy.ts';

/** What is at hand. */
export interface PoweredRemedyOptions {
  /** Cables in the van that may replace the installed one; Category 6 if absent, which helps where a cord was installed. */
  readonly cables?: readonly Cable[] | undefined;
}

/** Two cords, one at each end, of a length that still reaches: below this a person cannot plug anything in. */
const LEAST_CORDS: Metres = 2;
/** Less than this is rounding, not cable. */
const SHORTEST: Metres = 1e-9;
/** A run has a plug at each end. */
const LEAST_CONNECTIONS = 2;
/** The best a mated plug and jack may be taken to be: 30 to 50 mΩ in IEEE 802.3bt simulations. [Ω] */
const LEAST_CONNECTION = 0.05;

/**
 * Changes, any one of which makes a failing run to a powered device pass, least disturbance first.
 *
 * Single changes; where none is enough, one combination (`also`) of what is plainly wrong and as much less length as it takes.
 *
 * Only what a person can carry out: the device fixes its class, so a port of a higher type, never a higher class; four
 * pairs only where the port can (whether the device can is for its data sheet); never a voltage above the port's type.
 * Lengths are rounded down to 0.1 m, temperatures to 1 °C, and hold wherever
 * along the run the metres are saved. Each change was put into the run and passed every check that
 * the run is held against; `uncertain` verdicts are left as they are.
 *
 * @param input - The run, as for {@link checkPoweredRun}.
 * @param options - The cables at hand.
 * @returns The changes; none for a run that does not fail, or that nothing of the kind puts right.
 * @throws {@link InputError} As {@link checkPoweredRun}.
 * @example A class 4 camera on 90 m of warm cable with thin cords: too long for a signal
 * const remedies = poweredRunRemedies({
 *   installed: [{ cable: cable('cat5e'), length: 80, temperature: 40 }],
 *   cords: [{ cable: cable('cord-28'), length: 10 }],
 *   connections: 4,
 *   poeClass: 4,
 * });
 * remedies.map(({ remedy, to }) => [remedy, to]); // => [['thicker-cords', 24], ['shorter-cords', 8], ['cooler-route', 27], ['shorter-run', 76.3], ['switch-between', 40]]
 */
export function poweredRunRemedies(input: PoweredRunInput, options: PoweredRemedyOptions = {}): Remedy[] {
  const before = checkPoweredRun(input);
  if (before.verdict.power !== 'fail' && before.verdict.cabling !== 'fail') return [];
  const { installed, cords = [], connections = 0, connectionResistance = 0.2 } = input;
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
    const to = largestOnGrid(cordsLength, 10, (length) => judge({ cords: cutTo(cords, length) }) !== undefined);
    if (to >= LEAST_CORDS) attempt({ cords: cutTo(cords, to) }, 'shorter-cords', cordsLength, to, 'm');
  }
  for (let fewer = connections - 1; fewer >= LEAST_CONNECTIONS; fewer--) {
    if (attempt({ connections: fewer }, 'fewer-connections', connections, fewer, 'connections')) break;
  }
  if (connections > 0) {
    const better = largestOnGrid(connectionResistance, 100, (ohms) => judge({ connectionResistance: ohms }) !== undefined);
    if (better >= LEAST_CONNECTION) attempt({ connectionResistance: better }, 'better-connections', connectionResistance, better, 'Ω');
  }
  const hottest = Math.max(...installed.map(({ temperature = 20 }) => temperature));
  if (hottest > 20) {
    const to = largestOnGrid(hottest, 1, (most) => judge({ installed: cooledTo(installed, most) }) !== undefined);
    if (to >= 20) attempt({ installed: cooledTo(installed, to) }, 'cooler-route', hottest, to, '°C');
  }
  const installedLength = lengthOf(installed);
  replacements(options.cables ?? [cable('cat6')]);
  const to = largestOnGrid(installedLength, 10, (length) => judge({ installed: cutTo(installed, length) }) !== undefined);
  if (to > 0) attempt({ installed: cutTo(installed, to) }, 'shorter-run', installedLength, to, 'm');
  const middle = balanced(installed);
  if (installedLength > 0 && middle.every((half) => judge({ installed: half }) !== undefined)) {
    attemptHalves(middle, installedLength, Math.floor(lengthOf(middle[0]) * 10) / 10);
  }
  if (found.length === 0) combination();
  return found;

  function judge(change: Partial<PoweredRunInput>): Remedy['verdict'] | undefined {
    const { verdict } = checkPoweredRun({ ...input, ...change });
    return verdict.power === 'fail' || verdict.cabling === 'fail' ? undefined : verdict;
  }

  function attempt(
    change: Partial<PoweredRunInput>,
    remedy: Remedy['remedy'],
    from: number,
    to: number,
    unit: Remedy['unit'],
    use?: string,
  ): boolean {
    const verdict = judge(change);
    if (verdict !== undefined) found.push({ remedy, from, to, unit, ...(use === undefined ? {} : { use }), verdict });
    return verdict !== undefined;
  }

  /** The thinnest cable at hand that will do for the whole, and the fewest metres of the thickest for a part. */
  function replacements(cables: readonly Cable[]): void {
    const ohms = (one: Cable): number => one.maximumResistancePerMetre;
    const worst = installed.reduce<Segment | undefined>((a, b) => (a === undefined || ohms(b.cable) > ohms(a.cable) ? b : a), undefined);
    if (worst === undefined) return;
    const better = cables.filter((one) => isCopper(one.material) && ohms(one) < ohms(worst.cable)).sort((a, b) => ohms(b) - ohms(a));
    const whole = (one: Cable): Segment[] => installed.map((piece) => (ohms(one) < ohms(piece.cable) ? { ...piece, cable: one } : piece));
    const enough = better.find((one) => judge({ installed: whole(one) }) !== undefined);
    if (enough !== undefined) attempt({ installed: whole(enough) }, 'thicker-cable', worst.cable.gauge, enough.gauge, 'AWG', enough.title);
    const thickest = better.at(-1);
    if (thickest === undefined) return;
    const part = (metres: number): Segment[] =>
      installed.flatMap((piece) =>
        piece === worst
          ? [
              { ...piece, length: piece.length - metres },
              { ...piece, cable: thickest, length: metres },
            ]
          : [piece],
      );
    const metres = smallestOnGrid(worst.length, 10, (length) => judge({ installed: part(length) }) !== undefined);
    if (metres !== undefined && metres < worst.length)
      attempt({ installed: part(metres) }, 'replace-part', worst.length, metres, 'm', thickest.title);
  }

  /** Where no single change is enough: what is plainly wrong put right, and then as much shorter as it takes. */
  function combination(): void {
    const steps: RemedyStep[] = [];
    let changed: Partial<PoweredRunInput> = {};
    const step = (
      change: Partial<PoweredRunInput>,
      remedy: RemedyStep['remedy'],
      from: number,
      to: number,
      unit: RemedyStep['unit'],
      use?: string,
    ) => {
      changed = { ...changed, ...change };
      steps.push({ remedy, from, to, unit, ...(use === undefined ? {} : { use }) });
    };
    const granting = [2, 3, 4].find((stronger) => stronger > type && assignedClass(input.poeClass, stronger as PseType) === input.poeClass);
    if (before.grantedClass !== input.poeClass && granting !== undefined) {
      step({ pseType: granting as PseType, pseVoltage: undefined }, 'higher-port-type', type, granting, 'type');
    }
    const most = before.cablingChecks.find(({ name }) => name === 'connections')?.limit ?? connections;
    if (connections > most) step({ connections: most }, 'fewer-connections', connections, most, 'connections');
    if (thinnest > 24) {
      const thicker = cords.map((cord) => (cord.cable.gauge > 24 ? { ...cord, cable: cable('cord-24') } : cord));
      step({ cords: thicker }, 'thicker-cords', thinnest, 24, 'AWG');
    }
    const thin = Math.max(...installed.map(({ cable: own }) => own.gauge), 0);
    if (thin > 24) {
      const thick = cable('cat6');
      const replaced = installed.map((piece) => (piece.cable.gauge > 24 ? { ...piece, cable: thick } : piece));
      step({ installed: replaced }, 'thicker-cable', thin, thick.gauge, 'AWG', thick.title);
    }
    if (judge(changed) === undefined) {
      const pieces = changed.installed ?? installed;
      const to = largestOnGrid(installedLength, 10, (length) => judge({ ...changed, installed: cutTo(pieces, length) }) !== undefined);
      if (to > 0) step({ installed: cutTo(pieces, to) }, 'shorter-run', installedLength, to, 'm');
    }
    const verdict = judge(changed);
    const [first, ...also] = steps;
    if (verdict !== undefined && first !== undefined) found.push({ ...first, also, verdict });
  }

  function attemptHalves(halves: readonly [Segment[], Segment[]], from: Metres, to: Metres): void {
    const verdicts = halves.map((half) => judge({ installed: half }) as Remedy['verdict']);
    const [near, far] = verdicts as [Remedy['verdict'], Remedy['verdict']];
    const worse = (side: keyof Remedy['verdict']) => (near[side] === 'pass' ? far[side] : near[side]);
    found.push({ remedy: 'switch-between', from, to, unit: 'm', verdict: { power: worse('power'), cabling: worse('cabling') } });
  }
}

/** The installed pieces cut where both halves have the same resistance, each with the cords and connections of the whole. */
function balanced(installed: readonly Segment[]): [Segment[], Segment[]] {
  const ohms = installed.map((piece) => segmentResistance(piece, 'maximum'));
  let left = ohms.reduce((sum, one) => sum + one, 0) / 2;
  const near: Segment[] = [];
  const far: Segment[] = [];
  for (const [i, piece] of installed.entries()) {
    const own = ohms[i] as number;
    const exact = own === 0 ? 0 : Math.min(1, left / own);
    // A hair of a piece is the rounding of the sum, and nothing to cut a cable for.
    const share = exact < 1e-9 ? 0 : exact > 1 - 1e-9 ? 1 : exact;
    left -= share * own;
    if (share > 0) near.push({ ...piece, length: piece.length * share });
    if (share < 1) far.push({ ...piece, length: piece.length * (1 - share) });
  }
  return [near, far];
}

function lengthOf(pieces: readonly Segment[]): Metres {
  return pieces.reduce((sum, { length }) => sum + length, 0);
}

/**
 * Pieces cut down to so many metres in all, in the way that helps least: off those that have the least resistance first.
 *
 * Whoever shortens a run cuts where it suits; if even this cut is enough, any is.
 */
function cutTo(pieces: readonly Segment[], total: Metres): Segment[] {
  const weight = ({ cable: own, temperature = 20 }: Segment): number => cableResistancePerMetre(own, temperature, 'maximum');
  const order = [...pieces].sort((a, b) => weight(a) - weight(b) || a.cable.gauge - b.cable.gauge);
  let off = lengthOf(pieces) - total;
  const left = new Map<Segment, Metres>();
  for (const piece of order) {
    const cut = Math.min(Math.max(off, 0), piece.length);
    off -= cut;
    left.set(piece, piece.length - cut < SHORTEST ? 0 : piece.length - cut);
  }
  return pieces.map((piece) => ({ ...piece, length: left.get(piece) as Metres }));
}

function cooledTo(pieces: readonly Segment[], most: number): Segment[] {
  return pieces.map((piece) => ({ ...piece, temperature: Math.min(piece.temperature ?? 20, most) }));
}
