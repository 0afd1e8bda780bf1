/**
 * One run, checked as an application would: bad input is caught and shown, a "no" is explained.
 *
 * From a clone: `npx tsx examples/one-run.ts`. In your own project import from `farend`.
 */
// biome-ignore-all lint/suspicious/noConsole: an example prints
import { type Check, checkPoweredRun, fahrenheit, feet, isInputError, type PoeClassNumber } from '../src/index.ts';
import { source } from '../src/sources/index.ts';

interface Form {
  readonly lengthInFeet: number;
  readonly temperatureInFahrenheit: number;
  readonly poeClass: PoeClassNumber;
  readonly minimumVoltage: number;
}

/** What the form's page shows below its fields. */
function answer(form: Form): string {
  try {
    const run = checkPoweredRun({
      installed: [{ cable: 'cat6', length: feet(form.lengthInFeet), temperature: fahrenheit(form.temperatureInFahrenheit) }],
      cords: [{ cable: 'cord-28', length: 3 }],
      connections: 2,
      poeClass: form.poeClass,
      minimumVoltage: form.minimumVoltage,
    });
    const { operating } = run;
    if (!operating.feasible) return `collapse: this line delivers at most ${operating.maximumLoadPower.toFixed(1)} W`;
    const arrives = `${operating.loadVoltage.toFixed(1)} V arrive`;
    return `power ${run.verdict.power}, cabling ${run.verdict.cabling}; ${arrives}; ${sentence(run.governing)}`;
  } catch (error) {
    if (isInputError(error)) return `please correct ${error.parameter}: ${error.expected}`;
    throw error;
  }
}

function sentence({ name, value, limit, unit, source: key }: Check): string {
  return `closest: ${name}, ${value.toFixed(1)} against ${limit.toFixed(1)} ${unit} (${source(key).title})`;
}

const form = { lengthInFeet: 250, temperatureInFahrenheit: 95, poeClass: 4, minimumVoltage: 44 } as const;
console.log(answer(form));
// => 'power marginal, cabling pass; 45.1 V arrive; closest: device-voltage, 45.1 against 44.0 V (The data sheet of the cable or device)'
console.log(answer({ ...form, minimumVoltage: 46 }));
// => 'power fail, cabling pass; 45.1 V arrive; closest: device-voltage, 45.1 against 46.0 V (The data sheet of the cable or device)'
console.log(answer({ ...form, lengthInFeet: -250 }));
// => 'please correct installed[0].length: 0 or a number from 1e-12 to 1e12 m'
