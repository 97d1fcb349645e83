/** What a 3MF model asks to print, put where it belongs. Source: 3mf-core 3.4.3, 4.2. */
import { MM_IN } from '../../core/inspect/lengthUnit.ts';
import type { Problem } from '../../core/problems.ts';
import { isPlace, refuseCoordinate } from './coordinates.ts';
import { MeshBuilder, refuseTriangles } from './meshBuilder.ts';
import type { MeshFile, ReadProgress } from './meshFile.ts';
import { MAX_NESTING, MAX_PLACINGS, MAX_TRIANGLES, STEPS_PER_CALL } from './meshLimits.ts';
import type { ModelObject, ModelPart, Placing } from './modelPart.ts';
import { count, many, quoted, refuse } from './refusal.ts';
import { enlarged, following, growth, moved, UNMOVED, type Transform } from './transform.ts';

/** Of the progress: what unpacking and reading takes; the rest is putting together. */
export const READING = 0.9;
/** More of one kind say nothing new. */
const MAX_NOTES = 20;

/** Stands for the number of a vertex that no triangle has asked for yet. */
const UNPLACED = 0xffffffff;

/** An object in the part that holds it. */
export interface Found {
  readonly object: ModelObject;
  readonly part: ModelPart;
}

/** All model parts of a package that the first one leads to. */
export interface ModelParts {
  readonly root: ModelPart;
  readonly notes: readonly Problem[];
  /** The object that is placed, wherever it is; gives up where it is nowhere. */
  find(placing: Placing, from: ModelPart): Found;
}

/** How much an object comes to with all that is in it, and how many objects deep it goes. */
interface Extent {
  readonly triangles: number;
  readonly placings: number;
  readonly depth: number;
}

/** Everything that is to be built, put where it belongs. */
export class Plate {
  private readonly model: ModelParts;
  private readonly progress: ReadProgress;
  private readonly builder: MeshBuilder;
  private readonly extents = new Map<ModelObject, Extent | 'in work'>();
  private readonly names = new Map<ModelObject, string>();
  private readonly notes = new Map<string, Problem>();
  private readonly triangles: number;

  constructor(model: ModelParts, progress: ReadProgress) {
    this.model = model;
    this.progress = progress;
    this.triangles = this.checkExtent();
    this.builder = new MeshBuilder(this.triangles);
  }

  meshFile(): MeshFile {
    const { root } = this.model;
    for (const item of root.items) this.place(item, root, UNMOVED, '');
    if (this.builder.triangles === 0) {
      refuse(
        'file-damaged',
        `${quoted(root.name)} asks for ${many(root.items.length, 'item')}, which come to 0 triangles; export the part again as a mesh`,
        { value: 0 },
      );
    }
    return {
      format: '3MF',
      solids: [...this.names.values()],
      unit: root.unit,
      mesh: this.builder.finish(),
      notes: [...this.model.notes, ...this.notes.values()],
    };
  }

  /** Counted before anything is placed: objects in objects in objects can ask for any number. */
  private checkExtent(): number {
    const { root } = this.model;
    const { triangles, placings } = this.sum(root.items, root, 0);
    if (triangles > MAX_TRIANGLES) refuseTriangles(triangles);
    if (placings > MAX_PLACINGS) {
      const message = `The file places ${count(placings)} objects, those within objects too, and ${count(MAX_PLACINGS)} are read at most; export the part on its own`;
      refuse('too-large', message, { value: placings, limit: MAX_PLACINGS });
    }
    return triangles;
  }

  private sum(placings: readonly Placing[], from: ModelPart, outer: number): Extent {
    let [triangles, places, depth] = [0, placings.length, 0];
    for (const placing of placings) {
      const inner = this.extent(placing, from, outer);
      triangles += inner.triangles;
      places += inner.placings;
      depth = Math.max(depth, inner.depth);
    }
    return { triangles, placings: places, depth };
  }

