/** Random questions for the frozen corpus: ordinary ones, and many near a limit, near the collapse of a line, hot, mixed or without an answer. @module */
import { logUniform, pick, type Random, uniform, whole } from '../helpers/random.ts';

/** A call that makes an object, as a record holds it. */
export interface Made {
  readonly $: readonly [name: string, ...args: unknown[]];
  readonly part?: string;
}

/** An object that the library makes. */
export function made(name: string, ...args: unknown[]): Made {
  return { $: [name, ...args] };
}

/** `yes` as often as said, else nothing. */
export function maybe<T>(random: Random, chance: number, yes: () => T): T | undefined {
  return random() < chance ? yes() : undefined;
}

/** A figure as people write it, of three digits. */
export function round3(value: number): number {
  return Number(value.toPrecision(3));
}

/** A number close to another: equal, a hair beside, or within a tenth. */
export function near(random: Random, value: number): number {
  return value * (1 + pick(random, [0, 1e-13, -1e-13, 1e-9, -1e-9, 1e-4, -1e-4, 0.02, -0.02, 0.049, -0.049, 0.07, -0.07, -0.3]));
}

/** Of a cable or the air around it: mostly a room, now and then a roof or a yard. [°C] */
export function temperature(random: Random): number | undefined {
  const kind = random();
  if (kind < 0.2) return undefined;
  if (kind < 0.6) return pick(random, [15, 20, 22, 25, 30, 35, 40, 45, 55, 60]);
  return kind < 0.95 ? uniform(random, -20, 62) : uniform(random, 60, 90);
}

export const INSTALLED = ['cat5e', 'cat6', 'cat6a', 'cat7a', 'cat3'] as const;
export const CORDS = ['cord-24', 'cord-26', 'cord-28'] as const;

/** A data sheet's cable. */
export function sheet(random: Random): Record<string, unknown> {
  const gauge = whole(random, 22, 26);
  const nominal = 53.0 * 1.2599 ** (gauge - 22);
  return {
    name: 'Tidemill cable',
    gauge: maybe(random, 0.85, () => gauge),
    pairs: pick(random, [undefined, 4, 4, 2]),
    use: pick(random, [undefined, 'horizontal', 'cord']),
    stranding: pick(random, [undefined, 'solid', 'stranded']),
    material: pick(random, [undefined, undefined, 'annealed-copper', 'copper-clad-aluminium', 'tinned-copper']),
    screened: pick(random, [undefined, true, false]),
    nominalOhmsPerKilometre: maybe(random, 0.4, () => round3(near(random, nominal))),
    maximumOhmsPerKilometre: maybe(random, 0.6, () => round3(nominal * uniform(random, 0.95, 1.35))),
    temperature: pick(random, [undefined, undefined, 20, 25]),
    outsideDiameter: pick(random, [undefined, 5.5, 7.2]),
  };
}

/** A cable for the wall. */
export function cable(random: Random): Made {
  const kind = random();
  if (kind < 0.75) return made('cable', pick(random, [...INSTALLED, 'cat5e', 'cat6', 'cat6a']));
  if (kind < 0.87) {
    const name = pick(random, ['cat5e', 'cat6', 'cat6a'] as const);
    return made('cable', name, {
      limit: pick(random, [undefined, 'TIA-568', 'IEC 61156']),
      screened: pick(random, [undefined, true, false]),
    });
  }
  const gauge = whole(random, 22, 24);
  return made('defineCable', {
    name: 'Tidemill cable',
    gauge,
    pairs: pick(random, [undefined, 4, 2]),
    maximumOhmsPerKilometre: maybe(random, 0.7, () => round3(53 * 1.2599 ** (gauge - 22) * uniform(random, 1.05, 1.3))),
    material: maybe(random, 0.1, () => 'copper-clad-aluminium'),
    screened: pick(random, [undefined, true]),
    outsideDiameter: pick(random, [undefined, 6.1]),
  });
}

export function cord(random: Random): Made {
  return random() < 0.95
    ? made('cable', pick(random, CORDS))
    : made('defineCable', { name: 'Tidemill cord', gauge: 26, use: 'cord', maximumOhmsPerKilometre: 145 });
}

/** A length of installed cable. [m] */
export function length(random: Random): number {
  const kind = random();
  if (kind < 0.4) return whole(random, 2, 95);
  if (kind < 0.65) return near(random, pick(random, [90, 100, 80, 75]));
  return kind < 0.95 ? uniform(random, 0.5, 130) : logUniform(random, 0.1, 2000);
}

