import type { Joint } from '../../../core/design/joint.ts';
import { COMPARE } from '../../text/compareText.ts';
import { MOST, toggled } from './chosen.ts';

interface Props {
  readonly joints: readonly Joint[];
  readonly ids: readonly string[];
  readonly onChoose: (ids: readonly string[]) => void;
}

/** Which joints of the part stand side by side. */
export function Choosing({ joints, ids, onChoose }: Props) {
  const isFull = ids.length >= MOST;
  return (
    <fieldset className="compare-choose">
      <legend>{COMPARE.choose}</legend>
      {joints.map(({ id, name }) => {
        const isIn = ids.includes(id);
        const cannot = (isIn && ids.length === 1) || (!isIn && isFull);
        return (
          <label
            key={id}
            className={cannot && !isIn ? 'cannot' : undefined}
            title={cannot && !isIn ? COMPARE.full : undefined}
          >
            <input
              type="checkbox"
              checked={isIn}
              aria-disabled={cannot ? true : undefined}
              onChange={() => !cannot && onChoose(toggled(ids, id))}
            />
            {name}
          </label>
        );
      })}
      <output className="compare-full">{isFull ? COMPARE.full : ''}</output>
    </fieldset>
  );
}
