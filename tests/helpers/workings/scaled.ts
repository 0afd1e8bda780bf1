/** What every limit of a run allows with every ohm of it so many times: out of the core's own figures, without another search. @module */
import { runResistance } from '../../../src/cable/run-resistance.ts';
import type { Load } from '../../../src/circuit/operating-point.ts';
import type { PoweredFacts as PoweredRunInput } from '../../../src/plan/powered-input.ts';
import type { PermittedDrop, SupplyVoltage } from '../../../src/plan/two-wire-input.ts';
import { type Classed, limitsOf, ohms } from './open-runs.ts';

/** What the core says each limit allows. */
export interface Solved {
  readonly limits: readonly { readonly limit: string; readonly value?: number }[];
}

/** What is stated of a line, its load or its supply apart. */
export interface Stated {
  readonly supplyVoltage?: SupplyVoltage;
  readonly load?: Load;
  readonly kind?: 'power' | 'current' | 'resistance' | undefined;
  readonly minimumVoltage?: number | undefined;
  readonly permittedDrop?: PermittedDrop | undefined;
  readonly ampacity?: number | undefined;
}

/** How many times its ohms a run has at 20 °C. */
export const coolness = ({ installed, cords = [], connections, connectionResistance }: Omit<PoweredRunInput, 'poeClass'>): number => {
  const pieces = [...installed, ...cords];
  const at = (segments: typeof pieces): number => runResistance({ segments, connections, connectionResistance }).twoPair;
  return at(pieces.map((piece) => ({ ...piece, temperature: 20 }))) / at(pieces);
};

/** And a line. */
export const coolnessOfLine = (input: Parameters<typeof ohms>[0] & Joined): number => {
  const joints = 2 * (input.connections ?? 0) * (input.connectionResistance ?? 0);
  return (ohms({ ...input, temperature: 20 }) + joints) / (ohms(input) + joints);
};

interface Joined {
  readonly connections?: number | undefined;
  readonly connectionResistance?: number | undefined;
}

/** A search that is made once for each question. */
export const remembered = <Input extends object, Answer>(search: (input: Input) => Answer): ((input: Input) => Answer) => {
  const known = new WeakMap<Input, Answer>();
  return (input) => {
    const answer = known.get(input) ?? search(input);
    known.set(input, answer);
    return answer;
  };
};

/** Every value by a rule; nothing where a limit speaks with the one ohms and not with the other, as the hinged ones may: that is another sheet. */
const eachBy = (
  { limits }: Solved,
  hinged: readonly string[],
  rule: (limit: string, value: number) => number | undefined,
): readonly number[] => {
  const values: number[] = [];
  for (const { limit, value } of limits) {
    const scaled = value === undefined ? undefined : rule(limit, value);
    if (scaled !== undefined) values.push(scaled);
    else if (value !== undefined || hinged.includes(limit)) return [];
  }
  return values;
};

/** Supply voltages: those of a line. */
export const suppliesOfLine = (solved: Solved, times: number, input: Stated): readonly number[] => {
  const { load: { power } = {}, minimumVoltage, permittedDrop, ampacity = 1 } = input;
  const isSquare = power !== undefined;
  const isVolts = typeof permittedDrop === 'object';
  const hinged = times < 1 ? ['device-voltage', 'ampacity'] : isVolts ? ['voltage-drop'] : [];
  return eachBy(solved, isSquare ? hinged : [], (limit, value) => {
    // What is lost along the line of each, beside what does not change.
    const kept =
      limit === 'device-voltage'
        ? minimumVoltage
        : limit === 'ampacity' && isSquare
          ? power / ampacity
          : limit === 'voltage-drop' && isVolts
            ? permittedDrop.volts
            : undefined;
    if (kept === undefined) return value * (isSquare ? Math.sqrt(times) : times);
    const scaled = kept + times * (value - kept);
    if (limit === 'voltage-drop') return scaled >= 2 * kept ? scaled : undefined;
    return !isSquare || scaled <= 2 * kept ? scaled : undefined;
  });
};

/** And those of a powered run. */
export const suppliesOfRun = (solved: Solved, times: number, input: Classed & Pick<Stated, 'minimumVoltage'>): readonly number[] => {
  const { pdVoltageLimit } = limitsOf(input);
  return eachBy(solved, times < 1 ? ['pd-voltage', 'device-voltage'] : [], (limit, value) => {
    const kept = limit === 'device-voltage' ? input.minimumVoltage : limit === 'pd-voltage' ? pdVoltageLimit : undefined;
    if (kept === undefined) return value * Math.sqrt(times);
    const scaled = kept + times * (value - kept);
    return scaled <= 2 * kept ? scaled : undefined;
  });
};

/** The lowest voltage of a supply. */
export const lowOf = (supplyVoltage: SupplyVoltage): number => (typeof supplyVoltage === 'object' ? supplyVoltage.low : supplyVoltage);

/** Loads of a line. */
export const loadsOfLine = (
  solved: Solved,
  times: number,
  { kind = 'power', supplyVoltage = 0, ampacity = 0 }: Stated,
): readonly number[] =>
  eachBy(solved, kind === 'power' && times < 1 ? ['ampacity'] : [], (limit, value) => {
    if (limit !== 'ampacity') return kind === 'resistance' ? value * times : value / times;
    if (kind !== 'power') return value;
    const unspent = ampacity * lowOf(supplyVoltage);
    const scaled = unspent - times * (unspent - value);
    return 2 * scaled >= unspent ? scaled : undefined;
  });

/** Loads of a powered run. */
export const loadsOfRun = (solved: Solved, times: number, input: Classed): readonly number[] => {
  const { psePowerLimit } = limitsOf(input);
  const collapse = solved.limits.find(({ limit }) => limit === 'collapse')?.value ?? 0;
  return eachBy(solved, times < 1 ? ['pse-power'] : [], (limit, value) => {
    if (limit === 'pd-power') return value;
    if (limit !== 'pse-power') return value / times;
    // At its collapse a line takes twice the power of its load.
    return (2 * collapse) / times >= psePowerLimit ? psePowerLimit - times * (psePowerLimit - value) : undefined;
  });
};
