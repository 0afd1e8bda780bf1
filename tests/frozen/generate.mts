/**
 * Writes the frozen corpus anew from a build of version 0.1: `npx tsx tests/frozen/generate.mts <folder of that build>`.
 *
 * The questions come from a fixed seed, so the same build gives the same files. They are frozen: this stands here to show how they were made.
 * @module
 */
import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { logUniform, pick, type Random, seeded, uniform, whole } from '../helpers/random.ts';
import { ask, errorWords, type FrozenRecord, type Library, withoutProse } from './corpus.ts';
import * as q from './questions.ts';

type Question = (random: Random, index: number) => readonly unknown[];

const folder = process.argv[2];
if (folder === undefined) throw new Error('say where the build of version 0.1 is');
const entry = async (name: string): Promise<Library> => (await import(pathToFileURL(resolve(folder, name)).href)) as Library;
const library: Library = { ...(await entry('index.js')), ...(await entry('schedule.js')), ...(await entry('working.js')) };

const asIs = (name: string, args: readonly unknown[]): { name: string; args: readonly unknown[] } => ({ name, args });
const answer = (name: string, ...args: readonly unknown[]): never => ask(library, name, args, asIs) as never;

/** A value by its path in an answer of 0.1; nothing where there is no answer. */
function figure(name: string, input: unknown, ...path: readonly (string | number)[]): number | undefined {
  try {
    let found: unknown = answer(name, input);
    for (const key of path) found = (found as Record<string | number, unknown> | undefined)?.[key];
    return typeof found === 'number' && Number.isFinite(found) ? found : undefined;
  } catch {
    return undefined;
  }
}

/** A length at, or near, one of the lengths that limits allow. [m] */
function lengthNearLimit(random: Random, input: Record<string, unknown>): number | undefined {
  try {
    const limits = (answer('maximumRun', input) as { limits: { length?: number }[] }).limits.flatMap(({ length }) =>
      length === undefined ? [] : [length],
    );
    const length = limits.length === 0 ? undefined : q.near(random, pick(random, limits));
    return length === undefined || length > 1e6 ? undefined : length;
  } catch {
    return undefined;
  }
}

/** A powered run: half of them end near one of their limits. */
function poweredRun(random: Random): Record<string, unknown> {
  const run = q.poweredRun(random);
  const first = (run['installed'] as { cable: unknown; temperature?: number }[])[0];
  if (random() < 0.5 || first === undefined) return run;
  const { installed: _, marginalBelow: _margin, ...rest } = run;
  const length = lengthNearLimit(random, { ...rest, cable: first.cable, temperature: first.temperature });
  return length === undefined ? run : { ...run, installed: [{ ...first, length }] };
}

/** A two-wire run: more than half of them end near one of their limits. */
function twoWireRun(random: Random): Record<string, unknown> {
  const run = q.twoWire(random);
  const { marginalBelow: _, ...rest } = run;
  const length = random() < 0.6 ? lengthNearLimit(random, rest) : undefined;
  return { ...run, length: length ?? pick(random, [10, 30, 61, 100, logUniform(random, 1, 800)]) };
}

const eitherRun = (random: Random): Record<string, unknown> => (random() < 0.5 ? poweredRun(random) : twoWireRun(random));
const without = (input: Record<string, unknown>, ...keys: string[]): Record<string, unknown> =>
  Object.fromEntries(Object.entries(input).filter(([key]) => !keys.includes(key)));

/** A supply, a line and a load about as large as the line carries. */
function line(random: Random): { supplyVoltage: number; resistance: number; load: Record<string, number> } {
  const supplyVoltage = pick(random, [24, 48, 50, 57, uniform(random, 5, 60), logUniform(random, 1, 1000)]);
  const resistance = random() < 0.04 ? 0 : pick(random, [12.5, 20, 2.5, logUniform(random, 1e-3, 1e3), uniform(random, 0.5, 30)]);
  const load =
    random() < 0.04
      ? pick<Record<string, number>>(random, [{ power: 0 }, { current: 0 }, { resistance: 0 }])
      : q.load(random, supplyVoltage, resistance);
  return { supplyVoltage, resistance, load };
}

/** A number, or a range about it. */
function about(random: Random, value: number): unknown {
  const spread = Math.abs(value) * random() * 0.15;
  return pick<unknown>(random, [value, { low: value - spread, high: value + spread * random() }, { nominal: value, plusMinus: spread }]);
}

