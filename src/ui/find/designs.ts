/** Designs as they are listed: one first for each kind in each filament, the others of the same behind it. */
import type { Design, Figures } from '../../core/find/findAnswer.ts';
import { bySize } from '../../core/find/front.ts';
import type { Joint } from '../../core/design/joint.ts';
import { familyOf } from '../../core/flexures/known.ts';
import { findFilament } from '../../core/material/shelf.ts';
import { kindText } from '../text/kindText.ts';
import { counted, lengthFigure, NO_BREAK, unitAfter, type LengthUnit } from '../text/numbers.ts';
import { capital } from '../text/said.ts';

/** A design as it is shown: what it is told by stays the same from one answer of the search to the next. */
export interface Shown {
  readonly key: string;
  readonly design: Design;
}

/** All of one kind in one filament: the smallest of them first. */
export interface Group {
  readonly key: string;
  /** Its place in the list, from 1. */
  readonly rank: number;
  readonly first: Shown;
  readonly more: readonly Shown[];
}

/** What a joint is told by among those that a search finds. */
export function keyOf({ family, sizes, profile }: Joint): string {
  return [family, profile.filament, profile.lying, JSON.stringify(sizes)].join(' ');
}

/**
 * Designs in the order of the list.
 *
 * @param designs - as found, in any order
 * @returns groups by their smallest, ranked from 1
 */
export function groupsOf(designs: readonly Design[]): readonly Group[] {
  const groups = new Map<string, Shown[]>();
  for (const design of designs.toSorted((one, other) => bySize(one.figures, other.figures))) {
    const { family, profile } = design.joint;
    const key = `${family} ${profile.filament}`;
    const shown = { key: keyOf(design.joint), design };
    const group = groups.get(key);
    if (group) group.push(shown);
    else groups.set(key, [shown]);
  }
  return [...groups].flatMap(([key, [first, ...more]], at) => (first ? [{ key, rank: at + 1, first, more }] : []));
}

/** What is let through; an end that is left open lets all through. */
export interface Brush {
  readonly size?: number | undefined;
  readonly chance?: number | undefined;
  readonly effortAtLeast?: number | undefined;
  readonly effortAtMost?: number | undefined;
}

export const OPEN: Brush = {};

/** Figures come from sums and products of decimals: a part in 10⁹ is no reason to hide one. */
const ROUND_OFF = 1e-9;

const under = (value: number, limit: number) => value <= limit * (1 + ROUND_OFF);

export function isThrough(
  { size, chance, effort }: Pick<Figures, 'size' | 'chance' | 'effort'>,
  brush: Brush,
): boolean {
  const { size: most = Infinity, chance: least = 0, effortAtLeast = 0, effortAtMost = Infinity } = brush;
  return under(size, most) && under(least, chance) && under(effortAtLeast, effort) && under(effort, effortAtMost);
}

export function isOpen(brush: Brush): boolean {
  return Object.values(brush).every((end) => end === undefined);
}

/** “Crossed leaves, 1 line, 4.50 mm, 2 in a row”. */
export function designName(joint: Joint, unit: LengthUnit): string {
  const { parameters, roles } = familyOf(joint);
  const { name, unitOfCount, sizes: labels } = kindText(joint.family);
  const size = (role: string | undefined) => (role === undefined ? undefined : joint.sizes[role]);
  const long = size(roles.length);
  const [inRow, sideBySide] = [size(roles.inRow) ?? 1, size(roles.sideBySide) ?? 1];
  const isLength = parameters[roles.length]?.kind === 'length';
  const told = isLength
    ? `${lengthFigure(long ?? 0, unit)}${unitAfter(unit)}`
    : `${labels[roles.length] ?? ''} ${long}`;
  return [
    capital(name),
    counted(size(roles.count) ?? 0, unitOfCount),
    ...(long === undefined ? [] : [told]),
    ...(inRow > 1 ? [`${inRow}${NO_BREAK}in a row`] : []),
    ...(sideBySide > 1 ? [`${sideBySide}${NO_BREAK}side by side`] : []),
  ].join(', ');
}

export function filamentName({ profile }: Pick<Joint, 'profile'>): string {
  return findFilament(profile.filament)?.name ?? profile.filament;
}