export function installed(random: Random): unknown[] {
  const pieces = pick(random, [1, 1, 1, 1, 2, 3]);
  return Array.from({ length: pieces }, () => ({
    cable: cable(random),
    length: pieces === 1 ? length(random) : length(random) / pieces,
    temperature: temperature(random),
  }));
}

export function cords(random: Random): unknown[] | undefined {
  const count = pick(random, [undefined, 0, 1, 2, 2, 3]);
  if (count === undefined) return undefined;
  return Array.from({ length: count }, () => ({
    cable: cord(random),
    length: pick(random, [1, 2, 3, 5, 10, uniform(random, 0.5, 20)]),
    temperature: temperature(random),
  }));
}

export function connections(random: Random): { connections?: number | undefined; connectionResistance?: number | undefined } {
  return {
    connections: pick(random, [undefined, 0, 2, 2, 3, 4, 6]),
    connectionResistance: pick(random, [undefined, undefined, undefined, 0.02, 0.05]),
  };
}

/** A run as `runResistance` takes it. */
export function segments(random: Random): Record<string, unknown> {
  return {
    segments: [...installed(random), ...(cords(random) ?? [])],
    ...connections(random),
    basis: pick(random, [undefined, undefined, 'nominal', 'maximum']),
  };
}

const PD_POWER = [12.95, 3.84, 6.49, 12.95, 25.5, 40, 51, 62, 71.3];

/** A device and the port that feeds it. */
export function port(random: Random): Record<string, unknown> {
  const poeClass = whole(random, 0, 8);
  const weakest = poeClass <= 3 ? 1 : poeClass === 4 ? 2 : poeClass <= 6 ? 3 : 4;
  const most = PD_POWER[poeClass] as number;
  return {
    poeClass,
    pseType: random() < 0.45 ? undefined : random() < 0.15 ? whole(random, 1, 4) : whole(random, weakest, 4),
    pseVoltage: maybe(random, 0.45, () => pick(random, [44, 48, 50, 52, 53.5, 54, 56, 57, uniform(random, 40, 57), near(random, 57)])),
    pdPower: maybe(random, 0.45, () => pick(random, [round3(most * random() + 0.01), near(random, most), most * uniform(random, 0.3, 1)])),
    pairs: random() < 0.88 ? undefined : pick(random, [2, 4]),
    minimumVoltage: maybe(random, 0.25, () => pick(random, [36, 37, 40, 42.5, 44, uniform(random, 35, 50)])),
    marginalBelow: pick(random, [undefined, undefined, undefined, 0.1, 0]),
  };
}

export function resistanceLimit(random: Random): unknown {
  return maybe(random, 0.3, () => ({
    ohms: pick(random, [13, 20, 25, uniform(random, 1, 30)]),
    loop: pick(random, ['pairLoop', 'twoPair', 'fourPair', 'unstated', 'unstated']),
  }));
}

export function cabling(random: Random): string | undefined {
  return pick(random, [undefined, undefined, 'TIA-568', 'ISO/IEC 11801', 'none']);
}

export function poweredRun(random: Random): Record<string, unknown> {
  return {
    ...port(random),
    installed: installed(random),
    cords: cords(random),
    ...connections(random),
    maximumResistance: resistanceLimit(random),
    cabling: cabling(random),
  };
}

/** Any conductor. */
export function conductor(random: Random): Made {
  const kind = random();
  if (kind < 0.5) {
    const size = pick(random, [whole(random, 6, 28), whole(random, 10, 22), whole(random, 16, 18), '2/0', '4/0']);
    return made('awg', size, {
      stranding: pick(random, [undefined, 'solid', 'stranded']),
      material: random() < 0.8 ? undefined : pick(random, ['tinned-copper', 'aluminium', 'copper-clad-aluminium', 'hard-drawn-copper']),
      family: random() < 0.9 ? undefined : 'formula',
    });
  }
  if (kind < 0.65) return made('metric', pick(random, [0.5, 0.75, 1, 1.5, 2.5, 4, 6]), { class: pick(random, [1, 2, 5]) });
  if (kind < 0.8) {
    return made('conductorFromResistance', {
      ohmsPerKilometre: round3(logUniform(random, 1, 200)),
      temperature: pick(random, [undefined, undefined, 25, 60]),
      basis: pick(random, [undefined, 'nominal', 'maximum', 'measured']),
    });
  }
  if (kind < 0.85) return made('necTable8', pick(random, [18, 16, 14, 12, 10, 8]), { stranding: pick(random, ['solid', 'stranded']) });
  if (kind < 0.9) return made('toMaximum', made('awg', whole(random, 12, 24)));
  if (kind < 0.95) return made('cableCores', made('cable', pick(random, ['cat5e', 'cat6'])), whole(random, 1, 4));
  return made(
    'parallelConductors',
    Array.from({ length: whole(random, 1, 4) }, () => made('awg', whole(random, 12, 20))),
  );
}

