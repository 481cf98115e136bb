#!/bin/sh
# Browser tests: installs what they need (two npm packages, and Chromium where apt-get can), then runs them.
# SPEARLEAF_BIN names the built program; CHROMIUM the browser. Arguments pick test files by part of their name.
set -eu
cd "$(dirname "$0")"

: "${SPEARLEAF_BIN:?names the built spearleaf program}"
CHROMIUM="${CHROMIUM:-/usr/bin/chromium}"
if [ ! -x "$CHROMIUM" ]; then
  if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
    apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq chromium fonts-dejavu-core >/dev/null
  else
    echo "browser tests: no Chromium at $CHROMIUM; install it, or name one in CHROMIUM" >&2
    exit 1
  fi
fi
export CHROMIUM SPEARLEAF_BIN

npm ci --silent
exec node run.mjs "$@"
