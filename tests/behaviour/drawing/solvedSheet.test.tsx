/** What the drawing of a solved joint says to those who do not see it, and that it draws what it says. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { descriptionOf } from '../../../src/ui/drawing/solved/description.ts';
import { readingOf } from '../../../src/ui/drawing/solved/reading.ts';
import { layOutSolved } from '../../../src/ui/drawing/solved/solvedLayout.ts';
import { SolvedSheet } from '../../../src/ui/drawing/solved/SolvedSheet.tsx';
import { stateAt } from '../../../src/ui/drawing/solved/state.ts';
import { ThreeStates } from '../../../src/ui/drawing/solved/ThreeStates.tsx';
import { NOMINAL_PX_PER_MM } from '../../../src/ui/drawing/sheet.ts';
import { SOLVED_CASES, type SolvedCase } from '../../support/solvedDrawings.ts';

const nothing = () => undefined;

function caseOf(name: string): SolvedCase {
  const found = SOLVED_CASES.find((one) => one.name.startsWith(name));
  if (!found) throw new Error(`no case called ${name}`);
  return found;
}

const layoutOf = ({ scene, travelled }: SolvedCase, width = 797) =>
  layOutSolved(scene, travelled, width, NOMINAL_PX_PER_MM, 'mm');

function markupOf(one: SolvedCase, share = 1, width = 797): string {
  const layout = layoutOf(one, width);
  const state = stateAt(one.solved, share * one.travelled.wanted);
  return renderToStaticMarkup(
    <SolvedSheet
      layout={layout}
      state={state}
      strain={readingOf(one.a, state).strain}
      label="Fig. 1"
      description={descriptionOf(layout, 'along')}
      onSize={nothing}
      onHold={nothing}
    />,
  );
}

describe('the drawing of a solved joint as markup', () => {
  it.each(SOLVED_CASES)(
    'of $name has no broken number at rest, halfway or all the way, on a phone or a screen',
    (one) => {
      for (const share of [0, 0.5, 1]) {
        for (const width of [328, 797]) expect(markupOf(one, share, width)).not.toMatch(/NaN|undefined|Infinity/u);
      }
    },
  );

  it('says in words what is drawn', () => {
    const markup = markupOf(caseOf('spiral, centred'));
    expect(markup).toContain('role="group"');
    expect(markup).toContain('Turned 35°, and as far the other way.');
    expect(markup).toContain('Parts come within 0.23\u00a0mm of each other at 35.0°');
    expect(markup).toContain('ring, to the middle line 23.00\u00a0mm');
  });

  it('rings the place where parts come nearer than a line, and only there', () => {
    const spiral = caseOf('spiral, centred');
    expect(markupOf(spiral, 1)).toContain('0.23\u00a0mm apart');
    expect(markupOf(spiral, 1)).toContain('keep 0.42\u00a0mm or more');
    expect(markupOf(spiral, 0.2)).not.toContain('apart');
    expect(markupOf(spiral, 0.2)).not.toContain('<g class="near');
    expect(markupOf(caseOf('parallelLeaves, shifted'))).not.toContain('apart');
  });

  it('rings every place where they do: between each arm of a spiral and the next', () => {
    const markup = markupOf(caseOf('spiral, centred'), 1);
    const rings = [...markup.matchAll(/<circle class="(caution|fail)" cx="([^"]*)" cy="([^"]*)"/gu)];
    expect(rings.length % 3).toBe(0);
    expect(rings.length).toBeGreaterThan(0);
    expect(markup).toContain(`${rings.length} places too near`);
    expect(markup).toContain(`too near in ${rings.length} places.`);
    expect(new Set(rings.map(([, tone]) => tone))).toEqual(new Set(['caution']));
  });

  it('shows the path of a centre that drifts, and of no other', () => {
    expect(markupOf(caseOf('crossedLeaves, turned'))).toContain('path of the centre, 100 : 1');
    for (const name of ['crossedLeaves, centred', 'spiral, turned', 'straightLeaf, turned', 'cellPanel']) {
      expect(markupOf(caseOf(name))).not.toContain('path of the centre');
    }
  });

  it('shows from the side what lies in several planes', () => {
    expect(markupOf(caseOf('crossedLeaves, turned'))).toContain('2 planes, 3.00 each');
    expect(markupOf(caseOf('parallelLeaves, shifted'))).not.toContain('planes');
  });

  it('has a slider for each main size that can be dragged', () => {
    const markup = markupOf(caseOf('parallelLeaves, shifted'));
    expect(markup).toContain('aria-label="Leaf length"');
    expect(markup).toContain('aria-valuenow="25" aria-valuetext="25.00\u00a0mm"');
    expect(markup).toContain('aria-valuetext="2 lines"');
  });

  it('writes the dimensions of its network', () => {
    const markup = markupOf(caseOf('snapArch, guided'));
    for (const text of ['60.00', '3.00', '4.00', '0.84 = 2 × 0.42']) expect(markup).toContain(`>${text}</text>`);
  });
});

const statesOf = (name: string) =>
  renderToStaticMarkup(<ThreeStates layout={layoutOf(caseOf(name))} width={797} unit="mm" />);

describe('the states of a joint that snaps', () => {
  it.each(['snapArch, guided', 'snapArch, pressed', 'toggle'])(
    'are three for %s, named and with what it takes',
    (name) => {
      const markup = statesOf(name);
      expect(markup.match(/<figure/gu)).toHaveLength(3);
      for (const words of ['Just before it snaps', 'Balanced, for an instant', 'Second rest', 'no effort']) {
        expect(markup).toContain(words);
      }
      expect(markup).not.toMatch(/NaN|undefined|Infinity/u);
    },
  );

  it('are none for one that always pushes back', () => {
    expect(statesOf('spiral, centred')).toBe('');
  });
});
