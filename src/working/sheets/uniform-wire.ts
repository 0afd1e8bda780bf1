/** R = ρ L / A, for whichever of the four is asked. @module */
import { givens, steps } from '../rows.ts';
import { type UniformWireInput, uniformWire } from '../../conductor/uniform-wire.ts';
import type { Sheet } from '../sheet.ts';

export const uniformWireSheet: Sheet<UniformWireInput> = {
  title: 'The law of a uniform wire',
  core: 'uniformWire',
  keys: ['resistance', 'resistivity', 'length', 'area'],
  givens: givens([
    ['R', 'Ω', 'resistance', 'resistance', { when: 'has resistance' }],
    ['rho', 'Ω·mm²/m', 'resistivity of the metal at its temperature', 'resistivity', { when: 'has resistivity' }],
    ['L', 'm', 'length of the wire itself, out and back for a loop', 'length', { when: 'has length' }],
    ['A', 'mm²', 'area of the wire', 'area', { when: 'has area' }],
  ]),
  steps: steps([
    ['R', 'Ω', 'rho * L / A', 'resistance', { core: 'resistance', when: 'wants resistance' }],
    ['rho', 'Ω·mm²/m', 'R * A / L', 'resistivity', { core: 'resistivity', when: 'wants resistivity' }],
    ['L', 'm', 'R * A / rho', 'length', { core: 'length', when: 'wants length' }],
    ['A', 'mm²', 'rho * L / R', 'area', { core: 'area', when: 'wants area' }],
  ]),
  assumptions: ['The same metal and area all along.'],
  validity: 'Direct current, any metal, any shape of cross-section.',
  cautions: [],
  slips: [
    { slip: 'one-way-length', givens: { L: 'L / 2' } },
    { slip: 'one-way-length', steps: { L: 'R * A / rho / 2' } },
  ],
  guard: uniformWire,
  read: ({ resistance, resistivity, length, area }) => {
    const stated = { resistance, resistivity, length, area };
    const names = Object.keys(stated) as (keyof typeof stated)[];
    return {
      values: { R: resistance ?? 0, rho: resistivity ?? 0, L: length ?? 0, A: area ?? 0 },
      cases: names.map((name) => `${stated[name] === undefined ? 'wants' : 'has'} ${name}`),
    };
  },
};

