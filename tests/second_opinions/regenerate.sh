#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Makes the second opinions anew in the given folder and compares them with the checked-in
# ones, byte for byte. Needs the Debian package python3-iapws (hence /usr/bin/python3, not
# whichever python comes first), node and npm. Exit 1 on a difference.
set -eu

if [ $# -ne 1 ]; then
  echo "usage: $0 <folder>" >&2
  exit 2
fi
here=$(cd "$(dirname "$0")" && pwd)
mkdir -p "$1"
out=$(cd "$1" && pwd)

npm install --loglevel=error --no-audit --no-fund --prefix "$out/npm" psychrolib@1.1.1
/usr/bin/python3 "$here/make_water_table.py" > "$out/water_iapws.csv"
/usr/bin/python3 "$here/make_dry_air_table.py" > "$out/dry_air_iapws.csv"
node "$here/make_air_table.mjs" "$out/npm" > "$out/air_psychrolib.csv"

status=0
for table in water_iapws.csv dry_air_iapws.csv air_psychrolib.csv; do
  if cmp "$here/$table" "$out/$table"; then
    echo "$table: same"
  else
    status=1
  fi
done
exit $status
