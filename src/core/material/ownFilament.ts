/** Rows of the user's own: made from any row, and changed one value at a time. Each change gives a new row. */
import { failIfAny, ok, type Result } from '../result.ts';
import { soundness } from './choose.ts';
import { checkFilament } from './ownCheck.ts';
import { curveThrough, type Anchors } from './ownCurve.ts';
import { CURVE_FIGURES, PROPERTY_LIMITS, PROPERTY_NAMES, type CurveFigure } from './ownLimits.ts';
import { ofOther, settled } from './ownFollows.ts';
import { isOwn } from './shelf.ts';
import { laidInOrder, testsInOrder } from './testsInOrder.ts';
import { wholeRow } from './wholeRow.ts';
import type {
  Filament,
  OwnFilament,
  PropertyName,
  Provenance,
  ProvenanceKind,
  Quantity,
  StrainLifeCurve,
} from './types.ts';

/** What a user says of one value. */
export interface Figures {
  readonly typical: number;
  readonly low?: number;
  readonly high?: number;
}

/** A quantity with its fields in the order in which files have them. */
function quantityInOrder(quantity: Quantity): Quantity {
  const { typical, low, high, unit, direction, provenance, range, note } = quantity;
  return {
    typical,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    unit,
    direction,
    provenance,
    ...(range === undefined ? {} : { range }),
    ...(note === undefined ? {} : { note }),
  };
}

/** The row with its fields in the order in which files have them, so that the same row gives the same text. */
export function inOrder({
  id,
  name,
  fullName,
  printable,
  crystalline,
  properties,
  life,
  laid,
  own,
}: OwnFilament): OwnFilament {
  const present = PROPERTY_NAMES.flatMap((key) => {
    const quantity = properties[key];
    return quantity === undefined ? [] : [[key, quantityInOrder(quantity)] as const];
  });
  const figures = CURVE_FIGURES.map((key) => [key, life[key]] as const);
  const { surestLife, doubtPerDecade, certainty, provenance, note } = life;
  return {
    id,
    name,
    fullName,
    printable,
    crystalline,
    properties: Object.fromEntries(present) as unknown as OwnFilament['properties'],
    life: {
      ...(Object.fromEntries(figures) as unknown as Pick<StrainLifeCurve, CurveFigure>),
      ...(surestLife === undefined ? {} : { surestLife }),
      ...(doubtPerDecade === undefined ? {} : { doubtPerDecade }),
      certainty,
      provenance,
      ...(note === undefined ? {} : { note }),
    },
    ...(laid === undefined ? {} : { laid: laidInOrder(laid) }),
    own: {
      from: own.from,
      remark: own.remark,
      ...(own.tests === undefined ? {} : { tests: testsInOrder(own.tests) }),
    },
  };
}

/**
 * A row of the user's own with everything that is known of another, what tests have taught it as well; the tallies
 * themselves stay with the row on which they were counted.
 *
 * @param row - row of the table, or one of the user's own [-]
 * @param name - what it is called from now on [-]
 * @param id - key that begins with `own-` [-]
 * @returns the new row [-]; it remembers the row of the table that it goes back to
 */
export function ownFrom(row: Filament, name: string, id: string): OwnFilament {
  const { from, remark } = isOwn(row) ? row.own : { from: row.id, remark: '' };
  return inOrder({ ...wholeRow(row), id, name, fullName: name, own: { from, remark } });
}

function judged(next: OwnFilament): Result<OwnFilament> {
  return failIfAny(checkFilament(next)) ?? ok(inOrder(next));
}

/** What a value is in where the row has none yet. */
function blank(name: PropertyName): Pick<Quantity, 'unit' | 'direction'> {
  return { unit: PROPERTY_LIMITS[name].units[0], direction: 'any' };
}

/** Where low and high come from, when they are still those of before; undefined where they are new or absent. */
function rangeKept({ low, high, range, provenance }: Quantity, now: Figures): ProvenanceKind | undefined {
  if (low !== now.low || high !== now.high || (low ?? high) === undefined) return undefined;
  return range ?? soundness(provenance);
}

/**
 * The row with one value changed. Permissible strains follow the yield strain, and losses the exponent of relaxation,
 * unless they were set by hand; a note on the old figure goes, and a low and a high that stay keep what they rest on.
 *
 * Problems: those of `checkFilament`.
 *
 * @param row - a valid row of the user's own [-]
 * @param name - which value [-]
 * @param figures - typical, with low and high where they are known [in the unit of the property]
 * @param provenance - where they come from [-]
 * @returns the new row [-]
 *
 * Source: s5-allowable-strain.
 */
