/** Cords lose more than installed cable. @module */
import { CORD_LOSS, type CordLossRow } from './cord-loss-table.ts';

/** The row of the next thinner gauge that the standard lists, or of the thinnest. @internal */
export function cordLoss(gauge: number): CordLossRow {
  return CORD_LOSS.find((row) => row.gauge >= gauge) ?? (CORD_LOSS.at(-1) as CordLossRow);
}
