import { assessOnce } from './assessOnce.ts';
import { outlineOf } from './outlineOf.ts';
import { add, ADDITIONS } from './newJoints.ts';
import { Thumbnail } from './Thumbnail.tsx';
import { emptyText } from '../text/shellText.ts';

/** What each addition would look like, life size. */
const SAMPLES = ADDITIONS.map((addition) => ({
  addition,
  assessed: assessOnce(addition.make(addition.name, undefined)),
}));

/** Stands in the place of the joints when the part has none. */
export function EmptyPart({ partName }: { partName: string }) {
  const { big, small } = emptyText(partName);
  return (
    <section className="whole empty" aria-label="Nothing here yet">
      <p className="big">{big}</p>
      <p>{small}</p>
      <div className="kinds">
        {SAMPLES.map(({ addition, assessed }) => (
          <button key={addition.id} className="kind" type="button" onClick={() => add(addition)}>
            <span className="room">{assessed.ok && <Thumbnail outline={outlineOf(assessed.value)} />}</span>
            <span>{addition.words}</span>
          </button>
        ))}
      </div>
    </section>
  );
}
