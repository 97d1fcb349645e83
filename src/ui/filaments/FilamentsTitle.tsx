import type { Assessment } from '../../core/design/assessment.ts';
import { KeptCell, MarksCell } from '../app/TitleCells.tsx';
import { movementWords } from '../text/filamentsText.ts';
import { usedByText } from '../text/filamentText.ts';
import { percent } from '../text/numbers.ts';

interface Props {
  readonly what: { readonly name: string; readonly says: string };
  readonly caution: string;
  readonly against: Assessment | undefined;
  /** How many joints of the part are of it. */
  readonly used?: number;
}

/** The block at the foot of this place: what is shown, how far to trust it, and the joint it is set against. */
export function FilamentsTitle({ what, caution, against, used }: Props) {
  return (
    <footer className="title of-filaments">
      <div className="what">
        <small>{what.name}</small>
        {what.says}
        {used !== undefined && `; used by ${usedByText(used)}`}
      </div>
      <MarksCell className="key-marks" />
      <KeptCell className="where end" />
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
