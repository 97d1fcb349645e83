import type { Joint } from '../../core/design/joint.ts';
import { silhouetteOf } from '../../core/design/silhouette.ts';
import { assessOnce } from '../joints/assessOnce.ts';
import { Thumbnail } from '../joints/Thumbnail.tsx';

/** The silhouette of a joint, life size: it needs the network of its kind, which the list does not wait for. */
export default function LifeSizePicture({ joint }: { readonly joint: Joint }) {
  const assessed = assessOnce(joint);
  return assessed.ok ? <Thumbnail outline={silhouetteOf(assessed.value)} /> : null;
}
