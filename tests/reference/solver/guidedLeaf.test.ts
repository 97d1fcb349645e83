/**
 * Source [tie-beam], Source [small-deflection], Source [end-loaded-elastica]: a leaf whose end moves across without
 * turning. Exact rows (ends free to approach) are two end-loaded leaves back to back; rows with ends held at their
 * distance are the classical beam with a pull along it; rows under a load along the leaf are beam-columns.
 * checkvalues/C.json, computed outside this program.
 *
 * The solver's network is one straight member (two for the stage). Rows of large travel speak of a rod that neither
 * stretches nor shears, those with held ends of a shallow one: both are taken to the thin limit (`thinLimit`), the
 * latter at a travel of so many thicknesses. Small-travel rows have the member's own shear taken out in closed form.
 */
import { describe, it } from 'vitest';
import { followPath } from '../../../src/core/beam/solve.ts';
import { between, cantilever, sectionOfFirst } from '../../support/beamModels.ts';
import { checkValues, input } from '../../support/checkValues.ts';
import { endOf, expectSolved, poseOf, reactionAt, thinLimit } from '../../support/solved.ts';

const L = 100;
const REFINED = { accuracy: 'refined' } as const;
const AIM = { rel: 1e-9, because: 'what refined accuracy aims at' };
const PLACE = { abs: 1e-9, because: 'places are aimed at to 1e-9 of the length' };

function leafOf(slenderness: number) {
  const model = cantilever({ kind: 'straight' }, { x: L, y: 0 }, { width: 1, thickness: slenderness * L });
  return { model, ...sectionOfFirst(model) };
}

describe('a guided leaf with ends free to approach, solved as a network', () => {
  it.each(checkValues('C', 'C-large-'))('$id', (row) => {
    const figures = thinLimit((slenderness) => {
      const { model, EI } = leafOf(slenderness);
      const motions = [{ at: 'tip', y: input(row, 'delta_over_L') * L, turn: 0 }];
      const { points, shapes } = followPath(
        { ...model, motions },
        { ...REFINED, parts: 10, shapes: true, second: false },
      );
      const end = points.at(-1)!;
      const { y, moment } = reactionAt(end, 'tip');
      const { angle } = shapes.at(-1)![0]!;
      const inMiddle = angle[(angle.length - 1) / 2] ?? Number.NaN;
      return [(y * L ** 2) / EI, 1 - poseOf(end, 'tip').x / L, (-moment * L) / EI, inMiddle];
    });
    expectSolved(row, [AIM, PLACE, AIM, AIM], ...figures);
  });
});

describe('a guided leaf with ends held at their distance', () => {
  it.each(checkValues('C', 'C-over-'))('$id', (row) => {
    const travel = input(row, 'delta_over_t');
    const figures = (slenderness: number) => {
      const { model, EI } = leafOf(slenderness);
      const t = slenderness * L;
      const motions = [{ at: 'tip', x: 0, y: travel * t, turn: 0 }];
      const { x, y } = reactionAt(endOf({ ...model, motions }, REFINED), 'tip');
      return [(y * L ** 3) / (EI * t), (x * L ** 2) / EI];
    };
    // Thick enough that the stretch, (t/L)² of a small figure, stands above round-off; thin enough for the travel to be small.
    const limit = thinLimit(figures, 1e-3 / Math.sqrt(travel));
    expectSolved(row, { rel: 2e-8, because: 'the rows are good to 1e-8, and so is a stretch of 1e-8' }, ...limit);
  });
});

describe('a guided leaf under a load along it', () => {
  it.each(checkValues('C', 'C-axial-'))('$id: stiffness across', (row) => {
    const figures = thinLimit((slenderness) => {
      const { model, EI } = leafOf(slenderness);
      const travel = 1e-5 * L;
      const press = (input(row, 'V_over_Vcr') * Math.PI ** 2 * EI) / L ** 2;
      const loads = press === 0 ? [] : [{ at: 'tip', x: -press }];
      const end = endOf({ ...model, loads, motions: [{ at: 'tip', y: travel, turn: 0 }] }, REFINED);
      return [(reactionAt(end, 'tip').y / travel) * (L ** 3 / EI)];
    });
    expectSolved(
      row,
      { rel: 1e-7, because: 'the travel is small, not nothing, and a small force is left of large ones' },
      ...figures,
    );
  });
});

/** Two leaves side by side between a held pad and a stage that is moved across and kept level. */
function stageOf(lengthOf: number, thickness: number, width: number, modulus: number, travel: number) {
  const lines = [-10, 10].map((y) => ({ from: { x: 0, y }, to: { x: lengthOf, y } }));
  const at = { x: lengthOf, y: 0 };
  return between(lines, at, { thickness, width }, { modulus, motions: [{ at: 'moving', y: travel, turn: 0 }] });
}

describe('a stage on two leaves', () => {
  it.each(checkValues('C', 'C-k-'))('$id: stiffness less the give of shear', (row) => {
    const [length, t, b] = [input(row, 'L_mm'), input(row, 't_mm'), input(row, 'b_mm')];
    const travel = 1e-5 * length;
    const model = stageOf(length, t, b, input(row, 'E_MPa'), travel);
    const force = reactionAt(endOf(model, REFINED), 'moving').y;
    // Shear is a give of its own in series with bending: L/(κGA) for each leaf.
    const give = travel / force - length / (2 * sectionOfFirst(model).kGA);
    expectSolved(row, { rel: 1e-8, because: 'the travel is small, not nothing' }, 1 / give);
  });

  it.each(checkValues('C', 'C-short-'))('$id: approach', (row) => {
    const share = input(row, 'delta_mm') / input(row, 'L_mm');
    // 3δ²/(5L) holds for small travel: travels of 0.001 and 0.002 of the length, taken to none.
    const perSquare = thinLimit((travel) => {
      const figures = thinLimit((slenderness) => {
        const { model } = leafOf(slenderness);
        const end = endOf({ ...model, motions: [{ at: 'tip', y: travel * L, turn: 0 }] }, REFINED);
        return [(1 - poseOf(end, 'tip').x / L) / travel ** 2];
      });
      return figures;
    })[0]!;
    expectSolved(
      row,
      { rel: 1e-7, because: 'a small approach is left of a long leaf' },
      perSquare * share ** 2 * input(row, 'L_mm'),
    );
  });

  it.each(checkValues('C', 'C-eps-'))('$id: strain at the roots', (row) => {
    const slenderness = input(row, 't_mm') / input(row, 'L_mm');
    const perTravel = thinLimit((thin) => {
      const { model } = leafOf(thin);
      const travel = 1e-5;
      const { peak } = endOf({ ...model, motions: [{ at: 'tip', y: travel * L, turn: 0 }] }, REFINED);
      return [Math.abs(peak.strain) / (travel * thin)];
    })[0]!;
    const travel = input(row, 'delta_mm') / input(row, 'L_mm');
    expectSolved(row, { rel: 1e-7, because: 'the travel is small, not nothing' }, perTravel * slenderness * travel);
  });
});
