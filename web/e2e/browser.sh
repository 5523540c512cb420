#!/usr/bin/env bash
# Prints the program of a Chromium that the browser tests can drive. On Debian,
# as root, it installs one where there is none; elsewhere it says what to install.
set -euo pipefail
find_browser() {
  local name
  for name in "${BARKWRIGHT_BROWSER:-}" chromium chromium-browser google-chrome google-chrome-stable headless-shell; do
    [ -n "$name" ] && command -v "$name" && return 0
  done
  for name in "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome" /Applications/Chromium.app/Contents/MacOS/Chromium; do
    [ -x "$name" ] && echo "$name" && return 0
  done
  return 1
}
find_browser && exit 0
if [ "$(id -u)" = 0 ] && [ -e /etc/debian_version ] && command -v apt-get >/dev/null; then
  echo "no Chromium here: installing it with apt-get" >&2
  export DEBIAN_FRONTEND=noninteractive
  { apt-get update -q && apt-get install -yq --no-install-recommends chromium; } >&2 || true
  find_browser && exit 0
fi
echo "The browser tests need Chromium or Chrome: install the package chromium (Debian, Fedora, Arch) or set BARKWRIGHT_BROWSER to its program." >&2
exit 1
