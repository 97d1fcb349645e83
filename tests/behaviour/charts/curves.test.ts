import { describe, expect, it } from 'vitest';
import { effortCurve, effortDomainOf } from '../../../src/ui/charts/effortCurve.ts';
import {
  heldLimit,
  lengthCurves,
  lengthDomainOf,
  limitsKept,
  neighbour,
  sampled,
  shortestFor,
  everyLength,
  strainBands,
} from '../../../src/ui/charts/lengthCurves.ts';
import {
  countPoints,
  filamentPoints,
  jointPoint,
  lifeCurves,
  lifeDomainOf,
  lifeLimits,
  wornPoint,
} from '../../../src/ui/charts/lifeCurves.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { everyFilament } from '../../../src/core/material/shelf.ts';
import { asRad, degrees, radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';
import { ownPetg } from '../../support/ownFilaments.ts';

const SAME = { rel: 1e-9, because: 'the same chain of formulas, and the root finder of the life curve' } as const;

function limitNames(joint: Joint): readonly string[] {
  return lifeLimits(assessed(joint), [0.003, 0.3]).map(({ name }) => name);
}

describe('curves of strain against life', () => {
  const a = assessed(LEAF);

  it('fall, with the narrow band inside the wide one', () => {
    const { median, scatter, total } = lifeCurves(a, [10, 1e7]);
    median.slice(1).forEach((point, i) => {
      const before = median[i];
      expect(point.cycles).toBeGreaterThan(before?.cycles ?? Infinity);
      expect(point.strain).toBeLessThanOrEqual(before?.strain ?? 0);
      expect(total[i]?.low).toBeLessThan(scatter[i]?.low ?? 0);
      expect(total[i]?.high).toBeGreaterThan(scatter[i]?.high ?? Infinity);
    });
  });

  it('end at the strain that breaks on the first flex', () => {
    const pla = assessed(changed(LEAF, { profile: { filament: 'pla' } }));
    const top = lifeCurves(pla, [1, 1e7]).median[0];
    expectClose(top?.strain ?? 0, 0.2, { rel: 1e-6, because: 'drawn a part in 10⁹ below, where it still lives' });
  });

  it('have the joint on the curve, and its life at nought off any paper', () => {
    expect(jointPoint(a)).toEqual({ cycles: a.life.median, strain: a.strain.peak });
    const broken = assessed(
      changed(LEAF, { sizes: { length: 2 }, movement: { amount: radians(120) }, profile: { filament: 'pla' } }),
    );
    expect(broken.life.median).toBe(0);
    expect(jointPoint(broken).cycles).toBeGreaterThan(0);
    expect(jointPoint(broken).cycles).toBeLessThan(lifeDomainOf(broken).cycles[0]);
  });

  it('has a dot for each other count, with the life the joint would have with it', () => {
    const points = countPoints(a);
    expect(points.map(({ count }) => count)).toEqual([1, 3, 4, 6]);
    const three = assessed(changed(LEAF, { sizes: { lines: 3 } }));
    const dot = points.find(({ count }) => count === 3);
    expectClose(dot?.strain ?? 0, three.strain.peak, SAME);
    expectClose(dot?.cycles ?? 0, three.life.median, SAME);
  });

  it('judges a count that makes the section thick as thick, off the curve of the thin one', () => {
    const thin = assessed(CREASE);
    const four = assessed(changed(CREASE, { sizes: { layers: 4 } }));
    expectClose(countPoints(thin).find(({ count }) => count === 4)?.cycles ?? 0, four.life.median, SAME);
  });

  it('gives a measured joint a dot for every count', () => {
    const measured = assessed(changed(LEAF, { measuredThickness: 0.63 }));
    expect(countPoints(measured).map(({ count }) => count)).toContain(measured.section.count);
  });

  it('keeps the joint on the curve where smaller movements wear it too, and has a point for all of it', () => {
    expect(wornPoint(a)).toBeUndefined();
    const also = [{ amount: radians(30), ways: 'one way', cycles: 100_000 } as const];
    const worn = assessed(changed(LEAF, { movement: { also } }));
    expect(jointPoint(worn)).toEqual(jointPoint(a));
    expect(wornPoint(worn)).toEqual({ cycles: worn.life.median, strain: worn.strain.peak });
    expect(worn.life.median).toBeLessThan(a.life.median / 2);
  });

  it('has a point for each other filament that prints, at the strain of the joint', () => {
    const points = filamentPoints(a, everyFilament());
    expect(points.flatMap(({ ids }) => ids).toSorted()).toEqual(
      everyFilament()
        .filter(({ id, printable }) => printable && id !== 'petg')
        .map(({ id }) => id)
        .toSorted(),
    );
    for (const { ids, cycles, strain, isPast } of points) {
      expect(strain).toBe(a.strain.peak);
      for (const id of ids) {
        const { life } = assessed(changed(LEAF, { profile: { filament: id } }));
        expect(isPast).toBe(life.median > life.maxReportableCycles);
        expectClose(cycles, Math.min(life.median, life.maxReportableCycles), SAME);
      }
    }
  });

  it('lets filaments that last past the same end of counting share a point', () => {
    const gentle = assessed(changed(LEAF, { movement: { amount: radians(2) } }));
    const points = filamentPoints(gentle, everyFilament());
    expect(points.every(({ isPast }) => isPast)).toBe(true);
    expect(points).toHaveLength(new Set(points.map(({ cycles }) => cycles)).size);
  });

  it('has a point for a filament of the user', () => {
    const own = ownPetg('own-spool', 'Blue spool');
    const point = filamentPoints(a, [own]);
    expect(point.map(({ names, cycles }) => [names, cycles])).toEqual([[['Blue spool'], a.life.median]]);
  });

  it('draws the limits that the brief calls on and that are on the paper', () => {
    expect(limitNames(LEAF)).toEqual(['repeated', 'single', 'yield']);
    expect(limitNames(changed(LEAF, { movement: { held: true }, profile: { filament: 'pla' } }))).toEqual([
      'repeated',
      'held',
      'single',
      'yield',
      'break',
      'first flex',
    ]);
  });
});

describe('curves of strain against flexing length', () => {
  const a = assessed(LEAF);
  const curves = lengthCurves(a);

  it('have one for each count, the own last, and agree with the assessment of each', () => {
    expect(curves.map(({ count, own }) => [count, own])).toEqual([
      [1, false],
      [3, false],
      [4, false],
      [6, false],
      [2, true],
    ]);
    for (const { count, strainAt } of curves) {
      const other = assessed(changed(LEAF, { sizes: { lines: count, length: 20, pad: 8 } }));
      const padded = lengthCurves(assessed(changed(LEAF, { sizes: { pad: 8 } })));
      expectClose(padded.find((one) => one.count === count)?.strainAt(20) ?? 0, other.strain.peak, SAME);
      expect(strainAt(20)).toBeLessThan(strainAt(10));
    }
  });

  it('are sampled from end to end', () => {
    const points = sampled(curves[0] as (typeof curves)[0], [4, 30]);
    expectClose(points[0]?.length ?? 0, 4, { rel: 1e-12, because: 'round-off' });
    expectClose(points.at(-1)?.length ?? 0, 30, { rel: 1e-12, because: 'round-off' });
  });

  it('lead up to the thicker and down to the thinner, and no further than there are', () => {
    const own = curves.at(-1) as (typeof curves)[0];
    expect(neighbour(curves, own, 12, true).count).toBe(3);
    expect(neighbour(curves, own, 12, false).count).toBe(1);
    expect(neighbour(curves, neighbour(curves, own, 12, false), 12, false).count).toBe(1);
  });

  it('find the shortest length that strains no more', () => {
    const stops = everyLength(a, 'mm');
    expect(shortestFor(a, stops, a.strain.peak * (1 + 1e-12))).toBe(12);
    expect(shortestFor(a, stops, a.strain.peak * 0.99)).toBe(12.5);
    expect(shortestFor(a, stops, 1e-6)).toBeUndefined();
  });
});

describe('what strains mean', () => {
  const a = assessed(LEAF);

  it('counts the limits that the brief calls on', () => {
    expect(limitsKept(a, 0.01)).toEqual({ kept: 4, of: 4 });
    expect(limitsKept(a, 0.03)).toEqual({ kept: 2, of: 4 });
    expect(limitsKept(assessed(changed(LEAF, { movement: { held: true } })), 0.01)).toEqual({ kept: 4, of: 5 });
  });

  it('parts the axis at the repeated, yield and break limits, without a gap', () => {
    const names = (top: number) => strainBands(a, top).map(({ name }) => name);
    expect(names(0.08)).toEqual(['repeated', 'few', 'set']);
    expect(names(0.01)).toEqual(['repeated']);
    const bands = strainBands(a, 1.28);
    expect(bands.map(({ name }) => name)).toEqual(['repeated', 'few', 'set', 'broken']);
    bands.slice(1).forEach(({ from }, i) => expect(from).toBe(bands[i]?.to));
  });

  it('has a held limit only for a joint that is left bent', () => {
    expect(heldLimit(a, 0.08)).toBeUndefined();
    expect(heldLimit(assessed(changed(LEAF, { movement: { held: true } })), 0.08)).toBe(0.008);
  });

  it('suits the paper to the joint', () => {
    expect(lengthDomainOf(a, 'mm')).toEqual({ span: [4, 30], snap: 0.5, top: 0.08 });
  });
});

describe('curve of effort against movement', () => {
  it('runs from rest through the wanted angle and the onset of set to the end of the paper', () => {
    const a = assessed(LEAF);
    const domain = effortDomainOf(a);
    const { wanted, beyond, past } = effortCurve(a, domain);
    expect(wanted[0]?.typical).toBe(0);
    expectClose(wanted.at(-1)?.typical ?? 0, a.effort.effort, SAME);
    expectClose(beyond.at(-1)?.amount ?? 0, a.overBend.atYield, SAME);
    expectClose(degrees(asRad(past.at(-1)?.amount ?? 0)), 60, SAME);
    for (const { typical, low, high } of [...wanted, ...beyond, ...past]) {
      expect(low).toBeLessThanOrEqual(typical);
      expect(high).toBeGreaterThanOrEqual(typical);
      expect(typical).toBeLessThanOrEqual(domain.effort.span[1]);
    }
  });

  it('has no stretch that springs back beyond the wanted angle when that is past the onset of set', () => {
    const bent = assessed(changed(LEAF, { movement: { amount: radians(90) } }));
    expect(bent.overBend.atYield).toBeLessThan(bent.joint.movement.amount);
    expect(effortCurve(bent, effortDomainOf(bent)).beyond).toEqual([]);
  });
});
