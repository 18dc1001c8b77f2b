#!/usr/bin/env bash
# Brings what the editor tests need on Debian and Ubuntu: a browser, a second editor, what the editor is built with, and the editor
# itself. Safe to run again: what is already there is kept.
set -euo pipefail

apt_packages=(chromium neovim python3 pkg-config libsecret-1-dev libkrb5-dev make g++ xz-utils)

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)"

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

install_system_packages
bash "$root/client/start/install-editor.sh"
