/** From the bytes of a file to text, or why there is none. @module */

/** What a file holds. */
export interface FileText {
  /** Line ends made alike, byte-order mark removed; absent where the file is not text. */
  readonly text?: string;
  /** Why it is not text, or that it is not in the expected encoding. */
  readonly trouble?: string;
}

/**
 * Reads UTF-8, with or without byte-order mark; Windows-1252 where it is not UTF-8, and says so.
 *
 * UTF-16 and anything with NUL in its first line, or with many of them, is no text.
 * @internal
 */
export function textOfFile(content: string | Uint8Array): FileText {
  const decoded = typeof content === 'string' ? { text: content } : decode(content);
  const { text, trouble } = decoded as FileText;
  if (text === undefined) return decoded;
  const plain = alikeLineEnds(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  if (plain.charCodeAt(0) === 0xfffe || isBinary(plain)) return { trouble: 'it is not a text file; save the table as CSV in UTF-8' };
  return trouble === undefined ? { text: plain } : { text: plain, trouble };
}

function decode(bytes: Uint8Array): FileText {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    return { trouble: 'it is text in UTF-16; save the table as CSV in UTF-8' };
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    try {
      const text = new TextDecoder('windows-1252').decode(bytes);
      return { text, trouble: 'it is not in UTF-8; read as Windows-1252, so look at signs such as ° and Ω' };
    } catch {
      return { trouble: 'its text cannot be read; save the table as CSV in UTF-8' };
    }
  }
}

/** Every line end as `\n`, also where they are mixed. */
function alikeLineEnds(text: string): string {
  return text.includes('\r') ? text.replaceAll('\r\n', '\n').replaceAll('\r', '\n') : text;
}

/** One stray NUL costs its own cell; NUL in the first line, or several and in one character of a hundred, is no text. */
function isBinary(text: string): boolean {
  let at = text.indexOf('\0');
  if (at < 0) return false;
  const firstLineEnd = text.indexOf('\n');
  if (firstLineEnd < 0 || at < firstLineEnd) return true;
  let count = 0;
  for (; at >= 0; at = text.indexOf('\0', at + 1)) count++;
  return count > 1 && count * 100 > text.length;
}
