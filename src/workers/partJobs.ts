/** Checks and draws a part file: apart from the other jobs, since no joint waits for it. */
import { mendMesh, type Mended } from '../core/geometry/mesh/mend.ts';
import { scaleMesh } from '../core/geometry/mesh/scaleMesh.ts';
import { boxOf } from '../core/geometry/mesh/meshFigures.ts';
import type { CheckedPart, UnitRead } from '../core/inspect/checkedPart.ts';
import { findFlexures } from '../core/inspect/findFlexures.ts';
import { MM_IN, type LengthUnit } from '../core/inspect/lengthUnit.ts';
import { partFacts } from '../core/inspect/partFacts.ts';
import { drawPart } from '../core/inspect/picture/drawPart.ts';
import { unitOf } from '../core/inspect/unitOf.ts';
import { ok, type Result } from '../core/result.ts';
import type { MeshFile } from '../files/mesh/meshFile.ts';
import { readMesh } from '../files/mesh/readMesh.ts';
import type { Alive, Input, Output, PartNews, Tell } from './protocol.ts';

/** What of the whole work reading is, as it shows in the progress; chosen. */
const READING = 0.4;

interface ReadPart extends Mended {
  readonly file: MeshFile;
  readonly unit: UnitRead;
}

/** The last part that was read: it is drawn right after it was checked. */
let last: { readonly key: string; readonly unit: LengthUnit | undefined; readonly part: ReadPart } | undefined;

async function readPart(
  { file, name, key, unit: told }: Pick<Input<'checkPart'>, 'file' | 'name' | 'key' | 'unit'>,
  alive: Alive,
  say: (doing: PartNews['doing']) => void,
): Promise<Result<ReadPart>> {
  if (last?.key === key && (last.unit === told || last.part.unit.unit === told)) return ok(last.part);
  last = undefined;
  say('reading');
  const read = readMesh(new Uint8Array(await file.arrayBuffer()), name, (share) => alive(READING * share));
  if (!read.ok) return read;
  say('mending');
  const { min, max } = boxOf(read.value.mesh);
  const unit = unitOf(Math.max(max.x - min.x, max.y - min.y, max.z - min.z), read.value.unit, told);
  const part = { ...mendMesh(scaleMesh(read.value.mesh, MM_IN[unit.unit])), file: read.value, unit };
  last = { key, unit: told, part };
  return ok(part);
}

export async function checkPartJob(input: Input<'checkPart'>, alive: Alive, tell: Tell): Promise<Output<'checkPart'>> {
  const say = (doing: PartNews['doing'], found = 0) => tell({ doing, found });
  const read = await readPart(input, alive, say);
  if (!read.ok) return read;
  const { mesh, damage, file, unit } = read.value;
  const { thickest } = input;
  say('looking');
  const findings = findFlexures(
    mesh,
    { thickest, build: { x: 0, y: 0, z: 1 } },
    () => alive(READING),
    (found) => say('looking', found),
  );
  const { format, solids, notes } = file;
  const part: CheckedPart = { format, solids, unit, facts: partFacts(mesh), damage, findings, thickest, notes };
  return ok(part);
}

export async function drawPartJob(input: Input<'drawPart'>, alive: Alive): Promise<Output<'drawPart'>> {
  const read = await readPart(input, alive, () => undefined);
  return read.ok ? ok(drawPart(read.value.mesh, input.up, input.options, () => alive())) : read;
}
