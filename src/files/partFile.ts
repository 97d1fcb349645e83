/** The exported part: one JSON document that carries every input of every joint and no result. */
import * as v from 'valibot';
import type { Joint, Part } from '../core/design/joint.ts';
import { findFamily } from '../core/flexures/index.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { readJoints } from './joints.ts';
import { readName } from './names.ts';
import { MIGRATIONS, migrate, versionAfter, type Document, type Migration } from './partMigrations.ts';
import { documentShape, UNITS } from './partShape.ts';
import { capped, ignoredFields, shapeProblem, shown, brief } from './shape.ts';

const FORMAT = 'bendbook-part';
/** Two hundred joints take a tenth of this. */
export const MAX_PART_BYTES = 2_000_000;

/** The joint with its fields in the order in which they are written, whatever order they were made in. */
function inOrder({ id, name, family, sizes, movement, profile, measuredThickness }: Joint) {
  const { drive, amount, ways, cycles, held, chance, effortAtMost, stays } = movement;
  const { nozzle, lineWidth, layerHeight, firstLayerHeight, lying, fitRule, filament } = profile;
  const known = Object.keys(findFamily(family)?.parameters ?? sizes);
  return {
    id,
    name,
    family,
    sizes: Object.fromEntries(known.map((size) => [size, sizes[size]])),
    movement: {
      drive,
      amount,
      ways,
      cycles,
      held,
      chance,
      ...(effortAtMost === undefined ? {} : { effortAtMost }),
      ...(stays === undefined ? {} : { stays }),
    },
    profile: { nozzle, lineWidth, layerHeight, firstLayerHeight, lying, fitRule, filament },
    ...(measuredThickness === undefined ? {} : { measuredThickness }),
  };
}

/**
 * The part as the text of a file. The same part gives the same text.
 *
 * @param part - any part whose joints have been checked
 * @returns pretty JSON, ends with a line end
 */
export function writePart({ name, invented, joints }: Part): string {
  const part = { name, invented, joints: joints.map(inOrder) };
  const document = { format: FORMAT, version: versionAfter(MIGRATIONS), units: UNITS, part };
  return `${JSON.stringify(document, null, 2)}\n`;
}

/**
 * A part from the text of a file, checked in this order: can it be read, is it ours, is it too new, is its shape
 * right, does the core understand every joint. Never throws, whatever the text.
 *
 * Problems: `too-large`, `unreadable`, `not-our-file`, `newer-version`, `missing-field`, `wrong-type`, `not-one-of`,
 * and those of `understand` with the joint's place before the field. Repairs and cautions come back as notes.
 *
 * @param text - what the file holds
 * @param migrations - steps from older versions; the default is the released ones
 */
export function readPart(text: string, migrations: readonly Migration[] = MIGRATIONS): Result<Part> {
  return read(text, migrations, false);
}

/**
 * A part that this program kept for the user between visits. What the core refuses may have been left half-typed
 * and comes back as a note, because losing the part would be worse than showing it as it stood.
 *
 * @param text - what was kept
 */
export function readKeptPart(text: string): Result<Part> {
  return read(text, MIGRATIONS, true);
}

function read(text: string, migrations: readonly Migration[], tolerant: boolean): Result<Part> {
  const document = readDocument(text, versionAfter(migrations));
  if (!document.ok) return document;
  const current = migrate(document.value, document.value['version'] as number, migrations);
  const shape = v.safeParse(documentShape, current);
  if (!shape.success) return failWith(shape.issues.map(shapeProblem));
  const { part } = shape.output;
  const joints = readJoints(part.joints, tolerant);
  if (!joints.ok) return failWith(joints.problems);
  const { name, notes } = readName(part.name, 'name', 'Part');
  const strangers = ignoredFields(current, { format: 0, version: 0, units: 0, part: 0 });
  const ignored = ignoredFields(current['part'], part);
  const said = capped([...strangers, ...ignored, ...notes, ...joints.notes]);
  return ok({ name, invented: part.invented, joints: joints.value }, said);
}

/** The same from bytes: UTF-8, with or without its mark. */
export function readPartBytes(bytes: Uint8Array): Result<Part> {
  if (bytes.length > MAX_PART_BYTES) return tooLarge(bytes.length);
  const [first, second] = bytes;
  const marked = (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff);
  // JSON opens with a plain character, so an empty byte among the first two can only be half of a wide one.
  if (marked || (bytes.length > 1 && (first === 0 || second === 0))) {
    return fail({ code: 'unreadable', message: 'The file is UTF-16 text or not text at all; save it as UTF-8' });
  }
  try {
    return readPart(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return fail({ code: 'unreadable', message: 'The file is not UTF-8 text; it may be damaged or of another kind' });
  }
}

function tooLarge<T>(size: number): Result<T> {
  const message = `The file holds ${size} bytes, a part at most ${MAX_PART_BYTES}; it is not a part or holds far more than one`;
  return fail({ code: 'too-large', message, value: size, limit: MAX_PART_BYTES });
}

function failWith<T>(problems: readonly Problem[]): Result<T> {
  return failIfAny(capped(problems)) ?? fail({ code: 'unreadable', message: 'The file cannot be read' });
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

/** The document when it is ours and not too new; nothing below its header has been judged. */
function readDocument(text: string, newest: number): Result<Document> {
  if (text.length > MAX_PART_BYTES) return tooLarge(text.length);
  const parsed = parse(text);
  if (!parsed.ok) return parsed;
  const document = parsed.value;
  if (!isDocument(document) || document['format'] !== FORMAT) {
    const format = isDocument(document) ? document['format'] : document;
    const message = `The file is JSON but not a part: its format is ${shown(format)}, expected “${FORMAT}”`;
    return fail({ code: 'not-our-file', message, field: 'format', value: brief(format), limit: FORMAT });
  }
  const version = judgeVersion(document['version'], newest);
  return version ? fail(version) : ok(document);
}

function isDocument(value: unknown): value is Document {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
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
