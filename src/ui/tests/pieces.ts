/** The pieces that stand on the plate, made to the trial. */
import { useMemo, useState } from 'react';
import { PIECE_IDS, type Piece, type PiecesAsked } from '../../core/coupons/piece.ts';
import { ASKED_LIMITS, pieceOf } from '../../core/coupons/pieceOf.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Problem, Range } from '../../core/problems.ts';
import { asRad } from '../../core/units.ts';
import type { Trial } from './trial.ts';

const within = (value: number, { min, max }: Range) => Math.min(max, Math.max(min, value));

/** What the pieces are asked for: as wide, as thick and as far bent as the trial, stepped about the strain of the joint. */
function askedFor({ values, profile, row, strain }: Trial, answer: Assessment | undefined): PiecesAsked {
  const radius = values.doing === 'hold' ? undefined : answer?.travel?.radius;
  return {
    profile: { ...profile, lying: values.lying },
    filament: row,
    count: values.count,
    depth: within(values.depth, ASKED_LIMITS.depth),
    turn: asRad(within(values.turn, ASKED_LIMITS.turn)),
    strain: within(answer && answer.strain.peak > 0 ? answer.strain.peak : strain, ASKED_LIMITS.strain),
    holdRadius: within(
      radius !== undefined && Number.isFinite(radius) ? radius : values.radius,
      ASKED_LIMITS.holdRadius,
    ),
  };
}

export interface Made {
  readonly asked: PiecesAsked;
  readonly pieces: readonly Piece[];
  readonly problems: readonly Problem[];
  readonly chosen: Piece | undefined;
  /** Number of the round corner that the sentence names. */
  readonly corner: number | undefined;
}

const isAt = (radius: number, other: number) => Math.abs(radius - other) < 0.005;

/** What is asked for, the same as long as nothing of it has changed: not every bend that is counted makes other pieces. */
function useAsked(trial: Trial, answer: Assessment | undefined): PiecesAsked {
  const now = askedFor(trial, answer);
  const key = JSON.stringify({ ...now, filament: now.filament.id });
  const [kept, setKept] = useState({ key, asked: now });
  if (kept.key === key && kept.asked.filament === now.filament) return kept.asked;
  setKept({ key, asked: now });
  return now;
}

/** The pieces of the trial, and which of them and of their corners it names. */
export function usePieces(trial: Trial, answer: Assessment | undefined): Made {
  const { values } = trial;
  const asked = useAsked(trial, answer);
  const all = useMemo(() => PIECE_IDS.map((id) => pieceOf(id, asked)), [asked]);
  const pieces = useMemo(() => all.flatMap((piece) => (piece.ok ? [piece.value] : [])), [all]);
  const problems = all.flatMap((piece) => (piece.ok ? [] : piece.problems));
  const bends = values.way === 'over' || values.doing === 'mark';
  const corners = bends ? pieces.flatMap((piece) => piece.corners) : [];
  const corner = corners.find(({ radius }) => isAt(radius, values.radius))?.number;
  return { asked, pieces, problems, corner, chosen: pieces.find(({ id }) => id === values.piece) };
}
