/** Opening what comes from outside, once its bytes are here: apart, because a first visit opens nothing. */
import type { ProblemCode } from '../../core/problems.ts';
import { readFilamentBytes, saysFilaments } from '../../files/filamentFile.ts';
import { readJointLink } from '../../files/jointLink.ts';
import { MAX_PART_BYTES } from '../../files/limits.ts';
import { readPartBytes } from '../../files/partFile.ts';
import { isFull } from '../../store/edits.ts';
import { useMessages } from '../../store/messages.ts';
import { useSession } from '../../store/session.ts';
import { bringIn, takeFilaments } from '../filaments/own/bringIn.ts';
import { isPulling } from '../tests/pull/isPulling.ts';
import { repairsText } from '../text/openText.ts';
import { alongText } from '../text/ownText.ts';
import { sentence } from '../text/said.ts';
import { partFull, SAID } from '../text/shellText.ts';
import { isGcodeName, isMeshName, isTalliesName, saysGcode, saysMesh } from './fileKind.ts';
import { problemsText } from './problemsText.ts';

/** Notes that say what reading changed; cautions about the joints are shown with the joints. */
const REPAIRS: readonly ProblemCode[] = ['changed-name', 'repaired-id', 'unknown-field'];

type Refuse = (why: string) => undefined;

/** Says what had to change on the way in; an older message has had its time. */
function sayChanges(...changes: readonly string[]): void {
  const { say, clear } = useMessages.getState();
  const said = changes.filter((change) => change !== '');
  if (said.length > 0) say({ grade: 'caution', text: said.join(' ') });
  else clear();
}

function openFilaments(bytes: Uint8Array, refuse: Refuse): string | undefined {
  const read = readFilamentBytes(bytes);
  const taken = read.ok ? takeFilaments(read.value) : read;
  // Of figures that no joint has the core's own words are the best there are.
  if (!taken.ok)
    return refuse(
      taken.problems
        .slice(0, 3)
        .map(({ message }) => sentence(message))
        .join(' '),
    );
  sayChanges(taken.value.said);
  return taken.value.first;
}

function openPart(bytes: Uint8Array, refuse: Refuse): undefined {
  const read = readPartBytes(bytes);
  if (!read.ok) return refuse(problemsText(read.problems));
  const brought = bringIn(read.value.filaments);
  if (!brought.ok) return refuse(problemsText(brought.problems));
  const { names, own, renamed } = brought.value;
  const { part, replacePart } = useSession.getState();
  const { name } = read.value.part;
  replacePart(brought.value.part(read.value.part), alongText(SAID.fileOpened(name, part.name), names), own);
  const repairs = read.notes.filter(({ code }) => REPAIRS.includes(code));
  sayChanges(repairs.length > 0 ? repairsText(name, problemsText(repairs)) : '', renamed);
  return undefined;
}

/** Opens a part, or takes filaments; gives the key of the first filament, or nothing. */
function openBytes(bytes: Uint8Array, refuse: Refuse): string | undefined {
  return saysFilaments(bytes) ? openFilaments(bytes, refuse) : openPart(bytes, refuse);
}

/** Takes a file to the place where it is checked. */
async function checkIn(place: string, come: Promise<Checking>, file: File, refuse: Refuse): Promise<undefined> {
  const checking = await come.catch(() => undefined);
  if (checking === undefined) return refuse('What checks such files did not come; load the page again.');
  useMessages.getState().clear();
  checking.checkFile(file);
  location.hash = place;
}

interface Checking {
  readonly checkFile: (file: File) => void;
}

/** What a file is by its name, or by its first bytes where the name does not tell; nothing where it may be ours. */
async function foreign(file: File): Promise<'mesh' | 'toolpath' | undefined> {
  if (isMeshName(file.name)) return 'mesh';
  if (isGcodeName(file.name)) return 'toolpath';
  if (await saysMesh(file)) return 'mesh';
  return (await saysGcode(file)) ? 'toolpath' : undefined;
}

/** A table of tallies or of forces; where bars are pulled, one with the ending of any text as well. */
function isTableName(name: string): boolean {
  return isTalliesName(name) || (/\.(?:tsv|txt)$/i.test(name) && isPulling());
}

/** Takes a table to the place where tallies are counted and bars are pulled. */
async function openTable(file: File, refuse: Refuse): Promise<undefined> {
  const taking = await import('../tests/TestsPlace.tsx').catch(() => undefined);
  if (taking === undefined) return refuse('What reads tables did not come; load the page again.');
  await taking.takeCsv(file);
  location.hash = 'tests';
  return undefined;
}

/** Opens whatever a file holds: a table by the ending of its name, a mesh or a toolpath by its name or its first bytes, else a part or filaments of ours. */
export async function openWhole(file: File, refuse: Refuse): Promise<string | undefined> {
  if (isTableName(file.name)) return openTable(file, refuse);
  const kind = await foreign(file);
  if (kind === 'mesh') return checkIn(kind, import('../mesh/MeshPlace.tsx'), file, refuse);
  if (kind === 'toolpath') return checkIn(kind, import('../toolpath/ToolpathPlace.tsx'), file, refuse);
  // Judged before reading, so that a film dropped by mistake is not pulled into memory.
  if (file.size > MAX_PART_BYTES) return refuse(`It holds ${file.size} bytes, a part at most ${MAX_PART_BYTES}.`);
  const bytes = await file.arrayBuffer().catch(() => undefined);
  if (bytes === undefined) return refuse('The browser could not read it.');
  return openBytes(new Uint8Array(bytes), refuse);
}

/** Adds the joint that a fragment carries, with the filament of somebody's own that it uses. */
export function openFragment(fragment: string, refuse: Refuse): void {
  const read = readJointLink(fragment);
  if (!read.ok) return refuse(problemsText(read.problems));
  const session = useSession.getState();
  if (isFull(session)) return refuse(partFull(session.part.joints.length));
  const brought = bringIn(read.value.filaments);
  if (!brought.ok) return refuse(problemsText(brought.problems));
  const { names, own, renamed } = brought.value;
  const joint = brought.value.joint(read.value.joint);
  session.addJoint(joint, alongText(SAID.linkOpened(joint.name), names), own);
  if (read.value.bent !== undefined) session.bend(read.value.bent);
  if (renamed !== '') sayChanges(renamed);
  return undefined;
}
