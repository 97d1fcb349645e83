import { useId } from 'react';
import { WHOLE_WITHIN } from '../../core/design/fit.ts';
import { isWhole } from '../../core/inspect/verdicts.ts';
import type { Judged, PrintedAs } from '../../core/inspect/judged.ts';
import { FailHatch } from './Hatches.tsx';

interface Props {
  readonly judged: Judged;
  readonly as: PrintedAs;
  /** px a millimetre. */
  readonly by: number;
}

interface Piece {
  readonly from: number;
  readonly to: number;
}

/** Lines or layers laid across a thickness, outermost first, and what is left over or doubled [mm]. */
function piecesOf(
  thickness: number,
  pitch: number,
  { landing }: Judged,
): { laid: readonly Piece[]; wrong: readonly Piece[] } {
  const count = Math.floor(landing.exact + WHOLE_WITHIN);
  if (landing.state === 'not-laid') return { laid: [], wrong: [{ from: 0, to: thickness }] };
  if (isWhole(landing)) {
    const each = thickness / Math.max(1, landing.nearest);
    const laid = Array.from({ length: landing.nearest }, (_, i) => ({ from: i * each, to: (i + 1) * each }));
    return { laid, wrong: [] };
  }
  if (count < 2) {
    const laid = [
      { from: 0, to: pitch },
      { from: thickness - pitch, to: thickness },
    ];
    return { laid, wrong: [{ from: thickness - pitch, to: pitch }] };
  }
  const half = Math.floor(count / 2);
  const below = Array.from({ length: half }, (_, i) => ({ from: i * pitch, to: (i + 1) * pitch }));
  const above = below.map(({ from, to }) => ({ from: thickness - to, to: thickness - from }));
  const [low, high] = [half * pitch, thickness - half * pitch];
  if (count % 2 === 0) return { laid: [...below, ...above], wrong: [{ from: low, to: high }] };
  const middle = { from: (low + high - pitch) / 2, to: (low + high + pitch) / 2 };
  return {
    laid: [...below, middle, ...above],
    wrong: [
      { from: low, to: middle.from },
      { from: middle.to, to: high },
    ],
  };
}

/** The walls of a thin section and the lines between them. */
export function LandingGlyph({ judged, as, by }: Props) {
  const hatch = useId();
  const thickness = as.scale * judged.flexure.thickness.least;
  const { lineWidth, layerHeight } = as.profile;
  const isLines = judged.landing.countOf === 'lines';
  const { laid, wrong } = piecesOf(thickness, isLines ? lineWidth : layerHeight, judged);
  const high = Math.min(18, Math.max(6, (isLines ? layerHeight : lineWidth) * by));
  const width = thickness * by;
  const y = 13 - high / 2;
  return (
    <svg className="glyph" width={width + 4} height={26} viewBox={`-2 0 ${width + 4} 26`} aria-hidden="true">
      <defs>
        <FailHatch id={hatch} />
      </defs>
      {laid.map(({ from, to }) => (
        <rect
          key={from}
          className="bead"
          x={from * by}
          y={y}
          width={(to - from) * by}
          height={high}
          rx={Math.min(high, (to - from) * by) / 2}
        />
      ))}
      {wrong.map(({ from, to }) => (
        <rect
          key={from}
          className="wrong-strip"
          x={from * by}
          y={y}
          width={(to - from) * by}
          height={high}
          fill={`url(#${hatch})`}
        />
      ))}
      <path className="W" d={`M0 2V24M${width} 2V24`} />
    </svg>
  );
}
