/** Writing a link and putting it where it can be pasted: comes after the first screen, with what writes links. */
import type { Joint } from '../../core/design/joint.ts';
import { withBent } from '../../files/jointLinkText.ts';
import { writeOwnJointLink } from '../../files/ownLink.ts';
import { useSession } from '../../store/session.ts';

/** A link that was written, and whether the clipboard took it. */
export interface CopiedLink {
  readonly joint: Joint;
  readonly link: string;
  readonly taken: boolean;
}

/** Links to the open joint as it stands on the sheet, and tries to copy it. */
export async function linkOnClipboard(joint: Joint): Promise<CopiedLink> {
  const page = location.href.slice(0, location.href.length - location.hash.length).replace(/#$/, '');
  const link = `${page}#${withBent(writeOwnJointLink(joint), useSession.getState().bent)}`;
  const clipboard = navigator.clipboard as Clipboard | undefined;
  const writing = clipboard?.writeText(link) ?? Promise.reject(new Error('no clipboard'));
  const taken = await writing.then(
    () => true,
    () => false,
  );
  return { joint, link, taken };
}
