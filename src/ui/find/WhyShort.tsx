import type { Failed, FindAnswer } from '../../core/find/findAnswer.ts';
import { bothCounts, bothCountsSaid, reasonText, WHY, whyHead } from '../text/findWhyText.ts';
import { MissActions, missSaid, type MissProps } from './MissLine.tsx';

interface Props extends Omit<MissProps, 'miss'> {
  readonly answer: FindAnswer;
  /** Where the misses stand in the place of the list, they are not told twice. */
  readonly withMisses: boolean;
}

/** How many fall short of one thing alone, solid, and with others too, light. */
function Bar({
  alone,
  withOthers,
  most,
}: {
  readonly alone: number;
  readonly withOthers: number;
  readonly most: number;
}) {
  const [solid, light] = [(100 * alone) / most, (100 * withOthers) / most];
  return (
    <svg className="why-bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
      <rect className="with-others" x={solid} width={light} height="10" />
      <rect className="alone" width={alone > 0 ? Math.max(solid, 0.8) : 0} height="10" />
    </svg>
  );
}

function Reason({ failed, most, props }: { readonly failed: Failed; readonly most: number; readonly props: Props }) {
  const { reason, alone, withOthers, nearest } = failed;
  const { withMisses, answer: _answer, ...of } = props;
  return (
    <li className="why">
      <span>{reasonText(reason)}</span>
      <Bar alone={alone} withOthers={withOthers} most={most} />
      <span className="r">
        <span aria-hidden="true">{bothCounts(alone, withOthers)}</span>
        <span className="vh">{bothCountsSaid(alone, withOthers)}</span>
      </span>
      {withMisses && nearest && (
        <p>
          {WHY.nearest} {missSaid(nearest, of)}. <MissActions miss={nearest} {...of} />
        </p>
      )}
    </li>
  );
}

/** Why the others fell short: how often each reason, and what came nearest. */
export function WhyShort(props: Props) {
  const { tried, impossible, meets, failed, isDone } = props.answer;
  if (failed.length === 0) return null;
  const most = Math.max(...failed.map(({ alone, withOthers }) => alone + withOthers));
  const head = whyHead(tried - impossible - meets, isDone);
  return (
    <section className="why-short" aria-label={head}>
      <h3 className="h">
        {head}
        <span className="aside">{WHY.aside}</span>
      </h3>
      <ul>
        {failed.map((one) => (
          <Reason key={one.reason} failed={one} most={most} props={props} />
        ))}
      </ul>
    </section>
  );
}
