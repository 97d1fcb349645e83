/** Reading a link whose fragment carries a whole joint, readable and short: `joint=2&name=Lid&kind=straightLeaf&…&angleDeg=35`. */
import * as v from 'valibot';
import type { Joint } from '../core/design/joint.ts';
import { findFamily } from '../core/flexures/index.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { radians } from '../core/units.ts';
import { AMOUNTS, KEYS, LINK_VERSION, measureOf, type Group, type Kind } from './jointLinkText.ts';
import { readJoint } from './joints.ts';
import { migrateJoint } from './partMigrations.ts';
import { jointShape } from './partShape.ts';
import { capped, shapeProblem, shown } from './shape.ts';

/** Ten times what a joint takes, and still short enough for any address bar. */
export const MAX_LINK_LENGTH = 8000;

/** Keys that no size of a family may be called, or the link could not tell them apart. */
export const RESERVED_KEYS: readonly string[] = ['joint', 'kind', ...AMOUNTS, ...Object.keys(KEYS)];

/**
 * The joint that a link carries, judged as strictly as a part file. Never throws, whatever the text.
 *
 * Problems: `not-our-file` when it is no joint link, `newer-version`, `too-large`, `given-twice`, and those of `readPart`.
 *
 * @param fragment - what follows `#` in the address, with or without it
 */
export function readJointLink(fragment: string): Result<Joint> {
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
  const joint = readJoint(shape.output);
  return joint.ok ? ok(joint.value, capped([...unknownKeys(link, shape.output), ...joint.notes])) : joint;
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
  const groups: Record<Group, Record<string, unknown>> = { joint: {}, movement: {}, profile: {} };
  for (const [key, [group, kind]] of Object.entries(KEYS)) {
    const text = link.get(key);
    if (text !== null) groups[group][key] = READ[kind](text);
  }
  const kind = link.get('kind') ?? undefined;
  const isFirst = link.get('joint') === '1';
  const measure = isFirst ? 'turn' : measureOf(kind ?? '', link.get('drive') ?? '');
  const angle = measure === 'travel' ? undefined : angleOf(link);
  const travel = measure === 'turn' ? null : link.get('travel');
  const amount = travel === null ? angle : numberFrom(travel);
  // The first links knew only turns, and called them by their angle.
  if (amount !== undefined) groups.movement[isFirst ? 'angle' : 'amount'] = amount;
  const names = Object.keys(findFamily(kind ?? '')?.parameters ?? {}).filter((size) => link.has(size));
  const sizes = Object.fromEntries(names.map((size) => [size, numberFrom(link.get(size) ?? '')]));
  return { ...groups.joint, family: kind, sizes, movement: groups.movement, profile: groups.profile };
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
