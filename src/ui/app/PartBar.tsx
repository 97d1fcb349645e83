import { writePart } from '../../files/partText.ts';
import { demoPart } from '../../store/demoPart.ts';
import { readable } from '../../store/readable.ts';
import { useSession } from '../../store/session.ts';
import { NEW_PART_NAME, partFileName, SAID } from '../text/shellText.ts';
import { CopyLink } from './CopyLink.tsx';
import { download } from './download.ts';
import { openFile } from './openFile.ts';
import { QuietButton } from './QuietButton.tsx';
import { useChooser } from './useChooser.tsx';

function exportPart(): void {
  const { part } = useSession.getState();
  const name = partFileName(part.name);
  // Where it could not be read back that is said, and nothing is handed out.
  readable(writePart(part)).then(
    (text) => download(name, text),
    () => {},
  );
}

function beginNewPart(): void {
  const { part, replacePart } = useSession.getState();
  replacePart({ name: NEW_PART_NAME, invented: false, joints: [] }, SAID.newPart(part.name));
}

function openDemo(): void {
  const { part, replacePart } = useSession.getState();
  replacePart(demoPart(), SAID.demoOpened(part.name));
}

/** What can be done with the part as a whole. */
export function PartBar() {
  const lastDone = useSession((state) => state.past.at(-1)?.said);
  const lastUndone = useSession((state) => state.future[0]?.said);
  const undo = useSession((state) => state.undo);
  const redo = useSession((state) => state.redo);
  const { chooser, open } = useChooser({
    // In such quotes, as the check of imports would take the last word for one.
    label: `Part file to import`,
    accept: '.json,application/json',
    take: openFile,
  });

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
      <QuietButton onClick={open}>Import</QuietButton>
      {chooser}
      <CopyLink />
    </fieldset>
  );
}
