/** Tables of separated values: RFC 4180, and what programs of several countries make of it. */
import { fail, ok, type Result } from '../../core/result.ts';
import { MAX_TABLE_BYTES } from '../limits.ts';

export const SEPARATORS = [',', ';', '\t'] as const;
export type Separator = (typeof SEPARATORS)[number];

/** One row of a table, with the line of the text on which it begins, from 1. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** A quotation mark in it is never closed, so that the rest of the text stands in its last cell. */
  readonly isOpen: boolean;
}

/**
 * Text from the bytes of a table: UTF-8, UTF-16 with its mark, or what spreadsheets in Windows call ANSI.
 *
 * Problems: `too-large`.
 *
 * @param given - the file, or its text as somebody has read it already
 * @returns the text without its mark
 */
export function csvText(given: string | Uint8Array): Result<string> {
  if (given.length > MAX_TABLE_BYTES) {
    const message = `The table holds ${given.length} characters, at most ${MAX_TABLE_BYTES} are read; take a part of it`;
    return fail({ code: 'too-large', message, value: given.length, limit: MAX_TABLE_BYTES });
  }
  return ok((typeof given === 'string' ? given : decoded(given)).replace(/^\uFEFF/, ''));
}

function decoded(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** A cell from its first character to the separator or line end after it. */
interface Cell {
  readonly text: string;
  readonly end: number;
  readonly isOpen?: true;
}

function quotedCell(text: string, from: number, separator: Separator): Cell {
  let [said, at] = ['', from + 1];
  for (;;) {
    const close = text.indexOf('"', at);
    if (close < 0) return { text: said + text.slice(at), end: text.length, isOpen: true };
    said += text.slice(at, close);
    if (text[close + 1] !== '"') {
      const rest = plainCell(text, close + 1, separator);
      return { text: said + rest.text, end: rest.end };
    }
    said += '"';
    at = close + 2;
  }
}

function plainCell(text: string, from: number, separator: Separator): Cell {
  let end = from;
  while (end < text.length && text[end] !== separator && text[end] !== '\n' && text[end] !== '\r') end += 1;
  return { text: text.slice(from, end), end };
}

function lineEnds(text: string): number {
  return text.match(/\r\n|\r|\n/g)?.length ?? 0;
}

/**
 * The rows of a table; those without anything in them are left out. Never throws, whatever the text.
 *
 * @param text - the whole table; lines may end in CR, LF or both
 * @param separator - what stands between two cells
 * @returns rows with their cells as they stand between separators, quotes taken away
 */
export function readRows(text: string, separator: Separator): readonly CsvRow[] {
  const rows: CsvRow[] = [];
  let [at, line] = [0, 1];
  while (at < text.length) {
    const cells: string[] = [];
    let isOpen = false;
    const begins = at;
    for (;;) {
      const cell = text[at] === '"' ? quotedCell(text, at, separator) : plainCell(text, at, separator);
      cells.push(cell.text);
      isOpen ||= cell.isOpen ?? false;
      at = cell.end;
      if (text[at] !== separator) break;
      at += 1;
    }
    if (text[at] === '\r' && text[at + 1] === '\n') at += 1;
    at += 1;
    if (cells.some((cell) => cell.trim() !== '')) rows.push({ line, cells, isOpen });
    line += lineEnds(text.slice(begins, at));
  }
  return rows;
}

/** A cell as it is written: in quotes where anything in it could be taken for the end of it. */
function written(cell: string): string {
  return /[",;\t\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/**
 * A table as text, commas between cells, for spreadsheets with the mark that tells them its letters.
 *
 * @param rows - cells as they shall read back
 * @returns text, every line of which ends in CR LF
 */
export function writeRows(rows: readonly (readonly string[])[]): string {
  return `\uFEFF${rows.map((cells) => `${cells.map(written).join(',')}\r\n`).join('')}`;
}

/** What a spreadsheet would work out, or what would be taken for the sign against it. */
const WORKED_OUT = /^\s*[=+\-@']/;

/** Words as a cell that no spreadsheet takes for a formula. */
export function guarded(text: string): string {
  return WORKED_OUT.test(text) ? `'${text}` : text;
}

/** The words of such a cell. */
export function unguarded(cell: string): string {
  return cell.startsWith("'") && WORKED_OUT.test(cell.slice(1)) ? cell.slice(1) : cell;
}

const FIGURE = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
/** Between thousands: a space of any width. */
const SPACED = /(?<=\d)[ \u00A0\u2009\u202F](?=\d{3}(?:\D|$))/g;

/**
 * The number in a cell, with a decimal comma only where commas do not stand between cells.
 *
 * @param cell - any text
 * @param separator - of the table
 * @returns a finite number, or `undefined` where the cell holds anything else
 */
export function figureOf(cell: string, separator: Separator): number | undefined {
  const plain = cell.trim().replaceAll('\u2212', '-').replaceAll(SPACED, '');
  const pointed = separator === ',' || plain.includes('.') ? plain : plain.replace(',', '.');
  if (!FIGURE.test(pointed)) return undefined;
  const value = Number(pointed);
  return Number.isFinite(value) ? value : undefined;
}
