/** Checks and draws a part file: apart from the other jobs, since no joint waits for it. */
import { checkPart, mendPart, type MendedPart } from '../core/inspect/checkPart.ts';
import { drawPart } from '../core/inspect/picture/drawPart.ts';
import { ok, type Result } from '../core/result.ts';
import { readMesh } from '../files/mesh/readMesh.ts';
import type { Alive, Input, Output, PartNews, Tell } from './protocol.ts';

/** How far the whole work is once it has been read, and once its surface has been looked over; chosen. */
const READ = 0.35;
const MENDED = 0.5;

/** Tells the share of one step as that of the whole work; of a step that tells none, where it began. */
function within(alive: Alive, from: number, to: number): Alive {
  return (share = 0) => alive(from + (to - from) * share);
}

type File = Pick<Input<'checkPart'>, 'file' | 'name' | 'key' | 'unit'>;

/** The last part that was read: it is drawn right after it was checked. */
let last: { readonly key: string; readonly part: MendedPart } | undefined;

/** What has been read stands for the unit in which it was read, and where the user says so too, that unit is told. */
function remembered({ key, unit: told }: File): MendedPart | undefined {
  if (last?.key !== key) return undefined;
  const { part } = last;
  if (told === undefined) return part;
  return part.unit.unit === told ? { ...part, unit: { unit: told, by: 'told', orElse: [] } } : undefined;
}

async function readPart(
  asked: File,
  alive: Alive,
  say: (doing: PartNews['doing']) => void,
): Promise<Result<MendedPart>> {
  const known = remembered(asked);
  if (known) return ok(known);
  // Two parts at once may be more than there is room for.
  last = undefined;
  say('reading');
  const bytes = new Uint8Array(await asked.file.arrayBuffer());
  const read = readMesh(bytes, asked.name, within(alive, 0, READ));
  if (!read.ok) return read;
  say('mending');
  const part = mendPart(read.value, asked.unit, within(alive, READ, MENDED));
  last = { key: asked.key, part };
  return ok(part);
}

export async function checkPartJob(input: Input<'checkPart'>, alive: Alive, tell: Tell): Promise<Output<'checkPart'>> {
  const say = (doing: PartNews['doing'], found = 0) => tell({ doing, found });
  const read = await readPart(input, alive, say);
  if (!read.ok) return read;
  say('looking');
  const looked = within(alive, MENDED, 1);
  return ok(checkPart(read.value, input.thickest, looked, (found) => say('looking', found)));
}

export async function drawPartJob(input: Input<'drawPart'>, alive: Alive): Promise<Output<'drawPart'>> {
  const read = await readPart(input, alive, () => undefined);
  return read.ok ? ok(drawPart(read.value.mesh, input.up, input.options, () => alive())) : read;
}
