/** How much hotter than the air the middle of a bundle of powered cables gets. @module */
import { type Fields, type Read, readInput } from '../../quantity/fields.ts';
import { HOTTEST, requireInteger } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Amperes, Celsius, Kelvins, Millimetres } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';
import type { Cable } from '../cable.ts';
import { CABLE, type CableOrName } from '../read-cable.ts';
import { CABLE_BASES, type CableBasis, cableResistancePerMetre } from '../run-resistance.ts';
import { HEAT_CAUTION } from './caution.ts';
import { film } from './film-coefficient.ts';
import { INSTALLATIONS, type InstallationRow } from './installations-table.ts';

/** How a bundle is installed, by a film coefficient of the caller's own. */
export interface OwnInstallation {
  /** From the surface of the bundle to the air. [W/(m²·K)] */
  readonly filmCoefficient: number;
  /** Effective thermal resistivity of the bundle; 6.05 if absent. [K·m/W] */
  readonly thermalResistivity?: number | undefined;
}

/** How a bundle is installed. A cable left on its drum is named too, because there is no steady figure for it. */
export type Installation = keyof typeof INSTALLATIONS | 'wound-drum' | OwnInstallation;

/** A bundle of like cables that all carry the same current. */
export interface BundleRiseInput {
  readonly cable: CableOrName;
  /** Cables in the bundle, a whole number from 1 to 10,000. */
  readonly bundle: number;
  /** Through each energised pair: the current of a pairset, twice that of a conductor. [A] */
  readonly pairCurrent: Amperes;
  /** Pairs of each cable that carry it; all if absent. */
  readonly energisedPairs?: number | undefined;
  /** The air around the bundle; 20 if absent. [°C] */
  readonly ambient?: Celsius | undefined;
  readonly installation: Installation;
  /** Over the sheath of one cable; the cable's own if absent. [mm] */
  readonly outsideDiameter?: Millimetres | undefined;
  /** Resistance of the conductors: `nominal` if absent, because the model was fitted with it. */
  readonly basis?: CableBasis | undefined;
}

/** @internal */
export const OWN_INSTALLATION_FIELDS: Fields<OwnInstallation, 'thermalResistivity'> = {
  filmCoefficient: { positive: 'W/(m²·K)' },
  thermalResistivity: { nonNegative: 'K·m/W', default: 6.05, source: 'bundle-model-open-air' },
};

/** @internal */
export interface ReadBundle {
  readonly cable: Cable;
  readonly installation: InstallationRow | undefined;
}

/** @internal */
export const BUNDLE_RISE_FIELDS: Fields<BundleRiseInput, 'ambient' | 'basis', ReadBundle> = {
  cable: () => CABLE,
  bundle: { whole: [1, 10_000] },
  pairCurrent: { nonNegative: 'A' },
  energisedPairs: { whole: [1, 100], optional: true },
  ambient: { temperature: '°C', default: 20, source: 'library-default' },
  installation: { read: (value, path) => installationOf(value, path), type: 'Installation' },
  outsideDiameter: { positive: 'mm', optional: true },
  basis: { oneOf: () => CABLE_BASES, default: 'nominal' },
};

/** A bundle that settles. */
export interface SettledBundle {
  readonly feasible: true;
  /** The middle of the bundle above the air. [K] */
  readonly rise: Kelvins;
  /** What the rise may be, by what is known of the model's error; absent above 192 cables. [K] */
  readonly range?: { readonly low: Kelvins; readonly high: Kelvins };
  /** The middle of the bundle. [°C] */
  readonly conductorTemperature: Celsius;
  /** The surface of the bundle above the air. [K] */
  readonly surfaceRise: Kelvins;
  /** Over the whole bundle. [mm] */
  readonly diameter: Millimetres;
  /** As applied. [W/(m²·K)] */
  readonly filmCoefficient: number;
  /** Heat of one metre of the whole bundle, every conductor as hot as its middle. [W/m] */
  readonly heatPerMetre: number;
  /** Heat of one metre of one cable. [W/m] */
  readonly cableHeatPerMetre: number;
  /** Through each loaded conductor. [A] */
  readonly conductorCurrent: Amperes;
  /** Whether the bundle is of a size that the model was held against: 7 to 192 cables. */
  readonly validated: boolean;
  readonly caution: string;
  readonly source: SourceKey;
}

