/** A run, or a line, whose conductor is asked for, as the figures, the limits and the candidates of its sheet. @module */
import type { Cable } from '../../cable/cable.ts';
import { isCopper } from '../../cable/copper.ts';
import { atMaximum } from '../../conductor/to-maximum.ts';
import { isPowered } from '../../plan/one-unknown.ts';
import {
  type SmallestCableInput,
  type SmallestConductor,
  type SmallestTwoWireInput,
  smallestConductor,
} from '../../plan/smallest-conductor.ts';
import { supplyRange } from '../../plan/two-wire-run.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { SourceKey } from '../../sources/sources.ts';
import type { Reading, ReadingRow } from '../sheet.ts';
import { connectionReading, jointAssumptions } from './connection-steps.ts';
import { ampacityCautions, idleRows, lineLimitRows, mostOhms, poweredLimitRows } from './limit-rows.ts';
import { TWO_WIRE } from './line-steps.ts';
import { type Asking, asking, granted, placed, portRows, requireLoadResistance, requireNoCabling, runAssumptions } from './open-run.ts';
import { loadReading, POWER } from './point-steps.ts';
import { cordRows, cordsCase, POWERED, piecesOhms } from './run-steps.ts';
import { coefficientSource, temperatureAssumption } from './shared.ts';

/** What smallestConductor takes. */
export type SmallestConductorInput = SmallestTwoWireInput | SmallestCableInput;

/** Of a candidate. */
export const COPPER = 'held against the most';
export const FREE = 'held against nothing';
export const NOT_COPPER = 'not copper';
/** Of the run. */
export const BOUNDED = 'bounded';
export const NONE = 'none passes';

/** The core, and what of its answers this sheet does not show. */
export const asked: Asking<SmallestConductorInput, SmallestConductor> = asking((input: SmallestConductorInput) => {
  const answer = smallestConductor(input);
  if (isPowered<SmallestCableInput, SmallestTwoWireInput>(input)) requireNoCabling(input.cabling);
  else requireLoadResistance(input.load);
  if (input.length === 0) throw new InputError('range', 'length', 'more than 0 m: a run of no length takes any conductor', 0);
  return answer;
});

/** Whichever of the two it is. */
export function readOpen(input: SmallestConductorInput): Reading {
  return isPowered<SmallestCableInput, SmallestTwoWireInput>(input) ? readRun(input) : readLine(input);
}

/** One candidate, as far as it decides what applies. */
interface Candidate {
  readonly label: string;
  readonly r20: number;
  readonly alpha: number;
  readonly isCopper: boolean;
  readonly source: SourceKey;
}

function readRun(input: SmallestCableInput): Reading {
  const { candidates, cords = [], minimumVoltage, maximumResistance, temperature, length } = input;
  const { limits, P } = granted(input);
  const { pseVoltage: V = limits.pseVoltageMin } = input;
  const sorted = [...candidates].sort((a, b) => b.maximumResistancePerMetre - a.maximumResistancePerMetre);
  const own = sorted.filter(({ material }) => isCopper(material)).at(-1) ?? (sorted.at(-1) as Cable);
  const limit = poweredLimitRows(limits, V, P, minimumVoltage, maximumResistance);
  const joints = connectionReading(input.connections, input.connectionResistance);
  const { n = 0, R_c = 0 } = joints.values;
  const rest = piecesOhms(cords) + n * R_c;
  const most = limit.map((row) => mostOhms(row, { low: V, high: V }, { power: P }, limits.psePowerLimit) / (row.values['f_#'] ?? 1) - rest);
  const wires = sorted.map(
    ({ title, material, maximumResistancePerMetre, temperatureCoefficient, source }): Candidate => ({
      label: title,
      r20: maximumResistancePerMetre,
      alpha: temperatureCoefficient,
      isCopper: isCopper(material),
      source,
    }),
  );
  return reading(
    input,
    [
      ...portRows(limits, P, input.pseVoltage, [{ cable: own, length }, ...cords]),
      ...idleRows(V, { power: P }, [
        ['pd-voltage', limits.pdVoltageLimit],
        ['device-voltage', input.minimumVoltage],
      ]),
    ],
    limit,
    wires,
    Math.min(...most) / length,
    {
      values: { V, P, P_lim: limits.psePowerLimit, ...joints.values },
      cases: [POWERED, POWER, cordsCase(cords), limits.pairs === 4 ? 'two pairsets' : 'one pairset', ...joints.cases],
      rows: { cord: cordRows(cords) },
      assumptions: [...temperatureAssumption(temperature), ...runAssumptions(input, limits)],
    },
  );
}

function readLine(input: SmallestTwoWireInput): Reading {
  const { candidates, load, connections = 0, connectionResistance = 0, length } = input;
  const supply = supplyRange(input.supplyVoltage);
  const loaded = loadReading(load);
  const [kind = POWER] = loaded.cases;
  const limits = lineLimitRows(input, supply, kind);
  const joints = connectionReading(connections, connectionResistance);
  const most = limits.limit.map((row) => mostOhms(row, supply, load) - 2 * connections * connectionResistance);
  const wires = candidates
    .map((candidate): Candidate => {
      const { name, resistancePerMetre, temperatureCoefficient = 0, source } = atMaximum(candidate);
      return { label: name, r20: resistancePerMetre, alpha: temperatureCoefficient, isCopper: true, source };
    })
    .sort((a, b) => b.r20 - a.r20);
  return reading(input, limits.fixed, limits.limit, wires, Math.min(...most) / (2 * length), {
    values: { ...loaded.values, V: supply.low, V_hi: supply.high, ...joints.values },
    cases: [TWO_WIRE, kind, ...joints.cases, ...limits.cases],
    assumptions: [...temperatureAssumption(input.temperature), ...jointAssumptions(input)],
    cautions: ampacityCautions(input),
  });
}

function reading(
  input: SmallestConductorInput,
  fixed: readonly ReadingRow[],
  limit: readonly ReadingRow[],
  wires: readonly Candidate[],
  most: number,
  of: Reading,
): Reading {
  const { temperature: T = 20, length: L } = input;
  const [circuit] = of.cases ?? [];
  const bounded = limit.length > 0;
  const passing = wires.findIndex(({ r20, alpha, isCopper: copper }) => copper && !(r20 * (1 + alpha * (T - 20)) > most));
  const chosen = wires[passing];
  return {
    ...of,
    values: { ...of.values, L, T, T_ref: 20 },
    cases: [...(of.cases ?? []), ...(bounded ? [BOUNDED, `${BOUNDED}, ${circuit}`] : []), ...(chosen === undefined ? [NONE] : [])],
    rows: {
      ...of.rows,
      ...placed(asked.said(input), fixed, limit),
      candidate: wires.map(({ label, r20, alpha, isCopper: copper, source }) => ({
        label,
        source,
        sources: { 'alpha_#': coefficientSource(alpha) },
        values: { 'r20_#': r20, 'alpha_#': alpha },
        cases: [copper ? (bounded ? COPPER : FREE) : NOT_COPPER],
      })),
      chosen: chosen === undefined ? [] : [{ label: chosen.label, values: {}, core: String(passing) }],
    },
  };
}

