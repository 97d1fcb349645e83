import type { Joint } from '../../../core/design/joint.ts';
import type { Letter } from '../../../core/lesson/demos/demo.ts';
import { useSession } from '../../../store/session.ts';
import { COMPARE } from '../../text/compareText.ts';

interface Props {
  readonly letter: Letter;
  readonly joint: Joint;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly onShift: (by: -1 | 1) => void;
}

/** Letter and name of a column, and what can be done with it. */
export function CompareHead({ letter, joint, isFirst, isLast, onShift }: Props) {
  const selectJoint = useSession((state) => state.selectJoint);
  return (
    <div className="compare-head">
      <span className="compare-letter" aria-hidden="true">
        {letter}
      </span>
      <a href="#joints" aria-label={`${COMPARE.open}: ${joint.name}`} onClick={() => selectJoint(joint.id)}>
        {joint.name}
      </a>
      <span className="compare-shift">
        {([-1, 1] as const).map((by) => {
          const says = by < 0 ? COMPARE.left : COMPARE.right;
          const cannot = by < 0 ? isFirst : isLast;
          return (
            <button
              key={by}
              type="button"
              className="b quiet"
              aria-label={`${joint.name}: ${says}`}
              title={says}
              aria-disabled={cannot ? true : undefined}
              onClick={() => !cannot && onShift(by)}
            >
              <svg viewBox="0 0 12 12" aria-hidden="true">
                <path d={by < 0 ? 'M8 2 4 6l4 4' : 'M4 2l4 4-4 4'} />
              </svg>
            </button>
          );
        })}
      </span>
    </div>
  );
}
