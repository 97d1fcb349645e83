import { useState } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { writeJointLink } from '../../files/jointLinkText.ts';
import { useKindCome } from '../joints/kindsCome.ts';
import { useCurrentJoint } from '../joints/useCurrentJoint.ts';
import { QuietButton } from './QuietButton.tsx';

function linkTo(joint: Joint): string {
  const page = location.href.slice(0, location.href.length - location.hash.length).replace(/#$/, '');
  return `${page}#${writeJointLink(joint)}`;
}

/** Copies a link that carries the open joint; where the clipboard is refused, shows the link to be copied by hand. */
export function CopyLink() {
  const joint = useCurrentJoint();
  // Without its kind a link could not say how the joint is measured.
  const hasCome = useKindCome(joint?.family ?? '');
  // What was copied, and whether the clipboard took it; of no interest once the joint has changed.
  const [copied, setCopied] = useState<{ readonly joint: Joint; readonly taken: boolean }>();
  const shown = copied !== undefined && copied.joint === joint ? copied : undefined;

  function copy(): void {
    if (joint === undefined) return;
    const clipboard = navigator.clipboard as Clipboard | undefined;
    const writing = clipboard?.writeText(linkTo(joint)) ?? Promise.reject(new Error('no clipboard'));
    writing.then(
      () => setCopied({ joint, taken: true }),
      () => setCopied({ joint, taken: false }),
    );
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
          value={linkTo(shown.joint)}
          size={24}
          onFocus={(event) => event.target.select()}
        />
      )}
    </>
  );
}
