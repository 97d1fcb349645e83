/** 3MF: a zip archive with a model in XML, whose objects are placed on the plate. Source: 3mf-core, 3mf-production. */
import type { Problem } from '../../core/problems.ts';
import type { MeshFile, ReadProgress } from './meshFile.ts';
import { readModelPart, type ModelPart, type Placing } from './modelPart.ts';
import { Package3mf } from './package3mf.ts';
import { Plate, READING, type Found, type ModelParts } from './plate.ts';
import { quoted, refuse } from './refusal.ts';

export function read3mf(bytes: Uint8Array, progress: ReadProgress): MeshFile {
  const model = new Model(new Package3mf(bytes), bytes.length, progress);
  return new Plate(model, progress).meshFile();
}

/** All model parts that the start part leads to. */
class Model implements ModelParts {
  readonly root: ModelPart;
  private readonly pack: Package3mf;
  private readonly parts = new Map<string, ModelPart>();
  private readonly bytes: number;
  private readonly progress: ReadProgress;
  private done = 0;

  constructor(pack: Package3mf, bytes: number, progress: ReadProgress) {
    this.pack = pack;
    this.bytes = bytes;
    this.progress = progress;
    this.root = this.part(pack.startPart(), 'The list of relationships');
  }

  get notes(): readonly Problem[] {
    return [...this.parts.values()].flatMap(({ notes }) => notes);
  }

  find({ object: id, path, where }: Placing, from: ModelPart): Found {
    if (path !== undefined && from !== this.root) {
      refuse(
        'file-damaged',
        `${where} names an object of another model part, which only the first part may; export the part again`,
      );
    }
    const part = path === undefined ? from : this.part(path, where);
    const object = part.objects.get(id);
    if (object) return { object, part };
    const message = `${where} names object ${quoted(id)}, which is not in ${quoted(part.name)}; export the part again`;
    return refuse('file-damaged', message, { value: id });
  }

  private part(name: string, namedBy: string): ModelPart {
    const entry = this.pack.part(name, namedBy);
    const known = this.parts.get(entry.name);
    if (known) return known;
    const share = entry.packed.length / this.bytes;
    const part = readModelPart(entry, (read) => this.progress(READING * Math.min(1, this.done + share * read)));
    this.done += share;
    this.parts.set(entry.name, part);
    return part;
  }
}
