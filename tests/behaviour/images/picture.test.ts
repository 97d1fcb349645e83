/** The text of a picture, read again by a reader that the program does not write with. */
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { svgOf, type Picture } from '../../../src/ui/images/picture.ts';

const PICTURE: Picture = {
  width: 120,
  height: 80,
  title: 'Fig. 1 “A & B” < C',
  desc: 'Said "so"\u0007',
  ground: '#ffffff',
  faces: "@font-face{font-family:'Measured'}",
  children: [
    {
      tag: 'g',
      attributes: { stroke: '#000000' },
      children: [
        { tag: 'path', attributes: { d: 'M0 0L1 1' }, children: [] },
        { tag: 'text', attributes: { x: '3' }, children: ['t < 2 & more'] },
      ],
    },
  ],
};

function read(text: string) {
  const parser = new SaxesParser({ xmlns: true });
  const seen: { name: string; uri: string; attributes: Record<string, string> }[] = [];
  let letters = '';
  parser.on('opentag', ({ name, uri, attributes }) => {
    const plain = Object.fromEntries(Object.entries(attributes).map(([key, one]) => [key, one.value]));
    seen.push({ name, uri, attributes: plain });
  });
  parser.on('text', (found) => {
    letters += found;
  });
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(text).close();
  return { seen, letters };
}

describe('the text of a picture', () => {
  it('is XML that stands alone, with title, description, faces, paper and marks in this order', () => {
    const { seen, letters } = read(svgOf(PICTURE));
    expect(seen.map(({ name }) => name)).toEqual(['svg', 'title', 'desc', 'style', 'rect', 'g', 'path', 'text']);
    expect(new Set(seen.map(({ uri }) => uri))).toEqual(new Set(['http://www.w3.org/2000/svg']));
    expect(seen[0]?.attributes).toMatchObject({ width: '120', height: '80', viewBox: '0 0 120 80', role: 'img' });
    expect(seen[4]?.attributes).toMatchObject({ width: '120', height: '80', fill: '#ffffff' });
    expect(letters).toBe(`Fig. 1 “A & B” < CSaid "so"@font-face{font-family:'Measured'}t < 2 & more`);
  });

  it('grows by a strip under the picture, of which the paper knows nothing', () => {
    const { seen } = read(svgOf(PICTURE, { high: 20, marks: [{ tag: 'text', attributes: {}, children: ['M'] }] }));
    expect(seen[0]?.attributes).toMatchObject({ height: '100', viewBox: '0 0 120 100' });
    expect(seen[4]?.attributes).toMatchObject({ height: '80' });
    expect(seen.at(-1)?.name).toBe('text');
  });

  it('says no more than it has', () => {
    const { seen } = read(svgOf({ ...PICTURE, desc: '', faces: '', children: [] }));
    expect(seen.map(({ name }) => name)).toEqual(['svg', 'title', 'rect']);
  });
});
