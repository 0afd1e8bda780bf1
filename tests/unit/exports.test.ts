import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { ENTRIES, exportsField } from '../../scripts/entries.ts';
import { exportsOf, importedEntries, typesNamedBy } from '../support/exports.ts';
import { ROOT } from '../support/files.ts';

// A name that appears here is a promise to users; one that disappears breaks them. After a change that is meant, write
// the lists of the rooms anew with `npx vitest run tests/unit/exports.test.ts --update`, read the difference, and put it
// in the changelog.

/** The daily job: a name more or less is a decision, so this list is written by hand. */
const DAILY_JOB = [
  ...['awg', 'metric', 'conductorFromResistance', 'resistancePerMetre', 'loopResistance'],
  ...['cable', 'defineCable', 'twoCoreCable', 'runResistance', 'expectedReading', 'fromMeasurement', 'bundleRise'],
  ...['operatingPoint', 'voltageDrop', 'solveNetwork', 'poeClass', 'powerAtPd'],
  ...['checkPoweredRun', 'checkTwoWireRun', 'maximumRun', 'smallestConductor', 'highestLoad', 'highestTemperature'],
  ...['lowestSupplyVoltage', 'remedies', 'bounds', 'switchBudget', 'checkBundle'],
  ...['feet', 'inches', 'fahrenheit', 'circularMils', 'milliamperes', 'ohmsPerKilofoot', 'ohmsPerKilometre'],
  ...['toFeet', 'toFahrenheit', 'parseQuantity', 'formatQuantity'],
  ...['InputError', 'isInputError', 'cableNames', 'materialNames', 'checkNames'],
];

const modules = await importedEntries();
const namesOf = (entry: string): string[] => Object.keys(modules[entry] ?? {}).sort();

test('farend exports the daily job', () => {
  expect(namesOf('farend')).toEqual([...DAILY_JOB].sort());
});

test('farend exports every type that its functions take, give or are made of', () => {
  const exported = new Set(exportsOf('src/index.ts').map(({ name }) => name));
  const rooms = ENTRIES.filter(({ name }) => name !== 'farend').flatMap(({ source }) => exportsOf(source));
  const named = typesNamedBy(exportsOf('src/index.ts').map(({ declaration }) => declaration));
  const missing = rooms.filter(({ name, declaration }) => named.has(declaration) && !exported.has(name)).map(({ name }) => name);
  expect(missing).toEqual([]);
});

test('a name means the same thing at every entry', () => {
  const all = new Map<string, ts.Declaration>();
  for (const { name, declaration } of ENTRIES.flatMap(({ source }) => exportsOf(source))) {
    expect(all.get(name) ?? declaration, name).toBe(declaration);
    all.set(name, declaration);
  }
});

test('package.json names these entries and no other', () => {
  const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { exports: unknown };
  expect(manifest.exports).toEqual(exportsField());
});

