import { openFile } from '../../app/openFile.ts';
import { QuietButton } from '../../app/QuietButton.tsx';
import { useChooser } from '../../app/useChooser.tsx';
import { OWN_ACTIONS } from '../../text/ownText.ts';
import { addressOf } from '../route.ts';

async function take(file: File): Promise<void> {
  const id = await openFile(file);
  if (id !== undefined) location.hash = addressOf(id);
}

/** Opens a file of filaments; one dropped anywhere on the page is taken as well. */
export function TakeFile() {
  const { chooser, open } = useChooser({ label: OWN_ACTIONS.chooser, accept: '.json,application/json', take });
  return (
    <>
      <QuietButton onClick={open}>{OWN_ACTIONS.open}</QuietButton>
      {chooser}
    </>
  );
}
