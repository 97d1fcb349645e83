/** Reading a link whose fragment carries a whole joint, readable and short: `joint=2&name=Lid&kind=straightLeaf&…&angleDeg=35`. */
import * as v from 'valibot';
import type { Joint } from '../core/design/joint.ts';
import { findFamily } from '../core/flexures/index.ts';
import { withOnShelf } from '../core/material/shelf.ts';
import type { OwnFilament } from '../core/material/types.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { radians } from '../core/units.ts';
import {
  AMOUNTS,
  BENT_LIMITS,
  KEYS,
  LINK_VERSION,
  measureOf,
  MORE_KEYS,
  type Group,
  type Kind,
} from './jointLinkText.ts';
import { readJoint } from './joints.ts';
import { readOwn } from './ownLink.ts';
import { migrateJoint } from './partMigrations.ts';
import { jointShape } from './partShape.ts';
import { capped, shapeProblem, shown } from './shape.ts';

/** Four times the longest link that is written with a filament of one's own, and still read at once. */
export const MAX_LINK_LENGTH = 32_000;

/** Keys that no size of a family may be called, or the link could not tell them apart. */
export const RESERVED_KEYS: readonly string[] = ['joint', 'kind', ...AMOUNTS, ...MORE_KEYS, ...Object.keys(KEYS)];

export interface JointInLink {
  readonly joint: Joint;
  /** The user's own that came with it, at most one. */
  readonly filaments: readonly OwnFilament[];
  /** How far it was shown moved, as a share of the wanted amount; absent where nothing is said of it. */
  readonly bent?: number;
}

/**
 * The joint that a link carries, judged as strictly as a part file. Never throws, whatever the text.
 *
 * Problems: `not-our-file` when it is no joint link, `newer-version`, `too-large`, `given-twice`, and those of `readPart`.
 * A filament of somebody's own that comes with it is read as one on file is.
 *
 * @param fragment - what follows `#` in the address, with or without it
 */
