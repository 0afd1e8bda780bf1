/** A voltage, or its range, held against a window. @module */
import type { Check } from '../limits/check.ts';
import { held } from '../limits/held.ts';
import { PSE_VOLTAGE, PSE_VOLTAGE_TOP } from '../limits/pse-voltage.ts';
import type { Volts } from '../quantity/units.ts';

/** The check against the end of the window that is nearer, or that is overstepped further. [V] @internal */
export function voltageWindowCheck(low: Volts, high: Volts, lowest: Volts, highest: Volts): Check {
  const check = low - lowest <= highest - high ? held(PSE_VOLTAGE, low, lowest, 0) : held(PSE_VOLTAGE_TOP, high, highest, 0);
  const isOutside = low > highest || high < lowest;
  if (check.verdict === 'pass' || isOutside || low === high) return check;
  return { ...check, verdict: 'uncertain', deciding: [{ parameter: 'pseVoltage' }] };
}
