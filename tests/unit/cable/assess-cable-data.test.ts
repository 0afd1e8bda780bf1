/** Where a data sheet stops being plausible: a hair to either side of every bound. */
import { describe, expect, test } from 'vitest';
import { assessCableData, type CableData } from '../../../src/cable/index.ts';

/** One solid copper conductor of a whole gauge: ASTM B258 diameter, 1/58 Ω·mm²/m. [Ω/km] */
function copper(gauge: number): number {
  const diameter = 0.127 * 92 ** ((36 - gauge) / 39);
  return 1000 / 58 / ((Math.PI / 4) * diameter ** 2);
}
/** Strands run at a slant: 2 % more of the same copper. A factor. */
const STRANDS = 1.02;

const HAIR = 1e-9;
const codes = (data: CableData): string => {
  const { verdict, findings } = assessCableData(data);
  return [verdict, ...findings.map(({ code }) => code)].join(' ');
};
const usual = (ratio: number, data: CableData = {}): string => codes({ gauge: 24, nominalOhmsPerKilometre: copper(24) * ratio, ...data });
const most = (ohms: number, data: CableData = {}): string => codes({ gauge: 24, maximumOhmsPerKilometre: ohms, ...data });

/** Holds if the first word list is met just on the good side of a bound, the second just on the other. */
function expectTurns(at: (value: number) => string, bound: number, under: string, over: string): void {
  expect(at(bound * (1 - HAIR)), 'just under').toBe(under);
  expect(at(bound * (1 + HAIR)), 'just over').toBe(over);
}

const LOW = 'impossible below-the-metal';
const HIGH = 'impossible above-the-metal';
const CLAD = 'impossible consistent-with-clad-aluminium';
const LOOP = 'impossible consistent-with-a-loop';

describe('a usual figure, as a share of the copper of the gauge', () => {
  test('1 % of diameter and the purest copper: 4 % below', () => expectTurns(usual, 0.96, LOW, 'plausible'));

  test('strands: 14 % below', () => expectTurns((ratio) => usual(ratio, { stranding: 'stranded' }), 0.86 * STRANDS, LOW, 'plausible'));

  test('a cord is stranded unless the sheet says otherwise', () => {
    expect(usual(0.9, { use: 'cord' })).toBe('plausible');
    expect(usual(0.9, { use: 'cord', stranding: 'solid' })).toBe(LOW);
  });

  test('8 % above it looks like a maximum', () => expectTurns(usual, 1.08, 'plausible', 'doubtful high-nominal'));

  test('20 % above it is another wire', () => expectTurns(usual, 1.2, 'doubtful high-nominal', HIGH));

  test('1.40 to 1.60 is clad aluminium', () => {
    expectTurns(usual, 1.4, HIGH, CLAD);
    expectTurns(usual, 1.6, CLAD, HIGH);
  });

  test('twice 0.96 to twice 1.08 is a loop', () => {
    expectTurns(usual, 1.92, HIGH, LOOP);
    expectTurns(usual, 2.16, LOOP, HIGH);
  });

  test('only what claims copper is suspected of clad aluminium', () => {
    // Tinned copper of 24 AWG has a little more than plain: 1.5 of it is far off, and its own metal.
    expect(usual(1.5, { material: 'tinned-copper' })).toBe(HIGH);
  });
});

describe('a stated maximum', () => {
  test('below what the metal can have', () => expectTurns(most, 0.96 * copper(24), LOW, 'plausible'));

  test('up to 20 % above the gauge, where that is more than the standard allows', () => {
    // 1.2 · 84.2 Ω/km is more than the 95 Ω/km of installed cable.
    expectTurns(most, 1.2 * copper(24), 'plausible', HIGH);
    // 1.2 · 136.6 Ω/km of stranded 26 AWG is more than the 145 Ω/km of cords.
    expectTurns((ohms) => most(ohms, { gauge: 26, use: 'cord' }), 1.2 * STRANDS * copper(26), 'plausible', HIGH);
  });

  test("up to the standard's own limit, however thick the wire: 95 Ω/km, of cords 145 Ω/km", () => {
    // 95 Ω/km is 1.79 of 22 AWG, 145 Ω/km is 1.69 of stranded 24 AWG: neither clad aluminium nor a loop.
    expectTurns((ohms) => most(ohms, { gauge: 22 }), 95, 'plausible', HIGH);
    expectTurns((ohms) => most(ohms, { use: 'cord' }), 145, 'plausible', HIGH);
  });

  test('the usual figure may be as high as the maximum, and no higher', () => {
    const at = (ohms: number): string => most(86, { nominalOhmsPerKilometre: ohms });
    expectTurns(at, 86, 'plausible', 'impossible nominal-above-maximum');
    expect(at(86)).toBe('plausible');
  });
});

test('figures for another temperature are brought to 20 °C first: at 45 °C copper has 9.825 % more', () => {
  expectTurns((ratio) => usual(ratio, { temperature: 45 }), 1.08 * 1.09825, 'plausible', 'doubtful high-nominal');
  expectTurns((ratio) => usual(ratio, { temperature: 45 }), 0.96 * 1.09825, LOW, 'plausible');
});

test('a finding says how far off, and which bound it breaks', () => {
  const [finding] = assessCableData({ gauge: 24, nominalOhmsPerKilometre: 1.5 * copper(24) }).findings;
  expect(finding?.ratio).toBeCloseTo(1.5, 9);
  expect(finding?.allowed).toBeCloseTo(1.2 * copper(24), 9);
  expect(finding?.ohmsPerKilometre).toBeCloseTo(1.5 * copper(24), 9);
});
