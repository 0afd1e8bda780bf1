/** Writes docs/homework.md by working its problems: `npx tsx scripts/homework-doc.mts`. @module */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as farend from '../src/index.ts';
import { type AnswerReview, reviewAnswer, showWorking, type Working, workingMarkdown } from '../src/working/index.ts';

const PAGE = fileURLToPath(new URL('../docs/homework.md', import.meta.url));

/** One problem. */
interface Problem {
  readonly title: string;
  readonly story: string;
  readonly think: string;
  /** Names of the library that the code uses. */
  readonly imports: readonly string[];
  /** Lines before the question is put, if it needs any. */
  readonly before?: readonly string[];
  /** What is worked before it, of those lines. */
  readonly first?: readonly [name: string, input: string];
  /** The question as code, and as the page works it. */
  readonly name: string;
  readonly input: string;
  /** What a pupil handed in. */
  readonly answers: readonly (readonly [answer: string, of?: string])[];
}

const PROBLEMS: readonly Problem[] = [
  {
    title: 'What is in a number like 24 AWG?',
    story:
      'The drum of cable in the workshop of the Tidemill Playhouse says 24 AWG. How thick is one of its wires, what is its area, and what is the resistance of one metre of it at 20 °C?',
    think:
      'A gauge is a ladder: 36 AWG is 0.127 mm across, 4/0 is 92 times that, and 39 equal steps lie between. From the diameter comes the area of a disc, from the area the resistance.',
    imports: [],
    name: 'awg',
    input: '{ size: 24 }',
    answers: [['84.2 mohm/m'], ['0.511 mm', 'diameter'], ['0.205 mm2', 'area'], ['21.1 mohm/m']],
  },
  {
    title: 'The ghost light',
    story:
      'A single lamp burns on the stage at night. Its feed is 35 m of copper, 1.5 mm², out, and the same back: 70 m of wire. Copper has 0.017241 Ω·mm²/m at 20 °C. What is the resistance of the wire?',
    think: 'Twice as long is twice the resistance; twice the area is half of it. Mind which length: the current goes out and comes back.',
    imports: [],
    name: 'uniformWire',
    input: '{ resistivity: 0.017241, length: 70, area: 1.5 }',
    answers: [['0.80 ohm'], ['0.402 ohm'], ['2.64 ohm']],
  },
  {
    title: 'Warm wire',
    story:
      'The same 24 AWG lies in the roof void above the grid, where the wire reaches 55 °C in August. What is the resistance of one metre there?',
    think: 'Copper gains 0.393 % of its 20 °C resistance for each kelvin above 20 °C. Only the difference of two temperatures enters.',
    imports: ['awg'],
    name: 'resistancePerMetre',
    input: '{ conductor: awg(24), temperature: 55 }',
    answers: [['95.8 mohm/m'], ['84.2 mohm/m']],
  },
  {
    title: 'Out and back',
    story:
      'The prompt desk and the fly floor talk over one pair of that cable, 212 ft of it at 20 °C. What does a meter read with the pair shorted at the far end?',
    think: 'Feet first become metres. Then two wires in series: the length one way counts twice.',
    imports: ['awg', 'feet'],
    name: 'loopResistance',
    input: '{ conductor: awg(24), length: feet(212), temperature: 20 }',
    answers: [['10.9 ohm'], ['5.44 ohm'], ['35.7 ohm']],
  },
  {
    title: 'A cue light',
    story:
      'An LED cue light has a regulator of its own: it draws 6 W whatever its voltage. It hangs on 60 m of 18 AWG, at 30 °C, on a 24 V supply. How many volts are lost on the way?',
    think:
      'The current depends on the voltage at the lamp, and that on the current. V I = P + I² R is a quadratic in I; the smaller root is the one at which the lamp settles.',
    imports: ['awg'],
    name: 'voltageDrop',
    input: '{ supplyVoltage: 24, conductor: awg(18), length: 60, temperature: 30, load: { power: 6 } }',
    answers: [['0.67 V'], ['0.653 V'], ['0.331 V']],
  },
  {
    title: 'Why there are two roots',
    story:
      'The winch room is at the end of a line of 4 Ω on 24 V. A controller there draws 30 W. What is the most that this line could deliver, and what is the other root of the quadratic?',
    think:
      'More current brings more power only up to a point: at half the supply voltage half of it all is heat in the line. Beyond, the same power comes again at a lower voltage and a larger current; no load stays there.',
    imports: [],
    name: 'mostPower',
    input: '{ supplyVoltage: 24, resistance: 4, load: { power: 30 } }',
    answers: [['36 W'], ['144 W'], ['16.9 V', 'loadVoltage'], ['4.22 A', 'I_2']],
  },
  {
    title: 'One run, three resistances',
    story:
      'A run to the foyer is 58 m of Category 6 at 35 °C, a cord of 26 AWG of 5 m, and two connections. What are its pair loop, its one pairset and its two pairsets?',
    think:
      'First one wire, end to end: every piece at its own temperature, and every connection. A meter on a shorted pair sees two of it in series. Power over one pairset sees two side by side out, and two side by side back.',
    imports: ['cable'],
    name: 'runResistance',
    input: "{ segments: [{ cable: cable('cat6'), length: 58, temperature: 35 }, { cable: cable('cord-26'), length: 5 }], connections: 2 }",
    answers: [['13.7 ohm'], ['6.86 ohm'], ['13.7 ohm', 'twoPair']],
  },
  {
    title: 'A class 8 camera on a hot roof',
    story:
      'A camera of class 8 watches the tide mill from the roof: 82 m of Category 6A at 60 °C, a cord of 24 AWG of 6 m at 40 °C, four connections. The port is of Type 4. What power is available to it, and what is its voltage at full draw?',
    think:
      'All of the above at once: warm wire, the run as two pairsets, the quadratic of a constant power. The port may source 90 W; what the run turns to heat does not arrive. The class allows the camera 71.3 W, whatever arrives.',
    imports: ['cable', 'runResistance'],
    before: [
      'const pieces = {',
      "  segments: [{ cable: cable('cat6a'), length: 82, temperature: 60 }, { cable: cable('cord-24'), length: 6, temperature: 40 }],",
      '  connections: 4,',
      '};',
      'const run = runResistance(pieces);',
    ],
    first: ['runResistance', 'pieces'],
    name: 'powerAtPd',
    input: '{ poeClass: 8, pseType: 4, resistance: run }',
    answers: [['74.1 W'], ['90 W'], ['58.2 W'], ['71.3 W'], ['43.3 V', 'operating.loadVoltage'], ['8.74 V', 'operating.loadVoltage']],
  },
];

