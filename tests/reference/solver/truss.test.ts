/**
 * Source [two-bar-truss]: snap-through of a two-bar truss after R. von Mises; standard texts. The rows of checkvalues/I.json are
 * closed forms for bars that keep straight and carry E·A times their shortening over their length as made, which is also
 * how the solver's members stretch.
 *
 * The solver's bars are hinged at both ends and so thick that they cannot buckle before they snap: they stay straight
 * and their bending does not matter. The apex is kept from turning because no bar would. It is moved, and loaded.
 */
import { describe, expect, it } from 'vitest';
import type { Load, Motion } from '../../../src/core/beam/model.ts';
import { followPath } from '../../../src/core/beam/solve.ts';
import { trussForce } from '../../../src/core/closedForms/twoBarTruss.ts';
import { HELD, network } from '../../support/beamModels.ts';
import { checkValues, input, type CheckValue } from '../../support/checkValues.ts';
import { expectClose } from '../../support/close.ts';
import { noteResidual } from '../../support/residuals.ts';
import { expectSolved } from '../../support/solved.ts';

const ROWS = checkValues('I', 'I-vm-');

function truss(row: CheckValue, drive: { readonly motions?: readonly Motion[]; readonly loads?: readonly Load[] }) {
  const [halfSpan, rise] = [input(row, 'half_span'), input(row, 'rise')];
  const bar = { shape: { kind: 'straight' }, thickness: 0.8 * halfSpan, width: 1, hinged: 'both' } as const;
  const model = network({
    modulus: 1 / bar.thickness,
    nodes: [
      { id: 'left', x: -halfSpan, y: 0 },
      { id: 'apex', x: 0, y: rise },
      { id: 'right', x: halfSpan, y: 0 },
    ],
    members: [
      { id: 'one', from: 'left', to: 'apex', ...bar },
      { id: 'two', from: 'apex', to: 'right', ...bar },
    ],
    supports: [
      { at: 'left', ...HELD },
      { at: 'right', ...HELD },
      { at: 'apex', x: true, turn: true },
    ],
    ...drive,
  });
  return { model, halfSpan, rise };
}

describe('the two-bar truss, solved as a network with E·A of 1', () => {
  it.each(ROWS)('$id: moved, it pushes back with the force of the closed form all the way', (row) => {
    const { halfSpan, rise } = truss(row, {});
    const { model } = truss(row, { motions: [{ at: 'apex', y: -2.2 * rise }] });
    const { points } = followPath(model, { accuracy: 'refined' });
    for (const { share, effort } of points) {
      const exact = trussForce(halfSpan, rise, 2.2 * rise * share);
      noteResidual('force along the way, as a difference over the rise', (effort / (2.2 * rise) - exact) / rise, 0);
      expectClose(effort / (2.2 * rise), exact, { abs: 1e-9 * rise, because: 'what refined accuracy aims at' });
    }
  });

  it.each(ROWS)('$id: moved, its limit', (row) => {
    const { rise } = truss(row, {});
    const { model } = truss(row, { motions: [{ at: 'apex', y: -rise }] });
    const { events } = followPath(model, { accuracy: 'refined', parts: 160 });
    const [limit] = events.filter(({ kind }) => kind === 'limit');
    const place = { rel: 1e-6, because: 'between points of the path the effort is a cubic' };
    expectSolved(
      row,
      [{ rel: 1e-8, because: 'a cubic is flat at its largest' }, place],
      limit!.effort / rise,
      limit!.share * rise,
    );
  });

  it.each(ROWS)('$id: at rest it stores what flattening it takes, and at last nothing', (row) => {
    const { halfSpan, rise } = truss(row, {});
    const { model } = truss(row, { motions: [{ at: 'apex', y: -2.2 * rise }] });
    const { points, events } = followPath(model, { accuracy: 'refined' });
    const most = Math.max(...points.map(({ energy }) => energy));
    const length = Math.hypot(halfSpan, rise);
    const rests = events.filter(({ kind }) => kind === 'rest').map(({ energy }) => energy);
    // It may come out below nothing by as much: it lies between points, which store more.
    const between = { abs: 1e-9 * most, because: 'the sixth power of the distance of points, of the largest energy' };
    [(length - halfSpan) ** 2 / length, 0].forEach((energy, i) => expectClose(rests[i]!, energy, between));
  });

  it.each(ROWS)('$id: loaded, it carries no more than the limit and goes on beyond it with less', (row) => {
    const [most = NaN] = row.expected;
    const { model, halfSpan, rise } = truss(row, { loads: [{ at: 'apex', y: -2 * most }] });
    const { points } = followPath(model, { accuracy: 'refined' });
    // The other half of the way up would need it pulled up again; the walk ends a little beyond no load.
    expect(points.at(-1)!.share).toBeLessThan(0);
    // Every state told keeps to the closed form, also those on the way down.
    for (const { share, poses } of points) {
      const travel = rise - poses['apex']!.y;
      expectClose(2 * most * share, trussForce(halfSpan, rise, travel), {
        abs: 1e-9,
        because: 'what refined accuracy aims at',
      });
    }
    const goingDown = points.filter(
      ({ poses }) => poses['apex']!.y > 0 && poses['apex']!.y < 0.9 * (rise - (row.expected[1] ?? NaN)),
    );
    expect(goingDown.length).toBeGreaterThan(3);
    const snapped = Math.max(...points.filter(({ poses }) => poses['apex']!.y > 0).map(({ share }) => share));
    expectSolved(row, { rel: 0.01, because: 'the largest of the states told' }, 2 * most * snapped);
  });
});
