/** The pieces that stand on the plate, made to the trial. */
import { useMemo, useState } from 'react';
import { fitsOn } from '../../core/coupons/onPlate.ts';
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
    plate: values.plate,
  };
}

export interface Made {
  readonly asked: PiecesAsked;
  /** Those that the plate holds. */
  readonly pieces: readonly Piece[];
  /** Those that it does not hold. */
  readonly unfit: readonly Piece[];
  readonly problems: readonly Problem[];
  readonly chosen: Piece | undefined;
  /** What the chosen one cannot do of what was asked. */
  readonly notes: readonly Problem[];
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
  const made = useMemo(() => all.flatMap((piece) => (piece.ok ? [piece.value] : [])), [all]);
  const { plate } = values;
  const [pieces, unfit] = useMemo(() => {
    const fits = ({ size }: Piece) => fitsOn(size, plate);
    return [made.filter(fits), made.filter((piece) => !fits(piece))];
  }, [made, plate]);
  const problems = all.flatMap((piece) => (piece.ok ? [] : piece.problems));
  const bends = values.way === 'over' || values.doing === 'mark';
  const corners = bends ? made.flatMap((piece) => piece.corners) : [];
  const corner = corners.find(({ radius }) => isAt(radius, values.radius))?.number;
  const at = PIECE_IDS.indexOf(values.piece);
  const one = all[at];
  const [chosen, notes] = one?.ok ? [one.value, one.notes] : [undefined, []];
  return { asked, pieces, unfit, problems, corner, chosen, notes };
}
