#!/usr/bin/env bash
# Says in one line in which browsers besides Chromium the page was looked at, by the file
# BARKWRIGHT_LOOKED that the tests write, and which are not installed. With -install, on
# Debian as root, it installs them.
set -euo pipefail
missing() {
  command -v "${BARKWRIGHT_FIREFOX:-firefox-esr}" >/dev/null || command -v firefox >/dev/null || echo firefox-esr
  if ! command -v "${BARKWRIGHT_WEBKIT:-WebKitWebDriver}" >/dev/null || ! compgen -G '/usr/lib*/*/webkit2gtk-4.*/MiniBrowser' >/dev/null; then
    echo webkit2gtk-driver
  fi
  command -v Xvfb >/dev/null || echo xvfb
}
lacking=$(missing | xargs)
if [ "${1:-}" = -install ] && [ -n "$lacking" ] && [ "$(id -u)" = 0 ] && [ -e /etc/debian_version ]; then
  export DEBIAN_FRONTEND=noninteractive
  # shellcheck disable=SC2086
  { apt-get update -q && apt-get install -yq --no-install-recommends $lacking; } >&2 || true
  lacking=$(missing | xargs)
fi
# What the tests wrote of each browser that they came to.
came() { grep -s "^$1:" "${BARKWRIGHT_LOOKED:-/dev/null}" || echo "$1: skipped"; }
[ "${1:-}" = -install ] || echo "$(came Firefox); $(came WebKit)${lacking:+ (not installed, Debian names: $lacking)}"
