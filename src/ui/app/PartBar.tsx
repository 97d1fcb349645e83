import { useRef, type ChangeEvent } from 'react';
import { writePart } from '../../files/partText.ts';
import { demoPart } from '../../store/demoPart.ts';
import { useSession } from '../../store/session.ts';
import { NEW_PART_NAME, partFileName, SAID } from '../text/shellText.ts';
import { CopyLink } from './CopyLink.tsx';
import { download } from './download.ts';
import { openFile } from './openFile.ts';
import { QuietButton } from './QuietButton.tsx';

function exportPart(): void {
  const { part } = useSession.getState();
  download(partFileName(part.name), writePart(part));
}

function beginNewPart(): void {
  const { part, replacePart } = useSession.getState();
  replacePart({ name: NEW_PART_NAME, invented: false, joints: [] }, SAID.newPart(part.name));
}

function openDemo(): void {
  const { part, replacePart } = useSession.getState();
  replacePart(demoPart(), SAID.demoOpened(part.name));
}

function onChosen(event: ChangeEvent<HTMLInputElement>): void {
  const file = event.target.files?.[0];
  if (file !== undefined) void openFile(file);
  // So that choosing the same file again is noticed.
  event.target.value = '';
}

/** What can be done with the part as a whole. */
export function PartBar() {
  const lastDone = useSession((state) => state.past.at(-1)?.said);
  const lastUndone = useSession((state) => state.future[0]?.said);
  const undo = useSession((state) => state.undo);
  const redo = useSession((state) => state.redo);
  const chooser = useRef<HTMLInputElement>(null);

  return (
    <fieldset className="acts">
      <legend className="vh">Part</legend>
      <QuietButton cannot={lastDone === undefined && 'nothing to undo'} hint={lastDone} onClick={undo}>
        Undo
      </QuietButton>
      <QuietButton cannot={lastUndone === undefined && 'nothing to redo'} hint={lastUndone} onClick={redo}>
        Redo
      </QuietButton>
      <QuietButton onClick={beginNewPart}>New part</QuietButton>
      <QuietButton onClick={openDemo}>Open demo</QuietButton>
      <QuietButton onClick={exportPart}>Export</QuietButton>
      <QuietButton onClick={() => chooser.current?.click()}>Import</QuietButton>
      <input
        ref={chooser}
        className="vh"
        type="file"
        accept=".json,application/json"
        aria-label="Part file to import"
        tabIndex={-1}
        onChange={onChosen}
      />
      <CopyLink />
    </fieldset>
  );
}
