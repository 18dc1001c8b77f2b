/**
 * Builds everything that runs: `node esbuild.mjs [--production] [--watch]`.
 *
 * dist/extension.js  the extension, in the editor's extension host
 * dist/server.js     the language server (IPC for our client, `--stdio` for any other)
 * dist/cli.js        the command line, executable
 * dist/preview.js    the page inside the preview panel, and preview.css beside it
 * out/test-suite.js  the tests that run inside the editor; never packaged
 */

import { chmod, rm } from "node:fs/promises";
import { build, context } from "esbuild";

const production = process.argv.includes("--production");
const watch = process.argv.includes("--watch");

/** @type {import('esbuild').BuildOptions} */
const common = {
  bundle: true,
  minify: production,
  sourcemap: production ? false : "linked",
  legalComments: "none",
  logLevel: watch ? "info" : "warning",
};

/** @type {import('esbuild').BuildOptions} */
const forNode = {
  ...common,
  platform: "node",
  format: "cjs",
  target: "node20",
  // `yaml` and `ajv` keep their packages' CommonJS builds apart from the module ones; one of each is enough.
  mainFields: ["module", "main"],
};

/** @type {import('esbuild').BuildOptions} */
const forPage = { ...common, platform: "browser", target: "chrome122" };

/** @type {import('esbuild').BuildOptions[]} */
const bundles = [
  {
    ...forNode,
    entryPoints: ["client/extension.ts"],
    outfile: "dist/extension.js",
    external: ["vscode"],
  },
  { ...forNode, entryPoints: ["server/node.ts"], outfile: "dist/server.js" },
  {
    ...forNode,
    entryPoints: ["server/cli.ts"],
    outfile: "dist/cli.js",
    banner: { js: "#!/usr/bin/env node" },
    plugins: [
      {
        name: "executable",
        setup: ({ onEnd }) =>
          onEnd(({ errors }) => (errors.length === 0 ? chmod("dist/cli.js", 0o755) : undefined)),
      },
    ],
  },
  { ...forPage, entryPoints: ["client/preview/page.ts"], outfile: "dist/preview.js", format: "iife" },
  { ...forPage, entryPoints: ["client/preview/page.css"], outfile: "dist/preview.css" },
  {
    ...forNode,
    entryPoints: ["test/editor/suite/index.ts"],
    outfile: "out/test-suite.js",
    external: ["vscode"],
  },
];

// Only what is shipped starts from nothing: a plain build may run while an editor still has the last one open.
if (production) await rm("dist", { recursive: true, force: true });
if (watch) {
  const contexts = await Promise.all(bundles.map((bundle) => context(bundle)));
  await Promise.all(contexts.map((one) => one.watch()));
} else {
  await Promise.all(bundles.map((bundle) => build(bundle)));
}
