/** Which run of a report is called the worst. */
import { describe, expect, test } from 'vitest';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import type { ScheduledRun } from '../../../src/schedule/schedule.ts';
import { cueLight, piece, powered } from './check-samples.ts';

const worst = (...runs: readonly ScheduledRun[]) => checkSchedule({ runs, switches: [] }).totals.worstRun;
/** The worst of these in any order: the same, or the order decides. */
function worstOf(...runs: readonly ScheduledRun[]): string | undefined {
  const [first, second] = [worst(...runs)?.run, worst(...[...runs].reverse())?.run];
  return first === second ? first : `${first} or ${second}`;
}

let port = 0;
const metres = (run: string, length: number): ScheduledRun => powered({ run, port: ++port }, { installed: [piece('cat6', length)] });
/** A bare 13 Ω against 16.70 Ω as a pair loop: missed by 28 %, met as one pairset. */
const doubtful = (run: string): ScheduledRun =>
  powered({ run, port: ++port }, { installed: [piece('cat5e', 89)], connections: 0, maximumResistance: { ohms: 13, loop: 'unstated' } });
/** A lamp without any limit: nothing to be held against. */
const lamp = (run: string): ScheduledRun => cueLight({ run }, { load: { resistance: 96 }, minimumVoltage: undefined });

describe('the worst run', () => {
  test('is the one closest to its limit, where none fails', () => {
    expect(worstOf(metres('85', 85), metres('88', 88), metres('87', 87))).toBe('88');
    expect(worstOf(metres('88', 88), doubtful('13 Ω'))).toBe('13 Ω');
  });

  test('is the one furthest beyond its limit, where some fail', () => {
    expect(worstOf(metres('91', 91), metres('94', 94), metres('88', 88))).toBe('94');
  });

  test('is one that fails before one that is only in doubt, however far', () => {
    expect(worstOf(doubtful('13 Ω'), metres('90.1', 90.1))).toBe('90.1');
  });

  test('is the first of two that are alike', () => {
    expect(worst(metres('A', 88), metres('B', 88))?.run).toBe('A');
    expect(worst(metres('A', 94), metres('B', 94))?.run).toBe('A');
  });

  test('is measured as a fraction of the limit, not in its unit', () => {
    // 5 of 4 connections are a quarter too many, by 1; 100 m of 90 are a ninth too long, by 10.
    const joints = powered({ run: 'joints', port: ++port }, { connections: 5 });
    expect(worstOf(joints, metres('100', 100))).toBe('joints');
  });

  test('is none of those that are held against nothing', () => {
    expect(worstOf(lamp('lamp'), metres('20', 20))).toBe('20');
    expect(worst(lamp('lamp'))).toBeUndefined();
    expect(worst()).toBeUndefined();
  });

  test('is told with its line and the check that governs it', () => {
    expect(worst(powered({ run: 'X', line: 7 }, { installed: [piece('cat6', 94)] }))).toMatchObject({
      run: 'X',
      line: 7,
      check: { name: 'permanent-link-length', value: 94, limit: 90 },
    });
  });
});
