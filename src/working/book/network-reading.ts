/** A network as the rows of its sheet. @module */

import type { NetworkInput, NetworkSection, NetworkTap } from '../../circuit/index.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Reading } from '../engine/sheet.ts';
import { coefficientSource, TWENTY } from './conductors.ts';
import type { NodeLoad } from './network-passes.ts';
import { networkTree } from './network-tree.ts';

const KINDS = ['power', 'current', 'conductance'] as const;
type Kind = (typeof KINDS)[number];

/** The kinds of load that there may be in a network together. */
export const TAPS = {
  'taps of power': ['power'],
  'taps of current': ['current'],
  'taps of conductance': ['conductance'],
  'taps of power and current': ['power', 'current'],
  'taps of power and conductance': ['power', 'conductance'],
  'taps of current and conductance': ['current', 'conductance'],
  'taps of power and current and conductance': ['power', 'current', 'conductance'],
} as const;
export type TapsCase = keyof typeof TAPS;

export type NetworkCase =
  | Kind
  | TapsCase
  | 'in ohms'
  | 'in metres'
  | 'by length'
  | 'tree'
  | 'rings'
  | 'branches'
  | 'supplies alone'
  | 'carried'
  | 'carried by a tree'
  | 'carried by rings'
  | 'not carried'
  | 'too much power'
  | 'too much current'
  | 'taps at it'
  | 'no taps at it'
  | 'powers from one supply'
  | 'powers in a tree'
  | 'currents in a tree';

/** What a node draws of each kind, as the formula of its row has it. */
export function drawnAt(end: '' | '0', number: string | number): Readonly<Record<Kind, string>> {
  const voltage = end === '' ? `W_${number}` : `V0_${number}`;
  return { power: `P${end}_${number} / ${voltage}`, current: `J${end}_${number}`, conductance: `G${end}_${number} * ${voltage}` };
}

/** A larger network is no worked example. */
const MOST_SECTIONS = 24;

/** Refuses what can be solved, but not shown. */
export function requireSmall({ sections, taps }: NetworkInput): void {
  for (const [list, items] of Object.entries({ sections, taps })) {
    if (items.length > MOST_SECTIONS)
      throw new InputError('range', list, `at most ${MOST_SECTIONS}, in a network that is to be shown`, items.length);
  }
}

/** The loop resistance of a section at its temperature. [Ω] */
function ohmsOf({ resistance, conductor, length, temperature = TWENTY }: NetworkSection): number {
  if (conductor === undefined) return resistance;
  const { resistancePerMetre, temperatureCoefficient = 0 } = conductor;
  return 2 * resistancePerMetre * (1 + temperatureCoefficient * (temperature - 20)) * length;
}

