import { useState } from 'react';
import { useSession } from '../../../store/session.ts';
import { COMPARE, tooFewText } from '../../text/compareText.ts';
import { LessonTitle } from '../LessonTitle.tsx';
import { lessonAddress, noteInAddress, type LessonAddress } from '../route.ts';
import { Choosing } from './Choosing.tsx';
import { chosenIds, idsText } from './chosen.ts';
import './compare.css';
import { Compared } from './Compared.tsx';

/** Up to four joints of the part side by side. */
export default function ComparePage({ address }: { readonly address: LessonAddress }) {
  // An address that comes by a link or by going back begins anew.
  return <Chosen key={address.values.get('of') ?? ''} asked={address.values.get('of')} />;
}

function Chosen({ asked }: { readonly asked: string | null }) {
  const joints = useSession((state) => state.part.joints);
  const current = useSession((state) => state.current);
  const [kept, setKept] = useState(asked);
  const ids = chosenIds(kept, joints, current);
  const choose = (next: readonly string[]) => {
    setKept(idsText(next));
    noteInAddress(lessonAddress('compare', '', { of: idsText(next) }));
  };
  const chosen = ids.flatMap((id) => joints.filter((joint) => joint.id === id));
  return (
    <>
      <main className="main lesson compare">
        <h2>{COMPARE.title}</h2>
        {joints.length < 2 && (
          <p className="compare-few">
            {tooFewText(joints.length)} <a href="#joints">{COMPARE.toJoints}</a>
          </p>
        )}
        {joints.length > 1 && <Choosing joints={joints} ids={ids} onChoose={choose} />}
        {chosen.length > 0 && <Compared joints={chosen} onOrder={choose} />}
      </main>
      <LessonTitle
        what={{ name: COMPARE.title, says: chosen.map(({ name }) => name).join(', ') }}
        setUp={{ name: COMPARE.setUp, says: `${chosen.length} of ${joints.length}` }}
        caution={COMPARE.caution}
      />
    </>
  );
}
