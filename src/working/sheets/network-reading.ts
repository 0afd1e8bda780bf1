/** A network as the rows of its sheet. @module */
import type { NetworkInput, NetworkSection, NetworkTap } from '../../circuit/network-problem.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { FigureSources, Figures, Reading } from '../sheet.ts';
import type { NodeLoad } from './network-passes.ts';
import { networkTree } from './network-tree.ts';
import { coefficientSource } from './shared.ts';

/** Kinds of load at one node, by what the givens call them. */
export const KINDS = ['power', 'current', 'conductance'] as const;

/** One of them. */
export type Kind = (typeof KINDS)[number];

/** Every choice of two kinds or more. */
export const SEVERAL: readonly (readonly Kind[])[] = [
  ['power', 'current'],
  ['power', 'conductance'],
  ['current', 'conductance'],
  ['power', 'current', 'conductance'],
];

/** The case of the kinds of load that there are in a network. */
export function tapsOf(kinds: readonly Kind[]): string {
  return `taps of ${kinds.join(' and ')}${kinds.length === 1 ? ' alone' : ''}`;
}

/** What a node draws of each kind, as the formula of its row has it. */
export function drawnAt(suffix: '' | '0', number: string | number): Readonly<Record<Kind, string>> {
  const voltage = suffix === '' ? `W_${number}` : `V0_${number}`;
  return {
    power: `P${suffix}_${number} / ${voltage}`,
    current: `J${suffix}_${number}`,
    conductance: `G${suffix}_${number} * ${voltage}`,
  };
}

/** A larger network is no worked example. */
const MOST_SECTIONS = 24;

/** Refuses what can be solved, but not shown. */
export function requireSmall({ sections, taps }: NetworkInput): void {
  for (const [list, items] of [
    ['sections', sections],
    ['taps', taps],
  ] as const) {
    if (items.length > MOST_SECTIONS)
      throw new InputError('range', list, `at most ${MOST_SECTIONS}, in a network that is to be shown`, items.length);
  }
}

/** The loop resistance of a section at its temperature. [Ω] */
function ohmsOf({ resistance, conductor, length, temperature }: NetworkSection): number {
  if (conductor === undefined) return resistance;
  const { resistancePerMetre, temperatureCoefficient = 0 } = conductor;
  return 2 * resistancePerMetre * (1 + temperatureCoefficient * ((temperature ?? 20) - 20)) * length;
}

