/**
 * How older part files become the present one. Step n turns version n into n + 1; a released step is never edited,
 * and one saved file of every released version stays in the tests.
 */
import { isObject } from './shape.ts';

/** A file's document between reading and judging: fields of any kind. */
export type Document = Readonly<Record<string, unknown>>;

/** Must cope with any field missing or of the wrong kind: the shape is judged only after the last step. */
export type Migration = (document: Document) => Document;

/** What a step does to each joint of a part, and to the joint of a link of the same version. */
const JOINT_STEPS: readonly Migration[] = [withDrive, asItIs];
/** What the same step does to the document around the joints. */
const DOCUMENT_STEPS: readonly Migration[] = [asItIs, withFilaments];

export const MIGRATIONS: readonly Migration[] = JOINT_STEPS.map((step, index) => (document) => {
  const around = DOCUMENT_STEPS[index] ?? asItIs;
  const { part } = document;
  if (!isObject(part) || !Array.isArray(part['joints'])) return around(document);
  const joints = part['joints'].map((joint: unknown) => (isObject(joint) ? step(joint) : joint));
  return around({ ...document, part: { ...part, joints } });
});

/** A joint of the given version on its own, taken through every step that follows. */
export function migrateJoint(joint: Document, version: number): Document {
  return JOINT_STEPS.slice(version - 1).reduce((older, step) => step(older), joint);
}

function asItIs(document: Document): Document {
  return document;
}

/** 2 → 3: a part brought no filaments along; what a joint may say besides was left out as it may be now. */
function withFilaments(document: Document): Document {
  return { ...document, filaments: [] };
}

/** 1 → 2: a joint was always turned by a moment, through an angle, and had no sizes for other ways of moving it. */
function withDrive(joint: Document): Document {
  const { movement, sizes, family } = joint;
  return {
    ...joint,
    ...(isObject(movement) ? { movement: turned(movement) } : {}),
    ...(isObject(sizes) ? { sizes: { ...sizes, ...NEW_IN_2[String(family)] } } : {}),
  };
}

function turned({ angle, ...movement }: Document): Document {
  return { ...movement, drive: 'turned', ...(angle === undefined ? {} : { amount: angle }) };
}

/** Written out, because a released step stays as it was whatever becomes of the families. */
const NEW_IN_2: Readonly<Record<string, Document>> = {
  straightLeaf: { sideBySide: 1, taper: 1, centre: 0.5 },
  crease: { sideBySide: 1 },
};

/** The version that stands at the end of these steps. */
export function versionAfter(migrations: readonly Migration[]): number {
  return migrations.length + 1;
}

/** A document of the given version, taken through every step that follows; the version field is kept in step. */
export function migrate(document: Document, version: number, migrations: readonly Migration[]): Document {
  return migrations
    .slice(version - 1)
    .reduce<Document>((older, step, index) => ({ ...step(older), version: version + index + 1 }), document);
}
