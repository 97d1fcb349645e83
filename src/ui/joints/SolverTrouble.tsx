import { brokenOffText, TRY_AGAIN } from '../text/solverText.ts';

interface Props {
  readonly message: string;
  readonly onTryAgain: () => void;
}

/** The solver has broken off: why, and what can be done. */
export function SolverTrouble({ message, onTryAgain }: Props) {
  return (
    <div className="coming">
      <p className="refusal" role="alert">
        {brokenOffText(message)}
      </p>
      <button className="b" type="button" onClick={onTryAgain}>
        {TRY_AGAIN}
      </button>
    </div>
  );
}
