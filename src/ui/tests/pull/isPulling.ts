import { useTests } from '../../../store/tests.ts';

/** Whether bars are pulled on the sheet that is looked at, so that a table which comes is one of forces. */
export function isPulling(): boolean {
  return location.hash.startsWith('#tests') && useTests.getState().values.doing === 'pull';
}
