/** Words of the opening of files that are needed only once there is one: apart from what the first screen says. */

/** While a file is held over the page, which does not know its name yet. */
export const DROP_HERE = [
  'Let go to look for thin sections',
  'STL, 3MF or OBJ goes to Mesh, G-code to Toolpath; what Bendbook exported is opened. Read on this machine, sent nowhere.',
] as const;

export function repairsText(name: string, repairs: string): string {
  return `“${name}” was opened, with this changed. ${repairs}`;
}
