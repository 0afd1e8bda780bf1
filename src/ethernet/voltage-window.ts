/** A voltage, or its range, held against a window. @module */
import type { Check } from '../circuit/check.ts';
import type { Volts } from '../quantity/units.ts';

/** The check against the end of the window that is nearer, or that is overstepped further. [V] @internal */
export function voltageWindowCheck(low: Volts, high: Volts, lowest: Volts, highest: Volts): Check {
  const above = low - lowest;
  const below = highest - high;
  const atLow = above <= below;
  const [value, limit, margin] = atLow ? [low, lowest, above] : [high, highest, below];
  const outside = low > highest || high < lowest;
  const verdict = margin >= 0 ? 'pass' : outside || low === high ? 'fail' : 'uncertain';
  return {
    name: 'pse-voltage',
    value,
    limit,
    unit: 'V',
    margin,
    marginFraction: margin / limit,
    verdict,
    ...(verdict === 'uncertain' ? { deciding: ['pseVoltage'] } : {}),
    source: 'ieee-802.3-pse-voltage',
  };
}
