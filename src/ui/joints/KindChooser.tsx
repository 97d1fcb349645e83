import { useEffect, useRef, useState, type KeyboardEvent } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { FAMILIES } from '../../core/flexures/index.ts';
import type { FlexureFamily } from '../../core/flexures/family.ts';
import { CATALOGUE, catalogueFor, kindChanged } from '../text/catalogueText.ts';
import { kindText } from '../text/kindText.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { useChoosing } from './choosing.ts';
import './everyKind.ts';
import { KindQuestion } from './KindQuestion.tsx';
import { KindRow } from './KindRow.tsx';
import './KindChooser.css';
import { ANYTHING, driveFor, letterTo, stepTo, whyNot } from './kindsAsked.ts';
import { addKind, changeKind } from './takeKind.ts';

const STEPS = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
  Home: 'first',
  End: 'last',
} as const;
const NAMES = FAMILIES.map(({ id }) => kindText(id).name);

/** How many rows stand side by side, as the sheet is wide now. */
function columnsOf(group: HTMLElement | null): number {
  return group ? getComputedStyle(group).gridTemplateColumns.split(' ').length : 1;
}

/** Where a key leads among the kinds; undefined for keys that mean nothing here. */
function reached(at: number, { key, ctrlKey, metaKey, altKey }: KeyboardEvent, columns: number): number | undefined {
  if (ctrlKey || metaKey || altKey) return undefined;
  if (Object.hasOwn(STEPS, key)) return stepTo(at, STEPS[key as keyof typeof STEPS], NAMES.length, columns);
  return /^\p{L}$/u.test(key) ? letterTo(at, key, NAMES) : undefined;
}

/** The catalogue of kinds: a question, and a row for every kind; taking one makes a worked joint. */
export function KindChooser({ changing }: { readonly changing: Joint | undefined }) {
  const close = useChoosing((state) => state.close);
  const [asked, ask] = useState(ANYTHING);
  const [at, setAt] = useState(() =>
    Math.max(
      0,
      FAMILIES.findIndex(({ id }) => id === changing?.family),
    ),
  );
  const group = useRef<HTMLDivElement>(null);
  const rowAt = (place: number) => group.current?.querySelectorAll('input')[place];

  // It has taken the place of what opened it, and begins with the kind that stands.
  useEffect(() => group.current?.querySelector<HTMLElement>(':checked')?.focus(), []);

  function take(family: FlexureFamily): void {
    const taken = { family, drive: driveFor(family, asked), lying: asked.lying === 'any' ? undefined : asked.lying };
    if (changing) changeKind(changing, taken, kindChanged(changing.name, family.id, changing.family));
    else addKind(taken);
    close(changing !== undefined);
  }

  function onKeyDown(event: KeyboardEvent): void {
    const to = reached(at, event, columnsOf(group.current));
    if (to === undefined) return;
    event.preventDefault();
    rowAt(to)?.focus();
  }

  return (
    // Escape is heard from anything in it; what can be pressed are the fields and buttons inside.
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions
    <div className="whole choosing" onKeyDown={(event) => event.key === 'Escape' && close(true)}>
      <div className="top">
        <h2>{catalogueFor(changing?.name)}</h2>
        <QuietButton onClick={() => close(true)}>{CATALOGUE.back}</QuietButton>
      </div>
      <KindQuestion asked={asked} onAsk={ask} />
      <div className="catalogue" role="radiogroup" aria-label={CATALOGUE.label} ref={group}>
        {FAMILIES.map((family, place) => (
          <KindRow
            key={family.id}
            family={family.id}
            cannot={whyNot(family, asked)}
            isAt={place === at}
            onReach={() => setAt(place)}
            onTake={() => take(family)}
            onKeyDown={onKeyDown}
          />
        ))}
      </div>
      <p className="cap">
        {CATALOGUE.grey} {CATALOGUE.keys}
      </p>
    </div>
  );
}
