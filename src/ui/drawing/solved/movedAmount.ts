import type { Point } from '../../../core/geometry/outline.ts';
import { signedAmount } from '../../text/solvedDrawingText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { labelBox, type Box, type Label } from '../lettering.ts';
import { levelDimension, NO_MARKS, uprightDimension, type Marks } from '../marks.ts';
import { onSheet, through, type Sheet } from '../sheet.ts';
import { carried, poseIn, type Scene } from './scene.ts';
import { stateAt, type StateNow } from './state.ts';
import { boundsOf } from './swept.ts';
import type { Travelled } from './travelled.ts';

/** How far the driven pad has been moved, as it is written on the drawing: pencil lines and figures. */
export interface MovedAmount {
  readonly marks: Marks;
  /** Centre lines as printed and as moved, of a turn. */
  readonly rest: string;
  readonly moved: string;
}

const NOTHING: MovedAmount = { marks: NO_MARKS, rest: '', moved: '' };
/** A turn less than this [rad], a travel less than this [px], is not worth an arrow. */
const LITTLE = { turn: 0.02, travel: 14 };

/** Marks of how far it has gone in a state. */
export function movedAmount(scene: Scene, sheet: Sheet, state: StateNow, unit: LengthUnit): MovedAmount {
  const { direction } = scene.solved.network.driven;
  return direction === 'turn'
    ? turnMarks(scene, sheet, state, unit)
    : travelMarks(scene, sheet, state, direction, unit);
}

const words = (text: string, x: number, y: number, anchor: Label['anchor']): Label => ({
  text,
  x,
  y,
  anchor,
  tone: 'pencil',
  size: 13,
});

/** The driven pad, and its box as printed [mm]. */
function drivenPad({ pads, solved }: Scene) {
  const pad = pads.find(({ id }) => id === solved.network.driven.at);
  return pad && { pad, box: boundsOf(pads.filter(({ id }) => id === pad.id).flatMap(({ loops }) => loops.flat())) };
}

/** Beside the pad, from where one corner was to where it is. */
function travelMarks(scene: Scene, sheet: Sheet, state: StateNow, direction: 'x' | 'y', unit: LengthUnit): MovedAmount {
  const driven = drivenPad(scene);
  if (!driven) return NOTHING;
  const { pad, box } = driven;
  const now = poseIn(pad, state);
  const by = direction === 'x' ? now.x - pad.printed.x : now.y - pad.printed.y;
  if (Math.abs(by) * sheet.pxPerMm < LITTLE.travel) return NOTHING;
  const text = signedAmount(Math.abs(state.amount), 'travel', unit);
  if (direction === 'x') {
    const [a, b] = [onSheet(sheet, { x: box.right, y: box.top }), onSheet(sheet, { x: box.right + by, y: box.top })];
    const y = a.y - 24;
    const isRight = b.x > a.x;
    const label = words(text, (isRight ? b.x : a.x) + 8, y + 4, 'start');
    return { ...NOTHING, marks: levelDimension(a.x, b.x, y, a.y - 4, label, false) };
  }
  const [a, b] = [onSheet(sheet, { x: box.right, y: box.top }), onSheet(sheet, { x: box.right, y: box.top + by })];
  const x = a.x + 30;
  return {
    ...NOTHING,
    marks: uprightDimension(a.y, b.y, x, a.x + 4, words(text, x - 6, Math.min(a.y, b.y) - 8, 'start')),
  };
}

