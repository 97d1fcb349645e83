import { judgedNotes } from '../text/inspectText.ts';
import { NOTED } from '../text/meshText.ts';
import { useChecked } from './checked.ts';

const NOTES_ID = 'noted-of-section';

/** Goes to the notes, all of them in sight. */
export function showNotes(): void {
  const notes = document.getElementById(NOTES_ID);
  notes?.querySelector('details')?.setAttribute('open', '');
  notes?.focus();
}

function List({ notes }: { readonly notes: readonly string[] }) {
  return (
    <ul>
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}

/** What is noted of the thin section that is looked at: first where its figures are not quite its own. */
export function NotedOf() {
  const { judged, chosen, unit } = useChecked();
  const one = judged.find(({ flexure }) => flexure.number === chosen);
  const { first, more } = one ? judgedNotes(one, unit) : { first: [], more: [] };
  if (first.length + more.length === 0) return null;
  return (
    <section className="noted" id={NOTES_ID} tabIndex={-1} aria-label={NOTED.of(chosen)}>
      <h2 className="h">{NOTED.of(chosen)}</h2>
      {first.length > 0 && <List notes={first} />}
      {more.length > 0 && (
        <details>
          <summary>{NOTED.more(more.length, first.length === 0)}</summary>
          <List notes={more} />
        </details>
      )}
    </section>
  );
}
