import { EMPTY_FIND, emptyText } from '../text/emptyPartText.ts';
import { CHOOSE } from '../text/shellText.ts';
import { ADDITIONS } from './additions.ts';
import { useChoosing } from './choosing.ts';
import { add } from './newJoints.ts';
import { Pictogram } from './Pictogram.tsx';

const FINDER = 'find-a-first-joint';

/** Stands in the place of the joints when the part has none. */
export function EmptyPart({ partName }: { partName: string }) {
  const { big, small } = emptyText(partName);
  const open = useChoosing((state) => state.open);
  return (
    <section className="whole empty" aria-label="Nothing here yet">
      <p className="big">{big}</p>
      <p>{small}</p>
      <div className="kinds">
        {ADDITIONS.map((addition) => (
          <button key={addition.id} className="kind" type="button" onClick={() => add(addition)}>
            <span className="room">
              <Pictogram family={addition.family} />
            </span>
            <span>{addition.words}</span>
          </button>
        ))}
      </div>
      <p className="or">
        <button id={FINDER} className="b" type="button" onClick={() => open('what is found', FINDER)}>
          {CHOOSE.find}
        </button>{' '}
        {EMPTY_FIND}
      </p>
    </section>
  );
}
