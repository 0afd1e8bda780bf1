/** `pairUnbalance` against ngspice: every conductor, pair and rail drawn as its own resistor, the device as a constant power. */
import { describe, expect, test } from 'vitest';
import type { RunPair } from '../../src/cable/unbalance.ts';
import type { PoeClassNumber } from '../../src/ethernet/class-table.ts';
import { type PairUnbalanceInput, pairUnbalance } from '../../src/ethernet/pair-unbalance.ts';
import { poeClass } from '../../src/ethernet/poe-class.ts';
import { expectWithin } from '../helpers/expectations.ts';
import { pick, type Random, seeded, uniform } from '../helpers/random.ts';
import { solveDc, spiceNumber } from '../helpers/spice.ts';

const AGREEMENT = 1e-6;
const PAIRSETS: readonly (readonly [RunPair, RunPair])[] = [
  ['1,2', '3,6'],
  ['4,5', '7,8'],
];

interface Case extends PairUnbalanceInput {
  readonly pairs: Readonly<Partial<Record<RunPair, readonly [number, number]>>>;
  readonly positive: readonly RunPair[];
  readonly psePairResistance: Readonly<Partial<Record<RunPair, number>>>;
  readonly pdPairResistance: Readonly<Partial<Record<RunPair, number>>>;
  readonly pseVoltage: number;
  readonly pdPower: number;
}

/** Conductors up to 30 % apart, pairs up to 40 %, resistances of port and device from 0 up, one pairset or both. */
function randomCase(random: Random): Case {
  const four = random() < 0.7;
  const number = pick(random, four ? [5, 6, 7, 8] : [1, 2, 3, 4]) as PoeClassNumber;
  const limits = poeClass(number);
  const pairsets = four ? PAIRSETS : [pick(random, PAIRSETS)];
  const conductor = limits.channelResistance * (four ? 2 : 1);
  const each = (): [number, number] => {
    const mean = conductor * uniform(random, 0.4, 0.9);
    return [mean * uniform(random, 0.7, 1), mean * uniform(random, 0.7, 1)];
  };
  const names = pairsets.flat();
  const added = (most: number): Partial<Record<RunPair, number>> =>
    Object.fromEntries(names.map((pair) => [pair, random() < 0.2 ? 0 : uniform(random, 0.05, most)]));
  return {
    poeClass: number,
    pairs: Object.fromEntries(names.map((pair) => [pair, each()])),
    positive: pairsets.map((pairset) => pick(random, pairset)),
    psePairResistance: added(0.8),
    pdPairResistance: added(0.8),
    pseVoltage: uniform(random, limits.pseVoltageMin, 57),
    pdPower: limits.pdPower * uniform(random, 0.1, 1),
  };
}

/** The circuit of one case, its nodes marked by its number; a source of 0 V in series with each conductor reads its current. */
function netlist({ pairs, positive, psePairResistance, pdPairResistance, pseVoltage, pdPower }: Case, id: number): string[] {
  const wires = Object.entries(pairs).flatMap(([name, conductors], index) => {
    const pair = name as RunPair;
    const side = positive.includes(pair) ? 'p' : 'n';
    const rails = side === 'p' ? [`pse${id}`, `pdp${id}`] : ['0', `pdn${id}`];
    const [near, far] = [`a${id}_${index}`, `b${id}_${index}`];
    return [
      ...link(`Rs${id}_${index}`, rails[0] as string, near, psePairResistance[pair] as number),
      ...conductors.flatMap((ohms, wire) => [
        `Vi${id}_${index}_${wire} ${near} m${id}_${index}_${wire} 0`,
        `Rc${id}_${index}_${wire} m${id}_${index}_${wire} ${far} ${spiceNumber(ohms)}`,
      ]),
      ...link(`Rd${id}_${index}`, far, rails[1] as string, pdPairResistance[pair] as number),
    ];
  });
  return [
    `Vs${id} pse${id} 0 ${spiceNumber(pseVoltage)}`,
    ...wires,
    `Bl${id} pdp${id} pdn${id} I=${spiceNumber(pdPower)}/V(pdp${id},pdn${id})`,
    `.nodeset V(pdp${id})=${spiceNumber(pseVoltage)}`,
    `.nodeset V(pdn${id})=0`,
  ];
}

/** A resistor, or where there is none a source of 0 V. */
function link(name: string, from: string, to: string, ohms: number): string[] {
  return [ohms === 0 ? `V${name} ${from} ${to} 0` : `${name} ${from} ${to} ${spiceNumber(ohms)}`];
}

describe('unlike conductors and unlike pairs', () => {
  const random = seeded(145);
  const cases = Array.from({ length: 60 }, () => randomCase(random));

  test('60 random circuits: every conductor, the whole current and the voltage at the device agree to 1e-6', async () => {
    const solution = await solveDc(cases.flatMap((one, id) => netlist(one, id)));
    let unlike = 0;
    for (const [id, one] of cases.entries()) {
      const result = pairUnbalance(one);
      if (!result.feasible) expect.fail(`case ${id} is not feasible`);
      expect(result.scope).toBe('channel, PSE and PD');
      for (const [index, pair] of result.pairs.entries()) {
        for (const wire of [0, 1] as const) {
          expectWithin(pair.conductorCurrents[wire], Math.abs(solution.get(`i(vi${id}_${index}_${wire})`) as number), AGREEMENT);
        }
      }
      expectWithin(result.operating.current, Math.abs(solution.get(`i(vs${id})`) as number), AGREEMENT);
      expectWithin(
        result.operating.loadVoltage,
        (solution.get(`v(pdp${id})`) as number) - (solution.get(`v(pdn${id})`) as number),
        AGREEMENT,
      );
      if (result.largestPairCurrent > 0.55 * result.operating.current && result.pairs.length === 4) unlike += 1;
    }
    expect(unlike, 'the sample has pairs that are well apart').toBeGreaterThan(5);
  });
});
