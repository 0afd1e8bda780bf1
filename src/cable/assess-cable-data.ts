/** Can a data sheet be true? The resistance of a cable against the gauge and the metal it claims. @module */
import { awg } from '../conductor/awg.ts';
import type { Conductor, CorrectableConductor, Stranding } from '../conductor/conductor.ts';
import { formulaDiameter } from '../conductor/gauge.ts';
import { type CorrectableMaterial, findMaterial } from '../conductor/material.ts';
import { atTemperature, requireConductor } from '../conductor/resistance-per-metre.ts';
import { requireInteger, requireObject, requireOneOf, requirePositive, requireTemperature } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius } from '../quantity/units.ts';
import type { CableUse } from './cable-limit.ts';

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

/** ±1 % of diameter is 2 % of resistance, and the purest copper conducts 2 % better than the standard's. */
const LEAST_SOLID = 0.96;
/** The trade's seven strands of a whole gauge hold up to 11 % more metal than the solid gauge (7/32 for 24 AWG: 448 against 404 circular mils). */
const LEAST_STRANDED = 0.86;
/** 2 % for the diameter, 2 % for the strands or the twist of the pairs, and a little for both. */
const HIGH = 1.08;
/** Above every published copper maximum (1.16 of nominal, tinned class 5 of IEC 60228); below one gauge step (1.26). */
const FAR = 1.2;
/** Copper-clad aluminium against copper, best and worst. */
const CLAD_LEAST = 1.4;
const CLAD_MOST = 1.6;
/** A maximum up to the standard's own limit accuses nobody: the larger of TIA-568 and IEC 61156. [Ω/km] */
const STANDARD_LIMIT: Readonly<Record<CableUse, number>> = { horizontal: 95, cord: 145 };

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
  requireObject(data, 'data', 'an object with gauge and resistances');
  const { use = 'horizontal', temperature = 20, nominalOhmsPerKilometre, maximumOhmsPerKilometre } = data;
  const wire = requireClaim(data);
  requireTemperature(temperature, 'temperature');
  const expected = nominalPerMetre(wire) * 1000;
  const warm = atTemperature(1, wire.temperatureCoefficient, temperature);
  const nominal = at20(nominalOhmsPerKilometre, 'nominalOhmsPerKilometre');
  const maximum = at20(maximumOhmsPerKilometre, 'maximumOhmsPerKilometre');

  const findings: CableDataFinding[] = [];
  const { resistivity, bestResistivity = resistivity } = findMaterial(wire.material, 'material');
  const least = expected * (wire.stranding === 'solid' ? LEAST_SOLID : LEAST_STRANDED) * (bestResistivity / resistivity);
  if (nominal !== undefined) {
    if (nominal < least) tooLow('nominalOhmsPerKilometre', nominal);
    else if (nominal > expected * FAR) tooHigh('nominalOhmsPerKilometre', nominal, expected * FAR);
    else if (nominal > expected * HIGH) {
      add('high-nominal', 'doubtful', 'nominalOhmsPerKilometre', nominal, expected * HIGH, 'high for a usual figure: is it the maximum?');
    }
  }
  if (maximum !== undefined) {
    const most = Math.max(expected * FAR, STANDARD_LIMIT[use]);
    if (maximum < least) tooLow('maximumOhmsPerKilometre', maximum);
    else if (maximum > most) tooHigh('maximumOhmsPerKilometre', maximum, most);
    if (nominal !== undefined && nominal > maximum) {
      add('nominal-above-maximum', 'impossible', 'nominalOhmsPerKilometre', nominal, maximum, 'the usual figure is above the maximum');
    }
  }
  const impossible = findings.some(({ severity }) => severity === 'impossible');
  return {
    verdict: impossible ? 'impossible' : findings.length > 0 ? 'doubtful' : 'plausible',
    expectedOhmsPerKilometre: expected,
    findings,
  };

  function at20(figure: number | undefined, parameter: string): number | undefined {
    if (figure === undefined) return undefined;
    requirePositive(figure, parameter, 'Ω/km');
    return figure / warm;
  }

  function tooLow(parameter: CableDataFinding['parameter'], figure: number): void {
    add('below-the-metal', 'impossible', parameter, figure, least, 'less than a wire of this gauge and metal can have');
  }

  function tooHigh(parameter: CableDataFinding['parameter'], figure: number, most: number): void {
    const ratio = figure / expected;
    if (wire.material === 'annealed-copper' && ratio >= CLAD_LEAST && ratio <= CLAD_MOST) {
      add('consistent-with-clad-aluminium', 'impossible', parameter, figure, most, 'too high for copper: consistent with clad aluminium');
    } else if (ratio >= 2 * LEAST_SOLID && ratio <= 2 * HIGH) {
      add('consistent-with-a-loop', 'impossible', parameter, figure, most, 'twice one conductor: consistent with the loop of two');
    } else {
      add('above-the-metal', 'impossible', parameter, figure, most, 'too high for this gauge and metal: a thinner wire, or another metal');
    }
  }

  function add(
    code: CableDataCode,
    severity: CableDataFinding['severity'],
    parameter: CableDataFinding['parameter'],
    figure: number,
    allowed: number,
    words: string,
  ): void {
    const ratio = figure / expected;
    const message = `${figure.toFixed(1)} Ω/km at 20 °C is ${ratio.toFixed(2)} of ${wire.name}${wire.material === 'annealed-copper' ? ' copper' : ''}: ${words}`;
    findings.push({ code, severity, parameter, ohmsPerKilometre: figure, allowed, ratio, message });
  }
}

function requireClaim(data: CableData): CorrectableConductor {
  const wire = claimedWire(data);
  if (wire === undefined) throw new InputError('missing', 'gauge', 'the claimed gauge, or a conductor', undefined);
  return wire;
}

/** One conductor as the sheet claims it; `undefined` if it claims nothing. @internal */
export function claimedWire(data: CableData): CorrectableConductor | undefined {
  const { gauge, conductor, use = 'horizontal', material } = data;
  requireOneOf(use, ['horizontal', 'cord'], 'use');
  const stranding = data.stranding ?? (use === 'cord' ? 'stranded' : 'solid');
  requireOneOf(stranding, ['solid', 'stranded'], 'stranding');
  if (conductor !== undefined) {
    if (gauge !== undefined) throw new InputError('conflict', 'conductor', 'either gauge or conductor', conductor);
    requireConductor(conductor, 'conductor');
    return correctable(conductor, 'conductor.material');
  }
  if (gauge === undefined) return undefined;
  requireInteger(gauge, -3, 40, 'gauge');
  // Asked here first, so that an error names the field of the sheet: some metals are not drawn so thin.
  const diameter = formulaDiameter(gauge) / (stranding === 'solid' ? 1 : Math.sqrt(7));
  if (material !== undefined) findMaterial(material, 'material', diameter);
  return correctable(awg(gauge, { stranding, material }), 'material');
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