/** A load of any kind: a share of the most that a line of that resistance delivers, or of any size. */
export function load(random: Random, volts: number, ohms: number | undefined): Record<string, number> {
  const kind = random();
  const share = random() < 0.4 ? random() * 0.6 : 1 - logUniform(random, 1e-9, 0.9) * pick(random, [1, 1, 1, -1]);
  if (kind < 0.55) {
    const most = ohms === undefined || ohms === 0 ? volts : (volts * volts) / (4 * ohms);
    return { power: random() < 0.35 ? round3(logUniform(random, 0.1, 200)) : Math.max(most * share, 1e-3) };
  }
  if (kind < 0.75)
    return { current: random() < 0.5 || !ohms ? round3(logUniform(random, 0.01, 8)) : Math.max(1e-3, (volts / ohms) * share) };
  return { resistance: random() < 0.05 ? 0.5 : round3(logUniform(random, 2, 3000)) };
}

/** One conductor out and back, or two unlike. */
export function circuit(random: Random): Record<string, unknown> {
  return random() < 0.75 ? { conductor: conductor(random) } : { out: conductor(random), back: conductor(random) };
}

export function twoWireVoltage(random: Random): number {
  return pick(random, [12, 24, 24, 48, 21, 30, uniform(random, 5, 60)]);
}

/** A two-wire run, less its length: with one or two limits, or with many. */
export function twoWire(random: Random): Record<string, unknown> {
  const volts = twoWireVoltage(random);
  const many = random() < 0.35 ? 1 : 0.35;
  return {
    ...circuit(random),
    supplyVoltage: random() < 0.4 ? volts : { low: volts * uniform(random, 0.8, 1), high: volts * uniform(random, 1, 1.25) },
    temperature: temperature(random),
    ...(random() < 0.7 ? {} : connections(random)),
    load: load(random, volts, pick(random, [undefined, 0.5, 2, 8])),
    minimumVoltage: maybe(random, 0.65, () => round3(volts * uniform(random, 0.5, random() < 0.8 ? 0.85 : 1))),
    maximumVoltage: maybe(random, 0.25 * many, () => round3(volts * uniform(random, 0.95, 1.5))),
    permittedDrop: maybe(random, 0.6 * many, () =>
      pick<unknown>(random, [0.03, 0.05, 0.1, uniform(random, 0.01, 0.5), { volts: 2 }, { volts: volts * uniform(random, 0.01, 0.9) }]),
    ),
    ampacity: maybe(random, 0.4 * many, () => round3(logUniform(random, 0.05, 20))),
    maximumResistance: maybe(random, 0.3 * many, () => round3(logUniform(random, 0.5, 50))),
    marginalBelow: pick(random, [undefined, undefined, undefined, 0.1, 0]),
  };
}

export const PAIRS = ['1,2', '3,6', '4,5', '7,8'] as const;

/** The two conductors of some of the pairs. */
export function pairResistances(random: Random, some: readonly string[]): Record<string, [number, number]> {
  const middle = uniform(random, 1, 12);
  const spread = pick(random, [0.001, 0.01, 0.03, 0.1]);
  const one = (): number => middle * (1 + spread * (random() - 0.5) * 2);
  return Object.fromEntries(some.map((pair) => [pair, [one(), one()]]));
}

export function installation(random: Random): unknown {
  return random() < 0.9
    ? pick(random, ['open-air', 'open-air', 'closed-conduit', 'closed-conduit', 'wound-drum'])
    : { filmCoefficient: uniform(random, 3, 15), thermalResistivity: pick(random, [undefined, 5, 10]) };
}

export function bundle(random: Random): Record<string, unknown> {
  return {
    cable: cable(random),
    bundle: pick(random, [1, 7, 12, 24, 37, 61, 91, 100, 127, 192, 217, whole(random, 1, 400)]),
    pairCurrent: pick(random, [0.35, 0.6, 0.866, 0.96, 1, uniform(random, 0, 1.4), uniform(random, 1, 3)]),
    energisedPairs: pick(random, [undefined, 4, 2, 1]),
    ambient: pick(random, [undefined, 20, 30, 45, 50, uniform(random, -10, 70)]),
    installation: installation(random),
    outsideDiameter: maybe(random, 0.7, () => round3(uniform(random, 4.5, 9))),
    basis: pick(random, [undefined, undefined, 'nominal', 'maximum']),
  };
}

