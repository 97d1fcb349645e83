import type { DrawnBox } from '../../core/inspect/toolpath/drawnPlace.ts';
import type { Place } from '../../core/inspect/toolpath/place.ts';
import { MOST_BOXES, useToolpaths, withoutBox } from '../../store/toolpaths.ts';
import { Sentence } from '../controls/Sentence.tsx';
import { Live } from '../life/Live.tsx';
import { BOXES } from '../text/toolpathBoxText.ts';
import { boxSpec } from './boxSpecs.ts';
import { CarryOver } from './CarryOver.tsx';
import { lookAt } from './lookAt.ts';
import { boxNumber } from './places.ts';
import { useShown } from './shown.ts';
import type { Carried } from './useCarried.ts';

interface BoxProps {
  readonly box: DrawnBox;
  readonly index: number;
  readonly number: number;
  readonly isComing: boolean;
}

function Box({ box, index, number, isComing }: BoxProps) {
  const { unit, judged } = useShown();
  const { values, change } = useToolpaths();
  const field = (name: keyof DrawnBox) => (
    <Live spec={boxSpec({ box, index, number, name }, { values, unit, change })} />
  );
  const remove = () => change(withoutBox(values, index, number), BOXES.removed(number));
  return (
    <li>
      <Sentence className="box-says">
        <span className="num">{number}</span> round x {field('x')}, y {field('y')}, along {field('angle')},{' '}
        {field('length')} long and {field('thickness')} thick, from {field('bottom')} up to {field('top')}.
      </Sentence>
      <div className="row">
        <button type="button" className="b" aria-label={BOXES.look(number)} onClick={() => lookAt(judged, number)}>
          {BOXES.lookShort}
        </button>
        <button type="button" className="b quiet" aria-label={`${BOXES.remove}: ${number}`} onClick={remove}>
          {BOXES.remove}
        </button>
        {isComing && <output>{BOXES.coming}</output>}
      </div>
    </li>
  );
}

interface Props {
  readonly places: readonly Place[];
  readonly missing: readonly Place[];
  readonly trouble: string | undefined;
  readonly carried: Carried | undefined;
  /** Absent once there are too many. */
  readonly onAdd: (() => void) | undefined;
}

/** Sections that are not found but told: carried over from a part, or boxed in by hand. */
export function Boxes({ places, missing, trouble, carried, onAdd }: Props) {
  const { boxes } = useToolpaths((state) => state.values);
  return (
    <section className="boxes" aria-label={BOXES.name}>
      <h2 className="h">
        {BOXES.name}
        <span className="aside">{BOXES.aside}</span>
      </h2>
      <CarryOver carried={carried} />
      <ol>
        {boxes.map((box, i) => {
          const number = boxNumber(places, i);
          const isComing = trouble === undefined && missing.some((place) => place.number === number);
          // A box has no other name than its place in the list.
          // oxlint-disable-next-line react/no-array-index-key
          return <Box key={i} box={box} index={i} number={number} isComing={isComing} />;
        })}
      </ol>
      {trouble !== undefined && (
        <p className="refusal" role="alert">
          {BOXES.trouble(trouble)}
        </p>
      )}
      <button type="button" className="b" aria-disabled={onAdd ? undefined : true} onClick={onAdd}>
        {BOXES.add}
      </button>
      {!onAdd && <p className="small">{BOXES.full(MOST_BOXES)}</p>}
    </section>
  );
}
