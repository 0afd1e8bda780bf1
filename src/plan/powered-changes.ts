/** What a person can change about a run to a powered device. @module */
import { type Cable, cable } from '../cable/cable.ts';
import { isCopper } from '../cable/copper.ts';
import { CONNECTION_RESISTANCE } from '../cable/read-cable.ts';
import type { Segment } from '../cable/run-resistance.ts';
import type { PseType } from '../ethernet/class-table.ts';
import { grantedClass } from '../ethernet/granted-class.ts';
import { CONNECTIONS } from '../limits/connections.ts';
import type { Metres } from '../quantity/units.ts';
import { cooledTo, cutTo, lengthOf, midway } from './cut-pieces.ts';
import { largestOnGrid, smallestOnGrid } from './grid.ts';
import type { PoweredFacts } from './powered-input.ts';
import type { PoweredRun } from './powered-run.ts';
import { type Change, downTo, firstOf, type Step } from './remedy.ts';

/** Two cords, one at each end, of a length that still reaches: below this a person cannot plug anything in. */
const LEAST_CORDS: Metres = 2;
/** A run has a plug at each end. */
const LEAST_CONNECTIONS = 2;
/** The best a mated plug and jack may be taken to be: 30 to 50 mΩ in IEEE 802.3bt simulations. [Ω] */
const LEAST_CONNECTION = 0.05;
/** Cords of this gauge lose least. [AWG] */
const THICK = 24;
/** The least that a grid of tenths holds. [m] */
const LEAST_LENGTH: Metres = 0.1;

/** Every kind of change that makes sense for the run, least disturbance first. @internal */
export function poweredChanges(run: PoweredFacts, before: PoweredRun, cables: readonly Cable[] = [cable('cat6')]): Change<PoweredFacts>[] {
  const { installed, cords = [], connections = 0, connectionResistance = CONNECTION_RESISTANCE.default } = run;
  const { type, pairs } = before.classLimits;
  const thinnest = thinnestOf(cords);
  const cordsLength = lengthOf(cords);
  const hottest = Math.max(...installed.map(({ temperature = 20 }) => temperature));
  const { installedLength } = before;
  const halves = midway(installed);
  return [
    {
      remedy: 'higher-port-type',
      from: type,
      unit: 'type',
      find: firstOf([2, 3, 4].filter((stronger) => stronger > type)),
      put: (stronger) => portOf(stronger),
    },
    {
      remedy: 'four-pair',
      from: 2,
      unit: 'pairs',
      find: firstOf(pairs === 2 && type >= 3 ? [4] : []),
      put: () => ({ pairs: 4 }),
    },
    {
      remedy: 'thicker-cords',
      from: thinnest,
      unit: 'AWG',
      find: firstOf(thinnest > THICK ? [THICK] : []),
      put: () => ({ cords: thickened(cords, cable('cord-24')) }),
    },
    {
      remedy: 'shorter-cords',
      from: cordsLength,
      unit: 'm',
      find: cordsLength > LEAST_CORDS ? downTo(cordsLength, 10, LEAST_CORDS) : firstOf([]),
      put: (length) => ({ cords: cutTo(cords, length) }),
    },
    {
      remedy: 'fewer-connections',
      from: connections,
      unit: 'connections',
      find: firstOf(Array.from({ length: Math.max(0, connections - LEAST_CONNECTIONS) }, (_, fewer) => connections - 1 - fewer)),
      put: (fewer) => ({ connections: fewer }),
    },
    {
      remedy: 'better-connections',
      from: connectionResistance,
      unit: 'Ω',
      find: connections > 0 ? downTo(connectionResistance, 100, LEAST_CONNECTION) : firstOf([]),
      put: (ohms) => ({ connectionResistance: ohms }),
    },
    {
      remedy: 'cooler-route',
      from: hottest,
      unit: '°C',
      find: hottest > 20 ? downTo(hottest, 1, 20) : firstOf([]),
      put: (most) => ({ installed: cooledTo(installed, most) }),
    },
    ...replacements(installed, cables),
    {
      remedy: 'shorter-run',
      from: installedLength,
      unit: 'm',
      find: downTo(installedLength, 10, LEAST_LENGTH),
      put: (length) => ({ installed: cutTo(installed, length) }),
    },
    {
      remedy: 'switch-between',
      from: installedLength,
      unit: 'm',
      find: firstOf(installedLength > 0 ? [Math.floor(lengthOf(halves[0]) * 10) / 10] : []),
      put: () => halves.map((half) => ({ installed: half })),
    },
  ];
}

