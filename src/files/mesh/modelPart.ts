/** One model part of a 3MF package: its unit, its objects and what it asks to build. Source: 3mf-core 3 and 4, 3mf-production 3. */
import type { LengthUnit } from '../../core/inspect/lengthUnit.ts';
import type { Problem } from '../../core/problems.ts';
import { cleanName } from '../names.ts';
import { isPlace, refuseCoordinate } from './coordinates.ts';
import { extensionNote, harmOf, MODEL_SPACE, PRODUCTION_SPACE } from './extensions.ts';
import { GrowingFloats, GrowingIndices } from './growing.ts';
import { refuseTriangles, refuseVertices } from './meshBuilder.ts';
import { MAX_PLACINGS, MAX_TRIANGLES, MAX_VERTICES } from './meshLimits.ts';
import { count, FETCH_AGAIN, quoted, refuse } from './refusal.ts';
import { growth, UNMOVED, type Transform } from './transform.ts';
import { readXml, type XmlTag } from './xmlStream.ts';
import type { ZipEntry } from './zipDirectory.ts';

/** An object that is put somewhere, within another or on the plate. */
export interface Placing {
  readonly object: string;
  /** Name of another model part that holds it. */
  readonly path?: string;
  readonly transform: Transform;
  /** Where it stands in the file, as a sentence begins. */
  readonly where: string;
}

export interface ModelObject {
  readonly id: string;
  readonly name: string;
  readonly type: string;
  readonly points: GrowingFloats;
  readonly corners: GrowingIndices;
  readonly components: Placing[];
}

export interface ModelPart {
  readonly name: string;
  readonly unit: LengthUnit;
  readonly objects: ReadonlyMap<string, ModelObject>;
  readonly items: readonly Placing[];
  readonly notes: readonly Problem[];
}

const UNITS: Readonly<Record<string, LengthUnit>> = {
  micron: 'micron',
  millimeter: 'millimetre',
  centimeter: 'centimetre',
  meter: 'metre',
  inch: 'inch',
  foot: 'foot',
};

/** Rows this short against their size lie in one plane to all the digits that a file has. */
const FLAT = 1e-12;

export function readModelPart(entry: ZipEntry, progress: (share: number) => void): ModelPart {
  const reader = new ModelReader(entry.name);
  readXml(entry, {
    open: (tag, line) => reader.open(tag, line),
    close: (tag, line) => reader.close(tag, line),
    progress,
  });
  return reader.finish();
}

class ModelReader {
  private readonly name: string;
  private unit: LengthUnit | undefined;
  private readonly objects = new Map<string, ModelObject>();
  private readonly items: Placing[] = [];
  private readonly notes = new Map<string, Problem>();
  private current: ModelObject | undefined;
  private placings = 0;
  private vertices = 0;
  private triangles = 0;
  private line = 1;

  constructor(name: string) {
    this.name = name;
  }

  open(tag: XmlTag, line: number): void {
    this.line = line;
    if (this.unit === undefined) this.model(tag);
    else if (tag.uri === MODEL_SPACE) this.element(tag);
    else this.note(extensionNote(tag.uri, tag.local));
  }

  close({ uri, local }: XmlTag, line: number): void {
    this.line = line;
    if (uri !== MODEL_SPACE || local !== 'object' || !this.current) return;
    checkCorners(this.current, this.where());
    this.current = undefined;
  }

  finish(): ModelPart {
    const { name, unit = 'millimetre', objects, items } = this;
    return { name, unit, objects, items, notes: [...this.notes.values()] };
  }

  private element(tag: XmlTag): void {
    const { current } = this;
    switch (tag.local) {
      case 'vertex':
        return current && this.vertex(tag, current);
      case 'triangle':
        return current && this.triangle(tag, current);
      case 'object':
        return this.object(tag);
      case 'component':
        return void current?.components.push(this.placing(tag));
      case 'item':
        return void this.items.push(this.placing(tag));
    }
  }

  private model(tag: XmlTag): void {
    if (tag.local !== 'model' || tag.uri !== MODEL_SPACE) {
      const space = tag.uri === '' ? 'no namespace' : `the namespace ${quoted(tag.uri)}`;
      refuse(
        'unreadable',
        `${this.where()} has ${quoted(tag.local)} of ${space} where a 3MF model has to begin; export the part again`,
      );
    }
    const said = attribute(tag, 'unit') ?? 'millimeter';
    if (!Object.hasOwn(UNITS, said)) {
      refuse(
        'file-damaged',
        `${this.where()} gives lengths in ${quoted(said)}, and 3MF knows ${Object.keys(UNITS).join(', ')}; export the part again`,
      );
    }
    this.unit = UNITS[said];
    for (const prefix of (attribute(tag, 'requiredextensions') ?? '').split(/\s+/).filter(Boolean)) {
      this.demand(prefix, tag.ns[prefix]);
    }
  }

