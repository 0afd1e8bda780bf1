/** A fact stands once: the name of a check, the title of a column, the word of a unit, a default. */
import { describe, expect, test } from 'vitest';
import { checkNames } from '../../src/limits/all.ts';
import { RUN_COLUMNS } from '../../src/schedule/columns/run-columns.ts';
import { SWITCH_COLUMNS } from '../../src/schedule/columns/switch-columns.ts';
import { sourceTexts } from '../support/files.ts';
import { constantPlaces, defaultPlaces, filesOf, numberPlaces, type Place, standingTwice, stringPlaces } from '../support/one-place.ts';

const texts = sourceTexts();
const strings = stringPlaces(texts);
const numbers = numberPlaces(texts);

/** Published tables stand in files of their own, digits as printed: two of them may hold the same figure. */
const isTableFile = (file: string): boolean => /\/tables\/|-table\.ts$/.test(file);

/** An ordinary word is the name of a check only where something is called so. */
const CALLED = ['name', 'governedBy', 'limit', 'governs', 'case'];
const isOfCheck = (name: string, { role }: Place): boolean => name.includes('-') || CALLED.includes(role);

describe('the name of a check stands in the file of its limit', () => {
  test.each(checkNames.map((name) => [name]))('%s', (name) => {
    expect(filesOf(strings.get(name)?.filter((place) => isOfCheck(name, place)))).toEqual([`limits/${name}.ts`]);
  });
});

describe('the title of a column stands in the list of its columns', () => {
  const titles = [RUN_COLUMNS, SWITCH_COLUMNS].flatMap((columns) => Object.values(columns).map(({ title }) => title as string));

  test.each([...new Set(titles)].map((title) => [title]))('%s', (title) => {
    // A switch and a run have columns of the same name; elsewhere in the library, `Connections` is a check.
    const files = filesOf(strings.get(title)).filter((file) => /^schedule\/(?!columns\/)|^words\/|^cli\.ts/.test(file));
    expect(files).toEqual([]);
  });
});