/** The rows: supplies, branches from their ends inwards and from the supplies outwards, sections that close rings. */
export function readNetwork(input: NetworkInput): Reading {
  const { sections, taps } = input;
  const tree = networkTree(input, ohmsOf);
  const loads = new Map(tree.names.map((name) => [name, loadAt(taps, name)]));
  const symbols = new Map([
    ...tree.supplies.map(({ at }, index) => [at, `V0_${index + 1}`] as const),
    ...tree.branches.map(({ to }, index) => [to, `W_${index + 1}`] as const),
  ]);
  const symbolOf = (name: string): string => symbols.get(name) as string;
  // What leaves a node towards its other branches, and through sections that close rings.
  const onwards = (name: string): string => {
    const below = tree.branches.flatMap(({ from }, index) => (from === name ? [` + Is_${index + 1}`] : []));
    const round = tree.rings.flatMap(({ from, to }, index) =>
      from === name ? [` + Ix_${index + 1}`] : to === name ? [` - Ix_${index + 1}`] : [],
    );
    return [...below, ...round].join('');
  };
  const kindsIn = (some: readonly NodeLoad[]): Kind[] => KINDS.filter((kind) => some.some((load) => load[kind] > 0));
  const [usual = 'current', ...others] = kindsIn([...loads.values()]);
  const tap = (name: string, suffix: '' | '0', number: number): { values: Figures; cases: string[]; drawn: string } => {
    const load = loads.get(name) as NodeLoad;
    const { power, current, conductance } = load;
    const own = kindsIn([load]);
    // A node without a tap draws nothing, of the kind that there is elsewhere.
    const kinds = own.length === 0 ? [usual] : own;
    return {
      values: { [`P${suffix}_#`]: power, [`J${suffix}_#`]: current, [`G${suffix}_#`]: conductance },
      cases: [...kinds, tapsOf([usual, ...others])],
      drawn: kinds.map((kind) => drawnAt(suffix, number)[kind]).join(' + '),
    };
  };

  const branchRows = tree.branches.map(({ section, from, to, asDrawn }, index) => {
    const { values, cases, sources } = sectionFigures(sections[section] as NetworkSection, '');
    const own = tap(to, '', index + 1);
    return {
      label: `${from} to ${to}`,
      number: index + 1,
      values: { ...values, ...own.values },
      cases: [...cases, ...own.cases],
      sources: { ...sources, 'W_#': usual === 'power' ? ('network-newton' as const) : ('circuit-laws' as const) },
      links: {
        end: to,
        drawn: own.drawn,
        // Against the order of the input the core has the other sign; in a ring not every digit is the same.
        ...(asDrawn && tree.rings.length === 0 ? { current: `currents[${section}]` } : {}),
        onwards: onwards(to),
        from: symbolOf(from).replace('W_', 'V_'),
        node: symbolOf(from),
      },
    };
  });
  const anyTap = (name: string): boolean => kindsIn([loads.get(name) as NodeLoad]).length > 0;
  const supplyRows = tree.supplies.map(({ at, voltage }, index) => {
    const own = tap(at, '0', index + 1);
    const out = onwards(at);
    const tappedHere = anyTap(at) || out === '';
    return {
      label: at,
      values: { 'V0_#': voltage, ...own.values },
      cases: [...(tappedHere ? [...own.cases, 'taps at it'] : ['no taps at it'])],
      core: String(index),
      links: { drawn: own.drawn, onwards: out, leaving: out.replace(/^ \+ /, '').replace(/^ - /, '-') },
    };
  });
  const ringRows = tree.rings.map(({ section, from, to }) => ({
    label: `${from} to ${to}`,
    ...sectionFigures(sections[section] as NetworkSection, 'x'),
    links: { a: symbolOf(from), b: symbolOf(to) },
  }));
  const zero = tree.rings.findIndex(({ section }) => ohmsOf(sections[section] as NetworkSection) === 0);
  if (zero >= 0) {
    const index = tree.rings[zero]?.section as number;
    const of = sections[index]?.conductor === undefined ? 'resistance' : 'length';
    throw new InputError('conflict', `sections[${index}].${of}`, 'more than 0: nothing decides what a bare section in a ring carries', 0);
  }
  const byLength = sections.some(({ conductor }) => conductor !== undefined);
  const only = (kind: Kind): boolean => usual === kind && others.length === 0;
  return {
    values: { T_ref: 20 },
    cases: [
      tree.rings.length === 0 ? 'tree' : 'rings',
      ...(byLength ? ['by length'] : []),
      ...(only('power') && tree.supplies.every(({ at }) => !anyTap(at)) && tree.supplies.length === 1 ? ['powers from one supply'] : []),
      ...(only('current') && tree.rings.length === 0 ? ['currents in a tree'] : []),
      ...(only('power') && tree.rings.length === 0 ? ['powers in a tree'] : []),
    ],
    rows: {
      supply: supplyRows,
      ring: ringRows,
      inward: [...branchRows].reverse(),
      outward: branchRows.map(({ links, number }, index) => ({
        label: tree.branches[index]?.to ?? '',
        number,
        values: {},
        core: String(tree.names.indexOf(tree.branches[index]?.to ?? '')),
        links,
      })),
    },
  };
}

/** Loads of one kind at one node are added: powers, currents, conductances. */
function loadAt(taps: readonly NetworkTap[], name: string): NodeLoad {
  const own = taps.filter(({ at }) => String(at) === name).map(({ load }) => load);
  const sum = (of: (load: NetworkTap['load']) => number | undefined): number => own.reduce((all, load) => all + (of(load) ?? 0), 0);
  return {
    power: sum(({ power }) => power),
    current: sum(({ current }) => current),
    conductance: sum(({ resistance }) => (resistance === undefined ? undefined : 1 / resistance)),
  };
}

function sectionFigures(section: NetworkSection, suffix: string): { values: Figures; sources: FigureSources; cases: string[] } {
  if (section.conductor === undefined) return { values: { [`R${suffix}_#`]: section.resistance }, sources: {}, cases: ['in ohms'] };
  const { resistancePerMetre, temperatureCoefficient = 0, source } = section.conductor;
  return {
    values: {
      [`r${suffix}20_#`]: resistancePerMetre,
      [`alpha${suffix}_#`]: temperatureCoefficient,
      [`T${suffix}_#`]: section.temperature ?? 20,
      [`L${suffix}_#`]: section.length,
    },
    sources: { [`r${suffix}20_#`]: source, [`alpha${suffix}_#`]: coefficientSource(temperatureCoefficient) },
    cases: ['in metres'],
  };
}

