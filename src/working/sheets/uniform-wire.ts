/** R = ρ L / A, for whichever of the four is asked. @module */
import { type UniformWireInput, uniformWire } from '../../conductor/uniform-wire.ts';
import type { Sheet } from '../sheet.ts';

export const uniformWireSheet: Sheet<UniformWireInput> = {
  title: 'The law of a uniform wire',
  core: 'uniformWire',
  keys: ['resistance', 'resistivity', 'length', 'area'],
  givens: [
    { symbol: 'R', meaning: 'resistance', unit: 'Ω', latex: 'R', core: 'resistance', when: 'has resistance' },
    {
      symbol: 'rho',
      meaning: 'resistivity of the metal at its temperature',
      unit: 'Ω·mm²/m',
      latex: '\\rho',
      core: 'resistivity',
      when: 'has resistivity',
    },
    {
      symbol: 'L',
      meaning: 'length of the wire itself, out and back for a loop',
      unit: 'm',
      latex: 'L',
      core: 'length',
      when: 'has length',
    },
    { symbol: 'A', meaning: 'area of the wire', unit: 'mm²', latex: 'A', core: 'area', when: 'has area' },
  ],
  steps: [
    {
      symbol: 'R',
      meaning: 'resistance',
      formula: 'rho * L / A',
      unit: 'Ω',
      latex: 'R',
      source: 'circuit-laws',
      core: 'resistance',
      when: 'wants resistance',
    },
    {
      symbol: 'rho',
      meaning: 'resistivity',
      formula: 'R * A / L',
      unit: 'Ω·mm²/m',
      latex: '\\rho',
      source: 'circuit-laws',
      core: 'resistivity',
      when: 'wants resistivity',
    },
    {
      symbol: 'L',
      meaning: 'length',
      formula: 'R * A / rho',
      unit: 'm',
      latex: 'L',
      source: 'circuit-laws',
      core: 'length',
      when: 'wants length',
    },
    {
      symbol: 'A',
      meaning: 'area',
      formula: 'rho * L / R',
      unit: 'mm²',
      latex: 'A',
      source: 'circuit-laws',
      core: 'area',
      when: 'wants area',
    },
  ],
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
