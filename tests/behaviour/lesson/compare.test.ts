import { describe, expect, it } from 'vitest';
import { radians } from '../../../src/core/units.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { chosenIds, idsText, MOST, shifted, toggled } from '../../../src/ui/lesson/compare/chosen.ts';
import { columnsOf } from '../../../src/ui/lesson/compare/columns.ts';
import { effortPlan, lifePlan } from '../../../src/ui/lesson/compare/plans.ts';
import { COMPARE_ROWS, timesFirst } from '../../../src/ui/text/compareText.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';
import { answered } from '../../support/solvedJoints.ts';

const { joints } = demoPart();
const ids = joints.map(({ id }) => id);

const box = (width: number, height: number) => ({ left: 0, right: width, top: height / 2, bottom: -height / 2 });
const row = (name: string) => COMPARE_ROWS.find((one) => one.name === name)!;

describe('which joints stand side by side', () => {
  it('takes those that the address names, in its order, and passes over those that are gone', () => {
    const asked = idsText([ids[2] ?? '', 'gone', ids[0] ?? '']);
    expect(chosenIds(asked, joints, undefined)).toEqual([ids[2], ids[0]]);
  });

  it('begins with the open joint where none is named, and goes round', () => {
    const last = ids.at(-1);
    expect(chosenIds(null, joints, last)).toEqual([last, ...ids.slice(0, MOST - 1)]);
    expect(chosenIds('%zz,,', joints, undefined)).toEqual(ids.slice(0, MOST));
  });

  it('never takes more than four, nor one twice', () => {
    expect(chosenIds(idsText([...ids, ...ids]), joints, undefined)).toHaveLength(MOST);
    expect(chosenIds(idsText(['a', 'a']), [{ ...LEAF, id: 'a' }], undefined)).toEqual(['a']);
    expect(toggled(['a', 'b', 'c', 'd'], 'e')).toEqual(['a', 'b', 'c', 'd']);
    expect(toggled(['a', 'b'], 'a')).toEqual(['b']);
  });

  it('changes places with a neighbour, and stays at the ends', () => {
    expect(shifted(['a', 'b', 'c'], 1, -1)).toEqual(['b', 'a', 'c']);
    expect(shifted(['a', 'b', 'c'], 2, 1)).toEqual(['a', 'b', 'c']);
  });

  it('keeps an id that holds the sign between ids', () => {
    expect(chosenIds(idsText(['a,b']), [{ ...LEAF, id: 'a,b' }], undefined)).toEqual(['a,b']);
  });
});

describe('columns at one scale', () => {
  it('takes the largest scale at which the largest of them fits', () => {
    const one = columnsOf([box(40, 5), box(4, 5)], 220, 4);
    expect(one.scale).toBe(1);
    expect(columnsOf([box(4, 5)], 220, 4).scale).toBe(10);
    expect(columnsOf([box(40, 5), box(4, 90)], 220, 4).scale).toBe(0.5);
    expect(one.sheets.every(({ pxPerMm }) => pxPerMm === 4)).toBe(true);
  });

  it('stands all on one root line, each in the middle of its column', () => {
    const { sheets } = columnsOf([box(40, 5), { left: -10, right: 10, top: 20, bottom: -2 }, undefined], 220, 4);
    expect(new Set(sheets.map(({ top, bottom }) => `${top} ${bottom}`)).size).toBe(1);
    expect(sheets[1]?.rootX).toBe(110);
    expect(sheets[0]?.rootX).toBe(30);
  });
});

describe('the table', () => {
  const a = assessed(LEAF);

  it('says how many times that of A: half the length, twice the strain', () => {
    const b = assessed(changed(LEAF, { sizes: { length: 6 } }));
    expect(timesFirst(row('Peak strain'), a, b)).toBe('2.00\u00a0×');
    expect(timesFirst(row('Flexing length'), a, b)).toBe('0.5\u00a0×');
  });

  it('tells no ratio between a torque and a force, nor of a life that nobody has counted', () => {
    const pushed = assessed(changed(LEAF, { movement: { drive: 'pushed', amount: 2 } }));
    expect(timesFirst(row('Effort at full movement'), a, pushed)).toBe('');
    const longLived = assessed(changed(LEAF, { sizes: { length: 90 } }));
    expect(longLived.life.median).toBeGreaterThan(longLived.life.maxReportableCycles);
    expect(timesFirst(row('Life'), a, longLived)).toBe('');
    expect(row('Life').says(longLived, 'mm')).toContain('where counting stops');
  });

  it('says something in every row of every kind of joint', () => {
    for (const joint of joints) {
      for (const one of COMPARE_ROWS) expect(one.says(assessed(joint), 'mm')).not.toBe('');
    }
  });
});

describe('curves on the same axes', () => {
  const all = [
    { letter: 'A', a: assessed(LEAF) },
    { letter: 'B', a: assessed(changed(LEAF, { sizes: { length: 20 } })) },
    { letter: 'C', a: assessed(CREASE) },
    { letter: 'D', a: answered('snapArch') },
  ] as const;

  it('draws one curve of life for joints that share it, and names it by both', () => {
    const plan = lifePlan(all.slice(0, 3))!;
    expect(plan.curves).toHaveLength(2);
    expect(plan.names?.map(({ text }) => text)).toEqual(['PETG: A, B', expect.stringContaining(': C')]);
    expect(plan.points.map(({ letter }) => letter)).toEqual(['A', 'B', 'C']);
  });

  it('puts a joint on its own curve', () => {
    const plan = lifePlan(all.slice(0, 1))!;
    const [point] = plan.points;
    // The curve is read between its samples by straight lines on log paper, which bend it by less than this.
    expect(plan.read(point!.x).height).toBeCloseTo(point!.y, 3);
  });

  it('sets turns and travels on papers of their own, each to the movement that is wanted', () => {
    const turns = effortPlan(all, 'turn', 'mm')!;
    expect(turns.points.map(({ letter, x }) => [letter, Math.round(x)])).toEqual([
      ['A', 35],
      ['B', 35],
      ['C', 100],
    ]);
    const [, , , d] = all;
    const travels = effortPlan(all, 'travel', 'mm')!;
    expect(travels.points.map(({ letter }) => letter)).toEqual(['D']);
    expect(travels.points[0]?.x).toBeCloseTo(d.a.joint.movement.amount, 9);
    expect(effortPlan(all.slice(0, 2), 'travel', 'mm')).toBeUndefined();
  });

  it('ends each curve at the effort that the joint is said to have', () => {
    const a = assessed(changed(LEAF, { movement: { amount: radians(20) } }));
    const plan = effortPlan([{ letter: 'A', a }], 'turn', 'mm')!;
    expect(plan.points[0]?.y).toBeCloseTo(a.effort.effort, 9);
  });
});
