/** What the drawing says to those who do not see it, and that it draws what it says. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { describeFigure } from '../../../src/ui/text/drawingText.ts';
import { SheetView } from '../../../src/ui/drawing/SheetView.tsx';
import { DRAWN, laidOut } from '../../support/drawings.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const nothing = () => undefined;

function markupOf(joint: typeof LEAF, fraction = 1): string {
  const layout = laidOut(joint, 797);
  const description = describeFigure(layout.a, layout.figure.laid, '10 : 1', 'mm');
  return renderToStaticMarkup(
    <SheetView
      layout={layout}
      fraction={fraction}
      label="Fig. 1"
      description={description}
      onSize={nothing}
      onHold={nothing}
    />,
  );
}

describe('the drawing as markup', () => {
  it.each(DRAWN)('of %s has no broken number at rest, halfway or at full travel', (_, joint) => {
    for (const fraction of [0, 0.5, 1]) expect(markupOf(joint, fraction)).not.toMatch(/NaN|undefined|Infinity/u);
  });

  it('has a slider for each size that can be dragged, with its range and its value in words', () => {
    const markup = markupOf(LEAF);
    expect(markup.match(/role="slider"/gu)).toHaveLength(3);
    expect(markup).toContain('aria-label="Flexing length"');
    expect(markup).toContain('aria-valuenow="12" aria-valuetext="12.00\u00a0mm"');
    expect(markup).toContain('aria-valuetext="2 lines"');
  });

  it('says in words what is drawn', () => {
    const markup = markupOf(LEAF);
    expect(markup).toContain('role="group"');
    expect(markup).toContain('A leaf 12.00\u00a0mm long and 0.84\u00a0mm thick, 2 lines');
    expect(markup).toContain('Bent 35°');
  });

  it('writes the governing dimensions on the drawing', () => {
    const markup = markupOf(LEAF);
    for (const text of ['12.00', '0.84 = 2 × 0.42', 'R\u00a00.80', '35°', 'start points here', '1 : 1, life size']) {
      expect(markup).toContain(`>${text}</text>`);
    }
  });

  it('draws no bent leaf at rest', () => {
    expect(markupOf(LEAF, 0)).not.toContain('R\u00a019.6 bent');
    expect(markupOf(LEAF, 1)).toContain('R\u00a019.6 bent');
  });

  it('draws a leaf that rolls to no arc at rest only, and says so', () => {
    const pushed = changed(LEAF, { movement: { drive: 'pushed', amount: 3 } });
    expect(markupOf(pushed, 0)).not.toMatch(/NaN|undefined|Infinity/u);
    expect(markupOf(pushed, 1)).not.toContain(' bent</text>');
    expect(markupOf(pushed)).toContain('Moved 3\u00a0mm; it is drawn at rest.');
  });

  it('says what goes wrong in a section that is not whole', () => {
    expect(markupOf(changed(LEAF, { measuredThickness: 0.75 }))).toContain('2 lines, squeezed by 0.09');
    const short = changed(LEAF, { measuredThickness: 0.63, sizes: { length: 4 } });
    expect(markupOf(short)).toContain('1 line, 0.21 left open');
    expect(markupOf(changed(LEAF, { measuredThickness: 0.3 }))).toContain('nothing laid: 0.71 of one line');
  });

  it('describes a row by one of its flexures', () => {
    const row = assessed(changed(LEAF, { sizes: { inRow: 3 } }));
    expect(describeFigure(row, 'along', '10 : 1', 'mm')).toContain('one of 3 in a row');
  });
});
