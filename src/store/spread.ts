/** How closely the user's printer keeps its sizes, and how doubt is sampled: kept as the reader's choices are. */
import { create } from 'zustand';
import { checkSpread, USUAL_SPREAD, type PrinterSpread } from '../core/print/spread.ts';
import { SAMPLINGS, type SamplingHow } from '../core/numeric/sampling.ts';
import { browserStorage, keepChoice, readStored, type PreferenceStorage } from './preferences.ts';

/** How many prints may be imagined: a quick look, the usual, and a close one. */
export const SAMPLE_COUNTS: readonly number[] = [1024, 4096, 16_384];

export interface SpreadChoices {
  readonly spread: PrinterSpread;
  readonly samples: number;
  readonly how: SamplingHow;
}

const KEY = 'bendbook.spread';
const USUAL: SpreadChoices = { spread: USUAL_SPREAD, samples: 4096, how: 'quasi-random' };

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

function parsed(text: string | undefined): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return undefined;
  }
}

/** What was chosen before, as far as it can still be used; else the usual. */
export function readSpread(storage: PreferenceStorage | undefined): SpreadChoices {
  const kept = parsed(readStored(storage, KEY));
  if (!isRecord(kept)) return USUAL;
  const given = isRecord(kept['spread']) ? kept['spread'] : {};
  const size = (name: keyof PrinterSpread) => (typeof given[name] === 'number' ? given[name] : USUAL_SPREAD[name]);
  const spread = { lineWidth: size('lineWidth'), layers: size('layers'), lengths: size('lengths') };
  return {
    spread: checkSpread(spread).length === 0 ? spread : USUAL_SPREAD,
    samples: SAMPLE_COUNTS.find((count) => count === kept['samples']) ?? USUAL.samples,
    how: SAMPLINGS.find((how) => how === kept['how']) ?? USUAL.how,
  };
}

export function keepSpread(storage: PreferenceStorage | undefined, choices: SpreadChoices): void {
  keepChoice(storage, KEY, JSON.stringify(choices));
}

interface SpreadStore extends SpreadChoices {
  readonly choose: (change: Partial<SpreadChoices>) => void;
}

export const useSpread = create<SpreadStore>()((set, get) => ({
  ...readSpread(browserStorage()),
  choose: (change) => {
    const { spread, samples, how } = { ...get(), ...change };
    keepSpread(browserStorage(), { spread, samples, how });
    set(change);
  },
}));