function boundsQuestion(random: Random): readonly unknown[] {
  const of = pick(random, [
    'operatingPoint',
    'voltageDrop',
    'powerAtPd',
    'powerAtPd',
    'checkPoweredRun',
    'checkPoweredRun',
    'checkTwoWireRun',
    'maximumRun',
  ]);
  if (of === 'operatingPoint') {
    const { supplyVoltage, resistance, load } = line(random);
    return [of, { supplyVoltage: about(random, supplyVoltage), resistance: about(random, resistance), load }];
  }
  if (of === 'voltageDrop') {
    const volts = q.twoWireVoltage(random);
    return [
      of,
      {
        ...q.circuit(random),
        supplyVoltage: about(random, volts),
        length: about(random, uniform(random, 5, 100)),
        temperature: about(random, 30),
        load: q.load(random, volts, 4),
      },
    ];
  }
  if (of === 'powerAtPd') {
    return [
      of,
      { ...q.port(random), pseVoltage: about(random, uniform(random, 48, 57)), resistance: about(random, uniform(random, 0.5, 14)) },
    ];
  }
  if (of === 'checkTwoWireRun') {
    const run = twoWireRun(random);
    return [of, { ...run, length: about(random, run['length'] as number), temperature: about(random, 35) }];
  }
  const temperature = about(random, uniform(random, 15, 55));
  if (of === 'maximumRun')
    return [of, { ...without(q.poweredRun(random), 'installed', 'marginalBelow'), cable: q.cable(random), temperature }];
  const run = poweredRun(random);
  const [first, ...others] = run['installed'] as Record<string, unknown>[];
  return [
    of,
    {
      ...run,
      installed: [{ ...first, length: about(random, first?.['length'] as number), temperature }, ...others],
      connections: pick<unknown>(random, [2, { low: 0, high: 4 }]),
    },
  ];
}

function measurementQuestion(random: Random): readonly unknown[] {
  const scope = pick(random, ['cable', 'permanent-link', 'channel']);
  const cable = q.cable(random);
  const length = uniform(random, 5, 110);
  const at = pick(random, [undefined, 20, uniform(random, -5, 50), { low: 15, high: 35 }]);
  const loop =
    figure('runResistance', { segments: [{ cable, length, temperature: typeof at === 'number' ? at : 20 }], connections: 0 }, 'pairLoop') ??
    10;
  const read = (): number => {
    const kind = random();
    const reading = loop * uniform(random, 0.8, 1.05) * (kind < 0.1 ? uniform(random, 1.2, 2.2) : kind < 0.13 ? 30 : 1);
    return random() < 0.5 ? Number(reading.toFixed(1)) : reading;
  };
  const names = random() < 0.6 ? q.PAIRS : q.PAIRS.filter(() => random() < 0.5);
  const pairs = Object.fromEntries((names.length === 0 ? ['1,2'] : names).map((pair) => [pair, random() < 0.06 ? 'open' : read()]));
  return [
    {
      pairs,
      scope,
      conductors: random() < 0.1 ? q.pairResistances(random, q.PAIRS) : undefined,
      leadResistance: pick(random, [undefined, undefined, 0.2, 0.6]),
      temperature: at,
      knownLength: pick(random, [undefined, length, { low: length * 0.95, high: length * 1.1 }]),
      cable: random() < 0.75 ? cable : undefined,
      cords: scope === 'channel' ? q.cords(random) : undefined,
      connections: scope === 'cable' ? undefined : pick(random, [undefined, 2, 3]),
      connectionResistance: pick(random, [undefined, undefined, 0.05]),
      accuracy: pick(random, [undefined, undefined, { fraction: 0.005, fixed: 0.1 }]),
    },
  ];
}

function warmRunInput(random: Random): Record<string, unknown> {
  return {
    ...poweredRun(random),
    ...q.bundleLimits(random),
    bundle: pick(random, [1, 12, 24, 37, 91, 100, 192, whole(random, 1, 300)]),
    installation: q.installation(random),
    outsideDiameter: q.maybe(random, 0.6, () => pick(random, [5.2, 6, 7.8])),
  };
}

const MATERIALS =
  'annealed-copper hard-drawn-copper tinned-copper aluminium aluminium-1350-o aluminium-1350-h12 aluminium-1350-h14 aluminium-1350-h16 copper-clad-aluminium copper-clad-aluminium-10 copper-clad-aluminium-15 copper-clad-steel-40 copper-clad-steel-30 phosphor-bronze phosphor-bronze-c51000 bronze-contact-wire silver'.split(
    ' ',
  );
const CONVERTERS =
  'feet inches mils circularMils fahrenheit fahrenheitDifference ohmsPerKilofoot ohmsPerKilometre milliamperes milliwatts kilohms btuPerHour kilofeet ohmsPerHundredMetres milliohms toFeet toKilofeet toInches toMils toCircularMils toFahrenheit toFahrenheitDifference toOhmsPerKilofoot toOhmsPerKilometre toOhmsPerHundredMetres toMilliamperes toMilliwatts toMilliohms toKilohms toBtuPerHour'.split(
    ' ',
  );
const UNITS =
  'm,cm,mm,km,ft,in,mil,kft,mm2,mm²,circular mil,kcmil,ohm,Ω,mohm,kohm,ohm/km,ohm/m,ohm/kft,ohm/100 m,V,mV,kV,A,mA,W,mW,kW,BTU/h,°C,degC,degF,°F,C,K,AWG,furlong'.split(
    ',',
  );
const QUANTITIES = [
  'length',
  'area',
  'resistance',
  'resistancePerLength',
  'voltage',
  'current',
  'power',
  'temperature',
  'temperatureDifference',
];
const SIZES = [...Array.from({ length: 41 }, (_, index) => index), '1/0', '2/0', '3/0', '4/0'] as const;
const awgOptions = (random: Random): unknown => ({
  stranding: pick(random, [undefined, 'solid', 'stranded']),
  material: random() < 0.5 ? undefined : pick(random, MATERIALS),
  family: pick(random, [undefined, 'formula', 'astm-b258']),
  strands: random() < 0.85 ? undefined : pick(random, [7, 19]),
});
const FIGURES =
  'connection contact connector-model-low connector-model-high connector-current conductor-current remote-power-four-pair remote-power-one-pair unbalance-within-pair-cable unbalance-between-pairs-2014 unbalance-between-pairs-2014-floor clad-aluminium-least clad-aluminium-low clad-aluminium-most'.split(
    ' ',
  );
