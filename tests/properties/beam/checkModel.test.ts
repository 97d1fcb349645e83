import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkModel } from '../../../src/core/beam/checkModel.ts';
import { centrelineOf } from '../../../src/core/beam/centreline.ts';
import { spatialStiffness } from '../../../src/core/beam/spatialStiffness.ts';
import { EVERY_FIELD, mutilated, placesIn } from '../../support/networkGenerators.ts';

const RUNS = { numRuns: 1000 };

describe('checking a network', () => {
  it('finds nothing wrong with one that uses every field', () => {
    expect(checkModel(EVERY_FIELD)).toMatchObject({ ok: true, notes: [] });
  });

  it('that has been mutilated gives the network or problems, never an exception', () => {
    let [sound, refused] = [0, 0];
    fc.assert(
      fc.property(mutilated, (model) => {
        const result = checkModel(model);
        if (result.ok) {
          sound += 1;
          expect(result.value).toBe(model);
          return;
        }
        refused += 1;
        for (const { field, message } of result.problems) {
          expect(field).toBeTruthy();
          expect(message).not.toMatch(/undefined|\[object|\.$/);
          expect(message.length).toBeLessThan(600);
        }
      }),
      RUNS,
    );
    // Both must have been met for this to say anything.
    expect(Math.min(sound, refused)).toBeGreaterThan(50);
  });

  it('names fields that are there, or that are missing from what is there', () => {
    fc.assert(
      fc.property(mutilated, (model) => {
        const result = checkModel(model);
        if (result.ok) return;
        const fields = new Set(
          placesIn(model).map((path) =>
            path
              .map((key) => (typeof key === 'number' ? `[${key}]` : `.${key}`))
              .join('')
              .slice(1),
          ),
        );
        for (const { field } of result.problems) expect(fields).toContain(field);
      }),
      RUNS,
    );
  });

  it('passes only what can be laid out, and whose six stiffnesses are numbers', () => {
    fc.assert(
      fc.property(mutilated, (model) => {
        if (!checkModel(model).ok) return;
        const nodes = new Map(model.nodes.map((node) => [node.id, node]));
        for (const member of model.members) {
          expect(centrelineOf(member, nodes.get(member.from)!, nodes.get(member.to)!).length).toBeGreaterThan(0);
        }
        for (const { id } of model.pads) {
          const { free, held } = spatialStiffness(model, id);
          for (const value of [...Object.values(free), ...Object.values(held)]) expect(value).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 200 },
    );
  });
});