export function withValue(
  row: OwnFilament,
  name: PropertyName,
  figures: Figures,
  provenance: Provenance,
): Result<OwnFilament> {
  const before = row.properties[name];
  const { unit, direction } = before ?? blank(name);
  const { typical, low, high } = figures;
  const range = before && rangeKept(before, figures);
  const quantity = quantityInOrder({
    typical,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    unit,
    direction,
    provenance,
    ...(range === undefined || range === provenance.kind ? {} : { range }),
  });
  return judged({ ...row, properties: settled({ ...row.properties, [name]: quantity }, name) });
}

/**
 * The row with one value as another row has it, with its source and notes; one that follows from another value by a rule
 * follows it again.
 *
 * Problems: those of `checkFilament`.
 *
 * @param row - a valid row of the user's own [-]
 * @param name - which value [-]
 * @param like - the row to take it from [-]
 * @returns the new row [-]; without that value where the other has none
 */
export function withValueOf(row: OwnFilament, name: PropertyName, like: Filament): Result<OwnFilament> {
  const { [name]: _gone, ...others } = row.properties;
  const theirs = wholeRow(like).properties;
  const quantity = ofOther(row.properties, theirs, name);
  const properties = {
    ...others,
    ...(quantity === undefined ? {} : { [name]: quantity }),
  } as OwnFilament['properties'];
  return judged({ ...row, properties: settled(properties, name) });
}

/** How sure one is of a curve, by where it comes from. */
function certaintyOf(provenance: Provenance): string {
  if (provenance.kind === 'measured') return 'by your own test';
  return provenance.kind === 'published' ? 'by a document that you name' : 'from memory';
}

/** What a curve through two anchors is said to be set through. */
function setThrough(anchors: Anchors): string {
  const each = anchors.map(({ cycles, strain }) => {
    const percent = Number((100 * strain).toPrecision(3));
    return `${percent} % at ${String(cycles).replaceAll(/\B(?=(?:\d{3})+$)/g, ' ')}`;
  });
  return `set through ${each.join(' and ')} cycles`;
}

/** The note on the course of a curve: one on a curve of the table goes with the first change. */
function noteKept({ certainty, provenance, note }: StrainLifeCurve, change: object): { readonly note?: string } {
  const isOfUser = certainty === certaintyOf(provenance);
  return note === undefined || !isOfUser || 'A' in change || 'b' in change || 'B' in change || 'c' in change
    ? {}
    : { note };
}

/** Where tests knew a curve best says nothing of another course, nor beside a doubt that somebody has set by hand. */
function withoutSurest(life: StrainLifeCurve, change: object): StrainLifeCurve {
  if (!['A', 'b', 'B', 'c', 'doubtFactor'].some((name) => name in change)) return life;
  const { surestLife: _life, doubtPerDecade: _doubt, ...kept } = life;
  return kept;
}

/**
 * The row with figures of its life curve changed.
 *
 * Problems: those of `checkFilament`.
 *
 * @param row - a valid row of the user's own [-]
 * @param change - figures of the curve [-]
 * @param provenance - where they come from [-]
 * @returns the new row [-]
 */
export function withCurve(
  row: OwnFilament,
  change: Partial<Pick<StrainLifeCurve, CurveFigure>>,
  provenance: Provenance,
): Result<OwnFilament> {
  const { note: _note, ...life } = withoutSurest(row.life, change);
  const origin = { certainty: certaintyOf(provenance), provenance, ...noteKept(row.life, change) };
  return judged({ ...row, life: { ...life, ...change, ...origin } });
}

/**
 * The row with the life curve that goes through two anchors, its exponents kept; its note names them.
 *
 * Problems: those of `curveThrough` and of `checkFilament`.
 *
 * @param row - a valid row of the user's own [-]
 * @param anchors - few flexes and many, each a number of cycles [-] and an equivalent strain as a fraction [-]
 * @param provenance - where they come from [-]
 * @returns the new row [-]
 */
export function withAnchors(row: OwnFilament, anchors: Anchors, provenance: Provenance): Result<OwnFilament> {
  const through = curveThrough(anchors, row.life);
  if (!through.ok) return through;
  const next = withCurve(row, through.value, provenance);
  return next.ok ? judged({ ...next.value, life: { ...next.value.life, note: setThrough(anchors) } }) : next;
}

/**
 * The row with the life curve of another row, its source and note.
 *
 * @param row - a valid row of the user's own [-]
 * @param like - the row to take it from [-]
 * @returns the new row [-]
 */
export function withCurveOf(row: OwnFilament, like: Filament): Result<OwnFilament> {
  return judged({ ...row, life: wholeRow(like).life });
}

/**
 * The row under another name, or with another remark.
 *
 * Problems: `missing-field` when nothing is left of the name.
 *
 * @param row - a valid row of the user's own [-]
 * @param words - name [-] and remark [-], one line each
 * @returns the new row [-]
 */
export function withWords(
  row: OwnFilament,
  { name = row.name, remark = row.own.remark }: { readonly name?: string; readonly remark?: string },
): Result<OwnFilament> {
  return judged({ ...row, name, fullName: name, own: { ...row.own, remark } });
}
