import { create } from 'zustand';
import type { Joint, Part } from '../core/design/joint.ts';
import { putOnShelf } from '../core/material/shelf.ts';
import type { OwnFilament } from '../core/material/types.ts';
import { demoPart } from './demoPart.ts';
import * as edits from './edits.ts';
import { AS_WANTED, type Shown, shownAfter } from './shown.ts';
import { type EditState, opened } from './state.ts';

export interface Session extends EditState, Shown {
  /** Scale of the drawing on the sheet, as “10 : 1”; empty until it is drawn. */
  readonly scale: string;

  readonly open: (part: Part, own?: readonly OwnFilament[]) => void;
  readonly bend: (share: number) => void;
  readonly showScale: (scale: string) => void;
  readonly selectJoint: (id: string) => void;
  readonly changeJoint: (next: Joint, said: string, gesture?: string) => void;
  readonly endGesture: () => void;
  readonly addJoint: (joint: Joint, said: string, own?: readonly OwnFilament[]) => void;
  readonly duplicateJoint: (id: string, name: string, said: string) => void;
  readonly renameJoint: (id: string, name: string, said: string) => void;
  readonly removeJoint: (id: string, said: string) => void;
  readonly moveJoint: (id: string, by: number, said: string) => void;
  readonly renamePart: (name: string, said: string) => void;
  readonly replacePart: (part: Part, said: string, own?: readonly OwnFilament[]) => void;
  readonly changeOwn: (own: readonly OwnFilament[], said: string, gesture?: string) => void;
  /** What another window has saved. */
  readonly takeOwn: (saved: readonly OwnFilament[]) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The one store of what is on screen; what each action does is in `edits.ts`. */
export const useSession = create<Session>()((set, get) => {
  const edit = (change: (state: EditState) => EditState, shown: Partial<Shown> = {}) =>
    set((state) => {
      const after = change(state);
      // Before anything shows it: whoever assesses a joint finds its filament on the shelf.
      putOnShelf(after.own);
      return { ...after, ...shownAfter(state, after), ...shown };
    });
  return {
    ...opened(demoPart()),
    ...AS_WANTED,
    scale: '',
    open: (part, own = get().own) => {
      putOnShelf(own);
      set({ ...opened(part, own), ...AS_WANTED });
    },
    bend: (share) => set({ bent: share }),
    showScale: (scale) => set({ scale }),
    selectJoint: (id) => edit((state) => edits.selectJoint(state, id)),
    changeJoint: (next, said, gesture) => edit((state) => edits.changeJoint(state, next, said, gesture)),
    endGesture: () => edit(edits.endGesture),
    addJoint: (joint, said, own) => edit((state) => edits.addJoint(state, joint, said, own)),
    duplicateJoint: (id, name, said) => edit((state) => edits.duplicateJoint(state, id, name, said)),
    renameJoint: (id, name, said) => edit((state) => edits.renameJoint(state, id, name, said)),
    removeJoint: (id, said) => edit((state) => edits.removeJoint(state, id, said)),
    moveJoint: (id, by, said) => edit((state) => edits.moveJoint(state, id, by, said)),
    renamePart: (name, said) => edit((state) => edits.renamePart(state, name, said)),
    replacePart: (part, said, own) => edit((state) => edits.replacePart(state, part, said, own), AS_WANTED),
    changeOwn: (own, said, gesture) => edit((state) => edits.changeOwn(state, own, said, gesture)),
    takeOwn: (saved) => edit((state) => edits.takeOwn(state, saved)),
    undo: () => edit(edits.undo),
    redo: () => edit(edits.redo),
  };
});
