import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { Pictogram } from '../../../src/ui/joints/Pictogram.tsx';
import { pictogramOf } from '../../../src/ui/joints/pictograms.ts';

/** Ends of all pieces of a path, in the forms of command that the signs are drawn with. */
function endsOf(path: string): readonly (readonly [number, number])[] {
  const ends: [number, number][] = [];
  let [x, y] = [0, 0];
  for (const [, command = '', text = ''] of path.matchAll(/([MLHVhvaZ])([^MLHVhvaZ]*)/g)) {
    const given = (text.match(/-?\d+(?:\.\d+)?/g) ?? []).map(Number);
    const [a, b] = given.slice(-2) as [number, number];
    const last = given.at(-1) ?? Number.NaN;
    switch (command) {
      case 'M':
      case 'L':
        [x, y] = [a, b];
        break;
      case 'H':
        x = last;
        break;
      case 'V':
        y = last;
        break;
      case 'h':
        x += last;
        break;
      case 'v':
        y += last;
        break;
      case 'a':
        [x, y] = [x + a, y + b];
        break;
      default:
        break;
    }
    ends.push([x, y]);
  }
  return ends;
}

describe('every kind of flexure', () => {
  it.each(FAMILIES.map(({ id }) => id))('%s has a sign that stays in its box', (id) => {
    const { solid, bends, second = '' } = pictogramOf(id);
    const ends = [solid, bends, second].flatMap(endsOf);
    expect(ends.length).toBeGreaterThan(5);
    for (const [x, y] of ends) {
      expect(x >= 2 && x <= 106).toBe(true);
      expect(y >= 2 && y <= 70).toBe(true);
    }
    // Whatever the path says is read above: no other letter, and no number that is none.
    expect(`${solid}${bends}${second}`).toMatch(/^[MLHVhvaZ\d. -]+$/);
  });

  it('has a sign of its own', () => {
    const drawn = FAMILIES.map(({ id }) => renderToStaticMarkup(<Pictogram family={id} />));
    expect(new Set(drawn).size).toBe(FAMILIES.length);
    expect(() => pictogramOf('gear')).toThrow(RangeError);
  });

  it('shows a second place of rest for those that have one', () => {
    const twice = FAMILIES.map(({ id }) => id).filter((id) => pictogramOf(id).second !== undefined);
    expect(twice).toEqual(['snapArch', 'toggle']);
  });
});
