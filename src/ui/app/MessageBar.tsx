import { useMessages } from '../../store/messages.ts';
import { QuietButton } from './QuietButton.tsx';
import { VerdictShape } from './VerdictShape.tsx';

/** A file or link that was refused, or what was repaired on opening; it stays until it is read. */
export function MessageBar() {
  const { message, clear } = useMessages();
  return (
    <div role="alert">
      {message !== undefined && (
        <div className="bar">
          <span className="says">
            <span className={message.grade}>
              <VerdictShape grade={message.grade} />
            </span>
            {message.text}
          </span>
          <QuietButton onClick={clear}>Dismiss</QuietButton>
        </div>
      )}
    </div>
  );
}
