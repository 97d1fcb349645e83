/** The outside of our JSON files: bytes to text, text to a document that is ours and not too new. */
import type { Problem } from '../core/problems.ts';
import { fail, ok, type Result } from '../core/result.ts';
import type { Document } from './partMigrations.ts';
import { brief, isObject, shown } from './shape.ts';

/** What one kind of file is. */
interface FileKind {
  /** Tag at its head. */
  readonly format: string;
  /** What it is called in a sentence. */
  readonly noun: string;
  /** Newest version that can be read. */
  readonly newest: number;
  readonly maxBytes: number;
  /** What would help where one of them is too large. */
  readonly smaller?: string;
}

/** Text from bytes of UTF-8, with or without its mark. */
export function textOf(bytes: Uint8Array, kind: FileKind): Result<string> {
  if (bytes.length > kind.maxBytes) return tooLarge(bytes.length, kind);
  const [first, second] = bytes;
  const marked = (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
  // JSON opens with a plain character, so an empty byte among the first two can only be half of a wide one.
  if (marked || (bytes.length > 1 && (first === 0 || second === 0))) {
    return fail({ code: 'unreadable', message: 'The file is UTF-16 text or not text at all; save it as UTF-8' });
  }
  try {
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return fail({ code: 'unreadable', message: 'The file is not UTF-8 text; it may be damaged or of another kind' });
  }
}

function tooLarge<T>(size: number, { noun, maxBytes, smaller }: FileKind): Result<T> {
  const help = smaller ?? 'holds far more than one';
  const message = `The file holds ${size} bytes, a ${noun} at most ${maxBytes}; it is not a ${noun} or ${help}`;
  return fail({ code: 'too-large', message, value: size, limit: maxBytes });
}

/** The document when it is ours and not too new; nothing below its header has been judged. */
export function readDocument(text: string, kind: FileKind): Result<Document> {
  if (text.length > kind.maxBytes) return tooLarge(text.length, kind);
  const parsed = parse(text);
  if (!parsed.ok) return parsed;
  const document = parsed.value;
  if (!isObject(document) || document['format'] !== kind.format) {
    const format = isObject(document) ? document['format'] : document;
    const message = `The file is JSON but not a ${kind.noun}: its format is ${shown(format)}, expected “${kind.format}”`;
    return fail({ code: 'not-our-file', message, field: 'format', value: brief(format), limit: kind.format });
  }
  const version = judgeVersion(document['version'], kind.newest);
  return version ? fail(version) : ok(document);
}

function parse(text: string): Result<unknown> {
  if (text.trim() === '') return fail({ code: 'unreadable', message: 'The file is empty' });
  try {
    return ok(JSON.parse(text.replace(/^\uFEFF/, '')) as unknown);
  } catch (error) {
    const reason = error instanceof Error ? error.message.replaceAll(/\s+/g, ' ').slice(0, 120) : 'unknown reason';
    return fail({ code: 'unreadable', message: `The file is not JSON: ${reason}` });
  }
}

function judgeVersion(version: unknown, newest: number): Problem | undefined {
  const field = 'version';
  if (version === undefined) {
    return { code: 'missing-field', message: 'version is missing, expected a whole number', field };
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    const message = `version is ${shown(version)}, expected a whole number from 1`;
    return { code: 'wrong-type', message, field, value: brief(version) };
  }
  if (version > newest) {
    const message = `The file is version ${version}, made by a newer Bendbook; this one reads up to ${newest} and leaves it untouched`;
    return { code: 'newer-version', message, field, value: version, limit: newest };
  }
  return undefined;
}
