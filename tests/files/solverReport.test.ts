import { describe, expect, it } from 'vitest';
import { reportPart, type JointReport } from '../../src/cli/report.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import type { Drive, FlexureFamily } from '../../src/core/flexures/family.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { expectClose } from '../support/close.ts';
import { at, figuresIn, keysWithoutUnit } from '../support/documents.ts';
import { changed, LEAF } from '../support/joints.ts';
import { typicalSizes } from '../support/networks.ts';

const PARTS = 48;

function typical(family: FlexureFamily, drive: Drive): Joint {
  const movement = { ...LEAF.movement, drive: drive.id, amount: drive.typical };
  const profile = { ...LEAF.profile, lying: family.lyings[0] };
  return { ...LEAF, id: family.id, family: family.id, sizes: typicalSizes(family), movement, profile };
}

const DRIVEN = FAMILIES.flatMap((family) =>
  family.drives.map((drive) => ({ name: `${family.id} ${drive.id}`, family, drive, joint: typical(family, drive) })),
);

function said(joint: Joint, path?: number): JointReport {
  const [report] = reportPart({ name: 'x', invented: true, joints: [joint] }, [], { path }).joints;
  if (!report) throw new Error('one joint, one report');
  return report;
}

interface Point {
  readonly part: number | null;
  readonly amount_mm?: number;
  readonly amount_rad?: number;
  readonly force_N?: number;
  readonly torque_Nmm?: number;
  readonly energy_Nmm: number;
}

const amountOf = (point: Point) => point.amount_mm ?? point.amount_rad ?? Number.NaN;
const effortOf = (point: Point) => point.force_N ?? point.torque_Nmm ?? Number.NaN;

/** Work from point to point by Simpson's rule on pairs of equal parts, and by trapezia elsewhere. */
function workAlong(points: readonly Point[]): number {
  let work = 0;
  for (let i = 1; i < points.length;) {
    const [a, b, c] = [points[i - 1]!, points[i]!, points[i + 1]];
    const isPair = c && a.part !== null && b.part !== null && c.part !== null;
    if (isPair) {
      work += ((amountOf(c) - amountOf(a)) / 6) * (effortOf(a) + 4 * effortOf(b) + effortOf(c));
      i += 2;
    } else {
      work += ((amountOf(b) - amountOf(a)) / 2) * (effortOf(a) + effortOf(b));
      i += 1;
    }
  }
  return work;
}