  private extent(placing: Placing, from: ModelPart, outer: number): Extent {
    const { object, part } = this.model.find(placing, from);
    const known = this.extents.get(object);
    if (known === 'in work') {
      const message = `${placing.where} puts object ${quoted(object.id)} into itself; export the part again`;
      return refuse('file-damaged', message, { value: object.id });
    }
    const extent = known ?? this.measured(object, part, outer);
    if (outer + extent.depth > MAX_NESTING) refuseNesting(placing);
    return extent;
  }

  private measured(object: ModelObject, part: ModelPart, outer: number): Extent {
    this.extents.set(object, 'in work');
    // Too deep a chain is followed no further, lest it be deeper than the language can follow.
    const components = outer < MAX_NESTING ? object.components : [];
    const inner = this.sum(components, part, outer + 1);
    const depth = outer < MAX_NESTING ? inner.depth + 1 : MAX_NESTING;
    const extent = { triangles: inner.triangles + object.corners.length / 3, placings: inner.placings, depth };
    this.extents.set(object, extent);
    return extent;
  }

  private place(placing: Placing, from: ModelPart, then: Transform, outer: string): void {
    const { object, part } = this.model.find(placing, from);
    const onto = following(placing.transform, then);
    // Another model part may have another unit, in which all is meant that is put together there.
    const transform = part.unit === from.unit ? onto : following(enlarged(MM_IN[part.unit] / MM_IN[from.unit]), onto);
    const name = object.name || outer;
    if (object.corners.length > 0) this.body(object, transform, name);
    else if (object.components.length === 0)
      this.note(`Object ${quoted(object.id)} holds no mesh that can be read, and was left out`);
    for (const component of object.components) this.place(component, part, transform, name);
  }

  private body(object: ModelObject, transform: Transform, name: string): void {
    if (object.type === 'support' || object.type === 'solidsupport' || object.type === 'other') {
      this.note(
        `Object ${quoted(object.name || object.id)} is of the type “${object.type}”, which is no part of what is to be printed, and was left out`,
      );
      return;
    }
    if (object.type === 'surface') {
      this.note(
        `Object ${quoted(object.name || object.id)} is of the type “surface”, which need not be closed; it was read as a body`,
      );
    }
    if (!this.names.has(object)) this.names.set(object, name);
    this.add(object, transform);
  }

  /** Mirrored triangles are wound the other way, so that they face outwards as before. */
  private add(object: ModelObject, transform: Transform): void {
    const [second, third] = growth(transform) < 0 ? [2, 1] : [1, 2];
    const numbers = new Uint32Array(object.points.length / 3).fill(UNPLACED);
    const { builder } = this;
    const all = object.corners.all;
    const vertex = (corner: number): number => {
      const own = all[corner]!;
      if (numbers[own] === UNPLACED) numbers[own] = this.vertex(object, own, transform);
      return numbers[own]!;
    };
    for (let at = 0; at < object.corners.length; at += 3) {
      if (builder.triangles % STEPS_PER_CALL === 0) this.tell();
      builder.triangle(vertex(at), vertex(at + second), vertex(at + third));
    }
  }

  /** Number in the whole of a vertex of an object, put where it belongs. */
  private vertex({ id, points }: ModelObject, own: number, transform: Transform): number {
    const [px, py, pz] = [points.all[3 * own]!, points.all[3 * own + 1]!, points.all[3 * own + 2]!];
    const x = moved(transform, 0, px, py, pz);
    const y = moved(transform, 1, px, py, pz);
    const z = moved(transform, 2, px, py, pz);
    if (!(isPlace(x) && isPlace(y) && isPlace(z))) {
      const bad = [x, y, z].find((value) => !isPlace(value))!;
      refuseCoordinate(bad, `Vertex ${count(own)} of object ${quoted(id)}, where it is placed,`);
    }
    return this.builder.vertex(x, y, z);
  }

  private tell(): void {
    this.progress(READING + (1 - READING) * (this.builder.triangles / this.triangles));
  }

  private note(message: string): void {
    if (this.notes.size < MAX_NOTES) this.notes.set(message, { code: 'left-out', message });
  }
}

function refuseNesting({ where }: Placing): never {
  const message = `${where} puts objects into objects more than ${MAX_NESTING} deep; export the part on its own`;
  return refuse('too-large', message, { limit: MAX_NESTING });
}
