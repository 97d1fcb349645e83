import { useState } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { LETTERS, type Letter } from '../../../core/lesson/demos/demo.ts';
import { isFull } from '../../../store/edits.ts';
import { useSession } from '../../../store/session.ts';
import { QuietButton } from '../../app/QuietButton.tsx';
import { DEMO, lessonJointName, openedFromLesson } from '../../text/lessonDemoText.ts';
import type { DemoWords } from '../../text/lessonDemoWords.ts';
import { partFull } from '../../text/shellText.ts';
import { lessonAddress } from '../route.ts';
import { addressOf, type Shown } from './demoState.ts';

interface Props {
  readonly shown: Shown;
  readonly words: DemoWords;
  readonly answers: readonly Assessment[];
}

/** Adds a joint of the demonstration to the part and goes there. */
function openAsJoint({ joint }: Assessment, words: DemoWords, letter: Letter): void {
  const name = lessonJointName(words.name, letter);
  useSession.getState().addJoint({ ...joint, name }, openedFromLesson(name));
  location.hash = 'joints';
}

/** What can be done with a demonstration: its joints opened, its exercise page, and a link to it. */
export function TakeFurther({ shown, words, answers }: Props) {
  const full = useSession((state) => (isFull(state) ? partFull(state.part.joints.length) : false));
  return (
    <section className="demo-further" aria-label={DEMO.further}>
      <span className="demo-open">
        <span>{DEMO.openAs}:</span>
        {answers.map((a, i) => {
          const letter = LETTERS[i] ?? 'A';
          return (
            <button
              key={letter}
              type="button"
              className="b"
              aria-disabled={full === false ? undefined : true}
              aria-label={`${DEMO.openAs}, ${letter}`}
              title={full === false ? DEMO.openHint(letter) : full}
              onClick={() => full === false && openAsJoint(a, words, letter)}
            >
              {letter}
            </button>
          );
        })}
      </span>
      <a className="b" href={lessonAddress('exercise', shown.id)}>
        {DEMO.exercise}
      </a>
      <CopyDemoLink address={addressOf(shown)} />
    </section>
  );
}

/** Copies the link; where the clipboard is refused it stands there to be copied by hand. */
function CopyDemoLink({ address }: { readonly address: string }) {
  const [copied, setCopied] = useState<{ readonly address: string; readonly link: string; readonly taken: boolean }>();
  const shown = copied?.address === address ? copied : undefined;
  function copy(): void {
    const link = `${location.href.split('#', 1)[0]}${address}`;
    const clipboard = navigator.clipboard as Clipboard | undefined;
    const writing = clipboard?.writeText(link) ?? Promise.reject(new Error('no clipboard'));
    void writing.then(
      () => setCopied({ address, link, taken: true }),
      () => setCopied({ address, link, taken: false }),
    );
  }
  return (
    <span className="demo-copy">
      <QuietButton hint={DEMO.copyHint} onClick={copy}>
        {DEMO.copy}
      </QuietButton>
      <output>{shown?.taken === true && DEMO.copied}</output>
      {shown?.taken === false && (
        <input
          className="name"
          type="text"
          readOnly
          aria-label={DEMO.byHand}
          value={shown.link}
          size={24}
          onFocus={(event) => event.target.select()}
        />
      )}
    </span>
  );
}
