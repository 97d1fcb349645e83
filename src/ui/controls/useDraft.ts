import { useEffect, useRef, useState } from 'react';
import { sentence } from '../text/said.ts';
import { readQuantity, type QuantityReading } from './quantity.ts';
import { useSentence } from './sentenceContext.ts';
import { settled } from './settle.ts';
import type { ValueSpec } from './valueSpec.ts';

/** What was typed and not yet taken. */
interface Draft {
  readonly text: string;
  /** The value in force when it was typed; once that changes from elsewhere, the draft is void. */
  readonly over: number;
  /** Undefined while a sum is being worked out. */
  readonly reading: QuantityReading | undefined;
}

/** Steps that follow each other are one change to undo. */
interface Run {
  readonly key: string;
  readonly was: number;
  readonly now: number;
}

let runs = 0;

function hintOf(spec: ValueSpec, draft: Draft | undefined): string {
  if (draft === undefined) return spec.hint;
  const leaves = `Esc leaves ${spec.figure}`;
  if (draft.reading === undefined) return 'working it out';
  if (!draft.reading.ok) return `not yet a number or a sum; ${leaves}`;
  const value = settled(draft.reading.value, spec.kind, spec.unit);
  return `= ${spec.say(value)}${spec.suffix}; Enter takes it, ${leaves}`;
}

/** The editing of one value field: what is typed, what it comes to, and when it is taken, stepped or left. */
export function useDraft(spec: ValueSpec) {
  const { refused: refusedKey, refusalId, refuse, settle } = useSentence();
  const [kept, setDraft] = useState<Draft>();
  const [inside, setInside] = useState(false);
  const latest = useRef('');
  const run = useRef<Run>(undefined);
  const refused = refusedKey === spec.key;
  // A field that was left shows what is in force, unless its text is what the message under the sentence is about.
  const draft = kept?.over === spec.value && (inside || refused) ? kept : undefined;

  // A refusal over a value that has since changed is no longer the matter.
  const seen = useRef(spec.value);
  useEffect(() => {
    if (seen.current === spec.value) return;
    seen.current = spec.value;
    settle(spec.key);
  }, [settle, spec.key, spec.value]);

  const read = (text: string) => readQuantity(text, spec.kind, spec.unit, spec.label);
  const refuseWith = (why: string) => refuse(spec.key, `${why} Still using ${spec.figure}${spec.suffix}.`);

  function type(text: string): void {
    latest.current = text;
    run.current = undefined;
    settle(spec.key);
    const reading = read(text);
    setDraft({ text, over: spec.value, reading: reading instanceof Promise ? undefined : reading });
    if (!(reading instanceof Promise)) return;
    void reading.then((worked) => {
      if (latest.current === text) setDraft({ text, over: spec.value, reading: worked });
    });
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

  function leave(): void {
    latest.current = '';
    setDraft(undefined);
    settle(spec.key);
  }

  function step(direction: 1 | -1, tenfold: boolean): void {
    const from = draft?.reading?.ok ? settled(draft.reading.value, spec.kind, spec.unit) : spec.value;
    const to = from + direction * spec.step(from, direction > 0) * (tenfold ? 10 : 1);
    const value = settled(Math.min(spec.max, Math.max(spec.min, to)), spec.kind, spec.unit);
    leave();
    if (value === spec.value) return;
    const goesOn = run.current?.now === spec.value ? run.current : undefined;
    run.current = { key: goesOn?.key ?? `${spec.key}-${(runs += 1)}`, was: goesOn?.was ?? spec.value, now: value };
    const why = spec.take(value, run.current.was, run.current.key);
    if (why === undefined) return;
    run.current = goesOn;
    refuseWith(why);
  }

  function enter(): void {
    setInside(true);
    if (!refused) setDraft(undefined);
  }

  function exit(): void {
    setInside(false);
    take();
  }

  return {
    text: draft?.text,
    hint: refused ? '' : hintOf(spec, draft),
    refused,
    refusalId,
    type,
    take,
    leave,
    step,
    enter,
    exit,
  };
}
