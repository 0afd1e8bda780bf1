/** What a person can change about a run to a powered device. @module */
import { type Cable, cable } from '../cable/cable.ts';
import { isCopper } from '../cable/copper.ts';
import { CONNECTION_RESISTANCE } from '../cable/read-cable.ts';
import type { Segment } from '../cable/run-resistance.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import type { PseType } from '../ethernet/class-table.ts';
import { grantedClass } from '../ethernet/granted-class.ts';
import { PSE_TYPES } from '../ethernet/port-table.ts';
import { CONNECTIONS } from '../limits/all.ts';
import type { Metres } from '../quantity/units.ts';
import { cooledTo, cutTo, lengthOf, midway } from './cut-pieces.ts';
import { largestOnGrid, smallestOnGrid } from './grid.ts';
import type { PoweredFacts } from './powered-input.ts';
import type { PoweredRun } from './powered-run.ts';
import { type Change, change, downTo, firstOf, NEVER, type RemedyName, type Step } from './remedy.ts';

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
  const { installed } = run;
  const { installedLength } = before;
  const hottest = Math.max(...installed.map(({ temperature = CONDUCTOR_TEMPERATURE.default }) => temperature));
  const halves = midway(installed);
  return [
    ...simpleChanges(run, before),
    change<PoweredFacts>('cooler-route', '°C', hottest, hottest > 20 ? downTo(hottest, 1, 20) : NEVER, (most) => ({
      installed: cooledTo(installed, most),
    })),
    ...replacements(installed, cables),
    change<PoweredFacts>('shorter-run', 'm', installedLength, downTo(installedLength, 10, LEAST_LENGTH), (to) => ({
      installed: cutTo(installed, to),
    })),
    change<PoweredFacts>(
      'switch-between',
      'm',
      installedLength,
      firstOf(installedLength > 0 ? [Math.floor(lengthOf(halves[0]) * 10) / 10] : []),
      () => halves.map((half) => ({ installed: half })),
    ),
  ];
}

/** The changes that leave the installed cable as it is. */
function simpleChanges(run: PoweredFacts, { classLimits: { type, pairs } }: PoweredRun): Change<PoweredFacts>[] {
  const { cords = [], connections = 0, connectionResistance = CONNECTION_RESISTANCE.default } = run;
  const thinnest = thinnestOf(cords);
  const cordsLength = lengthOf(cords);
  const fewer = Array.from({ length: Math.max(0, connections - LEAST_CONNECTIONS) }, (_, index) => connections - 1 - index);
  return [
    // A voltage measured at today's port says nothing about another one.
    change('higher-port-type', 'type', type, firstOf(PSE_TYPES.filter((one) => one > type)), (one) => ({
      pseType: one as PseType,
      pseVoltage: undefined,
    })),
    change('four-pair', 'pairs', 2, firstOf(pairs === 2 && type >= 3 ? [4] : []), () => ({ pairs: 4 })),
    change('thicker-cords', 'AWG', thinnest, firstOf(thinnest > THICK ? [THICK] : []), () => ({
      cords: thickened(cords, cable('cord-24')),
    })),
    change('shorter-cords', 'm', cordsLength, cordsLength > LEAST_CORDS ? downTo(cordsLength, 10, LEAST_CORDS) : NEVER, (length) => ({
      cords: cutTo(cords, length),
    })),
    change('fewer-connections', 'connections', connections, firstOf(fewer), (count) => ({ connections: count })),
    change(
      'better-connections',
      'Ω',
      connectionResistance,
      connections > 0 ? downTo(connectionResistance, 100, LEAST_CONNECTION) : NEVER,
      (ohms) => ({
        connectionResistance: ohms,
      }),
    ),
  ];
}

