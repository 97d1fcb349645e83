import type { Mm } from '../units.ts';
import type { Judged } from './judged.ts';
import { leastOfRoots } from './roots.ts';

/** Thin sections that were drawn alike; the first stands for all. */
export interface Alike {
  readonly one: Judged;
  readonly numbers: readonly number[];
}

/** Sizes that differ by less were drawn alike: meshes keep a curve to some hundredths. */
const SAME: Mm = 0.02;

function isLike(a: Judged, b: Judged): boolean {
  const [p, q] = [a.flexure, b.flexure];
  const by = [
    p.thickness.least - q.thickness.least,
    p.depth - q.depth,
    p.length - q.length,
    p.bendingLength - q.bendingLength,
    leastOfRoots(p, 'fillet') - leastOfRoots(q, 'fillet'),
    // A pad a little thicker changes next to nothing at the root.
    (leastOfRoots(p, 'shoulder') - leastOfRoots(q, 'shoulder')) / 10,
  ];
  const isSameKind = p.kind === q.kind && p.isCurved === q.isCurved && a.lying === b.lying;
  return isSameKind && by.every((difference) => Math.abs(difference) < SAME);
}

/**
 * Thin sections put together that were drawn alike and lie alike.
 *
 * @param judged - thin sections [-]
 * @returns groups in the order of their first numbers
 */
export function alikeOf(judged: readonly Judged[]): readonly Alike[] {
  const groups: Alike[] = [];
  for (const one of judged) {
    const at = groups.findIndex((group) => isLike(group.one, one));
    const group = groups[at] ?? { one, numbers: [] };
    groups[at < 0 ? groups.length : at] = { ...group, numbers: [...group.numbers, one.flexure.number] };
  }
  return groups;
}
