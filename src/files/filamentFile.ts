/** Reading a file of filaments of the user's own: one JSON document that carries one or several whole rows. */
import * as v from 'valibot';
import type { OwnFilament } from '../core/material/types.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { filamentDocumentShape } from './filamentShape.ts';
import { readFilaments } from './filaments.ts';
import { readDocument, textOf } from './jsonDocument.ts';
import { FILAMENT_FORMAT, FILAMENT_VERSION, MAX_PART_BYTES } from './limits.ts';
import { capped, ignoredFields, shapeProblem } from './shape.ts';

const KIND = {
  format: FILAMENT_FORMAT,
  noun: 'file of filaments',
  newest: FILAMENT_VERSION,
  maxBytes: MAX_PART_BYTES,
  smaller: 'holds too many tallies; put fewer filaments into one file',
} as const;

/**
 * Filaments from the text of a file, checked in this order: can it be read, is it ours, is it too new, is its shape
 * right, can the figures be. Never throws, whatever the text.
 *
 * Problems: `too-large`, `unreadable`, `not-our-file`, `newer-version`, `missing-field`, `wrong-type`, `not-one-of`, and
 * those of `readFilaments`. Repairs and fields that are not known come back as notes.
 *
 * @param text - what the file holds
 */
export function readFilamentFile(text: string): Result<readonly OwnFilament[]> {
  const document = readDocument(text, KIND);
  if (!document.ok) return document;
  const shape = v.safeParse(filamentDocumentShape, document.value);
  if (!shape.success) return failWith(shape.issues.map(shapeProblem));
  const { filaments } = shape.output;
  const read = readFilaments(filaments);
  if (!read.ok) return failWith(read.problems);
  const strangers = ignoredFields(document.value, { format: 0, version: 0, filaments });
  return ok(read.value, capped([...strangers, ...read.notes]));
}

/** The same from bytes: UTF-8, with or without its mark. */
export function readFilamentBytes(bytes: Uint8Array): Result<readonly OwnFilament[]> {
  const text = textOf(bytes, KIND);
  return text.ok ? readFilamentFile(text.value) : text;
}

/**
 * Whether the head of a file says that it holds filaments; the reader of parts is asked about any other.
 *
 * @param bytes - the file
 */
export function saysFilaments(bytes: Uint8Array): boolean {
  const head = new TextDecoder().decode(bytes.slice(0, 400));
  return head.includes(`"${FILAMENT_FORMAT}"`);
}

function failWith<T>(problems: readonly Problem[]): Result<T> {
  return failIfAny(capped(problems)) ?? fail({ code: 'unreadable', message: 'The file cannot be read' });
}
