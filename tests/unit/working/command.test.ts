import { describe, expect, test } from 'vitest';
import { type CommandWorld, main } from '../../../src/cli.ts';
import { sheets } from '../../../src/working/book/sheets.ts';
import { keysOf, WORDS } from '../../../src/working/command-keys.ts';
import { showWorking, type WorkingName } from '../../../src/working/index.ts';

async function run(...argv: string[]): Promise<{ code: number; out: string; complaints: string }> {
  let out = '';
  let complaints = '';
  const nothing = async (): Promise<never> => {
    throw new Error('farend work reads and writes no file');
  };
  const world: CommandWorld = {
    readInput: nothing,
    readFile: nothing,
    writeFile: nothing,
    identify: nothing,
    print: (text) => {
      out += text;
    },
    complain: (text) => {
      complaints += text;
    },
    environment: {},
  };
  const code = await main(['work', ...argv], world);
  return { code, out, complaints };
}

describe('farend work', () => {
  // What each prints as its result; the first and second are IEEE 802.3 classes at their worst, the third 212 ft of Category 5e.
  test.each([
    [['powerAtPd', 'poeClass=4', 'resistance=12.5ohm'], 'P_av = 25.5 W'],
    [['psePowerFor', 'poeClass=3', 'resistance=20 Ω', 'pdPower=12950 mW', 'pseVoltage=44V..57V'], 'P_PSE = 15.4 W'],
    [['runResistance', 'segments=cat5e:212ft', 'connections=0'], 'R_loop = 12.12 Ω'],
    [['awg', 'size=24'], 'r_20 = 0.08422 Ω/m'],
    [['awg', 'size=2/0', 'stranding=stranded'], 'r_20 ='],
    [['loopResistance', 'conductor=24awg', 'length=100m', 'temperature=104degF'], 'R = 18.17 Ω'],
    [['loopResistance', 'conductor=96ohm/km', 'length=100m'], 'R = 19.2 Ω'],
    [['voltageDrop', 'supplyVoltage=24V', 'conductor=0.5mm2-class5', 'length=10m', 'current=0.5A'], 'V_drop ='],
    [['voltageDrop', 'supplyVoltage=24V', 'out=18awg-stranded', 'back=18awg', 'length=10m', 'loadResistance=96ohm'], 'V_drop ='],
    [['operatingPoint', 'supplyVoltage=50V', 'resistance=12.5ohm', 'power=25.5W'], 'V_L = 42.5 V'],
    [['maximumRun', 'cable=cat5e', 'poeClass=2', 'cabling=none', 'maximumResistance=13ohm'], 'L = 69.30 m'],
    [['maximumRun', 'supplyVoltage=21V..27.6V', 'conductor=18awg', 'power=6W', 'permittedDrop=10%'], 'L ='],
    [
      ['maximumRun', 'supplyVoltage=24V', 'conductor=18awg', 'current=1A', 'permittedDrop=2.4V', 'ampacity=5A', 'maximumVoltage=30V'],
      'L =',
    ],
    [['maximumRun', 'cable=cat5e', 'poeClass=4', 'cords=cord-24:5m,cord-26:3m:40degC'], 'L ='],
    [['powerAtPd', 'poeClass=8', 'run=cat6:80m:45degC,cord-26:5m'], 'P_av ='],
    // 9.38 Ω/100 m (ANSI/TIA-568.2-D) over 90 m and two connections of 0.2 Ω are 8.842 Ω: 30 W - (30/50 A)² · 8.842 Ω.
    [['powerAtPd', 'poeClass=4', 'run=cat5e:90m', 'connections=2'], 'P_av = 26.82 W'],
    [['psePowerFor', 'poeClass=4', 'run=cat5e:90m', 'connections=2', 'connectionResistance=0ohm'], 'R_w / m = 8.442 Ω'],
    [['bounds', 'fn=powerAtPd', 'poeClass=4', 'run=cat5e:90m', 'connections=2', 'pseVoltage=50V..57V'], 'A_low = 26.82 W'],
    [
      ['farEndFaultCurrent', 'supplyVoltage=24V', 'conductor=22awg', 'length=100m', 'tripCurrent=8A', 'sourceResistance=50mohm'],
      'I_more =',
    ],
    [['leastPermittedDrop', 'supplyVoltage=21V..27.6V', 'conductor=18awg', 'length=60m', 'power=6W'], 'V_most = 0.7'],
    [['lowestSupplyVoltage', 'installed=cat5e:100m', 'poeClass=4', 'cabling=none'], 'V = 48.13 V'],
    [['lowestSupplyVoltage', 'conductor=18awg', 'length=60m', 'power=6W', 'minimumVoltage=19V', 'maximumVoltage=30V'], 'V ='],
    [['highestLoad', 'installed=cat5e:130m', 'poeClass=4', 'cabling=none'], '= 25.5 W'],
    [['highestLoad', 'supplyVoltage=24V', 'conductor=18awg', 'length=60m', 'kind=current', 'permittedDrop=5%'], 'I ='],
    [['highestTemperature', 'supplyVoltage=21V..27.6V', 'conductor=18awg', 'length=150m', 'power=10W', 'minimumVoltage=17V'], 'T = 35.'],
    [['highestTemperature', 'installed=cat5e:100m', 'cords=cord-26:5m:30degC', 'poeClass=4', 'cabling=none'], 'T ='],
    [
      ['smallestConductor', 'candidates=22awg,20awg,18awg', 'supplyVoltage=21V..27.6V', 'length=90m', 'power=6W', 'minimumVoltage=19V'],
      '20 AWG: p =',
    ],
    [['smallestConductor', 'candidates=cat5e,cord-26', 'length=95m', 'poeClass=4', 'cabling=none'], 'p ='],
    [['switchBudget', 'capacity=370W', 'ports=12x4,2x3', 'reserve=10%'], 'P_all ='],
    [['solveNetwork', 'supplies=rack:24V', 'sections=rack:left:2ohm,left:right:18awg:60m:20degC', 'taps=left:5W,right:5W'], '22.57 V'],
    [['solveNetwork', 'supplies=a:24V,b:25V', 'sections=a:m:1ohm,m:b:1ohm', 'taps=m:200mA,m:96ohm'], 'V_low = 24 V'],
    [['bounds', 'fn=operatingPoint', 'supplyVoltage=21V..27.6V', 'resistance=3.5ohm..4.5ohm', 'power=6W'], 'U_low = 19.62 V'],
    [
      ['bounds', 'fn=voltageDrop', 'supplyVoltage=24V', 'conductor=18awg', 'length=80m..95m', 'temperature=20degC..60degC', 'power=6W'],
      'U_low =',
    ],
    [['bounds', 'fn=powerAtPd', 'poeClass=4', 'resistance=8ohm..12.5ohm'], 'A_low = 25.5 W'],
    [['unbalance', 'pairs=1-2:9ohm/9.3ohm,3-6:9.1ohm/9.2ohm'], 'M = 0.249 Ω'],
    [['unbalance', 'pairs=1-2:1ohm/1.06ohm', 'pairFraction=3%', 'pairFloor=0ohm'], 'M = 0.0018 Ω'],
    [['pairUnbalance', 'poeClass=4', 'pairs=1-2:25ohm/25ohm,3-6:12.5ohm/12.5ohm', 'pseVoltage=55V'], 'I_pair ='],
    [
      [
        'pairUnbalance',
        'poeClass=8',
        'pairs=1-2:9ohm/9.3ohm,3-6:9.1ohm/9.2ohm,4-5:9.6ohm/9.6ohm,7-8:9.5ohm/9.4ohm',
        'positive=3-6,4-5',
        'psePairResistance=0.3ohm',
        'pdPairResistance=1-2:0.2ohm,3-6:0.2ohm,4-5:0.3ohm,7-8:0.2ohm',
      ],
      'I_pair =',
    ],
    [['loadedVoltage', 'openVoltage=24V', 'loadedVoltage=21.6V', 'loadCurrent=0.5A', 'minimumVoltage=18V'], 'P_left = 11.7 W'],
    [
      ['loadedVoltage', 'openVoltage=24V', 'loadedVoltage=23.9V', 'loadCurrent=500mA', 'voltageFixed=0.1V', 'currentFraction=1%'],
      'R = 0.2 Ω',
    ],
    [['expectedReading', 'installed=cat5e:90m:35degC', 'connections=2'], 'R_2 = 16.85 Ω'],
    [
      ['expectedReading', 'installed=cat6:60m:35degC', 'cords=cord-26:5m', 'connections=4', 'linkConnections=2', 'temperatureSpread=5K'],
      'R_2 =',
    ],
    [['fromMeasurement', 'pairs=1-2:14.1ohm', 'cable=cat5e', 'scope=cable'], 'L_h = 87.20 m'],
    [
      ['fromMeasurement', 'pairs=1-2:14.6ohm,3-6:open', 'leadResistance=0.5ohm', 'temperature=35degC', 'scope=permanent-link'],
      'R_four20 = ',
    ],
    [
      [
        'fromMeasurement',
        'pairs=1-2:14.1ohm,3-6:14.2ohm,4-5:14.2ohm,7-8:14ohm',
        'cable=cat6',
        'scope=channel',
        'cords=cord-26:3m',
        'connections=2',
        'connectionResistance=0.1ohm',
        'accuracyFraction=1%',
        'accuracyFixed=0.1ohm',
      ],
      'L_h =',
    ],
    [['switchBudget', 'capacity=60W', 'basis=calculated', 'ports=2x4:13W:8.44ohm,1x3'], 'P_all ='],
    [['switchBudget', 'capacity=60W', 'basis=requested', 'ports=2x4:13W'], 'P_all ='],
    [['switchBudget', 'capacity=60W', 'basis=measured', 'ports=2x4:11.2W'], 'P_all = 22.4 W'],
    [['uniformWire', 'resistivity=0.0172 Ω·mm²/m', 'length=20m', 'area=3.31mm2'], 'R = 0.1039 Ω'],
    [['ampacity', 'code=NEC 2017', 'gauge=23', 'bundle=7'], 'I_max = 1.2 A'],
    [['ampacity', 'code=NEC 2017', 'gauge=24', 'bundle=37', 'temperatureRating=60degC', 'halfLoaded=yes'], 'I_max = 0.84 A'],
    [['filmCoefficient', 'diameter=60mm', 'surfaceTemperature=55degC', 'ambient=45degC'], 'h = 10.85 W/(m²·K)'],
    [['bundleRise', 'cable=cat5e', 'bundle=100', 'pairCurrent=600mA', 'ambient=23degC', 'installation=open-air'], 'theta_m = 6.933 K'],
    [['bundleRise', 'cable=cat6', 'bundle=50', 'pairCurrent=0.6A', 'filmCoefficient=4', 'thermalResistivity=8'], 'theta_m ='],
    [['remotePowering', 'conductorCurrents=3x300mA,0A'], 'I_mean = 0.225 A'],
    [['resistanceAtTemperature', 'resistance=10ohm', 'temperature=20degC', 'coefficient=0.004', 'at=100degC'], 'R_2 = 13.2 Ω'],
  ])('%j', async (argv, words) => {
    const { code, out, complaints } = await run(...argv);
    expect(complaints).toBe('');
    // Whether the figure was rounded to be shown is another test; a line may be broken.
    expect(out.replaceAll(/\s+/g, ' ').replaceAll(' ≈ ', ' = ')).toContain(words);
    expect(code).toBe(0);
  });

  test('a result that was rounded to be shown says so, and so does a given', async () => {
    expect((await run('awg', 'size=24')).out).toMatch(/^Result .*: r_20 ≈ 0\.08422 Ω\/m$/m);
    expect((await run('operatingPoint', 'supplyVoltage=50V', 'resistance=12.5ohm', 'power=25.5W')).out).toMatch(
      /^Result .*: V_L = 42\.5 V$/m,
    );
    expect((await run('loopResistance', 'conductor=24awg', 'length=100m')).out).toMatch(/^ {2}r_20 +≈ 0\.0842151 Ω\/m/m);
  });

  test('a page that rounds says that no line does', async () => {
    expect((await run('awg', 'size=24')).out).toContain('Figures are shown to four digits, but each line is worked with all of them');
    expect((await run('operatingPoint', 'supplyVoltage=50V', 'resistance=12.5ohm', 'power=25.5W')).out).not.toContain('four digits');
  });

  test.each([
    '0.0172ohm.mm2/m',
    '17.2 nΩ·m',
    '17.2nohm.m',
    '1.72e-8 ohm m',
    '0.0172 µohm m',
    '1.72 µΩ·cm',
    '1.72 uohm cm',
    '0.0172 ohm*mm^2/m',
  ])('a resistivity of %s is 0.0172 Ω·mm²/m', async (typed) => {
    const { out } = await run('uniformWire', `resistivity=${typed}`, 'length=20m', 'area=3.31mm2');
    expect(out).toContain('rho = 0.0172 Ω·mm²/m');
  });

  test.each(Object.entries(sheets).flatMap(([name, { needs = [] }]) => needs.map((keys) => [name as WorkingName, keys] as const)))(
    '%s says that it needs %s, by the name of the key',
    async (name, keys) => {
      const { code, complaints } = await run(name);
      expect(code).toBe(2);
      expect(complaints).toContain(`${sheets[name].needs?.[0]?.split('|')[0]}: expected`);
      for (const key of keys.split('|')) expect(keysOf(name)).toContain(key);
    },
  );

  test.each([
    ['stranding', ['awg', 'size=24']],
    ['family', ['awg', 'size=24']],
    ['material', ['awg', 'size=24']],
    ['fn', ['bounds']],
    ['scope', ['fromMeasurement', 'pairs=1-2:14ohm']],
    ['basis', ['runResistance', 'segments=cat5e:9m']],
    ['basis of switchBudget', ['switchBudget', 'capacity=60W', 'ports=2x4']],
    ['policy', ['switchBudget', 'capacity=60W', 'ports=2x4']],
    ['loop', ['maximumRun', 'cable=cat5e', 'poeClass=4', 'maximumResistance=9ohm']],
    ['cabling', ['maximumRun', 'cable=cat5e', 'poeClass=4']],
    ['kind', ['highestLoad', 'supplyVoltage=24V', 'conductor=18awg', 'length=60m']],
    ['code', ['ampacity', 'gauge=23', 'bundle=7']],
    ['installation', ['bundleRise', 'cable=cat6', 'bundle=50', 'pairCurrent=0.6A']],
    ['halfLoaded', ['ampacity', 'code=NEC 2017', 'gauge=23', 'bundle=7']],
  ])('the list has the words of %s, which are those that are read', async (key, argv) => {
    const { complaints } = await run(...argv, `${key.split(' ')[0]}=neither of them`);
    const words = WORDS[key] ?? [];
    expect(words.length).toBeGreaterThan(0);
    for (const word of words) expect(complaints.replaceAll(/['"]/g, '')).toContain(word);
    expect((await run('--list')).out.replaceAll(/\s+/g, ' ')).toContain(`${key}: ${words.join(', ')}`);
  });

  test('in every format', async () => {
    const argv = ['awg', 'size=24'];
    expect((await run(...argv, '--format', 'markdown')).out).toContain('\\begin{aligned}');
    expect((await run(...argv, '--format=latex')).out).toContain('\\begin{align*}');
    expect(JSON.parse((await run(...argv, '--format', 'json')).out)).toEqual(showWorking('awg', { size: 24 }));
  });

  test('a physical no is 1', async () => {
    const { code, out } = await run('operatingPoint', 'supplyVoltage=50V', 'resistance=12.5ohm', 'power=60W');
    expect(code).toBe(1);
    expect(out).toContain('No: the line cannot carry the load');
  });

  test('the list names every calculation, within 80 columns', async () => {
    const { code, out } = await run('--list');
    expect(code).toBe(0);
    for (const name of Object.keys(sheets)) expect(out).toMatch(new RegExp(`^${name}$`, 'm'));
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    expect((await run('--help')).out).toContain('farend work NAME key=value');
  });

  test.each([
    [[], 'say what to work'],
    [['ohmsLaw'], 'there is no calculation "ohmsLaw"'],
    [['constructor'], 'there is no calculation "constructor"'],
    [['awg', 'size=24', '--colour'], 'there is no option --colour'],
    [['awg', 'size=24', '--format', 'pdf'], '--format is text, markdown, latex or json, not "pdf"'],
    [['awg', 'length=3m'], 'length: expected a key and its value'],
    [['awg', 'size'], 'size: expected a key and its value'],
    [['awg', 'size=41'], 'size: expected a whole number from -3 to 40'],
    [['loopResistance', 'conductor=24awg'], 'length: expected'],
    // Feet or metres: what does not say is not guessed.
    [['loopResistance', 'conductor=24awg', 'length=212'], 'length: expected a figure with its unit, such as 212ft'],
    [['filmCoefficient', 'diameter=60', 'surfaceTemperature=55degC', 'ambient=45degC'], 'diameter: expected a figure with its unit'],
    [['runResistance', 'segments=cat5e:90'], 'segments: expected a figure with its unit'],
    [['loopResistance', 'conductor=24awg', 'length=13ohm'], 'length: expected a length'],
    [['loopResistance', 'conductor=thick', 'length=1m'], 'conductor: expected a conductor'],
    [['runResistance', 'segments=cat9:1m'], 'segments: expected'],
    [['runResistance', 'segments=cat5e'], 'segments: expected pieces of cable'],
    [['switchBudget', 'capacity=370W', 'ports=many'], 'ports: expected ports and their classes'],
    [['solveNetwork', 'supplies=rack', 'sections=rack:left:2ohm', 'taps=left:5W'], 'supplies: expected supplies and their voltages'],
    [['solveNetwork', 'supplies=rack:24V', 'sections=rack:left', 'taps=left:5W'], 'sections: expected sections'],
    [['solveNetwork', 'supplies=rack:24V', 'sections=rack:left:2ohm', 'taps=left:5kg'], 'taps: expected taps and what they draw'],
    [['ampacity', 'code=NEC 2017', 'gauge=23', 'bundle=7', 'halfLoaded=maybe'], 'halfLoaded: expected yes or no'],
    [['bundleRise', 'installation=open-air', 'filmCoefficient=4'], 'filmCoefficient: expected no other word about the installation'],
    [['bundleRise', 'filmCoefficient=4', 'installation=open-air'], 'installation: expected no other word about the installation'],
    [['remotePowering', 'conductorCurrents=99999x0.3A'], 'conductorCurrents: expected currents'],
    [['bounds', 'fn=operatingPoint', 'supplyVoltage=1V..2V..3V'], 'supplyVoltage: expected a figure, or two'],
    [['unbalance', 'pairs=all'], 'pairs: expected pairs by their pins'],
    [['operatingPoint', 'supplyVoltage=1V..2V..3V'], 'supplyVoltage: expected a voltage'],
    [['powerAtPd', 'poeClass=4', 'resistance=8ohm', 'pseVoltage=44V..57V'], 'pseVoltage: expected a voltage: one here, not a range'],
    [['psePowerFor', 'poeClass=4', 'pseVoltage=44V..50V..57V'], 'pseVoltage: expected a voltage, or two with .. between them'],
    [['powerAtPd', 'poeClass=4', 'resistance=8ohm', 'connections=2'], 'connections: expected a run= that has them'],
    [['powerAtPd', 'poeClass=4', 'resistance=8ohm', 'run=cat5e:9m'], 'run: expected either run= or resistance='],
    [['uniformWire', 'resistivity=1.7241e-8', 'length=1m', 'area=1mm2'], 'resistivity: expected a resistivity with its unit'],
    [['uniformWire', 'resistivity=17ohm', 'length=1m', 'area=1mm2'], 'resistivity: expected a resistivity with its unit'],
    [
      ['resistanceAtTemperature', 'resistance=10ohm', 'temperature=20degC', 'at=100degC'],
      'coefficient: expected a value, which resistanceAtTemperature needs, 0.00393 for copper',
    ],
    [['operatingPoint', 'supplyVoltage=24V', 'resistance=1ohm'], 'power: expected one of power=, current=, loadResistance='],
  ])('%j is refused in plain words', async (argv, words) => {
    const { code, out, complaints } = await run(...argv);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(complaints).toContain(words);
    expect(complaints).not.toMatch(/\n {4}at /);
  });
});
