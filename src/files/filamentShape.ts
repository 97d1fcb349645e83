/** The shape of a filament of the user's own on file: which fields there are and what kind of value each holds. */
import * as v from 'valibot';
import { CURVE_FIGURES, MOST_OWN, NEEDED, PROPERTY_NAMES } from '../core/material/ownLimits.ts';
import type { OwnFilament, Provenance } from '../core/material/types.ts';
import { SOURCES, type SourceKey } from '../core/sources.ts';
import { words } from './names.ts';
import { fields, listOf, number } from './shape.ts';
import { testsShape } from './tallyShape.ts';

const text = v.pipe(v.string(), v.transform(words));
const INPUTS = ['published', 'memory', 'published and memory'] as const;
const KINDS = ['published', 'computed', 'memory', 'measured'] as const;
const DIRECTIONS = ['along lines', 'across lines', 'across layers', 'flow', 'any'] as const;

/** A source that this program does not list is still a document that somebody named. */
function published(source: string, place: string): Provenance {
  if (Object.hasOwn(SOURCES, source)) return { kind: 'published', source: source as SourceKey, place };
  return { kind: 'published', source: 'named-by-user', place: words(`${source}: ${place}`) };
}

const BY_KIND = {
  published: v.pipe(
    fields({ kind: v.literal('published'), source: text, place: text }),
    v.transform(({ source, place }) => published(source, place)),
  ),
  computed: fields({ kind: v.literal('computed'), from: text, inputs: v.picklist(INPUTS) }),
  memory: fields({ kind: v.literal('memory'), because: v.exactOptional(text) }),
  measured: fields({ kind: v.literal('measured'), what: text }),
} as const;

/** Judged by the kind that it names, so that a fault is told of that kind alone. */
const provenance = v.lazy((given): v.GenericSchema<unknown, Provenance> => {
  const kind = typeof given === 'object' && given !== null && 'kind' in given ? given.kind : undefined;
  const known = KINDS.find((one) => one === kind);
  return known === undefined ? (fields({ kind: v.picklist(KINDS) }) as never) : BY_KIND[known];
});

const quantity = fields({
  typical: number,
  low: v.exactOptional(number),
  high: v.exactOptional(number),
  unit: text,
  direction: v.picklist(DIRECTIONS),
  provenance,
  range: v.exactOptional(v.picklist(KINDS)),
  note: v.exactOptional(text),
});

const properties = fields(
  Object.fromEntries(
    PROPERTY_NAMES.map((name) => [name, NEEDED.includes(name) ? quantity : v.exactOptional(quantity)]),
  ),
);

const life = fields({
  ...Object.fromEntries(CURVE_FIGURES.map((name) => [name, number])),
  surestLife: v.exactOptional(number),
  doubtPerDecade: v.exactOptional(number),
  certainty: text,
  provenance,
  note: v.exactOptional(text),
});

const thickness = fields({ factor: number, offset: number, sigma: number });
const laid = fields({ lines: v.exactOptional(thickness), layers: v.exactOptional(thickness) });

/** Built from the lists of the core, so that its type is known there and not here. */
export const filamentShape = fields({
  id: v.string(),
  name: v.string(),
  fullName: v.string(),
  printable: v.boolean(),
  crystalline: v.boolean(),
  properties,
  life,
  laid: v.exactOptional(laid),
  own: fields({ from: text, remark: text, tests: v.exactOptional(testsShape) }),
}) as unknown as v.GenericSchema<unknown, OwnFilament>;

export const filamentsShape = listOf(filamentShape, MOST_OWN);

export const filamentDocumentShape = fields({ filaments: filamentsShape });