describe('the rooms export these names', () => {
  test('farend/conductor', () => {
    expect(namesOf('farend/conductor')).toMatchInlineSnapshot(`
      [
        "awg",
        "awgFromArea",
        "awgFromDiameter",
        "conductorFromResistance",
        "diameterAllowance",
        "loopResistance",
        "material",
        "materialNames",
        "metric",
        "necTable8",
        "parallelConductors",
        "resistanceAtTemperature",
        "resistancePerMetre",
        "strandConstruction",
        "temperatureCoefficientAt",
        "temperatureCoefficientFrom",
        "temperatureFromResistance",
        "toMaximum",
        "toNominal",
        "uniformWire",
        "zeroResistanceTemperature",
      ]
    `);
  });

  test('farend/cable', () => {
    expect(namesOf('farend/cable')).toMatchInlineSnapshot(`
      [
        "ampacity",
        "assessCableData",
        "bundleRise",
        "cable",
        "cableCores",
        "cableNames",
        "cablingFigure",
        "defineCable",
        "deratedLength",
        "expectedReading",
        "filmCoefficient",
        "fromMeasurement",
        "insertionLossFactor",
        "loadedVoltage",
        "remotePowering",
        "runResistance",
        "strandedLead",
        "twoCoreCable",
        "unbalance",
        "unbalancedPairs",
      ]
    `);
  });

  test('farend/circuit', () => {
    expect(namesOf('farend/circuit')).toMatchInlineSnapshot(`
      [
        "farEndFaultCurrent",
        "loadability",
        "maximumTaps",
        "operatingPoint",
        "shedTaps",
        "solveNetwork",
        "voltageDrop",
      ]
    `);
  });

  test('farend/ethernet', () => {
    expect(namesOf('farend/ethernet')).toMatchInlineSnapshot(`
      [
        "LLDP_CODES",
        "LLDP_FIELDS",
        "POE_SIGNALLING",
        "RFC_3621",
        "RFC_3621_FACTS",
        "assignedClass",
        "classAssignment",
        "dualSignature",
        "dualSignatureClass",
        "lldpAllocation",
        "lldpClassLimit",
        "lldpFieldName",
        "lldpValue",
        "lldpWatts",
        "pairUnbalance",
        "poeClass",
        "poeClassDetail",
        "powerAtPd",
        "powerStatement",
        "psePowerFor",
        "pseType",
        "pseVoltageCheck",
        "rfc3621Class",
        "rfc3621Classification",
        "rfc3621Name",
      ]
    `);
  });

  test('farend/plan', () => {
    expect(namesOf('farend/plan')).toMatchInlineSnapshot(`
      [
        "batteryAutonomy",
        "bounds",
        "budgetSteps",
        "bundleRemedies",
        "checkBundle",
        "checkPoweredRun",
        "checkTwoWireRun",
        "cordAllowance",
        "highestLoad",
        "highestTemperature",
        "leastPermittedDrop",
        "lowestSupplyVoltage",
        "maximumRun",
        "remedies",
        "roomForMore",
        "smallestConductor",
        "supplyLoss",
        "switchBudget",
        "switchMains",
        "warmRun",
      ]
    `);
  });

  test('farend/units', () => {
    expect(namesOf('farend/units')).toMatchInlineSnapshot(`
      [
        "InputError",
        "btuPerHour",
        "circularMils",
        "fahrenheit",
        "fahrenheitDifference",
        "feet",
        "formatQuantity",
        "inches",
        "isInputError",
        "kilofeet",
        "kilohms",
        "milliamperes",
        "milliohms",
        "milliwatts",
        "mils",
        "ohmsPerHundredMetres",
        "ohmsPerKilofoot",
        "ohmsPerKilometre",
        "parseQuantity",
        "toBtuPerHour",
        "toCircularMils",
        "toFahrenheit",
        "toFahrenheitDifference",
        "toFeet",
        "toInches",
        "toKilofeet",
        "toKilohms",
        "toMilliamperes",
        "toMilliohms",
        "toMilliwatts",
        "toMils",
        "toOhmsPerHundredMetres",
        "toOhmsPerKilofoot",
        "toOhmsPerKilometre",
      ]
    `);
  });

  test('farend/sources', () => {
    expect(namesOf('farend/sources')).toMatchInlineSnapshot(`
      [
        "DATA_EDITION",
        "source",
        "sourceKeys",
      ]
    `);
  });

  test('farend/words', () => {
    expect(namesOf('farend/words')).toMatchInlineSnapshot(`
      [
        "BUNDLE_WORDS",
        "DECIDING_WORDS",
        "ERROR_WORDS",
        "EXPLANATION_WORDS",
        "FINDING_WORDS",
        "InputError",
        "REMEDY_WORDS",
        "UNIT_WORDS",
        "VERDICT_WORDS",
        "checkTitle",
        "describeCheck",
        "describeRemedy",
        "isInputError",
      ]
    `);
  });

  test('farend/pages', () => {
    expect(namesOf('farend/pages')).toMatchInlineSnapshot(`
      [
        "InputError",
        "isInputError",
        "pageLatex",
        "pageMarkdown",
        "pageText",
      ]
    `);
  });

  test('farend/schedule', () => {
    expect(namesOf('farend/schedule')).toMatchInlineSnapshot(`
      [
        "InputError",
        "checkRow",
        "checkSchedule",
        "checkTitle",
        "describeCheck",
        "describeRemedy",
        "isInputError",
        "messageOf",
        "parseSchedule",
        "reportCsv",
        "reportMarkdown",
        "reportSummary",
        "reportText",
        "scheduleFromRows",
        "templateCsv",
      ]
    `);
  });

  test('farend/working', () => {
    expect(namesOf('farend/working')).toMatchInlineSnapshot(`
      [
        "reviewAnswer",
        "showWorking",
        "work",
        "workingLatex",
        "workingMarkdown",
        "workingPage",
        "workingText",
      ]
    `);
  });

  test('no entry is forgotten here', () => {
    const text = readFileSync(join(ROOT, 'tests/unit/exports.test.ts'), 'utf8');
    const forgotten = ENTRIES.filter(({ name }) => !text.includes(`namesOf('${name}')`));
    expect(forgotten).toEqual([]);
  });
});
