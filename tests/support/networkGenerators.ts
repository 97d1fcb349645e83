import fc from 'fast-check';
import type { BeamModel } from '../../src/core/beam/model.ts';
import { HELD, network } from './beamModels.ts';

/** A sound network in which every field of the model is used at least once. */
export const EVERY_FIELD: BeamModel = network({
  nodes: [
    { id: 'a', x: 0, y: 0 },
    { id: 'b', x: 0, y: 10 },
    { id: 'c', x: 20, y: 0 },
    { id: 'd', x: 20, y: 10 },
    { id: 'e', x: 40, y: 4 },
    { id: 'post', x: 40, y: 20 },
  ],
  members: [
    {
      id: 'straight',
      from: 'a',
      to: 'c',
      shape: { kind: 'straight' },
      thickness: 0.84,
      width: 6,
      plane: 1,
      widthRatio: 1.1,
    },
    {
      id: 'arc',
      from: 'b',
      to: 'd',
      shape: { kind: 'arc', turn: -1 },
      thickness: { kind: 'taper', from: 0.8, to: 1.2 },
      width: 6,
    },
    { id: 'wave', from: 'c', to: 'e', shape: { kind: 'wave', rise: 2 }, thickness: 0.84, width: 6, hinged: 'to' },
    { id: 'rise', from: 'd', to: 'e', shape: { kind: 'rise', heading: 0 }, thickness: 0.84, width: 6, hinged: 'from' },
    {
      id: 'spiral',
      from: 'a',
      to: 'c',
      shape: { kind: 'spiral', centre: { x: 10, y: 0 }, turns: 0.5 },
      thickness: 0.84,
      width: 6,
      hinged: 'both',
    },
    {
      id: 'notch',
      from: 'e',
      to: 'post',
      shape: { kind: 'straight' },
      thickness: { kind: 'notch', least: 0.8, deep: 1, part: 'whole' },
      width: 6,
    },
  ],
  pads: [
    { id: 'fixed', nodes: ['a', 'b'] },
    { id: 'stage', nodes: ['c', 'd'], at: { x: 20, y: 5 } },
  ],
  supports: [{ at: 'fixed', ...HELD }],
  motions: [{ at: 'stage', y: 2 }],
  loads: [{ at: 'e', x: 1, y: -1, moment: 2, follower: true }],
  springs: [
    { at: 'e', to: 'stage', x: 1, y: 1, turn: 5 },
    { at: 'stage', twist: 2 },
  ],
  ties: [{ at: 'post', like: 'stage', x: 0, y: 1, turn: 0.5 }],
});

export type Keys = readonly (string | number)[];

/** Every place in a value that holds something, as the keys that lead to it. */
export function placesIn(value: unknown, path: Keys = []): readonly Keys[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inside = Object.entries(value).flatMap(([key, item]) =>
    placesIn(item, [...path, Array.isArray(value) ? Number(key) : key]),
  );
  return path.length === 0 ? inside : [path, ...inside];
}

/** A copy with something else in one place; `undefined` takes it out. */
export function changedAt(value: unknown, [key, ...rest]: Keys, to: unknown): unknown {
  if (key === undefined) return to;
  const inner = changedAt((value as Record<string | number, unknown>)[key], rest, to);
  if (Array.isArray(value)) {
    const list = value as unknown[];
    return inner === undefined ? list.filter((_, i) => i !== key) : list.map((item, i) => (i === key ? inner : item));
  }
  const { [key as string]: _, ...others } = value as Record<string, unknown>;
  return inner === undefined ? others : { ...others, [key]: inner };
}

const wild = {
  number: fc.oneof(
    fc.constantFrom(Number.NaN, Infinity, -Infinity, 0, -0, 1e-300, 1e300, -1, 2 * Math.PI, 0.5),
    fc.double(),
    fc.integer({ min: -1000, max: 1000 }).map((n) => n / 10),
  ),
  text: fc.oneof(
    fc.string(),
    fc.constantFrom('', '__proto__', 'constructor', 'a', 'e', 'post', 'fixed', 'stage', 'arc', 'both'),
  ),
};

/** The network with up to five of its numbers, texts and switches replaced by others of their kind, or entries left out. */
export const mutilated: fc.Arbitrary<BeamModel> = fc
  .array(fc.record({ place: fc.nat(), number: wild.number, text: wild.text, isOut: fc.boolean() }), {
    minLength: 1,
    maxLength: 5,
  })
  .map(
    (changes) =>
      changes.reduce<unknown>((model, { place, number, text, isOut }) => {
        const places = placesIn(model);
        const path = places[place % places.length] ?? [];
        const old = path.reduce<unknown>((at, key) => (at as Record<string | number, unknown>)[key], model);
        if (typeof old === 'number') return changedAt(model, path, number);
        if (typeof old === 'string') return changedAt(model, path, text);
        if (typeof old === 'boolean') return changedAt(model, path, !old);
        // Only an entry of a list may be left out, or be there twice: the rest is a matter of the file's shape.
        if (typeof path.at(-1) !== 'number') return model;
        const list = path.slice(0, -1);
        const entries = list.reduce<unknown>(
          (at, key) => (at as Record<string | number, unknown>)[key],
          model,
        ) as unknown[];
        return isOut ? changedAt(model, path, undefined) : changedAt(model, list, [...entries, old]);
      }, EVERY_FIELD) as BeamModel,
  );
