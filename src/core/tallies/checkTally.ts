/** What is wrong with a tally, or with all that stand on a row: each problem names the figure, its limit and what would help. */
import { outside } from '../material/ownCheck.ts';
import { LAID_LIMITS, PROPERTY_LIMITS } from '../material/ownLimits.ts';
import {
  MOST_TALLIES,
  type Bend,
  type HoldTally,
  type SagTally,
  type Tally,
  type Tests,
  type ThicknessTally,
} from '../material/tally.ts';
import { LYINGS } from '../print/profile.ts';
import { outsideRange, type Problem } from '../problems.ts';
import { asRad } from '../units.ts';
import { isDay } from './day.ts';
import { strainOfBend } from './strainOfBend.ts';
import { stiffnessOfSag } from './modulusOfSag.ts';
import {
  ANGLE_LIMITS,
  BEND_STRAIN,
  FIRST_LAYER,
  LONGEST_KEY,
  LONGEST_SAID,
  MOST_SAG,
  TALLY_LIMITS,
} from './tallyLimits.ts';

type Found = Problem | undefined;

const figure = (name: keyof typeof TALLY_LIMITS, value: number, field: string = name): Found =>
  outside(field, value, TALLY_LIMITS[name]);

const ANGLES = { turn: 'angle turned', held: 'angle held', left: 'angle left' } as const;

const angle = (name: keyof typeof ANGLES, value: number, field: string = name): Found =>
  outsideRange(field, ANGLES[name], value, ANGLE_LIMITS[name], '°');

function whole(name: 'count' | 'cycles', value: number): Found {
  const problem = figure(name, value);
  if (problem || Number.isInteger(value)) return problem;
  const message = `${TALLY_LIMITS[name].what}: ${value} is not whole; give a count`;
  return { code: 'not-whole', message, field: name, value };
}

function oneOf(field: string, value: string, options: readonly string[]): Found {
  if (options.includes(value)) return undefined;
  const [given, limit] = [value.slice(0, 40), options.join(', ')];
  return { code: 'not-one-of', message: `${field} is “${given}”; give one of ${limit}`, field, value: given, limit };
}

/** Whether a text can stand in a list: one line, no signs that move the writing, not too long. */
function line(field: string, text: string, most = LONGEST_SAID): Found {
  const length = Array.from(text).length;
  if (length > most) {
    const message = `${field} has ${length} characters, at most ${most} are kept; shorten it`;
    return { code: 'too-large', message, field, value: length, limit: most };
  }
  if (!/[\p{Cc}\p{Zl}\p{Zp}\p{Cs}]/u.test(text)) return undefined;
  const message = `${field} holds a line end or a sign that cannot be shown; write it in one line`;
  return { code: 'not-one-of', message, field, limit: 'one line' };
}

function key({ id }: Tally): Found {
  if (id !== '') return line('id', id, LONGEST_KEY);
  return { code: 'missing-field', message: 'the tally has no key; give it one', field: 'id' };
}

function day({ date }: Tally): Found {
  if (isDay(date)) return undefined;
  const given = date.slice(0, 40);
  const message = `date “${given}” is no day; write year, month and day as 2026-11-25`;
  return { code: 'not-one-of', message, field: 'date', value: given, limit: '2026-11-25' };
}

function bent(bend: Bend, thickness: number, field: string): readonly Found[] {
  const figures =
    bend.way === 'over'
      ? [figure('radius', bend.radius, `${field}radius`)]
      : [
          oneOf(`${field}way`, bend.way, ['over', 'to']),
          angle('turn', bend.turn, `${field}turn`),
          figure('length', bend.length, `${field}length`),
        ];
  const found = [figure('thickness', thickness), ...figures];
  if (found.some((problem) => problem !== undefined)) return found;
  return [outside('thickness', strainOfBend(bend, thickness), BEND_STRAIN)];
}

/** A thickness that no printer makes of what was set is a digit too many or too few. */
function laid({ set, measured }: ThicknessTally): readonly Found[] {
  const found = [figure('set', set), figure('measured', measured)];
  if (found.some((problem) => problem !== undefined)) return found;
  const { min, max, because } = LAID_LIMITS.factor;
  const range = { min: Math.max(0, min * set - FIRST_LAYER), max: max * set + FIRST_LAYER, because };
  return [outside('measured', measured, TALLY_LIMITS.measured, range)];
}

