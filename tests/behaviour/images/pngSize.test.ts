/** How many dots a picture is saved with, and its size on paper in the file. */
import { crc32, deflateSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dotsOf, dotsPerMetre, dotsPerPx, withSizeOnPaper } from '../../../src/ui/images/pngSize.ts';

describe('dots of a picture', () => {
  it('is three times as fine as the screen, twice where that is plenty', () => {
    expect(dotsOf({ width: 399, height: 278 })).toEqual({ width: 1197, height: 834 });
    expect(dotsOf({ width: 1600, height: 500 })).toEqual({ width: 3200, height: 1000 });
  });

  it('never asks for more than browsers paint, and never for nothing', () => {
    const side = fc.integer({ min: 20, max: 20_000 });
    fc.assert(
      fc.property(side, side, (width, height) => {
        const dots = dotsOf({ width, height });
        expect(dots.width * dots.height).toBeLessThanOrEqual(16_000_000);
        expect(Math.min(dots.width, dots.height)).toBeGreaterThanOrEqual(1);
        expect(dotsPerPx({ width, height })).toBeLessThanOrEqual(3);
      }),
    );
  });

  it('tells 288 dots to the inch of three dots a px, so that true scale stays true on paper', () => {
    // 288 ÷ 0.0254 = 11 338.6.
    expect(dotsPerMetre({ width: 399, height: 278 })).toBe(11339);
  });
});

function chunk(kind: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), data]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(data.length, 0);
  frame.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)]);
}

/** A PNG of one black dot: head, data and end, with the check sums of zlib. */
function onePixel(): Uint8Array {
  const head = Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(Buffer.from([0, 0]))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

describe('size on paper', () => {
  it('stands after the head of the file with a check sum that zlib agrees with', () => {
    const before = onePixel();
    const after = Buffer.from(withSizeOnPaper(before, 11339));
    const size = after.subarray(33, 54);
    expect(size.readUInt32BE(0)).toBe(9);
    expect(size.subarray(4, 8).toString('latin1')).toBe('pHYs');
    expect([size.readUInt32BE(8), size.readUInt32BE(12), size[16]]).toEqual([11339, 11339, 1]);
    expect(size.readUInt32BE(17)).toBe(crc32(size.subarray(4, 17)));
    expect(Buffer.concat([after.subarray(0, 33), after.subarray(54)]).equals(before)).toBe(true);
  });
});
