/** Text broken into lines. @module */

/** Columns of the page. */
export const WIDTH = 80;

/** A text broken at its spaces, but not between a number and its unit. @internal */
export function wrapped(text: string, first: string, next: string): string[] {
  const words = text.replaceAll(/(\d) (?=[^\s\d+\-*/·,()=≈])/g, '$1\u00a0').split(' ');
  const lines: string[] = [];
  let line = first;
  let isEmpty = true;
  for (const word of words) {
    if (!isEmpty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = next;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  lines.push(line);
  return lines;
}
