/** The part file that is being checked and the one on screen: it goes on while other places are looked at. */
import { create } from 'zustand';
import type { CheckedPart } from '../../core/inspect/checkedPart.ts';
import type { LengthUnit } from '../../core/inspect/lengthUnit.ts';
import type { Problem } from '../../core/problems.ts';
import { useChecking } from '../../store/checking.ts';
import { createClient } from '../../workers/client.ts';
import { startOnPage, startWorker } from '../../workers/engine.ts';
import type { PartNews } from '../../workers/protocol.ts';

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

/** A part that has been checked. */
interface Standing {
  readonly asked: Asked;
  readonly part: CheckedPart;
}

/** A check that goes on. */
export interface Work {
  readonly asked: Asked;
  readonly doing: PartNews['doing'];
  readonly share: number;
  readonly found: number;
  readonly begunMs: number;
  /** Where the step that it is at began. */
  readonly step: { readonly share: number; readonly sinceMs: number };
  /** How long the rest takes, once it is known well enough. */
  readonly secondsLeft: number | undefined;
}

/** How the last check ended, where it brought no part. */
export type Ended =
  | { readonly how: 'stopped'; readonly asked: Asked; readonly found: number }
  | { readonly how: 'refused'; readonly asked: Asked; readonly problems: readonly Problem[] }
  | { readonly how: 'broke'; readonly asked: Asked; readonly message: string };

interface PartCheck {
  readonly standing: Standing | undefined;
  readonly work: Work | undefined;
  readonly ended: Ended | undefined;
  /** Number of the thin section that is looked at. */
  readonly chosen: number;
  /** Of what was passed over, the one whose place is shown, counted from 0. */
  readonly pointed: number | undefined;
}

export const usePartCheck = create<PartCheck>()(() => ({
  standing: undefined,
  work: undefined,
  ended: undefined,
  chosen: 1,
  pointed: undefined,
}));

const { setState: set, getState: get } = usePartCheck;

let running: number | undefined;

function end(ended: Ended): void {
  running = undefined;
  set({ work: undefined, ended });
}

function stand(asked: Asked, part: CheckedPart): void {
  running = undefined;
  const isSame = get().standing?.asked.file === asked.file;
  const numbers = part.findings.flexures.map(({ number }) => number);
  const chosen = isSame && numbers.includes(get().chosen) ? get().chosen : (numbers[0] ?? 1);
  set({ standing: { asked, part }, work: undefined, ended: undefined, chosen, pointed: undefined });
}

/** So much of the longest step tells how fast it goes on this machine. */
const KNOWN = { share: 0.06, ms: 800 };

/** Only looking is told in time: how long it takes does not show before. */
function secondsLeft({ doing, step }: Work, share: number, nowMs: number): number | undefined {
  const [done, ms] = [share - step.share, nowMs - step.sinceMs];
  const isKnown = doing === 'looking' && done >= KNOWN.share && ms >= KNOWN.ms;
  return isKnown ? (ms * (1 - share)) / done / 1000 : undefined;
}

/** A step that begins counts from where the one before it came to. */
function told(work: Work, { doing, found }: PartNews): Partial<Work> {
  const isSame = doing === work.doing;
  return isSame ? { found } : { doing, found, step: { share: work.share, sinceMs: performance.now() } };
}

/** Checks a part; the one on screen stays until it has been read. */
function check(asked: Asked): void {
  if (running !== undefined) checker.cancel(running);
  const begunMs = performance.now();
  const step = { share: 0, sinceMs: begunMs };
  set({
    work: { asked, doing: 'reading', share: 0, found: 0, begunMs, step, secondsLeft: undefined },
    ended: undefined,
  });
  const { file, key, unit, thickest } = asked;
  const input = { file, key, name: file.name, thickest, ...(unit && { unit }) };
  const alter = (change: (work: Work) => Partial<Work>) => {
    const { work } = get();
    if (work?.asked === asked) set({ work: { ...work, ...change(work) } });
  };
  const request = checker.ask(
    'part',
    'checkPart',
    input,
    (share) => alter((work) => ({ share, secondsLeft: secondsLeft(work, share, performance.now()) })),
    (news) => alter((work) => told(work, news)),
  );
  running = request.id;
  void request.settled.then((settled) => {
    if (get().work?.asked !== asked) return;
    if (settled.how === 'failed') end({ how: 'broke', asked, message: settled.message });
    if (settled.how !== 'answered') return;
    if (settled.value.ok) stand(asked, settled.value.value);
    else end({ how: 'refused', asked, problems: settled.value.problems });
  });
}

let files = 0;

export function checkFile(file: File): void {
  files += 1;
  check({ file, key: String(files), thickest: useChecking.getState().values.thickest });
}

/** The same file in another unit. */
export function readAs(unit: LengthUnit): void {
  const asked = get().standing?.asked;
  if (asked) check({ ...asked, unit });
}

/** The same file again, for thicker or thinner sections. */
export function lookUpTo(thickest: number): void {
  const asked = get().standing?.asked;
  if (asked) check({ ...asked, thickest });
}

/** What was stopped, or broke off. */
export function checkAgain(): void {
  const { ended } = get();
  if (ended) check(ended.asked);
}

/** Gives the check up; what was found so far is kept to be told. */
export function stop(): void {
  const { work } = get();
  if (!work) return;
  if (running !== undefined) checker.cancel(running);
  end({ how: 'stopped', asked: work.asked, found: work.found });
}

/** Takes away what is told of a check that brought no part. */
export function forgetEnded(): void {
  set({ ended: undefined });
}

/** Shows where something was passed over, or no longer. */
export function pointAt(index: number): void {
  set({ pointed: get().pointed === index ? undefined : index });
}

export function choose(number: number): void {
  set({ chosen: number });
}
