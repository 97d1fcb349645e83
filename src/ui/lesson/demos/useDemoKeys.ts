import { useEffect, useRef } from 'react';

/** What keys ask for anywhere on a demonstration. */
export interface DemoKeys {
  readonly onBeside: (by: 1 | -1) => void;
  /** The next step and then the next demonstration, or back, as a pointer with two buttons asks. */
  readonly onPage: (by: 1 | -1) => void;
  readonly onStep: (step: number) => void;
  readonly onMove: (by: 1 | -1) => void;
  readonly onFill: () => void;
  readonly onHide: () => void;
  readonly onLeave: () => void;
}

const TEXT_TYPES: readonly string[] = ['text', 'search', 'url', 'email', 'tel', 'number'];

function isTextField(target: EventTarget | null): target is HTMLElement {
  if (target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement) return true;
  return target instanceof HTMLInputElement && TEXT_TYPES.includes(target.type);
}

/** A field in which something is typed that is not in force yet. */
function isTyping(target: EventTarget | null): boolean {
  return isTextField(target) && target.dataset['typing'] !== 'false';
}

/** What has arrow keys of its own: a slider, or the paper of a figure. */
function hasArrows(target: EventTarget | null): boolean {
  if (isTextField(target)) return true;
  return target instanceof Element && target.matches('input, [role="slider"]');
}

/** What a key asks for, where it asks for anything. */
function asked(event: KeyboardEvent, keys: DemoKeys): (() => void) | undefined {
  const { key, target } = event;
  if (key === 'PageDown' || key === 'PageUp') {
    return isTyping(target) ? undefined : () => keys.onPage(key === 'PageDown' ? 1 : -1);
  }
  if (key === 'ArrowUp' || key === 'ArrowDown') {
    return hasArrows(target) ? undefined : () => keys.onMove(key === 'ArrowUp' ? 1 : -1);
  }
  if (isTextField(target)) return undefined;
  if (/^[1-4]$/.test(key)) return () => keys.onStep(Number(key));
  return {
    n: () => keys.onBeside(1),
    p: () => keys.onBeside(-1),
    f: keys.onFill,
    h: keys.onHide,
    escape: keys.onLeave,
  }[key.toLowerCase()];
}

/** Keys of a demonstration: never while something is typed, and never with Ctrl, Alt or the command key. */
export function useDemoKeys(keys: DemoKeys): void {
  const latest = useRef(keys);
  useEffect(() => {
    latest.current = keys;
  });
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
      const act = asked(event, latest.current);
      if (act === undefined) return;
      if (event.key !== 'Escape') event.preventDefault();
      act();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
}