export function bundleLimits(random: Random): Record<string, unknown> {
  return {
    temperatureRating: pick(random, [undefined, undefined, 60, 75, 90]),
    recommendedRise: pick(random, [undefined, 10, 15]),
    code: pick(random, [undefined, undefined, 'NEC 2017']),
  };
}

/** A network: a chain, a tree, or one with rings and two supplies. */
export function network(random: Random): { supplies: unknown[]; sections: unknown[]; taps: Record<string, unknown>[] } {
  const volts = pick(random, [24, 30, 48]);
  const count = whole(random, 1, 9);
  const names = Array.from({ length: count + 1 }, (_, index) => (random() < 0.5 ? `n${index}` : `box ${index}`));
  const section = (from: unknown, to: unknown): unknown =>
    random() < 0.75
      ? { from, to, resistance: round3(logUniform(random, 0.05, 5)) }
      : { from, to, conductor: conductor(random), length: uniform(random, 1, 60), temperature: temperature(random) };
  const chain = random() < 0.5;
  const sections = Array.from({ length: count }, (_, index) => section(names[chain ? index : whole(random, 0, index)], names[index + 1]));
  if (count > 2 && random() < 0.35) sections.push(section(names[count], names[whole(random, 0, count - 2)]));
  const supplies: unknown[] = [{ at: names[0], voltage: volts }];
  if (random() < 0.2 && count > 1) supplies.push({ at: names[count], voltage: volts + pick(random, [0, -1, 0.5]) });
  const heavy = pick(random, [10, 30, 200]);
  const taps = Array.from({ length: whole(random, 1, Math.max(1, count)) }, () => {
    const kind = random();
    const draw =
      kind < 0.6
        ? { power: round3(logUniform(random, 0.2, heavy)) }
        : kind < 0.8
          ? { current: round3(logUniform(random, 0.01, 0.8)) }
          : { resistance: round3(logUniform(random, 20, 2000)) };
    return { at: names[whole(random, 1, Math.max(1, count - (supplies.length - 1)))], load: draw };
  });
  return { supplies, sections, taps };
}

/** Ports of a switch. */
export function budgetPorts(random: Random, most: number): Record<string, unknown>[] {
  const grouped = random() < 0.25;
  return Array.from({ length: whole(random, 1, most) }, (_, index) => {
    const poeClass = whole(random, 0, 8);
    const power = PD_POWER[poeClass] as number;
    return {
      port: index + 1,
      poeClass,
      pseType: random() < 0.12 ? whole(random, 1, 4) : undefined,
      priority: pick(random, [undefined, 'critical', 'high', 'low']),
      requested: maybe(random, 0.8, () => round3(power * uniform(random, 0.2, random() < 0.02 ? 1.05 : 0.99))),
      pdPower: maybe(random, 0.5, () => round3(power * uniform(random, 0.2, 1))),
      measured: round3(power * uniform(random, 0.1, 1.1)),
      resistance: maybe(random, 0.7, () =>
        random() < 0.7 ? round3(uniform(random, 0.5, 14)) : made('runResistance', { segments: installed(random) }),
      ),
      pseVoltage: maybe(random, 0.3, () => uniform(random, 48, 57)),
      group: grouped ? pick(random, ['left card', 'right card']) : undefined,
      limit: maybe(random, 0.1, () => whole(random, 5, 60)),
    };
  });
}

export function switchInput(random: Random): Record<string, unknown> {
  const ports = budgetPorts(random, pick(random, [4, 8, 16, 24]));
  const kind = random();
  const capacity =
    kind < 0.5
      ? { capacity: whole(random, 20, 900) }
      : kind < 0.8
        ? {
            supplies: Array.from({ length: whole(random, 1, 4) }, (_, index) => ({
              power: pick(random, [150, 350, 715]),
              name: maybe(random, 0.4, () => `supply ${index + 1}`),
            })),
            systemLoad: pick(random, [undefined, 35, 60]),
            failed: pick(random, [undefined, 0, 1]),
          }
        : { budgetBySupplies: [370, 740, 1100], fitted: pick(random, [undefined, 2, 3]), failed: pick(random, [undefined, 1]) };
  return {
    ...capacity,
    ports,
    basis: pick(random, ['class', 'class', 'requested', 'calculated', 'measured']),
    policy: pick(random, [undefined, 'strict', 'fill']),
    reserve: pick(random, [undefined, undefined, 0.1, 0.25]),
    portLimit: pick(random, [undefined, undefined, 30, 15.4]),
    groups:
      ports[0]?.['group'] === undefined
        ? undefined
        : ['left card', 'right card'].map((group) => ({ group, limit: whole(random, 30, 300) })),
  };
}

