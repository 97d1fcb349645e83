import type { KeyboardEvent, ReactNode } from 'react';
import { placeKeyLabel } from '../../text/toolpathFigureText.ts';
import { choosePlace, useShown } from '../shown.ts';

interface Props {
  readonly number: number;
  readonly isOn: boolean;
  readonly children: ReactNode;
}

/** A balloon as a button: one of them is reached by Tab, the arrows walk to the others. */
export function PlaceKey({ number, isOn, children }: Props) {
  const { judged } = useShown();
  const numbers = judged.map(({ place }) => place.number);
  const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
    const at = numbers.indexOf(number);
    const step = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: numbers.length - 1, Enter: at, ' ': at };
    const to = step[event.key as keyof typeof step];
    const next = to === undefined ? undefined : numbers[Math.min(Math.max(to, 0), numbers.length - 1)];
    if (next === undefined) return;
    event.preventDefault();
    choosePlace(next);
    const drawing = event.currentTarget.ownerSVGElement;
    requestAnimationFrame(() => drawing?.querySelector<SVGGElement>('.key-of.on')?.focus());
  };
  return (
    <g
      className={isOn ? 'key-of on' : 'key-of'}
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- there is no button in a drawing
      role="button"
      tabIndex={isOn ? 0 : -1}
      aria-label={placeKeyLabel(number)}
      aria-pressed={isOn}
      onClick={() => choosePlace(number)}
      onKeyDown={onKeyDown}
    >
      {children}
    </g>
  );
}
