/** The columns of the comparison: which traits each shows, and on what axis. */
import type { Trait } from '../../core/material/compare.ts';
import { traitOf } from '../../core/material/compare.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { figuresOf, rowAxis, type AxisKind, type RowAxis } from './axes.ts';

export interface Column {
  readonly key: Trait;
  readonly head: string;
  /** Under the head: what exactly, and the unit. */
  readonly sub: string;
  readonly kind: AxisKind;
  /** A second trait on the same axis, with its own number or as a ring. */
  readonly second?: Trait;
  readonly secondAs?: 'ring' | 'diamond';
  /** Reached at least. */
  readonly always?: readonly number[];
}

export const COLUMNS: readonly Column[] = [
  { key: 'stiffness', head: 'Stiffness', sub: 'tensile modulus, MPa', kind: 'log' },
  { key: 'yields', head: 'Stays bent at', sub: 'yield strain, %', kind: 'log', second: 'repeated', secondAs: 'ring' },
  { key: 'breaks', head: 'Breaks at', sub: 'strain at break, %', kind: 'log' },
  { key: 'layers', head: 'Across layers', sub: 'share of strain left', kind: 'linear', always: [0, 1] },
  {
    key: 'glass',
    head: 'Softens, sags',
    sub: 'glass; loaded bar, °C',
    kind: 'linear',
    second: 'sags',
    secondAs: 'diamond',
  },
  { key: 'water', head: 'Takes up water', sub: '% of mass', kind: 'log' },
  { key: 'kept', head: 'Held for a day', sub: '% of push left', kind: 'linear', always: [0, 100] },
];

/** Strains are fractions, and said in per cent. */
function scaleOf(key: Trait): number {
  return key === 'yields' || key === 'breaks' ? 100 : 1;
}

/** The axis of a column on which every row has a place, and the strain of the joint where strains are compared. */
export function axisOf(
  { key, kind, second, always }: Column,
  rows: readonly WholeFilament[],
  strain?: number,
): RowAxis {
  const traits = second === undefined ? [key] : [key, second];
  const figures = figuresOf(rows.flatMap((row) => traits.map((trait) => traitOf(row, trait))));
  const joint = key === 'yields' && strain !== undefined && strain > 0 ? [strain] : [];
  return rowAxis(kind, [...figures, ...joint], scaleOf(key), always);
}
