import { useCallback, useEffect, useState } from 'react';

const MARK = 'filled';

function leaveFullScreen(): void {
  if (document.fullscreenElement !== null) void document.exitFullscreen().catch(() => undefined);
}

function enterFullScreen(): void {
  // Where the browser does not allow it, the page alone is made large.
  void document.documentElement.requestFullscreen?.().catch(() => undefined);
}

/** Whether a demonstration fills the screen, without head and path and with larger lettering. */
export function useFilled(): readonly [boolean, (filled: boolean) => void] {
  const [filled, setFilled] = useState(false);
  const set = useCallback((next: boolean) => {
    setFilled(next);
    if (next) enterFullScreen();
    else leaveFullScreen();
  }, []);
  useEffect(() => {
    // Esc of the browser itself leaves its full screen without a word to the page but this.
    const onChange = () => {
      if (document.fullscreenElement === null) setFilled(false);
    };
    document.addEventListener('fullscreenchange', onChange);
    return () => document.removeEventListener('fullscreenchange', onChange);
  }, []);
  useEffect(() => {
    const { dataset } = document.documentElement;
    if (filled) dataset[MARK] = '';
    return () => {
      delete dataset[MARK];
    };
  }, [filled]);
  useEffect(() => leaveFullScreen, []);
  return [filled, set];
}
