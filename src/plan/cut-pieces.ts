/** Pieces of a run cut shorter, in two, or kept cooler. @module */

import { cableResistancePerMetre, type Segment, segmentResistance } from '../cable/run-resistance.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import type { Metres } from '../quantity/units.ts';

/** Less than this is rounding, not cable. */
const SHORTEST: Metres = 1e-9;

/** The installed pieces cut where both halves have the same resistance. @internal */
export function midway(installed: readonly Segment[]): [Segment[], Segment[]] {
  const ohms = installed.map((piece) => segmentResistance(piece, 'maximum'));
  let left = ohms.reduce((sum, one) => sum + one, 0) / 2;
  const near: Segment[] = [];
  const far: Segment[] = [];
  for (const [i, piece] of installed.entries()) {
    const own = ohms[i] as number;
    const exact = own === 0 ? 0 : Math.min(1, left / own);
    // A hair of a piece is the rounding of the sum, and nothing to cut a cable for.
    const share = exact < 1e-9 ? 0 : exact > 1 - 1e-9 ? 1 : exact;
    left -= share * own;
    if (share > 0) near.push({ ...piece, length: piece.length * share });
    if (share < 1) far.push({ ...piece, length: piece.length * (1 - share) });
  }
  return [near, far];
}

/** [m] @internal */
export function lengthOf(pieces: readonly Segment[]): Metres {
  return pieces.reduce((sum, { length }) => sum + length, 0);
}

/**
 * Pieces cut down to so many metres in all, in the way that helps least: off those that have the least resistance first.
 *
 * Whoever shortens a run cuts where it suits; if even this cut is enough, any is. @internal
 */
export function cutTo(pieces: readonly Segment[], total: Metres): Segment[] {
  const weight = ({ cable: own, temperature = CONDUCTOR_TEMPERATURE.default }: Segment): number =>
    cableResistancePerMetre(own, temperature, 'maximum');
  const order = [...pieces].sort((a, b) => weight(a) - weight(b) || a.cable.gauge - b.cable.gauge);
  let off = lengthOf(pieces) - total;
  const left = new Map<Segment, Metres>();
  for (const piece of order) {
    const cut = Math.min(Math.max(off, 0), piece.length);
    off -= cut;
    left.set(piece, piece.length - cut < SHORTEST ? 0 : piece.length - cut);
  }
  return pieces.map((piece) => ({ ...piece, length: left.get(piece) as Metres }));
}

/** No piece warmer than so much. @internal */
export function cooledTo(pieces: readonly Segment[], most: number): Segment[] {
  return pieces.map((piece) => ({ ...piece, temperature: Math.min(piece.temperature ?? CONDUCTOR_TEMPERATURE.default, most) }));
}
