/** Tests that could be made with the pieces at hand, as strips to be flexed. */
import type { Piece, PieceId, PiecesAsked, Strip } from '../coupons/piece.ts';
import { severity } from '../life/assessLife.ts';
import type { FlexTally } from '../material/tally.ts';
import type { Filament } from '../material/types.ts';
import { believedAt, type Planned } from './expectedDoubt.ts';
import { equivalentOf, flexStrain } from './flexStrain.ts';
import type { GoingOn } from './goingOn.ts';
import { countedOf, foretoldBy } from './learnLife.ts';
import type { LifePosterior } from './lifePosterior.ts';
import type { Candidate } from './nextTest.ts';

/** A test with what it makes of its strips: fresh ones, or those that are still whole. */
export type Plan = {
  readonly candidate: Candidate;
  /** Peak strain, where all strips have the same, as a fraction. */
  readonly strain?: number;
} & ({ readonly planned: readonly Planned[] } | { readonly goingOn: GoingOn });

/** What candidates are made of. */
export interface Means {
  readonly prior: Filament;
  readonly posterior: LifePosterior;
  readonly pieces: readonly Piece[];
  readonly asked: Pick<PiecesAsked, 'profile' | 'turn'>;
  readonly flexes: readonly FlexTally[];
}

/** Counts at which one stops: round, so that they are kept in mind. The last is four hours by hand. */
const STOPS = [100, 200, 500, 1000, 2000, 5000, 10_000] as const;
/** Strips are flexed until so many standard deviations past the median life: five in six break. Chosen. */
const PAST_MEDIAN = 1;
/** Strips that are whole are flexed at least so many times as often as they have been: less tells nothing new. Chosen. */
const AS_OFTEN = 2;

function stopFor(wanted: number): number {
  return STOPS.find((stop) => stop >= wanted) ?? STOPS[STOPS.length - 1] ?? wanted;
}

/** log10 of the life that the prior foretells for a peak strain of a piece; undefined where it breaks at once. */
function foretold(strain: number, { thickness, countOf }: Strip, { prior, asked }: Means): number | undefined {
  const acrossLayers = countOf === 'lines' && asked.profile.lying === 'upright';
  const equivalent = strain * severity({ ratio: 0, acrossLayers, thickness, filament: prior });
  return equivalent < prior.life.firstFlexBreakStrain ? foretoldBy(equivalent, prior.life) : undefined;
}

/** Count until which strips so foretold are flexed. */
function stopOf(x: number, posterior: LifePosterior): number {
  return stopFor(10 ** (x + believedAt(posterior, x).shift + PAST_MEDIAN * posterior.scatter));
}

const fresh = (x: number, strips: number, stopAt: number): Planned => ({
  foretold: x,
  stop: Math.log10(stopAt),
  strips,
});

/** Over each round corner, all loose strips of the piece. */
function overCorners(piece: Piece, means: Means): readonly Plan[] {
  const [strip] = piece.strips;
  if (!strip) return [];
  return piece.corners.flatMap(({ radius, strain }) => {
    const x = foretold(strain, strip, means);
    if (x === undefined) return [];
    const [strips, stopAt] = [piece.strips.length, stopOf(x, means.posterior)];
    const bend = { way: 'over', radius } as const;
    const candidate: Candidate = { what: 'flexes', piece: piece.id, bend, strips, stopAt };
    return [{ candidate, strain, planned: [fresh(x, strips, stopAt)] }];
  });
}

/** Pieces whose strips are all flexed as they stand. */
const COMBS: readonly PieceId[] = ['comb', 'creases'];

/** All strips of a comb, each at a strain of its own: one test. */
function wholeComb(piece: Piece, means: Means): readonly Plan[] {
  const lives = piece.strips.flatMap((strip) =>
    strip.strain === undefined ? [] : (foretold(strip.strain, strip, means) ?? []),
  );
  if (lives.length === 0) return [];
  const stopAt = Math.max(...lives.map((x) => stopOf(x, means.posterior)));
  const candidate: Candidate = { what: 'flexes', piece: piece.id, strips: lives.length, stopAt };
  return [{ candidate, planned: lives.map((x) => fresh(x, 1, stopAt)) }];
}

/** Whose strips these are: loose ones come with the block that they are bent over, folds are the only ones of layers. */
function pieceOf({ bend, lying }: FlexTally): PieceId {
  if (bend.way === 'over') return 'radii';
  return lying === 'crease' ? 'creases' : 'comb';
}

const keyOf = ({ bend, thickness, lying, ways }: FlexTally): string => JSON.stringify([bend, thickness, lying, ways]);

/** Strips that are still whole, those bent alike together. */
function stillWhole(flexes: readonly FlexTally[]): readonly (readonly [FlexTally, ...FlexTally[]])[] {
  const alike = new Map<string, [FlexTally, ...FlexTally[]]>();
  for (const tally of flexes) {
    if (tally.ended !== 'whole' || tally.leftOut) continue;
    const others = alike.get(keyOf(tally));
    if (others) others.push(tally);
    else alike.set(keyOf(tally), [tally]);
  }
  return Array.from(alike.values());
}

/** Going on with strips that are still whole. */
function goOns({ flexes, prior, posterior }: Means): readonly Plan[] {
  return stillWhole(flexes).flatMap((strips) => {
    const [first] = strips;
    const x = foretoldBy(equivalentOf(first, prior), prior.life);
    const most = Math.max(...strips.map(({ cycles }) => cycles));
    const stopAt = Math.max(stopFor(AS_OFTEN * most), stopOf(x, posterior));
    if (!(stopAt > most)) return [];
    const candidate: Candidate = {
      what: 'goOn',
      piece: pieceOf(first),
      bend: first.bend,
      strips: strips.length,
      stopAt,
      from: first.id,
    };
    const goingOn = { foretold: x, stop: Math.log10(stopAt), from: strips.map(({ cycles }) => countedOf(cycles)) };
    return [{ candidate, strain: flexStrain(first).peak, goingOn }];
  });
}

/**
 * Tests that flex strips, with what is foretold of them.
 *
 * @param means - what is believed, the pieces and strips at hand [-]
 * @returns tests and their strips in decades of life [-]
 */
export function flexPlans(means: Means): readonly Plan[] {
  const anew = means.pieces.flatMap((piece) => [
    ...overCorners(piece, means),
    ...(COMBS.includes(piece.id) ? wholeComb(piece, means) : []),
  ]);
  return [...goOns(means), ...anew];
}
