/** Checks a part file: apart from the other jobs, since no joint waits for it. */
import { mendMesh } from '../core/geometry/mesh/mend.ts';
import { scaleMesh } from '../core/geometry/mesh/scaleMesh.ts';
import { boxOf } from '../core/geometry/mesh/meshFigures.ts';
import type { CheckedPart } from '../core/inspect/checkedPart.ts';
import { findFlexures } from '../core/inspect/findFlexures.ts';
import { MM_IN } from '../core/inspect/lengthUnit.ts';
import { partFacts } from '../core/inspect/partFacts.ts';
import { unitOf } from '../core/inspect/unitOf.ts';
import { ok } from '../core/result.ts';
import { readMesh } from '../files/mesh/readMesh.ts';
import type { Alive, Input, Output, PartNews, Tell } from './protocol.ts';

/** What of the whole work reading is, as it shows in the progress; chosen. */
const READING = 0.4;

export async function checkPartJob(
  { file, name, unit: told, thickest }: Input<'checkPart'>,
  alive: Alive,
  tell: Tell,
): Promise<Output<'checkPart'>> {
  const say = (doing: PartNews['doing'], found = 0) => tell({ doing, found });
  say('reading');
  const read = readMesh(new Uint8Array(await file.arrayBuffer()), name, (share) => alive(READING * share));
  if (!read.ok) return read;
  const { format, solids, mesh: raw, unit: stated, notes } = read.value;
  say('mending');
  const { min, max } = boxOf(raw);
  const unit = unitOf(Math.max(max.x - min.x, max.y - min.y, max.z - min.z), stated, told);
  const { mesh, damage } = mendMesh(scaleMesh(raw, MM_IN[unit.unit]));
  alive(READING);
  say('looking');
  const findings = findFlexures(
    mesh,
    { thickest, build: { x: 0, y: 0, z: 1 } },
    () => alive(READING),
    (found) => say('looking', found),
  );
  const part: CheckedPart = { format, solids, unit, facts: partFacts(mesh), damage, findings, thickest, notes };
  return ok(part);
}
