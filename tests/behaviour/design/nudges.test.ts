import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import { largestOf, movedFigures } from '../../../src/core/design/nudgeFigures.ts';
import { nudged, nudgesOf } from '../../../src/core/design/nudges.ts';
import { everyFilament } from '../../../src/core/material/shelf.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';
import { KINDS, jointOf } from '../../support/families.ts';

const sizesAndMovement = (joint: typeof LEAF) =>
  nudgesOf(joint)
    .filter((nudge) => nudge.of !== 'filament')
    .map(({ of, by }) => [of, by]);

describe('small changes of a joint', () => {
  it('of a leaf: a line, tenths of a millimetre, a hundredth of line width, a degree, one alike', () => {
    expect(sizesAndMovement(LEAF)).toEqual([
      ['count', 1],
      ['count', -1],
      ['length', 0.1],
      ['length', -0.1],
      ['lineWidth', 0.01],
      ['fillet', 0.1],
      ['depth', 0.1],
      ['amount', radians(1)],
      ['amount', radians(-1)],
      ['sideBySide', 1],
    ]);
  });

  it('of a crease have no line width, which does not make it thicker', () => {
    expect(sizesAndMovement(CREASE).map(([of]) => of)).not.toContain('lineWidth');
  });

  it('of a measured leaf are of what calipers read, and leave lines alone', () => {
    const measured = changed(LEAF, { measuredThickness: 0.84 });
    const rows = nudgesOf(measured).filter(({ of }) => of === 'thickness');
    expect(rows.map(({ after }) => after.measuredThickness)).toEqual([0.89, 0.79, 0.94, 0.74]);
    expect(sizesAndMovement(measured).map(([of]) => of)).not.toContain('count');
    expect(sizesAndMovement(measured).map(([of]) => of)).not.toContain('lineWidth');
  });

  it('change one thing each, and sizes to a figure that a drawing would carry', () => {
    const long = nudgesOf(LEAF).find(({ of }) => of === 'length');
    expect(long?.after).toEqual(changed(LEAF, { sizes: { length: 12.1 } }));
  });

  it('go through every other filament that can be printed', () => {
    const others = everyFilament().filter(({ printable, id }) => printable && id !== 'petg');
    const tried = nudgesOf(LEAF).filter(({ of }) => of === 'filament');
    expect(tried.map(({ after }) => after.profile.filament)).toEqual(others.map(({ id }) => id));
  });

  it('take smaller movements along with one that is stopped earlier', () => {
    const also = [{ amount: radians(35), ways: 'one way', cycles: 10 }] as const;
    const earlier = nudgesOf(changed(LEAF, { movement: { also } })).find(({ of, by }) => of === 'amount' && by < 0);
    expectClose(earlier?.after.movement.also?.[0]?.amount ?? Number.NaN, radians(34), {
      rel: 1e-12,
      because: 'round-off of a degree',
    });
  });

  it.each(KINDS.flatMap((kind) => kind.family.drives.map((drive) => [kind.family.id, drive.id, kind, drive] as const)))(
    '%s %s: changes only sizes that it has and asks for',
    (_, __, kind, drive) => {
      const joint = jointOf(kind, drive);
      const nudges = nudgesOf(joint);
      expect(nudges.length).toBeGreaterThan(10);
      for (const { after } of nudges) expect(Object.keys(after.sizes)).toEqual(Object.keys(joint.sizes));
    },
  );
});

describe('what each does', () => {
  it('is told as a fresh assessment tells it', () => {
    for (const { after, assessed: told } of nudged(LEAF)) expect(told).toEqual(assess(after));
  });

  it('is a problem that names its field where it cannot be', () => {
    const single = nudged(changed(LEAF, { sizes: { lines: 1 } }));
    const fewer = single.find(({ of, by }) => of === 'count' && by < 0);
    expect(fewer?.assessed).toMatchObject({
      ok: false,
      problems: [{ code: 'below-minimum', field: 'sizes.lines', value: 0, limit: 1 }],
    });
  });
});

describe('figures of a change', () => {
  const before = assessed(LEAF);

  it('are ratios of strain and effort, and differences of the chance and of what stays', () => {
    const after = assessed(changed(LEAF, { sizes: { lines: 3 } }));
    const moved = movedFigures(before, after);
    const roundOff = { rel: 1e-12, because: 'round-off' };
    expectClose(moved.strain?.by ?? Number.NaN, after.strain.peak / before.strain.peak - 1, roundOff);
    expectClose(moved.chance?.by ?? Number.NaN, after.life.chance - before.life.chance, roundOff);
    expectClose(moved.effort?.now ?? Number.NaN, after.effort.effort, roundOff);
    expectClose(moved.set?.by ?? Number.NaN, after.set.amount - before.set.amount, roundOff);
  });

  it('have no chance past what anybody has counted', () => {
    const often = changed(LEAF, { movement: { cycles: 1e9 }, sizes: { length: 60 } });
    expect(assessed(often).life.beyond).toBe('wanted');
    expect(movedFigures(before, assessed(often)).chance).toBeUndefined();
    expect(movedFigures(assessed(often), before).chance).toEqual({ now: before.life.chance });
  });

  it('tell the largest change of each, either way, and none where nothing changes', () => {
    const rows = [
      { strain: { now: 0.02, by: 0.1 }, effort: { now: 2, by: 0 } },
      undefined,
      { strain: { now: 0.01, by: -0.5 }, effort: { now: 2, by: 0 } },
    ];
    expect(largestOf(rows)).toEqual({ strain: 2 });
    expect(largestOf([])).toEqual({});
  });
});
