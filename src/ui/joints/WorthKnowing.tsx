import type { Problem, ProblemCode } from '../../core/problems.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { problemText } from '../text/problemText.ts';

/** The verdict says these in its own sentence. */
const SAID_ABOVE: readonly ProblemCode[] = ['not-whole-lines', 'not-whole-layers', 'softens', 'brittle-cold'];

/** Cautions that do not decide the verdict. */
export function WorthKnowing({ notes, unit }: { readonly notes: readonly Problem[]; readonly unit: LengthUnit }) {
  const shown = notes.filter(({ code }) => !SAID_ABOVE.includes(code));
  if (shown.length === 0) return null;
  return (
    <section className="knowing" aria-label="Worth knowing">
      <h2 className="h">Worth knowing</h2>
      <ul>
        {shown.map((note) => (
          <li key={`${note.code} ${note.field ?? ''}`}>{problemText(note, unit)}</li>
        ))}
      </ul>
    </section>
  );
}
