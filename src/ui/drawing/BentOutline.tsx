import { useMemo } from 'react';
import { fibre, padTransform, STRAIGHT } from './bentPath.ts';
import type { Figure } from './figure.ts';
import { movingPadPath } from './paths.ts';
import type { Sheet } from './sheet.ts';

interface Props {
  readonly figure: Figure;
  readonly sheet: Sheet;
  readonly fraction: number;
  readonly className: string;
}

/** The edge of what moves, where it has moved to. */
export function BentOutline({ figure, sheet, fraction, className }: Props) {
  const pad = useMemo(() => movingPadPath(sheet, figure), [sheet, figure]);
  const angle = figure.angle * fraction;
  if (Math.abs(angle) < STRAIGHT) return null;
  const roll = { sheet, length: figure.length, angle };
  const half = figure.thickness / 2;
  return (
    <g>
      <path className={className} d={fibre(roll, 0, figure.length, half) + fibre(roll, 0, figure.length, -half)} />
      <path className={className} d={pad} transform={padTransform(roll)} />
    </g>
  );
}
