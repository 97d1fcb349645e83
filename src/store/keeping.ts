import { create } from 'zustand';
import { putOnShelf } from '../core/material/shelf.ts';
import type { OwnFilament } from '../core/material/types.ts';
import { listenToOtherWindows } from './otherWindows.ts';
import type { Found, SetAside } from './found.ts';
import { type PartStorage, savePart, saveShelf } from './savedPart.ts';
import { withUnknown } from './shelf.ts';
import { browserStorage, keepOpenJoint, readOpenJoint } from './preferences.ts';
import { createSaver, type Kept, type Saver } from './saver.ts';
import { useSession } from './session.ts';

/** What the screen says about how the work is kept. */
export interface Keeping {
  readonly kept: Kept;
  readonly setAside: readonly SetAside[];
  /** Another window has saved a part over the one that this window shows. */
  readonly savedElsewhere: boolean;
}

export const useKeeping = create<Keeping>()(() => ({
  kept: 'nothing to keep',
  setAside: [],
  savedElsewhere: false,
}));

/** A storage that does not answer must not keep the page blank. */
const PATIENCE_MS = 3000;

function inTime<T>(promise: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('the storage does not answer')), PATIENCE_MS);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

/**
 * Opens what was kept and keeps every change from then on. Where the storage refuses or does not answer, nothing
 * is saved, since that could overwrite a part that was not seen, and the title block says so.
 */
export async function startKeeping(storage: PartStorage): Promise<void> {
  let found: Found;
  let shelf: readonly OwnFilament[];
  try {
    [shelf, found] = await inTime(findAll(storage));
  } catch {
    useKeeping.setState({ kept: 'unavailable' });
    return;
  }
  const { part, open } = useSession.getState();
  // A kept part may name filaments that the shelf has lost, and never knows better what is on it.
  open(found.part ?? part, withUnknown(shelf, found.filaments));
  reopenJoint();
  useKeeping.setState({ setAside: found.setAside, kept: found.part === undefined ? 'nothing to keep' : 'saved' });
  keepChanges(storage, shelf);
}

const reader = () => import('./found.ts');

/** The shelf first: the joints of the part name what is on it. */
async function findAll(storage: PartStorage): Promise<[readonly OwnFilament[], Found]> {
  if ((await storage.keys()).length === 0) return [[], { filaments: [], setAside: [] }];
  const { findShelf, findSaved } = await reader();
  const shelf = await findShelf(storage);
  putOnShelf(shelf);
  return [shelf, await findSaved(storage)];
}

/** The joint that was open last time, where this part still has it. */
function reopenJoint(): void {
  const last = readOpenJoint(browserStorage());
  const { part, selectJoint } = useSession.getState();
  if (last !== undefined && part.joints.some(({ id }) => id === last)) selectJoint(last);
}

function keepChanges(storage: PartStorage, found: readonly OwnFilament[]): void {
  let onDisk = found;
  let isTaking = false;
  async function heard(): Promise<void> {
    useKeeping.setState({ savedElsewhere: true });
    const saved = await reader()
      .then(({ shelfNow }) => shelfNow(storage))
      .catch(() => undefined);
    if (saved === undefined) return;
    // What another window saved is not a change here, and saving it again would put this part over the other's.
    isTaking = true;
    useSession.getState().takeOwn(saved);
    isTaking = false;
  }
  const windows = listenToOtherWindows(() => void heard());
  const write = async (part: Parameters<Saver['save']>[0]) => {
    const { own } = useSession.getState();
    // The part first, which brings along the filaments that it uses: it is kept where the shelf has grown too large to be.
    await savePart(storage, part);
    if (own !== onDisk) await saveShelf(storage, own);
    onDisk = own;
    windows.tellSaved();
    useKeeping.setState({ savedElsewhere: false });
  };
  const saver = createSaver(write, (kept) => useKeeping.setState({ kept }));
  useSession.subscribe((now, before) => {
    if (now.part !== before.part && !isTaking) saver.save(now.part);
    if (now.current !== before.current && now.current !== undefined) keepOpenJoint(browserStorage(), now.current);
  });
  // A page that is put away may never come back; both events are needed, since phones send only the second.
  const flush = () => void saver.flush();
  window.addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', flush);
}

/** Puts what another window saved in the place of this part; it can be undone. */
export async function openSavedElsewhere(storage: PartStorage, said: string): Promise<void> {
  const saved = await (await reader()).savedNow(storage);
  const { own, replacePart } = useSession.getState();
  if (saved !== undefined) replacePart(saved.part, said, withUnknown(own, saved.filaments));
  useKeeping.setState({ savedElsewhere: false });
}

/** Lets go of something that was set aside. */
export async function letGo(storage: PartStorage, key: string): Promise<void> {
  await (await reader()).dropSetAside(storage, key);
  useKeeping.setState((state) => ({ setAside: state.setAside.filter((one) => one.key !== key) }));
}