/** The whole page. */
export function homeworkPage(): string {
  return [
    '# Homework',
    '',
    '<!-- Written by scripts/homework-doc.mts, which works every problem anew: change that, not this page. -->',
    '',
    'Eight problems from the Tidemill Playhouse, an invented theatre, from one wire to a camera on a hot roof. Each is put to `farend/working`,',
    'which shows every line with its units and where the rule comes from; then a few answers are handed in and looked at. Every formula is',
    'in [formulas](formulas.md), every source in [sources](sources.md).',
    '',
    'This is arithmetic, not a licence: the local code and a licensed practitioner come first.',
    '',
    ...PROBLEMS.flatMap((problem, index) => problemLines(problem, index + 1)),
  ].join('\n');
}

function problemLines({ title, story, think, imports, before = [], first, name, input, answers }: Problem, number: number): string[] {
  const working = worked(name, input, before);
  const reviews = answers.map(([answer, of]) => [answer, of, reviewed(name, input, before, answer, of)] as const);
  return [
    `## ${number}. ${title}`,
    '',
    story,
    '',
    think,
    '',
    '```ts',
    ...(imports.length === 0 ? [] : [`import { ${imports.join(', ')} } from 'farend';`]),
    "import { showWorking } from 'farend/working';",
    '',
    ...(before.length === 0 ? [] : [...before, '']),
    `const working = showWorking('${name}', ${input});`,
    `working.result.shown; // => '${working.result.shown}'`,
    '```',
    '',
    ...(first === undefined ? [] : [...linesOf(worked(...first, before)), '']),
    ...linesOf(working),
    '',
    '**Answers handed in**',
    '',
    ...reviews.map(([answer, of, { message }]) => `- ${answer}${of === undefined ? '' : ` as \`${of}\``}: ${message}`),
    '',
  ];
}

function linesOf(working: Working): string[] {
  return workingMarkdown(working).trimEnd().split('\n');
}

/** What the code on the page gives: it is run as it stands there. */
function run<Result>(expression: string, before: readonly string[]): Result {
  const scope = { ...farend, showWorking, reviewAnswer };
  return new Function(...Object.keys(scope), `${before.join('\n')}\nreturn ${expression};`)(...Object.values(scope)) as Result;
}

function worked(name: string, input: string, before: readonly string[]): Working {
  return run(`showWorking('${name}', ${input})`, before);
}

function reviewed(name: string, input: string, before: readonly string[], answer: string, of: string | undefined): AnswerReview {
  return run(`reviewAnswer('${name}', ${input}, '${answer}', ${of === undefined ? '{}' : `{ of: '${of}' }`})`, before);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(PAGE, homeworkPage());
