/** What the curve of a pulled bar says: the stress at which it broke, and how stiff it began. */
import { outside } from '../material/ownCheck.ts';
import type { Limits } from '../material/ownLimits.ts';
import type { Problem } from '../problems.ts';
import { fail, ok, type Result } from '../result.ts';
import type { MPa } from '../units.ts';
import { TALLY_LIMITS } from './tallyLimits.ts';

/** One reading of the machine. */
export interface Pulled {
  /** [N]. */
  readonly force: number;
  /** As a fraction of the length over which it was measured; absent where nobody measured it. */
  readonly strain?: number;
}

export interface PulledBar {
  readonly strength: MPa;
  readonly modulus?: MPa;
}

/** Area of a bar [mm²]; a grain and a brick. */
const AREA: Limits = {
  what: 'area of the bar',
  units: ['mm²'],
  min: 0.01,
  max: 10_000,
  because: 'a thinner bar is a line, and a thicker one pulls the machine apart',
};

/** Of the largest force: a bar that carries less is slack or has let go. Our judgement. */
const SLACK = 0.2;
/** A bar has broken once it carries less of the largest force for good. Our judgement. */
const BROKEN = 0.5;
/** Strains between which the stiffness is taken, and so wide a part of the curve is looked at. */
const [FROM, TO] = [0.0005, 0.0025];
const FEWEST = 4;

/**
 * The last rise and what follows until it breaks. Before it bars slip in their grips and are pulled straight, so that it begins
 * where the force was least since it was last let go.
 */
function lastRise<T extends Pulled>(curve: readonly T[]): readonly T[] {
  const most = curve.reduce((largest, { force }) => Math.max(largest, force), 0);
  const end = curve.findLastIndex(({ force }) => force >= BROKEN * most);
  const carries = curve.slice(0, end + 1).findLastIndex(({ force }) => force < SLACK * most);
  const letGo = curve.slice(0, carries + 1).findLastIndex(({ force }) => force >= SLACK * most);
  const slack = curve.slice(letGo + 1, carries + 1);
  const least = slack.reduce((smallest, { force }) => Math.min(smallest, force), Infinity);
  return curve.slice(
    letGo +
      1 +
      Math.max(
        0,
        slack.findLastIndex(({ force }) => force === least),
      ),
    end + 1,
  );
}

interface Line {
  readonly slope: number;
  /** Strain at which it has no stress. */
  readonly origin: number;
}

type Stretched = Required<Pulled>;

/** The likeliest straight line through a part of the curve. */
function lineOf(part: readonly Stretched[]): Line | undefined {
  if (part.length < FEWEST) return undefined;
  const strain = part.reduce((sum, one) => sum + one.strain, 0) / part.length;
  const force = part.reduce((sum, one) => sum + one.force, 0) / part.length;
  const spread = part.reduce((sum, one) => sum + (one.strain - strain) ** 2, 0);
  const slope = part.reduce((sum, one) => sum + (one.strain - strain) * (one.force - force), 0) / spread;
  return slope > 0 && Number.isFinite(slope) ? { slope, origin: strain - force / slope } : undefined;
}

const between = (rise: readonly Stretched[], from: number, to: number) =>
  rise.filter(({ strain }) => strain >= from && strain <= to);

/** Parts of the curve that are looked at for its steepest; more are no better. */
const MOST_PARTS = 400;

/** Where the bar begins to carry: the foot of its steepest part, before which it was pulled straight. */
function foot(rise: readonly Stretched[]): number | undefined {
  const every = Math.ceil(rise.length / MOST_PARTS);
  const lines = rise
    .filter((_, index) => index % every === 0)
    .flatMap(({ strain }) => lineOf(between(rise, strain, strain + TO - FROM)) ?? []);
  return lines.reduce<Line | undefined>((best, one) => (best && best.slope >= one.slope ? best : one), undefined)
    ?.origin;
}

function stiffness(rise: readonly Pulled[], area: number): MPa | undefined {
  const stretched = rise.filter((one): one is Stretched => one.strain !== undefined);
  const origin = foot(stretched);
  if (origin === undefined) return undefined;
  const line = lineOf(between(stretched, origin + FROM, origin + TO));
  return line && line.slope / area;
}

function few(): Problem {
  const message = `no stiffness can be told: fewer than ${FEWEST} readings lie between ${100 * FROM} % and ${100 * TO} % of strain; read more often or pull slower`;
  return { code: 'left-out', message, field: 'modulus' };
}

function unbroken(): Problem {
  const message =
    'the bar had not broken when the readings end, so that it is at least as strong; pull it until it breaks';
  return { code: 'left-out', message, field: 'strength' };
}

/**
 * Strength and stiffness of a bar from the readings of the machine that pulled it.
 *
 *     σ = F_max/A,   E = slope of σ over ε between 0.05 % and 0.25 %, counted from the foot of the steepest part
 *
 * Only the last rise counts, before which grips slip and the bar is pulled straight.
 *
 * Problems: `below-minimum`, `above-maximum`, `not-a-number`, `unreadable` where no force is read.
 *
 * @param curve - readings in the order of time, forces F [N] and strains ε [-] where they are known
 * @param area - of the bar, A [mm²], 0.01 to 10 000
 * @returns strength [MPa], and the modulus [MPa] where strains tell it; a note says why there is none
 *
 * Source: iso-527-chord.
 */
export function pulledBar(curve: readonly Pulled[], area: number): Result<PulledBar> {
  const problem = outside('area', area, AREA);
  if (problem) return fail(problem);
  const rise = lastRise(curve);
  const peak = rise.reduce((largest, { force }) => Math.max(largest, force), 0);
  if (!(peak > 0))
    return fail({ code: 'unreadable', message: 'no reading has a force above nought; give pulls as positive' });
  const strength = peak / area;
  const tooStrong = outside('strength', strength, TALLY_LIMITS.strength);
  if (tooStrong) return fail(tooStrong);
  const notes = curve.at(-1)?.force === peak ? [unbroken()] : [];
  if (!rise.some(({ strain }) => strain !== undefined)) return ok({ strength }, notes);
  const modulus = stiffness(rise, area);
  if (modulus === undefined) return ok({ strength }, [...notes, few()]);
  const tooStiff = outside('modulus', modulus, TALLY_LIMITS.modulus);
  return tooStiff ? ok({ strength }, [...notes, tooStiff]) : ok({ strength, modulus }, notes);
}
