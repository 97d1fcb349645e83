/**
 * Tests on a row: adding, changing and taking away tallies, and what the row becomes by them. Always reckoned anew from the figures
 * of the row that it is like, so that a tally that goes leaves nothing behind.
 */
import { bendingModulus } from '../material/choose.ts';
import { checkFilament } from '../material/ownCheck.ts';
import { inOrder, ownFrom } from '../material/ownFilament.ts';
import { settled } from '../material/ownFollows.ts';
import { findFilament } from '../material/shelf.ts';
import type { Tally, Tests } from '../material/tally.ts';
import type { Filament, OwnFilament, PropertyName, Quantity, WholeFilament } from '../material/types.ts';
import type { Learned } from './learned.ts';
import { learnLife } from './learnLife.ts';
import { allowableOfMarks, breakOfMarks } from './limitsOfMarks.ts';
import { linesLaid } from './linesLaid.ts';
import { modulusOfSag } from './modulusOfSag.ts';
import { setOfHold, strengthOfPull } from './setOfHold.ts';
import { isTaught, taughtSo } from './taught.ts';

type Properties = WholeFilament['properties'];
type Taught = Partial<Record<PropertyName, Quantity>>;

/** Everything that the tallies say, whether or not the row takes it in. */
function told(prior: WholeFilament, tallies: readonly Tally[]): Learned {
  const { setAfterDayHeld, tensileStrength, tensileStrengthAcrossLayers } = prior.properties;
  const found = {
    lines: linesLaid(tallies, 'lines'),
    layers: linesLaid(tallies, 'layers'),
    modulus: modulusOfSag(prior, tallies, false),
    modulusAcrossLayers: modulusOfSag(prior, tallies, true),
    allowable: allowableOfMarks(prior, tallies),
    firstFlexBreak: breakOfMarks(prior, tallies),
    setAfterDay: setOfHold(setAfterDayHeld, tallies),
    strength: strengthOfPull(tensileStrength, tallies, 'along lines'),
    strengthAcrossLayers: strengthOfPull(tensileStrengthAcrossLayers ?? tensileStrength, tallies, 'across layers'),
  };
  return Object.fromEntries(Object.entries(found).filter(([, one]) => one !== undefined)) as Learned;
}

const ALONG = ['youngsModulus', 'flexuralModulus', 'designModulus'] as const;

function times({ unit, direction, ...quantity }: Quantity, factor: number, taught: Quantity): Quantity {
  const share = (end: 'low' | 'high') => (factor * quantity.typical * (taught[end] ?? taught.typical)) / taught.typical;
  const typical = factor * quantity.typical;
  return { typical, low: share('low'), high: share('high'), unit, direction, provenance: taught.provenance };
}

/** All moduli along lines keep their proportion: which of them is bent with, the assessment chooses. */
function moduli({ properties }: WholeFilament, before: Quantity, taught: Quantity): Taught {
  const factor = taught.typical / before.typical;
  return Object.fromEntries(
    ALONG.flatMap((name) => {
      const quantity = properties[name];
      return quantity ? [[name, times(quantity, factor, taught)] as const] : [];
    }),
  );
}

/** Values of a row as the tests say. */
function taughtValues(prior: WholeFilament, learned: Learned): Taught {
  const { modulus, modulusAcrossLayers, allowable, setAfterDay, strength, strengthAcrossLayers } = learned;
  return {
    ...(modulus ? moduli(prior, bendingModulus(prior, false), modulus.value) : {}),
    ...(modulusAcrossLayers ? { youngsModulusAcrossLayers: modulusAcrossLayers.value } : {}),
    ...(allowable ? { permissibleStrainSingle: allowable.value } : {}),
    ...(setAfterDay ? { setAfterDayHeld: setAfterDay.value } : {}),
    ...(strength ? { tensileStrength: strength.value } : {}),
    ...(strengthAcrossLayers ? { tensileStrengthAcrossLayers: strengthAcrossLayers.value } : {}),
  };
}

const TEACHABLE = [
  ...ALONG,
  'youngsModulusAcrossLayers',
  'permissibleStrainSingle',
  'setAfterDayHeld',
  'tensileStrength',
  'tensileStrengthAcrossLayers',
] as const satisfies readonly PropertyName[];

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** What somebody has set by hand stays, whatever the tests say. */
function isByHand(now: Quantity | undefined, before: Quantity | undefined): boolean {
  return now !== undefined && !isTaught(now.provenance) && !same(now, before);
}

function withValue(all: Properties, name: PropertyName, quantity: Quantity | undefined): Properties {
  const { [name]: _gone, ...others } = all;
  return { ...others, ...(quantity === undefined ? {} : { [name]: quantity }) } as Properties;
}

function propertiesBy(row: OwnFilament, prior: WholeFilament, taught: Taught): Properties {
  return TEACHABLE.reduce<Properties>((all, name) => {
    const before = prior.properties[name];
    if (isByHand(all[name], before)) return all;
    const value = taught[name] ?? before;
    const next = withValue(all, name, value);
    if (name !== 'permissibleStrainSingle') return next;
    const { permissibleStrainRepeated } = prior.properties;
    const follows = all.permissibleStrainRepeated.provenance.kind === 'computed';
    if (!follows) return next;
    const reset = { ...next, permissibleStrainRepeated };
    return taught[name] ? settled(reset, name) : reset;
  }, row.properties);
}

