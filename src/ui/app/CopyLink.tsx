import { useEffect, useState } from 'react';
import { firstScreenStands } from '../joints/firstScreen.ts';
import { NO_LINK_WRITER } from '../text/shellText.ts';
import { useMessages } from '../../store/messages.ts';
import { useKindCome } from '../joints/kindsCome.ts';
import { useCurrentJoint } from '../joints/useCurrentJoint.ts';
import type { CopiedLink } from './linkOnClipboard.ts';
import { QuietButton } from './QuietButton.tsx';

const writer = () => import('./linkOnClipboard.ts');

/** Some clipboards only open right after a click, so that what writes links has to be there before it. */
function useWriterLater(): void {
  useEffect(() => {
    void firstScreenStands()
      .then(writer)
      .catch(() => undefined);
  }, []);
}

/** Copies a link that carries the open joint; where the clipboard is refused, shows the link to be copied by hand. */
export function CopyLink() {
  const joint = useCurrentJoint();
  // Without its kind a link could not say how the joint is measured.
  const hasCome = useKindCome(joint?.family ?? '');
  // What was copied, and whether the clipboard took it; of no interest once the joint has changed.
  const [copied, setCopied] = useState<CopiedLink>();
  const shown = copied !== undefined && copied.joint === joint ? copied : undefined;
  useWriterLater();

  function copy(): void {
    if (joint === undefined) return;
    void writer()
      .then((late) => late.linkOnClipboard(joint))
      .then(setCopied, () => useMessages.getState().say({ grade: 'fail', text: NO_LINK_WRITER }));
  }

  return (
    <>
      <QuietButton
        cannot={
          joint === undefined ? 'there is no joint to link to' : !hasCome && 'this kind of joint is not loaded yet'
        }
        hint="a link that carries this joint"
        onClick={copy}
      >
        Copy link
      </QuietButton>
      <output>{shown?.taken === true && 'Copied'}</output>
      {shown?.taken === false && (
        <input
          className="name"
          type="text"
          readOnly
          aria-label="Link to this joint, to copy by hand"
          value={shown.link}
          size={24}
          onFocus={(event) => event.target.select()}
        />
      )}
    </>
  );
}
