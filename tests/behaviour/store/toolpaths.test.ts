import { describe, expect, it } from 'vitest';
import type { DrawnBox } from '../../../src/core/inspect/toolpath/drawnPlace.ts';
import { radians } from '../../../src/core/units.ts';
import {
  FIRST_TOOLPATH,
  keepToolpathValues,
  readToolpathValues,
  withBox,
  withoutBox,
} from '../../../src/store/toolpaths.ts';

function storage(text?: string) {
  const kept = new Map<string, string>(text === undefined ? [] : [['bendbook.toolpath', text]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

const BOX: DrawnBox = { x: 1, y: 2, angle: radians(0), length: 5, thickness: 1, bottom: 0, top: 6 };

describe('how a toolpath is looked at', () => {
  it('comes back as far as it is about the printer', () => {
    const shelf = storage();
    keepToolpathValues(shelf, { ...withBox(FIRST_TOOLPATH, BOX), diameter: 2.85, thickest: 4, against: { 1: 'file' } });
    expect(readToolpathValues(shelf)).toEqual({ ...FIRST_TOOLPATH, diameter: 2.85, thickest: 4 });
  });

  it('leaves the diameter to the file until it is said', () => {
    const shelf = storage();
    keepToolpathValues(shelf, FIRST_TOOLPATH);
    expect(readToolpathValues(shelf)).toEqual(FIRST_TOOLPATH);
  });

  it('is used only as far as it can be', () => {
    for (const text of [
      '',
      'no JSON',
      '[]',
      '7',
      '{"diameter":"thick","thickest":-1}',
      '{"diameter":17.5,"thickest":99}',
    ]) {
      expect(readToolpathValues(storage(text))).toEqual(FIRST_TOOLPATH);
    }
  });
});

describe('boxes', () => {
  it('are added at the end, changed in their place and taken away', () => {
    const two = withBox(withBox(FIRST_TOOLPATH, BOX), { ...BOX, x: 9 });
    expect(two.boxes.map(({ x }) => x)).toEqual([1, 9]);
    expect(withBox(two, { ...BOX, x: 4 }, 0).boxes.map(({ x }) => x)).toEqual([4, 9]);
    expect(withoutBox(two, 0, 3).boxes.map(({ x }) => x)).toEqual([9]);
  });

  it('take along what they are held against when one before them goes', () => {
    const values = {
      ...withBox(withBox(FIRST_TOOLPATH, BOX), BOX),
      against: { 1: 'file', 2: { joint: 'a' }, 3: { joint: 'b' } },
    } as const;
    expect(withoutBox(values, 0, 2).against).toEqual({ 1: 'file', 2: { joint: 'b' } });
  });
});
