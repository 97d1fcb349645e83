/** What pictures and their files are called. */
import { describe, expect, it } from 'vitest';
import { figureName, foundText, pictureFileName, subjectOf } from '../../../src/ui/text/imagesText.ts';

describe('names of figures', () => {
  it.each([
    ['Fig. 1 Plan, as it lies on the plate, scale 10 : 1; grid 1 mm', 'Fig. 1 Plan, as it lies on the plate'],
    ['Fig. 2 Strain\n  against life', 'Fig. 2 Strain against life'],
    ['PETG: half break by 24 000', 'PETG'],
    ['Section A–A', 'Section A–A'],
    ['Enlarged 5\u00a0:\u00a01; dashed: moved as far as wanted.', 'Enlarged 5 : 1'],
    ['Side view.', 'Side view'],
    ['', ''],
  ])('%s', (caption, name) => {
    expect(figureName(caption)).toBe(name);
  });
});

describe('names of files', () => {
  it('come from part, joint and figure, in letters that every system takes', () => {
    const name = pictureFileName(['Balcony weather station', 'Rain-flap hinge'], 'Fig. 2 Strain against life', '.svg');
    expect(name).toBe('balcony-weather-station-rain-flap-hinge-fig-2-strain-against-life.svg');
    expect(pictureFileName(['Wärme/Tür'], 'Größe', '.png', 2)).toBe('warme-tur-gro-e-2.png');
  });

  it('are never empty and never too long', () => {
    expect(pictureFileName([], '', '.png')).toBe('picture.png');
    expect(pictureFileName(['日本'], '', '.png')).toBe('picture.png');
    const long = pictureFileName(['part '.repeat(60)], 'Fig. 1', '.svg');
    expect(long.length).toBeLessThan(130);
    expect(long).toMatch(/[a-z0-9]\.svg$/);
  });

  it('say what other places call themselves, the wider first', () => {
    expect(subjectOf('PETG, Filaments: Bendbook')).toEqual(['Filaments', 'PETG']);
    expect(subjectOf('Bendbook')).toEqual([]);
  });
});

describe('how many were found', () => {
  it.each([
    [0, 'There is no drawing or curve on this page.'],
    [1, 'One picture found.'],
    [7, '7 pictures found.'],
  ])('%i', (count, text) => {
    expect(foundText(count)).toBe(text);
  });
});