const coefficient = (random: Random): number => pick(random, [0.00393, 0.00403, 0.0038, uniform(random, 0.001, 0.006)]);
const degrees = (random: Random): number => pick(random, [20, 25, 0, 60, uniform(random, -40, 120)]);
const each =
  <T,>(of: readonly T[]): Question =>
  (_random, index) => [of[index % of.length]];
const poeClass: Question = (random, index) => [
  index % 9,
  { pseType: pick(random, [undefined, 1, 2, 3, 4]), pairs: pick(random, [undefined, undefined, 2, 4]) },
];

/** Sheets that take the input of the function of their name. */
const SHEETS: Readonly<Record<string, Question>> = {
  awg: (random) => [{ size: pick(random, SIZES), ...(awgOptions(random) as object) }],
  uniformWire: (random) => wire(random),
  resistancePerMetre: (random) => [{ conductor: q.conductor(random), temperature: q.temperature(random) }],
  resistanceAtTemperature: (random) => [
    { resistance: uniform(random, 0.1, 50), temperature: degrees(random), coefficient: coefficient(random), at: degrees(random) },
  ],
  loopResistance: (random) => [{ conductor: q.conductor(random), length: uniform(random, 1, 500), temperature: q.temperature(random) }],
  runResistance: (random) => [q.segments(random)],
  expectedReading: (random) => expected(random),
  fromMeasurement: measurementQuestion,
  unbalance: (random) => [{ pairs: q.pairResistances(random, q.PAIRS) }],
  operatingPoint: (random) => [line(random)],
  mostPower: (random) => {
    const { supplyVoltage, resistance } = line(random);
    return [
      {
        supplyVoltage,
        resistance: resistance || 1,
        load: { power: (supplyVoltage ** 2 / (4 * (resistance || 1))) * uniform(random, 0.1, 1.3) },
      },
    ];
  },
  voltageDrop: (random) => drop(random),
  solveNetwork: (random) => [q.network(random)],
  loadedVoltage: (random) => loaded(random),
  farEndFaultCurrent: (random) => fault(random),
  leastPermittedDrop: (random) => [without(twoWireRun(random), 'permittedDrop')],
  powerAtPd: (random) => atPd(random),
  psePowerFor: (random) => demand(random),
  pairUnbalance: (random) => unlike(random),
  maximumRun: (random) => longest(random),
  bounds: (random) => {
    const [fn, input] = boundsQuestion(random);
    return [{ fn, input }];
  },
  ampacity: (random) => ampacity(random),
  filmCoefficient: (random) => film(random),
  bundleRise: (random) => [q.bundle(random)],
  remotePowering: (random) => [{ conductorCurrents: currents(random) }],
  switchBudget: (random) =>
    [without(q.switchInput(random), 'groups', 'portLimit', 'supplies', 'systemLoad', 'budgetBySupplies', 'fitted', 'failed')].map(
      (input) => ({ capacity: 300, ...input }),
    ),
  lowestSupplyVoltage: (random) => [without(eitherRun(random), 'pseVoltage', 'supplyVoltage')],
  highestLoad: (random) => highestLoad(random),
  highestTemperature: (random) => [eitherRun(random)],
  smallestConductor: (random) => smallest(random),
};

