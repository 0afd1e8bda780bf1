/** Random questions, the core's answers and what people get wrong: inputs known between limits. @module */
import { type OperatingPointInput, operatingPoint } from '../../../src/circuit/operating-point.ts';
import { type VoltageDropInput, voltageDrop } from '../../../src/circuit/voltage-drop.ts';
import { type PowerAtPdInput, powerAtPd } from '../../../src/ethernet/power-at-pd.ts';
import { bounds } from '../../../src/plan/bounds/bounds.ts';
import type { Range } from '../../../src/plan/bounds/ranges.ts';
import type { BoundsWorkingInput } from '../../../src/working/index.ts';
import { pick, type Random, uniform } from '../random.ts';
import { circuits } from './circuits.ts';
import { type Asked, again, figureOf, number } from './kit.ts';
import { powered } from './powered.ts';

/** A number, or a range about it: a tenth or less to either side, or as a tolerance. */
function about(random: Random, value: number): number | Range {
  const spread = Math.abs(value) * random() * 0.1;
  return pick(random, [value, { low: value - spread, high: value + spread * random() }, { nominal: value, plusMinus: spread }]);
}

function ranged(random: Random, value: number | undefined): number | Range | undefined {
  return value === undefined ? undefined : about(random, value);
}

/** The load a little under what the middle carries: at the worst end the line may give way. */
function loadAbout(random: Random, load: OperatingPointInput['load']): { readonly [kind: string]: number | Range } {
  const [kind, value] = Object.entries(load)[0] as [string, number];
  return { [kind]: about(random, kind === 'resistance' ? value : value * uniform(random, 0.3, 1)) };
}

function question(random: Random): BoundsWorkingInput {
  const fn = pick(random, ['operatingPoint', 'voltageDrop', 'powerAtPd'] as const);
  if (fn === 'operatingPoint') {
    const { supplyVoltage, resistance, load } = circuits.operatingPoint.question(random);
    return {
      fn,
      input: { supplyVoltage: about(random, supplyVoltage), resistance: about(random, resistance), load: loadAbout(random, load) } as never,
    };
  }
  if (fn === 'voltageDrop') {
    for (;;) {
      const { supplyVoltage, conductor, length, temperature, load } = circuits.voltageDrop.question(random);
      if (conductor === undefined) continue;
      const line = { conductor, length: about(random, length), temperature: ranged(random, temperature) };
      return { fn, input: { supplyVoltage: about(random, supplyVoltage), ...line, load: loadAbout(random, load) } as never };
    }
  }
  const { pdPower, pseVoltage, resistance, ...rest } = powered.powerAtPd.question(random);
  return {
    fn,
    input: {
      ...rest,
      resistance: typeof resistance === 'object' ? resistance : about(random, resistance),
      pseVoltage: ranged(random, pseVoltage),
      pdPower: pdPower === undefined ? undefined : about(random, pdPower * uniform(random, 0.3, 1)),
    } as BoundsWorkingInput['input'] & never,
  };
}

/** The core's bounds, and whether it can be done at all at the worst. */
function answer({ fn, input }: BoundsWorkingInput): unknown {
  const found =
    fn === 'operatingPoint' ? bounds(operatingPoint, input) : fn === 'voltageDrop' ? bounds(voltageDrop, input) : bounds(powerAtPd, input);
  return { ...found, feasible: Object.keys(found.fields).some((path) => path.endsWith('loadVoltage')) };
}

const boundsAsked: Asked<'bounds'> = {
  question,
  answer,
  mistakes: [
    {
      slip: 'best-for-worst',
      make: ({ fn }, found) => number(figureOf(found, fn === 'powerAtPd' ? 'fields.available.high' : 'fields.loadVoltage.high')),
    },
    {
      slip: 'middle-for-worst',
      make: ({ fn }, found) => number(figureOf(found, fn === 'powerAtPd' ? 'nominal.available' : 'nominal.loadVoltage')),
    },
    {
      slip: 'unstable-root',
      make: ({ fn, input }, found) => {
        if (fn === 'powerAtPd' || (input as OperatingPointInput).load.power === undefined) return undefined;
        // The two roots add up to the supply voltage: the wrong one at the worst end is what the right one leaves of it there.
        const voltage = (input as OperatingPointInput).supplyVoltage as
          | number
          | { low: number; high: number }
          | { nominal: number; plusMinus: number };
        const low = typeof voltage === 'number' ? voltage : 'low' in voltage ? voltage.low : voltage.nominal - voltage.plusMinus;
        return low - (number(figureOf(found, 'fields.loadVoltage.low')) ?? Number.NaN);
      },
    },
    {
      slip: 'drop-for-voltage',
      make: ({ fn, input }, found) =>
        fn === 'powerAtPd' || (input as OperatingPointInput).load.resistance !== undefined
          ? undefined
          : number(figureOf(found, 'fields.voltageDrop.high')),
    },
    {
      slip: 'voltage-for-drop',
      of: 'fields.voltageDrop.high',
      make: ({ fn, input }, found) =>
        fn === 'powerAtPd' || (input as OperatingPointInput).load.resistance !== undefined
          ? undefined
          : number(figureOf(found, 'fields.loadVoltage.low')),
    },
    {
      slip: 'power-at-wrong-end',
      make: (asked) => {
        const { fn, input } = asked;
        if (fn !== 'operatingPoint' || (input as OperatingPointInput).load.power === undefined) return undefined;
        const wrong = ({ supplyVoltage, resistance, load }: OperatingPointInput): ReturnType<typeof operatingPoint> =>
          operatingPoint({ supplyVoltage, resistance, load: { current: (load.power as number) / supplyVoltage } });
        // `bounds` knows a function by its name.
        const found = bounds(Object.defineProperty(wrong, 'name', { value: 'operatingPoint' }), input as OperatingPointInput);
        return number(figureOf(found, 'fields.loadVoltage.low'));
      },
    },
    {
      slip: 'one-way-length',
      make: (asked) => {
        if (asked.fn !== 'voltageDrop') return undefined;
        const { conductor } = asked.input as VoltageDropInput;
        const half = { ...conductor, resistancePerMetre: (conductor?.resistancePerMetre ?? 0) / 2 };
        return again(boundsAsked, { ...asked, input: { ...asked.input, conductor: half } as never }, 'fields.loadVoltage.low');
      },
    },
    {
      slip: 'cold-resistance',
      make: (asked) =>
        asked.fn === 'voltageDrop'
          ? again(boundsAsked, { ...asked, input: { ...asked.input, temperature: 20 } as never }, 'fields.loadVoltage.low')
          : undefined,
    },
    {
      slip: 'class-power-for-pd-power',
      make: ({ fn, input }) =>
        fn === 'powerAtPd'
          ? powerAtPd({ ...(input as PowerAtPdInput), pseVoltage: 50, pdPower: 1, resistance: 1 }).limits.psePower
          : undefined,
    },
  ],
};

/** By name. */
export const ranges: { readonly [Name in 'bounds']: Asked<Name> } = { bounds: boundsAsked };
