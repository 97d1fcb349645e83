import { gradeOf } from '../../core/inspect/verdicts.ts';
import type { Cure } from '../../core/inspect/cure.ts';
import { useChecking } from '../../store/checking.ts';
import { cureCosts, cureDoes, cureHeading, curesHeading } from '../text/cureText.ts';
import { CURED, MESH, usedText } from '../text/meshText.ts';
import { useChecked } from './checked.ts';
import { CureAxis } from './CureAxis.tsx';
import { useCures } from './useCures.ts';

interface RowProps {
  readonly cure: Cure;
  readonly rank: number;
  readonly canUse: boolean;
}

function CureRow({ cure, rank, canUse }: RowProps) {
  const { part, values, unit } = useChecked();
  const change = useChecking((state) => state.change);
  const head = cureHeading(cure, unit);
  const use = () => change({ ...values, as: cure.as, asked: cure.asked }, usedText(cure, values, unit));
  return (
    <article className="way" aria-label={head}>
      <span className="rank">{rank}</span>
      <h3>{head}</h3>
      <button
        className="b"
        type="button"
        aria-label={`${MESH.use}: ${head}`}
        aria-disabled={canUse ? undefined : true}
        onClick={canUse ? use : undefined}
      >
        {MESH.use}
      </button>
      <CureAxis cure={cure} />
      <p>
        {cureDoes(cure)} <span className="costs">{cureCosts(cure, part.facts.box, unit)}</span>
      </p>
    </article>
  );
}

/** What would help all thin sections at once, the most helpful first, each with what it costs. */
export function Cures() {
  const { judged } = useChecked();
  const { cures, isOld } = useCures();
  const allPass = judged.every((one) => gradeOf(one) === 'pass');
  return (
    <div className="ways" aria-busy={cures === undefined || isOld}>
      <section aria-label={MESH.cures}>
        <h2 className="h">
          {cures === undefined ? MESH.cures : curesHeading(cures, judged)}
          <span className="aside">{cures?.length === 0 ? '' : MESH.curesAside}</span>
        </h2>
        {cures === undefined ? (
          <p className="none looking">{CURED.looking}</p>
        ) : (
          cures.map((cure, i) => <CureRow key={cureKey(cure)} cure={cure} rank={i + 1} canUse={!isOld} />)
        )}
        {cures?.length === 0 && !allPass && <p className="none">{CURED.none}</p>}
      </section>
    </div>
  );
}

const cureKey = ({ change, as }: Cure) => JSON.stringify([change, as.profile.lineWidth]);
