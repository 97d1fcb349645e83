import type { Judge } from '../design/assess.ts';
import { figuresOf, type Place } from './candidates.ts';
import type { Field } from './field.ts';
import { SHORTCOMINGS, type Miss, type Shortcoming, type Shortfall } from './findAnswer.ts';
import { howFarInAll } from './howFar.ts';
import { shortfallsOf } from './shortfalls.ts';
import type { Wanted } from './wanted.ts';

/** So many of the nearest of one way are assessed before none is told. */
const TRIES = 3;
/** So many misses are solved in all: they are worth less than designs. */
const SOLVED = 4;

type JudgeOf = (field: Field) => Judge;

interface Placed extends Place {
  readonly field: Field;
  readonly far: number;
}

/**
 * What a candidate falls short in once it is assessed.
 *
 * @param field - its lot [-]
 * @param place - where it stands there [-]
 * @param wanted - what is looked for [-]
 * @param judge - what assesses it [-]
 * @returns figures and shortfalls; undefined where it cannot be assessed, or falls short in nothing
 */
function missOf(field: Field, place: Place, wanted: Wanted, judge: Judge): Miss | undefined {
  const { joint, room, air } = field.candidate(place);
  const assessed = judge(joint);
  if (!assessed.ok) return undefined;
  const [first, ...rest] = shortfallsOf(wanted, assessed.value, room, air);
  if (first === undefined) return undefined;
  const short: readonly [Shortfall, ...Shortfall[]] = [first, ...rest];
  return { joint, figures: figuresOf(assessed.value, room), short };
}

function nearestIn(
  fields: readonly Field[],
  reason: Shortcoming,
  wanted: Wanted,
  judgeOf: JudgeOf,
  mayTry: (field: Field) => boolean,
): Miss | undefined {
  const near = fields
    .flatMap((field) => field.tally.nearestIn(reason).map((one): Placed => ({ field, ...one })))
    .toSorted((a, b) => a.far - b.far);
  for (const { field, ...place } of near.slice(0, TRIES)) {
    if (!mayTry(field)) continue;
    const miss = missOf(field, place, wanted, judgeOf(field));
    if (miss && miss.short.length === 1 && miss.short[0].reason === reason) return miss;
  }
  return undefined;
}

/**
 * Of each way to fall short, the one that comes nearest and falls short in nothing else, as it is assessed.
 *
 * @param fields - lots that have been screened [-]
 * @param wanted - what is looked for [-]
 * @param judgeOf - what assesses a lot [-]
 * @param beat - called now and then [-]
 * @returns one by each way of which one was found [-]
 */
export function nearestOf(
  fields: readonly Field[],
  wanted: Wanted,
  judgeOf: JudgeOf,
  beat: () => void,
): ReadonlyMap<Shortcoming, Miss> {
  let solved = 0;
  const mayTry = (field: Field) => {
    beat();
    if (field.isExact) return true;
    solved += 1;
    return solved <= SOLVED;
  };
  const found = new Map<Shortcoming, Miss>();
  for (const reason of SHORTCOMINGS) {
    const nearest = nearestIn(fields, reason, wanted, judgeOf, mayTry);
    if (nearest) found.set(reason, nearest);
  }
  return found;
}

/**
 * Where nothing meets what is wanted: the one that is least far off altogether.
 *
 * @param fields - lots that have been screened [-]
 * @param wanted - what is looked for [-]
 * @param judgeOf - what assesses a lot [-]
 * @param beat - called now and then [-]
 * @returns figures and all in which it falls short; undefined where nothing can be made at all
 */
export function closestOf(
  fields: readonly Field[],
  wanted: Wanted,
  judgeOf: JudgeOf,
  beat: () => void,
): Miss | undefined {
  const near = fields.flatMap((field) => closestIn(field, beat)).toSorted((a, b) => a.far - b.far);
  for (const { field, ...place } of near.slice(0, 2 * TRIES)) {
    const miss = missOf(field, place, wanted, judgeOf(field));
    if (miss) return miss;
  }
  return undefined;
}

function closestIn(field: Field, beat: () => void): readonly Placed[] {
  let found: Placed | undefined;
  let least = Number.POSITIVE_INFINITY;
  field.each((cell, screened) => {
    if (cell.side === 0 && cell.depth === 0 && cell.at % 64 === 0) beat();
    const far = howFarInAll(screened, cell);
    if (far >= least) return;
    least = far;
    const { at, row, depth, side } = cell;
    found = { field, at, row, depth, side, far };
  });
  return found ? [found] : [];
}
