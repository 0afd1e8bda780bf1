/** What a cable is, and the cables that have a name. @module */
import { annealedCopperPerMetre } from '../conductor/annealed-copper.ts';
import type { Stranding } from '../conductor/conductor.ts';
import { COPPER_COEFFICIENT } from '../conductor/copper-standard.ts';
import type { MaterialName } from '../conductor/material.ts';
import type { Fields } from '../quantity/fields.ts';
import { requireBoolean, requireKeys, requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import { requireName } from '../quantity/nearest.ts';
import type { Millimetres, OhmsPerMetre } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { CABLE_STANDARDS, type CableLimit, type CableStandard, type CableUse } from './cable-limit.ts';
import { CABLES, type CableCategory, type CableName, type CableRow, cableNames } from './cables.ts';

/** A twisted-pair cable, as plain data. All its conductors are alike. */
export interface Cable {
  readonly name: string;
  /** How reports call it, as in `Category 5e`. */
  readonly title: string;
  /** Absent where it is not known, as for cords. */
  readonly category?: CableCategory;
  readonly use: CableUse;
  readonly pairs: number;
  /** American Wire Gauge that the trade makes it of. [AWG] */
  readonly gauge: number;
  readonly stranding: Stranding;
  /** The metal of its conductors. */
  readonly material: MaterialName;
  /** Whether it has a screen: a warm screened cable loses less signal than a warm unscreened one. */
  readonly screened: boolean;
  /** One conductor of the usual gauge, at 20 °C. [Ω/m] */
  readonly nominalResistancePerMetre: OhmsPerMetre;
  /** The most that one conductor may have, at 20 °C; what a check uses. [Ω/m] */
  readonly maximumResistancePerMetre: OhmsPerMetre;
  /** Temperature coefficient of resistance at 20 °C. [1/K] */
  readonly temperatureCoefficient: number;
  /** Every limit there is, as printed; `maximumResistancePerMetre` follows from one of them. [Ω/m] */
  readonly limits: readonly CableLimit[];
  /** Where the maximum comes from. */
  readonly source: SourceKey;
  /** Over its sheath; absent where no figure is known. [mm] */
  readonly outsideDiameter?: Millimetres;
  /** Where the diameter comes from: for named cables an assumption, not a limit of any standard. */
  readonly outsideDiameterSource?: SourceKey;
}

/** Which form of a named cable is meant. */
export interface CableOptions {
  /** Whose limit is the maximum; the first of its limits, TIA-568 where there is one, if absent. */
  readonly limit?: CableStandard | undefined;
  /** A screened form; unscreened if absent, except for cables that are always screened. */
  readonly screened?: boolean | undefined;
}

/** @internal */
export const CABLE_FIELDS: Fields<CableOptions> = {
  limit: { oneOf: () => CABLE_STANDARDS, optional: true },
  screened: { flag: true, optional: true },
};

/**
 * A cable by the trade's name.
 *
 * Nominal resistance (usual gauge, 1/58 Ω·mm²/m) and the standard's maximum are kept apart: calculations use the
 * maximum unless asked otherwise. ANSI/TIA-568.2-D: 9.38 Ω/100 m for one conductor of Categories 3 (from memory), 5e, 6
 * and 6A; cords 14.0 Ω/100 m for 24 and 26 AWG (from memory), 23.2 Ω/100 m for 28 AWG (a stand-in). IEC 61156 (from
 * memory) limits the pair loop, so half of it is taken for a conductor: 19.0 Ω/100 m for installed cable, 29.0 for cords
 * of 24 and 26 AWG. Category 7A is no category of TIA-568: its maximum is that of IEC 61156. Outside diameters are
 * assumptions of a thermal study; a data sheet is better.
 *
 * @param name - `'cat3'`, `'cat5e'`, `'cat6'`, `'cat6a'`, `'cat7a'`, `'cord-24'`, `'cord-26'` or `'cord-28'`.
 * @param options - Whose limit, and whether it is screened.
 * @returns The cable: resistances of one conductor at 20 °C [Ω/m].
 * @throws {@link InputError} If there is no cable of that name, it has no limit by that standard, or no unscreened form.
 * @example
 * cable('cat5e').maximumResistancePerMetre; // => 0.0938
 * @example Nominal copper of 23 AWG, in ohms per 100 m
 * (cable('cat6').nominalResistancePerMetre * 100).toFixed(2); // => '6.68'
 * @example The same cable at the limit of IEC 61156-5, 19.0 Ω per 100 m of pair
 * cable('cat6', { limit: 'IEC 61156' }).maximumResistancePerMetre; // => 0.095
 */
export function cable(name: CableName, options: CableOptions = {}): Cable {
  requireObject(options, 'options', 'an object');
  requireKeys(options, ['limit', 'screened'], 'options');
  requireName(name, cableNames, 'name');
  const [category, use, gauge, outsideDiameter, alwaysScreened, conductor, pairLoop]: CableRow = CABLES[name];
  const { limit: standard, screened = alwaysScreened } = options;
  const title = category ? `Category ${category}` : `Cord, ${gauge} AWG`;
  requireBoolean(screened, 'options.screened');
  if (alwaysScreened && !screened) {
    throw new InputError('conflict', 'options.screened', `true: ${title} is always screened`, screened);
  }
  const limits: CableLimit[] = [];
  const [tia, iec] = CABLE_STANDARDS;
  if (conductor !== null) limits.push({ standard: tia, circuit: 'conductor', perMetre: conductor[0], source: conductor[1] });
  if (pairLoop !== null) {
    limits.push({ standard: iec, circuit: 'pairLoop', perMetre: pairLoop, source: `iec-61156-${use === 'cord' ? 6 : 5}-loop` });
  }
  if (standard !== undefined) requireOneOf(standard, CABLE_STANDARDS, 'options.limit');
  const applied = standard === undefined ? limits[0] : limits.find((limit) => limit.standard === standard);
  if (applied === undefined) {
    throw new InputError('conflict', 'options.limit', `'${limits[0]?.standard}', the only limit known for ${title}`, standard);
  }
  const stranding = use === 'cord' ? 'stranded' : 'solid';
  return {
    name,
    title,
    ...(category && { category }),
    use,
    pairs: 4,
    gauge,
    stranding,
    material: 'annealed-copper',
    screened,
    nominalResistancePerMetre: annealedCopperPerMetre(gauge, stranding),
    maximumResistancePerMetre: applied.circuit === 'pairLoop' ? applied.perMetre / 2 : applied.perMetre,
    temperatureCoefficient: COPPER_COEFFICIENT,
    limits,
    source: applied.source,
    ...(outsideDiameter && { outsideDiameter, outsideDiameterSource: 'bundle-model-diameters' }),
  };
}
