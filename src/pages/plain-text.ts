/** Text of unknown origin made fit for a terminal, and laid out in columns. @module */

const PRINTABLE_ASCII = /^[\x20-\x7e]*$/;
// Control characters and marks that turn the direction of text could rewrite what stands beside them.
const UNFIT = /[\p{Cc}\p{Zl}\p{Zp}\u200e\u200f\u202a-\u202e\u2066-\u2069]+/gu;
const WIDE =
  /[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u;
const NO_WIDTH = /[\p{Mn}\p{Me}\p{Cf}]/u;

/** The text on one line, without anything that a terminal would obey. @internal */
export function plain(text: string): string {
  return PRINTABLE_ASCII.test(text) ? text : text.replace(UNFIT, ' ');
}

/** Columns that a text takes on a terminal. @internal */
export function widthOf(text: string): number {
  if (PRINTABLE_ASCII.test(text)) return text.length;
  let width = 0;
  for (const character of text) width += widthOfOne(character);
  return width;
}

function widthOfOne(character: string): number {
  if (NO_WIDTH.test(character)) return 0;
  return WIDE.test(character) ? 2 : 1;
}

/** The text cut to a width, with a mark where it was cut. @internal */
export function cut(text: string, width: number): string {
  if (widthOf(text) <= width) return text;
  let kept = '';
  let room = width - 1;
  for (const character of text) {
    room -= widthOfOne(character);
    if (room < 0) break;
    kept += character;
  }
  return `${kept.trimEnd()}…`;
}

/** The text in a column, at its left. @internal */
export function left(text: string, width: number): string {
  const shown = cut(plain(text), width);
  return shown + ' '.repeat(width - widthOf(shown));
}

/** The text in a column, at its right; one that is too long is left whole. @internal */
export function right(text: string, width: number): string {
  const room = width - widthOf(text);
  return room > 0 ? ' '.repeat(room) + text : text;
}

// A number and its unit stay on one line.
const BETWEEN_WORDS = / (?!(?<=\d )(?:[mk]?Ω|[mk]?[VWA]|[mk]?m[²³]?|%|°[CF]|K|ft|AWG)(?![A-Za-z0-9]))/;

/** A sentence over as many lines as it takes; later lines begin with `indent`. @internal */
export function wrap(text: string, width: number, first: string = '', indent: string = first): string {
  if (first.length + text.length <= width && PRINTABLE_ASCII.test(text)) return first + text;
  const lines: string[] = [];
  let line = first;
  let used = widthOf(first);
  let empty = true;
  for (const word of plain(text).split(BETWEEN_WORDS)) {
    if (word === '') continue;
    for (const part of pieces(word, width - widthOf(indent))) {
      const length = widthOf(part);
      if (!empty && used + 1 + length > width) {
        lines.push(line);
        line = indent;
        used = widthOf(indent);
        empty = true;
      }
      line += empty ? part : ` ${part}`;
      used += length + (empty ? 0 : 1);
      empty = false;
    }
  }
  lines.push(line);
  return lines.join('\n');
}

/** A word that no line can hold, in pieces that one can. */
function pieces(word: string, width: number): string[] {
  if (widthOf(word) <= width) return [word];
  const parts: string[] = [''];
  let used = 0;
  for (const character of word) {
    const length = widthOfOne(character);
    if (used + length > width) {
      parts.push('');
      used = 0;
    }
    parts[parts.length - 1] += character;
    used += length;
  }
  return parts;
}