function wire(random: Random): readonly unknown[] {
  const whole = {
    resistance: uniform(random, 0.01, 20),
    resistivity: uniform(random, 0.016, 0.04),
    length: uniform(random, 1, 500),
    area: uniform(random, 0.1, 10),
  };
  return [without(whole, pick(random, ['resistance', 'resistivity', 'length', 'area']))];
}
function drop(random: Random): readonly unknown[] {
  const volts = q.twoWireVoltage(random);
  return [
    {
      ...q.circuit(random),
      supplyVoltage: volts,
      length: logUniform(random, 1, 400),
      temperature: q.temperature(random),
      load: q.load(random, volts, pick(random, [0.5, 2, 8])),
    },
  ];
}
function expected(random: Random): readonly unknown[] {
  const joints = q.connections(random);
  const link = joints.connections === undefined || joints.connections < 2 ? undefined : pick(random, [undefined, 1, 2]);
  return [
    {
      installed: q.installed(random),
      cords: q.cords(random),
      ...joints,
      linkConnections: link,
      temperatureSpread: pick(random, [undefined, 5, 10]),
    },
  ];
}
function loaded(random: Random): readonly unknown[] {
  const openVoltage = q.twoWireVoltage(random);
  const accuracy = (): unknown => pick(random, [undefined, { fraction: 0.005, fixed: 0.02 }, { fraction: 0.01 }]);
  return [
    {
      openVoltage,
      loadedVoltage: openVoltage * uniform(random, 0.3, 1),
      current: logUniform(random, 0.01, 10),
      minimumVoltage: q.maybe(random, 0.6, () => openVoltage * uniform(random, 0.4, 1.02)),
      voltageAccuracy: accuracy(),
      currentAccuracy: accuracy(),
    },
  ];
}
function fault(random: Random): readonly unknown[] {
  const input = {
    ...q.circuit(random),
    supplyVoltage: q.twoWireVoltage(random),
    length: logUniform(random, 2, 400),
    temperature: q.temperature(random),
    sourceResistance: pick(random, [undefined, 0, 0.1, 0.5]),
  };
  const most = figure('farEndFaultCurrent', { ...input, tripCurrent: 1 }, 'faultCurrent') ?? 5;
  return [
    {
      ...input,
      tripCurrent: random() < 0.5 ? q.near(random, most) : uniform(random, 0.5, 20),
      marginalBelow: pick(random, [undefined, undefined, 0.1]),
    },
  ];
}
function atPd(random: Random): readonly unknown[] {
  const port = q.port(random);
  const resistance = pick<unknown>(random, [
    12.5,
    20,
    6.25,
    0,
    uniform(random, 0.1, 15),
    logUniform(random, 0.01, 200),
    q.near(random, 12.5),
    q.made('runResistance', q.segments(random)),
  ]);
  if (random() > 0.25 || typeof resistance !== 'number') return [{ ...port, resistance }];
  // A device that draws about as much as the line delivers at all.
  const volts = (port['pseVoltage'] as number | undefined) ?? 50;
  return [{ ...port, resistance, pseVoltage: volts, pdPower: (volts * volts * q.near(random, 1)) / (4 * Math.max(resistance, 0.5)) }];
}
function demand(random: Random): readonly unknown[] {
  const port = without(q.port(random), 'minimumVoltage');
  return [
    {
      ...port,
      pdPeakPower: q.maybe(random, 0.2, () => uniform(random, 1, 80)),
      resistance:
        random() < 0.3 ? undefined : pick<unknown>(random, [12.5, uniform(random, 0.1, 15), q.made('runResistance', q.segments(random))]),
      pseVoltage: pick<unknown>(random, [undefined, 54, uniform(random, 44, 57), { low: 50, high: 57 }]),
    },
  ];
}
function unlike(random: Random): readonly unknown[] {
  const four = random() < 0.6;
  const added = (): unknown => pick<unknown>(random, [undefined, 0.1, { '1,2': 0.1, '3,6': 0.12, '4,5': 0.09, '7,8': 0.1 }]);
  const poeClass = four ? whole(random, 5, 8) : whole(random, 0, 4);
  const names = four ? q.PAIRS : pick(random, [q.PAIRS.slice(0, 2), q.PAIRS.slice(2)]);
  const most = [12.95, 3.84, 6.49, 12.95, 25.5, 40, 51, 62, 71.3][poeClass] as number;
  return [
    {
      pairs: q.pairResistances(random, names),
      positive: random() < 0.7 ? undefined : names.filter((_, index) => index % 2 === 1),
      psePairResistance: four ? added() : undefined,
      pdPairResistance: four ? added() : undefined,
      poeClass,
      pseType: pick(random, [undefined, undefined, 3, 4]),
      pseVoltage: pick(random, [undefined, 52, uniform(random, 44, 57)]),
      pdPower: q.maybe(random, 0.6, () => most * pick(random, [uniform(random, 0.1, 1.2), uniform(random, 1, 12)])),
      limits: pick(random, [undefined, undefined, { pairFraction: 0.02 }, { pairToPairFraction: 0.03, pairToPairFloor: 0.05 }]),
    },
  ];
}
function longest(random: Random): readonly unknown[] {
  if (random() < 0.45)
    return [
      without(
        q.twoWire(random),
        'marginalBelow',
        ...(random() < 0.1 ? ['minimumVoltage', 'permittedDrop', 'ampacity', 'maximumResistance', 'maximumVoltage'] : []),
      ),
    ];
  return [{ ...without(q.poweredRun(random), 'installed', 'marginalBelow'), cable: q.cable(random), temperature: q.temperature(random) }];
}
function ampacity(random: Random): readonly unknown[] {
  return [
    {
      code: 'NEC 2017',
      gauge: pick(random, [26, 24, 24, 23, 22, 22, 20]),
      bundle: pick(random, [1, 2, 7, 8, 19, 20, 37, 61, 91, 192, 193, whole(random, 1, 250)]),
      temperatureRating: pick(random, [undefined, 60, 75, 90]),
      ambient: pick(random, [undefined, 30, 25, 45, 55, 60, uniform(random, 0, 95)]),
      halfLoaded: pick(random, [undefined, true, false]),
    },
  ];
}
function film(random: Random): readonly unknown[] {
  const ambient = uniform(random, -20, 50);
  return [
    {
      diameter: logUniform(random, 4, 200),
      surfaceTemperature: ambient + pick(random, [0.5, 5, 15, uniform(random, 0, 40)]),
      ambient,
      emissivity: pick(random, [undefined, 0.8, 0]),
    },
  ];
}
const currents = (random: Random): number[] =>
  Array.from({ length: whole(random, 1, 24) }, () => pick(random, [0.3, 0.212, 0.5, 0, uniform(random, 0, 0.6)]));
