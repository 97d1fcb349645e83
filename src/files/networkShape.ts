/** The shape of a network on file: the solver's own terms, field by field. */
import * as v from 'valibot';
import { MOST_ENTRIES } from '../core/beam/modelLimits.ts';
import { UNITS } from './limits.ts';
import { fields, listOf, number } from './shape.ts';

const flag = v.boolean();
const optional = v.exactOptional(number);
const point = fields({ x: number, y: number });

const list = <S extends v.GenericSchema>(entry: S) => listOf(entry, MOST_ENTRIES);
const listOrNone = <S extends v.GenericSchema>(entry: S) => v.optional(list(entry), []);

/** Fields by the kind that an entry says it is; of an unknown kind only that is said. */
function byKind<S extends v.GenericSchema>(kinds: Readonly<Record<string, S>>) {
  return v.lazy((entry: unknown): S | v.GenericSchema<unknown, never> => {
    const kind = typeof entry === 'object' && entry !== null && 'kind' in entry ? entry.kind : undefined;
    const known = typeof kind === 'string' && Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
    if (known) return known;
    return fields({ kind: v.picklist(Object.keys(kinds)) }) as unknown as v.GenericSchema<unknown, never>;
  });
}

const shape = byKind({
  straight: fields({ kind: v.literal('straight') }),
  arc: fields({ kind: v.literal('arc'), turn: number }),
  wave: fields({ kind: v.literal('wave'), rise: number }),
  rise: fields({ kind: v.literal('rise'), heading: number }),
  spiral: fields({ kind: v.literal('spiral'), centre: point, turns: number }),
});

const profile = byKind({
  taper: fields({ kind: v.literal('taper'), from: number, to: number }),
  notch: fields({
    kind: v.literal('notch'),
    least: number,
    deep: number,
    part: v.picklist(['whole', 'opening', 'closing']),
  }),
});

const member = fields({
  id: v.string(),
  from: v.string(),
  to: v.string(),
  shape,
  // A plain number, or a profile: what is neither is judged as the number that it most likely should be.
  thickness: v.lazy((thickness) => (typeof thickness === 'object' && thickness !== null ? profile : number)),
  width: number,
  hinged: v.exactOptional(v.picklist(['from', 'to', 'both'])),
  plane: optional,
  widthRatio: optional,
});

const inPlane = { x: optional, y: optional, turn: optional };

export const networkShape = fields({
  units: v.literal(UNITS),
  modulus: number,
  poisson: number,
  nodes: list(fields({ id: v.string(), x: number, y: number })),
  members: list(member),
  pads: listOrNone(fields({ id: v.string(), nodes: list(v.string()), at: v.exactOptional(point) })),
  supports: listOrNone(
    fields({ at: v.string(), x: v.exactOptional(flag), y: v.exactOptional(flag), turn: v.exactOptional(flag) }),
  ),
  motions: listOrNone(fields({ at: v.string(), ...inPlane })),
  loads: listOrNone(
    fields({ at: v.string(), x: optional, y: optional, moment: optional, follower: v.exactOptional(flag) }),
  ),
  springs: listOrNone(fields({ at: v.string(), to: v.exactOptional(v.string()), ...inPlane, twist: optional })),
  ties: listOrNone(fields({ at: v.string(), like: v.string(), ...inPlane })),
});
