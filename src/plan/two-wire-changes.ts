/** What a person can change about a two-wire run. @module */
import { awg } from '../conductor/awg.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { gaugeOfDiameter } from '../conductor/gauge.ts';
import { parallelConductors } from '../conductor/parallel-conductors.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import { EXTRA_LOW } from './cautions.ts';
import { smallestOnGrid } from './grid.ts';
import { type Change, change, downTo, firstOf } from './remedy.ts';
import { supplyRange, type TwoWireRunInput } from './two-wire-input.ts';

/** Gauges a van carries for two-wire runs. Common practice, no source. [AWG] */
const GAUGES: readonly number[] = [22, 20, 18, 16, 14, 12, 10];
/** A four-core cable has two for each way; more is seldom found. */
const CORES: readonly number[] = [2, 3];

/** Every kind of change that makes sense for the run, least disturbance first. @internal */
export function twoWireChanges(run: TwoWireRunInput, offered: readonly Conductor[] | undefined): Change<TwoWireRunInput>[] {
  const { conductor, length, maximumVoltage } = run;
  const { low, high } = supplyRange(run.supplyVoltage);
  const most = maximumVoltage === undefined ? 0 : Math.min(maximumVoltage, EXTRA_LOW) - high;
  return [
    ...(conductor === undefined ? [] : ofConductor(conductor, offered)),
    {
      ...change<TwoWireRunInput>(
        'higher-supply',
        'V',
        low,
        (passes) => (most > 0 ? smallestOnGrid(most, 10, passes) : undefined),
        (by) => ({
          supplyVoltage: { low: low + by, high: high + by },
        }),
      ),
      told: (by) => low + by,
    },
    change('shorter-run', 'm', length, downTo(length, 10, 0.1), (to) => ({ length: to })),
  ];
}

function ofConductor(conductor: Conductor, offered: readonly Conductor[] | undefined): Change<TwoWireRunInput>[] {
  const ohms = (one: Conductor): number => atMaximum(one).resistancePerMetre;
  const atHand = offered ?? GAUGES.map((gauge) => awg(gauge, { stranding: conductor.stranding }));
  const thicker = atHand.filter((one) => ohms(one) < ohms(conductor)).sort((a, b) => ohms(b) - ohms(a));
  const chosen = (index: number): Conductor => thicker[index] ?? conductor;
  return [
    {
      ...change<TwoWireRunInput>('thicker-conductor', 'AWG', wholeGauge(conductor), firstOf([...thicker.keys()]), (index) => ({
        conductor: chosen(index),
      })),
      told: (index) => wholeGauge(chosen(index)),
      use: (index) => chosen(index).name,
    },
    change('paralleled-cores', 'cores', 1, firstOf(CORES), (cores) => ({
      conductor: parallelConductors(Array.from({ length: cores }, () => conductor)),
    })),
  ];
}

/** By the diameter of a conductor, which follows from its resistance where that is all that is known. [AWG] */
function wholeGauge({ diameter }: Conductor): number {
  return Math.round(gaugeOfDiameter(diameter));
}
