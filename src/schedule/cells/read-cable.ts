/** Reading cells that hold cables, conductors and cords. @module */
import { type Cable, cable } from '../../cable/cable.ts';
import { cableCores } from '../../cable/cable-cores.ts';
import { CABLES, type CableName } from '../../cable/cables.ts';
import { type AwgSize, awg } from '../../conductor/awg.ts';
import type { Conductor } from '../../conductor/conductor.ts';
import { conductorFromResistance } from '../../conductor/conductor-from-resistance.ts';
import { metric } from '../../conductor/metric.ts';
import { isInputError } from '../../quantity/input-error.ts';
import { nearest } from '../../quantity/nearest.ts';
import { type Cell, type CellStyle, holds, refused } from './cell.ts';
import { readPieces, readQuantity } from './read-quantity.ts';

/** What a `Cable` cell may name: a four-pair cable, or one conductor of a two-wire run. */
export type NamedCable =
  | { readonly cable: Cable; readonly conductor?: undefined }
  | {
      readonly conductor: Conductor;
      /** Cores of a category cable joined for each way; absent for a conductor of its own. */
      readonly cores?: number;
      /** What was taken for granted about it, in words. */
      readonly assumed?: string;
      readonly cable?: undefined;
    };

/** One cord. */
export interface ReadCord {
  readonly cable: Cable;
  /** [m] */
  readonly length: number;
}

const GAUGE = /^(?:awg\s*)?(\d{1,2}|[1-4]\/0)\s*(?:awg)?(?:\s+|,\s*)?(solid|stranded)?$/i;
const PER_LENGTH = /^[\d.,]+\s*(?:m|milli)?\s*(?:ohms?|[\u2126\u03a9])\s*\//i;
const AREA = /^([\d.,]+\s*(?:mm(?:2|\^2|\u00b2)))(?:\s*,\s*|\s+|$)(?:class\s*([1256])|(solid|stranded|flexible))?$/i;
const PAIRS = /^(.*?\S)\s*,?\s+(\d)\s*pairs?$/i;
const CORD = /^(.*?\S)\s*(?:(?:\s|\b)cord[\s-]?(24|26|28)|\s(24|26|28)\s*awg)$/i;

/** Cables by their names: each name makes one object, which the runs of a file share. @internal */
export function cablesByName(): CellStyle['cableOf'] {
  const made = new Map<CableName, Cable>();
  return (name) => {
    const found = made.get(name) ?? cable(name);
    made.set(name, found);
    return found;
  };
}

/** Cables joined with `+`. @internal */
export function readCables(text: string, style: CellStyle): Cell<readonly NamedCable[]> {
  return readPieces(text, (piece) => readCable(piece, style));
}

/** One cable, gauge or resistance per length. */
function readCable(text: string, style: CellStyle): Cell<NamedCable> {
  const name = cableName(text);
  if (name !== undefined) return holds({ cable: style.cableOf(name) });
  const gauge = /awg/i.test(text) ? GAUGE.exec(text) : null;
  if (gauge !== null) return readGauge(gauge[1] as string, gauge[2]?.toLowerCase() === 'stranded' ? 'stranded' : 'solid');
  const area = AREA.exec(text);
  if (area !== null) return readArea(area[1] as string, area[2] ?? area[3]?.toLowerCase(), style);
  const pairs = PAIRS.exec(text);
  if (pairs !== null) return readPairs(pairs[1] as string, Number(pairs[2]), style);
  if (!PER_LENGTH.test(text)) return unknownCable(text);

  const perMetre = readQuantity(text, 'resistancePerLength', style);
  if (perMetre.value === undefined) return perMetre;
  const ohmsPerKilometre = perMetre.value * 1000;
  if (!(ohmsPerKilometre >= 1e-3 && ohmsPerKilometre <= 1e6)) {
    return refused('value-out-of-range', 'one conductor has between 0.001 and 1000000 ohm/km');
  }
  return holds({ conductor: conductorFromResistance({ ohmsPerKilometre, name: text }) });
}

