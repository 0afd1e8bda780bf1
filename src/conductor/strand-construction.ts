/** A conductor from the number and size of its strands. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import { refuse, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Millimetres } from '../quantity/units.ts';
import type { Conductor, CorrectableConductor } from './conductor.ts';
import { LAY_ALLOWANCE } from './copper-standard.ts';
import { formulaDiameter, gaugeNumber } from './gauge.ts';
import { type CorrectableMaterial, type MaterialName, materialNames, wireMetal } from './material.ts';

/** Strands, how they are laid, and of what. */
export interface StrandConstructionInput {
  /** Number of strands, a slash, size of one strand, as in `7/0.20`. */
  readonly construction: string;
  /** How much longer each strand is than the cable, a fraction; 0.02 if absent (ASTM B496), 0 for a single wire. */
  readonly layAllowance?: number | undefined;
  /** The metal; `annealed-copper` if absent. */
  readonly material?: MaterialName | undefined;
}

/** Strands of a metal whose temperature coefficient is known. */
export interface CorrectableStrandInput extends StrandConstructionInput {
  /** The metal; `annealed-copper` if absent. */
  readonly material?: CorrectableMaterial | undefined;
}

/** @internal */
export const STRAND_CONSTRUCTION_FIELDS: Fields<StrandConstructionInput, 'material', { construction: Strands }> = {
  construction: { read: (value) => readConstruction(value), type: 'strands' },
  layAllowance: { between: [0, 0.5], is: 'a fraction', optional: true },
  material: { oneOf: () => materialNames, default: 'annealed-copper' },
};

/** A construction that was read. */
interface Strands {
  readonly strands: number;
  /** Of one strand. [mm] */
  readonly diameter: Millimetres;
}

const NUMBER_AND_SIZE = /^(\d{1,5})\s*[/x×]\s*(\d{1,4}(?:\.\d+)?)\s*(mm|in|AWG)?$/;

/**
 * The nominal conductor of a strand construction such as `7/0.20`: seven strands of 0.20 mm.
 *
 * Area is `n · π/4 · d²`, resistance that of the area and `1 + layAllowance` longer strands. The strand size is in
 * millimetres; `7/0.0080 in` and `7/32 AWG` (formula diameter) say otherwise. A whole number without a unit is refused,
 * because `7/32` may mean either.
 *
 * @param input - The construction, lay allowance as a fraction, metal.
 * @returns The conductor: area of all strands [mm²], diameter of the solid wire of that area [mm], resistance per metre at
 *   20 °C [Ω/m].
 * @throws {@link InputError} If the text cannot be read, a size or allowance is out of range, or the metal is not known.
 * @example Area in square millimetres
 * strandConstruction({ construction: '7/0.20' }).area.toFixed(4); // => '0.2199'
 * @example Ohms per kilometre
 * (strandConstruction({ construction: '7/0.20' }).resistancePerMetre * 1000).toFixed(2); // => '79.97'
 */
export function strandConstruction(input: CorrectableStrandInput): CorrectableConductor;
export function strandConstruction(input: StrandConstructionInput): Conductor;
export function strandConstruction(input: StrandConstructionInput): Conductor {
  const { construction, material, layAllowance } = readInput(STRAND_CONSTRUCTION_FIELDS, input);
  const { strands, diameter: strandDiameter } = construction;
  const lay = layAllowance ?? (strands === 1 ? 0 : LAY_ALLOWANCE);
  const { conductivity, ...line } = wireMetal(material, 'material', strandDiameter);
  const area = strands * (Math.PI / 4) * strandDiameter * strandDiameter;
  return {
    name: input.construction.trim(),
    area,
    diameter: Math.sqrt(strands) * strandDiameter,
    geometry: 'nominal',
    material,
    stranding: strands === 1 ? 'solid' : 'stranded',
    strands,
    resistancePerMetre: (1 + lay) / (conductivity * area),
    ...line,
    basis: 'nominal',
    source: 'astm-b496',
  };
}

function readConstruction(construction: string): Strands {
  const expected = "strands and their size, such as '7/0.20', '7/0.0080 in' or '7/32 AWG'";
  if (typeof construction !== 'string') refuse(construction, 'construction', expected, 'type');
  const [, count, size, unit] = NUMBER_AND_SIZE.exec(construction.trim()) ?? [];
  const isReadable = count !== undefined && size !== undefined && (unit !== undefined || size.includes('.'));
  if (!isReadable) throw new InputError('unreadable', 'construction', expected, construction);
  const strands = Number(count);
  if (!(strands >= 1 && strands <= 10_000)) throw new InputError('range', 'construction', 'from 1 to 10000 strands', construction);
  if (unit === 'AWG') return { strands, diameter: formulaDiameter(gaugeNumber(Number(size))) };
  const diameter = Number(size) * (unit === 'in' ? 25.4 : 1);
  requirePositive(diameter, 'construction', 'mm');
  return { strands, diameter };
}
