/**
 * The language server as a process of its own: `server.js --stdio` for any editor, `--node-ipc` for our client.
 * Ends with 0 after a proper shutdown, 1 when the other side just goes away, 2 when it is called wrongly.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { createConnection } from "vscode-languageserver/node";
import { serve } from "./main.ts";

const WAYS = ["--stdio", "--node-ipc"];
/** What the library would also take, whichever comes first: a way over the network, which we do not go. */
const SOCKETS = /^--(socket|pipe)\b/;
const given = process.argv.slice(2);
const way = given.filter((argument) => WAYS.includes(argument) || SOCKETS.test(argument));

if (way.length === 1 && WAYS.includes(way[0] ?? "") && (way[0] !== "--node-ipc" || process.send)) {
  // Without its parent there is nobody left to serve; over stdio the end of the input says the same.
  if (way[0] === "--node-ipc") process.once("disconnect", () => process.exit(1));
  serve(createConnection(), undefined, reference());
} else {
  process.stderr.write(
    "This is the language server of Bentwright; an editor starts it.\n" +
      "Usage: server.js --stdio | --node-ipc\n" +
      "To check a file by hand: bentwright check FILE\n",
  );
  process.exitCode = 2;
}

/** The check reference lies beside the folder of this bundle, in the package and in a clone. */
function reference(): string | undefined {
  const file = join(__dirname, "../schemas/check-reference.md");
  return existsSync(file) ? pathToFileURL(file).href : undefined;
}
