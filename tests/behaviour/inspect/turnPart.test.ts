import { describe, expect, it } from 'vitest';
import { meshFigures } from '../../../src/core/geometry/mesh/meshFigures.ts';
import { pointOf } from '../../../src/core/geometry/mesh/triangleMesh.ts';
import { PLATE_UPS } from '../../../src/core/inspect/judged.ts';
import { partFacts } from '../../../src/core/inspect/partFacts.ts';
import { turnMesh, turnPoint } from '../../../src/core/inspect/turnPart.ts';
import { turnedOver } from '../../../src/core/geometry/mesh/winding.ts';
import { boxMesh } from '../../support/meshes.ts';
import { placedMesh, together } from '../../support/solids.ts';

const DIRECTIONS = {
  '+x': { x: 1, y: 0, z: 0 },
  '-x': { x: -1, y: 0, z: 0 },
  '+y': { x: 0, y: 1, z: 0 },
  '-y': { x: 0, y: -1, z: 0 },
  '+z': { x: 0, y: 0, z: 1 },
  '-z': { x: 0, y: 0, z: -1 },
} as const;

describe('a part turned to stand on the plate', () => {
  it.each(PLATE_UPS)('%s points up, exactly', (up) => {
    expect(turnPoint(DIRECTIONS[up], up)).toEqual({ x: 0, y: 0, z: 1 });
  });

  it.each(PLATE_UPS)('%s up keeps it from being mirrored', (up) => {
    const box = boxMesh(2, 3, 6);
    const turned = turnMesh(box, up);
    const { volume, area } = meshFigures(turned);
    expect([volume, area]).toEqual([36, 72]);
    for (const vertex of [0, 3, 6]) expect(pointOf(turned, vertex)).toEqual(turnPoint(pointOf(box, vertex), up));
  });

  it('is the same where it stands already', () => {
    const box = boxMesh(2, 3, 6);
    expect(turnMesh(box, '+z')).toBe(box);
  });
});

const placing = (x: number) => ({ axis: [0, 0, 1], angle: 0, shift: [x, 1, 1] }) as const;

describe('facts of a part', () => {
  const allOver = new Uint8Array(12).fill(1);

  it('count bodies by their outsides', () => {
    const cavity = placedMesh(turnedOver(boxMesh(1, 1, 1), allOver), placing(1));
    const hollow = together(boxMesh(4, 4, 4), cavity, placedMesh(boxMesh(1, 1, 1), placing(9)));
    expect(partFacts(hollow)).toMatchObject({ triangles: 36, vertices: 24, bodies: 2, area: 96 + 6 + 6 });
    expect(partFacts(hollow).volume).toBeCloseTo(64, 12);
    expect(partFacts(hollow).box).toEqual({ min: { x: 0, y: 0, z: 0 }, max: { x: 10, y: 4, z: 4 } });
  });
});
