import { describe, expect, it } from 'vitest';
import { auditPlace } from '../../../src/core/inspect/toolpath/auditPlace.ts';
import { judgePlace, wantedOfFile } from '../../../src/core/inspect/toolpath/judgePlace.ts';
import { expectClose } from '../../support/close.ts';
import { DIAMETER, leafPart } from '../../support/laidParts.ts';
import { nearOf } from '../../support/toolpaths.ts';

/** A leaf drawn so thick that its two lines of 0.42 mm lie this far apart. */
function spaced(spacing: number) {
  const layers = Array.from({ length: 10 }, () => ({ contours: [0.42] }));
  const { toolpath, place } = leafPart({ length: 12, thickness: spacing + 0.42, height: 0.2, layers });
  const audit = auditPlace(place, nearOf(toolpath), DIAMETER);
  const { findings } = judgePlace(place, audit, wantedOfFile(audit, place));
  return { audit, pressed: findings.find(({ kind }) => kind === 'pressed') };
}

/** Area of the bead over its height, by hand: a rectangle 0.22 wide and a circle of 0.2. */
const ROOM = 0.22 + (Math.PI * 0.1 ** 2) / 0.2;

describe('lines that lie too close', () => {
  it('are told by how much, and in which layers', () => {
    const { audit, pressed } = spaced(0.3);
    for (const layer of audit.layers) {
      expectClose(layer.pressed.most, ROOM - 0.3, { abs: 1e-9, because: 'round-off' });
      expect(layer.pressed.share).toBe(1);
    }
    expect(pressed).toMatchObject({ grade: 'caution', layers: [[1, 10]], count: 10 });
    expectClose(pressed!.widths!.most, ROOM - 0.3, { abs: 1e-9, because: 'round-off' });
  });

  it('are not told where each has the room that its plastic needs, or more', () => {
    for (const spacing of [0.42, 0.4, ROOM]) {
      const { audit, pressed } = spaced(spacing);
      expect(pressed).toBeUndefined();
      expect(audit.layers.every(({ pressed: { most } }) => most === 0)).toBe(true);
    }
  });
});
