import { memo } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { useSession } from '../../store/session.ts';
import { NameField } from '../app/NameField.tsx';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { SAID } from '../text/shellText.ts';
import { REFUSED_TEXT, stripText } from '../text/stripText.ts';
import { outlineOf } from './outlineOf.ts';
import { Pictogram } from './Pictogram.tsx';
import { useBestKnown } from './solvedAnswers.ts';
import { Thumbnail } from './Thumbnail.tsx';
import { useInSight } from './useInSight.ts';

interface Props {
  readonly joint: Joint;
  readonly place: number;
  readonly isCurrent: boolean;
  readonly onSelect: (id: string) => void;
}

/** One joint in the strip: its number, its life-size silhouette, its name and its verdict; the open one is renamed here. */
export const JointStripCell = memo(function JointStripCell({ joint, place, isCurrent, onSelect }: Props) {
  const cell = useInSight<HTMLLIElement>(isCurrent);
  const renameJoint = useSession((state) => state.renameJoint);
  const { id, name, family } = joint;
  const assessed = useBestKnown(joint);
  const outline = assessed.ok ? outlineOf(assessed.value) : [];
  const grade = assessed.ok ? assessed.value.verdict.grade : 'fail';
  return (
    <li className="jt" ref={cell}>
      <button type="button" aria-current={isCurrent ? 'true' : undefined} onClick={() => onSelect(id)}>
        <span className="n">{place}</span>
        <span className="room">
          {outline.length > 0 ? <Thumbnail outline={outline} /> : <Pictogram family={family} />}
        </span>
        <b>{name}</b>
        <span className={`st ${grade}`}>
          <VerdictShape grade={grade} />
          {assessed.ok ? stripText(assessed.value) : REFUSED_TEXT}
        </span>
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
