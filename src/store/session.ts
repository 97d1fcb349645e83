import { create } from 'zustand';
import type { Joint, Part } from '../core/design/joint.ts';
import { demoPart } from './demoPart.ts';
import * as edits from './edits.ts';
import { type EditState, opened } from './state.ts';

export interface Session extends EditState {
  /** How far the drawing and the curves show it moved, as a share of the wanted amount; below 0 the other way. */
  readonly bent: number;

  /** Scale of the drawing on the sheet, as “10 : 1”; empty until it is drawn. */
  readonly scale: string;

  readonly open: (part: Part) => void;
  readonly bend: (share: number) => void;
  readonly showScale: (scale: string) => void;
  readonly selectJoint: (id: string) => void;
  readonly changeJoint: (next: Joint, said: string, gesture?: string) => void;
  readonly endGesture: () => void;
  readonly addJoint: (joint: Joint, said: string) => void;
  readonly duplicateJoint: (id: string, name: string, said: string) => void;
  readonly renameJoint: (id: string, name: string, said: string) => void;
  readonly removeJoint: (id: string, said: string) => void;
  readonly moveJoint: (id: string, by: number, said: string) => void;
  readonly renamePart: (name: string, said: string) => void;
  readonly replacePart: (part: Part, said: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The one store of what is on screen; what each action does is in `edits.ts`. */
export const useSession = create<Session>()((set) => ({
  ...opened(demoPart()),
  bent: 1,
  scale: '',
  open: (part) => set(opened(part)),
  bend: (share) => set({ bent: share }),
  showScale: (scale) => set({ scale }),
  selectJoint: (id) => set((state) => edits.selectJoint(state, id)),
  changeJoint: (next, said, gesture) => set((state) => edits.changeJoint(state, next, said, gesture)),
  endGesture: () => set(edits.endGesture),
  addJoint: (joint, said) => set((state) => edits.addJoint(state, joint, said)),
  duplicateJoint: (id, name, said) => set((state) => edits.duplicateJoint(state, id, name, said)),
  renameJoint: (id, name, said) => set((state) => edits.renameJoint(state, id, name, said)),
  removeJoint: (id, said) => set((state) => edits.removeJoint(state, id, said)),
  moveJoint: (id, by, said) => set((state) => edits.moveJoint(state, id, by, said)),
  renamePart: (name, said) => set((state) => edits.renamePart(state, name, said)),
  replacePart: (part, said) => set((state) => edits.replacePart(state, part, said)),
  undo: () => set(edits.undo),
  redo: () => set(edits.redo),
}));
