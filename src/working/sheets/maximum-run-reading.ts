/** A run, or a line, whose length is asked for, as the figures and the limits of its sheet. @module */
import type { Segment } from '../../cable/run-resistance.ts';
import { legsOf } from '../../circuit/voltage-drop.ts';
import { CABLING_RULES } from '../../plan/cabling-rules.ts';
import { copperFraction } from '../../plan/material-check.ts';
import type { MaximumPoweredRunInput } from '../../plan/maximum-powered-run.ts';
import { supplyRange, type TwoWireCircuit, type UnequalTwoWireCircuit } from '../../plan/two-wire-run.ts';
import type { Reading, ReadingRow } from '../sheet.ts';
import { cablingRows } from './cabling-limits.ts';
import { connectionReading, jointAssumptions } from './connection-steps.ts';
import { ampacityCautions, idleRows, limitRow, lineLimitRows, poweredLimitRows } from './limit-rows.ts';
import { legReading, TWO_WIRE } from './line-steps.ts';
import { granted } from './open-run.ts';
import { loadReading, POWER } from './point-steps.ts';
import { cordRows, cordsCase, POWERED } from './run-steps.ts';
import { coefficientSource, connectionAssumptions, FOUR_PAIRS, TWO_PAIRS, temperatureAssumption } from './shared.ts';

const UNBOUNDED = 'nothing bounds the length of this run';

/** Installed cable to a powered device. */
export function readPowered(input: MaximumPoweredRunInput): Reading {
  const { cable, temperature, cords = [], connections = 0, cabling = 'TIA-568' } = input;
  const { limits, P } = granted(input);
  const { pseVoltage: V = limits.pseVoltageMin } = input;
  const own = (length: number): Segment => ({ cable, length, temperature });
  const ruled = cabling === 'none' ? undefined : cablingRows(CABLING_RULES[cabling], { own, cords, connections, limits });

  const fixed: ReadingRow[] = [limitRow('pd-power', { 'v_#': P, 'w_#': limits.pdPower }, ['W'])];
  // The share of pieces that are not copper, of which none is allowed.
  const share = 1 - copperFraction([own(0), ...cords]);
  if (share > 0) fixed.push(limitRow('material', { 'v_#': share, 'w_#': 0 }, ['1']));
  if (V > limits.pseVoltageMax) fixed.push(limitRow('pse-voltage', { 'v_#': V, 'w_#': limits.pseVoltageMax }, ['V']));
  fixed.push(
    ...idleRows(V, { power: P }, [
      ['pd-voltage', limits.pdVoltageLimit],
      ['device-voltage', input.minimumVoltage],
    ]),
  );
  fixed.push(...(ruled?.fixed ?? []));
  const limit = [...poweredLimitRows(limits, V, P, input.minimumVoltage, input.maximumResistance), ...(ruled?.limit ?? [])];

  const joints = connectionReading(connections, input.connectionResistance);
  return {
    values: {
      V,
      P,
      P_lim: limits.psePowerLimit,
      alpha: cable.temperatureCoefficient,
      T: temperature ?? 20,
      T_ref: 20,
      ...joints.values,
    },
    sources: { alpha: coefficientSource(cable.temperatureCoefficient) },
    cases: [
      POWERED,
      POWER,
      limits.pairs === 4 ? FOUR_PAIRS : TWO_PAIRS,
      cordsCase(cords),
      ...(P > 0 && limits.psePowerLimit >= 2 * P ? ['light draw'] : []),
      ...joints.cases,
      ...(ruled?.cases ?? []),
      ...(limit.length === 0 ? [] : ['bounded']),
    ],
    rows: {
      fixed,
      limit,
      own: [{ label: cable.title, source: cable.source, values: { r20: cable.maximumResistancePerMetre } }],
      cord: cordRows(cords).map((row, place) => ({
        ...row,
        values: { ...row.values, ...ruled?.lossOf(cords[place] as Segment) },
      })),
    },
    assumptions: [
      ...temperatureAssumption(temperature),
      ...connectionAssumptions(input.connections, input.connectionResistance),
      ...(input.pseType === undefined ? [`The port is of Type ${limits.type}, the weakest that serves class ${input.poeClass}.`] : []),
      ...(limits.poeClass === input.poeClass
        ? []
        : [`A Type ${limits.type} port grants class ${limits.poeClass}; the device still draws what it wants.`]),
    ],
    ...(limit.length === 0 ? { no: UNBOUNDED } : {}),
  };
}

/** A line of two wires. */
export function readTwoWire(input: TwoWireCircuit | UnequalTwoWireCircuit): Reading {
  const supply = supplyRange(input.supplyVoltage);
  const loaded = loadReading(input.load);
  const [kind = POWER] = loaded.cases;
  const { limit, fixed, cases } = lineLimitRows(input, supply, kind);
  const joints = connectionReading(input.connections, input.connectionResistance ?? 0);
  const line = legReading(input);
  return {
    values: { ...loaded.values, V: supply.low, V_hi: supply.high, T: input.temperature ?? 20, T_ref: 20, ...joints.values },
    cases: [
      TWO_WIRE,
      kind,
      ...line.cases,
      ...cases,
      ...joints.cases,
      ...(legsOf(input).every(({ basis }) => basis === 'nominal') ? ['usual conductors stated'] : []),
      ...(limit.length === 0 ? [] : ['bounded']),
    ],
    rows: { fixed, limit, ...line.rows },
    assumptions: [...temperatureAssumption(input.temperature), ...jointAssumptions(input)],
    cautions: ampacityCautions(input),
    ...(limit.length === 0 ? { no: UNBOUNDED } : {}),
  };
}

