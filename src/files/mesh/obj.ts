/** OBJ: places, and faces that name them by number. Source: part-files. */
import type { Problem } from '../../core/problems.ts';
import { cleanName } from '../names.ts';
import { isPlace, refuseCoordinate } from './coordinates.ts';
import { GrowingFloats } from './growing.ts';
import { MeshBuilder, refuseVertices } from './meshBuilder.ts';
import type { MeshFile, ReadProgress } from './meshFile.ts';
import { MAX_SOLIDS, MAX_VERTICES, STEPS_PER_CALL } from './meshLimits.ts';
import { splitPolygon } from './polygon.ts';
import { count, FETCH_AGAIN, many, quoted, refuse } from './refusal.ts';
import { TextCursor } from './textCursor.ts';

/** Lines and points, and what curves and bent surfaces are made of: nothing of it is a flat face. */
const THIN = new Set(
  'l p vp cstype deg bmat step curv curv2 surf parm trim hole scrv sp end con bzp bsp cdc cdp res'.split(' '),
);
/** Colour, shading and the like, and where they are kept. */
const LOOKS = new Set(
  's mg usemtl mtllib usemap maplib bevel c_interp d_interp lod shadow_obj trace_obj ctech stech'.split(' '),
);

const COMMENT = 35;
/** With its share of the vertices; only a guess of how much room is needed. */
const BYTES_A_TRIANGLE = 60;

/** @param bytes - text in UTF-8, without its mark */
export function readObj(bytes: Uint8Array, progress: ReadProgress): MeshFile {
  const reader = new Faces(bytes);
  for (let steps = 0; reader.line(); steps += 1) {
    if (steps % STEPS_PER_CALL === 0) progress(reader.cursor.pos / bytes.length);
  }
  return reader.finish();
}

class Faces {
  readonly cursor: TextCursor;
  private readonly builder: MeshBuilder;
  private readonly places = new GrowingFloats();
  private readonly names = { o: new Set<string>(), g: new Set<string>() };
  private readonly current = { o: '', g: '' };
  private readonly skipped = { thin: 0, unknown: new Set<string>(), crossed: 0 };
  /** Of the face that is being read: numbers of its corners from 0, and where they are. */
  private readonly corners: number[] = [];
  private readonly around: number[] = [];

  constructor(bytes: Uint8Array) {
    this.cursor = new TextCursor(bytes, true);
    this.builder = new MeshBuilder(bytes.length / BYTES_A_TRIANGLE);
  }

  /** Takes in one line; false at the end of the file. */
  line(): boolean {
    const { cursor } = this;
    if (!cursor.next()) return false;
    if (cursor.is('v')) this.place();
    else if (cursor.is('f') || cursor.is('fo')) this.face();
    else if (!cursor.begins(COMMENT) && !cursor.is('vn') && !cursor.is('vt')) this.other(cursor.word().toLowerCase());
    // A comment may end in a backslash as folders do, and goes no further.
    cursor.skipLine(!cursor.begins(COMMENT));
    return true;
  }

  finish(): MeshFile {
    if (this.builder.triangles === 0) {
      const message = `The file is OBJ text with ${count(this.places.length / 3)} vertices and 0 faces; export the part again as a mesh`;
      refuse('file-damaged', message, { value: 0 });
    }
    const { o, g } = this.names;
    const named = [...(o.size > 0 ? o : g)];
    const solids = named.length > 0 ? named : [''];
    return { format: 'OBJ', solids, mesh: this.builder.finish(), notes: this.notes() };
  }

  /** Three coordinates; a weight or a colour may follow and says nothing of a flat face. */
  private place(): void {
    const x = this.coordinate();
    const y = this.coordinate();
    const z = this.coordinate();
    if (this.places.length >= 3 * MAX_VERTICES) refuseVertices();
    this.places.push3(x, y, z);
  }

  private coordinate(): number {
    const { cursor } = this;
    const { line } = cursor;
    if (!cursor.nextInLine()) {
      const message = `The vertex in line ${count(line)} has fewer than 3 coordinates; ${FETCH_AGAIN}`;
      refuse('file-damaged', message, { value: line });
    }
    const value = cursor.number();
    if (!isPlace(value)) refuseCoordinate(value, `The vertex in line ${count(line)}`, cursor.word());
    return value;
  }

