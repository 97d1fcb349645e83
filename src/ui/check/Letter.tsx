import { useEffect, useId, useRef, useState } from 'react';
import { download } from '../app/download.ts';
import { COPYING } from '../text/checkText.ts';
import { plainLetter, type LetterSaid } from '../text/letterText.ts';

function copied(text: string): Promise<void> {
  return (navigator.clipboard as Clipboard | undefined)?.writeText(text) ?? Promise.reject(new Error('none'));
}

interface LetterProps {
  readonly said: LetterSaid;
  /** Name of the file to keep it in, where that is offered. */
  readonly file?: string;
}

function Letter({ said, file }: LetterProps) {
  const { heading, opening, items, closing } = said;
  const [answer, setAnswer] = useState('');
  const copy = () =>
    void copied(plainLetter(said)).then(
      () => setAnswer(COPYING.copied),
      () => setAnswer(COPYING.notCopied),
    );
  return (
    <>
      <div className="row">
        <button type="button" className="b" onClick={copy}>
          {COPYING.copy}
        </button>
        <button type="button" className="b" onClick={() => window.print()}>
          {COPYING.print}
        </button>
        {file !== undefined && (
          <button type="button" className="b" onClick={() => download(file, plainLetter(said), 'text/plain')}>
            {COPYING.keep}
          </button>
        )}
        <output>{answer}</output>
      </div>
      <article className="letter" aria-label={heading}>
        <h3>{heading}</h3>
        {opening.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {items.map(({ title, is, please }) => (
          <section key={title} aria-label={title}>
            <h4>{title}</h4>
            {is.map((line) => (
              <p key={line}>{line}</p>
            ))}
            {please.map((line) => (
              <p key={line} className="please">
                {line}
              </p>
            ))}
          </section>
        ))}
        {closing.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </article>
    </>
  );
}

interface Words {
  readonly name: string;
  readonly aside: string;
  readonly open: string;
  readonly close: string;
}

interface Props {
  readonly words: Words;
  /** Put in words once it is asked for. */
  readonly write: () => LetterSaid;
  readonly file?: string;
}

/** What can be said of the file in a letter: to read, copy, print and keep. */
export function LetterBox({ words, write, file }: Props) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isOpen) box.current?.scrollIntoView({ block: 'nearest' });
  }, [isOpen]);
  return (
    <section className="reply" aria-label={words.name}>
      <h2 className="h">
        {words.name}
        <span className="aside">{words.aside}</span>
      </h2>
      <button type="button" className="b" aria-expanded={isOpen} aria-controls={id} onClick={() => setOpen(!isOpen)}>
        {isOpen ? words.close : words.open}
      </button>
      <div id={id} ref={box}>
        {isOpen && <Letter said={write()} {...(file !== undefined && { file })} />}
      </div>
    </section>
  );
}
