/** Runs a command of the terminal as a person would. */
import { spawnSync } from 'node:child_process';

/** Starts a command in the project with these arguments and this on its standard input. */
export function runCommand(
  command: 'assess' | 'inspect',
  root: string,
  args: readonly string[],
  input: string | Uint8Array = '',
) {
  const started = spawnSync(process.execPath, ['node_modules/tsx/dist/cli.mjs', `src/cli/${command}.ts`, ...args], {
    cwd: root,
    input,
    encoding: 'utf8',
  });
  return { code: started.status, out: started.stdout, err: started.stderr };
}
