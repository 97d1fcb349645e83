import { useState } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { writeJointLink } from '../../files/jointLinkText.ts';
import { useKindCome } from '../joints/kindsCome.ts';
import { useCurrentJoint } from '../joints/useCurrentJoint.ts';
import { QuietButton } from './QuietButton.tsx';

/** A filament of the user's own has to come along, and what writes it is fetched for it. */
async function linkTo(joint: Joint): Promise<string> {
  const page = location.href.slice(0, location.href.length - location.hash.length).replace(/#$/, '');
  if (!joint.profile.filament.startsWith('own-')) return `${page}#${writeJointLink(joint)}`;
  const { writeOwnJointLink } = await import('../../files/ownLink.ts');
  return `${page}#${writeOwnJointLink(joint)}`;
}

/** Copies a link that carries the open joint; where the clipboard is refused, shows the link to be copied by hand. */
export function CopyLink() {
  const joint = useCurrentJoint();
  // Without its kind a link could not say how the joint is measured.
  const hasCome = useKindCome(joint?.family ?? '');
  // What was copied, and whether the clipboard took it; of no interest once the joint has changed.
  const [copied, setCopied] = useState<{ readonly joint: Joint; readonly link: string; readonly taken: boolean }>();
  const shown = copied !== undefined && copied.joint === joint ? copied : undefined;

  function copy(): void {
    if (joint === undefined) return;
    const clipboard = navigator.clipboard as Clipboard | undefined;
    void linkTo(joint).then(async (link) => {
      const writing = clipboard?.writeText(link) ?? Promise.reject(new Error('no clipboard'));
      const taken = await writing.then(
        () => true,
        () => false,
      );
      setCopied({ joint, link, taken });
    });
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
