import type { KeyboardEvent, ReactNode } from 'react';
import { useChecked } from './checked.ts';
import { walk } from './walk.ts';

interface Props {
  readonly number: number;
  readonly label: string;
  readonly onChoose: (number: number) => void;
  readonly children: ReactNode;
}

/** A balloon on a drawing as a button: one of them is reached by Tab, the arrows walk to the others. */
export function BalloonKey({ number, label, onChoose, children }: Props) {
  const { judged, chosen } = useChecked();
  const isOn = number === chosen;
  const onKeyDown = (event: KeyboardEvent<SVGGElement>) => {
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      onChoose(number);
      return;
    }
    const drawing = event.currentTarget.ownerSVGElement;
    const numbers = judged.map(({ flexure }) => flexure.number);
    // Another section may be drawn then; its balloons come with the next frame.
    if (walk(event, numbers, chosen)) {
      const figure = drawing?.closest('figure');
      requestAnimationFrame(() => figure?.querySelector<SVGGElement>('.key-of.on')?.focus());
    }
  };
  return (
    <g
      className={isOn ? 'key-of on' : 'key-of'}
      // oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- there is no button in a drawing
      role="button"
      tabIndex={isOn ? 0 : -1}
      aria-label={label}
      aria-pressed={isOn}
      onClick={() => onChoose(number)}
      onKeyDown={onKeyDown}
    >
      {children}
    </g>
  );
}
