/**
 * What becomes of a joint that is left bent: it pushes back less and less, and stays bent when it is let go. Loaded late, since
 * it rests on figures that no other answer needs.
 */
import { DAY_MINUTES, pushLeft, shareOfDay, stressLeft } from '../life/relaxation.ts';
import type { Quantity, WholeFilament } from '../material/types.ts';
import { wholeRow } from '../material/wholeRow.ts';
import { plain, type Problem } from '../problems.ts';
import { fail, ok, type Result } from '../result.ts';
import { allowableNamed } from './allowables.ts';
import type { Assessment } from './assessment.ts';
import { feltEfforts } from './feltEffort.ts';
import { MOVEMENT_LIMITS } from './movementLimits.ts';
import { readAt } from './solvedPath.ts';

/** A figure with what it lies between. */
export interface Between {
  readonly typical: number;
  readonly low: number;
  readonly high: number;
}

/** A joint held bent for a time. */
export interface Held {
  readonly hours: number;
  /** Share of the push that is left, of that one minute after it was bent. */
  readonly left: Between;
  /** What is left of it [N·mm] or [N]. */
  readonly effort: Between;
  /** What stays bent when it is then let go [rad] or [mm]. */
  readonly stays: Between;
}

export interface HoldAnswer {
  /** For as long as it is held at a time; a day where nothing is said. */
  readonly held: Held;
  /** From a minute to ten years, evenly on logarithmic paper. */
  readonly curve: readonly Held[];
  /** At any time between [h]. */
  readonly at: (hours: number) => Held;
  /** How much farther it has gone after a day under a load that stays on, as a share of how far it went in the first minute. */
  readonly sags: Between;
  /** What these rest on: the exponent of time, and what stays after a day [% of held strain]. */
  readonly exponent: Quantity;
  readonly setAfterDay: Quantity;
}

/** Minutes of an hour. */
const MINUTES = 60;
/** Held for so long where nothing is said [h]. */
const DAY = DAY_MINUTES / MINUTES;
const CURVE_POINTS = 48;

/** Less room than this below where it softens, and relaxation is no slow power of time any more: judgement, no source [K]. */
const TOO_WARM = 20;

/**
 * How a joint that is held at the wanted amount relaxes, and what stays bent when it is let go.
 *
 *     push(t) = push(1 min)·(t/1 min)^−n,   stays(t) = stays(1 day)·(1 − (t/1 min)^−n)/(1 − 1440^−n)
 *
 * What stays is never less than what one bend leaves at once. A load that stays on lets the strain grow as (t/1 min)^n instead. The power
 * is for small strains in a room.
 *
 * Problems: `too-warm-to-hold` near where the filament softens. Note: `held-past-yield` where it is strained past its yield strain.
 *
 * @param a - the joint as assessed [-]
 * @param row - its filament with all that is known of it [-]
 * @returns shares [-], efforts [N·mm] or [N], amounts [rad] or [mm], times [h]
 *
 * Source: common-practice.
 */
export function holdAnswer(a: Assessment, row: WholeFilament = wholeRow(a.filament)): Result<HoldAnswer> {
  const { warmth, joint } = a;
  if (warmth.spare <= TOO_WARM) return tooWarm(a);
  const { relaxationExponent: exponent, setAfterDayHeld: setAfterDay } = row.properties;
  const push = pushHeld(a);
  const at = (hours: number) => heldFor(a, push, hours, exponent, setAfterDay);
  const { min, max } = MOVEMENT_LIMITS.heldHours;
  const curve = Array.from({ length: CURVE_POINTS + 1 }, (_, i) => at(min * (max / min) ** (i / CURVE_POINTS)));
  const answer = {
    held: at(joint.movement.heldHours ?? DAY),
    curve,
    at,
    sags: each(exponent, furtherInDay),
    exponent,
    setAfterDay,
  };
  return ok(answer, pastYield(a));
}

/** How much farther strain has grown after a day than after a minute, as a share, by the exponent n. */
function furtherInDay(n: number): number {
  return 1 / stressLeft(DAY_MINUTES, n) - 1;
}

/** A function of each of the three values of a quantity, in the same order. */
function each({ typical, low = typical, high = typical }: Quantity, of: (value: number) => number): Between {
  return { typical: of(typical), low: of(low), high: of(high) };
}

/** What it pushes with where it is held, either way: of what snaps, not the hardest push on the way there. */
function pushHeld(a: Assessment): Between {
  const { effort, solved, joint, travel } = a;
  // What rolls to an arc pushes the harder the farther it goes.
  if (!solved || travel) return { typical: effort.effort, low: effort.low, high: effort.high };
  const { amount } = joint.movement;
  const { typical, low, high } = feltEfforts(a)({ amount, effort: readAt(solved, amount).effort });
  return { typical: Math.abs(typical), low: Math.abs(low), high: Math.abs(high) };
}

function heldFor(a: Assessment, push: Between, hours: number, exponent: Quantity, setAfterDay: Quantity): Held {
  const { set, joint } = a;
  // Round-off may leave a minute a digit short.
  const minutes = Math.max(1, hours * MINUTES);
  const gone = shareOfDay(minutes, exponent.typical);
  const { amount } = joint.movement;
  const stays = each(setAfterDay, (share) => Math.min(amount, (amount * share * gone) / 100));
  const { usual, least, most } = pushLeft(minutes, exponent);
  return {
    hours,
    left: { typical: usual, low: least, high: most },
    effort: { typical: push.typical * usual, low: push.low * least, high: push.high * most },
    stays: {
      typical: Math.max(stays.typical, set.amount),
      low: Math.max(stays.low, set.low),
      high: Math.max(stays.high, set.high),
    },
  };
}

function tooWarm({ warmth, filament }: Assessment): Result<never> {
  const { temperatureC, softensAt } = warmth;
  const limit = softensAt - TOO_WARM;
  const message = `At ${plain(temperatureC)} °C ${filament.name} is too near to where it softens (${plain(softensAt)} °C) to say what holding leaves; keep it under ${plain(limit)} °C, or choose one that softens later`;
  return fail({ code: 'too-warm-to-hold', message, field: 'surroundings.temperatureC', value: temperatureC, limit });
}

function pastYield({ allowables, filament, strain }: Assessment): readonly Problem[] {
  const { limit } = allowableNamed(allowables, 'yield');
  if (strain.peak <= limit) return [];
  const message = `It is held at ${plain(100 * strain.peak)} % strain, past the ${plain(100 * limit)} % at which ${filament.name} yields, where it relaxes faster than this says; bend it less, or make it longer or thinner`;
  return [{ code: 'held-past-yield', message, field: 'movement.held', value: strain.peak, limit }];
}
