/** How many dots a picture is saved with, and what a file of dots says of its size on paper. */

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Three dots to a px where that makes no more than a page of print has across, else two. */
const FINE = 3600;
/** What every browser paints at once [dots]. */
const MOST = 16_000_000;

/** Dots to a px: three, two for what is large, less for what no browser could paint. */
export function dotsPerPx({ width, height }: Size): number {
  const times = 3 * Math.max(width, height) <= FINE ? 3 : 2;
  if (width * height * times ** 2 <= MOST) return times;
  return Math.sqrt(MOST / (width * height));
}

/** A picture in dots. */
export function dotsOf({ width, height }: Size): Size {
  const times = dotsPerPx({ width, height });
  return { width: Math.floor(width * times), height: Math.floor(height * times) };
}

/** Dots to a metre where a px is 1/96 in. */
export function dotsPerMetre(size: Size): number {
  return Math.round((dotsPerPx(size) * 96) / 0.0254);
}

const CRC = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

/** Check sum of a chunk (ISO 3309, as PNG has it in its annex D; from memory). */
function crcOf(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) c = (CRC[(c ^ byte) & 0xff] ?? 0) ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}

/** Signature and head of a PNG: what comes after may be of any kind. */
const HEAD = 8 + 25;

/** The same PNG with its size on paper, so that a drawing at true scale is printed at true scale. */
export function withSizeOnPaper(png: Uint8Array, perMetre: number): Uint8Array {
  const chunk = new Uint8Array(21);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set([0x70, 0x48, 0x59, 0x73], 4); // pHYs
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  chunk[16] = 1; // the unit is the metre
  view.setUint32(17, crcOf(chunk.subarray(4, 17)));
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, HEAD), 0);
  whole.set(chunk, HEAD);
  whole.set(png.subarray(HEAD), HEAD + chunk.length);
  return whole;
}
