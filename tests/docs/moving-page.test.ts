/** docs/moving-to-0.2.md says of every name that 0.1 exported where it is now. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { importedEntries } from '../support/exports.ts';
import { ROOT } from '../support/files.ts';

const page = readFileSync(join(ROOT, 'docs/moving-to-0.2.md'), 'utf8');
const entries = await importedEntries();
const namesIn = (entry: string): readonly string[] => Object.keys(entries[entry] ?? {});

/** The entry of each name in the table of entries. */
const told = new Map(
  [...page.matchAll(/^\| `(?<entry>farend\/\w+)`\s*\| (?<names>.*?)\s*\|$/gm)].flatMap(({ groups }) =>
    [...(groups?.['names'] ?? '').matchAll(/`(?<name>\w+)`/g)].map(
      (found) => [found.groups?.['name'] ?? '', groups?.['entry'] ?? ''] as const,
    ),
  ),
);

/** Every value that the root of 0.1 exported. */
const OLD = `
InputError LLDP_CODES LLDP_FIELDS POE_SIGNALLING RFC_3621 RFC_3621_FACTS ampacity assessCableData assignedClass awg awgFromArea
awgFromDiameter batteryAutonomy bounds btuPerHour budgetSteps bundleRemedies bundleRise cable cableCores cablingFigure checkBundle
checkPoweredRun checkTwoWireRun circularMils classAssignment conductorFromResistance cordAllowance defineCable deratedLength
diameterAllowance dualSignature dualSignatureClass expectedReading fahrenheit fahrenheitDifference farEndFaultCurrent feet filmCoefficient
formatQuantity fromMeasurement highestLoad highestTemperature inches insertionLossFactor isInputError kilofeet kilohms leastPermittedDrop
lldpAllocation lldpClassLimit lldpFieldName lldpValue lldpWatts loadability loadedVoltage loopResistance lowestSupplyVoltage material
maximumRun maximumTaps metric milliamperes milliohms milliwatts mils necTable8 ohmsPerHundredMetres ohmsPerKilofoot ohmsPerKilometre
operatingPoint pairUnbalance parallelConductors parseQuantity poeClass poeClassDetail powerAtPd powerStatement poweredRunRemedies
psePowerFor pseType pseVoltageCheck remotePowering resistanceAtTemperature resistancePerMetre rfc3621Class rfc3621Classification
rfc3621Name roomForMore runResistance shedTaps smallestConductor solveNetwork source sourceKeys strandConstruction strandedLead supplyLoss
switchBudget switchMains temperatureCoefficientAt temperatureCoefficientFrom temperatureFromResistance toBtuPerHour toCircularMils
toFahrenheit toFahrenheitDifference toFeet toInches toKilofeet toKilohms toMaximum toMilliamperes toMilliohms toMilliwatts toMils toNominal
toOhmsPerHundredMetres toOhmsPerKilofoot toOhmsPerKilometre twoCoreCable twoWireRemedies unbalance unbalancedPairs uniformWire voltageDrop
warmRun zeroResistanceTemperature`
  .trim()
  .split(/\s+/);

describe('where the names of 0.1 are', () => {
  test.each(OLD.map((name) => [name]))('%s', (name) => {
    const entry = told.get(name);
    if (entry !== undefined) expect(namesIn(entry)).toContain(name);
    // What is in the root, and what has another name, stands in no room's row.
    else if (!namesIn('farend').includes(name)) expect(page).toContain(`| \`${name}(`);
    if (entry !== undefined) expect(namesIn('farend'), 'it is still in the root').not.toContain(name);
  });

  test('and none is told of that 0.1 did not have', () => {
    expect([...told.keys()].filter((name) => !OLD.includes(name))).toEqual([]);
  });
});
