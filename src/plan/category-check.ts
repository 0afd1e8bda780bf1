/** The category of cable that IEEE 802.3 power counts on. @module */
import type { Segment } from '../cable/run-resistance.ts';
import type { PseType } from '../ethernet/class-table.ts';
import { CABLE_CATEGORY } from '../limits/cable-category.ts';
import type { Check } from '../limits/check.ts';
import { held } from '../limits/held.ts';

/** Type 1 is for Category 3 and up; Types 2 to 4 are for Category 5 and up (Class D). */
const LEAST_CATEGORY = 5;

/** A fail where a piece is of Category 3 and the port of Type 2 or higher; there is nothing to say otherwise. @internal */
export function categoryCheck(pieces: readonly Segment[], type: PseType): Check | undefined {
  if (type === 1 || !pieces.some(({ cable }) => cable.name === 'cat3')) return undefined;
  return held(CABLE_CATEGORY, 3, LEAST_CATEGORY, 0);
}
