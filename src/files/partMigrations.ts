/**
 * How older part files become the present one. Step n turns version n into n + 1; a released step is never edited,
 * and one saved file of every released version stays in the tests.
 */

/** A file's document between reading and judging: fields of any kind. */
export type Document = Readonly<Record<string, unknown>>;

/** Must cope with any field missing or of the wrong kind: the shape is judged only after the last step. */
export type Migration = (document: Document) => Document;

export const MIGRATIONS: readonly Migration[] = [];

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
