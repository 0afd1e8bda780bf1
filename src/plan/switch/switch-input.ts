/** A switch, its supplies, its cards and what is plugged into it. @module */
import type { RunResistance } from '../../cable/run-resistance.ts';
import type { PoeClassNumber, PseType } from '../../ethernet/class-table.ts';
import * as port from '../../ethernet/port-fields.ts';
import type { Field, Fields, OptionalField } from '../../quantity/fields.ts';
import { requireObject } from '../../quantity/guards.ts';
import type { Ohms, Volts, Watts } from '../../quantity/units.ts';
import { requireWatts } from './nanowatts.ts';

/** Who keeps power when there is not enough for all (RFC 3621: critical, high, low). */
export type PortPriority = 'critical' | 'high' | 'low';

/**
 * What a port is set aside. `class`: the power of its class. `requested`: what its request takes over the worst channel.
 * `calculated`: what the device's draw takes over this run. `measured`: what was measured at the port.
 */
export type BudgetBasis = 'class' | 'requested' | 'calculated' | 'measured';

/** A powered port. */
export interface BudgetPort {
  /** Port number, from 1. */
  readonly port: number;
  /** Class the device asks for, 0 to 8. */
  readonly poeClass: PoeClassNumber;
  /** Type of the port; the weakest that may serve the class if absent. A weaker one grants a lower class. */
  readonly pseType?: PseType | undefined;
  /**
   * Power that the device has asked for at its own input, up to the LLDP limit of its class (rounded up to 0.1 W); all that its
   * class allows if absent. A device that is granted a lower class is taken at what that allows. [W]
   */
  readonly requested?: Watts | undefined;
  /** `low` if absent, as RFC 3621 has it. */
  readonly priority?: PortPriority | undefined;
  /** What the device draws at its own input, by its data sheet; all that its class allows (12.95 W for classes 0 and 3) if absent. [W] */
  readonly pdPower?: Watts | undefined;
  /** The loop that power sees [Ω], or a `runResistance` result; the worst channel of the type if absent. */
  readonly resistance?: Ohms | RunResistance | undefined;
  /** Voltage at the port; the lowest of its type if absent. [V] */
  readonly pseVoltage?: Volts | undefined;
  /** Pairs that carry power; 4 for classes 5 to 8, else 2. */
  readonly pairs?: 2 | 4 | undefined;
  /** Power measured at the port. [W] */
  readonly measured?: Watts | undefined;
  /** The card, by its name in `groups`, on which the port sits; none if absent. */
  readonly group?: string | undefined;
  /** Most that this port may give: it grants the highest class within it; `portLimit` of the switch if absent. [W] */
  readonly limit?: Watts | undefined;
}

/** One power supply of the switch. */
export interface PowerSupply {
  /** Rated output. [W] */
  readonly power: Watts;
  /** A name by which `failed` may call it. */
  readonly name?: string | undefined;
}

/** Ports that share a limit of their own: a card. */
export interface PortGroup {
  readonly group: string;
  /** Most that its ports may give together. Raising it can, under `strict`, shed a lower port elsewhere. [W] */
  readonly limit: Watts;
}

/** Everything about a switch but its capacity. */
export interface SwitchBudgetCommon {
  readonly ports: readonly BudgetPort[];
  /** What each port is set aside. */
  readonly basis: BudgetBasis;
  /** `strict` (the default): the lowest priority goes first, highest port number first, until the rest fits. `fill`: what still fits is then admitted again. */
  readonly policy?: 'strict' | 'fill' | undefined;
  /** Share of the capacity that is kept back, a fraction from 0 to 1; 0 if absent. */
  readonly reserve?: number | undefined;
  /** Most that any one port may give: it grants the highest class within it; as much as its class if absent. [W] */
  readonly portLimit?: Watts | undefined;
  /** Cards with limits of their own; none if absent. */
  readonly groups?: readonly PortGroup[] | undefined;
}