function highestLoad(random: Random): readonly unknown[] {
  if (random() < 0.5) return [without(poweredRun(random), 'pdPower')];
  return [{ ...without(twoWireRun(random), 'load'), kind: pick(random, [undefined, 'power', 'current', 'resistance']) }];
}
function smallest(random: Random): readonly unknown[] {
  if (random() < 0.55)
    return [
      {
        ...without(twoWireRun(random), 'conductor', 'out', 'back'),
        candidates: Array.from({ length: whole(random, 1, 5) }, () => q.conductor(random)),
      },
    ];
  const run = without(q.poweredRun(random), 'installed');
  return [
    {
      ...run,
      candidates: Array.from({ length: whole(random, 1, 4) }, () => q.cable(random)),
      length: q.length(random),
      temperature: q.temperature(random),
    },
  ];
}

/** Inputs of the wrong sort, put in place of one of a good question. */
const WRONG: readonly unknown[] = [-1, '50', null, { number: 'NaN' }, { number: 'Infinity' }, 1e15, true, 'cat9', [], {}];

/** The same question with one value of its first argument spoiled. */
function spoiled(random: Random, args: readonly unknown[]): readonly unknown[] {
  const [input, ...others] = args;
  if (typeof input !== 'object' || input === null || Array.isArray(input) || '$' in input) return args;
  const keys = Object.keys(input).filter((key) => (input as Record<string, unknown>)[key] !== undefined);
  // What is empty, or absent, is another question.
  const key = keys.length === 0 ? undefined : pick(random, keys);
  if (key === undefined) return args;
  const wrong = pick(random, WRONG);
  return [{ ...input, [key]: Array.isArray(wrong) && key === 'installed' ? -1 : wrong }, ...others];
}

