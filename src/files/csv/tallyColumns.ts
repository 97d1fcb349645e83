/** Columns of a table of tallies, in the order in which they are written, and the words that stand in them. */
import type { Tally, TallyKind } from '../../core/material/tally.ts';
import { degrees } from '../../core/units.ts';
import { ANGLES, COUNTS, FORCES, HOURS, LENGTHS, STRESSES, type Column } from './columns.ts';

const length = (...names: Column['names']): Column => ({ names, units: LENGTHS });
const angle = (...names: Column['names']): Column => ({ names, units: ANGLES });
const count = (...names: Column['names']): Column => ({ names, units: COUNTS });
const said = (...names: Column['names']): Column => ({ names });

export const TALLY_COLUMNS = {
  kind: said('what', 'what was done', 'kind'),
  date: said('date', 'day'),
  thickness: length('thickness', 'strip thickness'),
  radius: length('bar radius', 'radius of the bar', 'radius'),
  turn: angle('turned', 'turned to', 'turn', 'angle'),
  length: length('free length', 'length'),
  depth: length('width', 'strip width', 'width of the bar'),
  lying: said('lying', 'printed'),
  ways: said('ways'),
  cycles: count('flexes', 'cycles', 'bends'),
  ended: said('ended', 'end'),
  looks: said('looks', 'looked'),
  countOf: said('lines or layers'),
  count: count('how many', 'count'),
  set: length('set thickness', 'set'),
  measured: length('measured thickness', 'measured'),
  force: { names: ['weight', 'force'], units: FORCES },
  sag: length('sag'),
  hours: { names: ['time held', 'held for', 'hours'], units: HOURS },
  held: angle('angle held', 'held'),
  left: angle('angle left', 'left'),
  direction: said('pulled', 'direction'),
  strength: { names: ['strength'], units: STRESSES },
  modulus: { names: ['modulus', 'stiffness'], units: STRESSES },
  seen: said('seen', 'remarks', 'remark', 'notes', 'note'),
  leftOut: said('set aside', 'left out'),
  id: said('key', 'id'),
  printer: said('printer'),
  spool: said('spool'),
} as const satisfies Readonly<Record<string, Column>>;

export type TallyField = keyof typeof TALLY_COLUMNS;

/** Units as we write them. */
const UNIT_SAID = new Map<unknown, string>([
  [LENGTHS, 'mm'],
  [ANGLES, '°'],
  [FORCES, 'N'],
  [HOURS, 'h'],
  [STRESSES, 'MPa'],
]);

/** A column as it stands at the head of a table: “bar radius mm”. */
export function headOf(field: TallyField): string {
  const { names, units }: Column = TALLY_COLUMNS[field];
  const unit = UNIT_SAID.get(units);
  return unit === undefined ? names[0] : `${names[0]} ${unit}`;
}

/** Words for a value of a list; the first is what we write, and case does not matter. */
export type Words<T extends string> = Readonly<Record<T, readonly [string, ...string[]]>>;

export const KIND_SAID: Words<TallyKind> = {
  flexes: ['flexed', 'flexes', 'flex'],
  thickness: ['measured', 'thickness', 'measure'],
  mark: ['bent once', 'mark', 'bent', 'bend once'],
  sag: ['hung', 'sag', 'hang'],
  hold: ['held', 'hold', 'held bent'],
  pull: ['pulled', 'pull'],
};
export const LYING_SAID: Words<'flat' | 'crease' | 'upright'> = {
  flat: ['flat'],
  crease: ['crease', 'as a crease'],
  upright: ['upright', 'standing'],
};
export const WAYS_SAID: Words<'one way' | 'both ways'> = {
  'one way': ['one way', 'one'],
  'both ways': ['both ways', 'both'],
};
export const ENDED_SAID: Words<'broke' | 'whole'> = {
  broke: ['broke', 'broken', 'failed'],
  whole: ['whole', 'still whole', 'run-out', 'runout', 'stopped'],
};
export const LOOKS_SAID: Words<'unmarked' | 'whitened' | 'cracked'> = {
  unmarked: ['unmarked', 'clean'],
  whitened: ['whitened', 'white'],
  cracked: ['cracked', 'broke'],
};
export const COUNT_OF_SAID: Words<'lines' | 'layers'> = { lines: ['lines', 'line'], layers: ['layers', 'layer'] };
export const DIRECTION_SAID: Words<'along lines' | 'across layers'> = {
  'along lines': ['along lines', 'along', 'xy'],
  'across layers': ['across layers', 'across', 'z'],
};
export const ASIDE_SAID: Words<'yes' | 'no'> = { yes: ['yes', 'true', 'x', '1'], no: ['no', 'false', '0', ''] };

/** Twelve figures are more than anybody measures, and give 90 where a right angle was meant. */
const ANGLE_FIGURES = 12;

function cellOf(field: string, value: unknown): string {
  if (field === 'kind') return KIND_SAID[value as TallyKind][0];
  if (field === 'leftOut') return ASIDE_SAID.yes[0];
  const { units }: Column = TALLY_COLUMNS[field as TallyField];
  if (units !== ANGLES) return String(value);
  return String(Number(degrees(value as Parameters<typeof degrees>[0]).toPrecision(ANGLE_FIGURES)));
}

/** What stands in the row of a tally, by column. */
export function cellsOf(tally: Tally): Readonly<Partial<Record<TallyField, string>>> {
  const { bend, ...fields } = { bend: {}, ...tally };
  const all = Object.entries({ ...fields, ...bend }).filter(([field]) => Object.hasOwn(TALLY_COLUMNS, field));
  return Object.fromEntries(all.map(([field, value]) => [field, cellOf(field, value)]));
}
