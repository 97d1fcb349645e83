/** The figures as a reader of the page by ear has them: captions in order, a cursor and a table to each. */
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../../src/core/design/assessment.ts';
import { SolvedCurves } from '../../../../src/ui/charts/solved/SolvedCurves.tsx';
import { answered } from '../../../support/solvedJoints.ts';
import { assessed, LEAF } from '../../../support/joints.ts';

function page(assessment: Assessment): string {
  return renderToStaticMarkup(
    createElement(SolvedCurves, { assessment, bent: 1, unit: 'mm', onSize: () => undefined }),
  );
}

function captions(html: string): readonly string[] {
  return [...html.matchAll(/<b>(Fig\. \d)<\/b><span class="chart-name">([^<]*)/g)].map(
    ([, number, name]) => `${number} ${name}`,
  );
}

describe('the figures of a solved joint', () => {
  it('are those in which there is something to tell, numbered in order', () => {
    expect(captions(page(answered('snapArch', { effortAtMost: 8 })))).toEqual([
      'Fig. 2 Strain against life',
      'Fig. 3 Strain against arch length',
      'Fig. 4 Effort against movement',
      'Fig. 5 Energy against movement',
      'Fig. 6 Room against movement',
      'Fig. 7 Effort side by side',
      'Fig. 8 How far the pad gives',
    ]);
    expect(captions(page(answered('crossedLeaves')))).toEqual([
      'Fig. 2 Strain against life',
      'Fig. 3 Strain against leaf length',
      'Fig. 4 Effort against movement',
      'Fig. 5 How far the pad gives',
    ]);
  });

  it('each have a cursor that says where it reads, and a table', () => {
    const html = page(answered('toggle', { effortAtMost: 8 }));
    const figures = captions(html).length;
    // The curve of life has a second table, of other filaments.
    expect(html.match(/<table>/g)).toHaveLength(figures + 1);
    expect(html.match(/role="slider"/g)).toHaveLength(figures);
    expect(html.match(/aria-valuetext="[^"]+"/g)).toHaveLength(figures);
    for (const said of ['snap load', 'balanced, ', 'return load', 'rests, ', 'to come back'])
      expect(html).toContain(said);
  });

  it('say in words what is left out', () => {
    // A ring narrower than its hub is refused, so no formula varies this length.
    const html = page({ ...answered('spiral'), length: 1 });
    expect(html).toContain('Strain against length is left out');
    expect(captions(html)).not.toContain('Fig. 3 Strain against leaf length');
  });

  it('wait for the solver with what formulas say', () => {
    const html = page(assessed(LEAF));
    expect(captions(html)).toHaveLength(3);
    expect(html).toContain('More figures come with the solver’s answer');
  });
});
