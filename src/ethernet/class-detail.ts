/** A power class with everything that belongs to it: peak power, currents, LLDP limit, and a source for each. @module */
import type { Amperes, Watts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { classRow, type PoeClassNumber } from './class-table.ts';
import { lldpClassLimit } from './lldp.ts';
import { type PoeClass, type PoeClassOptions, poeClass } from './poe-class.ts';
import { type PortCurrents, portCurrents } from './port-currents.ts';

/** A power class in full; its currents are those at the printed power of the port and its lowest voltage. */
export interface PoeClassDetail extends PoeClass, PortCurrents {
  /** Most that the device may draw for up to 50 ms at 5 % duty (memory). [W] */
  readonly pdPeakPower: Watts;
  /** Classes 5 to 8: the most that one pairset may carry where the pairs are unlike (memory, doubtful: judge nothing by it). [A] */
  readonly pairsetCurrentUnbalanced?: Amperes;
  /** Largest value that the device may request by LLDP, in 0.1 W, as a whole number (memory). */
  readonly lldpLimit: number;
  /** Where each figure comes from, where rows or columns differ. */
  readonly sources: Readonly<
    Record<'psePower' | 'pdPower' | 'pdPeakPower' | 'pseVoltage' | 'pdVoltage' | 'channelResistance' | 'lldpLimit', SourceKey> &
      Partial<Record<'pdPowerLater' | 'pairsetCurrentUnbalanced', SourceKey>>
  >;
}

/**
 * A power class as one type of port serves it, with peak power, currents, LLDP limit and the source of each figure.
 *
 * Class powers are averages. For classes 1 and 2 the device's peak is above the class power of the port, so a port must
 * bear it apart from its budget.
 *
 * @param poeClass - Class, 0 to 8.
 * @param options - Type of the port and number of powered pairs, as for `poeClass`.
 * @returns What `poeClass` returns, and the peak [W], the currents at the port's class power [A], the LLDP limit.
 * @throws {@link InputError} As `poeClass`.
 * @example Class 8 at its worst
 * const { totalCurrent, pairsetCurrent, conductorCurrent, pdPeakPower } = poeClassDetail(8);
 * [totalCurrent, pairsetCurrent, conductorCurrent].map((amperes) => amperes.toFixed(3)); // => ['1.731', '0.865', '0.433']
 */
export function poeClassDetail(poeClass: PoeClassNumber, options: PoeClassOptions = {}): PoeClassDetail {
  const limits = limitsOf(poeClass, options);
  const { pdPeakPower, pairsetCurrentUnbalanced } = classRow(poeClass);
  return {
    ...limits,
    pdPeakPower,
    ...portCurrents(limits.psePower / limits.pseVoltageMin, limits.pairs),
    ...(pairsetCurrentUnbalanced === undefined ? {} : { pairsetCurrentUnbalanced }),
    lldpLimit: lldpClassLimit(poeClass),
    sources: {
      psePower: 'ieee-802.3-class',
      pdPower: 'ieee-802.3-class',
      ...(limits.pdPowerLater === undefined ? {} : { pdPowerLater: 'ieee-802.3-power-later' as const }),
      pdPeakPower: 'ieee-802.3-peak',
      pseVoltage: 'ieee-802.3-pse-voltage',
      pdVoltage: 'ieee-802.3-pd-voltage',
      channelResistance: 'ieee-802.3-channel',
      ...(pairsetCurrentUnbalanced === undefined ? {} : { pairsetCurrentUnbalanced: 'ieee-802.3-unbalanced-current' as const }),
      lldpLimit: 'ieee-802.3-lldp-limits',
    },
  };
}

// Under another name, because the parameter that users meet is called as the function is.
const limitsOf: typeof poeClass = poeClass;
