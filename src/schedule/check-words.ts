/** Checks in words: what they are called, and what to say when one is not met. @module */
import type { CheckName } from '../limits/check.ts';
import { amount, apart, brief, percent } from './amount.ts';
import type { ReportedCheck, RunReport } from './report.ts';

/** What each check is called, and on which side of its limit is good. @internal */
export const CHECK_WORDS: Readonly<Record<CheckName, { readonly title: string; readonly limit: 'most' | 'least' }>> = {
  'pd-power': { title: 'Power the class allows', limit: 'most' },
  'pse-power': { title: 'Power from the port', limit: 'most' },
  'pd-voltage': { title: 'Voltage the class needs', limit: 'least' },
  collapse: { title: 'What the line can carry', limit: 'most' },
  'device-voltage': { title: 'Voltage the device needs', limit: 'least' },
  'device-resistance': { title: 'Resistance the device bears', limit: 'most' },
  // A window: the limit is whichever end is nearer.
  'pse-voltage': { title: 'Voltage of the port', limit: 'least' },
  'pair-unbalance': { title: 'Unbalance within a pair', limit: 'most' },
  'pair-to-pair-unbalance': { title: 'Unbalance between pairs', limit: 'most' },
  'voltage-drop': { title: 'Permitted drop', limit: 'most' },
  'device-overvoltage': { title: 'Voltage the device bears', limit: 'most' },
  'fault-current': { title: 'Current that opens the fuse', limit: 'least' },
  'channel-length': { title: 'Channel length', limit: 'most' },
  'permanent-link-length': { title: 'Installed length', limit: 'most' },
  connections: { title: 'Connections', limit: 'most' },
  'channel-loop': { title: 'Channel loop at 20 °C', limit: 'most' },
  'permanent-link-loop': { title: 'Installed loop at 20 °C', limit: 'most' },
  'channel-resistance': { title: 'Channel resistance, hot', limit: 'most' },
  'cable-category': { title: 'Category of the cable', limit: 'least' },
  'derated-length': { title: 'Installed length, warm', limit: 'most' },
  'insertion-loss-length': { title: 'Length as a signal sees it', limit: 'most' },
  'cord-length': { title: 'Longest cord', limit: 'most' },
  'conductor-gauge': { title: 'Thinnest conductor', limit: 'most' },
  'cable-temperature': { title: 'Hottest piece', limit: 'most' },
  material: { title: 'Copper conductors', limit: 'least' },
  'conductor-temperature': { title: 'Middle of the bundle', limit: 'most' },
  'bundle-rise': { title: 'Rise of the bundle', limit: 'most' },
  ampacity: { title: 'Current of a conductor', limit: 'most' },
};

/** Value, limit and margin of a check for a table, each in no more columns than given (the sign of a limit apart). @internal */
export function checkFigures(check: ReportedCheck, columns = 24): { value: string; limit: string; margin: string; share: string } {
  const [value, limit] = figures(check);
  const sign = limitSide(check) === 'most' ? '≤' : '≥';
  return {
    value: within(value, check.value, check, columns),
    limit: `${sign} ${within(limit, check.limit, check, columns)}`,
    margin: within(difference(check), check.margin, check, columns),
    share: percent(check.marginFraction),
  };
}

/** A figure that is too long in full, rounded; what rounding hides the margin shows, as a power of ten. */
function within(text: string, value: number, { unit, margin }: ReportedCheck, columns: number): string {
  if (text.length <= columns) return text;
  const factor = unit === '1' ? 100 : 1;
  const sign = unit === '1' ? '%' : unit;
  if (value === margin) return `${(value * factor).toExponential(0).replace('e+', 'e')} ${sign}`;
  const rounded = amount(value * factor, sign);
  return rounded.length <= columns ? rounded : `${(value * factor).toExponential(1).replace('e+', 'e')} ${sign}`;
}

function limitSide({ name, value, limit: against, margin }: ReportedCheck): 'most' | 'least' {
  if (name !== 'pse-voltage') return CHECK_WORDS[name].limit;
  return value <= against === margin >= 0 ? 'most' : 'least';
}

/** Value and limit with their unit: a drop as a percentage, a count as it is. */
function figures({ name, value, limit, unit }: ReportedCheck): [string, string] {
  if (name === 'connections' || name === 'cable-category') return [String(value), String(limit)];
  if (unit === '1') {
    const [a, b] = apart(value * 100, limit * 100, '%');
    return [a, b];
  }
  return apart(value, limit, unit);
}

function difference({ name, margin, unit }: ReportedCheck): string {
  if (name === 'connections' || name === 'cable-category') return String(margin);
  if (unit === '1') return amount(margin * 100, '%');
  let decimals = unit === 'm' ? 1 : 2;
  while (margin !== 0 && decimals < 15 && Number(brief(margin, decimals)) === 0) decimals++;
  return amount(margin, unit, decimals);
}