const QUESTIONS: Readonly<Record<string, Readonly<Record<string, readonly [count: number, question: Question, bad?: number]>>>> = {
  conductor: {
    awg: [140, (random, index) => [SIZES[index % SIZES.length], awgOptions(random)]],
    awgFromDiameter: [24, (random) => [logUniform(random, 0.05, 12)]],
    awgFromArea: [24, (random) => [logUniform(random, 0.003, 120)]],
    metric: [
      70,
      (random) => [
        pick(random, [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 0.22, 0.34, 3]),
        {
          class: pick(random, [1, 2, 5, 6, 5]),
          coating: pick(random, [undefined, 'plain', 'tinned']),
          material: random() < 0.85 ? undefined : pick(random, ['copper', 'aluminium']),
        },
      ],
    ],
    necTable8: [
      60,
      (random) => [
        pick(random, [18, 16, 14, 12, 10, 8, 18, 16, 14, 12, 10, 8, 4, 2, '1/0', 20]),
        {
          stranding: pick(random, [undefined, 'solid', 'stranded']),
          coating: pick(random, [undefined, 'uncoated', 'coated']),
          material: pick(random, [undefined, 'copper', 'aluminium']),
        },
      ],
    ],
    conductorFromResistance: [
      70,
      (random) => [
        {
          ohmsPerKilometre: logUniform(random, 0.1, 500),
          temperature: q.temperature(random),
          material: random() < 0.6 ? undefined : pick(random, MATERIALS),
          basis: pick(random, [undefined, 'nominal', 'maximum', 'measured']),
          stranding: pick(random, [undefined, 'solid', 'stranded']),
        },
      ],
      8,
    ],
    resistancePerMetre: [120, (random) => [q.conductor(random), q.temperature(random)]],
    loopResistance: [90, SHEETS['loopResistance'] as Question, 8],
    material: [
      50,
      (random, index) => [MATERIALS[index % MATERIALS.length], random() < 0.5 ? {} : { diameter: logUniform(random, 0.1, 12) }],
    ],
    parallelConductors: [
      40,
      (random) => {
        const metal = pick(random, [undefined, undefined, 'aluminium']);
        const wire = (): q.Made =>
          random() < 0.05
            ? q.conductor(random)
            : q.made('awg', whole(random, 8, 24), { stranding: pick(random, ['solid', 'stranded']), material: metal });
        return [Array.from({ length: whole(random, 1, 4) }, wire)];
      },
    ],
    strandConstruction: [
      40,
      (random) => [
        pick(random, ['7/0.2', '19/0.15', '16/0.2', '7/32 AWG', '19/36 AWG', '65/34 AWG', '7/0.01 in', '7/0.16', '1/0.5', '7x32']),
        { layAllowance: pick(random, [undefined, 0.02, 0.04]), material: random() < 0.7 ? undefined : pick(random, MATERIALS) },
      ],
    ],
    temperatureCoefficientAt: [20, (random) => [coefficient(random), degrees(random), degrees(random)]],
    zeroResistanceTemperature: [16, (random) => [coefficient(random), degrees(random)]],
    resistanceAtTemperature: [
      30,
      (random) => [
        {
          resistance: uniform(random, 0.1, 50),
          temperature: degrees(random),
          coefficient: coefficient(random),
          coefficientTemperature: pick(random, [undefined, 0, 25]),
        },
        degrees(random),
      ],
    ],
    temperatureFromResistance: [
      30,
      (random) => {
        const resistance = uniform(random, 0.1, 50);
        return [
          {
            resistance,
            temperature: degrees(random),
            coefficient: coefficient(random),
            coefficientTemperature: pick(random, [undefined, 0, 25]),
          },
          resistance * uniform(random, 0.8, 1.4),
        ];
      },
    ],
    temperatureCoefficientFrom: [
      20,
      (random) => {
        const resistance = uniform(random, 0.1, 50);
        return [
          { resistance, temperature: 20 },
          { resistance: resistance * uniform(random, 1.05, 1.4), temperature: uniform(random, 40, 120) },
          pick(random, [20, 0, 25]),
        ];
      },
    ],
    uniformWire: [40, wire, 6],
    toMaximum: [50, (random) => [q.conductor(random), { allowance: pick(random, [undefined, undefined, 1.02, 1.05]) }]],
    toNominal: [50, (random) => [q.conductor(random), { allowance: pick(random, [undefined, undefined, 1.02, 1.05]) }]],
    diameterAllowance: [40, (random) => [q.conductor(random)]],
  },
  cable: {
    cable: [
      50,
      (random) => [
        pick(random, [...q.INSTALLED, ...q.CORDS]),
        { limit: pick(random, [undefined, 'TIA-568', 'IEC 61156']), screened: pick(random, [undefined, true, false]) },
      ],
    ],
    defineCable: [90, (random) => [q.sheet(random)], 12],
    assessCableData: [
      130,
      (random) => [
        {
          ...without(q.sheet(random), 'name', 'pairs', 'screened', 'outsideDiameter'),
          ...(random() < 0.15 ? { gauge: undefined, conductor: q.conductor(random) } : {}),
        },
      ],
      10,
    ],
    cableCores: [24, (random) => [q.cable(random), whole(random, 1, 8)]],
    cablingFigure: [FIGURES.length, each(FIGURES)],
    deratedLength: [
      50,
      (random) => [
        { temperature: pick(random, [20, 25, 40, 41, 60, 61, uniform(random, 10, 75)]), screened: pick(random, [undefined, true, false]) },
      ],
      4,
    ],
    insertionLossFactor: [
      40,
      (random) => [{ temperature: pick(random, [20, 40, 60, uniform(random, -20, 80)]), screened: pick(random, [undefined, true, false]) }],
      4,
    ],
    strandedLead: [
      24,
      (random) => [random() < 0.05 ? 21 : pick(random, [20, 22, 24, 26, 28]), { basis: pick(random, [undefined, 'maximum', 'nominal']) }],
    ],
    twoCoreCable: [
      40,
      (random) => [
        {
          conductor: q.conductor(random),
          use: pick(random, ['audio', 'speaker', 'control']),
          return: pick<unknown>(random, [
            undefined,
            'conductor',
            { screen: { ohmsPerKilometre: uniform(random, 10, 60), temperature: pick(random, [undefined, 25]) } },
          ]),
          cores: pick(random, [undefined, 1, 2]),
        },
      ],
      4,
    ],
    runResistance: [220, (random) => [q.segments(random)], 20],
    unbalance: [
      70,
      (random) => [
        {
          pairs: q.pairResistances(
            random,
            q.PAIRS.filter(() => random() < 0.8),
          ),
          limits: pick(random, [undefined, {}, { pairFraction: 0.02 }, { pairFloor: 0, pairToPairFloor: 0.05, pairToPairFraction: 0.03 }]),
        },
      ],
      6,
    ],
    unbalancedPairs: [
      24,
      (random) => [
        {
          conductorResistance: uniform(random, 0.5, 15),
          within: pick(random, [undefined, 0.03, 0.01]),
          between: pick(random, [undefined, 0.07, 0.05]),
        },
      ],
    ],
    expectedReading: [140, expected, 12],
    fromMeasurement: [220, measurementQuestion, 16],
    loadedVoltage: [70, loaded, 6],
    ampacity: [100, ampacity, 6],
    bundleRise: [160, (random) => [q.bundle(random)], 12],
    filmCoefficient: [40, film, 4],
    remotePowering: [24, (random) => [currents(random)]],
  },
  circuit: {
    operatingPoint: [280, (random) => [line(random)], 20],
    voltageDrop: [130, drop, 10],
    farEndFaultCurrent: [90, fault, 8],
    solveNetwork: [130, (random) => [q.network(random)], 8],
    loadability: [
      50,
      (random) => [q.network(random), { minimumVoltage: pick(random, [undefined, 18, 20]), tap: pick(random, [undefined, undefined, 0]) }],
    ],
    shedTaps: [
      50,
      (random) => {
        const network = q.network(random);
        return [
          {
            ...network,
            taps: network.taps.map((tap) => ({ ...tap, turnOff: pick(random, [undefined, 18, 21, 22.5]) })),
            shed: pick(random, ['allBelow', 'furthestBelow']),
          },
        ];
      },
    ],
    maximumTaps: [
      50,
      (random) => [
        {
          supplyVoltage: pick(random, [24, 30, 48]),
          spacingResistance: logUniform(random, 0.05, 3),
          feedResistance: pick(random, [undefined, 0.5]),
          load: pick<unknown>(random, [
            { power: uniform(random, 0.5, 10) },
            { current: uniform(random, 0.02, 0.5) },
            { resistance: uniform(random, 50, 1000) },
          ]),
          minimumVoltage: pick(random, [undefined, 18, 22]),
          most: pick(random, [undefined, 30, 200]),
        },
      ],
      4,
    ],
  },
  ethernet: {
    poeClass: [90, poeClass],
    poeClassDetail: [70, poeClass],
    assignedClass: [36, (_random, index) => [index % 9, 1 + Math.floor(index / 9)]],
    classAssignment: [
      70,
      (random, index) => [
        {
          requestedClass: index % 9,
          pseType: whole(random, 1, 4),
          pairs: pick(random, [undefined, 2, 4]),
          portLimit: pick(random, [undefined, undefined, 30, 15.4, 7, uniform(random, 1, 90)]),
        },
      ],
      4,
    ],
    dualSignatureClass: [20, (random) => [whole(random, 1, 5), { pseType: pick(random, [undefined, 3, 4]) }]],
    dualSignature: [30, (random) => [{ a: whole(random, 1, 5), b: whole(random, 1, 5) }, { pseType: pick(random, [undefined, 3, 4]) }]],
    lldpValue: [16, (random) => [uniform(random, 0, 99)]],
    lldpWatts: [16, (random) => [whole(random, 0, 999)]],
    lldpClassLimit: [9, (_random, index) => [index]],
    lldpAllocation: [
      60,
      (random) => [
        {
          requested: whole(random, 1, 713),
          ...without(q.port(random), 'minimumVoltage', 'marginalBelow', 'pdPower'),
          resistance: pick(random, [undefined, 12.5, uniform(random, 0.1, 12)]),
        },
      ],
      4,
    ],
    lldpFieldName: [16, (random) => [pick(random, ['powerClassExt', 'powerTypeExt', 'powerClassAB']), whole(random, 0, 8)]],
    pairUnbalance: [90, unlike, 8],
    powerAtPd: [420, atPd, 24],
    psePowerFor: [140, demand, 10],
    pseType: [4, (_random, index) => [index + 1]],
    pseVoltageCheck: [
      40,
      (random) => [
        pick<unknown>(random, [44, 50, 52, 57, uniform(random, 40, 60), { low: 48, high: 56 }, { low: 50, high: 57.5 }]),
        whole(random, 1, 4),
      ],
    ],
    constant: [5, each(['LLDP_CODES', 'LLDP_FIELDS', 'POE_SIGNALLING', 'RFC_3621', 'RFC_3621_FACTS'])],
    rfc3621Class: [7, (_random, index) => [index]],
    rfc3621Classification: [9, (_random, index) => [index]],
    rfc3621Name: [
      12,
      (random) => [pick(random, ['pethPsePortDetectionStatus', 'pethPsePortPowerPriority', 'pethMainPseOperStatus']), whole(random, 1, 6)],
    ],
  },
  plan: {
    checkPoweredRun: [480, (random) => [poweredRun(random)], 30],
    checkTwoWireRun: [360, (random) => [twoWireRun(random)], 24],
    maximumRun: [360, longest, 24],
    smallestConductor: [150, smallest, 12],
    highestLoad: [150, highestLoad, 10],
    highestTemperature: [140, SHEETS['highestTemperature'] as Question, 10],
    lowestSupplyVoltage: [140, SHEETS['lowestSupplyVoltage'] as Question, 10],
    leastPermittedDrop: [70, SHEETS['leastPermittedDrop'] as Question, 6],
    cordAllowance: [
      90,
      (random) => [
        {
          installedLength: q.length(random),
          cord: q.cord(random),
          cabling: pick(random, [undefined, 'TIA-568', 'ISO/IEC 11801']),
          telecomRoomCords: pick(random, [undefined, 5, 2]),
          cordLoss: pick(random, [undefined, undefined, 0.2, 0.5]),
          temperature: q.temperature(random),
        },
      ],
      6,
    ],
    poweredRunRemedies: [
      110,
      (random) => [poweredRun(random), ...(random() < 0.8 ? [] : [{ cables: [q.cable(random), q.cable(random)] }])],
    ],
    twoWireRemedies: [
      110,
      (random) => [twoWireRun(random), ...(random() < 0.8 ? [] : [{ conductors: [q.conductor(random), q.conductor(random)] }])],
    ],
    bounds: [110, boundsQuestion],
    switchBudget: [150, (random) => [q.switchInput(random)], 12],
    supplyLoss: [60, (random) => [q.switchInput(random)]],
    budgetSteps: [
      30,
      (random) => {
        const input = q.switchInput(random);
        return [
          input,
          Array.from({ length: whole(random, 1, 3) }, () =>
            'capacity' in input ? { capacity: whole(random, 30, 500) } : { failed: whole(random, 0, 2) },
          ),
        ];
      },
    ],
    roomForMore: [
      50,
      (random) => [
        q.switchInput(random),
        { poeClass: whole(random, 0, 8), requested: 5, measured: 4, freePorts: pick(random, [undefined, 3]) },
      ],
    ],
    switchMains: [
      60,
      (random) => [
        {
          budget: q.switchInput(random),
          efficiency: pick(random, [undefined, 0.9]),
          systemLoad: pick(random, [undefined, 40]),
          portLoss: pick(random, [undefined, 0.5]),
          mainsVoltage: pick(random, [undefined, 230, 120]),
          powerFactor: pick(random, [undefined, 0.95]),
        },
      ],
    ],
    batteryAutonomy: [
      24,
      (random) => [
        {
          usableEnergy: uniform(random, 50, 3000),
          load: pick(random, [0, uniform(random, 10, 900)]),
          inverterEfficiency: pick(random, [undefined, 0.9]),
        },
      ],
    ],
    checkBundle: [120, (random) => [{ ...q.bundle(random), ...q.bundleLimits(random) }], 8],
    bundleRemedies: [60, (random) => [{ ...q.bundle(random), ...q.bundleLimits(random) }]],
    warmRun: [110, (random) => [warmRunInput(random)], 8],
  },
  quantity: {
    ...Object.fromEntries(
      CONVERTERS.map((name) => [
        name,
        [5, (random: Random) => [pick(random, [uniform(random, 0, 100), logUniform(random, 1e-4, 1e4), whole(random, 1, 1000)])]] as const,
      ]),
    ),
    parseQuantity: [
      160,
      (random) => {
        const number = pick(random, [
          `${whole(random, 0, 400)}`,
          uniform(random, 0, 60).toFixed(2),
          '1,200',
          '1/2',
          '-15',
          '2.5e3',
          '0,22',
          '1.5',
          '',
          '12 000',
        ]);
        return [
          `${number}${pick(random, [' ', '', '  '])}${pick(random, UNITS)}`,
          random() < 0.6 ? {} : { quantity: pick(random, QUANTITIES), decimalComma: pick(random, [undefined, true, false]) },
        ];
      },
    ],
    formatQuantity: [
      80,
      (random) => [
        pick(random, [0, logUniform(random, 1e-6, 1e6), -uniform(random, 0, 50), whole(random, 0, 1e6)]),
        pick(random, ['m', 'mm²', 'Ω', 'Ω/m', 'V', 'A', 'W', '°C', 'K']),
        { digits: pick(random, [undefined, 2, 3, 6]) },
      ],
    ],
    source: [(answer('sourceKeys') as string[]).length, each(answer('sourceKeys') as string[])],
  },
  schedule: {
    schedule: [
      90,
      (random) => [
        q.scheduleTexts(random),
        {
          cabling: q.cabling(random),
          marginalBelow: pick(random, [undefined, undefined, 0.1]),
          budget: pick<unknown>(random, [undefined, { basis: 'requested' }, { policy: 'fill' }]),
        },
      ],
    ],
    checkRun: [12, (random) => [q.scheduleTexts(random), { cabling: q.cabling(random), marginalBelow: pick(random, [undefined, 0.1]) }]],
    scheduleOfRows: [30, (random) => [rowsOf(q.scheduleTexts(random)), {}]],
  },
  working: {
    working: [
      Object.keys(SHEETS).length * 14,
      (random, index) => {
        const [name, question] = Object.entries(SHEETS)[index % Object.keys(SHEETS).length] as [string, Question];
        return [name, question(random, index)[0]];
      },
    ],
    review: [
      90,
      (random, index) => {
        const [name, question] = Object.entries(SHEETS)[index % Object.keys(SHEETS).length] as [string, Question];
        const input = question(random, index)[0];
        const value = resultOf(name, input) ?? 1;
        return [name, input, value * pick(random, [1, 1, 1.0004, 2, 0.5, 0.25, 1000, 0.001, 0.3048, 3.28084, 1.3, -1]), {}];
      },
    ],
  },
};

