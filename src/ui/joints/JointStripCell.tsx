import { memo } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { useSession } from '../../store/session.ts';
import { NameField } from '../app/NameField.tsx';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { SAID } from '../text/shellText.ts';
import { COMING_TEXT, NOT_COME_TEXT, REFUSED_TEXT, stripText } from '../text/stripText.ts';
import { useKindCome, useKindsCome } from './kindsCome.ts';
import { outlineOf } from './outlineOf.ts';
import { Pictogram } from './Pictogram.tsx';
import { useBestKnown } from './solvedAnswers.ts';
import { Thumbnail } from './Thumbnail.tsx';
import { useInSight } from './useInSight.ts';

interface OfJoint {
  readonly joint: Joint;
}

interface Props extends OfJoint {
  readonly place: number;
  readonly isCurrent: boolean;
  readonly onSelect: (id: string) => void;
}

/** Its silhouette, life size, or the sign of its kind where it has no outline. */
function Figure({ joint }: OfJoint) {
  const assessed = useBestKnown(joint);
  const outline = assessed.ok ? outlineOf(assessed.value) : [];
  return outline.length > 0 ? <Thumbnail outline={outline} /> : <Pictogram family={joint.family} />;
}

function Standing({ joint }: OfJoint) {
  const assessed = useBestKnown(joint);
  const grade = assessed.ok ? assessed.value.verdict.grade : 'fail';
  return (
    <span className={`st ${grade}`}>
      <VerdictShape grade={grade} />
      {assessed.ok ? stripText(assessed.value) : REFUSED_TEXT}
    </span>
  );
}

/** In the room of a verdict until the kind of the joint has come. */
function Awaited() {
  const hasFailed = useKindsCome(({ come }) => come === 'failed');
  return <span className="st">{hasFailed ? NOT_COME_TEXT : COMING_TEXT}</span>;
}

/** One joint in the strip: its number, its figure, its name and its verdict; the open one is renamed here. */
export const JointStripCell = memo(function JointStripCell({ joint, place, isCurrent, onSelect }: Props) {
  const cell = useInSight<HTMLLIElement>(isCurrent);
  const renameJoint = useSession((state) => state.renameJoint);
  const { id, name, family } = joint;
  const hasCome = useKindCome(family);
  return (
    <li className="jt" ref={cell}>
      <button type="button" aria-current={isCurrent ? 'true' : undefined} onClick={() => onSelect(id)}>
        <span className="n">{place}</span>
        <span className="room">{hasCome ? <Figure joint={joint} /> : <Pictogram family={family} />}</span>
        <b>{name}</b>
        {hasCome ? <Standing joint={joint} /> : <Awaited />}
      </button>
      {isCurrent && (
        <NameField
          label="Name of this joint"
          name={name}
          onRename={(next) => renameJoint(id, next, SAID.renamed(next, name))}
        />
      )}
    </li>
  );
});
