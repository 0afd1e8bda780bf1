/** Can a data sheet be true? The resistance of a cable against the gauge and the metal it claims. @module */
import { awg } from '../conductor/awg.ts';
import { type Conductor, type CorrectableConductor, STRANDINGS, type Stranding } from '../conductor/conductor.ts';
import { formulaDiameter } from '../conductor/gauge.ts';
import { type CorrectableMaterial, materialNames, wireMetal } from '../conductor/material.ts';
import { atTemperature, CONDUCTOR_TEMPERATURE, requireConductor } from '../conductor/resistance-per-metre.ts';
import { type Fields, type Read, readInput } from '../quantity/fields.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius } from '../quantity/units.ts';
import { CABLE_USES, type CableUse } from './cable-limit.ts';
import { CABLES } from './cables.ts';
import { CABLING_FIGURES } from './cabling-figures-table.ts';
import { LEAST_OF_NOMINAL, leastResistance } from './least-resistance.ts';

/** What a data sheet says of the conductors of a cable. */
export interface CableData {
  /** Claimed gauge. [AWG] */
  readonly gauge?: number | undefined;
  /** One conductor as claimed, where the sheet gives mm² and no gauge; instead of `gauge`, `stranding` and `material`. */
  readonly conductor?: Conductor | undefined;
  /** `horizontal` if absent. */
  readonly use?: CableUse | undefined;
  /** `stranded` for a cord, `solid` for a cable, if absent. */
  readonly stranding?: Stranding | undefined;
  /** Claimed metal; `annealed-copper` if absent. */
  readonly material?: CorrectableMaterial | undefined;
  /** Usual resistance of one conductor, not of the loop. [Ω/km] */
  readonly nominalOhmsPerKilometre?: number | undefined;
  /** Most resistance of one conductor, not of the loop. [Ω/km] */
  readonly maximumOhmsPerKilometre?: number | undefined;
  /** Temperature at which they are stated; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

/** What can be wrong with a data sheet. */
export type CableDataCode =
  /** Less resistance than a wire of this gauge and metal can have. */
  | 'below-the-metal'
  /** More than a wire of this gauge and metal has: a thinner wire, or another metal. */
  | 'above-the-metal'
  /** 1.40 to 1.60 of copper: what copper-clad aluminium has. */
  | 'consistent-with-clad-aluminium'
  /** Twice what it should be: the loop of two conductors, given as one. */
  | 'consistent-with-a-loop'
  /** A usual resistance that is high for the gauge: perhaps the maximum. */
  | 'high-nominal'
  /** The usual resistance is above the maximum. */
  | 'nominal-above-maximum';

/** One thing that is wrong, or doubtful, about a data sheet. */
export interface CableDataFinding {
  readonly code: CableDataCode;
  /** `impossible`: not with this gauge and this metal. */
  readonly severity: 'impossible' | 'doubtful';
  readonly parameter: 'nominalOhmsPerKilometre' | 'maximumOhmsPerKilometre';
  /** At 20 °C. [Ω/km] */
  readonly ohmsPerKilometre: number;
  /** The bound that it breaks, at 20 °C. [Ω/km] */
  readonly allowed: number;
  /** Times the nominal resistance of the claimed gauge and metal. */
  readonly ratio: number;
  readonly message: string;
}

/** A data sheet, assessed. */
export interface CableDataAssessment {
  readonly verdict: 'plausible' | 'doubtful' | 'impossible';
  /** One conductor of the claimed gauge and metal, at 20 °C. [Ω/km] */
  readonly expectedOhmsPerKilometre: number;
  readonly findings: readonly CableDataFinding[];
}

/** @internal */
export const CABLE_DATA_FIELDS: Fields<CableData, 'use' | 'temperature'> = {
  gauge: { whole: [-3, 40], optional: true },
  conductor: { check: (value, path) => requireConductor(value, path), type: 'Conductor', optional: true },
  use: { oneOf: () => CABLE_USES, default: 'horizontal' },
  stranding: { oneOf: () => STRANDINGS, optional: true },
  material: { oneOf: () => materialNames as readonly CorrectableMaterial[], optional: true },
  nominalOhmsPerKilometre: { positive: 'Ω/km', optional: true },
  maximumOhmsPerKilometre: { positive: 'Ω/km', optional: true },
  temperature: () => CONDUCTOR_TEMPERATURE,
};

/** A data sheet that was read. @internal */
export type ReadCableData = Read<CableData, 'use' | 'temperature'>;

/** Of every finding: how grave it is, and in words. */
const FINDINGS: Readonly<Record<CableDataCode, readonly [CableDataFinding['severity'], words: string]>> = {
  'below-the-metal': ['impossible', 'less than a wire of this gauge and metal can have'],
  'above-the-metal': ['impossible', 'too high for this gauge and metal: a thinner wire, or another metal'],
  'consistent-with-clad-aluminium': ['impossible', 'too high for copper: consistent with clad aluminium'],
  'consistent-with-a-loop': ['impossible', 'twice one conductor: consistent with the loop of two'],
  'high-nominal': ['doubtful', 'high for a usual figure: is it the maximum?'],
  'nominal-above-maximum': ['impossible', 'the usual figure is above the maximum'],
};

/** 2 % for the diameter, 2 % for the strands or the twist of the pairs, and a little for both. */
const HIGH = 1.08;
/** Above every published copper maximum (1.16 of nominal, tinned class 5 of IEC 60228); below one gauge step (1.26). */
const FAR = 1.2;

/**
 * Whether the resistance on a data sheet is possible for the gauge and the metal it claims.
 *
 * A usual resistance may lie 4 % below that of the gauge (14 % for strands) and 20 % above it; beyond that no wire of that gauge and
 * metal has it. A stated maximum may be as high as the cabling standard's own limit, whatever the gauge: it only promises.
 * Copper-clad aluminium has 1.40 to 1.60 of copper: a data sheet that claims copper and shows that is told so. A cable
 * of good figures may still be false; only a meter and a scale tell.
 *
 * @param data - Claimed gauge and metal, resistances of one conductor and the temperature they hold at [°C].
 * @returns The verdict, the resistance to expect, and each finding with the bound it breaks.
 * @throws {@link InputError} If a number is outside its domain or a name is not known.
 * @example Sold as 24 AWG copper
 * const { verdict, findings } = assessCableData({ gauge: 24, nominalOhmsPerKilometre: 126 });
 * [verdict, findings[0]?.code, findings[0]?.ratio.toFixed(2)]; // => ['impossible', 'consistent-with-clad-aluminium', '1.50']
 */
export function assessCableData(data: CableData): CableDataAssessment {
  const read = readInput(CABLE_DATA_FIELDS, data);
  const wire = claimedWire(read);
  if (wire === undefined) throw new InputError('missing', 'gauge', 'the claimed gauge, or a conductor', undefined);
  return assess(read, wire);
}

/** The same for a sheet that was read. @internal */
export function assess(sheet: ReadCableData, wire: CorrectableConductor): CableDataAssessment {
  const expected = nominalPerMetre(wire) * 1000;
  const warm = atTemperature(1, wire.temperatureCoefficient, sheet.temperature);
  const least = leastResistance(expected, wire);
  const findings: CableDataFinding[] = [];
  const [nominal, maximum] = [sheet.nominalOhmsPerKilometre, sheet.maximumOhmsPerKilometre].map((figure) => figure && figure / warm);
  if (nominal !== undefined) {
    hold('nominalOhmsPerKilometre', nominal, expected * FAR);
    if (nominal > expected * HIGH && nominal <= expected * FAR) add('high-nominal', 'nominalOhmsPerKilometre', nominal, expected * HIGH);
  }
  if (maximum !== undefined) {
    // A maximum up to the standard's own limit accuses nobody: the larger of TIA-568 and IEC 61156.
    const limit = 500 * (sheet.use === 'cord' ? CABLES['cord-24'] : CABLES.cat5e)[6];
    hold('maximumOhmsPerKilometre', maximum, Math.max(expected * FAR, limit));
    if (nominal !== undefined && nominal > maximum) add('nominal-above-maximum', 'nominalOhmsPerKilometre', nominal, maximum);
  }
  const { severity: worst = 'plausible' } = findings.find(({ severity }) => severity === 'impossible') ?? findings[0] ?? {};
  return {
    verdict: worst,
    expectedOhmsPerKilometre: expected,
    findings,
  };

  function hold(parameter: CableDataFinding['parameter'], figure: number, most: number) {
    if (figure < least) add('below-the-metal', parameter, figure, least);
    else if (figure > most) add(tooHigh(figure / expected, wire), parameter, figure, most);
  }

  function add(code: CableDataCode, parameter: CableDataFinding['parameter'], figure: number, allowed: number) {
    const ratio = figure / expected;
    const [severity, words] = FINDINGS[code];
    const metal = wire.material === 'annealed-copper' ? ' copper' : '';
    const message = `${figure.toFixed(1)} Ω/km at 20 °C is ${ratio.toFixed(2)} of ${wire.name}${metal}: ${words}`;
    findings.push({ code, severity, parameter, ohmsPerKilometre: figure, allowed, ratio, message });
  }
}

function tooHigh(ratio: number, { material }: Conductor) {
  const { 'clad-aluminium-least': best, 'clad-aluminium-most': worst } = CABLING_FIGURES;
  if (material === 'annealed-copper' && ratio >= best[1] && ratio <= worst[1]) return 'consistent-with-clad-aluminium';
  return ratio >= 2 * LEAST_OF_NOMINAL.solid && ratio <= 2 * HIGH ? 'consistent-with-a-loop' : 'above-the-metal';
}

/** One conductor as the sheet claims it; `undefined` if it claims nothing. @internal */
export function claimedWire(sheet: ReadCableData): CorrectableConductor | undefined {
  const { gauge, conductor, material } = sheet;
  if (conductor !== undefined) {
    if (gauge !== undefined) throw new InputError('conflict', 'conductor', 'either gauge or conductor', conductor);
    return correctable(conductor, 'conductor.material');
  }
  if (gauge === undefined) return undefined;
  const stranding = claimedStranding(sheet);
  // Looked up here first, so that an error names the field of the sheet: some metals are not drawn so thin.
  if (material !== undefined) wireMetal(material, 'material', formulaDiameter(gauge) / (stranding === 'solid' ? 1 : Math.sqrt(7)));
  return correctable(awg(gauge, { stranding, material }), 'material');
}

/** @internal */
export function claimedStranding({ stranding, use }: ReadCableData): Stranding {
  return stranding ?? (use === 'cord' ? 'stranded' : 'solid');
}

function correctable(wire: Conductor, parameter: string): CorrectableConductor {
  const { temperatureCoefficient } = wire;
  if (temperatureCoefficient !== undefined) return { ...wire, temperatureCoefficient };
  throw new InputError('conflict', parameter, 'a metal whose temperature coefficient is known: runs are judged hot', wire.material);
}

/** What the metal of the claimed area has, whatever its own figure is. [Ω/m] @internal */
export function nominalPerMetre(wire: CorrectableConductor): number {
  if (wire.basis === 'nominal') return wire.resistancePerMetre;
  const same = awg(24, { stranding: wire.stranding, material: wire.material });
  return (same.resistancePerMetre * same.area) / wire.area;
}