function resultOf(name: string, input: unknown): number | undefined {
  try {
    return (answer('working', name, input) as { result: { value: number } }).result.value;
  } catch {
    return undefined;
  }
}

/** The rows of the texts, as a program would hand them over. */
function rowsOf({ runs = '', switches = '' }: Record<string, string>): unknown {
  const keys = {
    runs: 'run switch port device poeClass pdPower minimumVoltage maximumResistance resistanceLoop cable length cords connections ambient bundle installation measuredLoop priority supply load',
    switches: 'switch type ports budget supplies systemLoad minimumVoltage',
  };
  const rows = (text: string, names: string): unknown[] =>
    text
      .split('\n')
      .slice(1)
      .map((row) => Object.fromEntries(row.split(',').map((cell, index) => [names.split(' ')[index], cell])));
  return { runs: rows(runs, keys.runs), switches: rows(switches, keys.switches) };
}

function record(name: string, args: readonly unknown[]): FrozenRecord {
  try {
    return { name, args, result: withoutProse(ask(library, name, args, asIs)) };
  } catch (error) {
    return { name, args, error: errorWords(error) };
  }
}

/** Arguments that are left out are not written. */
function withoutLast(args: readonly unknown[]): readonly unknown[] {
  return args.at(-1) === undefined ? args.slice(0, -1) : args;
}

let seed = 1;
for (const [room, functions] of Object.entries(QUESTIONS)) {
  const lines: string[] = [];
  for (const [name, [count, question, bad = 0]] of Object.entries(functions)) {
    const random = seeded(seed++);
    for (let index = 0; index < count + bad; index++) {
      const asked = question(random, index);
      const args = JSON.parse(JSON.stringify(withoutLast(index < count ? asked : spoiled(random, asked)))) as unknown[];
      lines.push(JSON.stringify(record(name, args)));
    }
  }
  const packed = gzipSync(`${lines.join('\n')}\n`, { level: 9 });
  writeFileSync(join(import.meta.dirname, `${room}.jsonl.gz`), packed);
  process.stdout.write(`${room}: ${lines.length} records, ${packed.length} bytes\n`);
}
