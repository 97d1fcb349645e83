/** The drawings of the summary: what fits a page, at which scale, and that they are drawn to it. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import { labelBox, overlap } from '../../../src/ui/drawing/lettering.ts';
import { drawingsOf, type JointDrawn } from '../../../src/ui/lesson/summary/drawings.ts';
import { answered } from '../../support/solvedJoints.ts';
import { changed, LEAF } from '../../support/joints.ts';
import { expectClose } from '../../support/close.ts';

const PX_PER_MM = 96 / 25.4;
const ROOM = { wide: 186, high: 150 };
const HIGH = 84;

function leafOf(length: number): Assessment {
  const answer = assess(changed(LEAF, { sizes: { length } }));
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

function drawings(a: Assessment, room = ROOM, high = HIGH) {
  const found = drawingsOf(a, 'mm', room, high);
  if (!found) throw new Error('nothing was drawn');
  return found;
}

const mmOf = ({ box }: JointDrawn) => ({ wide: box.width / PX_PER_MM, high: box.height / PX_PER_MM });

/** A level dimension by its figure, from arrowhead to arrowhead [px]. */
function across(drawn: JointDrawn, text: string): number {
  const label = drawn.marks.labels.find((one) => one.text === text);
  const level = drawn.marks.arrows.filter(({ y }) => label && Math.abs(y - label.y - 5) < 1).map(({ x }) => x);
  return Math.max(...level) - Math.min(...level);
}

describe('a leaf that rolls to an arc', () => {
  it('stands at 1 : 1 with its length as long as it is, and larger beside it where it goes', () => {
    const { main, enlarged } = drawings(leafOf(12));
    expect([main.sheet.scale, enlarged?.sheet.scale]).toEqual([1, 5]);
    if (main.is !== 'arc' || enlarged?.is !== 'arc') throw new Error('no arc');
    expect([main.isMoved, enlarged.isMoved]).toEqual([false, true]);
    const because = 'places on a sheet are doubles; only what is written is rounded';
    expectClose(across(main, '12.00') / PX_PER_MM, 12, { rel: 1e-9, because });
    expectClose(across(enlarged, '12.00') / PX_PER_MM, 60, { rel: 1e-9, because });
  });

  it('goes to 1 : 2 and on where 1 : 1 has no room, and shows then on one drawing where it goes', () => {
    const { main, enlarged } = drawings(leafOf(150), { wide: 120, high: 150 });
    expect([main.sheet.scale, enlarged]).toEqual([0.5, undefined]);
    expect(main.is === 'arc' && main.isMoved).toBe(true);
    expect(drawings(leafOf(150), { wide: 60, high: 150 }).main.sheet.scale).toBe(0.2);
  });

  it('has no enlarged drawing where no height is left for one', () => {
    expect(drawings(leafOf(12), ROOM, 0).enlarged).toBeUndefined();
  });

  it('never takes more room than there is, with all its lettering', () => {
    for (const length of [3, 8, 12, 30, 60, 110, 150]) {
      for (const high of [84, 60, 40]) {
        const { main, enlarged } = drawings(leafOf(length), ROOM, high);
        const [one, other] = [mmOf(main), enlarged ? mmOf(enlarged) : { wide: 0, high: 0 }];
        expect(one.wide + other.wide).toBeLessThanOrEqual(ROOM.wide);
        expect(one.high).toBeLessThanOrEqual(ROOM.high);
        expect(other.high).toBeLessThanOrEqual(high);
      }
    }
  });

  it('letters its sizes apart from each other, in inches as well', () => {
    for (const unit of ['mm', 'inch'] as const) {
      for (const length of [4, 6, 8, 12, 16, 24, 40, 80]) {
        const found = drawingsOf(leafOf(length), unit, ROOM, HIGH);
        for (const drawn of [found?.main, found?.enlarged]) {
          const boxes = drawn?.marks.labels.map(labelBox) ?? [];
          const over = boxes.filter((one, i) => boxes.slice(i + 1).some((other) => overlap(one, other)));
          expect(over, `${unit}, ${length}`).toEqual([]);
        }
      }
    }
  });

  it('names where no start point may lie on the drawing that has room for it', () => {
    const { main, enlarged } = drawings(leafOf(12));
    expect(main.is === 'arc' && main.keepOut).toBe('');
    expect(enlarged?.is === 'arc' && enlarged.keepOut).toMatch(/^M/);
  });
});

describe('a joint that the solver has answered', () => {
  const parallel = answered('parallelLeaves');

  it('stands at 1 : 1 within its room, with its sizes lettered', () => {
    const { main } = drawings(parallel);
    expect(main.sheet.scale).toBe(1);
    expect(mmOf(main).wide).toBeLessThanOrEqual(ROOM.wide);
    expect(main.marks.labels.map(({ text }) => text)).toContain('25.00');
  });

  it('is drawn where it goes on the larger drawing, or on the only one', () => {
    const { main, enlarged } = drawings(parallel);
    const moved = [main, enlarged].filter((drawn) => drawn?.is === 'solved' && drawn.moved !== undefined);
    expect(moved).toHaveLength(1);
  });

  it('is not drawn without an answer', () => {
    const answer = assess({ ...parallel.joint });
    expect(answer.ok && drawingsOf(answer.value, 'mm', ROOM, HIGH)).toBeUndefined();
  });
});