/** Between the centre line as printed and as moved, beyond the far edge of the pad. */
function turnMarks(scene: Scene, sheet: Sheet, state: StateNow, unit: LengthUnit): MovedAmount {
  const driven = drivenPad(scene);
  if (!driven) return NOTHING;
  const { pad, box } = driven;
  const now = poseIn(pad, state);
  const turn = now.turn - pad.printed.turn;
  const { heading, far } = centreLine(scene);
  // A pad that is carried away as it turns has no one place about which an angle could be drawn.
  if (Math.hypot(now.x - pad.printed.x, now.y - pad.printed.y) > far) return NOTHING;
  const length = far + 16 / sheet.pxPerMm;
  const out = (reach: number): Point => ({
    x: pad.printed.x + reach * Math.cos(heading),
    y: pad.printed.y + reach * Math.sin(heading),
  });
  const isRound =
    Math.hypot((box.left + box.right) / 2 - pad.printed.x, (box.bottom + box.top) / 2 - pad.printed.y) < 1e-6;
  const reach = isRound ? 0.78 * far : length - 8 / sheet.pxPerMm;
  const line = (points: readonly Point[]) => through(points.map((point) => onSheet(sheet, point)));
  const end = out(isRound ? far : length);
  const rest = line([out(0), end]);
  const moved = line([carried(pad, now, out(0)), carried(pad, now, end)]);
  if (Math.abs(turn) < LITTLE.turn) return { ...NOTHING, rest, moved };
  const arc = Array.from({ length: 33 }, (_, i) => {
    const angle = heading + (turn * i) / 32;
    const centre = {
      x: pad.printed.x + ((now.x - pad.printed.x) * i) / 32,
      y: pad.printed.y + ((now.y - pad.printed.y) * i) / 32,
    };
    return onSheet(sheet, { x: centre.x + reach * Math.cos(angle), y: centre.y + reach * Math.sin(angle) });
  });
  const [tip, behind] = [arc.at(-1)!, arc.at(-3)!];
  const text = signedAmount(state.amount, 'turn', unit);
  // Beyond the arc where it stands beside the joint, ahead of it where it stands over or under it.
  const beyond = Math.cos(heading);
  const side = Math.abs(beyond) > 0.5 ? Math.sign(beyond) : tip.x >= arc[0]!.x ? 1 : -1;
  const inside = onSheet(sheet, {
    x: now.x + 0.42 * far * Math.cos(heading + turn / 2),
    y: now.y + 0.42 * far * Math.sin(heading + turn / 2),
  });
  const label = isRound
    ? words(text, inside.x, inside.y + 4, 'middle')
    : words(text, tip.x + side * 8, tip.y - 4, side > 0 ? 'start' : 'end');
  const head = { ...tip, turn: (Math.atan2(tip.y - behind.y, tip.x - behind.x) * 180) / Math.PI };
  return { rest, moved, marks: { ...NO_MARKS, lines: through(arc), arrows: [head], labels: [label] } };
}

/** The way from the place that is turned about to the middle of the pad, and how far the pad reaches that way [mm]. */
function centreLine(scene: Scene): { readonly heading: number; readonly far: number } {
  const driven = drivenPad(scene);
  if (!driven) return { heading: Math.PI / 2, far: 0 };
  const { pad, box } = driven;
  const middle = { x: (box.left + box.right) / 2 - pad.printed.x, y: (box.bottom + box.top) / 2 - pad.printed.y };
  const isCentred = Math.hypot(middle.x, middle.y) < 1e-6;
  const heading = isCentred ? Math.PI / 2 : squared(Math.atan2(middle.y, middle.x));
  const way = { x: Math.cos(heading), y: Math.sin(heading) };
  const reaches = pad.loops.flat().map(({ x, y }) => (x - pad.printed.x) * way.x + (y - pad.printed.y) * way.y);
  return { heading, far: Math.max(...reaches) };
}

/** The nearest direction along an axis. */
function squared(angle: number): number {
  return (Math.round(angle / (Math.PI / 2)) * Math.PI) / 2;
}

/** Everywhere that these figures will stand, for words that stay to keep off [px]. */
export function movedRoom(scene: Scene, { from, wanted }: Travelled, sheet: Sheet, unit: LengthUnit): readonly Box[] {
  const looks = Array.from({ length: 13 }, (_, i) => i / 12);
  const amounts = [...looks.map((share) => share * wanted), ...(from < 0 ? looks.map((share) => share * from) : [])];
  return amounts.flatMap((amount) => {
    const { marks } = movedAmount(scene, sheet, stateAt(scene.solved, amount), unit);
    return [
      ...marks.labels.map(labelBox),
      ...marks.arrows.map(({ x, y }) => ({ x: x - 5, y: y - 5, width: 10, height: 10 })),
    ];
  });
}
