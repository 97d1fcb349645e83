/** The reader's choices that are not part of the work: kept in localStorage, and done without where there is none. */
export type Theme = 'paper' | 'blueprint';
export type Unit = 'mm' | 'inch';

/** What `localStorage` offers and may refuse: every call can throw. */
export type PreferenceStorage = Pick<Storage, 'getItem' | 'setItem'>;

const THEMES: readonly Theme[] = ['paper', 'blueprint'];
const UNITS: readonly Unit[] = ['mm', 'inch'];
// index.html reads this key before the first paint.
const THEME_KEY = 'bendbook.theme';
const UNIT_KEY = 'bendbook.unit';
const JOINT_KEY = 'bendbook.joint';

/** What stands under a key, or nothing where there is none or storage is refused. */
export function readStored(storage: PreferenceStorage | undefined, key: string): string | undefined {
  try {
    return storage?.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

function readChoice<T extends string>(storage: PreferenceStorage | undefined, key: string, all: readonly T[]) {
  const stored = readStored(storage, key);
  return all.find((one) => one === stored);
}

/** Keeps a text under a key as far as that is allowed. */
export function keepChoice(storage: PreferenceStorage | undefined, key: string, value: string): void {
  try {
    storage?.setItem(key, value);
  } catch {
    // The choice holds until the page is closed; nothing is lost that matters.
  }
}

/** The storage of the browser, or none where even asking for it is refused. */
export function browserStorage(): PreferenceStorage | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}

/** The theme chosen before, else the one that fits how the screen is set. */
export function readTheme(storage: PreferenceStorage | undefined, prefersDark: boolean): Theme {
  return readChoice(storage, THEME_KEY, THEMES) ?? (prefersDark ? 'blueprint' : 'paper');
}

export function keepTheme(storage: PreferenceStorage | undefined, theme: Theme): void {
  keepChoice(storage, THEME_KEY, theme);
}

/** The unit of length chosen before, else millimetres. */
export function readUnit(storage: PreferenceStorage | undefined): Unit {
  return readChoice(storage, UNIT_KEY, UNITS) ?? 'mm';
}

export function keepUnit(storage: PreferenceStorage | undefined, unit: Unit): void {
  keepChoice(storage, UNIT_KEY, unit);
}

/** The joint that was open when the page was left; it may be gone since. */
export function readOpenJoint(storage: PreferenceStorage | undefined): string | undefined {
  return readStored(storage, JOINT_KEY);
}

export function keepOpenJoint(storage: PreferenceStorage | undefined, id: string): void {
  keepChoice(storage, JOINT_KEY, id);
}
