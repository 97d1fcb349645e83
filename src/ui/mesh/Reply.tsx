import { useEffect, useId, useMemo, useRef, useState } from 'react';
import { replyFor } from '../../core/inspect/reply.ts';
import { MESH, REPLY } from '../text/meshText.ts';
import { replyPlain, replySaid } from '../text/replyText.ts';
import { useChecked } from './checked.ts';

function copied(text: string): Promise<void> {
  return (navigator.clipboard as Clipboard | undefined)?.writeText(text) ?? Promise.reject(new Error('none'));
}

function Letter() {
  const { part, name, values, unit } = useChecked();
  const { as, asked } = values;
  const reply = useMemo(() => {
    const { facts, findings, unit: read } = part;
    return replyFor({ fileName: name, box: facts.box, unit: read, flexures: findings.flexures }, as, asked);
  }, [part, name, as, asked]);
  const { heading, opening, items, closing } = useMemo(() => replySaid(reply, unit), [reply, unit]);
  const [said, setSaid] = useState('');
  const copy = () =>
    void copied(replyPlain(reply, unit)).then(
      () => setSaid(REPLY.copied),
      () => setSaid(REPLY.notCopied),
    );
  return (
    <>
      <div className="row">
        <button type="button" className="b" onClick={copy}>
          {REPLY.copy}
        </button>
        <button type="button" className="b" onClick={() => window.print()}>
          {REPLY.print}
        </button>
        <output>{said}</output>
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

/** A letter to whoever drew the part: what to thicken or lengthen; to read, copy and print. */
export function Reply() {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (isOpen) box.current?.scrollIntoView({ block: 'nearest' });
  }, [isOpen]);
  return (
    <section className="reply" aria-label={REPLY.name}>
      <h2 className="h">
        {REPLY.name}
        <span className="aside">{REPLY.aside}</span>
      </h2>
      <button type="button" className="b" aria-expanded={isOpen} aria-controls={id} onClick={() => setOpen(!isOpen)}>
        {isOpen ? REPLY.close : MESH.reply}
      </button>
      <div id={id} ref={box}>
        {isOpen && <Letter />}
      </div>
    </section>
  );
}
