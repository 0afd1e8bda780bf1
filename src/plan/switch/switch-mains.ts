/** What a switch takes from the mains, and where the heat goes. @module */
import { btuPerHour } from '../../quantity/convert-electrical.ts';
import { type Fields, readInput } from '../../quantity/fields.ts';
import type { Amperes, Volts, Watts } from '../../quantity/units.ts';
import { checked, drawOf, givenFlow, type PortFlow, portFlow, psePowerLimitOf } from './port-demand.ts';
import { SHARE_FIELD } from './share-field.ts';
import { type SwitchBudget, switchBudget } from './switch-budget.ts';
import { SWITCH_FIELD, type SwitchBudgetInput } from './switch-input.ts';
import { withPorts } from './with-ports.ts';

/** A switch with what is known of its mains side. */
export interface SwitchMainsInput {
  /** The switch and its ports; who is powered follows from it. */
  readonly budget: SwitchBudgetInput;
  /** Output over input power of the supplies at this load, a fraction above 0 and up to 1; not included if absent. */
  readonly efficiency?: number | undefined;
  /** What the switch itself takes from its supplies; that of the budget, or not included, if absent. [W] */
  readonly systemLoad?: Watts | undefined;
  /** What each powered port loses inside the switch; not included if absent. [W] */
  readonly portLoss?: Watts | undefined;
  /** Mains voltage, for the current. [V] */
  readonly mainsVoltage?: Volts | undefined;
  /** Power factor of the supplies, a fraction above 0 and up to 1; 1 if absent. */
  readonly powerFactor?: number | undefined;
}

/** @internal */
export const SWITCH_MAINS_FIELDS: Fields<SwitchMainsInput> = {
  budget: () => SWITCH_FIELD,
  efficiency: () => SHARE_FIELD,
  systemLoad: { nonNegative: 'W', optional: true },
  portLoss: { nonNegative: 'W', optional: true },
  mainsVoltage: { positive: 'V', optional: true },
  powerFactor: () => SHARE_FIELD,
};

/** A power with what is not in it. */
export interface PowerFigure {
  /** [W] */
  readonly watts: Watts;
  /** What is missing from the figure, in words: print it beside the figure. */
  readonly notIncluded: readonly string[];
}

/** One powered port. */
export interface PortHeat extends PortFlow {
  readonly port: number;
}

/** What a switch takes from the mains, and where it goes. */
export interface SwitchMains {
  readonly mainsInput: PowerFigure;
  /** Absent where no mains voltage is given. */
  readonly mainsCurrent?: {
    /** [A] */
    readonly amperes: Amperes;
    readonly notIncluded: readonly string[];
  };
  /** What stays in the rack: conversion loss, system load, port loss. */
  readonly rackHeat: PowerFigure & {
    /** The same in BTU per hour. */
    readonly btuPerHour: number;
  };
  /** What the devices draw, and turn to heat, light or sound where they are. [W] */
  readonly devicePower: Watts;
  /** Heat along the cables. [W] */
  readonly cableHeat: Watts;
  /** What leaves the ports: `devicePower + cableHeat`. [W] */
  readonly portPower: Watts;
  /** Lost in the switch behind its ports; 0 where it is not included. [W] */
  readonly portLoss: Watts;
  /** 0 where it is not included. [W] */
  readonly systemLoad: Watts;
  /** Lost in the supplies; 0 where it is not included. [W] */
  readonly conversionLoss: Watts;
  /** Each powered port. */
  readonly ports: readonly PortHeat[];
  readonly budget: SwitchBudget;
  readonly assumptions: readonly string[];
  readonly caution: string;
  /** The two figures and what is not in them, in a sentence. */
  readonly statement: string;
}

/** The caution that goes with every figure of the mains side. */
const CAUTION =
  'Arithmetic for planning, not a design of a mains circuit: sockets, protection and cooling are for the local code and a licensed practitioner.';

/**
 * Mains input, current and rack heat of a switch, and the heat along its cables and at its devices.
 *
 * Each powered port at the draw of its device over its run, or at its measurement on the basis `measured`; a draw that
 * is not stated is the request on the basis `requested`, else all that the class allows, and a run that is not stated the
 * worst channel. No port gives more than it is set aside, unless a stated draw takes more, which is told. Mains input = device power +
 * cable heat + port loss + system load + conversion loss; rack heat is the last three. One efficiency for every load: at
 * a light load real supplies do worse.
 *
 * @param input - The switch, efficiency and power factor as fractions, system load and port loss [W], mains voltage [V].
 * @returns Mains input and rack heat [W], each with what is not in it, the current [A], and where the power goes [W].
 * @throws {@link InputError} As `switchBudget`, or if an efficiency or power factor is 0 or above 1, or a measured power
 *   is more than its run could take.
 * @example Ten class 4 devices at their most over the worst channel, 90 % efficiency, 40 W for the switch itself
 * const ports = Array.from({ length: 10 }, (_, index) => ({ port: index + 1, poeClass: 4 as const }));
 * const { mainsInput, rackHeat } = switchMains({
 *   budget: { capacity: 370, basis: 'class', ports },
 *   efficiency: 0.9,
 *   systemLoad: 40,
 *   portLoss: 0,
 * });
 * [mainsInput.watts.toFixed(1), rackHeat.watts.toFixed(1), rackHeat.btuPerHour.toFixed(0)]; // => ['377.8', '77.8', '265']
 */
