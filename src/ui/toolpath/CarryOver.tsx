import { useToolpaths } from '../../store/toolpaths.ts';
import { CARRY } from '../text/toolpathBoxText.ts';
import type { Carried } from './useCarried.ts';

/** Takes the sections of the part that was checked under Mesh, or goes back to those found in the layers. */
export function CarryOver({ carried }: { readonly carried: Carried | undefined }) {
  const { values, change } = useToolpaths();
  if (carried === undefined) return <p className="small">{CARRY.none}</p>;
  const { part, places } = carried;
  if (places === undefined) return null;
  if (places.length === 0) return <p className="small">{CARRY.other(part)}</p>;
  const { isCarried } = values;
  const turn = () => change({ ...values, isCarried: !isCarried }, isCarried ? CARRY.given : CARRY.taken(part));
  return (
    <div className="row carry">
      {isCarried && <span>{CARRY.now(part)}</span>}
      <button type="button" className="b" onClick={turn}>
        {isCarried ? CARRY.back : CARRY.take(places.length, part)}
      </button>
    </div>
  );
}
