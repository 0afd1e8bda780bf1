/** Text broken into lines. @module */

/** Columns of the page. */
export const WIDTH = 80;

/** A word in pieces that fit: a name of the caller's may be longer than the line. @internal */
export function cut(word: string, width: number): string[] {
  const letters = [...word];
  const pieces: string[] = [];
  for (let start = 0; start === 0 || start < letters.length; start += width) pieces.push(letters.slice(start, start + width).join(''));
  return pieces;
}

/** A text broken at its spaces, but not between a number and its unit. @internal */
export function wrapped(text: string, first: string, next: string): string[] {
  const words = text
    .replaceAll(/(\d) (?=[^\s\d+\-*/·,()=≈])/g, '$1\u00a0')
    .split(' ')
    .flatMap((word) => cut(word, WIDTH - next.length));
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
