import { describe, expect, it } from 'vitest';
import {
  keepOpenJoint,
  keepTheme,
  keepUnit,
  readOpenJoint,
  readTheme,
  readUnit,
  type PreferenceStorage,
} from '../../../src/store/preferences.ts';

function mapStorage(entries: Readonly<Record<string, string>> = {}): PreferenceStorage {
  const map = new Map(Object.entries(entries));
  return { getItem: (key) => map.get(key) ?? null, setItem: (key, value) => void map.set(key, value) };
}

const refusing: PreferenceStorage = {
  getItem: () => {
    throw new DOMException('denied', 'SecurityError');
  },
  setItem: () => {
    throw new DOMException('full', 'QuotaExceededError');
  },
};

describe('preferences', () => {
  it('come back as they were chosen', () => {
    const storage = mapStorage();
    keepTheme(storage, 'blueprint');
    keepUnit(storage, 'inch');
    expect(readTheme(storage, false)).toBe('blueprint');
    expect(readUnit(storage)).toBe('inch');
    expect(readOpenJoint(storage)).toBeUndefined();
    keepOpenJoint(storage, 'rain-flap');
    expect(readOpenJoint(storage)).toBe('rain-flap');
  });

  it('begin with how the screen is set, and with millimetres', () => {
    expect(readTheme(mapStorage(), true)).toBe('blueprint');
    expect(readTheme(mapStorage(), false)).toBe('paper');
    expect(readUnit(mapStorage())).toBe('mm');
  });

  it('that are not known are passed over', () => {
    const storage = mapStorage({ 'bendbook.theme': 'sepia', 'bendbook.unit': 'furlong' });
    expect(readTheme(storage, true)).toBe('blueprint');
    expect(readUnit(storage)).toBe('mm');
  });

  it('are done without where the storage refuses or is not there', () => {
    expect(readTheme(refusing, false)).toBe('paper');
    expect(readUnit(refusing)).toBe('mm');
    expect(() => keepTheme(refusing, 'paper')).not.toThrow();
    expect(() => keepUnit(undefined, 'inch')).not.toThrow();
    expect(readUnit(undefined)).toBe('mm');
    expect(readOpenJoint(refusing)).toBeUndefined();
    expect(() => keepOpenJoint(refusing, 'rain-flap')).not.toThrow();
  });

  it('use the keys that index.html and earlier visits know', () => {
    const storage = mapStorage({ 'bendbook.theme': 'blueprint', 'bendbook.unit': 'inch' });
    expect(readTheme(storage, false)).toBe('blueprint');
    expect(readUnit(storage)).toBe('inch');
  });
});
