/** The part file that is being checked and the one on screen: it goes on while other places are looked at. */
import { create } from 'zustand';
import type { CheckedPart } from '../../core/inspect/checkedPart.ts';
import type { LengthUnit } from '../../core/inspect/lengthUnit.ts';
import { useChecking } from '../../store/checking.ts';
import { createClient } from '../../workers/client.ts';
import { startOnPage, startWorker } from '../../workers/engine.ts';
import type { PartNews } from '../../workers/protocol.ts';
import { fileChecks, NO_CHECK, type FileCheck } from '../check/fileCheck.ts';

/** To look over the surface of some million triangles takes so long on a slow machine, and says nothing meanwhile. */
const PATIENCE_MS = 180_000;

/** In a worker of its own, so that it stands in the way of no drawing. */
export const checker = createClient({ worker: startWorker, page: startOnPage, patienceMs: PATIENCE_MS });

/** What is asked to be read, and how. */
interface Asked {
  readonly file: File;
  readonly key: string;
  /** As the user says. */
  readonly unit?: LengthUnit;
  readonly thickest: number;
}

interface PartCheck extends FileCheck<Asked, CheckedPart, PartNews['doing']> {
  /** Number of the thin section that is looked at. */
  readonly chosen: number;
  /** Of what was passed over, the one whose place is shown, counted from 0. */
  readonly pointed: number | undefined;
}

export const usePartCheck = create<PartCheck>()(() => ({
  ...NO_CHECK,
  chosen: 1,
  pointed: undefined,
}));

const { setState: set, getState: get } = usePartCheck;

const checks = fileChecks<Asked, CheckedPart, PartNews['doing']>(
  { get, set },
  {
    client: checker,
    first: 'reading',
    timed: ['looking'],
    ask: (asked, onShare, onNews) => {
      const { file, key, unit, thickest } = asked;
      const input = { file, key, name: file.name, thickest, ...(unit && { unit }) };
      return checker.ask('part', 'checkPart', input, onShare, onNews);
    },
    stood: (asked, { findings }, before) => {
      const numbers = findings.flexures.map(({ number }) => number);
      const isKnown = before?.asked.file === asked.file && numbers.includes(get().chosen);
      set({ chosen: isKnown ? get().chosen : (numbers[0] ?? 1), pointed: undefined });
    },
  },
);

export const { stop, again: checkAgain, forget: forgetEnded } = checks;

let files = 0;

export function checkFile(file: File): void {
  files += 1;
  checks.check({ file, key: String(files), thickest: useChecking.getState().values.thickest });
}

/** The same file in another unit. */
export function readAs(unit: LengthUnit): void {
  const asked = get().standing?.asked;
  if (asked) checks.check({ ...asked, unit });
}

/** The same file again, for thicker or thinner sections. */
export function lookUpTo(thickest: number): void {
  const asked = get().standing?.asked;
  if (asked) checks.check({ ...asked, thickest });
}

/** Shows where something was passed over, or no longer. */
export function pointAt(index: number): void {
  set({ pointed: get().pointed === index ? undefined : index });
}

export function choose(number: number): void {
  set({ chosen: number });
}
