import { useEffect, useRef, useState } from 'react';
import { sentence } from '../text/said.ts';
import { hintOf, runOf, stepped, type Draft, type Run } from './draft.ts';
import { readQuantity, type QuantityReading } from './quantity.ts';
import { useSentence } from './sentenceContext.ts';
import { settled } from './settle.ts';
import type { ValueSpec } from './valueSpec.ts';

/** The refusal of one field, said under its sentence. */
function useRefusal(spec: ValueSpec) {
  const { refused, refusalId, refuse, settle } = useSentence();
  // A refusal over a value that has since changed is no longer the matter.
  const seen = useRef(spec.value);
  useEffect(() => {
    if (seen.current === spec.value) return;
    seen.current = spec.value;
    settle(spec.key);
  }, [settle, spec.key, spec.value]);
  return {
    refused: refused === spec.key,
    refusalId,
    refuseWith: (why: string) => refuse(spec.key, `${why} Still using ${spec.figure}${spec.suffix}.`),
    settleIt: () => settle(spec.key),
  };
}

/** What is typed into one field, and what it comes to. */
function useTyping(spec: ValueSpec) {
  const [draft, setDraft] = useState<Draft>();
  const latest = useRef('');
  const read = (text: string) => readQuantity(text, spec.kind, spec.unit, spec.label);

  function type(text: string): void {
    latest.current = text;
    const reading = read(text);
    setDraft({ text, over: spec.value, reading: reading instanceof Promise ? undefined : reading });
    if (!(reading instanceof Promise)) return;
    void reading.then((worked) => {
      if (latest.current === text) setDraft({ text, over: spec.value, reading: worked });
    });
  }

  function drop(): void {
    latest.current = '';
    setDraft(undefined);
  }

  return { kept: draft, type, drop, read };
}

/** The editing of one value field: what is typed, what it comes to, and when it is taken, stepped or left. */
export function useDraft(spec: ValueSpec) {
  const { refused, refusalId, refuseWith, settleIt } = useRefusal(spec);
  const { kept, drop, read, ...typing } = useTyping(spec);
  const [inside, setInside] = useState(false);
  const run = useRef<Run>(undefined);
  // A field that was left shows what is in force, unless its text is what the message under the sentence is about.
  const draft = kept?.over === spec.value && (inside || refused) ? kept : undefined;

  function leave(): void {
    drop();
    settleIt();
  }

  function put(reading: QuantityReading): void {
    if (!reading.ok) {
      refuseWith(sentence(reading.problems[0].message));
      return;
    }
    const value = settled(reading.value, spec.kind, spec.unit);
    const why = value === spec.value ? undefined : spec.take(value, spec.value);
    if (why === undefined) leave();
    else refuseWith(why);
  }

  function take(): void {
    run.current = undefined;
    if (draft === undefined) return;
    if (draft.reading !== undefined) put(draft.reading);
    else void Promise.resolve(read(draft.text)).then(put);
  }

  function type(text: string): void {
    run.current = undefined;
    settleIt();
    typing.type(text);
  }

  function step(direction: 1 | -1, tenfold: boolean): void {
    const value = stepped(spec, draft, direction, tenfold);
    leave();
    if (value === spec.value) return;
    const next = runOf(spec, run.current, value);
    const why = spec.take(value, next.was, next.key);
    if (why === undefined) run.current = next;
    else refuseWith(why);
  }

  function enter(): void {
    setInside(true);
    if (!refused) drop();
  }

  function exit(): void {
    setInside(false);
    take();
  }

  const hint = refused ? '' : hintOf(spec, draft);
  return { text: draft?.text, hint, refused, refusalId, type, take, leave, step, enter, exit };
}
