/** The shape of tallies on file: which fields each kind has. How far their figures may go is judged by the core. */
import * as v from 'valibot';
import { MOST_TALLIES, type Bend, type Tally, type TallyKind, type Tests } from '../core/material/tally.ts';
import { LYINGS } from '../core/print/profile.ts';
import { asRad } from '../core/units.ts';
import { words } from './names.ts';
import { fields, listOf, number } from './shape.ts';

const text = v.pipe(v.string(), v.transform(words));

const common = { id: text, date: v.string(), seen: text, leftOut: v.exactOptional(v.literal(true)) } as const;

const angle = v.pipe(number, v.transform(asRad));
const lying = v.picklist(LYINGS);

const BENDS = {
  over: fields({ way: v.literal('over'), radius: number }),
  to: fields({ way: v.literal('to'), turn: angle, length: number }),
} as const;

/** Judged by what it says that it is, so that a fault is told of that kind alone. */
function saying<T extends string, E>(key: string, kinds: Readonly<Record<T, v.GenericSchema<unknown, E>>>) {
  const names = Object.keys(kinds) as T[];
  return v.lazy((given): v.GenericSchema<unknown, E> => {
    const said: unknown = typeof given === 'object' && given !== null ? Reflect.get(given, key) : undefined;
    const known = names.find((name) => name === said);
    return known === undefined ? (fields({ [key]: v.picklist(names) }) as never) : kinds[known];
  });
}

const bend: v.GenericSchema<unknown, Bend> = saying<Bend['way'], Bend>('way', BENDS);

const KINDS: Readonly<Record<TallyKind, v.GenericSchema<unknown, Tally>>> = {
  flexes: fields({
    kind: v.literal('flexes'),
    ...common,
    bend,
    thickness: number,
    lying,
    ways: v.picklist(['one way', 'both ways']),
    cycles: number,
    ended: v.picklist(['broke', 'whole']),
  }),
  thickness: fields({
    kind: v.literal('thickness'),
    ...common,
    countOf: v.picklist(['lines', 'layers']),
    count: number,
    set: number,
    measured: number,
  }),
  mark: fields({
    kind: v.literal('mark'),
    ...common,
    radius: number,
    thickness: number,
    lying,
    looks: v.picklist(['unmarked', 'whitened', 'cracked']),
  }),
  sag: fields({
    kind: v.literal('sag'),
    ...common,
    lying,
    force: number,
    sag: number,
    length: number,
    thickness: number,
    depth: number,
  }),
  hold: fields({
    kind: v.literal('hold'),
    ...common,
    radius: number,
    thickness: number,
    hours: number,
    held: angle,
    left: angle,
  }),
  pull: fields({
    kind: v.literal('pull'),
    ...common,
    direction: v.picklist(['along lines', 'across layers']),
    strength: number,
    modulus: v.exactOptional(number),
  }),
};

const tally = saying<TallyKind, Tally>('kind', KINDS);

/** Printer, spool and tallies of a row that tests correct. */
export const testsShape: v.GenericSchema<unknown, Tests> = fields({
  printer: text,
  spool: text,
  like: text,
  tallies: listOf(tally, MOST_TALLIES),
});
