/** What would bring a bundle within its limits: fewer cables, bundles kept apart, or thicker conductors. @module */
import { readCable } from '../../cable/read-cable.ts';
import { awg } from '../../conductor/awg.ts';
import { atMaximum } from '../../conductor/to-maximum.ts';
import type { Millimetres } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { type CheckBundleInput, checkBundle } from './check-bundle.ts';

/** Changes to a bundle, each of which alone brings it within its limits. */
export interface BundleRemedies {
  /** The most cables that one bundle may have; absent where not even one may. */
  readonly largestBundle?: number;
  /** The same cables in several bundles with air between them; absent where one bundle is enough, or none is. */
  readonly apart?: {
    readonly bundles: number;
    /** Cables of the largest of them. A number. */
    readonly size: number;
    /** Least free air between two: one diameter of a bundle. [mm] */
    readonly gap: Millimetres;
    readonly source: SourceKey;
  };
  /** The thinnest conductor, thicker than its own, with which the whole bundle passes at the same diameter; 22 AWG at most. [AWG] */
  readonly gauge?: number;
}

/**
 * How small a bundle, how many bundles kept how far apart, or which conductor would pass every limit of a bundle.
 *
 * Each on its own; a change counts where every check passes, if narrowly. How far apart bundles must be is common practice
 * without a document: one diameter of free air, so that each sheds its heat as if alone; in a conduit that means one bundle
 * in each. Thicker conductors are reckoned in a cable of the same diameter, so a little too warm.
 *
 * @param input - The bundle, as for {@link checkBundle}.
 * @returns The largest bundle, how to keep bundles apart [mm] and the gauge; each where there is one, nothing for a bundle that passes.
 * @throws {@link InputError} As {@link checkBundle}.
 * @example
 * const bundle = { cable: cable('cat5e'), bundle: 100, pairCurrent: 0.96, ambient: 45, installation: 'open-air' } as const;
 * const { largestBundle, apart } = bundleRemedies(bundle);
 * [largestBundle, apart?.bundles, apart?.size]; // => [70, 2, 50]
 */
export function bundleRemedies(input: CheckBundleInput): BundleRemedies {
  if (passes(input)) return {};
  const { bundle } = input;
  const cable = readCable(input.cable, 'cable');
  // More cables are never cooler, and no column of a table allows them more.
  const largest = largestPassing(bundle, (cables) => passes({ ...input, bundle: cables }));
  const bundles = largest > 0 ? Math.ceil(bundle / largest) : 0;
  const size = bundles > 0 ? Math.ceil(bundle / bundles) : 0;
  const one = size > 0 ? checkBundle({ ...input, bundle: size }).rise : undefined;
  const gauge = thicker();
  return {
    ...(largest > 0 ? { largestBundle: largest } : {}),
    ...(one?.feasible ? { apart: { bundles, size, gap: one.diameter, source: 'apart-bundles' } } : {}),
    ...(gauge === undefined ? {} : { gauge }),
  };

  function thicker(): number | undefined {
    for (let wire = Math.ceil(cable.gauge) - 1; wire >= 22; wire--) {
      const conductor = awg(wire, { stranding: cable.stranding });
      const own = {
        ...cable,
        gauge: wire,
        nominalResistancePerMetre: conductor.resistancePerMetre,
        maximumResistancePerMetre: atMaximum(conductor).resistancePerMetre,
      };
      if (passes({ ...input, cable: own })) return wire;
    }
    return undefined;
  }
}

function passes(input: CheckBundleInput): boolean {
  const { verdict } = checkBundle(input);
  return verdict === 'pass' || verdict === 'marginal';
}

/** The largest count under `failing` that passes, where every smaller one does too; 0 if none does. @internal */
export function largestPassing(failing: number, isPassing: (count: number) => boolean): number {
  let low = 0;
  let high = failing;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isPassing(middle)) low = middle;
    else high = middle;
  }
  return low;
}
