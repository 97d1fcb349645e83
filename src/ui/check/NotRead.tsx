import { useChoices } from '../../store/choices.ts';
import { VerdictShape } from '../app/VerdictShape.tsx';
import { brokeText, CHECK, refusedText, stoppedText } from '../text/checkText.ts';
import { problemText } from '../text/problemText.ts';
import { ChooseButton, type Chooser } from './DropCell.tsx';
import type { Ended } from './fileCheck.ts';

interface Props {
  readonly ended: Ended<{ readonly file: File }>;
  /** “Refused: this STL cannot be read”. */
  readonly refusedHead: string;
  /** “part”, “toolpath”: what stays on the sheet, where there is one. */
  readonly before: string | undefined;
  readonly chooser: Chooser;
  readonly onAgain: () => void;
  readonly onDismiss: () => void;
}

function useWhy({ ended, refusedHead, before }: Props): { readonly head: string; readonly text: string } {
  const unit = useChoices((state) => state.unit);
  const { file } = ended.asked;
  switch (ended.how) {
    case 'stopped':
      return { head: 'Stopped', text: stoppedText(file.name, ended.found, before) };
    case 'broke':
      return { head: 'It broke off', text: brokeText(file.name, ended.message) };
    case 'refused': {
      const why = ended.problems.map((problem) => problemText(problem, unit)).join(' ');
      return { head: refusedHead, text: refusedText(file.name, file.size, why, before) };
    }
  }
}

/** A file that brought nothing to show: what it is, why, what stays, and what to do. */
export function NotRead(props: Props) {
  const { ended, before, chooser, onAgain, onDismiss } = props;
  const { head, text } = useWhy(props);
  const grade = ended.how === 'stopped' ? 'caution' : 'fail';
  return (
    <section className={`verdict not-read ${grade}`} role="alert" aria-label={head}>
      <h2>
        <VerdictShape grade={grade} />
        {head}
      </h2>
      <p>{text}</p>
      <div className="row">
        {ended.how !== 'refused' && (
          <button className="b" type="button" onClick={onAgain}>
            {CHECK.again}
          </button>
        )}
        <ChooseButton chooser={chooser}>{CHECK.chooseAnother}</ChooseButton>
        {before !== undefined && (
          <button className="b quiet" type="button" onClick={onDismiss}>
            {CHECK.dismiss}
          </button>
        )}
      </div>
    </section>
  );
}
