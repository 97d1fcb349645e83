/** Windows of the same browser tell each other when they save, because they keep the part in the same place. */
export interface OtherWindows {
  readonly tellSaved: () => void;
  readonly close: () => void;
}

/** Calls `heard` when another window has saved; where windows cannot talk it does nothing. */
export function listenToOtherWindows(heard: () => void): OtherWindows {
  if (typeof BroadcastChannel === 'undefined') return { tellSaved: () => {}, close: () => {} };
  const channel = new BroadcastChannel('bendbook');
  channel.addEventListener('message', heard);
  return { tellSaved: () => channel.postMessage('saved'), close: () => channel.close() };
}
