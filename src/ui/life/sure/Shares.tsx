import type { Assessment } from '../../../core/design/assessment.ts';
import type { DoubtAnswer } from '../../../core/design/doubtAnswer.ts';
import { Mark } from '../../app/Mark.tsx';
import { chanceMark, effortMark, shareRows, SHARES, shareText } from '../../text/sureText.ts';
import { ShareBar } from '../ShareBar.tsx';

/** What each cause makes of the doubt about life and about effort: words, and a bar on a rule of one. */
export function Shares({ a, answer }: { readonly a: Assessment; readonly answer: DoubtAnswer }) {
  return (
    <table className="sure-shares">
      <caption>{SHARES.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{SHARES.heads.cause}</th>
          <th scope="col">
            {SHARES.heads.life}
            <Mark kind={chanceMark(answer)} about="life" />
          </th>
          <th scope="col">
            {SHARES.heads.effort}
            <Mark kind={effortMark(answer)} about="effort" />
          </th>
        </tr>
      </thead>
      <tbody>
        {shareRows(a, answer).map(({ text, life, effort }) => (
          <tr key={text}>
            <th scope="row">{text}</th>
            <Cell share={life} />
            <Cell share={effort} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Cell({ share }: { readonly share: number }) {
  return (
    <td>
      {shareText(share)}
      <ShareBar share={share} />
    </td>
  );
}
