/** What comes when it is first asked for: each of these jobs is a file of its own, so that no joint waits for it. */
import type { Alive, Input, JobName, Output, Tell } from './protocol.ts';

type Late = Exclude<JobName, 'assess' | 'waysOut'>;

/** Does one of them. */
export async function lateJob(job: Late, input: Input<Late>, alive: Alive, tell: Tell): Promise<Output<Late>> {
  switch (job) {
    case 'doubt':
      return (await import('./doubtJob.ts')).doubtJob(input as Input<'doubt'>, alive);
    case 'nudges':
      return (await import('./tuningJobs.ts')).nudgesJob(input as Input<'nudges'>, alive);
    case 'matchEffort':
      return (await import('./tuningJobs.ts')).matchEffortJob(input as Input<'matchEffort'>, alive);
    case 'find':
      return (await import('./findJob.ts')).findJob(input as Input<'find'>, alive, tell);
    case 'checkPart':
      return (await import('./partJobs.ts')).checkPartJob(input as Input<'checkPart'>, alive, tell);
    case 'drawPart':
      return (await import('./partJobs.ts')).drawPartJob(input as Input<'drawPart'>, alive);
    case 'checkToolpath':
      return (await import('./toolpathJobs.ts')).checkToolpathJob(input as Input<'checkToolpath'>, alive, tell);
    case 'nearPlaces':
      return (await import('./toolpathJobs.ts')).nearPlacesJob(input as Input<'nearPlaces'>, alive);
  }
  throw new RangeError(`there is no job called ${String(job)}`);
}