  private demand(prefix: string, space: string | undefined): void {
    const harm = space === undefined ? 'unknown' : harmOf(space);
    if (harm === 'unknown') {
      refuse(
        'unreadable',
        `${this.where()} requires the extension ${quoted(space ?? prefix)}, which may change the shape and is not read; export the part as a plain mesh`,
      );
    }
    if (space !== undefined && harm === 'not read') this.note(extensionNote(space));
  }

  private object(tag: XmlTag): void {
    const id = attribute(tag, 'id');
    if (id === undefined || id === '') this.refuse('has an object without an id');
    if (this.objects.has(id)) this.refuse(`has a second object with the id ${quoted(id)}`);
    if (this.objects.size >= MAX_PLACINGS) this.refuseMany('objects');
    this.current = {
      id,
      name: cleanName((attribute(tag, 'name') ?? '').slice(0, 1000)),
      type: attribute(tag, 'type') ?? 'model',
      points: new GrowingFloats(),
      corners: new GrowingIndices(),
      components: [],
    };
    this.objects.set(id, this.current);
  }

  private vertex({ attributes }: XmlTag, { id, points }: ModelObject): void {
    if (this.vertices >= MAX_VERTICES) refuseVertices();
    this.vertices += 1;
    const coordinate = (name: string): number => {
      const text = attributes[name]?.value;
      const value = decimal(text);
      if (isPlace(value)) return value;
      const vertex = `${this.where()} vertex ${count(points.length / 3)} of object ${quoted(id)},`;
      return refuseCoordinate(value, vertex, text ?? 'none');
    };
    points.push3(coordinate('x'), coordinate('y'), coordinate('z'));
  }

  private triangle({ attributes }: XmlTag, { id, corners }: ModelObject): void {
    if (this.triangles >= MAX_TRIANGLES) refuseTriangles();
    this.triangles += 1;
    const corner = (name: string): number => {
      const text = attributes[name]?.value;
      const value = decimal(text);
      if (Number.isInteger(value) && value >= 0 && value < 2 ** 31) return value;
      const triangle = `triangle ${count(corners.length / 3 + 1)} of object ${quoted(id)}`;
      return this.refuse(
        `has ${quoted(text ?? 'nothing')} as ${name} of ${triangle}, where the number of a vertex belongs`,
      );
    };
    corners.push3(corner('v1'), corner('v2'), corner('v3'));
  }

  private placing(tag: XmlTag): Placing {
    this.placings += 1;
    if (this.placings > MAX_PLACINGS) this.refuseMany('placings of objects');
    const object = attribute(tag, 'objectid') ?? this.refuse(`has a ${tag.local} that names no object`);
    const path = Object.values(tag.attributes).find(({ uri, local }) => uri === PRODUCTION_SPACE && local === 'path');
    const transform = this.transform(attribute(tag, 'transform'), object);
    return { object, transform, where: this.where(), ...(path ? { path: path.value.trim() } : {}) };
  }

  private transform(text: string | undefined, object: string): Transform {
    if (text === undefined) return UNMOVED;
    const numbers = text.split(/\s+/, 14).filter(Boolean).map(decimal);
    if (numbers.length !== 12 || !numbers.every(Number.isFinite)) {
      this.refuse(`moves object ${quoted(object)} by ${quoted(text)}, where twelve numbers belong`);
    }
    const rows = [0, 3, 6].map((at) => Math.hypot(...numbers.slice(at, at + 3)));
    if (!(Math.abs(growth(numbers)) > FLAT * rows.reduce((product, row) => product * row, 1))) {
      this.refuse(`presses object ${quoted(object)} flat: its transform ${quoted(text)} is singular`);
    }
    return numbers;
  }

  private note(note: Problem | undefined): void {
    if (note) this.notes.set(note.message, note);
  }

  private where(): string {
    return `${quoted(this.name)}, line ${count(this.line)},`;
  }

  private refuse(what: string): never {
    return refuse('file-damaged', `${this.where()} ${what}; ${FETCH_AGAIN}`, { value: this.line });
  }

  private refuseMany(what: string): never {
    const message = `${this.where()} has more than ${count(MAX_PLACINGS)} ${what}; export the part on its own`;
    return refuse('too-large', message, { limit: MAX_PLACINGS });
  }
}

function checkCorners({ id, points, corners }: ModelObject, where: string): void {
  const vertices = points.length / 3;
  for (let i = 0; i < corners.length; i += 1) {
    if (corners.all[i]! < vertices) continue;
    const triangle = `Triangle ${count(Math.floor(i / 3) + 1)} of object ${quoted(id)}, which ends in ${where}`;
    const message = `${triangle} names vertex ${count(corners.all[i]!)}, and the object has ${count(vertices)}, counted from 0; ${FETCH_AGAIN}`;
    refuse('file-damaged', message, { value: corners.all[i]!, limit: vertices });
  }
}

function attribute({ attributes }: XmlTag, name: string): string | undefined {
  return attributes[name]?.value.trim();
}

/** What the language also takes for a number: nothing at all, and other bases. */
const NO_DECIMAL = /[xob]|^\s*$/i;

function decimal(text: string | undefined): number {
  return text === undefined || NO_DECIMAL.test(text) ? Number.NaN : Number(text);
}