/** The thinnest cable at hand that will do for the whole, and the fewest metres of the thickest for a part. */
function replacements(installed: readonly Segment[], cables: readonly Cable[]): Change<PoweredFacts>[] {
  const ohms = (one: Cable): number => one.maximumResistancePerMetre;
  const worst = installed.reduce((a, b) => (ohms(b.cable) > ohms(a.cable) ? b : a));
  const better = cables.filter((one) => isCopper(one.material) && ohms(one) < ohms(worst.cable)).sort((a, b) => ohms(b) - ohms(a));
  const thickest = better.at(-1);
  if (thickest === undefined) return [];
  const part = (metres: number): Segment[] =>
    installed.flatMap((piece) =>
      piece === worst
        ? [
            { ...piece, length: piece.length - metres },
            { ...piece, cable: thickest, length: metres },
          ]
        : [piece],
    );
  return [
    {
      remedy: 'thicker-cable',
      from: worst.cable.gauge,
      unit: 'AWG',
      find: firstOf(better.map((_, index) => index)),
      put: (index) => {
        const one = better[index] as Cable;
        return { installed: installed.map((piece) => (ohms(one) < ohms(piece.cable) ? { ...piece, cable: one } : piece)) };
      },
      told: (index) => (better[index] as Cable).gauge,
      use: (index) => (better[index] as Cable).title,
    },
    {
      remedy: 'replace-part',
      from: worst.length,
      unit: 'm',
      find: (passes) => {
        const metres = smallestOnGrid(worst.length, 10, passes);
        return metres !== undefined && metres < worst.length ? metres : undefined;
      },
      put: (metres) => ({ installed: part(metres) }),
      use: () => thickest.title,
    },
  ];
}

/** Where no single change is enough: what is plainly wrong put right, and then as much shorter as it takes. @internal */
export function combinedSteps(
  run: PoweredFacts,
  before: PoweredRun,
  passes: (change: Partial<PoweredFacts>) => boolean,
): Step<PoweredFacts>[] {
  const { installed, cords = [], connections = 0, poeClass } = run;
  const { type } = before.classLimits;
  const steps: Step<PoweredFacts>[] = [];
  const granting = ([2, 3, 4] as const).find(
    (stronger) => stronger > type && grantedClass(poeClass, { pseType: stronger }).grantedClass === poeClass,
  );
  if (before.grantedClass !== poeClass && granting !== undefined) {
    steps.push({ remedy: 'higher-port-type', from: type, to: granting, unit: 'type', change: portOf(granting) });
  }
  const most = before.checks.find(({ name }) => name === CONNECTIONS.name)?.limit ?? connections;
  if (connections > most) {
    steps.push({ remedy: 'fewer-connections', from: connections, to: most, unit: 'connections', change: { connections: most } });
  }
  if (thinnestOf(cords) > THICK) {
    const change = { cords: thickened(cords, cable('cord-24')) };
    steps.push({ remedy: 'thicker-cords', from: thinnestOf(cords), to: THICK, unit: 'AWG', change });
  }
  let pieces = installed;
  if (thinnestOf(installed) > THICK) {
    const thick = cable('cat6');
    pieces = thickened(installed, thick);
    const change = { installed: pieces };
    steps.push({ remedy: 'thicker-cable', from: thinnestOf(installed), to: thick.gauge, unit: 'AWG', use: thick.title, change });
  }
  const changed: Partial<PoweredFacts> = Object.assign({}, ...steps.map(({ change }) => change));
  if (passes(changed)) return steps;
  const { installedLength } = before;
  const to = largestOnGrid(installedLength, 10, (length) => passes({ ...changed, installed: cutTo(pieces, length) }));
  if (to > 0) {
    steps.push({ remedy: 'shorter-run', from: installedLength, to, unit: 'm', change: { installed: cutTo(pieces, to) } });
  }
  return steps;
}

/** A port of another type; a voltage measured at today's port says nothing about it. */
function portOf(type: number): Partial<PoweredFacts> {
  return { pseType: type as PseType, pseVoltage: undefined };
}

/** By gauge number; 0 where there is no piece. */
function thinnestOf(pieces: readonly Segment[]): number {
  return Math.max(...pieces.map((piece) => piece.cable.gauge), 0);
}

function thickened(pieces: readonly Segment[], thick: Cable): Segment[] {
  return pieces.map((piece) => (piece.cable.gauge > THICK ? { ...piece, cable: thick } : piece));
}
