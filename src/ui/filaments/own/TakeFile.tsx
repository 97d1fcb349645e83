import { useRef, type ChangeEvent } from 'react';
import { openFile } from '../../app/openFile.ts';
import { QuietButton } from '../../app/QuietButton.tsx';
import { OWN_ACTIONS } from '../../text/ownText.ts';
import { addressOf } from '../route.ts';

async function take(file: File): Promise<void> {
  const id = await openFile(file);
  if (id !== undefined) location.hash = addressOf(id);
}

function onChosen(event: ChangeEvent<HTMLInputElement>): void {
  const file = event.target.files?.[0];
  if (file !== undefined) void take(file);
  // So that choosing the same file again is noticed.
  event.target.value = '';
}

/** Opens a file of filaments; one dropped anywhere on the page is taken as well. */
export function TakeFile() {
  const chooser = useRef<HTMLInputElement>(null);

  return (
    <>
      <QuietButton onClick={() => chooser.current?.click()}>{OWN_ACTIONS.open}</QuietButton>
      <input
        ref={chooser}
        className="vh"
        type="file"
        accept=".json,application/json"
        aria-label={OWN_ACTIONS.chooser}
        tabIndex={-1}
        onChange={onChosen}
      />
    </>
  );
}
