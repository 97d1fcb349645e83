import { describe, expect, it } from 'vitest';
import { matchEffort } from '../../../src/core/design/matchEffort.ts';
import { movedFigures } from '../../../src/core/design/nudgeFigures.ts';
import { nudgesOf } from '../../../src/core/design/nudges.ts';
import { radians } from '../../../src/core/units.ts';
import { saidSize } from '../../../src/ui/joints/match/saidSize.ts';
import { matchDone, matchResult, matchTitle, shortText } from '../../../src/ui/text/matchText.ts';
import { changeText, figureText, nudgeName, SAME } from '../../../src/ui/text/nudgeText.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';
import { DRIVEN, jointOf } from '../../support/families.ts';

const plain = (text: string) => text.replaceAll(/[\u00a0\u2009]/g, ' ');

describe('names of small changes', () => {
  it('of a leaf', () => {
    const names = nudgesOf(LEAF).map((nudge) => plain(nudgeName(nudge, 'mm', 'turn')));
    expect(names.slice(0, 11)).toEqual([
      'One line more',
      'One line fewer',
      'Leaf length 0.1 mm more',
      'Leaf length 0.1 mm less',
      'Line width 0.01 mm more',
      'Root fillet 0.1 mm more',
      'Leaf depth 0.1 mm more',
      'Angle 1° more',
      'Angle 1° less',
      'Leaves side by side, one more',
      'PLA',
    ]);
  });

  it('of a crease are of layers, and of what is measured of what calipers read', () => {
    expect(nudgesOf(CREASE).map((nudge) => nudgeName(nudge, 'mm', 'turn'))[0]).toBe('One layer more');
    const [first] = nudgesOf(changed(LEAF, { measuredThickness: 0.8 }));
    expect(first && plain(nudgeName(first, 'mm', 'turn'))).toBe('Thickness 0.05 mm more');
    expect(first && plain(nudgeName(first, 'inch', 'turn'))).toBe('Thickness 0.002 in more');
  });

  it.each(DRIVEN)('of $id are all different', ({ kind, drive }) => {
    const names = nudgesOf(jointOf(kind, drive)).map((nudge) => nudgeName(nudge, 'mm', drive.measure));
    expect(new Set(names).size).toBe(names.length);
    expect(names.join()).not.toMatch(/undefined|NaN/);
  });
});

describe('figures of small changes', () => {
  const before = assessed(LEAF);
  const three = movedFigures(before, assessed(changed(LEAF, { sizes: { lines: 3 } })));
  const same = movedFigures(before, before);

  it('say how much they change, and that they do not', () => {
    expect(plain(changeText('strain', three.strain, 'turn', 'mm'))).toMatch(/^\+\d\d %$/);
    expect(plain(changeText('effort', three.effort, 'turn', 'mm'))).toMatch(/^\+\d{3} %$/);
    expect(changeText('chance', three.chance, 'turn', 'mm')).toMatch(/^−\d\d$/);
    expect(changeText('set', three.set, 'turn', 'mm')).toMatch(/^\+[\d.]+°$/);
    expect(changeText('strain', same.strain, 'turn', 'mm')).toBe(SAME);
    expect(changeText('set', same.set, 'turn', 'mm')).toBe(SAME);
  });

  it('say nothing of a life that nobody has counted', () => {
    expect(figureText('chance', undefined, 'turn', 'mm')).toBe('not counted');
    expect(changeText('chance', undefined, 'turn', 'mm')).toBe('');
    expect(changeText('chance', { now: 0.5 }, 'turn', 'mm')).toBe('');
  });
});

describe('ways to an effort', () => {
  const a = assessed(LEAF);
  const answer = matchEffort(LEAF, { effort: 90, at: radians(35) });
  if (!answer.ok) throw new Error(answer.problems[0].message);
  const texts = answer.value.matches.map((match) => {
    const said = saidSize(a, match, 'mm');
    return [
      matchTitle(a, match.steps, said),
      matchDone(a, match.steps, said),
      matchResult(match, radians(35), 'mm'),
    ].map(plain);
  });

  it('are told as what to do, and as what was done with the old value', () => {
    const [titles, done] = [texts.map(([title]) => title), texts.map(([, was]) => was)];
    expect(titles).toContain('Use three lines instead of two');
    expect(done).toContain('Made 3 lines across, was 2');
    expect(titles.join('\n')).toMatch(/^Put three leaves side by side and make it [\d.]+ mm deep$/m);
    expect(done.join('\n')).toMatch(/^3 leaves put side by side, was 1; leaf made [\d.]+ mm deep, was 6$/m);
    for (const [, , result] of texts) expect(result).toMatch(/^[\d.]+ N·mm at 35°; .*\.$/);
  });

  it('that end before say where', () => {
    const said = shortText(a, [
      { steps: ['length'], effort: 51.86 },
      { steps: ['lines', 'length'], effort: 12.95 },
    ]);
    expect(plain(said)).toBe(
      'By flexing length alone it comes to 51.9 N·mm and no nearer. By lines and flexing length it comes to 12.9 N·mm and no nearer.',
    );
  });
});
