import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { copyName, newName, noticeText, partFileName } from '../../../src/ui/text/shellText.ts';
import { stripText } from '../../../src/ui/text/stripText.ts';

function cellText(joint: Joint): string {
  const assessed = assess(joint);
  if (!assessed.ok) throw new Error('the joint must be one that can be assessed');
  return stripText(assessed.value);
}

describe('names that the page gives', () => {
  it('a copy is called so once, and counted after that', () => {
    expect(copyName('Lid', ['Lid'])).toBe('Lid, copy');
    expect(copyName('Lid', ['Lid', 'Lid, copy'])).toBe('Lid, copy 2');
    expect(copyName('Lid, copy 2', ['Lid', 'Lid, copy', 'Lid, copy 2'])).toBe('Lid, copy 3');
  });

  it('a new joint is called after its kind', () => {
    expect(newName('straight leaf', [])).toBe('Straight leaf');
    expect(newName('straight leaf', ['Straight leaf', 'Straight leaf 2'])).toBe('Straight leaf 3');
  });

  it.each([
    ['Balcony weather station', 'balcony-weather-station.bendbook.json'],
    ['Tür & Griff / 2', 'tur-griff-2.bendbook.json'],
    ['../../etc', 'etc.bendbook.json'],
    ['盖子', 'part.bendbook.json'],
  ])('the file of “%s” is %s', (name, file) => {
    expect(partFileName(name)).toBe(file);
  });
});

describe('what the slip says', () => {
  it('tells a change from one taken back and one made again', () => {
    const said = 'Leaf made 15 mm long, was 12';
    expect(noticeText({ said, how: 'done' })).toBe(said);
    expect(noticeText({ said, how: 'undone' })).toBe(`Taken back: ${said}`);
    expect(noticeText({ said, how: 'redone' })).toBe(`Made again: ${said}`);
  });
});

describe('what a cell of the strip says', () => {
  const { joints } = demoPart();
  const [flap, clip] = [joints[0], joints.at(-1)] as [Joint, Joint];

  it('names the verdict and the one number that decides it', () => {
    expect(cellText(flap)).toMatch(/^Caution, \d\d in 100$/);
    expect(cellText(clip)).toBe('Caution, 1.50 lines');
  });

  it('gives no number where nobody has counted', () => {
    const gentle = { ...flap, sizes: { ...flap.sizes, length: 100 } };
    expect(cellText({ ...gentle, movement: { ...gentle.movement, cycles: 1e8 } })).toBe('Beyond the data');
  });
});