/** A bundle that never settles below 400 °C, or for which there is no figure. */
export interface UnsettledBundle {
  readonly feasible: false;
  /** `no-steady-state`: each kelvin adds more heat than it sheds. `wound-drum`: unwind it, or ask its maker for a rating. */
  readonly reason: 'no-steady-state' | 'wound-drum';
  /** Through each loaded conductor. [A] */
  readonly conductorCurrent: Amperes;
  readonly caution: string;
  readonly source: SourceKey;
}

/** What becomes of a bundle of powered cables. */
export type BundleRise = SettledBundle | UnsettledBundle;

/** Sizes of bundle that the model was held against, and how far off it may be there, a fraction. @internal */
export const VALIDATED = { from: 7, to: 192, error: 0.1 } as const;

/**
 * Temperature rise in the middle of a bundle of powered cables. Steady state, all cables alike and equally loaded.
 *
 * A uniformly heated cylinder of diameter `1.15 d √N` (`d` for one cable): from middle to surface `Qρ/4π`, from surface to
 * air `Q/(πDh)`, with the heat `Q` of conductors as hot as the middle. At a constant film coefficient the warming of the
 * copper is summed in closed form, `ΔT = G(1 + α(Ta - 20))/(1 - αG)`; in open air `h` is that of {@link filmCoefficient} and
 * both are solved together. `open-air`: fitted to a published study of 100 cables, 6.9 % rms. `closed-conduit`: fitted to
 * the ampacities of NEC 2017, 8 %. Taken as ±10 % for 7 to 192 cables; fewer are bounded by the figure for 7; above 192
 * nothing is known. Insulation and other surroundings have no preset: give a film coefficient.
 *
 * @param input - Cable, number of cables, current per pair [A], energised pairs, ambient [°C], installation, diameter [mm].
 * @returns The rise [K] with its range, the temperature of the conductors [°C] and the heat per metre; or that there is
 *   no steady state.
 * @throws {@link InputError} If a number is outside its domain, the installation is not known, or no diameter is.
 * @example 100 Category 5e cables at 0.6 A a pair; a published study has 7.2 K
 * const bundle = bundleRise({ cable: 'cat5e', bundle: 100, pairCurrent: 0.6, ambient: 23, installation: 'open-air' });
 * bundle.feasible && bundle.rise.toFixed(1); // => '6.9'
 * @example A cable left on its drum
 * const drum = bundleRise({ cable: 'cat6', bundle: 1, pairCurrent: 0.6, installation: 'wound-drum' });
 * !drum.feasible && drum.reason; // => 'wound-drum'
 */
export function bundleRise(input: BundleRiseInput): BundleRise {
  return riseOf(readInput(BUNDLE_RISE_FIELDS, input));
}

/** The same of an input that was read. @internal */
export function riseOf(read: Read<BundleRiseInput, 'ambient' | 'basis', ReadBundle>): BundleRise {
  const { cable, bundle, pairCurrent, ambient, installation: way, basis, ...stated } = read;
  const perMetre = cableResistancePerMetre(cable, 20, basis);
  const warm = cableResistancePerMetre(cable, ambient, basis) / perMetre;
  const { energisedPairs = cable.pairs, outsideDiameter = cable.outsideDiameter } = stated;
  requireInteger(energisedPairs, 1, cable.pairs, 'energisedPairs');
  const conductorCurrent = pairCurrent / 2;
  if (way === undefined) {
    return { feasible: false, reason: 'wound-drum', conductorCurrent, caution: HEAT_CAUTION, source: 'wound-drum' };
  }
  if (outsideDiameter === undefined) {
    throw new InputError('missing', 'outsideDiameter', `the diameter over the sheath of ${cable.title}, in mm`, undefined);
  }

  const perCable = 2 * energisedPairs * conductorCurrent ** 2 * perMetre; // cold, at 20 °C [W/m]
  const model = { way, ambient, warm, coefficient: cable.temperatureCoefficient, bundle, outsideDiameter, perCable };
  const surfaceRise = settledSurface(model);
  const common = { conductorCurrent, caution: HEAT_CAUTION, source: way.source };
  if (surfaceRise === undefined) return { feasible: false, reason: 'no-steady-state', ...common };

  const diameter = bundleDiameter(bundle, outsideDiameter);
  const coefficient = filmOf(way, diameter, ambient, surfaceRise);
  const heatPerMetre = Math.PI * diameter * coefficient * surfaceRise;
  const rise = surfaceRise + (heatPerMetre * way.thermalResistivity) / (4 * Math.PI);
  const range = rangeOf(rise);
  return {
    feasible: true,
    rise,
    ...(range && { range }),
    conductorTemperature: ambient + rise,
    surfaceRise,
    diameter: diameter * 1000,
    filmCoefficient: coefficient,
    heatPerMetre,
    cableHeatPerMetre: heatPerMetre / bundle,
    validated: bundle >= VALIDATED.from && bundle <= VALIDATED.to,
    ...common,
  };

  function rangeOf(own: Kelvins): SettledBundle['range'] {
    const { from, to, error } = VALIDATED;
    if (bundle > to) return undefined;
    if (bundle >= from) return { low: own * (1 - error), high: own * (1 + error) };
    // Fewer cables are never hotter than seven.
    const seven = settledSurface({ ...model, bundle: from });
    if (seven === undefined) return undefined;
    return { low: 0, high: riseAbove(seven, bundleDiameter(from, model.outsideDiameter), model.way, ambient) * (1 + error) };
  }
}

