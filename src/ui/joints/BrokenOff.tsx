import { TRY_AGAIN } from '../text/solverText.ts';
import { brokeOff } from '../text/sureText.ts';

interface Props {
  /** Why it broke off; nothing is shown where it did not. */
  readonly trouble: string | undefined;
  readonly again: () => void;
}

/** What was being worked out broke off, and can be begun again. */
export function BrokenOff({ trouble, again }: Props) {
  if (trouble === undefined) return null;
  return (
    <p className="small" role="alert">
      {brokeOff(trouble)}{' '}
      <button className="b" type="button" onClick={again}>
        {TRY_AGAIN}
      </button>
    </p>
  );
}
