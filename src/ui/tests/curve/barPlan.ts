/** A strip bent over a bar or turned over a free length, to scale: where its pieces lie on the paper [px]. */
import type { Bend } from '../../../core/material/tally.ts';
import type { Mm } from '../../../core/units.ts';
import { strainColour, type RampStops } from '../../drawing/ramp.ts';

/** Scales of drawings, the largest first. */
const SCALES = [20, 10, 5, 4, 2, 1] as const;
/** The straight ends beside the bend, what stands beside those, and the most that the bend may take [px]. */
const TAIL = 58;
const BESIDE = 112;
/** Above the bend: what is said of its skin, and under that the thickness of its free end. */
const OVER = 48;
const MOST = 230;
/** Slices through the thickness. */
const SLICES = 12;

export interface BarPlan {
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  /** Radius of the inner face [px], and the thickness. */
  readonly inner: number;
  readonly thick: number;
  /** Middle of the bend. */
  readonly centre: { readonly x: number; readonly y: number };
  readonly turn: number;
  /** Arcs through the thickness, inner first, each in the colour of its strain. */
  readonly slices: readonly { readonly d: string; readonly colour: string; readonly width: number }[];
  /** Both faces from end to end. */
  readonly outline: string;
  /** The bar that it lies on; absent where its ends are turned in the air. */
  readonly bar: string | undefined;
  readonly skin: { readonly x: number; readonly y: number };
  /** Middle of the free end, where the thickness is told. */
  readonly end: { readonly x: number; readonly y: number };
}

/** From the upper end, which lies level to the right, round to the left and down. */
const at = (centre: BarPlan['centre'], radius: number, turned: number) => ({
  x: centre.x - radius * Math.sin(turned),
  y: centre.y - radius * Math.cos(turned),
});

const f = (value: number) => value.toFixed(1);

/** Round from where the pen is. */
function round(centre: BarPlan['centre'], radius: number, turn: number): string {
  const to = at(centre, radius, turn);
  return `A${f(radius)} ${f(radius)} 0 ${turn > Math.PI ? 1 : 0} 0 ${f(to.x)} ${f(to.y)}`;
}

function arc(centre: BarPlan['centre'], radius: number, turn: number): string {
  const from = at(centre, radius, 0);
  return `M${f(from.x)} ${f(from.y)}${round(centre, radius, turn)}`;
}

/** A face with its straight ends. */
function face(centre: BarPlan['centre'], radius: number, turn: number): string {
  const [from, to] = [at(centre, radius, 0), at(centre, radius, turn)];
  const on = { x: to.x - TAIL * Math.cos(turn), y: to.y + TAIL * Math.sin(turn) };
  return `M${f(from.x + TAIL)} ${f(from.y)}H${f(from.x)}${round(centre, radius, turn)}L${f(on.x)} ${f(on.y)}`;
}

/** As much as is drawn of a turn: further round it would lie over itself. */
const MOST_TURN = (3 * Math.PI) / 2;

interface Paper {
  readonly width: number;
  readonly pxPerMm: number;
  readonly stops: RampStops;
}

export function barPlan(
  { bend, thickness, strain }: { readonly bend: Bend; readonly thickness: Mm; readonly strain: number },
  { width, pxPerMm, stops }: Paper,
): BarPlan {
  const turn = bend.way === 'over' ? Math.PI / 2 : Math.min(bend.turn, MOST_TURN);
  const radius = bend.way === 'over' ? bend.radius : Math.max(0, bend.length / bend.turn - thickness / 2);
  const back = turn > Math.PI / 2 ? TAIL : 0;
  const room = Math.min(MOST, width - 12 - TAIL - BESIDE - back);
  const scale = SCALES.find((one) => (radius + thickness) * one * pxPerMm <= room) ?? 1;
  const px = scale * pxPerMm;
  const [inner, thick] = [radius * px, thickness * px];
  const outer = inner + thick;
  const centre = { x: 12 + outer + back, y: OVER + outer };
  const step = thick / SLICES;
  const slices = Array.from({ length: SLICES }, (_, i) => {
    const through = (i + 0.5) / SLICES;
    const colour = strainColour(Math.abs(2 * through - 1) * strain, stops);
    return { d: arc(centre, inner + through * thick, turn), colour, width: step + 0.4 };
  });
  const skin = at(centre, outer, turn / 2);
  return {
    scale,
    width: centre.x + TAIL + BESIDE,
    height: centre.y + (turn > Math.PI ? outer : 0) + (turn >= Math.PI / 2 && turn < Math.PI ? TAIL : 20) + 16,
    inner,
    thick,
    centre,
    turn,
    slices,
    outline: `${face(centre, inner, turn)}${face(centre, outer, turn)}`,
    bar:
      bend.way === 'over'
        ? `M${f(centre.x + TAIL)} ${f(centre.y - inner)}H${f(centre.x)}A${f(inner)} ${f(inner)} 0 0 0 ${f(centre.x - inner)} ${f(centre.y)}V${f(centre.y + TAIL)}H${f(centre.x + TAIL)}Z`
        : undefined,
    skin,
    end: { x: centre.x + TAIL - 10, y: centre.y - inner - thick / 2 },
  };
}
