/** Names of files that a new frame may have. */

const ENDING = ".frame.yaml";

/** The path with the ending by which the editor knows a frame. */
export function frameName(path: string): string {
  if (/\.frame\.ya?ml$/i.test(path)) return path;
  return path.replace(/(?:\.frame|\.ya?ml)$/i, "") + ENDING;
}

/** `base`, numbered from 2 where a file of the folder has that name. */
export function freeName(base: string, taken: ReadonlySet<string>): string {
  for (let number = 1; ; number += 1) {
    const name = `${base}${number === 1 ? "" : `-${number}`}${ENDING}`;
    if (!taken.has(name)) return name;
  }
}
