/** The pieces that stand on the plate, made to the trial. */
import { useMemo } from 'react';
import { PIECE_IDS, type Piece, type PieceId, type PiecesAsked } from '../../core/coupons/piece.ts';
import { ASKED_LIMITS, pieceOf } from '../../core/coupons/pieceOf.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Problem, Range } from '../../core/problems.ts';
import { asRad } from '../../core/units.ts';
import type { Trial } from './trial.ts';

const within = (value: number, { min, max }: Range) => Math.min(max, Math.max(min, value));

/** What the pieces are asked for: as wide, as thick and as far bent as the trial, stepped about the strain of the joint. */
export function askedFor({ values, profile, row, strain }: Trial, answer: Assessment | undefined): PiecesAsked {
  const radius = values.doing === 'hold' ? undefined : answer?.travel?.radius;
  return {
    profile: { ...profile, lying: values.lying },
    filament: row,
    count: values.count,
    depth: within(values.depth, ASKED_LIMITS.depth),
    turn: asRad(within(values.turn, ASKED_LIMITS.turn)),
    strain: within(answer && answer.strain.peak > 0 ? answer.strain.peak : strain, ASKED_LIMITS.strain),
    holdRadius: within(radius !== undefined && Number.isFinite(radius) ? radius : values.radius, ASKED_LIMITS.holdRadius),
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

function made(asked: PiecesAsked, { values }: Trial): Made {
  const all = PIECE_IDS.map((id: PieceId) => pieceOf(id, asked));
  const pieces = all.flatMap((piece) => (piece.ok ? [piece.value] : []));
  const chosen = pieces.find(({ id }) => id === values.piece);
  const bends = values.way === 'over' || values.doing === 'mark';
  const corner = bends
    ? pieces.flatMap(({ corners }) => corners).find(({ radius }) => isAt(radius, values.radius))?.number
    : undefined;
  return { asked, pieces, chosen, corner, problems: all.flatMap((piece) => (piece.ok ? [] : piece.problems)) };
}

/** Pieces made anew only where what they are asked for has changed. */
export function usePieces(trial: Trial, answer: Assessment | undefined): Made {
  const asked = askedFor(trial, answer);
  const key = JSON.stringify({ ...asked, filament: asked.filament.id });
  // Made in a moment, but not with every bend that is counted.
  // oxlint-disable-next-line react-hooks/exhaustive-deps
  const pieces = useMemo(() => made(asked, trial), [key, asked.filament, trial.values.piece, trial.values.radius, trial.values.way, trial.values.doing]);
  return pieces;
}