/** Figures each possible may still make a stiffness that no plastic has: then one of them is a slip. */
function sagged(tally: SagTally): readonly Found[] {
  const names = ['force', 'sag', 'length', 'thickness', 'depth'] as const;
  const found = [...names.map((name) => figure(name, tally[name])), oneOf('lying', tally.lying, LYINGS)];
  if (found.some((problem) => problem !== undefined)) return found;
  const { sag, length } = tally;
  if (sag > MOST_SAG * length) {
    const most = Number((MOST_SAG * length).toPrecision(4));
    const message = `sag ${sag} mm is above ${most} mm, nine tenths of the length, where the weight slides along the bar; hang less on it`;
    return [{ code: 'above-maximum', message, field: 'sag', value: sag, limit: most }];
  }
  const what = 'stiffness that these figures make';
  return [outside('sag', stiffnessOfSag(tally), { ...PROPERTY_LIMITS.youngsModulus, what })];
}

function held(tally: HoldTally): readonly Found[] {
  const found = [
    ...bent({ way: 'over', radius: tally.radius }, tally.thickness, ''),
    figure('hours', tally.hours),
    angle('held', tally.held),
    angle('left', tally.left),
  ];
  if (found.some((problem) => problem !== undefined) || tally.left <= tally.held) return found;
  const most = { ...ANGLE_LIMITS.left, max: tally.held };
  return [outsideRange('left', ANGLES.left, asRad(tally.left), most, '°')];
}

function ofKind(tally: Tally): readonly Found[] {
  switch (tally.kind) {
    case 'flexes':
      return [
        ...bent(tally.bend, tally.thickness, 'bend.'),
        oneOf('lying', tally.lying, LYINGS),
        oneOf('ways', tally.ways, ['one way', 'both ways']),
        whole('cycles', tally.cycles),
        oneOf('ended', tally.ended, ['broke', 'whole']),
      ];
    case 'thickness':
      return [oneOf('countOf', tally.countOf, ['lines', 'layers']), whole('count', tally.count), ...laid(tally)];
    case 'mark':
      return [
        ...bent({ way: 'over', radius: tally.radius }, tally.thickness, ''),
        oneOf('lying', tally.lying, LYINGS),
        oneOf('looks', tally.looks, ['unmarked', 'whitened', 'cracked']),
      ];
    case 'sag':
      return sagged(tally);
    case 'hold':
      return held(tally);
    case 'pull':
      return [
        oneOf('direction', tally.direction, ['along lines', 'across layers']),
        figure('strength', tally.strength),
        tally.modulus === undefined ? undefined : figure('modulus', tally.modulus),
      ];
  }
}

/**
 * Everything that is wrong with a tally; empty when something can be learned from it.
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`, `not-whole`, `not-one-of`, `missing-field`, `too-large`; fields are
 * those of the tally.
 *
 * @param tally - of any kind, of the right shape, with any figures [-]
 * @returns refusals [-]
 */
export function checkTally(tally: Tally): readonly Problem[] {
  const found = [key(tally), day(tally), line('seen', tally.seen), ...ofKind(tally)];
  return found.filter((problem) => problem !== undefined);
}

function twice({ tallies }: Tests): readonly Problem[] {
  const seen = new Set<string>();
  return tallies.flatMap(({ id }, index) => {
    if (!seen.has(id)) {
      seen.add(id);
      return [];
    }
    const message = `key “${id.slice(0, LONGEST_KEY)}” stands for two tallies; give one of them another`;
    return [{ code: 'given-twice', message, field: `tallies[${index}].id`, value: id.slice(0, LONGEST_KEY) } as const];
  });
}

/**
 * Everything that is wrong with what tests have been written down on a row.
 *
 * Problems: those of `checkTally`, `given-twice` where two tallies have one key, and `too-large` where there are too many.
 *
 * @param tests - of a row of the user's own [-]
 * @returns refusals, with fields such as `tallies[3].radius` [-]
 */
export function checkTests(tests: Tests): readonly Problem[] {
  const { length } = tests.tallies;
  const message = `There are ${length} tallies, at most ${MOST_TALLIES} are kept on one filament; remove some`;
  return [
    line('printer', tests.printer),
    line('spool', tests.spool),
    line('like', tests.like),
    length <= MOST_TALLIES
      ? undefined
      : ({ code: 'too-large', message, field: 'tallies', value: length, limit: MOST_TALLIES } as const),
    ...tests.tallies.flatMap((tally, index) =>
      checkTally(tally).map((problem) => ({ ...problem, field: `tallies[${index}].${problem.field}` })),
    ),
    ...twice(tests),
  ].filter((problem) => problem !== undefined);
}
