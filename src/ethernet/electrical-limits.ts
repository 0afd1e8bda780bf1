import type { CheckName } from '../limits/check.ts';
import { DEVICE_VOLTAGE } from '../limits/device-voltage.ts';
import type { Limit } from '../limits/limit.ts';
import { PD_VOLTAGE } from '../limits/pd-voltage.ts';
import { PSE_POWER } from '../limits/pse-power.ts';
import type { Volts } from '../quantity/units.ts';
import type { PoeClass } from './poe-class.ts';

/** A limit of a class, or of the device, with its bound as applied and as printed. @internal */
export interface ElectricalLimit {
  readonly limit: Limit<CheckName>;
  readonly bound: number;
  readonly printed: number;
}

/** In the order in which they are listed: power from the port, voltage at the device by its class and by its own data sheet. @internal */
export function electricalLimits(limits: PoeClass, minimumVoltage: Volts | undefined): ElectricalLimit[] {
  const found: ElectricalLimit[] = [
    { limit: PSE_POWER, bound: limits.psePowerLimit, printed: limits.psePower },
    { limit: PD_VOLTAGE, bound: limits.pdVoltageLimit, printed: limits.pdVoltageMin },
  ];
  if (minimumVoltage !== undefined) found.push({ limit: DEVICE_VOLTAGE, bound: minimumVoltage, printed: minimumVoltage });
  return found;
}