/** A cell as people write it. */
const METRES = (random: Random, value: number): string =>
  pick(random, [
    `${round3(value)} m`,
    `${round3(value)}`,
    `${round3(value / 0.3048)} ft`,
    `${round3(value)}m`,
    `${round3(value * 1000)} mm`,
  ]);

/** Text of a file of runs, and of the switches that feed them. */
export function scheduleTexts(random: Random): Record<string, string> {
  const types = ['802.3af', '802.3at', '802.3bt type 3', '802.3bt type 4', '2', '4'];
  const switches = ['Stage rack', 'Grid', 'Foyer'].slice(0, whole(random, 1, 3));
  const switchRows = switches.map((name) => {
    const own = random() < 0.5;
    return [
      name,
      pick(random, types),
      pick(random, [8, 12, 24]),
      own ? whole(random, 30, 700) : '',
      own ? '' : pick(random, ['150 W + 150 W', '350 W', '']),
      pick(random, ['', '35']),
      pick(random, ['', '', '46', '50 V', '52']),
    ].join(',');
  });
  const bad = random() < 0.4;
  const spoiled = (cell: string): string => (bad && random() < 0.05 ? pick(random, ['tbc', '?', '-5', '', 'n/a', '1e9', '13 A']) : cell);
  const rows = Array.from({ length: whole(random, 3, 10) }, (_, index) => {
    const run = `IC-${String(index + 1).padStart(2, '0')}`;
    const ambient = spoiled(pick(random, ['', '20 °C', '22', '35 °C', '61 degF', '-15 °C', '45', '60', `${whole(random, -10, 65)} °C`]));
    if (random() < 0.25) {
      const volts = pick(random, [24, 12, 48]);
      return [
        run,
        '',
        '',
        'Cue light',
        '',
        '',
        spoiled(pick(random, ['', `${Math.round(volts * 0.8)} V`])),
        pick(random, ['', '', '4 ohm']),
        '',
        pick(random, ['18 AWG', '16 AWG', '1.5 mm2', '18 AWG stranded', '39 ohm/km', 'cat5e 2 pairs', '20 AWG']),
        METRES(random, uniform(random, 2, 160)),
        '',
        pick(random, ['', '0', '2']),
        ambient,
        '',
        '',
        '',
        '',
        spoiled(pick(random, [`${volts} V`, `${volts * 0.9} V to ${volts * 1.15} V`])),
        spoiled(pick(random, ['6 W', '250 mA', '96 ohm', '18 W', '1.2 A', `${round3(logUniform(random, 0.5, 120))} W`])),
      ].join(',');
    }
    const poeClass = whole(random, 0, 8);
    return [
      run,
      pick(random, switches),
      index + 1,
      'Intercom pack',
      spoiled(`${poeClass}`),
      spoiled(pick(random, ['', '', `${round3((PD_POWER[poeClass] as number) * uniform(random, 0.3, 1))} W`])),
      pick(random, ['', '', '37 V', '46 V']),
      pick(random, ['', '', '', '13 ohm', '20 ohm', '25 Ω']),
      pick(random, ['', '', 'pair loop', 'one pairset']),
      spoiled(pick(random, ['cat5e', 'cat6', 'cat6a', 'Cat 6', 'cat7a', 'CAT5E'])),
      spoiled(METRES(random, length(random))),
      spoiled(pick(random, ['', '2 m cord-24 + 3 m cord-24', '2 m cord-26 + 1 m cord-28', '10 m 28 AWG', '5 m cord-24'])),
      spoiled(pick(random, ['', '0', '2', '3', '4', '6'])),
      ambient,
      pick(random, ['', '', '', '24', '100', '217']),
      pick(random, ['', 'open air', 'closed conduit', 'drum']),
      pick(random, ['', '', '', '14.1 ohm', '9.8 ohm + 9.9 ohm', '12 ohm + 12.1 ohm + 11.9 ohm + 15 ohm']),
      pick(random, ['', 'critical', 'high', 'low']),
      '',
      '',
    ].join(',');
  });
  const runs = [
    'Run,Switch,Port,Device,PoE class,PD power,Minimum voltage,Maximum resistance,Resistance loop,Cable,Length,Cords,Connections,Ambient,Bundle,Installation,Measured loop,Priority,Supply,Load',
    ...rows,
  ].join('\n');
  return { runs, switches: ['Switch,Type,Ports,Budget (W),Supplies,System load (W),Minimum output voltage (V)', ...switchRows].join('\n') };
}
