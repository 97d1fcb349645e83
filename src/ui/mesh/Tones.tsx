import { useEffect, useRef } from 'react';
import { INSIDE_TONE, TONES, type ToneRaster } from '../../core/inspect/picture/picture.ts';

type Colour = readonly [number, number, number];

/** A colour of the sheet as it is now. */
function colour(name: string): Colour {
  const text = getComputedStyle(document.documentElement).getPropertyValue(name).trim();
  const part = (at: number) => Number.parseInt(text.slice(at, at + 2), 16) || 0;
  return [part(1), part(3), part(5)];
}

const mixed = (a: Colour, b: Colour, share: number): Colour =>
  a.map((from, i) => Math.round(from + share * ((b[i] ?? 0) - from))) as unknown as Colour;

/** Paper, then from lit to turned away, and the inside of a surface with a hole. */
function palette(): readonly Colour[] {
  const [sheet, bead, ink, fail] = ['--sheet', '--bead', '--ink2', '--fail'].map(colour) as [
    Colour,
    Colour,
    Colour,
    Colour,
  ];
  const deep = mixed(bead, ink, 0.22);
  const tones = Array.from({ length: TONES }, (_, i) => {
    const share = i / (TONES - 1);
    return share < 0.6 ? mixed(sheet, bead, share / 0.6) : mixed(bead, deep, (share - 0.6) / 0.4);
  });
  const all: Colour[] = [sheet, ...tones];
  all[INSIDE_TONE] = mixed(sheet, fail, 0.35);
  return all;
}

function paint(canvas: HTMLCanvasElement, { width, height, pixels }: ToneRaster): void {
  const paper = canvas.getContext('2d');
  if (!paper) return;
  const colours = palette();
  const image = paper.createImageData(width, height);
  for (const [i, tone] of pixels.entries()) {
    const [red, green, blue] = colours[tone] ?? [0, 0, 0];
    image.data.set([red, green, blue, tone === 0 ? 0 : 255], 4 * i);
  }
  paper.putImageData(image, 0, 0);
}

/** Flat tones of the part, in the inks of the sheet as they were when it was first shown. */
export function Tones({ tones, pxPerMm }: { readonly tones: ToneRaster; readonly pxPerMm: number }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    // The theme is put in force after this.
    const frame = requestAnimationFrame(() => canvas.current && paint(canvas.current, tones));
    return () => cancelAnimationFrame(frame);
  }, [tones]);
  const { width, height, pixelsPerMm, margin } = tones;
  const by = pxPerMm / pixelsPerMm;
  return (
    <canvas
      ref={canvas}
      width={width}
      height={height}
      style={{ width: width * by, height: height * by, left: -margin * by, top: -margin * by }}
      aria-hidden="true"
    />
  );
}
