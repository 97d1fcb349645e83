import { describe, expect, it } from 'vitest';
import type { ByteSource } from '../../../src/files/gcode/byteSource.ts';
import { checkGcode, nearPlaces } from '../../../src/files/gcode/checkGcode.ts';
import { leafPart } from '../../support/laidParts.ts';
import { gcodeOf } from '../../support/toolpaths.ts';

const LAYERS = Array.from({ length: 10 }, () => ({ contours: [0.42] }));
const { toolpath, place } = leafPart({ length: 12, thickness: 0.84, height: 0.2, layers: LAYERS });
const BYTES = new TextEncoder().encode(gcodeOf(toolpath));

/** A file that can be read so often, and is gone then. */
function goneAfter(times: number): ByteSource {
  let left = times;
  return {
    size: BYTES.length,
    read: (from, to) => {
      left -= 1;
      return left < 0 ? Promise.reject(new Error('gone')) : Promise.resolve(BYTES.subarray(from, to));
    },
  };
}

describe('a file that goes away while it is checked', () => {
  it.each([0, 1, 2])(
    'is told, not taken for one in which nothing is laid, when it can be read %i times',
    async (times) => {
      const heard = { alive: () => undefined, say: () => undefined };
      const checked = await checkGcode(goneAfter(times), { thickest: 2.6 }, heard);
      expect(checked.ok).toBe(false);
      if (!checked.ok) expect(checked.problems[0].code).toBe('unreadable');
    },
  );

  it('is told when a box is drawn in it', async () => {
    const near = await nearPlaces(goneAfter(0), 1.75, [place], undefined, () => undefined);
    expect(near.ok).toBe(false);
  });
});