/** The curve by the counts, unless somebody has set one by hand; and what broke at once. */
function lifeBy(row: OwnFilament, prior: Filament, learned: Learned): { life: OwnFilament['life']; told: Learned } {
  const flexes = row.own.tests?.tallies.filter((tally) => tally.kind === 'flexes') ?? [];
  const found = learnLife(prior, flexes);
  const said: Learned = found.ok
    ? { ...learned, ...(found.value ? { life: found.value.told } : {}) }
    : { ...learned, refused: found.problems };
  if (!isTaught(row.life.provenance) && !same(row.life, prior.life)) return { life: row.life, told: said };
  const curve = found.ok && found.value ? withOrigin(found.value.life) : prior.life;
  const breaks = learned.firstFlexBreak;
  if (!breaks) return { life: curve, told: said };
  const counts = taughtSo(`${breaks.by.length} strips that broke at once or did not`);
  const provenance = curve === prior.life ? counts : curve.provenance;
  return { life: { ...curve, firstFlexBreakStrain: breaks.value, provenance }, told: said };
}

function withOrigin(life: OwnFilament['life']): OwnFilament['life'] {
  const { note: _note, ...curve } = life;
  return life.provenance.kind === 'measured' ? { ...curve, provenance: taughtSo(life.provenance.what) } : curve;
}

type Laid = NonNullable<Filament['laid']>;

function laidBy({ lines, layers }: Learned): Laid {
  return { ...(lines ? { lines: lines.value } : {}), ...(layers ? { layers: layers.value } : {}) };
}

function withLaid(row: OwnFilament, laid: Laid): OwnFilament {
  const { laid: _laid, ...others } = row;
  return Object.keys(laid).length > 0 ? { ...others, laid } : others;
}

/** Always summed in one order, so that the order of entry does not change the last figure. */
function inOneOrder(tallies: readonly Tally[]): readonly Tally[] {
  return tallies.toSorted((one, other) => Number(one.id > other.id) - Number(one.id < other.id));
}

/**
 * A row as its tallies make it, and all that they say.
 *
 * Each value that a test can teach is that of the prior where none does, what the tests say where some do, and what somebody has
 * set by hand where it is neither. Doing it twice is doing it once; without tallies the figures are those of the prior.
 *
 * @param row - row of the user's own, with its tests [-]
 * @param prior - row whose figures stand where nothing was tested [-]
 * @returns the row, and what was learned value by value [-]
 *
 * Source: bayes-rule.
 */
export function learnRow(row: OwnFilament, prior: Filament): { readonly row: OwnFilament; readonly learned: Learned } {
  // As a copy of it is, so that its values can be told from those that somebody has set by hand.
  const whole = ownFrom(prior, row.name, row.id);
  const said = told(whole, inOneOrder(row.own.tests?.tallies ?? []));
  const { life, told: learned } = lifeBy(row, whole, said);
  const properties = propertiesBy(row, whole, taughtValues(whole, learned));
  return sound({ ...withLaid(row, { ...prior.laid, ...laidBy(learned) }), properties, life }, whole, learned);
}

/**
 * Readings each possible may together ask for what no row may have, and what cannot be kept must not be made: then all values of that
 * part stay as before the tests, and it is said why.
 */
function sound(row: OwnFilament, prior: WholeFilament, learned: Learned): ReturnType<typeof learnRow> {
  const refused = checkFilament(row);
  if (refused.length === 0) return { row: inOrder(row), learned };
  const isOf = (part: string) => refused.some(({ field }) => field?.startsWith(part) ?? false);
  const next = {
    ...(isOf('laid.') ? withLaid(row, { ...prior.laid }) : row),
    life: isOf('life.') ? prior.life : row.life,
    properties: isOf('properties.') ? propertiesBy(row, prior, {}) : row.properties,
  };
  return { row: inOrder(next), learned: { ...learned, refused: [...(learned.refused ?? []), ...refused] } };
}

/**
 * The row whose figures stand where a tested row has not been tested.
 *
 * @param row - row of the user's own [-]
 * @returns the row that its tests name, or, where that is gone, the one of the table that it goes back to [-]
 */
export function priorOf(row: OwnFilament): Filament {
  const { tests, from } = row.own;
  const named = tests && tests.like !== row.id ? findFilament(tests.like) : undefined;
  return named ?? findFilament(from) ?? row;
}

/**
 * A row to hold tests of a filament on one printer from one spool: as the filament itself, until something is tested.
 *
 * @param base - row whose figures stand where nothing is tested [-]
 * @param name - what it is called [-]
 * @param id - key that begins with `own-` [-]
 * @param printer - which, one line; may be empty [-]
 * @param spool - which, one line; may be empty [-]
 * @returns the row, without tallies [-]
 */
export function newTests(base: Filament, name: string, id: string, printer: string, spool: string): OwnFilament {
  const row = ownFrom(base, name, id);
  const tests: Tests = { printer, spool, like: base.id, tallies: [] };
  return inOrder({ ...row, own: { ...row.own, tests } });
}

function withTallies(row: OwnFilament, change: (tallies: readonly Tally[]) => readonly Tally[]): OwnFilament {
  const { tests } = row.own;
  if (!tests) throw new RangeError(`${row.id} holds no tests`);
  return inOrder({ ...row, own: { ...row.own, tests: { ...tests, tallies: change(tests.tallies) } } });
}

/** The row with one more tally; what it teaches comes with `learnRow`. */
export function withTally(row: OwnFilament, tally: Tally): OwnFilament {
  return withTallies(row, (tallies) => [...tallies, tally]);
}

/** The row without the tally of this key. */
export function withoutTally(row: OwnFilament, id: string): OwnFilament {
  return withTallies(row, (tallies) => tallies.filter((one) => one.id !== id));
}

/** The row with a tally in the place of the one with the same key. */
export function withTallyChanged(row: OwnFilament, tally: Tally): OwnFilament {
  return withTallies(row, (tallies) => tallies.map((one) => (one.id === tally.id ? tally : one)));
}
