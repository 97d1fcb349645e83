/** The cells that every title block has. */
import { useKeeping } from '../../store/keeping.ts';
import { KEPT_TEXT } from '../text/shellText.ts';
import { MarkShape } from './MarkShape.tsx';
import { MARK_KINDS, MARK_SHAPES } from './markShapes.ts';

interface CellProps {
  readonly className: string;
}

/** What the marks beside numbers mean. */
export function MarksCell({ className }: CellProps) {
  return (
    <div className={className}>
      <small>Marks beside numbers</small>
      {MARK_KINDS.map((kind) => (
        <span key={kind} className="nw key">
          <MarkShape kind={kind} />
          {MARK_SHAPES[kind].says}
        </span>
      ))}
    </div>
  );
}

/** Where the work is kept. */
export function KeptCell({ className }: CellProps) {
  const kept = useKeeping((state) => state.kept);
  return (
    <div className={className}>
      <small>Kept</small>
      <output>{KEPT_TEXT[kept]}</output>
    </div>
  );
}