export function readJointLink(fragment: string): Result<JointInLink> {
  if (fragment.length > MAX_LINK_LENGTH) {
    const message = `The link holds ${fragment.length} characters, at most ${MAX_LINK_LENGTH} are read`;
    return fail({ code: 'too-large', message, value: fragment.length, limit: MAX_LINK_LENGTH });
  }
  const link = new URLSearchParams(fragment.replace(/^#/, ''));
  const refused = judgeLink(link);
  if (refused) return fail(refused);
  const twice = failIfAny(capped(keysGivenTwice(link)));
  if (twice) return twice;
  const shape = v.safeParse(jointShape, migrateJoint(asDocument(link), Number(link.get('joint'))));
  if (!shape.success) return failIfAny(capped(shape.issues.map(shapeProblem))) ?? fail(notALink(''));
  const own = link.get('own');
  const filaments = own === null ? ok([]) : readOwn(own, shape.output.profile.filament);
  if (!filaments.ok) return filaments;
  const joint = withOnShelf(filaments.value, () => readJoint(shape.output));
  if (!joint.ok) return joint;
  const { bent, notes: ofBent } = bentIn(link);
  const notes = [...unknownKeys(link, shape.output), ...ofBent, ...filaments.notes, ...joint.notes];
  const read = { joint: joint.value, filaments: filaments.value, ...(bent === undefined ? {} : { bent }) };
  return ok(read, capped(notes));
}

/** How far it was shown moved; what cannot be is left out and told, because it changes nothing of the joint. */
function bentIn(link: URLSearchParams): { readonly bent?: number; readonly notes: readonly Problem[] } {
  const text = link.get('bent');
  if (text === null) return { notes: [] };
  const bent = numberFrom(text);
  const { min, max } = BENT_LIMITS;
  if (typeof bent === 'number' && bent >= min && bent <= max) return { bent, notes: [] };
  const message = `How far the joint was shown moved, ${shown(text)}, is no share from ${min} to ${max} of what is wanted and was left out`;
  return { notes: [{ code: 'unknown-field', message, field: 'bent' }] };
}

function notALink(version: string): Problem {
  const message = `The link carries no joint that this page knows: it says joint=${version.slice(0, 20)}, expected joint=${LINK_VERSION}`;
  return { code: 'not-our-file', message, field: 'joint', value: version.slice(0, 20), limit: LINK_VERSION };
}

function judgeLink(link: URLSearchParams): Problem | undefined {
  const version = link.get('joint') ?? '';
  if (!/^[1-9]\d{0,8}$/.test(version)) return notALink(version);
  if (Number(version) <= Number(LINK_VERSION)) return undefined;
  const message = `The link is version ${version}, made by a newer Bendbook; this one reads ${LINK_VERSION}`;
  return { code: 'newer-version', message, field: 'joint', value: version, limit: LINK_VERSION };
}

/** Two values for one key: which was meant cannot be known, and either guess would change the joint silently. */
function keysGivenTwice(link: URLSearchParams): Problem[] {
  const keys = [...link.keys()];
  const twice = [...new Set(keys.filter((key, index) => keys.indexOf(key) !== index))];
  const problems = twice.map((key): Problem => {
    return { code: 'given-twice', message: `${shown(key)} is given more than once`, field: key.slice(0, 80) };
  });
  const [first, second] = AMOUNTS.filter((key) => link.has(key));
  if (first === undefined || second === undefined) return problems;
  const message = `How far it is moved is given as ${first} and as ${second}`;
  return [...problems, { code: 'given-twice', message, field: second }];
}

/** A number exactly as the language writes it; anything else stays text, which the shape then refuses. */
function numberFrom(text: string): number | string {
  return /^-?\d+(\.\d+)?(e[+-]?\d+)?$/i.test(text) ? Number(text) : text;
}

const READ: { readonly [K in Kind]: (text: string) => unknown } = {
  text: (text) => text,
  number: numberFrom,
  'yes or no': (text) => (text === 'true' ? true : text === 'false' ? false : text),
};

/** The joint as the part file would hold it, of any shape yet; keys that are not known are not taken over. */
function asDocument(link: URLSearchParams) {
  const groups: Record<Group, Record<string, unknown>> = { joint: {}, movement: {}, profile: {}, surroundings: {} };
  for (const [key, [group, kind]] of Object.entries(KEYS)) {
    const text = link.get(key);
    if (text !== null) groups[group][key] = READ[kind](text);
  }
  const { joint, movement, profile, surroundings } = groups;
  const kind = link.get('kind') ?? undefined;
  const names = Object.keys(findFamily(kind ?? '')?.parameters ?? {}).filter((size) => link.has(size));
  const sizes = Object.fromEntries(names.map((size) => [size, numberFrom(link.get(size) ?? '')]));
  const used = Object.keys(surroundings).length === 0 ? {} : { surroundings };
  return { ...joint, family: kind, sizes, movement: { ...amounts(link, kind), ...movement }, profile, ...used };
}

/** Everything of a movement that is measured as its drive measures. */
function amounts(link: URLSearchParams, kind: string | undefined): Record<string, unknown> {
  const isFirst = link.get('joint') === '1';
  const measure = isFirst ? 'turn' : measureOf(kind ?? '', link.get('drive') ?? '');
  const angle = measure === 'travel' ? undefined : angleOf(link);
  const travel = measure === 'turn' ? null : link.get('travel');
  const amount = travel === null ? angle : numberFrom(travel);
  const [least, also] = [link.get('least'), link.get('also')];
  return {
    // The first links knew only turns, and called them by their angle.
    ...(amount === undefined ? {} : { [isFirst ? 'angle' : 'amount']: amount }),
    ...(least === null ? {} : { least: figureFrom(least, measure) }),
    ...(also === null ? {} : { also: swingsFrom(also, measure) }),
  };
}

type Measure = ReturnType<typeof measureOf>;

/** `-5deg`, `0.3rad`, or a bare travel; anything else stays text, which the shape then refuses. */
function figureFrom(text: string, measure: Measure): number | string {
  const [, figure = '', unit] = /^(.*?)(deg|rad)?$/s.exec(text) ?? [];
  if ((unit === undefined) === (measure === 'turn')) return text;
  const value = numberFrom(figure);
  return typeof value === 'number' && unit === 'deg' ? radians(value) : value;
}

function swingsFrom(text: string, measure: Measure) {
  return text === '' ? [] : text.split('*').map((swing) => swingFrom(swing, measure));
}

function swingFrom(text: string, measure: Measure) {
  const [amount = '', ways, cycles = '', least, ...more] = text.split('_');
  if (more.length > 0) return text;
  return {
    amount: figureFrom(amount, measure),
    ways,
    cycles: numberFrom(cycles),
    ...(least === undefined ? {} : { least: figureFrom(least, measure) }),
  };
}

function angleOf(link: URLSearchParams): unknown {
  const angleRad = link.get('angleRad');
  if (angleRad !== null) return numberFrom(angleRad);
  const text = link.get('angleDeg');
  if (text === null) return undefined;
  const angleDeg = numberFrom(text);
  return typeof angleDeg === 'number' ? radians(angleDeg) : angleDeg;
}

function unknownKeys(link: URLSearchParams, joint: Joint): Problem[] {
  const strangers = [...link.keys()].filter((key) => !RESERVED_KEYS.includes(key) && !Object.hasOwn(joint.sizes, key));
  return strangers.map((key) => {
    return {
      code: 'unknown-field',
      message: `${shown(key)} is not known here and was left out`,
      field: key.slice(0, 80),
    };
  });
}
