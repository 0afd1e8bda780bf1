/** Runs of an invented theatre for the tests of this folder. @module */
import { cable } from '../../../src/cable/cable.ts';
import type { CableName } from '../../../src/cable/cables.ts';
import { awg } from '../../../src/conductor/awg.ts';
import type { ScheduledPoweredRun, ScheduledSwitch, ScheduledTwoWireRun } from '../../../src/schedule/schedule.ts';

/** A piece of cable. */
export function piece(name: CableName, length: number, temperature = 20): ScheduledPoweredRun['input']['installed'][number] {
  return { cable: cable(name), length, temperature };
}

/** A run to a class 3 device over 40 m of Category 6, changed as told. */
export function powered(change: Partial<ScheduledPoweredRun> = {}, input: Partial<ScheduledPoweredRun['input']> = {}): ScheduledPoweredRun {
  return {
    kind: 'powered',
    run: 'HP-01',
    device: 'Help point, stage door',
    line: 2,
    switch: 'Stage rack',
    port: 1,
    priority: 'low',
    ...change,
    input: { poeClass: 3, installed: [piece('cat6', 40)], connections: 2, ...input },
  };
}

/** A cue light on 18 AWG and a battery-backed supply, changed as told. */
export function cueLight(
  change: Partial<ScheduledTwoWireRun> = {},
  input: Partial<ScheduledTwoWireRun['input']> = {},
): ScheduledTwoWireRun {
  return {
    kind: 'two-wire',
    run: 'CL-01',
    device: 'Cue light, fly floor',
    line: 9,
    ...change,
    input: {
      supplyVoltage: { low: 21, high: 27.6 },
      conductor: awg(18),
      length: 60,
      load: { power: 6 },
      minimumVoltage: 19,
      ...input,
    },
  };
}

/** A Type 2 switch with a published budget. */
export function stageRack(change: Partial<ScheduledSwitch> = {}): ScheduledSwitch {
  return { switch: 'Stage rack', type: 2, ports: 24, budget: 370, line: 2, ...change };
}

/** The same value with everything in it frozen. */
export function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) {
    for (const part of Object.values(value)) frozen(part);
    Object.freeze(value);
  }
  return value;
}
