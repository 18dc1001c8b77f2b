/** Packs the extension as `npm run package` does, from a copy: the tests around us run what stands in our own `dist`. */
import { execFile } from "node:child_process";
import { cp, symlink } from "node:fs/promises";
import { basename, join } from "node:path";
import { promisify } from "node:util";
import { ROOT } from "../../client/start/installed.ts";

const LEFT_BEHIND = new Set(["node_modules", "dist", "out", ".editor", ".git"]);

/** @param folder empty, and outside of this one; @returns the path of the packed file */
export async function packExtension(folder: string): Promise<string> {
  const copy = join(folder, "sources");
  await cp(ROOT, copy, { recursive: true, filter: (file) => !LEFT_BEHIND.has(basename(file)) });
  await symlink(join(ROOT, "node_modules"), join(copy, "node_modules"));
  const file = join(folder, "bentwright.vsix");
  await promisify(execFile)("npm", ["run", "package", "--", "--out", file], {
    cwd: copy,
    maxBuffer: 1 << 26,
  });
  return file;
}
