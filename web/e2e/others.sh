#!/usr/bin/env bash
# Says in one line in which browsers besides Chromium the page is looked at, and which are
# skipped because they are not installed. With -install, on Debian as root, it installs them.
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
case " $lacking " in
  *" firefox-esr "*) firefox=skipped ;;
  *) firefox="a look" ;;
esac
case " $lacking " in
  *webkit2gtk-driver*|*xvfb*) webkit=skipped ;;
  *) webkit="a look" ;;
esac
echo "Firefox: $firefox; WebKit: $webkit${lacking:+ (not installed, Debian names: $lacking)}"
