/** What to tell the person who drew a part: each thin section as it is, and how it should be drawn. */
import type { Box3, Point3 } from '../geometry/mesh/triangleMesh.ts';
import { alikeOf, type Alike } from './alike.ts';
import { asLaid } from './asLaid.ts';
import { printedSize } from './buildDirection.ts';
import type { UnitRead } from './checkedPart.ts';
import type { Flexure } from './flexure.ts';
import { judgeAll } from './judge.ts';
import type { AskedOfAll, Judged, PrintedAs } from './judged.ts';
import { goodFillet, longEnough, wholeThickness, type Drawn, type Redrawing } from './redraw.ts';
import { leastOfRoots } from './roots.ts';
import { isLasting, isWhole } from './verdicts.ts';

/** How a section should be drawn, and how it is then judged: whole, and lasting. */
export interface Make {
  readonly drawn: Drawn;
  readonly judged: Judged;
  /** What of it differs from how it is drawn now. */
  readonly changes: readonly (keyof Drawn)[];
}

export type Advice =
  /** It is whole and lasts, and its roots are as round as can be printed. */
  | { readonly kind: 'fine' }
  | { readonly kind: 'make'; readonly make: Make }
  /** No length lasts at that thickness: how it is judged at the longest that is known. */
  | { readonly kind: 'none'; readonly judged: Judged };

/** Sections that are alike. */
export interface ReplyItem {
  readonly numbers: readonly number[];
  /** The first of them, as printed. */
  readonly judged: Judged;
  /** As in the file. */
  readonly drawn: Drawn;
  readonly centre: Point3;
  /** In which section of the findings it was measured. */
  readonly section: number;
  readonly advice: Advice;
}

export interface Reply {
  readonly fileName: string;
  /** As in the file [mm]. */
  readonly size: Point3;
  readonly unit: UnitRead;
  readonly as: PrintedAs;
  readonly asked: AskedOfAll;
  readonly items: readonly ReplyItem[];
}

/** A part file as it was read. */
export interface ReplyPart {
  readonly fileName: string;
  readonly box: Box3;
  readonly unit: UnitRead;
  readonly flexures: readonly Flexure[];
}

/**
 * What to tell the person who drew a part. Sizes are those of the file, whatever the scale of the print: drawn so, each section
 * comes out whole at that scale, and lasts.
 *
 * Thickness goes to the nearest even count of lines, which contours lay alone, and stays where it is whole; fillets to at least
 * one line; length to the least that lasts.
 *
 * @param part - as read [mm]
 * @param as - scale, which way is up, print profile [mm]
 * @param asked - how far each bends [rad] and how often [-]
 * @returns alike sections together, in the order of their first numbers
 *
 * Source: bead-section, notch-hinge, strain-life, common-practice.
 */
export function replyFor({ fileName, box, unit, flexures }: ReplyPart, as: PrintedAs, asked: AskedOfAll): Reply {
  const judge = (some: readonly Flexure[]) => judgeAll(some, box, as, asked, fileName);
  const items = alikeOf(judge(flexures)).map((alike) => itemFor(alike, box, as, (one) => judge([one])[0]!));
  return { fileName, size: printedSize(box, 1), unit, as, asked, items };
}

function itemFor({ one, numbers }: Alike, box: Box3, as: PrintedAs, judge: Redrawing['judge']): ReplyItem {
  const { flexure } = one;
  const { centre, section, thickness, length } = flexure;
  const drawn = { thickness: thickness.least, length, fillet: leastOfRoots(flexure, 'fillet') };
  const laid = asLaid(flexure, box, as);
  const growth = laid.thickness / thickness.least;
  const advice = adviceFor({ flexure, landing: one.landing, laid, growth, as, judge }, one, drawn);
  return { numbers, judged: one, drawn, centre, section, advice };
}

function adviceFor(redrawing: Redrawing, one: Judged, drawn: Drawn): Advice {
  const thickness = wholeThickness(redrawing);
  const fillet = goodFillet(redrawing, thickness);
  const isAsDrawn = thickness === drawn.thickness && fillet === drawn.fillet;
  if (isAsDrawn && isWhole(one.landing) && isLasting(one)) return { kind: 'fine' };
  const { isGood, ...found } = longEnough(redrawing, { thickness, fillet });
  if (!isGood) return { kind: 'none', judged: found.judged };
  const changes = (['thickness', 'length', 'fillet'] as const).filter((size) => found.drawn[size] !== drawn[size]);
  return { kind: 'make', make: { ...found, changes } };
}