export function switchMains(input: SwitchMainsInput): SwitchMains {
  const { budget: given, efficiency, portLoss: lossPerPort, mainsVoltage, powerFactor, ...stated } = readInput(SWITCH_MAINS_FIELDS, input);
  const budget = switchBudget(given);
  const { systemLoad = given.systemLoad } = stated;

  const { ports, notes } = flowsOf(given, budget);
  let devicePower = 0;
  let cableHeat = 0;
  for (const flow of ports) {
    devicePower += flow.devicePower;
    cableHeat += flow.cableHeat;
  }
  const portPower = devicePower + cableHeat;
  const portLoss = (lossPerPort ?? 0) * ports.length;
  const output = portPower + portLoss + (systemLoad ?? 0);
  const watts = output / (efficiency ?? 1);
  const conversionLoss = efficiency === undefined ? 0 : (output * (1 - efficiency)) / efficiency;
  const inRack = portLoss + (systemLoad ?? 0) + conversionLoss;

  const notIncluded: string[] = [];
  if (systemLoad === undefined) notIncluded.push('system load');
  if (efficiency === undefined) notIncluded.push('conversion loss');
  if (lossPerPort === undefined) notIncluded.push('port loss');
  const assumptions = [...budget.assumptions, ...notes];
  if (mainsVoltage !== undefined && powerFactor === undefined) assumptions.push('power factor not stated, 1 is taken');
  const perBtu = btuPerHour(1);
  const missing = notIncluded.length === 0 ? '' : ` (not included: ${notIncluded.join(', ')})`;
  return {
    mainsInput: { watts, notIncluded },
    ...(mainsVoltage === undefined ? {} : { mainsCurrent: { amperes: watts / (mainsVoltage * (powerFactor ?? 1)), notIncluded } }),
    rackHeat: { watts: inRack, btuPerHour: inRack / perBtu, notIncluded },
    devicePower,
    cableHeat,
    portPower,
    portLoss,
    systemLoad: systemLoad ?? 0,
    conversionLoss,
    ports,
    budget,
    assumptions,
    caution: CAUTION,
    statement: `Mains input ${watts.toFixed(1)} W${missing}; heat in the rack ${inRack.toFixed(1)} W, ${(inRack / perBtu).toFixed(0)} BTU/h${missing}.`,
  };
}

function flowsOf(
  { ports, basis, portLimit }: SwitchBudgetInput,
  budget: SwitchBudget,
): { readonly ports: readonly PortHeat[]; readonly notes: readonly string[] } {
  const setAside = new Map(budget.powered.map(({ port, power }) => [port, power]));
  const flows: PortHeat[] = [];
  const capped: number[] = [];
  const beyond: number[] = [];
  const cut: number[] = [];
  const dead: number[] = [];
  for (const [index, entry] of ports.entries()) {
    const most = setAside.get(entry.port);
    if (most === undefined) continue;
    const path = `ports[${index}]`;
    const { limits } = checked(entry, path, portLimit);
    const { port, measured, pdPower } = entry;
    if (basis === 'measured' && measured !== undefined) {
      flows.push({ port, ...givenFlow(measured, entry, limits, path) });
      continue;
    }
    // A stated draw goes before a request; on the basis `calculated` the budget has told already that it is capped.
    const draw = drawOf(entry, pdPower === undefined ? basis : 'calculated', limits);
    if (pdPower !== undefined && draw < pdPower && basis !== 'calculated') capped.push(port);
    const flow = portFlow(draw, entry, limits);
    if (flow === undefined) dead.push(port);
    else if (flow.psePower <= most) flows.push({ port, ...flow });
    else if (pdPower !== undefined) {
      flows.push({ port, ...flow });
      // A nanowatt is rounding.
      if (flow.psePower - most > 1e-9) beyond.push(port);
    } else {
      flows.push({ port, ...givenFlow(most, entry, limits, path) });
      // Over the printed power of the class by the rounding of the standard alone, nothing is lost.
      if (most < limits.psePower || flow.psePower > psePowerLimitOf(draw, limits)) cut.push(port);
    }
  }
  const notes: string[] = [];
  const note = (words: string, about: readonly number[]): void => {
    if (about.length > 0) notes.push(withPorts(words, about));
  };
  note('the stated draw is more than the class granted allows a device, which is taken', capped);
  note('the stated draw takes more over its run than is set aside', beyond);
  note('the draw would take more over its run than is set aside, which is all that the port is taken to give', cut);
  note('the run cannot carry the draw, which is counted as nothing', dead);
  return { ports: flows.sort((a, b) => a.port - b.port), notes };
}
