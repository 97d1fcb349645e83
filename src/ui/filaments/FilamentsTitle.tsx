import type { Assessment } from '../../core/design/assessment.ts';
import { useKeeping } from '../../store/keeping.ts';
import { MarkShape } from '../app/MarkShape.tsx';
import { MARK_KINDS, MARK_SHAPES } from '../app/markShapes.ts';
import { movementWords } from '../text/filamentsText.ts';
import { usedByText } from '../text/filamentText.ts';
import { percent } from '../text/numbers.ts';
import { KEPT_TEXT } from '../text/shellText.ts';

interface Props {
  readonly what: { readonly name: string; readonly says: string };
  readonly caution: string;
  readonly against: Assessment | undefined;
  /** How many joints of the part are of it. */
  readonly used?: number;
}

/** The block at the foot of this place: what is shown, how far to trust it, and the joint it is set against. */
export function FilamentsTitle({ what, caution, against, used }: Props) {
  const kept = useKeeping((state) => state.kept);
  return (
    <footer className="title of-filaments">
      <div className="what">
        <small>{what.name}</small>
        {what.says}
        {used !== undefined && `; used by ${usedByText(used)}`}
      </div>
      <div className="key-marks">
        <small>Marks beside numbers</small>
        {MARK_KINDS.map((kind) => (
          <span key={kind} className="nw key">
            <MarkShape kind={kind} />
            {MARK_SHAPES[kind].says}
          </span>
        ))}
      </div>
      <div className="where end">
        <small>Kept</small>
        <output>{KEPT_TEXT[kept]}</output>
      </div>
      <div className="caution-words last">
        <small>Read this</small>
        {caution}
      </div>
      <div className="against last end">
        <small>Set against</small>
        {against
          ? `${against.joint.name}, ${percent(against.strain.peak)}, ${movementWords(against.joint.movement)}`
          : 'no joint'}
      </div>
    </footer>
  );
}
