/**
 * A filament of the user's own in a link: only what it says differently from the row of the table that it goes back to,
 * because a whole row is longer than many address bars take. What tests have taught it goes along, and their tallies
 * stay with whoever made them. Values stand as `[typical, low, high, origin, words, rest]`.
 */
import * as v from 'valibot';
import type { Joint } from '../core/design/joint.ts';
import { FILAMENTS } from '../core/material/filaments.ts';
import { ownFrom } from '../core/material/ownFilament.ts';
import { CURVE_FIGURES, PROPERTY_NAMES } from '../core/material/ownLimits.ts';
import { findFilament, isOwn } from '../core/material/shelf.ts';
import type { OwnFilament, PropertyName, Provenance, Quantity } from '../core/material/types.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, type Result } from '../core/result.ts';
import { filamentShape } from './filamentShape.ts';
import { readFilaments } from './filaments.ts';
import { writeJointLink } from './jointLinkText.ts';
import { capped, isObject, shapeProblem, within } from './shape.ts';

/** Longer addresses are cut or refused by some programs that pass them on. */
export const LONGEST_ADDRESS = 8000;

type Json = Readonly<Record<string, unknown>>;

/** The row of the table that a row goes back to, as if it had just been copied; none where there is no such row. */
function baseOf({ id, name, own }: Pick<OwnFilament, 'id' | 'name' | 'own'>): OwnFilament | undefined {
  const row = FILAMENTS.find((one) => one.id === own.from);
  return row && { ...ownFrom(row, name, id), own };
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

/** Kinds of origin by a letter each, with the field that holds their words. */
const ORIGINS = {
  t: { kind: 'measured', words: 'what' },
  d: { kind: 'published', words: 'place' },
  m: { kind: 'memory', words: 'because' },
} as const;
type Letter = keyof typeof ORIGINS;

function letterOf(provenance: Provenance): Letter | undefined {
  if (provenance.kind === 'published') return provenance.source === 'named-by-user' ? 'd' : undefined;
  return provenance.kind === 'measured' ? 't' : provenance.kind === 'memory' ? 'm' : undefined;
}

function wordsOf(provenance: Provenance): string {
  if (provenance.kind === 'measured') return provenance.what;
  if (provenance.kind === 'published') return provenance.place;
  return provenance.kind === 'memory' ? (provenance.because ?? '') : '';
}

/** What a value says beyond its figures and an origin of the user's, where that is not as in the row below it. */
function restOf(quantity: Quantity, base: Quantity | undefined) {
  const { unit, direction, range, note, provenance } = quantity;
  return {
    ...(unit === base?.unit ? {} : { unit }),
    ...(direction === base?.direction ? {} : { direction }),
    ...(range === undefined ? {} : { range }),
    ...(note === undefined ? {} : { note }),
    ...(letterOf(provenance) === undefined ? { provenance } : {}),
  };
}

/** `isShort` leaves the words out, which are the only part of it without a limit. */
function packed(quantity: Quantity, base: Quantity | undefined, isShort: boolean): readonly unknown[] {
  const { typical, low = null, high = null, provenance } = quantity;
  const { note, ...rest } = restOf(quantity, base);
  const all = note === undefined || isShort ? rest : { ...rest, note };
  const letter = letterOf(provenance) ?? '';
  const parts = [typical, low, high, letter, isShort ? '' : wordsOf(provenance), all];
  if (Object.keys(all).length > 0) return parts;
  return parts.slice(0, parts[4] === '' ? 4 : 5);
}

function originFrom(letter: unknown, words: unknown): Json {
  const origin = typeof letter === 'string' && Object.hasOwn(ORIGINS, letter) ? ORIGINS[letter as Letter] : undefined;
  if (!origin) return {};
  const said = typeof words === 'string' ? words : '';
  const source = origin.kind === 'published' ? { source: 'named-by-user' } : {};
  const because = origin.kind === 'memory' && said === '' ? {} : { [origin.words]: said };
  return { provenance: { kind: origin.kind, ...source, ...because } };
}

/** The quantity as a file would hold it, of any shape yet. */
function unpacked(parts: unknown, base: Quantity | undefined): unknown {
  if (!Array.isArray(parts)) return parts;
  const [typical, low, high, letter, words, rest] = parts as unknown[];
  return {
    typical,
    ...(low === null || low === undefined ? {} : { low }),
    ...(high === null || high === undefined ? {} : { high }),
    unit: base?.unit ?? '',
    direction: base?.direction ?? 'any',
    ...originFrom(letter, words),
    ...(isObject(rest) ? rest : {}),
  };
}

const CURVE = [...CURVE_FIGURES, 'surestLife', 'doubtPerDecade', 'certainty', 'provenance', 'note'] as const;
/** As much of a text about a curve as a short link carries. */
const SHORT = 40;

/** What a curve says differently; null where it no longer says it. */
function curveOf({ life }: OwnFilament, base: OwnFilament | undefined, isShort: boolean): Json {
  const changed = CURVE.filter((name) => !same(life[name], base?.life[name]));
  const entries = changed.map((name) => [name, life[name] ?? null] as const);
  if (!isShort) return Object.fromEntries(entries);
  const { note: _note, ...curve }: Json = Object.fromEntries(entries);
  const letter = letterOf(life.provenance);
  return {
    ...curve,
    ...('certainty' in curve ? { certainty: life.certainty.slice(0, SHORT) } : {}),
    ...('provenance' in curve && letter ? originFrom(letter, '') : {}),
  };
}

function valuesOf({ properties }: OwnFilament, base: OwnFilament | undefined, isShort: boolean): Json {
  const changed = PROPERTY_NAMES.filter((name) => !same(properties[name], base?.properties[name]));
  const values = changed.map((name) => {
    const quantity = properties[name];
    return [name, quantity === undefined ? null : packed(quantity, base?.properties[name], isShort)] as const;
  });
  return Object.fromEntries(values);
}

/** The row as a link carries it. */
function difference(own: OwnFilament, isShort: boolean): Json {
  const base = baseOf(own);
  const [values, life] = [valuesOf(own, base, isShort), curveOf(own, base, isShort)];
  return {
    id: own.id,
    name: own.name,
    ...(own.fullName === own.name ? {} : { fullName: own.fullName }),
    from: own.own.from,
    ...(own.own.remark === '' || isShort ? {} : { remark: own.own.remark }),
    ...(own.printable === base?.printable ? {} : { printable: own.printable }),
    ...(own.crystalline === base?.crystalline ? {} : { crystalline: own.crystalline }),
    ...(Object.keys(values).length > 0 ? { values } : {}),
    ...(Object.keys(life).length > 0 ? { life } : {}),
    ...(own.laid === undefined ? {} : { laid: own.laid }),
  };
}

/**
 * The fragment, without `#`, of a link that opens this joint with the filament of the user's own that it uses. Where it
 * would be longer than some programs pass on, the words about its values are left out, and never a figure.
 *
 * @param joint - any joint that has been checked
 * @returns readable text; every number reads back equal
 */
export function writeOwnJointLink(joint: Joint): string {
  const link = writeJointLink(joint);
  const own = findFilament(joint.profile.filament);
  if (!own || !isOwn(own)) return link;
  const carrying = (isShort: boolean) => {
    const carried = new URLSearchParams(link);
    carried.set('own', JSON.stringify(difference(own, isShort)));
    return carried.toString();
  };
  const whole = carrying(false);
  return whole.length <= LONGEST_ADDRESS ? whole : carrying(true);
}

/** The row as a file would hold it, of any shape yet. */
function asDocument(said: Json): Json {
  const { id, name, fullName = name, from, remark = '', printable, crystalline, values, life, laid } = said;
  const own = { from, remark } as OwnFilament['own'];
  const base = baseOf({ id, name, own } as OwnFilament);
  const properties: Record<string, unknown> = { ...base?.properties };
  for (const [key, parts] of Object.entries(isObject(values) ? values : {})) {
    if (!PROPERTY_NAMES.includes(key as PropertyName)) continue;
    if (parts === null) delete properties[key];
    else properties[key] = unpacked(parts, base?.properties[key as PropertyName]);
  }
  const { note, ...curve }: Json = { ...base?.life, ...(isObject(life) ? life : {}) };
  return {
    id,
    name,
    fullName,
    printable: printable ?? base?.printable,
    crystalline: crystalline ?? base?.crystalline,
    properties,
    life: { ...curve, ...(note === undefined || note === null ? {} : { note }) },
    ...(laid === undefined ? {} : { laid }),
    own: { from, remark },
  };
}

function unreadable(): Problem {
  const message = 'The filament that comes with the link cannot be read; have the link copied anew';
  return { code: 'unreadable', message, field: 'own' };
}

/**
 * The filament that a link carries, judged as strictly as one on file. Never throws, whatever the text.
 *
 * @param text - what stands under `own`
 * @param used - key of the filament that the joint names
 */
export function readOwn(text: string, used: string): Result<readonly OwnFilament[]> {
  const said = parsed(text);
  if (!isObject(said)) return fail(unreadable());
  const shape = v.safeParse(filamentShape, asDocument(said));
  if (!shape.success) {
    const problems = shape.issues.map(shapeProblem).map((problem) => within('own', problem));
    return failIfAny(capped(problems)) ?? fail(unreadable());
  }
  if (shape.output.id !== used) return fail(unreadable());
  return readFilaments([shape.output], () => 'own');
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