/** Why a check is not plainly met, as the end of a sentence. @internal */
export function reason(check: ReportedCheck, run: RunReport, standard: string): string {
  const [value, limit] = figures(check);
  switch (check.name) {
    case 'pd-power':
      if (run.kind === 'powered' && run.grantedClass !== run.poeClass) {
        return `the Type ${run.pseType} port grants class ${run.grantedClass}: ${limit}; the device, class ${run.poeClass}, wants ${value}`;
      }
      return `the device draws ${value}; ${classOf(run)} allows it ${limit}`;
    case 'pse-power':
      return `the port would have to give ${value}; for ${classOf(run)} it gives ${limit}`;
    case 'pd-voltage':
      return `${value} reach the device; ${classOf(run)} needs at least ${limit}`;
    case 'collapse':
      return collapse(check, value, limit);
    case 'device-voltage':
      return `${value} reach the device; it needs at least ${limit}`;
    case 'device-resistance':
      return deviceResistance(check, value, limit);
    case 'pse-voltage':
      return `the port is stated to have ${value}; its type has ${limitSide(check) === 'most' ? 'at most' : 'at least'} ${limit}`;
    case 'pair-unbalance':
      return `the two conductors of a pair differ by ${value}; ${limit} is allowed`;
    case 'pair-to-pair-unbalance':
      return `two pairs differ by ${value}; ${limit} is allowed`;
    case 'voltage-drop':
      return `${value} of the voltage is lost along the run; ${limit} is permitted`;
    case 'device-overvoltage':
      return `up to ${value} reach the device when it draws nothing; it bears at most ${limit}`;
    case 'fault-current':
      return `a short at the far end draws ${value}; its protective device needs at least ${limit} to open`;
    case 'channel-length':
      return `the channel, cords included, is ${value} long; ${standard} allows ${limit}`;
    case 'permanent-link-length':
      return `the installed cable is ${value} long; ${standard} allows ${limit}`;
    case 'connections':
      return `there are ${value} connections (an in-line coupler is two); ${standard} allows ${limit}`;
    case 'channel-loop':
      return `a shorted pair of the channel is ${value} at 20 °C; ${standard} allows ${limit}`;
    case 'permanent-link-loop':
      return `a shorted pair of the installed cable is ${value} at 20 °C; ${standard} allows ${limit}`;
    case 'cable-category':
      return `a piece is Category ${value}; IEEE 802.3 counts on Category ${limit} or better for that type of port`;
    case 'channel-resistance':
      return `power sees ${value}; IEEE 802.3 counts on at most ${limit}`;
    case 'derated-length':
      return `the installed cable is ${value} long; as warm as it is, ${standard} leaves it ${limit}`;
    case 'insertion-loss-length':
      return `cable and cords count as ${value} of cool installed cable; ${standard} allows ${limit}`;
    case 'cord-length':
      return `the longest cord is ${value}; ${standard} allows ${limit}`;
    case 'conductor-gauge':
      return `the thinnest conductor is ${value}; ${standard} allows nothing thinner than ${limit}`;
    case 'cable-temperature':
      return `the hottest piece is at ${value}; cabling is for at most ${limit}`;
    case 'conductor-temperature':
      return `the middle of its bundle gets to ${value}; the cable is rated for ${limit}`;
    case 'bundle-rise':
      return `its bundle gets ${value} warmer than the air; ${limit} is recommended`;
    case 'ampacity':
      return `each conductor carries ${value}; the code allows ${limit} in this bundle`;
    case 'material':
      return `${value} of the pieces have copper conductors; power over Ethernet needs copper in all of them`;
  }
}

function classOf(run: RunReport): string {
  return run.kind === 'powered' ? `class ${run.grantedClass}` : 'its class';
}

function collapse({ unit }: ReportedCheck, value: string, limit: string): string {
  if (unit === 'W') return `the device draws ${value}; the line can carry at most ${limit}`;
  return `the line has ${value}; with more than ${limit} it cannot carry the device at all`;
}

function deviceResistance({ readings }: ReportedCheck, value: string, limit: string): string {
  if (readings === undefined) return `the line has ${value}; the device bears at most ${limit}`;
  const [pairset] = apart(readings.twoPair, readings.pairLoop, 'Ω');
  return `the line has ${value} as a shorted pair and ${pairset} as one pairset; the device bears ${limit} and does not say of which`;
}

/** What would settle an uncertain check. @internal */
export function whatSettles(check: ReportedCheck): string[] {
  return (check.deciding ?? []).map(({ parameter: input }) => {
    if (input === 'maximumResistance.loop') return 'Ask the maker whether the resistance limit means a shorted pair or one pairset.';
    if (input === 'supplyVoltage') return 'State the lowest and the highest voltage of the supply, as in 21 V to 27.6 V.';
    if (input === 'minimumVoltage') return 'State the lowest voltage at which the device works.';
    return `State ${input}.`;
  });
}
