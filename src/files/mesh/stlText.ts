/** STL as text: solids of facets of three vertices. Source: part-files. Read word by word, since blanks and line ends are used freely. */
import type { Problem } from '../../core/problems.ts';
import { cleanName } from '../names.ts';
import { isPlace, refuseCoordinate } from './coordinates.ts';
import { MeshBuilder } from './meshBuilder.ts';
import type { MeshFile, ReadProgress } from './meshFile.ts';
import { MAX_SOLIDS, STEPS_PER_CALL } from './meshLimits.ts';
import { count, FETCH_AGAIN, many, quoted, refuse } from './refusal.ts';
import { TextCursor } from './textCursor.ts';

/** As most programs write it; only a guess of how much room is needed. */
const BYTES_A_FACET = 250;

/** @param bytes - text in UTF-8, without its mark */
export function readTextStl(bytes: Uint8Array, progress: ReadProgress): MeshFile {
  const reader = new Facets(bytes);
  for (let steps = 0; reader.step(); steps += 1) {
    if (steps % STEPS_PER_CALL === 0) progress(reader.cursor.pos / bytes.length);
  }
  return reader.finish();
}

class Facets {
  readonly cursor: TextCursor;
  private readonly builder: MeshBuilder;
  private readonly solids: string[] = [];
  private isSolidOpen = false;
  /** Line in which the facet that is being read begins; 0 between facets. */
  private facetLine = 0;
  private inHead = false;
  private corners = 0;
  private readonly vertices = [0, 0, 0];

  constructor(bytes: Uint8Array) {
    this.cursor = new TextCursor(bytes);
    this.builder = new MeshBuilder(bytes.length / BYTES_A_FACET);
  }

  /** Takes in one word and what belongs to it; false at the end of the file. */
  step(): boolean {
    const { cursor } = this;
    if (!cursor.next()) return false;
    if (cursor.is('vertex')) this.vertex();
    else if (cursor.is('facet')) this.open();
    else if (cursor.is('endfacet')) this.close();
    else if (this.inHead) return true;
    else if (cursor.is('solid')) this.solid();
    else if (cursor.is('endsolid')) this.endSolid();
    else if (!this.isFrame()) this.stranger();
    return true;
  }

  /** Words that stand round the corners and say nothing that the corners do not. */
  private isFrame(): boolean {
    const { cursor } = this;
    return cursor.is('outer') || cursor.is('loop') || cursor.is('endloop');
  }

  finish(): MeshFile {
    if (this.facetLine > 0) this.refuseCut();
    if (this.builder.triangles === 0) {
      refuse('file-damaged', 'The file is STL text that holds 0 triangles; export the part again', { value: 0 });
    }
    const notes = this.isSolidOpen ? [this.noEnd()] : [];
    return { format: 'STL, text', solids: this.solids, mesh: this.builder.finish(), notes };
  }

  private solid(): void {
    if (this.facetLine > 0) this.refuseUnclosed();
    if (this.solids.length >= MAX_SOLIDS) {
      const message = `The file holds more than ${count(MAX_SOLIDS)} solids; export the part on its own`;
      refuse('too-large', message, { limit: MAX_SOLIDS });
    }
    this.solids.push(cleanName(this.cursor.restOfLine()));
    this.isSolidOpen = true;
  }

  private endSolid(): void {
    if (this.facetLine > 0) this.refuseUnclosed();
    this.cursor.skipLine();
    this.isSolidOpen = false;
  }

  private open(): void {
    if (this.facetLine > 0) this.refuseUnclosed();
    this.facetLine = this.cursor.line;
    this.inHead = true;
    this.corners = 0;
  }

  private vertex(): void {
    const { cursor } = this;
    if (this.facetLine === 0) {
      const message = `Line ${count(cursor.line)} has a vertex outside of any facet; ${FETCH_AGAIN}`;
      refuse('file-damaged', message, { value: cursor.line });
    }
    this.inHead = false;
    const x = this.coordinate();
    const y = this.coordinate();
    const z = this.coordinate();
    if (this.corners < 3) this.vertices[this.corners] = this.builder.vertex(x, y, z);
    this.corners += 1;
  }

  private coordinate(): number {
    const { cursor } = this;
    if (!cursor.next()) this.refuseCut();
    const value = cursor.number();
    if (!isPlace(value)) {
      if (cursor.atEnd) this.refuseCut();
      const where = `Line ${count(cursor.line)}, triangle ${count(this.builder.triangles + 1)},`;
      refuseCoordinate(value, where, cursor.word());
    }
    return value;
  }

  private close(): void {
    if (this.facetLine === 0) {
      const message = `Line ${count(this.cursor.line)} ends a facet that was not begun; ${FETCH_AGAIN}`;
      refuse('file-damaged', message, { value: this.cursor.line });
    }
    if (this.corners !== 3) this.refuseCorners();
    const [a = 0, b = 0, c = 0] = this.vertices;
    this.builder.triangle(a, b, c);
    // Facets without any solid round them belong to one that has no name.
    if (this.solids.length === 0) this.solids.push('');
    this.facetLine = 0;
    this.inHead = false;
  }

  private refuseCorners(): never {
    const message = `The facet in line ${count(this.facetLine)} has ${many(this.corners, 'corner')}, and a triangle has 3; export the part again as triangles`;
    return refuse('file-damaged', message, { value: this.corners, limit: 3 });
  }

  private refuseUnclosed(): never {
    const message = `The facet in line ${count(this.facetLine)} is not ended before ${quoted(this.cursor.word())} in line ${count(this.cursor.line)}; ${FETCH_AGAIN}`;
    return refuse('file-damaged', message, { value: this.facetLine });
  }

  private refuseCut(): never {
    const { cursor, builder, facetLine } = this;
    const message = `The file is cut off in line ${count(cursor.line)}, within triangle ${count(builder.triangles + 1)}, which begins in line ${count(facetLine)}; ${FETCH_AGAIN}`;
    return refuse('file-damaged', message, { value: builder.triangles });
  }

  /** The last word of a file that was cut off may be half of one. */
  private stranger(): void {
    if (!this.cursor.atEnd) this.refuseWord();
    if (this.facetLine > 0) this.refuseCut();
    this.isSolidOpen = true;
  }

  private refuseWord(): never {
    const message = `Line ${count(this.cursor.line)} has ${quoted(this.cursor.word())}, which is not a word of STL text; ${FETCH_AGAIN}`;
    return refuse('file-damaged', message, { value: this.cursor.line });
  }

  private noEnd(): Problem {
    const message = `The file ends without “endsolid”, so it may be cut off after triangle ${count(this.builder.triangles)}; if something is missing, ${FETCH_AGAIN}`;
    return { code: 'file-damaged', message, value: this.builder.triangles };
  }
}
