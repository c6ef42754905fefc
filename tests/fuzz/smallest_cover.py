#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Of what a merge has looked at, the few files that reach the most: copies them.

  FUZZER -set_cover_merge=1 -merge_control_file=SEEN EMPTY_FOLDER FOLDER...
  smallest_cover.py SEEN FOLDER_TO_KEEP MOST_FILES MOST_BYTES

Greedy, by edges and how often each is taken; of files that add the same, the smaller."""

import heapq
import pathlib
import shutil
import sys

seen, keep, most_files, most_bytes = sys.argv[1], pathlib.Path(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4])
lines = pathlib.Path(seen).read_text("utf-8").splitlines()
count = int(lines[0])
files = [pathlib.Path(line) for line in lines[2 : 2 + count]]
reaches = {}
for line in lines[2 + count :]:
    kind, index, *features = line.split()
    if kind == "FT":
        reaches[int(index)] = {int(one) for one in features}

# An edge counts for more than how often it is taken. What a file would add only becomes less.
for found in reaches.values():
    found |= {-1 - one // 8 for one in found}
covered, taken, size = set(), [], 0
queue = [(-20 * len(found), files[index].stat().st_size, index) for index, found in reaches.items()]
heapq.heapify(queue)
while queue and len(taken) < most_files:
    gain, bytes_of, index = heapq.heappop(queue)
    new = reaches[index] - covered
    now = -sum(20 if one < 0 else 1 for one in new)
    if queue and (now, bytes_of) > queue[0][:2]:
        if now < 0:
            heapq.heappush(queue, (now, bytes_of, index))
        continue
    if now < 0 and size + bytes_of <= most_bytes:
        covered |= new
        size += bytes_of
        taken.append(index)
keep.mkdir(parents=True, exist_ok=True)
for index in taken:
    shutil.copyfile(files[index], keep / files[index].name[:16])
print(f"{keep.name}: {len(taken)} files, {size} bytes, {len(covered)} features")
