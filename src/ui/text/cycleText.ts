/** How counts of flexes and lives are said where room is short. */
import { cycles, grouped, NO_BREAK } from './numbers.ts';

/** “10 000”, “1 M”. */
export function manyCycles(count: number): string {
  return count >= 1e6 ? `${count / 1e6}${NO_BREAK}M` : grouped(count);
}

/** “24 000”, “first flex”: a life is never told past the data. */
export function lifeFigure(life: number, maxReportableCycles: number): string {
  if (life < 1) return 'first flex';
  return life > maxReportableCycles ? 'beyond the data' : cycles(life);
}

/** Folds by a curve, which end where counting does: “210”, “over 1 M”, “none”. */
export function foldsFigure(folds: number, maxReportableCycles: number): string {
  if (folds >= maxReportableCycles) return `over ${manyCycles(maxReportableCycles)}`;
  return folds < 1 ? 'none' : cycles(folds);
}

/** “5 000 cycles”, “2.5 cycles”: where a curve is read. */
export function readAtText(at: number): string {
  return `${at >= 10 ? cycles(at) : Number(at.toFixed(1))} cycles`;
}
