/** The category of cable that IEEE 802.3 power counts on. @module */
import type { Segment } from '../cable/run-resistance.ts';
import type { Check } from '../circuit/check.ts';
import type { PseType } from '../ethernet/class-table.ts';

/** Type 1 is for Category 3 and up; Types 2 to 4 are for Category 5 and up (Class D). */
const LEAST_CATEGORY = 5;

/** A fail where a piece is of Category 3 and the port of Type 2 or higher; there is nothing to say otherwise. @internal */
export function categoryCheck(pieces: readonly Segment[], type: PseType): Check | undefined {
  if (type === 1 || !pieces.some(({ cable }) => cable.category === '3')) return undefined;
  const value = 3;
  const margin = value - LEAST_CATEGORY;
  return {
    name: 'cable-category',
    value,
    limit: LEAST_CATEGORY,
    unit: '1',
    margin,
    marginFraction: margin / LEAST_CATEGORY,
    verdict: 'fail',
    source: 'ieee-802.3-cabling',
  };
}