describe.each(DRIVEN)('$name at typical sizes', { timeout: 60_000 }, ({ family, drive, joint }) => {
  const report = said(joint, PARTS);
  const points: readonly Point[] = at(report, 'path', 'ways', 0, 'points');

  it('is answered by the solver in finite figures, each with its unit', () => {
    expect(report).not.toHaveProperty('problems');
    expect(report).toMatchObject({ drive: drive.id, measure: drive.measure, estimate: false });
    expect(figuresIn(report).filter(([, value]) => !Number.isFinite(value))).toEqual([]);
    const counts = Object.entries(family.parameters).filter(([, { kind }]) => kind === 'count' || kind === 'ratio');
    const plain = counts.map(([name]) => name.replaceAll(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`));
    const { notes: _, ...figures } = report;
    expect(keysWithoutUnit(figures, plain)).toEqual([]);
  });

  it('says how well it is known', () => {
    const { error, residual }: { error: { effort: number; position: number }; residual: number } = at(report, 'solver');
    // The solver aims at 1e-6 in effort and places, and its last step at 1e-5, whose square is out of balance.
    expect(Math.max(error.effort, error.position)).toBeLessThan(1e-6);
    expect(residual).toBeLessThan(1e-6);
  });

  it('says which way its pad is soft', () => {
    const six: { ratio: number; ratio_to_next: number; radius_mm: number; of: string } | null = at(
      report,
      'solver',
      'stiffness',
    );
    if (!six) throw new Error('six stiffnesses are told of every kind');
    expect(six.ratio).toBeGreaterThanOrEqual(six.ratio_to_next);
    expect(six.radius_mm).toBeGreaterThan(0);
    const places: readonly { at: string }[] = at(report, 'path', 'ways', 0, 'points', 5, 'places');
    expect(places.map((place) => place.at)).toContain(six.of);
  });

  it('passes every part of the wanted movement and nothing beyond', () => {
    expect(points.flatMap(({ part }) => (part === null ? [] : [part]))).toEqual([...Array(PARTS + 1).keys()]);
    for (const point of points.filter(({ part }) => part !== null)) {
      expect(amountOf(point)).toBeCloseTo((drive.typical * (point.part ?? 0)) / PARTS, 9);
    }
  });

  it('stores the work that is done on it', () => {
    const most = Math.max(...points.map((point) => point.energy_Nmm));
    const because = 'a rule of sums on 48 parts; efforts have corners where a way leaves sideways';
    expectClose(workAlong(points), points.at(-1)!.energy_Nmm, { abs: 2e-3 * most, because });
  });

  it('tells every middle line with a figure for every place along it', () => {
    const members: readonly { member: string; along_mm: readonly number[] }[] = at(report, 'path', 'members');
    const lines: readonly Record<string, readonly number[]>[] = at(report, 'path', 'ways', 0, 'points', 5, 'lines');
    expect(lines.map((line) => line['member'])).toEqual(members.map(({ member }) => member));
    lines.forEach((line, i) => {
      for (const key of ['x_mm', 'y_mm', 'angle_rad', 'strain_left', 'strain_right']) {
        expect(line[key]).toHaveLength(members[i]!.along_mm.length);
      }
    });
  });
});

describe('an arch that snaps', () => {
  const family = FAMILIES.find(({ id }) => id === 'snapArch')!;
  const solver: Record<string, unknown> = at(said(typical(family, family.drives[0])), 'solver');
  const events: readonly Record<string, unknown>[] = at(solver, 'ways', 0, 'events');

  it('says where it leaves sideways and by what push that was found, and where it stays', () => {
    expect(events[0]).toMatchObject({ kind: 'bifurcation', imperfection_mm: expect.any(Number) });
    const stays = events.filter((event) => event['stays'] === true);
    expect(stays.map((event) => event['amount_mm'])).toEqual([at(solver, 'second_rest', 'amount_mm')]);
    expect(at(solver, 'least_gap', 'gap_mm')).toBeGreaterThan(0);
  });

  it('needs its largest effort on the way and not where it is wanted', () => {
    expect(at(solver, 'largest_force_N')).toBeGreaterThan(at(solver, 'wanted_force_N'));
  });
});

describe('the path of a joint', () => {
  const pushed = changed(LEAF, { movement: { drive: 'pushed', amount: 2, ways: 'both ways' } });

  it('goes both ways where the movement does, as a mirror image for a leaf', () => {
    const ways: readonly { way: string; points: readonly Point[] }[] = at(said(pushed, 3), 'path', 'ways');
    expect(ways.map(({ way, points }) => [way, points.map(({ part }) => part)])).toEqual([
      ['there', [0, 1, 2, 3]],
      ['back', [0, 1, 2, 3]],
    ]);
    const [there, back] = ways.map(({ points }) => points.map((point) => [amountOf(point), effortOf(point)]));
    for (const [i, pair] of (there ?? []).entries()) {
      pair.forEach((value, k) =>
        expectClose(-(back?.[i]?.[k] ?? Number.NaN), value, { abs: 1e-9, because: 'mirror image; round-off' }),
      );
    }
  });

  it('leaves every other figure of the report as it is without', () => {
    const { path, ...others } = said(pushed, 1);
    expect(path).toBeDefined();
    expect(others).toEqual(said(pushed));
  });

  it('is refused with its limit where the document is full, and the rest stands', () => {
    const part = { name: 'x', invented: true, joints: [pushed, pushed] };
    const { joints } = reportPart(part, [], { path: 3 }, { left: 8 });
    expect(joints[0]).toHaveProperty('path');
    expect(joints[1]).toMatchObject({ problems: [{ code: 'too-large', field: 'path' }] });
    expect(joints[1]).toHaveProperty('verdict');
  });
});
