import { describe, expect, it } from 'vitest';
import type { CheckedToolpath } from '../../../src/core/inspect/toolpath/checkedToolpath.ts';
import type { Place } from '../../../src/core/inspect/toolpath/place.ts';
import { radians } from '../../../src/core/units.ts';
import type { GcodeText } from '../../../src/files/gcode/gcodeText.ts';
import { FIRST_TOOLPATH, withBox } from '../../../src/store/toolpaths.ts';
import { boxNumber, knownPlaces, wantedPlaces } from '../../../src/ui/toolpath/places.ts';

const placeAt = (number: number, x: number, from: Place['from'] = 'found'): Place => ({
  number,
  from,
  lying: 'flat',
  run: [
    { x, y: 0 },
    { x: x + 5, y: 0 },
  ],
  thickness: 0.84,
  reach: 0.84,
  bottom: 0,
  top: 6,
});
const near = { paths: [], travels: [], isCut: false };
const found = [placeAt(1, 0), placeAt(2, 20)].map((place) => ({ place, near }));
const TOOLPATH = { places: found } as unknown as CheckedToolpath<GcodeText>;
const BOX = { x: 40, y: 0, angle: radians(0), length: 5, thickness: 1, bottom: 0, top: 6 };
const BAD = { ...BOX, length: -1 };

const numbers = (places: readonly Place[]) => places.map(({ number, from }) => `${number} ${from}`);

describe('the sections that are looked at', () => {
  it('are those found, then the boxes that can be used', () => {
    const values = withBox(withBox(FIRST_TOOLPATH, BAD), BOX);
    const wanted = wantedPlaces(TOOLPATH, [], values);
    expect(numbers(wanted)).toEqual(['1 found', '2 found', '4 drawn']);
    expect(boxNumber(wanted, 1)).toBe(4);
  });

  it('are those carried over in the place of those found, once that is asked for', () => {
    const carried = [placeAt(1, 0, 'carried'), placeAt(3, 60, 'carried')];
    const values = withBox(FIRST_TOOLPATH, BOX);
    expect(numbers(wantedPlaces(TOOLPATH, carried, values))).toEqual(['1 found', '2 found', '3 drawn']);
    expect(numbers(wantedPlaces(TOOLPATH, carried, { ...values, isCarried: true }))).toEqual([
      '1 carried',
      '3 carried',
      '4 drawn',
    ]);
    // Of a part that does not fit nothing is left but what was found.
    expect(numbers(wantedPlaces(TOOLPATH, [], { ...values, isCarried: true }))).toEqual([
      '1 found',
      '2 found',
      '3 drawn',
    ]);
  });

  it('are told from those of which it is not known yet what lies near them, by where they are', () => {
    const wanted = wantedPlaces(TOOLPATH, [], withBox(FIRST_TOOLPATH, BOX));
    const first = knownPlaces(wanted, found);
    expect(numbers(first.missing)).toEqual(['3 drawn']);
    // Its number may have changed meanwhile.
    const gathered = first.missing.map((place) => ({ place: { ...place, number: 9 }, near }));
    const then = knownPlaces(wanted, [...found, ...gathered]);
    expect(then.missing).toEqual([]);
    expect(numbers(then.places.map(({ place }) => place))).toEqual(['1 found', '2 found', '3 drawn']);
  });
});
