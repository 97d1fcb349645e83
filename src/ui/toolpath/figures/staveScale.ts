/** How high the rows of the stave are, and at what scale its beads are drawn [px]. */
import type { PlaceAudit } from '../../../core/inspect/toolpath/audit.ts';
import type { JudgedPlace, LaidFinding } from '../../../core/inspect/toolpath/judgedPlace.ts';
import type { Mm } from '../../../core/units.ts';
import { joinedRows, singleRows, type StaveRow } from './staveRows.ts';

/** A row where it stands, from the top. */
export interface PlacedRow extends StaveRow {
  readonly y: number;
  readonly high: number;
}

export interface StaveScale {
  /** Of the beads: 20 for 20 : 1. */
  readonly scale: number;
  readonly pxPerMm: number;
  /** Whether y is height as well, at the same scale; else neighbours are joined and rows are of a size. */
  readonly isTrue: boolean;
  /** From the bottom up. */
  readonly rows: readonly PlacedRow[];
  readonly top: number;
  readonly bottom: number;
}

/** Room for the heads. */
const HEADS = 58;
/** Rows together are no higher, and none so low that it cannot be read. */
const TALLEST = 620;
const LOWEST = 7;
/** Rows of a size: of one layer, and of several. */
const SINGLE = 15;
const JOINED = 22;
/** More layers than this are not drawn at the largest scale. */
const MANY = 40;

/** Half of what lies across, at its widest [mm]. */
export function reachOf(rows: readonly StaveRow[], { wanted }: Pick<JudgedPlace, 'wanted'>): Mm {
  const laid = rows.flatMap(({ beads }) => beads.map(({ off, width }) => Math.abs(off) + width / 2));
  return Math.max(wanted.countOf === 'lines' ? wanted.thickness / 2 : 0, ...laid, 0.1);
}

function trueRows(rows: readonly StaveRow[], by: number): Pick<StaveScale, 'rows' | 'top' | 'bottom'> {
  const [low, high] = [rows[0]?.bottom ?? 0, rows.at(-1)?.top ?? 0];
  const placed = rows.map((row, i) => {
    // A row begins where the one below it ends, whatever files round.
    const bottom = rows[i - 1]?.top ?? row.bottom;
    return { ...row, y: HEADS + (high - row.top) * by, high: (row.top - bottom) * by };
  });
  return { rows: placed, top: HEADS, bottom: HEADS + (high - low) * by };
}

function sizedRows(rows: readonly StaveRow[]): Pick<StaveScale, 'rows' | 'top' | 'bottom'> {
  let y = HEADS;
  const placed = rows.toReversed().map((row) => {
    const high = row.last > row.first ? JOINED : SINGLE;
    y += high;
    return { ...row, y: y - high, high };
  });
  return { rows: placed.toReversed(), top: HEADS, bottom: y };
}

interface Asked {
  readonly judged: Pick<JudgedPlace, 'audit' | 'wanted'>;
  readonly numbered: ReadonlyMap<LaidFinding, number>;
  /** Room for the beads of one layer side by side [px]. */
  readonly room: number;
  readonly screenPxPerMm: number;
}

const lowest = ({ layers }: PlaceAudit) => Math.min(...layers.map(({ height }) => height));

export function staveScale({ judged, numbered, room, screenPxPerMm }: Asked): StaveScale {
  const { audit } = judged;
  const single = singleRows(audit);
  const reach = reachOf(single, judged);
  const tall = (single.at(-1)?.top ?? 0) - (single[0]?.bottom ?? 0);
  const isReadable = (by: number) => lowest(audit) * by >= LOWEST && tall * by <= TALLEST;
  const fine = (single.length <= MANY ? [20, 10] : [10]).filter((scale) => isReadable(scale * screenPxPerMm));
  // Where the beads are wider than their room at any readable scale they are broken off at the sides.
  const scale = fine.find((one) => 2 * reach * one * screenPxPerMm <= room) ?? fine[0];
  if (scale !== undefined) {
    const by = scale * screenPxPerMm;
    return { scale, pxPerMm: by, isTrue: true, ...trueRows(single, by) };
  }
  const rows = joinedRows(audit, numbered, Math.floor(TALLEST / JOINED));
  const fits = (one: number) => lowest(audit) * one * screenPxPerMm <= SINGLE - 2;
  const drawn = [20, 10, 5, 2, 1].find((one) => fits(one) && 2 * reach * one * screenPxPerMm <= room) ?? 1;
  return { scale: drawn, pxPerMm: drawn * screenPxPerMm, isTrue: false, ...sizedRows(rows) };
}