  private face(): void {
    const { cursor, corners } = this;
    const { line } = cursor;
    corners.length = 0;
    while (cursor.nextInLine() && !cursor.begins(COMMENT)) corners.push(this.corner(line));
    dropRepeats(corners);
    if (corners.length < 3) {
      const message = `The face in line ${count(line)} has ${many(corners.length, 'corner')}, and a face has at least 3; ${FETCH_AGAIN}`;
      refuse('file-damaged', message, { value: line });
    }
    this.split();
    this.name();
  }

  private corner(line: number): number {
    const given = this.cursor.index();
    const there = this.places.length / 3;
    const corner = given < 0 ? there + given : given - 1;
    if (corner >= 0 && corner < there) return corner;
    const word = quoted(this.cursor.word());
    const why =
      given === 0
        ? 'vertices are counted from 1'
        : Number.isNaN(given)
          ? 'which is no number of a vertex'
          : `and ${count(there)} vertices come before it`;
    const message = `The face in line ${count(line)} names vertex ${word}, ${why}; ${FETCH_AGAIN}`;
    return refuse('file-damaged', message, { value: line, limit: there });
  }

  private split(): void {
    const { corners, around, builder } = this;
    const all = this.places.all;
    around.length = 0;
    for (const corner of corners) around.push(all[3 * corner]!, all[3 * corner + 1]!, all[3 * corner + 2]!);
    const { triangles, isCrossed } = splitPolygon(around);
    if (isCrossed) this.skipped.crossed += 1;
    const vertex = (i: number) => builder.vertex(around[3 * i]!, around[3 * i + 1]!, around[3 * i + 2]!);
    for (let i = 0; i < triangles.length; i += 3) {
      builder.triangle(vertex(triangles[i]!), vertex(triangles[i + 1]!), vertex(triangles[i + 2]!));
    }
  }

  private other(word: string): void {
    if (word === 'o' || word === 'g') this.current[word] = cleanName(this.cursor.restOfLine());
    else if (THIN.has(word)) this.skipped.thin += 1;
    else if (!LOOKS.has(word)) this.stranger(word);
  }

  private stranger(word: string): void {
    if (this.skipped.unknown.size < 3) this.skipped.unknown.add(word);
  }

  /** Only what has faces is a solid. */
  private name(): void {
    for (const kind of ['o', 'g'] as const) {
      const name = this.current[kind];
      if (name === '' || this.names[kind].has(name)) continue;
      if (this.names[kind].size >= MAX_SOLIDS) {
        const message = `The file names more than ${count(MAX_SOLIDS)} objects; export the part on its own`;
        refuse('too-large', message, { limit: MAX_SOLIDS });
      }
      this.names[kind].add(name);
    }
  }

  private notes(): readonly Problem[] {
    const { thin, unknown, crossed } = this.skipped;
    const notes: Problem[] = [];
    if (thin > 0) {
      const message = `${many(thin, 'line')} of the file about curves, lines and points left out; only faces are read`;
      notes.push({ code: 'left-out', message, value: thin });
    }
    if (unknown.size > 0) {
      const words = [...unknown].map(quoted).join(', ');
      notes.push({
        code: 'left-out',
        message: `Lines that begin with ${words} were left out; no OBJ file is known to have them`,
      });
    }
    if (crossed > 0) {
      const message = `${many(crossed, 'face')} crossing ${crossed === 1 ? 'itself' : 'themselves'}, so that the triangles in it are a guess; export the part as triangles`;
      notes.push({ code: 'file-damaged', message, value: crossed });
    }
    return notes;
  }
}

/** A corner named twice in a row is one; a triangle keeps its three. */
function dropRepeats(corners: number[]): void {
  for (let i = corners.length - 1; i >= 0 && corners.length > 3; i -= 1) {
    if (corners[i] === corners[(i + 1) % corners.length]) corners.splice(i, 1);
  }
}
