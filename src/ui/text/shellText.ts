/** Sentences of the shell: what is said of changes to the part, of files, and of how the work is kept. */
import type { Kept } from '../../store/saver.ts';
import type { Notice } from '../../store/state.ts';

const quoted = (name: string) => `“${name}”`;

/** The last change as the slip says it; a change taken back is said as such. */
export function noticeText({ said, how }: Notice): string {
  if (how === 'undone') return `Taken back: ${said}`;
  return how === 'redone' ? `Made again: ${said}` : said;
}

/** What is said of a change to the list of joints or to the part; each is in the past tense. */
export const SAID = {
  added: (name: string) => `${quoted(name)} added`,
  duplicated: (name: string) => `${quoted(name)} copied`,
  renamed: (name: string, was: string) => `Joint renamed ${quoted(name)}, was ${quoted(was)}`,
  removed: (name: string) => `${quoted(name)} deleted`,
  moved: (name: string, place: number) => `${quoted(name)} moved to place ${place}`,
  partRenamed: (name: string, was: string) => `Part renamed ${quoted(name)}, was ${quoted(was)}`,
  newPart: (was: string) => `New part begun in the place of ${quoted(was)}`,
  demoOpened: (was: string) => `Demo part opened in the place of ${quoted(was)}`,
  fileOpened: (name: string, was: string) => `${quoted(name)} opened in the place of ${quoted(was)}`,
  linkOpened: (name: string) => `${quoted(name)} added from a link`,
  otherWindow: 'What the other window saved was opened here',
} as const;

export const NEW_PART_NAME = 'New part';

/** What opens the catalogue of kinds, and the finder. */
export const CHOOSE = { add: 'Add a joint', another: 'Another kind', find: 'Find a joint' } as const;

/** In the place of a joint whose kind could not be fetched. */
export function kindNotCome(isKept: boolean): string {
  const what = 'What this kind of joint needs did not come: the page cannot reach where it was loaded from.';
  return `${what} Your part is as it was${isKept ? '.' : ', but not kept: export it before you load the page again.'}`;
}

/** A joint of a part that exists already, as it is offered. */
export const MEASURED_KIND = { words: 'one I measured', name: 'Measured leaf' } as const;

/** A name for a copy: “Lid hinge, copy”, then “Lid hinge, copy 2”. */
export function copyName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/, copy( \d+)?$/, '');
  return firstFree((n) => `${stem}, copy${n === 1 ? '' : ` ${n}`}`, taken);
}

/** A name for a new joint: “Straight leaf”, then “Straight leaf 2”. */
export function newName(kind: string, taken: readonly string[]): string {
  const stem = kind.charAt(0).toUpperCase() + kind.slice(1);
  return firstFree((n) => (n === 1 ? stem : `${stem} ${n}`), taken);
}

function firstFree(nameOf: (n: number) => string, taken: readonly string[]): string {
  let n = 1;
  while (taken.includes(nameOf(n))) n += 1;
  return nameOf(n);
}

export const KEPT_TEXT: Readonly<Record<Kept, string>> = {
  'nothing to keep': 'on this machine only, from the first change on',
  saving: 'on this machine only, saving',
  saved: 'on this machine only, saved',
  full: 'not kept: the browser’s storage is full. Export the part',
  unavailable: 'not kept: this browser gives no storage. Export the part',
};

/** What must be said wherever a result is shown. */
export const CAUTIONS: readonly string[] = [
  'Estimates from nominal data, not a safety case.',
  'Not for parts that hold people, loads overhead, pressure, heat, food, medical or vehicle use without tests and licensed practice under local codes.',
  'Springs and snap parts store energy: wear eye protection.',
  'Warm filament gives off fumes and beds are hot: follow the printer maker’s instructions.',
  'Printed parts vary: test yours.',
];

/** Why a file was not opened; the part on screen is as it was. */
export function fileRefused(fileName: string, why: string): string {
  return `${quoted(fileName)} was not opened. ${why} Your part is as it was.`;
}

export function linkRefused(why: string): string {
  return `The link could not be opened. ${why} Your part is as it was.`;
}

/** Of what comes in a file of its own. */
export const NOT_COME = 'A part of this page did not come; load the page again.';
export const NO_LINK_WRITER = 'No link was made: what writes links did not come; load the page again.';

export function partFull(most: number): string {
  return `The part has ${most} joints, as many as a file can hold.`;
}

export function setAsideText(why: string, of: 'part' | 'filaments' = 'part'): string {
  if (of === 'filaments')
    return `Filaments of your own kept here could not be opened and were set aside as they were. ${why}`;
  return `A part kept here could not be opened and was set aside as it was. ${why}`;
}

export const SAVED_ELSEWHERE_TEXT =
  'Another window of Bendbook has saved a part in the same place. Whichever saves last is kept.';

export const CRASH_TEXT = {
  head: 'Something in Bendbook broke',
  body: 'Your part is not lost: it is as it was before the last change. Download it, then load the page again.',
} as const;

/** A file name of letters, digits and dashes only, so that every system takes it. */
export function nameOfFile(name: string, whenEmpty: string, ending: string): string {
  const plain = name
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .toLowerCase();
  return `${plain || whenEmpty}${ending}`;
}

/** File name of an exported part. */
export function partFileName(name: string): string {
  return nameOfFile(name, 'part', '.bendbook.json');
}
