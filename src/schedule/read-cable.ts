/** Reading cells that hold cables, conductors and cords. @module */
import { type Cable, cable } from '../cable/cable.ts';
import { CABLES, type CableName } from '../cable/cables.ts';
import { type AwgSize, awg } from '../conductor/awg.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import { type Cell, holds, refused } from './cell.ts';
import { type QuantityStyle, readPieces, readQuantity } from './read-quantity.ts';

/** What a `Cable` cell may name: a four-pair cable, or one conductor of a two-wire run. */
export type NamedCable =
  | { readonly cable: Cable; readonly conductor?: undefined }
  | { readonly conductor: Conductor; readonly cable?: undefined };

/** One cord. */
export interface ReadCord {
  readonly cable: Cable;
  /** [m] */
  readonly length: number;
}

const GAUGE = /^(?:awg\s*)?(\d{1,2}|[1-4]\/0)\s*(?:awg)?(?:\s+|,\s*)?(solid|stranded)?$/i;
const PER_LENGTH = /^[\d.,]+\s*(?:m|milli)?\s*(?:ohms?|[\u2126\u03a9])\s*\//i;
const CORD = /^(.*?\S)\s*(?:(?:\s|\b)cord[\s-]?(24|26|28)|\s(24|26|28)\s*awg)$/i;

/** A shop of cables for one file: each name makes one object, which its runs share. @internal */
export function cableShop(): (name: CableName) => Cable {
  const made = new Map<CableName, Cable>();
  return (name) => {
    let found = made.get(name);
    if (found === undefined) {
      found = cable(name);
      made.set(name, found);
    }
    return found;
  };
}

/** One cable, gauge or resistance per length. @internal */
export function readCable(text: string, shop: (name: CableName) => Cable, style: QuantityStyle): Cell<NamedCable> {
  const name = cableName(text);
  if (name !== undefined) return holds({ cable: shop(name) });
  const gauge = /awg/i.test(text) ? GAUGE.exec(text) : null;
  if (gauge !== null) return readGauge(gauge[1] as string, gauge[2]?.toLowerCase() === 'stranded' ? 'stranded' : 'solid');
  if (!PER_LENGTH.test(text)) return refused('unknown-name');

  const perMetre = readQuantity(text, 'resistancePerLength', style);
  if (perMetre.value === undefined) return refused(perMetre.code ?? 'unreadable-value', perMetre.hint);
  const ohmsPerKilometre = perMetre.value * 1000;
  if (!(ohmsPerKilometre >= 1e-3 && ohmsPerKilometre <= 1e6)) {
    return refused('value-out-of-range', 'one conductor has between 0.001 and 1000000 ohm/km');
  }
  return holds({ conductor: conductorFromResistance({ ohmsPerKilometre, name: text }) });
}

/** Cords, joined with `+`; `none` says that there are none. @internal */
export function readCords(text: string, shop: (name: CableName) => Cable, style: QuantityStyle): Cell<readonly ReadCord[]> {
  if (/^none$/i.test(text)) return holds([]);
  return readPieces(text, (piece) => {
    const parts = CORD.exec(piece);
    if (parts === null) return refused('unreadable-value');
    const length = readQuantity(parts[1] as string, 'length', style);
    if (length.value === undefined) return refused(length.code ?? 'unreadable-value', length.hint);
    if (!(length.value >= 0 && length.value <= 1000)) return refused('value-out-of-range', 'a cord is from 0 to 1000 m long');
    return { ...length, value: { cable: shop(`cord-${parts[2] ?? parts[3]}` as CableName), length: length.value } };
  });
}

/** `Category 6A`, `CAT-6a` and `cat 6 A` are one cable. */
function cableName(text: string): CableName | undefined {
  const spelt = text
    .toLowerCase()
    .replace(/[\s_-]+/g, '')
    .replace(/^category/, 'cat');
  return (Object.keys(CABLES) as CableName[]).find((name) => name.replace('-', '') === spelt);
}

function readGauge(size: string, stranding: 'solid' | 'stranded'): Cell<NamedCable> {
  const gauge = size.includes('/') ? (size as AwgSize) : Number(size);
  if (typeof gauge === 'number' && gauge > 40) return refused('value-out-of-range', 'gauges go from 4/0 to 40 AWG');
  return holds({ conductor: awg(gauge, { stranding }) });
}