function unknownCable(text: string): Cell<never> {
  const near = nearest(text.replaceAll(' ', ''), Object.keys(CABLES));
  return refused('unknown-name', near === undefined ? '' : `did you mean ${near}?`);
}

/** Cords, joined with `+`; `none` says that there are none. @internal */
export function readCords(text: string, style: CellStyle): Cell<readonly ReadCord[]> {
  if (/^none$/i.test(text)) return holds([]);
  return readPieces(text, (piece) => {
    const parts = CORD.exec(piece);
    if (parts === null) return refused('unreadable-value');
    const length = readQuantity(parts[1] as string, 'length', style);
    if (length.value === undefined) return length;
    if (!(length.value >= 0 && length.value <= 1000)) return refused('value-out-of-range', 'a cord is from 0 to 1000 m long');
    return holds({ cable: style.cableOf(`cord-${parts[2] ?? parts[3]}` as CableName), length: length.value });
  });
}

/** `Category 6A`, `CAT-6a`, `Cat.6A`, `cat 6 A` and `6A` are one cable. */
function cableName(text: string): CableName | undefined {
  const spelt = text
    .toLowerCase()
    .replace(/[\s_.-]+/g, '')
    .replace(/^category/, 'cat')
    // A bare `6` may be a gauge; `6a` is none.
    .replace(/^(?=\d[a-z]$)/, 'cat');
  return (Object.keys(CABLES) as CableName[]).find((name) => name.replace('-', '') === spelt);
}

function readGauge(size: string, stranding: 'solid' | 'stranded'): Cell<NamedCable> {
  const gauge = size.includes('/') ? (size as AwgSize) : Number(size);
  if (typeof gauge === 'number' && gauge > 40) return refused('value-out-of-range', 'gauges go from 4/0 to 40 AWG');
  return holds({ conductor: awg(gauge, { stranding }) });
}

const CLASSES: Readonly<Record<string, 1 | 2 | 5 | 6>> = { '1': 1, '2': 2, '5': 5, '6': 6, solid: 1, stranded: 2, flexible: 5 };

/** A metric size: `1.5 mm2`, with the class of IEC 60228 where it is stated. */
function readArea(size: string, made: string | undefined, style: CellStyle): Cell<NamedCable> {
  const area = readQuantity(size, 'area', { decimalComma: style.decimalComma });
  if (area.value === undefined) return area;
  const stated = made === undefined ? undefined : CLASSES[made];
  // From 0.5 mm² up a size has a class; class 5 has the greatest resistance of all, and flexible cord is of it.
  const isAssumed = stated === undefined && area.value >= 0.5;
  try {
    const conductor = metric(area.value, { class: isAssumed ? 5 : stated });
    return holds(isAssumed ? { conductor, assumed: 'class 5 of IEC 60228, flexible, at its maximum is used' } : { conductor });
  } catch (error) {
    if (!isInputError(error)) throw error;
    if (error.code === 'conflict') return refused('unknown-name', 'IEC 60228 has no figure for that size in that class');
    return refused(
      'value-out-of-range',
      'sizes are those of IEC 60228, 0.5 to 95 mm2, and 0.05, 0.08, 0.11, 0.12, 0.14, 0.22, 0.25 and 0.34 mm2',
    );
  }
}

/** Cores of a category cable: one pair is a core each way, two pairs a pair each way. */
function readPairs(text: string, pairs: number, style: CellStyle): Cell<NamedCable> {
  const name = cableName(text);
  if (name === undefined) return refused('unknown-name');
  const whole = style.cableOf(name);
  if (pairs < 1 || pairs > whole.pairs) return refused('value-out-of-range', `${whole.title} has ${whole.pairs} pairs`);
  const conductor = { ...cableCores({ cable: whole, cores: pairs }), name: `${whole.title}, ${pairs} ${pairs === 1 ? 'pair' : 'pairs'}` };
  return holds({ conductor, cores: pairs });
}
