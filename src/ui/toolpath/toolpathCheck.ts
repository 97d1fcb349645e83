/** The toolpath that is being checked and the one on screen: it goes on while other places are looked at. */
import { create } from 'zustand';
import type { CheckedToolpath, PlaceNear } from '../../core/inspect/toolpath/checkedToolpath.ts';
import type { GcodeText } from '../../files/gcode/gcodeText.ts';
import { useToolpaths } from '../../store/toolpaths.ts';
import { createClient } from '../../workers/client.ts';
import { startOnPage, startWorker } from '../../workers/engine.ts';
import type { ToolpathNews } from '../../workers/protocol.ts';
import { fileChecks, NO_CHECK, type FileCheck } from '../check/fileCheck.ts';

/** To look through the layers of a large part takes so long on a slow machine, and says nothing meanwhile. */
const PATIENCE_MS = 180_000;

/** In a worker of its own, so that it stands in the way of no drawing. */
export const reader = createClient({ worker: startWorker, page: startOnPage, patienceMs: PATIENCE_MS });

/** What is asked to be read, and how. */
interface AskedToolpath {
  readonly file: File;
  /** Whether it is the one that we wrote ourselves. */
  readonly isSample: boolean;
  readonly thickest: number;
  /** Of the filament, as the user says [mm]. */
  readonly diameter?: number;
}

interface ToolpathCheck extends FileCheck<AskedToolpath, CheckedToolpath<GcodeText>, ToolpathNews['doing']> {
  /** What lies near places that were drawn or carried over since; of the toolpath on screen. */
  readonly others: readonly PlaceNear[];
}

export const useToolpathCheck = create<ToolpathCheck>()(() => ({ ...NO_CHECK, others: [] }));

const { setState: set, getState: get } = useToolpathCheck;

const checks = fileChecks<AskedToolpath, CheckedToolpath<GcodeText>, ToolpathNews['doing']>(
  { get, set },
  {
    client: reader,
    first: 'reading',
    timed: ['reading', 'looking'],
    ask: ({ file, thickest, diameter }, onShare, onNews) => {
      const input = { file, name: file.name, thickest, ...(diameter !== undefined && { diameter }) };
      return reader.ask('toolpath', 'checkToolpath', input, onShare, onNews);
    },
    stood: () => set({ others: [] }),
  },
);

export const { stop, again: checkAgain, forget: forgetEnded } = checks;

function asSaid(): Pick<AskedToolpath, 'thickest' | 'diameter'> {
  const { thickest, diameter } = useToolpaths.getState().values;
  return { thickest, ...(diameter !== undefined && { diameter }) };
}

export function checkFile(file: File, isSample = false): void {
  checks.check({ file, isSample, ...asSaid() });
}

/** The same file again, once another filament or another thickness is in force, however it came to be. */
useToolpaths.subscribe(({ values }, { values: were }) => {
  const asked = get().work?.asked ?? get().standing?.asked;
  if (!asked || (values.thickest === were.thickest && values.diameter === were.diameter)) return;
  const { file, isSample } = asked;
  checks.check({ file, isSample, ...asSaid() });
});

/** A box that is moved leaves what lay near it behind; so many are remembered. */
const MOST_OTHERS = 60;

/** Takes in what lies near further places of the toolpath on screen. */
export function takeOthers(of: CheckedToolpath<GcodeText>, found: readonly PlaceNear[]): void {
  if (get().standing?.value === of) set({ others: [...get().others, ...found].slice(-MOST_OTHERS) });
}
