/** Whether a file is a toolpath, told from how it begins. */
import type { Problem } from '../../core/problems.ts';

/** How files of other kinds begin. Source: their published forms, from memory. */
const BEGINNINGS: readonly (readonly [string, string])[] = [
  ['GCDE', 'binary G-code; export it as text'],
  ['PK', 'a zip archive; unpack it first'],
  ['\u001F\u008B', 'a gzip archive; unpack it first'],
  ['\u0089PNG', 'a PNG picture'],
  ['\u00FF\u00D8\u00FF', 'a JPEG picture'],
  ['%PDF', 'a PDF document'],
  ['solid ', 'an STL part; drop it on the page to check it as a part'],
];

/** A line that a printer understands, or a comment. */
const LINE = /^\s*\/?(?:n\d+\s*)?(?:[gmt]\s*\d|[xyzef]\s*[-+.\d]|[;(%]|[a-z]{2,}\w*(?:\s|$))/i;
const A_WORD = /^\s*\/?(?:n\d+\s*)?(?:[gm]\s*\d|[xyz]\s*[-+.\d])/i;
const COMMENT = /^\s*[;(%]/;
/** Text enough to tell by [characters]. */
const LOOKED = 65_536;

const isControl = (code: number) => code < 32 && !(code >= 9 && code <= 13) && code !== 26 && code !== 27;

/** Lines of text, single bytes or not. */
function linesOf(head: Uint8Array): readonly string[] {
  const text = new TextDecoder('latin1').decode(head.subarray(0, LOOKED)).replaceAll('\0', '');
  return text.replace(/^(?:ï»¿|ÿþ|þÿ)/, '').split(/\r\n|\r|\n/);
}

/** Control characters are in no text, but for the zeros of wide ones. */
function isText(head: Uint8Array): boolean {
  const isWide = (head[0] === 0xff && head[1] === 0xfe) || (head[0] === 0xfe && head[1] === 0xff);
  return isWide || !head.subarray(0, 4096).some(isControl);
}

/**
 * Whether a file reads like G-code.
 *
 * @param head - its first bytes, some thousands of them
 */
export function saysGcode(head: Uint8Array): boolean {
  if (!isText(head)) return false;
  const lines = linesOf(head).filter((line) => line.trim() !== '');
  const good = lines.filter((line) => LINE.test(line)).length;
  return lines.some((line) => A_WORD.test(line)) && good >= 0.5 * lines.length;
}

/**
 * What a file is, where it is no G-code.
 *
 * @param head - its first bytes
 * @param size - of the whole file [bytes]
 */
export function notGcode(head: Uint8Array, size: number): Problem | undefined {
  if (size === 0) return { code: 'unreadable', message: 'The file is empty; export it again' };
  const begins = new TextDecoder('latin1').decode(head.subarray(0, 8));
  const foreign = BEGINNINGS.find(([start]) => begins.startsWith(start));
  if (foreign) return { code: 'not-our-file', message: `The file looks like ${foreign[1]}` };
  if (saysGcode(head) || isHeadOfComments(head)) return undefined;
  return {
    code: 'not-our-file',
    message:
      'The file does not read like G-code: no line of its beginning asks for a move; choose the file that goes to the printer',
  };
}

/** Long heads of comments come before the first words of some; the last line that is looked at is cut off. */
function isHeadOfComments(head: Uint8Array): boolean {
  const lines = linesOf(head).filter((line) => line.trim() !== '');
  const whole = lines.slice(0, -1);
  return isText(head) && whole.length > 0 && whole.every((line) => COMMENT.test(line));
}
