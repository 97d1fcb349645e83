/**
 * Hand forms of every family against the solver, each within its own range and by what it says of itself. The two share
 * no code: closed forms are equations on paper, the solver a mesh of elements. The worst differences are printed.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../support/seed.ts';
import { followPath, takenPath } from '../../src/core/beam/solve.ts';
import type { HandForm, Sizes } from '../../src/core/flexures/family.ts';
import { expectClose } from '../support/close.ts';
import { actingSizes, DRIVEN, KINDS, sizesNear, thicknessOf } from '../support/families.ts';
import { typicalSizes, type Kind } from '../support/networks.ts';
import { noteResidual } from '../support/residuals.ts';

/** Joints for each form, and how many are drawn until so many are found within its range. */
const CASES = 8;
const DRAWN = 8000;
/** As the one form that depends on it assumes. */
const MATERIAL = { modulus: 1, poisson: 0.4 };

interface Case {
  readonly sizes: Sizes;
  readonly thickness: number;
  readonly amount: number;
}

/** Sizes and amounts for which a form must agree; small movements are as likely as large ones. */
function casesOf({ family, mechanics }: Kind, form: HandForm<Sizes>): readonly Case[] {
  const drive = family.drives.find(({ id }) => id === form.drive);
  if (!drive) throw new Error(`${family.id} has no drive ${form.drive}`);
  const drawn = fc.sample(fc.record({ given: sizesNear(family), share: fc.integer({ min: 1, max: 100 }) }), {
    numRuns: DRAWN,
  });
  const found: Case[] = [];
  for (const { given, share } of drawn) {
    if (found.length === CASES) break;
    const sizes = actingSizes(family, given, drive);
    if (!sizes) continue;
    const thickness = thicknessOf(family, sizes);
    const far = Math.min(drive.max, mechanics.reach(sizes, thickness, drive.id));
    const amount = Math.max(drive.min, far * (share / 100) ** 2);
    if (form.appliesTo(sizes, thickness, amount)) found.push({ sizes, thickness, amount });
  }
  return found;
}

/** Largest strain on the way to an amount, and the effort there, by the solver. */
function solved({ mechanics }: Kind, drive: string, { sizes, thickness, amount }: Case) {
  const network = mechanics.network(sizes, thickness, { drive, amount, widthRatio: 1 });
  const answer = followPath({ ...network.model, ...MATERIAL }, { parts: 8 });
  const { points } = takenPath(answer);
  const last = points.at(-1);
  if (!last || Math.abs(last.share - 1) > 1e-9) throw new Error(`ended early: ${answer.stopped?.message ?? ''}`);
  return {
    strain: Math.max(...points.map(({ peakWithin, peakAtEnds }) => Math.max(peakWithin, peakAtEnds))),
    effort: (network.alike * last.effort) / amount,
  };
}

const FORMS = KINDS.flatMap((kind) =>
  kind.family.handForms.map((form, i) => ({ id: `${kind.family.id} ${form.drive} ${i + 1}`, kind, form })),
);

describe('a hand form agrees with the solver where it says that it does', () => {
  it.each(FORMS)(
    '$id',
    ({ id, kind, form }) => {
      const cases = casesOf(kind, form);
      expect(cases.length).toBe(CASES);
      const compare = (figure: string, told: number | undefined, expected: number) => {
        if (told === undefined) return;
        noteResidual(`${id} ${figure} of ±${form.rel}`, told, expected);
        expectClose(told, expected, form);
      };
      for (const one of cases) {
        const { sizes, thickness, amount } = one;
        const { strain, effort } = solved(kind, form.drive, one);
        if (form.isStrainOutside !== true) compare('strain', form.peakStrain?.(sizes, thickness, amount), strain);
        compare('effort', form.effort?.(sizes, thickness, amount), effort);
      }
      // Panels of sixty rows in small steps take their time on a busy machine.
    },
    60_000,
  );
});

/** Effort at the end of the typical movement with so many elements along each member, and how exactly it is asked for. */
function effortWith({ family, mechanics }: Kind, drive: { id: string; typical: number }, elements: number): number {
  const sizes = typicalSizes(family);
  const asked = { drive: drive.id, amount: drive.typical, widthRatio: 1 };
  const { model } = mechanics.network(sizes, thicknessOf(family, sizes), asked);
  const answer = followPath({ ...model, ...MATERIAL }, { parts: 6, elements, accuracy: 'refined', second: false });
  const last = answer.points.at(-1);
  if (!last || answer.stopped) throw new Error(`ended early: ${answer.stopped?.message ?? ''}`);
  return last.effort;
}

/** Each halving divides the error by 256 in theory, and the solver's own estimate counts on 16; then round-off is left. */
const HALVING = 16;
const ROUND_OFF = 1e-9;

describe('halving the mesh', () => {
  it.each(DRIVEN)('$id: takes most of the error away', ({ id, kind, drive }) => {
    const [coarse, middle, fine] = [4, 8, 16].map((elements) => effortWith(kind, drive, elements)) as [
      number,
      number,
      number,
    ];
    const [first, second] = [Math.abs(coarse / fine - 1), Math.abs(middle / fine - 1)];
    noteResidual(`${id} 4 to 16 elements`, coarse, fine);
    expect(second).toBeLessThanOrEqual(Math.max(first / HALVING, ROUND_OFF));
  });
});
