/** On the drawing of a solved joint no figure is hit by a line of the dimensions, and no leader of a ring by its words. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { labelBox, letteringWidth, type Box } from '../../../src/ui/drawing/lettering.ts';
import { densified } from '../../../src/ui/drawing/polygon.ts';
import { NearRing } from '../../../src/ui/drawing/solved/NearRing.tsx';
import { layOutSolved } from '../../../src/ui/drawing/solved/solvedLayout.ts';
import { stateAt } from '../../../src/ui/drawing/solved/state.ts';
import { NOMINAL_PX_PER_MM } from '../../../src/ui/drawing/sheet.ts';
import { WIDTHS } from '../../support/drawings.ts';
import { SOLVED_CASES, type SolvedCase } from '../../support/solvedDrawings.ts';

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Points along all lines of a path of straight pieces, a px apart. */
function pointsOf(d: string): readonly Place[] {
  const runs = d.split('M').filter((run) => run !== '');
  return runs.flatMap((run) => {
    const corners = run.split('L').map((pair) => pair.split(' ').map(Number));
    return densified(
      corners.map(([x = 0, y = 0]) => ({ x, y })),
      1,
    );
  });
}

/** Letters do not fill their box: a line may run along its edge. */
const EDGE = 2;

const isIn = ({ x, y, width, height }: Box, p: Place) =>
  p.x > x + EDGE && p.x < x + width - EDGE && p.y > y + EDGE && p.y < y + height - EDGE;

const layoutOf = ({ scene, travelled }: SolvedCase, width: number) =>
  layOutSolved(scene, travelled, width, NOMINAL_PX_PER_MM, 'mm');

describe.each(SOLVED_CASES)('$name', (one) => {
  it.each(WIDTHS)('keeps lines off its figures on %d px', (width) => {
    const { marks } = layoutOf(one, width);
    const lines = pointsOf(marks.lines);
    const hit = marks.labels.filter((label) => lines.some((point) => isIn(labelBox(label), point)));
    expect(hit.map(({ text }) => text)).toEqual([]);
  });
});

describe('the leader of a ring', () => {
  const near = SOLVED_CASES.filter(({ name }) => name.startsWith('spiral') || name.startsWith('foldedLeaf'));
  it.each(near)('of $name does not cross its own words', (one) => {
    for (const width of WIDTHS) {
      const state = stateAt(one.solved, one.travelled.to);
      const markup = renderToStaticMarkup(<NearRing layout={layoutOf(one, width)} state={state} />);
      const leader = pointsOf(/<path d="([^"]*)"/u.exec(markup)?.[1] ?? '');
      const words = [...markup.matchAll(/<text[^>]*x="([^"]*)" y="([^"]*)"[^>]*>([^<]*)</gu)];
      for (const [, x, y, text = ''] of words) {
        const wide = letteringWidth(text, 12);
        const box = { x: Number(x) - wide, y: Number(y) - 10, width: wide, height: 12 };
        expect(leader.filter((point) => isIn(box, point))).toEqual([]);
      }
    }
  });
});
