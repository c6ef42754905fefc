#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws what a terminal program prints as an SVG picture.

Usage: heatledger answer --width 80 | docs/terminal_picture.py FIRST LAST > picture.svg
FIRST and LAST choose lines, counted from 1.
"""
import sys
from html import escape

CELL, LINE, MARGIN = 8.4, 19, 18

first, last = int(sys.argv[1]), int(sys.argv[2])
lines = sys.stdin.read().split("\n")[first - 1:last]
width = round(2 * MARGIN + CELL * max(len(line) for line in lines))
height = 2 * MARGIN + LINE * len(lines)
print(f'<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" '
      f'viewBox="0 0 {width} {height}" font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" '
      f'font-size="14" fill="#1d2433">')
print(f'<rect width="{width}" height="{height}" rx="6" fill="#fbfaf7" stroke="#d9d6cd"/>')
for number, line in enumerate(lines):
    if line.strip():
        length = CELL * len(line.rstrip())
        weight = '' if line.startswith(' ') else ' font-weight="bold"'
        print(f'<text x="{MARGIN}" y="{MARGIN + LINE * number + 14}" xml:space="preserve" '
              f'textLength="{length:.0f}" lengthAdjust="spacingAndGlyphs"{weight}>{escape(line.rstrip())}</text>')
print("</svg>")
