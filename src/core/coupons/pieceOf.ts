/** The door to all test pieces. */
import { outsideRange, plain, type Problem, type Range } from '../problems.ts';
import { checkProfile } from '../print/checkProfile.ts';
import { LYINGS } from '../print/profile.ts';
import { failIfAny, ok, type Result } from '../result.ts';
import { radians } from '../units.ts';
import { bar } from './bar.ts';
import { comb } from './comb.ts';
import { creases } from './creases.ts';
import { hold } from './hold.ts';
import { ladder } from './ladder.ts';
import { fitsOn, MARGIN, plateProblems } from './onPlate.ts';
import type { Piece, PieceId, PiecesAsked, PlateSize } from './piece.ts';
import { radii } from './radii.ts';

/** How often a piece is made smaller to fit its plate, at most. */
const MOST_CUTS = 6;

/** Each made smaller as often as the second value says: fewer strips, shorter ones. */
const MAKERS: Readonly<Record<PieceId, (asked: PiecesAsked, cut: number) => Result<Piece>>> = {
  ladder,
  comb,
  radii,
  bar,
  hold,
  creases,
};

/** What can be asked for. All limits are ours. */
export const ASKED_LIMITS = {
  count: { min: 1, max: 8, because: 'the ladder has eight rungs' },
  depth: { min: 2, max: 30, because: 'a narrower strip falls over, and a wider one is a plate' },
  turn: { min: radians(5), max: radians(360), because: 'less cannot be told from nothing, and more winds a strip up' },
  strain: { min: 0.001, max: 0.5, because: 'less tests nothing, and no filament stands more for long' },
  holdRadius: { min: 0.5, max: 1000, because: 'a tighter one is a fold, and a wider one is straight' },
} as const satisfies Record<string, Range>;

function problemsOf({
  profile,
  filament,
  count,
  depth,
  turn,
  strain,
  holdRadius,
  plate,
}: PiecesAsked): readonly Problem[] {
  const limits = ASKED_LIMITS;
  const found = [
    outsideRange('count', 'The number of lines or layers', count, limits.count, ''),
    outsideRange('depth', 'A strip width of', depth, limits.depth),
    outsideRange('turn', 'A turn of', turn, limits.turn, '°'),
    outsideRange('strain', 'A strain of', strain, limits.strain, ''),
    outsideRange('holdRadius', 'A radius to hold of', holdRadius, limits.holdRadius),
  ].filter((problem) => problem !== undefined);
  return [...found, ...checkProfile(profile).problems, ...wholeCount(count), ...known(profile.lying), ...printable(filament), ...(plate ? plateProblems(plate) : [])]; // prettier-ignore
}

function wholeCount(count: number): readonly Problem[] {
  if (!Number.isFinite(count) || Number.isInteger(count)) return [];
  return [
    {
      code: 'not-whole',
      message: `${count} lines or layers is no whole number; give one from 1 to 8`,
      field: 'count',
      value: count,
    },
  ];
}

function known(lying: string): readonly Problem[] {
  if (LYINGS.some((each) => each === lying)) return [];
  const limit = LYINGS.join(', ');
  return [{ code: 'not-one-of', message: `“${lying}” is no way to lie; give one of ${limit}`, field: 'profile.lying', value: lying, limit }]; // prettier-ignore
}

function printable({ printable: can, fullName, id }: PiecesAsked['filament']): readonly Problem[] {
  if (can) return [];
  const message = `${fullName} is there to compare with and cannot be printed; choose another filament`;
  return [{ code: 'not-one-of', message, field: 'filament', value: id }];
}

/** Says that a piece was made smaller, and what its full size would be. */
function smaller({ size }: Piece, plate: PlateSize): Problem {
  return {
    code: 'above-maximum',
    message: `Of full size it is ${plain(size.x)} × ${plain(size.y)} mm, more than the plate of ${plain(plate.x)} × ${plain(plate.y)} mm holds, so that it is made smaller and tests less; choose a larger plate for all of it`,
    field: 'plate',
    value: Math.max(size.x, size.y),
    limit: Math.max(plate.x, plate.y) - 2 * MARGIN,
    unit: 'mm',
  };
}

/**
 * A test piece, made to a print profile.
 *
 * Thin parts are whole lines thick, or whole layers where they lie as a crease. What stands about them (grips, pads, marks,
 * distances) is of our own choosing. On a plate that does not hold it a piece has fewer strips and shorter ones; what is still too
 * large comes back as it is. Places lie on a grid of 1 µm.
 *
 * @param id - which piece [-]
 * @param asked - profile, filament, count [-], depth and holdRadius [mm], turn [rad], strain as a fraction [-], plate [mm]
 * @returns the piece, its least corner at the origin [mm], with notes where it cannot test all that was asked
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`, `not-whole`, `not-one-of`, and those of `checkProfile`.
 * Notes: `below-minimum`, `above-maximum`, of what is asked and what the piece reaches.
 */
export function pieceOf(id: PieceId, asked: PiecesAsked): Result<Piece> {
  const refused = failIfAny(problemsOf(asked));
  if (refused) return refused;
  const make = MAKERS[id];
  const full = make(asked, 0);
  const { plate } = asked;
  if (!full.ok || plate === undefined || fitsOn(full.value.size, plate)) return full;
  for (let cut = 1; cut <= MOST_CUTS; cut++) {
    const less = make(asked, cut);
    if (less.ok && fitsOn(less.value.size, plate)) return ok(less.value, [...less.notes, smaller(full.value, plate)]);
  }
  return full;
}
