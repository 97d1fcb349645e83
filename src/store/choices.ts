import { create } from 'zustand';
import { browserStorage, keepTheme, keepUnit, readTheme, readUnit, type Theme, type Unit } from './preferences.ts';

/** Theme and unit of length: they change how the work is shown, never the work, so undo leaves them alone. */
interface Choices {
  readonly theme: Theme;
  readonly unit: Unit;
  readonly setTheme: (theme: Theme) => void;
  readonly setUnit: (unit: Unit) => void;
}

const prefersDark = () => globalThis.matchMedia?.('(prefers-color-scheme: dark)').matches ?? false;

export const useChoices = create<Choices>()((set) => ({
  theme: readTheme(browserStorage(), prefersDark()),
  unit: readUnit(browserStorage()),
  setTheme: (theme) => {
    keepTheme(browserStorage(), theme);
    set({ theme });
  },
  setUnit: (unit) => {
    keepUnit(browserStorage(), unit);
    set({ unit });
  },
}));