/** A switch and what is plugged into it. */
export type SwitchBudgetInput = SwitchBudgetCommon &
  (
    | {
        /** Published power budget for the ports. [W] */
        readonly capacity: Watts;
        readonly supplies?: undefined;
        readonly systemLoad?: undefined;
        readonly budgetBySupplies?: undefined;
        readonly fitted?: undefined;
        readonly failed?: undefined;
      }
    | {
        /** Published power budget for the ports with one supply working, with two, and so on. [W] */
        readonly budgetBySupplies: readonly Watts[];
        /** Supplies that are fitted, a whole number; as many as the list is long if absent. */
        readonly fitted?: number | undefined;
        /** How many of them have failed, a whole number; 0 if absent. */
        readonly failed?: number | undefined;
        readonly capacity?: undefined;
        readonly supplies?: undefined;
        readonly systemLoad?: undefined;
      }
    | {
        /** The supplies, where no budget is published: the result is then an estimate. */
        readonly supplies: readonly PowerSupply[];
        /** What the switch itself takes from them; not subtracted if absent. [W] */
        readonly systemLoad?: Watts | undefined;
        /** The supplies that have failed, by name, or how many: the largest then; none if absent. */
        readonly failed?: number | readonly string[] | undefined;
        readonly capacity?: undefined;
        readonly budgetBySupplies?: undefined;
        readonly fitted?: undefined;
      }
  );

/** A power that adds up exactly. */
const POWER: Field<Watts> = { check: (watts, path) => requireWatts(watts, path), type: 'Watts' };
const OPTIONAL_POWER: OptionalField<Watts> = { check: (watts, path) => requireWatts(watts, path), type: 'Watts', optional: true };

/** Guarded by hand, for speed: there may be ten thousand ports. @internal */
export const BUDGET_PORT_FIELDS: Fields<BudgetPort, 'priority'> = {
  port: { whole: [1, 1e6] },
  poeClass: () => port.POE_CLASS_FIELD,
  pseType: () => port.PSE_TYPE_FIELD,
  requested: () => port.PD_POWER_FIELD,
  priority: { oneOf: () => PRIORITIES, default: 'low' },
  pdPower: () => port.PD_POWER_FIELD,
  resistance: () => port.RESISTANCE_FIELD,
  pseVoltage: () => port.PSE_VOLTAGE_FIELD,
  pairs: () => port.PAIRS_FIELD,
  measured: () => OPTIONAL_POWER,
  group: { text: 'any', optional: true },
  limit: () => OPTIONAL_POWER,
};

/** Who comes first. @internal */
export const PRIORITIES: readonly PortPriority[] = ['critical', 'high', 'low'];

/** @internal */
export const BASES: readonly BudgetBasis[] = ['class', 'requested', 'calculated', 'measured'];

/** @internal */
export const POWER_SUPPLY_FIELDS: Fields<PowerSupply> = { power: () => POWER, name: { text: 'any', optional: true } };

/** @internal */
export const PORT_GROUP_FIELDS: Fields<PortGroup> = { group: { text: 'any' }, limit: () => POWER };

/** Names, or how many; which, is checked against the supplies. @internal */
export const FAILED_FIELD: OptionalField<number | readonly string[]> = { check: () => undefined, type: 'FailedSupplies', optional: true };

/** The ports, and what the three ways of saying the capacity rule out, are guarded by hand. @internal */
export const SWITCH_BUDGET_FIELDS: Fields<Pick<SwitchBudgetInput, keyof SwitchBudgetInput>, 'policy' | 'reserve'> = {
  ports: { list: { object: () => BUDGET_PORT_FIELDS } },
  basis: { oneOf: () => BASES },
  policy: { oneOf: () => ['strict', 'fill'], default: 'strict' },
  reserve: { fraction: 'capacity', default: 0 },
  portLimit: () => OPTIONAL_POWER,
  groups: { list: { object: () => PORT_GROUP_FIELDS }, optional: true },
  capacity: () => OPTIONAL_POWER,
  budgetBySupplies: { list: { nonNegative: 'W' }, least: 'power', optional: true },
  fitted: { whole: [0, 1e6], optional: true },
  failed: () => FAILED_FIELD,
  supplies: { list: { object: () => POWER_SUPPLY_FIELDS }, least: 'supply', optional: true },
  systemLoad: () => OPTIONAL_POWER,
};

/** A switch inside the input of another function; `switchBudget` checks its keys. @internal */
export const SWITCH_FIELD: Field<SwitchBudgetInput> = {
  check: (budget, path) => requireObject(budget, path, 'a switch, as for switchBudget'),
  type: 'SwitchBudgetInput',
};