describe('a unit is spelt out where quantities are read', () => {
  /** The words of the table of spellings, of three letters or more. */
  const rows = (texts['quantity/parse-quantity.ts'] as string).matchAll(/^ {2}\[(?<quote>['"])(?<spellings>.*?)\k<quote>, '/gm);
  const spellings = [...rows]
    .flatMap(({ groups }) => groups?.['spellings']?.split(' ') ?? [])
    .filter((spelling) => /^[A-Za-z][\w/]{2,}$/.test(spelling));

  test('the words are found', () => {
    expect(spellings).toEqual(expect.arrayContaining(['metres', 'feet', 'ohm', 'ohm/km', 'volts', 'BTU/h', 'degF', 'kelvin']));
    expect(spellings.length).toBeGreaterThan(40);
  });

  test.each(spellings.map((spelling) => [spelling]))('%s', (spelling) => {
    // `core` names a key of a result, and a list of keys those of an input; what mathjs calls a unit is mathjs's word.
    const places = strings.get(spelling)?.filter(({ role }) => role !== 'core' && role !== 'refuseUnknown');
    const elsewhere = filesOf(places).filter((file) => !/^(?:quantity\/parse-quantity|working\/engine\/working-unit)\.ts$/.test(file));
    expect(elsewhere).toEqual([]);
  });
});

describe('a constant stands once', () => {
  // What it is, its value, and the one file of each fact that has this value.
  test.each([
    ['of a connection, and what a pair may always differ by', 0.2, ['cable/read-cable.ts', 'cable/unbalance.ts']],
    ['highest voltage of a port', 57, []],
    ['marginal, the best connection, the share of a peak', 0.05, ['ethernet/signalling.ts', 'limits/held.ts', 'plan/powered-changes.ts']],
    ['diameter tolerance', 1.02, ['conductor/to-maximum.ts']],
    ['least resistance of solid copper, and a current of Type 4', 0.96, ['cable/least-resistance.ts', 'ethernet/pse-type.ts']],
    ['least resistance of stranded copper', 0.86, ['cable/least-resistance.ts']],
    ['temperature coefficient of copper', 0.00393, ['conductor/copper-standard.ts']],
    ['conductivity of copper', 58, ['conductor/copper-standard.ts']],
    ['gravity', 9.80665, ['cable/heat/film-coefficient.ts']],
    ['Stefan and Boltzmann', 5.670374419e-8, ['cable/heat/film-coefficient.ts']],
    ['Category 5e and 6, at most', 0.0938, ['cable/cables.ts']],
    ['RP1', 0.212, ['cable/heat/remote-powering.ts']],
    ['half loaded', 1.4, ['cable/heat/ampacity.ts']],
  ] as const)('%s: %f', (_what, value, homes) => {
    expect(filesOf(numbers.get(value)).filter((file) => !isTableFile(file))).toEqual(homes);
  });

  test('absolute zero', () => {
    expect(filesOf(numbers.get(273.15))).toHaveLength(1);
  });

  test('a foot is known to the room of quantities', () => {
    expect(filesOf(numbers.get(0.3048)).filter((file) => !file.startsWith('quantity/'))).toEqual([]);
  });

  test('none is declared a second time', () => {
    expect(standingTwice(constantPlaces(texts))).toEqual([]);
  });

  test('no key has its default in a second file', () => {
    expect(standingTwice(defaultPlaces(texts))).toEqual([]);
  });
});

describe('a second place is found', () => {
  const twice = (text: string, places: (files: Record<string, string>) => ReadonlyMap<string | number, readonly Place[]>): string[] =>
    standingTwice(places({ 'a.ts': text, 'b.ts': text }));

  test.each([
    ["const a = check.name === 'pd-voltage';", stringPlaces, 'pd-voltage stands in a.ts:1, b.ts:1'],
    ["const a = { 'pd-voltage': 1 };", stringPlaces, 'pd-voltage stands in a.ts:1, b.ts:1'],
    ["type A = Limit<'pd-voltage'>;", stringPlaces, 'pd-voltage stands in a.ts:1, b.ts:1'],
    ['const EXTRA_LOW: Volts = 60;', constantPlaces, 'EXTRA_LOW = 60 stands in a.ts:1, b.ts:1'],
    ['const ZERO = -273.15;', constantPlaces, 'ZERO = -273.15 stands in a.ts:1, b.ts:1'],
    ['const { temperature = 20 } = input;', defaultPlaces, 'temperature = 20 stands in a.ts:1, b.ts:1'],
    ['const { temperature: T = 20 } = input;', defaultPlaces, 'temperature = 20 stands in a.ts:1, b.ts:1'],
    ['const T = input.temperature ?? 20;', defaultPlaces, 'temperature = 20 stands in a.ts:1, b.ts:1'],
    ["const F = { temperature: { temperature: '°C', default: 20 } };", defaultPlaces, 'temperature = 20 stands in a.ts:1, b.ts:1'],
  ] as const)('%s', (text, places, sentence) => {
    expect(twice(text, places as never)).toContain(sentence);
  });

  test.each([
    ["import { a } from './pd-voltage.ts';", stringPlaces],
    ['// pd-voltage', stringPlaces],
    ['const { connections = 0 } = input;', defaultPlaces],
    ['const lower = 60;', constantPlaces],
  ] as const)('and none in %s', (text, places) => {
    expect(twice(text, places as never)).toEqual([]);
  });

  test('an ordinary word is the name of a check where something is called so, and else a word', () => {
    const [named, word] = stringPlaces({ 'a.ts': "({ name: 'material' }); requireName(x, NAMES, 'material');" }).get('material') ?? [];
    expect([named, word].map((place) => place !== undefined && isOfCheck('material', place))).toEqual([true, false]);
  });
});
