#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes docs/pictures/window-*.png anew, without a display: each question, light and dark. Look at
# every one before you commit it.
set -eu
cd "$(dirname "$0")/.."
build=${1:-build/test}
cmake --build "$build" --target window_pictures
settings=$(mktemp -d)
trap 'rm -rf "$settings"' EXIT
XDG_CONFIG_HOME=$settings XDG_DATA_HOME=$settings XDG_RUNTIME_DIR=$settings \
  "$build/tests/gui/window/window_pictures" docs/pictures
