import { useState } from 'react';
import { findFilament } from '../../core/material/shelf.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import type { Joint } from '../../core/design/joint.ts';
import { useSession } from '../../store/session.ts';
import { rowName } from '../text/filamentsText.ts';
import { asTabbed, NUMBERS, usedText, takeItText } from '../text/filamentText.ts';

/** Copy the numbers; make the open joint of this filament. */
export function FilamentActions({ row, joint }: { readonly row: WholeFilament; readonly joint: Joint | undefined }) {
  const [said, setSaid] = useState('');
  const changeJoint = useSession((state) => state.changeJoint);

  function copy(): void {
    // A page that was not served safely has no clipboard at all.
    const clipboard = navigator.clipboard as Clipboard | undefined;
    const done = clipboard?.writeText(asTabbed(row)) ?? Promise.reject(new Error('none'));
    void done.then(
      () => setSaid(NUMBERS.copied),
      () => setSaid(NUMBERS.notCopied),
    );
  }

  const isOther = joint !== undefined && row.printable && joint.profile.filament !== row.id;
  return (
    <div className="files">
      <button className="b" type="button" onClick={copy}>
        {NUMBERS.copy}
      </button>
      {isOther && (
        <button
          className="b"
          type="button"
          onClick={() => {
            const was = findFilament(joint.profile.filament)?.name ?? joint.profile.filament;
            const next = { ...joint, profile: { ...joint.profile, filament: row.id } };
            changeJoint(next, usedText(joint.name, rowName(row), was));
          }}
        >
          {takeItText(joint.name)}
        </button>
      )}
      <output>{said}</output>
    </div>
  );
}
