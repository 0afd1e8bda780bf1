/** The command `farend work`: a calculation with every step shown. @module */
import { type Block, pageText } from '../pages/index.ts';
import { isInputError } from '../quantity/input-error.ts';
import { sheets, type WorkingInputs, type WorkingName } from './book/sheets.ts';
import { inputFrom } from './command-input.ts';
import { keysOf, WORDS } from './command-keys.ts';
import type { Working } from './engine/working.ts';
import { showWorking } from './show-working.ts';
import { workingLatex, workingMarkdown, workingText } from './working-page.ts';

/** Where the command writes. */
interface Screen {
  readonly print: (text: string) => void;
  readonly complain: (text: string) => void;
}

const HELP = `farend work: a calculation with every step shown

  farend work NAME key=value ... [--format FORMAT]
  farend work --list

Values carry their units, as in length=212ft or pdPower=12.95W. Conductors are
24awg, 18awg-stranded, 0.5mm2-class5 or 96ohm/km; pieces of cable are
cat5e:90m:40degC,cord-26:5m; a range of voltage is 21V..27.6V; a resistivity is
17.2nohm.m or 0.0172ohm.mm2/m; ports and their classes are 24x4,2x3. A network
is supplies=rack:24V sections=rack:left:2ohm,left:right:18awg:60m
taps=left:5W,right:200mA. For bounds any figure may be two, as in
resistance=8ohm..12ohm. Conductors of pairs are 1-2:9ohm/9.3ohm,3-6:9ohm/9.1ohm,
readings of pairs 1-2:14.1ohm,3-6:open.

Options
  --format FORMAT   text (default), markdown, latex or json
  --list            every calculation, the keys that it needs and may have,
                    and the words that a key takes
  --help, -h        this text

The exit code is 0 if there is an answer, 1 if the physics says no, 2 if the
question cannot be read.
`;

const RENDER: Readonly<Record<string, (working: Working) => string>> = {
  text: workingText,
  markdown: workingMarkdown,
  latex: workingLatex,
  json: (working) => `${JSON.stringify(working, undefined, 2)}\n`,
};

/**
 * Runs `farend work`.
 *
 * @param argv - Its arguments, without `work`.
 * @param screen - Where it writes.
 * @returns The exit code: 0 an answer, 1 a physical no, 2 a question that cannot be read.
 * @example
 * await work(['operatingPoint', 'supplyVoltage=24V', 'resistance=8ohm'], { print: () => undefined, complain: () => undefined }); // => 2
 */
export async function work(argv: readonly string[], screen: Screen): Promise<0 | 1 | 2> {
  const refuse = (message: string): 2 => {
    screen.complain(`farend: ${message}\nfarend work --help says more\n`);
    return 2;
  };
  const words: string[] = [];
  let format = 'text';
  for (let index = 0; index < argv.length; index++) {
    const word = argv[index] as string;
    if (word === '--help' || word === '-h') {
      screen.print(HELP);
      return 0;
    }
    if (word === '--list') {
      screen.print(list());
      return 0;
    }
    if (word === '--format') format = argv[++index] ?? '';
    else if (word.startsWith('--format=')) format = word.slice('--format='.length);
    else if (word.startsWith('-')) return refuse(`there is no option ${word}`);
    else words.push(word);
  }
  const [name, ...pairs] = words;
  if (name === undefined) return refuse('say what to work, as in: farend work awg size=24');
  if (!Object.hasOwn(sheets, name))
    return refuse(`there is no calculation ${JSON.stringify(name)}; farend work --list shows those there are`);
  if (!Object.hasOwn(RENDER, format)) return refuse(`--format is text, markdown, latex or json, not ${JSON.stringify(format)}`);
  try {
    const input = inputFrom(name as WorkingName, pairs) as unknown as WorkingInputs[WorkingName];
    const working = showWorking(name as WorkingName, input);
    screen.print((RENDER[format] as (working: Working) => string)(working));
    return working.feasible ? 0 : 1;
  } catch (error) {
    if (!isInputError(error)) throw error;
    return refuse(error.message);
  }
}

/** Every calculation, its title, its keys, and the words that keys take. */
function list(): string {
  const line = (text: string, hang: number): Block => ({ kind: 'paragraph', text, indent: 4, hang });
  const blocks = (Object.keys(sheets) as WorkingName[]).flatMap((name): Block[] => {
    const { title, needs = [] } = sheets[name];
    const among = needs.flatMap((one) => one.split('|'));
    const needed = needs.map((one) => (one.includes('|') ? `one of ${keyed(one.split('|'))}` : `${one}=`));
    const others = keysOf(name).filter((key) => !among.includes(key));
    return [
      { kind: 'paragraph', text: name },
      line(title, 0),
      ...(needed.length > 0 ? [line(`needs ${needed.join(', ')}`, 6)] : []),
      ...(others.length > 0 ? [line(`takes ${keyed(others)}`, 6)] : []),
    ];
  });
  const words = Object.entries(WORDS).map(([key, choice]) => line(`${key}: ${choice.join(', ')}`, 4));
  return pageText([
    { kind: 'group', blocks },
    { kind: 'group', blocks: [{ kind: 'paragraph', text: 'Words that a key takes' }, ...words] },
  ]);
}

function keyed(keys: readonly string[]): string {
  return keys.map((key) => `${key}=`).join(' ');
}