/** The way of installing; nothing for a cable on its drum. */
function installationOf(installation: Installation, path: string): InstallationRow | undefined {
  if (typeof installation === 'object' && installation !== null) {
    return { ...readInput(OWN_INSTALLATION_FIELDS, installation, path), source: 'data-sheet' };
  }
  if (installation === 'wound-drum') return undefined;
  if (typeof installation === 'string' && Object.hasOwn(INSTALLATIONS, installation)) return INSTALLATIONS[installation];
  throw new InputError(
    installation === undefined ? 'missing' : 'unknown',
    path,
    "'open-air', 'closed-conduit' or 'wound-drum'; for any other, such as insulation, { filmCoefficient } in W/(m²·K)",
    installation,
  );
}

/** Hexagonal bundles of 7, 19, 37, 61 and 91 are 1.13 to 1.15 of `d √N` across. [m] */
function bundleDiameter(bundle: number, outsideDiameter: Millimetres): number {
  return ((bundle === 1 ? 1 : 1.15 * Math.sqrt(bundle)) * outsideDiameter) / 1000;
}

function filmOf(way: InstallationRow, diameter: number, ambient: Celsius, surfaceRise: Kelvins): number {
  return way.filmCoefficient ?? film(diameter, ambient + surfaceRise, ambient, 0.9);
}

/** The middle above the air, from the surface above the air. [K] */
function riseAbove(surfaceRise: Kelvins, diameter: number, way: InstallationRow, ambient: Celsius): Kelvins {
  return surfaceRise * (1 + (diameter * filmOf(way, diameter, ambient, surfaceRise) * way.thermalResistivity) / 4);
}

/** Everything that the balance of heat is made of. */
interface Balance {
  readonly way: InstallationRow;
  readonly ambient: Celsius;
  /** Resistance at ambient over that at 20 °C. */
  readonly warm: number;
  /** [1/K] */
  readonly coefficient: number;
  readonly bundle: number;
  readonly outsideDiameter: Millimetres;
  /** Heat of one cable at 20 °C. [W/m] */
  readonly perCable: number;
}

/** Surface above the air where heat made is heat shed; nothing where that is nowhere below 400 °C. [K] */
function settledSurface({ way, ambient, warm, coefficient, bundle, outsideDiameter, perCable }: Balance): Kelvins | undefined {
  const cold = bundle * perCable;
  const diameter = bundleDiameter(bundle, outsideDiameter);
  const inner = way.thermalResistivity / (4 * Math.PI);
  const most = HOTTEST - ambient;
  if (way.filmCoefficient !== undefined) {
    const perKelvin = 1 / (Math.PI * diameter * way.filmCoefficient);
    const gain = cold * (inner + perKelvin); // G
    const left = 1 - coefficient * gain;
    if (!(left > 0) || (gain * warm) / left > most) return undefined;
    return (cold * warm * perKelvin) / left;
  }
  // Shed less made, over the surface rise, grows with it: one crossing at most.
  const isCooling = (surface: Kelvins): boolean => {
    const shed = Math.PI * diameter * filmOf(way, diameter, ambient, surface) * surface;
    return shed >= cold * (warm + coefficient * (surface + shed * inner));
  };
  if (cold === 0) return 0;
  let low = 0;
  let high = most;
  if (!isCooling(high)) return undefined;
  for (let middle = high / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (isCooling(middle)) high = middle;
    else low = middle;
  }
  return riseAbove(high, diameter, way, ambient) > most ? undefined : high;
}
