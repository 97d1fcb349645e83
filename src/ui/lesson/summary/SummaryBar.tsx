import type { Joint } from '../../../core/design/joint.ts';
import { useSession } from '../../../store/session.ts';
import { SUMMARY } from '../../text/summaryText.ts';
import { lessonAddress } from '../route.ts';

interface Props {
  readonly joints: readonly Joint[];
  /** The one on the sheet. */
  readonly joint: Joint | undefined;
}

/** Over the sheet: which joint, the way to the printer, and the way back. */
export function SummaryBar({ joints, joint }: Props) {
  const selectJoint = useSession((state) => state.selectJoint);
  const back = () => {
    if (joint) selectJoint(joint.id);
    location.hash = '#joints';
  };
  return (
    <div className="page-bar">
      {joint && (
        <button type="button" className="b" onClick={() => window.print()}>
          {SUMMARY.print}
        </button>
      )}
      {joints.length > 0 && (
        <label>
          {SUMMARY.joint}{' '}
          <select
            value={joint?.id ?? ''}
            onChange={(event) => {
              location.hash = lessonAddress('summary', event.target.value);
            }}
          >
            {!joint && <option value="">{SUMMARY.choose}</option>}
            {joints.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <button type="button" className="b quiet" onClick={back}>
        {SUMMARY.back}
      </button>
      <span className="summary-aside">{SUMMARY.paper}</span>
    </div>
  );
}
