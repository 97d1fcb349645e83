/** Where the pieces of a plate, their balloons and the grid stand on the screen [px]. */
import type { PieceId, PlacedPiece, Plate, PlateSize } from '../../../core/coupons/piece.ts';
import { FRAME } from '../../drawing/sheet.ts';
import { grown, letteringWidth, overlap, type Box } from '../../drawing/lettering.ts';
import { PIECE_WORDS } from '../../text/pieceText.ts';
import { letterBox, pieceLetters, type Paper } from './pieceLetters.ts';

interface PlacedPlan {
  readonly placed: PlacedPiece;
  readonly paper: Paper;
  readonly box: Box;
  /** Of each body, the one that is named first. */
  readonly bodies: readonly Box[];
  /** Of its balloon and name. */
  readonly label: Box;
}

interface PlateGrid {
  readonly fine: string;
  readonly heavy: string;
  readonly bars: string;
  readonly frame: string;
}

export interface PlatePlan {
  readonly width: number;
  readonly height: number;
  readonly grid: PlateGrid;
  readonly pieces: readonly PlacedPlan[];
}

/** Of the plate, in whole bars of the frame [mm]. */
interface Window {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const BAR = 10;
/** Kept in sight round the pieces, for their names [mm]. */
const ROUND = 7;
const LABEL_HEIGHT = 22;
const BALLOON = 27;

const barBelow = (value: number) => Math.max(0, Math.floor((value - ROUND) / BAR) * BAR);
const barAbove = (value: number, most: number) => Math.min(most, Math.ceil((value + ROUND) / BAR) * BAR);

/** As much of the plate as is used. */
function windowOf(plate: Plate, size: PlateSize): Window {
  return {
    left: barBelow(Math.min(...plate.map(({ at }) => at.x))),
    right: barAbove(Math.max(...plate.map(({ at, piece }) => at.x + piece.size.x)), size.x),
    bottom: barBelow(Math.min(...plate.map(({ at }) => at.y))),
    top: barAbove(Math.max(...plate.map(({ at, piece }) => at.y + piece.size.y)), size.y),
  };
}

const f = (value: number) => value.toFixed(1);

/** Every whole millimetre between two places. */
function whole(from: number, to: number): number[] {
  return Array.from({ length: Math.floor(to) - Math.ceil(from) + 1 }, (_, i) => Math.ceil(from) + i);
}

/** Every 1 mm and 5 mm, and a frame in bars of 10 mm, inked in turn. */
function gridOf({ left, right, bottom, top }: Window, pxPerMm: number, width: number, height: number): PlateGrid {
  const foot = height - FRAME;
  const across = whole(left, right).map((n) => ({ n, at: FRAME + (n - left) * pxPerMm }));
  const upwards = whole(bottom, top).map((n) => ({ n, at: foot - (n - bottom) * pxPerMm }));
  const lines = (isHeavy: boolean) =>
    [
      ...across.filter(({ n }) => (n % 5 === 0) === isHeavy).map(({ at }) => `M${f(at)} 0V${f(foot)}`),
      ...upwards.filter(({ n }) => (n % 5 === 0) === isHeavy).map(({ at }) => `M${FRAME} ${f(at)}H${f(width)}`),
    ].join('');
  const isInked = ({ n }: { n: number }) => n % (2 * BAR) === 0;
  const long = BAR * pxPerMm;
  const bars = [
    ...across
      .filter(isInked)
      .map(({ at }) => `M${f(at)} ${f(foot + 2)}H${f(Math.min(width, at + long))}v3.5H${f(at)}Z`),
    ...upwards.filter(isInked).map(({ at }) => `M1.5 ${f(at)}V${f(Math.max(0, at - long))}h3.5V${f(at)}Z`),
  ];
  return { fine: lines(false), heavy: lines(true), bars: bars.join(''), frame: `M${FRAME} 0V${f(foot)}H${f(width)}` };
}

/** Places for a name, in the order in which they are liked. */
function spots({ x, y, width, height }: Box, wide: number): readonly { readonly x: number; readonly y: number }[] {
  const [under, over] = [y + height + 5, y - LABEL_HEIGHT - 5];
  const end = x + width - wide;
  const outside = [
    { x, y: under },
    { x, y: over },
    { x: end, y: under },
    { x: end, y: over },
    { x: x + width + 6, y },
    { x: x + width + 6, y: y + height - LABEL_HEIGHT },
  ];
  const inside = [0.5, 0.75, 0.25, 0.9].flatMap((down) =>
    [0.5, 0.1, 0.9].map((right) => ({
      x: x + (width - wide) * right,
      y: y + (height - LABEL_HEIGHT) * down,
    })),
  );
  return [...outside, ...inside];
}

const isClear = (box: Box, paper: Box, others: readonly Box[]) =>
  isWithin(box, paper) && !others.some((other) => overlap(grown(box, 1), other));

type Unnamed = Omit<PlacedPlan, 'label'>;

/** Names one after the other, each in the first place that is clear. */
function named(pieces: readonly Unnamed[], paper: Box): PlacedPlan[] {
  const letters = pieces.flatMap(({ placed, paper: on }) => pieceLetters(placed.piece, on).map(letterBox));
  const taken: Box[] = [];
  return pieces.map((piece) => {
    const width = labelWidth(piece.placed.piece.id);
    const others = [...pieces.filter((other) => other !== piece).map(({ box }) => box), ...letters, ...taken];
    const boxes = [...piece.bodies, piece.box]
      .flatMap((box) => spots(box, width))
      .map((spot) => ({ ...spot, width, height: LABEL_HEIGHT }));
    // Beside its bodies, else on one of them.
    const label = boxes.find((box) => isClear(box, paper, [...others, ...piece.bodies])) ??
      boxes.find((box) => isClear(box, paper, others)) ??
      boxes.find((box) => isWithin(box, paper)) ?? { ...piece.box, width, height: LABEL_HEIGHT };
    taken.push(label);
    return { ...piece, label };
  });
}

function labelWidth(id: PieceId): number {
  return BALLOON + letteringWidth(PIECE_WORDS[id].name, 13) + 4;
}

function isWithin(box: Box, paper: Box): boolean {
  return (
    box.x >= paper.x &&
    box.y >= paper.y &&
    box.x + box.width <= paper.x + paper.width &&
    box.y + box.height <= paper.y + paper.height
  );
}

/** Round each body of a piece that stands there on the paper. */
function bodyBoxes({ piece }: PlacedPiece, { pxPerMm, at }: Paper): Box[] {
  return piece.bodies.map((slabs) => {
    const points = slabs.flatMap(({ region }) => region.flat());
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    const [left, back] = [Math.min(...xs), Math.max(...ys)];
    return {
      x: at.x + left * pxPerMm,
      y: at.y - back * pxPerMm,
      width: (Math.max(...xs) - left) * pxPerMm,
      height: (back - Math.min(...ys)) * pxPerMm,
    };
  });
}

/**
 * Everything on a plate, at so many px to the millimetre.
 *
 * @param plate - at least one piece
 */
export function platePlan(plate: Plate, size: PlateSize, pxPerMm: number): PlatePlan {
  const window = windowOf(plate, size);
  const width = FRAME + (window.right - window.left) * pxPerMm;
  const height = FRAME + (window.top - window.bottom) * pxPerMm;
  const pieces = plate.map((placed): Unnamed => {
    const x = FRAME + (placed.at.x - window.left) * pxPerMm;
    const y = height - FRAME - (placed.at.y - window.bottom) * pxPerMm;
    const deep = placed.piece.size.y * pxPerMm;
    const box = { x, y: y - deep, width: placed.piece.size.x * pxPerMm, height: deep };
    const paper = { pxPerMm, at: { x, y } };
    return { placed, paper, box, bodies: bodyBoxes(placed, paper) };
  });
  const paper = { x: FRAME, y: 0, width: width - FRAME, height: height - FRAME };
  return { width, height, grid: gridOf(window, pxPerMm, width, height), pieces: named(pieces, paper) };
}
