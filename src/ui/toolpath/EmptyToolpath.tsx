import { ChooseButton } from '../check/DropCell.tsx';
import { CHECK } from '../text/checkText.ts';
import { TOOLPATH, TOOLPATH_CHOOSER } from '../text/toolpathText.ts';
import { SAMPLE_NAME, sampleToolpath } from './sampleToolpath.ts';
import { checkFile, useToolpathCheck } from './toolpathCheck.ts';

function trySample(): void {
  checkFile(new File([sampleToolpath()], SAMPLE_NAME, { type: 'text/plain' }), true);
}

/** Before anything has been dropped: what can be, and a toolpath of ours to try. */
export function EmptyToolpath() {
  const isBusy = useToolpathCheck(({ work }) => work !== undefined);
  return (
    <section className="empty check-empty" aria-label={TOOLPATH.title}>
      <h2 className="big">{TOOLPATH.none}</h2>
      <p>{TOOLPATH.noneMore}</p>
      <div className="row">
        <ChooseButton chooser={TOOLPATH_CHOOSER}>{CHECK.choose}</ChooseButton>
        <button
          className="b"
          type="button"
          aria-disabled={isBusy || undefined}
          onClick={isBusy ? undefined : trySample}
        >
          {TOOLPATH.sample}
        </button>
      </div>
    </section>
  );
}
