/** Writing findings in plain words. @module */
import type { FindingCode } from '../../words/finding-words.ts';
import type { Finding, FindingSeverity } from '../finding.ts';

/** Where a finding is and what was read; `line` 0 and an empty `column` mean that there is none. */
export interface FindingFacts {
  readonly code: FindingCode;
  readonly severity: FindingSeverity;
  readonly line?: number | undefined;
  readonly column?: string | undefined;
  readonly received?: string | undefined;
  readonly allowed: string;
  readonly message: string;
}

/** The findings of one file. */
export interface FindingList {
  readonly file: string;
  readonly all: Finding[];
  readonly add: (facts: FindingFacts) => void;
}

/** An empty list for one file. @internal */
export function findingList(file: string): FindingList {
  const all: Finding[] = [];
  return { file, all, add };

  function add({ code, severity, line, column, received = '', allowed, message }: FindingFacts): void {
    // Four literals instead of spreads: a large file with empty cells has a note for each of them.
    if (line === undefined && column === undefined) all.push({ code, severity, file, received, allowed, message });
    else if (column === undefined) all.push({ code, severity, file, line: line as number, received, allowed, message });
    else if (line === undefined) all.push({ code, severity, file, column, received, allowed, message });
    else all.push({ code, severity, file, line, column, received, allowed, message });
  }
}

const PLAIN = /^[\x20-\x7e]{0,80}$/;
const LONGEST = 80;

/** A cell as a finding shows it: cut where it is long, control characters made visible. @internal */
export function shown(text: string): string {
  if (PLAIN.test(text)) return text;
  const visible = text.slice(0, 2 * LONGEST).replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]+/gu, '\ufffd');
  return text.length > LONGEST ? `${[...visible].slice(0, LONGEST - 1).join('')}…` : visible;
}

/** A list in words, cut where it is long. @internal */
export function listed(names: readonly string[]): string {
  const more = names.length > 8 ? ` and ${names.length - 8} more` : '';
  return `${names.slice(0, 8).join(', ')}${more}`;
}
