import { VerdictShape } from '../app/VerdictShape.tsx';
import { CONFLICT, conflictText } from '../text/filamentsText.ts';
import { SaidWithSources } from './SaidWithSources.tsx';

/** That the evidence disagrees, before any number of ours. */
export function Conflict() {
  return (
    <section className="conflict verdict caution" aria-label="The evidence">
      <h2>
        <VerdictShape grade="caution" />
        {CONFLICT.head}
      </h2>
      <p>
        <SaidWithSources said={conflictText()} />
      </p>
    </section>
  );
}
