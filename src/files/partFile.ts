/** Reading an exported part: one JSON document that carries every input of every joint and no result. */
import * as v from 'valibot';
import type { Part } from '../core/design/joint.ts';
import { withOnShelf } from '../core/material/shelf.ts';
import type { OwnFilament } from '../core/material/types.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { readFilaments } from './filaments.ts';
import { readJoints } from './joints.ts';
import { readDocument, textOf } from './jsonDocument.ts';
import { MAX_PART_BYTES, PART_FORMAT } from './limits.ts';
import { readName } from './names.ts';
import { MIGRATIONS, migrate, versionAfter, type Migration } from './partMigrations.ts';
import { documentShape } from './partShape.ts';
import { capped, ignoredFields, shapeProblem } from './shape.ts';

const KIND = {
  format: PART_FORMAT,
  noun: 'part',
  newest: versionAfter(MIGRATIONS),
  maxBytes: MAX_PART_BYTES,
  smaller: 'brings filaments with too many tallies; export those filaments one by one and remove tallies or filaments',
} as const;

export interface PartOnFile {
  readonly part: Part;
  /** The user's own that came with it; its joints name them by these keys. */
  readonly filaments: readonly OwnFilament[];
}

/**
 * A part from the text of a file, checked in this order: can it be read, is it ours, is it too new, is its shape
 * right, can its filaments be, does the core understand every joint. Never throws, whatever the text.
 *
 * Problems: `too-large`, `unreadable`, `not-our-file`, `newer-version`, `missing-field`, `wrong-type`, `not-one-of`,
 * those of `readFilaments`, and those of `understand` with the joint's place before the field. Repairs and cautions come back as notes.
 *
 * @param text - what the file holds
 * @param migrations - steps from older versions; the default is the released ones
 */
export function readPart(text: string, migrations: readonly Migration[] = MIGRATIONS): Result<PartOnFile> {
  return read(text, migrations, false);
}

/**
 * A part that this program kept for the user between visits. What the core refuses may have been left half-typed
 * and comes back as a note, because losing the part would be worse than showing it as it stood.
 *
 * @param text - what was kept
 */
export function readKeptPart(text: string): Result<PartOnFile> {
  return read(text, MIGRATIONS, true);
}

function read(text: string, migrations: readonly Migration[], tolerant: boolean): Result<PartOnFile> {
  const document = readDocument(text, { ...KIND, newest: versionAfter(migrations) });
  if (!document.ok) return document;
  const current = migrate(document.value, document.value['version'] as number, migrations);
  const shape = v.safeParse(documentShape, current);
  if (!shape.success) return failWith(shape.issues.map(shapeProblem));
  const { part } = shape.output;
  const filaments = readFilaments(shape.output.filaments);
  if (!filaments.ok) return failWith(filaments.problems);
  const joints = withOnShelf(filaments.value, () => readJoints(part.joints, tolerant));
  if (!joints.ok) return failWith(joints.problems);
  const { name, notes } = readName(part.name, 'name', 'Part');
  const strangers = ignoredFields(current, { ...shape.output, format: 0, version: 0, part: 0 });
  const ignored = ignoredFields(current['part'], part);
  const said = capped([...strangers, ...ignored, ...notes, ...filaments.notes, ...joints.notes]);
  return ok({ part: { name, invented: part.invented, joints: joints.value }, filaments: filaments.value }, said);
}

/** The same from bytes: UTF-8, with or without its mark. */
export function readPartBytes(bytes: Uint8Array): Result<PartOnFile> {
  const text = textOf(bytes, KIND);
  return text.ok ? readPart(text.value) : text;
}

function failWith<T>(problems: readonly Problem[]): Result<T> {
  return failIfAny(capped(problems)) ?? fail({ code: 'unreadable', message: 'The file cannot be read' });
}
