import { useSession } from '../../../store/session.ts';
import type { Joint } from '../../../core/design/joint.ts';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Sentence } from '../../controls/Sentence.tsx';
import { SolverTrouble } from '../../joints/SolverTrouble.tsx';
import { useSolved } from '../../joints/useSolved.ts';
import { kindText } from '../../text/kindText.ts';
import { WORKING } from '../../text/workingText.ts';
import { LessonTitle } from '../LessonTitle.tsx';
import { lessonAddress, type LessonAddress } from '../route.ts';
import './working.css';
import { WorkingOfJoint } from './WorkingOfJoint.tsx';

/** Which joint is worked out: any of the part. */
function Asks({ joint }: { readonly joint: Joint }) {
  const joints = useSession((state) => state.part.joints);
  const spec = {
    key: 'joint',
    label: WORKING.joint,
    value: joint.id,
    options: joints.map(({ id, name }) => ({ value: id, text: name })),
    take: (id: string) => {
      location.hash = lessonAddress('working', id);
      return undefined;
    },
  };
  return (
    <Sentence className="working-says">
      {WORKING.how} <ChoiceField spec={spec} /> {WORKING.comesBy}
    </Sentence>
  );
}

function OpenJoint({ joint }: { readonly joint: Joint }) {
  const selectJoint = useSession((state) => state.selectJoint);
  return (
    <p className="working-acts">
      <button className="b" type="button" onClick={() => window.print()}>
        {WORKING.print}
      </button>
      <a className="b" href="#joints" onClick={() => selectJoint(joint.id)}>
        {WORKING.openJoint}
      </a>
    </p>
  );
}

function Worked({ joint }: { readonly joint: Joint }) {
  const { assessed, isWorking, trouble, tryAgain } = useSolved(joint);
  return (
    <>
      <main className="main lesson working">
        <Asks joint={joint} />
        <OpenJoint joint={joint} />
        {isWorking && <p className="refusal">{WORKING.solving}</p>}
        {trouble !== undefined && <SolverTrouble message={trouble} onTryAgain={tryAgain} />}
        {assessed.ok ? (
          <WorkingOfJoint assessment={assessed.value} />
        ) : (
          <ul className="refusal" role="alert">
            {assessed.problems.map(({ message }) => (
              <li key={message}>{message}</li>
            ))}
          </ul>
        )}
      </main>
      <LessonTitle
        what={{ name: WORKING.title, says: joint.name }}
        setUp={{ name: WORKING.of, says: kindText(joint.family).name }}
        caution={WORKING.caution}
      />
    </>
  );
}

/** The working of the open joint, or of the one that the address names. */
export default function WorkingPage({ address }: { readonly address: LessonAddress }) {
  const joints = useSession((state) => state.part.joints);
  const current = useSession((state) => state.current);
  const joint = joints.find(({ id }) => id === address.of) ?? joints.find(({ id }) => id === current);
  if (joint) return <Worked key={joint.id} joint={joint} />;
  return (
    <main className="main lesson working">
      <p>
        {WORKING.noJoint} <a href="#joints">{WORKING.toJoints}</a>
      </p>
    </main>
  );
}
