import { describe, expect, it } from 'vitest';
import { radians } from '../../../src/core/units.ts';
import { FIRST_VALUES, keepCheckValues, readCheckValues, type CheckValues } from '../../../src/store/checking.ts';
import { changed, redone, undone, type History } from '../../../src/store/history.ts';

const begun: History<CheckValues> = {
  values: FIRST_VALUES,
  past: [],
  future: [],
  gesture: undefined,
  notice: undefined,
};
const scaled = (scale: number): CheckValues => ({ ...FIRST_VALUES, as: { ...FIRST_VALUES.as, scale } });

function storage(text?: string) {
  const kept = new Map<string, string>(text === undefined ? [] : [['bendbook.check', text]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

describe('the values of a check', () => {
  it('are taken back and made again one change at a time', () => {
    const twice = changed(changed(begun, scaled(2), 'to 2'), scaled(3), 'to 3');
    expect(twice.notice).toEqual({ said: 'to 3', how: 'done' });
    const back = undone(twice);
    expect(back.values.as.scale).toBe(2);
    expect(back.notice).toEqual({ said: 'to 3', how: 'undone' });
    expect(undone(back).values).toEqual(FIRST_VALUES);
    expect(redone(back).values.as.scale).toBe(3);
    expect(undone(begun)).toBe(begun);
    expect(redone(begun)).toBe(begun);
  });

  it('gather the changes of one gesture into one step, and forget one that came back', () => {
    const dragged = changed(changed(begun, scaled(1.5), 'to 1.5', 'drag'), scaled(2), 'to 2', 'drag');
    expect(dragged.past).toHaveLength(1);
    expect(undone(dragged).values).toEqual(FIRST_VALUES);
    expect(changed(dragged, FIRST_VALUES, 'to 1', 'drag').past).toHaveLength(0);
  });

  it('leave no step where nothing changes', () => {
    expect(changed(begun, scaled(1), 'to 1')).toBe(begun);
  });
});

describe('the values of the last visit', () => {
  it('come back as they were', () => {
    const shelf = storage();
    const values: CheckValues = {
      as: { ...FIRST_VALUES.as, scale: 4 / 3, up: '-x' },
      asked: { ways: 'both ways', turn: radians(20), cycles: 300, chance: 0.8, held: false },
      thickest: 4,
    };
    keepCheckValues(shelf, values);
    expect(readCheckValues(shelf)).toEqual(values);
  });

  it('are used only as far as they can be', () => {
    const { as, asked } = FIRST_VALUES;
    for (const text of ['', 'no JSON', '[]', '"x"', '{"as":7,"asked":null,"thickest":-1}']) {
      expect(readCheckValues(storage(text))).toEqual(FIRST_VALUES);
    }
    const bad = {
      as: { scale: 0, up: 'sideways', profile: { ...as.profile, lineWidth: 9 } },
      asked: { ...asked, cycles: 2.5, chance: 2, turn: -1, ways: 'round and round', held: 'yes' },
      thickest: 3,
    };
    expect(readCheckValues(storage(JSON.stringify(bad)))).toEqual({ ...FIRST_VALUES, thickest: 3 });
    const gone = { as: { ...as, profile: { ...as.profile, filament: 'a filament that was deleted' } } };
    expect(readCheckValues(storage(JSON.stringify(gone)))).toEqual(FIRST_VALUES);
  });
});