/** The thinnest cable at hand that will do for the whole, and the fewest metres of the thickest for a part. */
function replacements(installed: readonly Segment[], cables: readonly Cable[]): Change<PoweredFacts>[] {
  const ohms = (one: Cable): number => one.maximumResistancePerMetre;
  const worst = installed.reduce((a, b) => (ohms(b.cable) > ohms(a.cable) ? b : a));
  const better = cables.filter((one) => isCopper(one.material) && ohms(one) < ohms(worst.cable)).sort((a, b) => ohms(b) - ohms(a));
  const thickest = better.at(-1);
  if (thickest === undefined) return [];
  const chosen = (index: number): Cable => better[index] ?? thickest;
  const whole = change<PoweredFacts>('thicker-cable', 'AWG', worst.cable.gauge, firstOf([...better.keys()]), (index) => ({
    installed: installed.map((piece) => (ohms(chosen(index)) < ohms(piece.cable) ? { ...piece, cable: chosen(index) } : piece)),
  }));
  const part = change<PoweredFacts>(
    'replace-part',
    'm',
    worst.length,
    (passes) => upTo(worst.length, passes),
    (metres) => ({
      installed: installed.flatMap((piece) =>
        piece === worst
          ? [
              { ...piece, length: piece.length - metres },
              { ...piece, cable: thickest, length: metres },
            ]
          : [piece],
      ),
    }),
  );
  return [
    { ...whole, told: (index) => chosen(index).gauge, use: (index) => chosen(index).title },
    { ...part, use: () => thickest.title },
  ];
}

/** The fewest metres that pass, less than all of them. */
function upTo(all: Metres, passes: (metres: number) => boolean): Metres | undefined {
  const metres = smallestOnGrid(all, 10, passes);
  return metres !== undefined && metres < all ? metres : undefined;
}

/** Where no single change is enough: what is plainly wrong put right, and then as much shorter as it takes. @internal */
export function combinedSteps(
  run: PoweredFacts,
  before: PoweredRun,
  passes: (change: Partial<PoweredFacts>) => boolean,
): Step<PoweredFacts>[] {
  const { installed, cords = [], connections = 0, poeClass } = run;
  const { classLimits, grantedClass: granted, installedLength, checks } = before;
  const simple = simpleChanges(run, before);
  const steps: Step<PoweredFacts>[] = [];
  const add = (name: RemedyName, to: number): void => {
    for (const { remedy, from, unit, put } of simple) {
      if (remedy === name) steps.push({ remedy, from, to, unit, change: put(to) as Partial<PoweredFacts> });
    }
  };
  const granting = PSE_TYPES.find((one) => one > classLimits.type && grantedClass(poeClass, { pseType: one }).grantedClass === poeClass);
  if (granted !== poeClass && granting !== undefined) add('higher-port-type', granting);
  const most = checks.find(({ name }) => name === CONNECTIONS.name)?.limit ?? connections;
  if (connections > most) add('fewer-connections', most);
  if (thinnestOf(cords) > THICK) add('thicker-cords', THICK);
  const thin = thinnestOf(installed);
  const thick = cable('cat6');
  const pieces = thin > THICK ? thickened(installed, thick) : installed;
  if (thin > THICK) {
    steps.push({ remedy: 'thicker-cable', from: thin, to: thick.gauge, unit: 'AWG', use: thick.title, change: { installed: pieces } });
  }
  const changed: Partial<PoweredFacts> = Object.assign({}, ...steps.map((step) => step.change));
  if (passes(changed)) return steps;
  const shorter = (length: Metres): Partial<PoweredFacts> => ({ installed: cutTo(pieces, length) });
  const to = largestOnGrid(installedLength, 10, (length) => passes({ ...changed, ...shorter(length) }));
  return to > 0 ? [...steps, { remedy: 'shorter-run', from: installedLength, to, unit: 'm', change: shorter(to) }] : steps;
}

/** By gauge number; 0 where there is no piece. */
function thinnestOf(pieces: readonly Segment[]): number {
  return Math.max(...pieces.map((piece) => piece.cable.gauge), 0);
}

function thickened(pieces: readonly Segment[], thick: Cable): Segment[] {
  return pieces.map((piece) => (piece.cable.gauge > THICK ? { ...piece, cable: thick } : piece));
}
