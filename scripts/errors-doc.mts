/** Writes docs/errors.md from the words of the library: `npx tsx scripts/errors-doc.mts`. @module */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ERROR_WORDS } from '../src/words/error-words.ts';
import { FINDING_WORDS } from '../src/words/finding-words.ts';

const PAGE = fileURLToPath(new URL('../docs/errors.md', import.meta.url));

/** The whole page. */
export function errorsPage(): string {
  return `# Errors

<!-- Written by scripts/errors-doc.mts from error-words.ts and finding-words.ts in src/words: change those, not this page. -->

A wrong input throws an \`InputError\`, a \`RangeError\` with fields: \`code\`, \`parameter\` (the path of what is wrong, as in
\`installed[1].length\`), \`expected\`, \`received\`, and a \`message\` that says it all. A load that a line cannot carry, or a limit
that no length meets, is an answer and throws nothing. A bad cell of a schedule throws nothing either: it is a
[finding](#findings).

## Wrong input

${listed(ERROR_WORDS)}

\`\`\`ts
import { awg, isInputError } from 'farend';

let told: readonly string[] = [];
try {
  awg(41);
} catch (error) {
  if (isInputError(error)) told = [error.code, error.parameter, error.message];
}
told; // => ['range', 'size', "size: expected a whole number from -3 to 40, or '1/0' to '4/0', received 41"]
\`\`\`

\`isInputError\` also knows an error of another copy of the library, and one that went through JSON;
\`InputError.fromJSON\` makes an error of it again.

## Findings

A schedule keeps every row: a bad cell is a finding, with its file, line and column, what was \`received\` and what is \`allowed\`.
Its severity is \`error\` (could not be used), \`warning\` (used, but doubtful) or \`note\`.

${listed(FINDING_WORDS)}
`;
}

function listed(words: Readonly<Record<string, { readonly cause: string; readonly cure: string }>>): string {
  return Object.entries(words)
    .map(([code, { cause, cure }]) => `- \`${code}\`: ${cause}. To put it right, ${cure}.`)
    .join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(PAGE, errorsPage());