/** The rows: supplies, branches from their ends inwards and from the supplies outwards, sections that close rings. */
export function readNetwork(input: NetworkInput): Reading<NetworkCase> {
  const { sections, taps } = input;
  const { names, supplies, branches, rings } = networkTree(input, ohmsOf);
  const sectionAt = (index: number): NetworkSection => sections[index] as NetworkSection;
  const zero = rings.find(({ section }) => ohmsOf(sectionAt(section)) === 0);
  if (zero !== undefined) {
    const key = sectionAt(zero.section).conductor === undefined ? 'resistance' : 'length';
    throw new InputError(
      'conflict',
      `sections[${zero.section}].${key}`,
      'more than 0: nothing decides what a bare section in a ring carries',
      0,
    );
  }
  const symbols = new Map([
    ...supplies.map(({ at }, index) => [at, `V0_${index + 1}`] as const),
    ...branches.map(({ to }, index) => [to, `W_${index + 1}`] as const),
  ]);
  // What leaves a node towards its other branches, and through sections that close rings.
  const onwards = (name: string): string => {
    const below = branches.map(({ from }, index) => (from === name ? ` + Is_${index + 1}` : ''));
    const round = rings.map(({ from, to }, index) => (from === name ? ` + Ix_${index + 1}` : to === name ? ` - Ix_${index + 1}` : ''));
    return [...below, ...round].join('');
  };
  const kindsIn = (loads: readonly NodeLoad[]): Kind[] => KINDS.filter((kind) => loads.some((load) => load[kind] > 0));
  const kinds = kindsIn(names.map((name) => loadAt(taps, name)));
  const [usual = 'current'] = kinds;
  const all = `taps of ${kinds.length === 0 ? usual : kinds.join(' and ')}` as TapsCase;
  const tap = (name: string, end: '' | '0', number: number) => {
    const load = loadAt(taps, name);
    const own = kindsIn([load]);
    // A node without a tap draws nothing, of the kind that there is elsewhere.
    const drawn = own.length === 0 ? [usual] : own;
    return {
      isTapped: own.length > 0,
      values: { [`P${end}_#`]: load.power, [`J${end}_#`]: load.current, [`G${end}_#`]: load.conductance },
      cases: [...drawn, all],
      drawn: drawn.map((kind) => drawnAt(end, number)[kind]).join(' + '),
    };
  };

  const branchRows = branches.map(({ section, from, to, asDrawn }, index) => {
    const { values, cases, sources } = sectionReading(sectionAt(section), '');
    const own = tap(to, '', index + 1);
    const start = symbols.get(from);
    return {
      label: `${from} to ${to}`,
      number: index + 1,
      values: { ...values, ...own.values },
      cases: [...(cases ?? []), ...own.cases],
      sources: { ...sources, 'W_#': usual === 'power' ? ('network-newton' as const) : ('circuit-laws' as const) },
      links: {
        end: to,
        drawn: own.drawn,
        // Against the order of the input the core has the other sign; in a ring not every digit is the same.
        current: asDrawn && rings.length === 0 ? `currents[${section}]` : undefined,
        onwards: onwards(to),
        from: start?.replace('W_', 'V_'),
        node: start,
      },
    };
  });
  const supplyTaps = supplies.map(({ at }, index) => tap(at, '0', index + 1));
  const supplyRows = supplies.map(({ at, voltage }, index) => {
    const { values = {}, cases = [], isTapped, drawn } = supplyTaps[index] ?? {};
    const out = onwards(at);
    return {
      label: at,
      values: { 'V0_#': voltage, ...values },
      cases: isTapped || out === '' ? [...cases, 'taps at it' as const] : ['no taps at it' as const],
      core: String(index),
      links: { drawn, onwards: out, leaving: out.replace(/^ \+ /, '').replace(/^ - /, '-') },
    };
  });
  const isTree = rings.length === 0;
  const areAll = (kind: Kind): boolean => all === `taps of ${kind}`;
  return {
    cases: [
      isTree ? 'tree' : 'rings',
      sections.some(({ conductor }) => conductor !== undefined) && 'by length',
      areAll('power') && supplies.length === 1 && !supplyTaps.some(({ isTapped }) => isTapped) && 'powers from one supply',
      areAll('power') && isTree && 'powers in a tree',
      areAll('current') && isTree && 'currents in a tree',
    ],
    rows: {
      supply: supplyRows,
      ring: rings.map(({ section, from, to }) => ({
        label: `${from} to ${to}`,
        ...sectionReading(sectionAt(section), 'x'),
        links: { a: symbols.get(from), b: symbols.get(to) },
      })),
      inward: [...branchRows].reverse(),
      outward: branchRows.map(({ links, number }) => ({ label: links.end, number, core: String(names.indexOf(links.end)), links })),
    },
  };
}

/** Loads of one kind at one node are added: powers, currents, conductances. */
function loadAt(taps: readonly NetworkTap[], name: string): NodeLoad {
  const own = taps.filter(({ at }) => String(at) === name).map(({ load }) => load);
  const sum = (draw: (load: NetworkTap['load']) => number | undefined): number => own.reduce((all, load) => all + (draw(load) ?? 0), 0);
  return {
    power: sum(({ power }) => power),
    current: sum(({ current }) => current),
    conductance: sum(({ resistance }) => (resistance === undefined ? undefined : 1 / resistance)),
  };
}

function sectionReading(
  { conductor, resistance, length, temperature = TWENTY }: NetworkSection,
  x: '' | 'x',
): Pick<Reading<NetworkCase>, 'values' | 'sources' | 'cases'> {
  if (conductor === undefined) return { values: { [`R${x}_#`]: resistance }, cases: ['in ohms'] };
  const { resistancePerMetre, temperatureCoefficient: alpha = 0, source } = conductor;
  return {
    values: { [`r${x}20_#`]: resistancePerMetre, [`alpha${x}_#`]: alpha, [`T${x}_#`]: temperature, [`L${x}_#`]: length },
    sources: { [`r${x}20_#`]: source, [`alpha${x}_#`]: coefficientSource(alpha) },
    cases: ['in metres'],
  };
}
