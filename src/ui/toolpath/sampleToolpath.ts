/**
 * A toolpath of our own to look at, written when it is asked for: the rain-flap hinge of the demo part, drawn 1.00 mm thick
 * where two lines of 0.42 mm were meant. All of it is invented, with its faults on purpose: a thin third line in the gap,
 * broken or left out on some layers, and contours that start on the leaf on six.
 */
import type { Point } from '../../core/geometry/outline.ts';

export const SAMPLE_NAME = 'rain-flap-invented.gcode';

const LENGTH = 12;
const DRAWN = 1;
const FILLET = 0.8;
const PAD = { length: 5, half: 3.5 };
const LAYERS = 30;
const HEIGHT = 0.2;
const WIDTH = 0.42;
const FIRST_WIDTH = 0.45;
const FILAMENT = 1.75;
/** Where the middle of the plate is. */
const MIDDLE = { x: 110 - LENGTH / 2, y: 110 };

/** On these layers the contour starts on the leaf, so far from the root [mm]. */
const STARTS: Readonly<Record<number, number>> = { 9: 4.5, 10: 4.8, 11: 5, 12: 5.3, 13: 5.6, 14: 6 };
/** Nothing lies in the gap here; and the line that does is broken there. */
const OPEN = [1, 2, 7, 8, 19, 20, 29, 30];
const BROKEN = [3, 6, 9, 11, 12, 15, 16, 18, 21, 23, 24, 26, 27];
/** Widths of the third line, a millimetre each [mm]; nothing at 0. */
const THIRD = [0.27, 0.24, 0.19, 0.13, 0.1, 0.12, 0.18, 0.23, 0.26, 0.22, 0.16, 0.11];
const THIRD_BROKEN = THIRD.map((width, i) => (i === 4 || i === 8 ? 0 : width));

/** Filament for a piece of bead: a strip with round sides, an ellipse where it is narrower than high. */
function feed(width: number, length: number): number {
  const round = (Math.PI / 4) * HEIGHT;
  const area = width > HEIGHT ? (width - HEIGHT + round) * HEIGHT : round * width;
  return (area * length) / ((Math.PI / 4) * FILAMENT ** 2);
}

/** The middle of the outer line from the end of the leaf round one pad: up the fillet, round, and down to the other side. */
function aroundPad(width: number): readonly Point[] {
  const off = width / 2;
  const [y, outer, far] = [DRAWN / 2 - off, PAD.half - off, off - PAD.length];
  const centre = { x: FILLET, y: DRAWN / 2 + FILLET };
  const arc = Array.from({ length: 9 }, (_, i) => {
    const angle = -Math.PI / 2 - (i / 8) * (Math.PI / 2);
    const radius = FILLET + off;
    return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
  });
  const above = [{ x: FILLET, y }, ...arc.slice(1), { x: -off, y: outer }, { x: far, y: outer }, { x: far, y: 0 }];
  return [
    ...above,
    ...above
      .slice(0, -1)
      .toReversed()
      .map((point) => ({ x: point.x, y: -point.y })),
  ];
}

/** The whole contour, closed, from its start: on the leaf so far from the root, or on the far face of a pad. */
function contour(width: number, start: number | undefined): readonly Point[] {
  const left = aroundPad(width);
  const right = left.map(({ x, y }) => ({ x: LENGTH - x, y: -y }));
  const face = left.length >> 1;
  if (start === undefined) return [...left.slice(face), ...right, ...left.slice(0, face + 1)];
  const from = { x: start, y: DRAWN / 2 - width / 2 };
  return [from, ...left, ...right, from];
}

/** Lines that fill a pad, up and down. */
function filling(isLeft: boolean): readonly Point[] {
  const [from, to] = [WIDTH * 1.5 - PAD.length, -WIDTH * 1.5];
  const [low, high] = [WIDTH - PAD.half + WIDTH / 2, PAD.half - WIDTH * 1.5];
  const count = Math.round((to - from) / WIDTH);
  return Array.from({ length: count + 1 }, (_, i) => {
    const x = from + ((to - from) * i) / count;
    const ends = [low, high].map((y) => (isLeft ? { x, y } : { x: LENGTH - x, y }));
    return i % 2 === 0 ? ends : ends.toReversed();
  }).flat();
}

const figure = (value: number, places: number) => String(Number(value.toFixed(places)));

/** Writes moves; what is laid goes on from where the nozzle is. */
class Writer {
  readonly lines: string[] = [];

  go({ x, y }: Point, laid = 0): void {
    const place = `X${figure(MIDDLE.x + x, 3)} Y${figure(MIDDLE.y + y, 3)}`;
    this.lines.push(laid > 0 ? `G1 ${place} E${figure(laid, 5)}` : `G0 ${place}`);
  }

  /** A line of even width, or of one width a piece; a piece of none is skipped over. */
  lay(points: readonly Point[], widths: number | readonly number[]): void {
    const [first, ...others] = points;
    if (!first) return;
    this.lines.push('G1 E-0.8');
    this.go(first);
    this.lines.push('G1 E0.8');
    let before = first;
    for (const [i, point] of others.entries()) {
      const width = typeof widths === 'number' ? widths : (widths[i] ?? 0);
      this.go(point, width > 0 ? feed(width, Math.hypot(point.x - before.x, point.y - before.y)) : 0);
      before = point;
    }
  }
}

function layLayer(out: Writer, layer: number): void {
  const width = layer === 1 ? FIRST_WIDTH : WIDTH;
  out.lines.push(`G0 Z${figure(layer * HEIGHT, 2)}`);
  out.lay(contour(width, STARTS[layer]), width);
  if (!OPEN.includes(layer)) {
    const points = [...THIRD, 0].map((_, i) => ({ x: i, y: 0 }));
    out.lay(points, BROKEN.includes(layer) ? THIRD_BROKEN : THIRD);
  }
  out.lay(filling(true), width);
  out.lay(filling(false), width);
}

/** The text of the sample. */
export function sampleToolpath(): string {
  const out = new Writer();
  out.lines.push('; Rain-flap hinge, invented, with faults on purpose', 'G21', 'G90', 'M83', 'G92 E0');
  for (let layer = 1; layer <= LAYERS; layer += 1) layLayer(out, layer);
  out.lines.push('G1 E-0.8', 'G0 Z20', '');
  return out.lines.join('\n');
}
