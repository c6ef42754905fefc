#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the program's present output into the documents' console blocks.

Usage: docs/refresh_examples.py PROGRAM [DOCUMENT...]     (all of docs/ if none is named)

A comment above a block says which parts of the output it shows, whole output if there is none:
    <!-- shows: ^Does it boil | ^Cost .. ^Take care | ^The words +4 -->
A part begins at the first line that matches and ends before the next blank line, before a line that
matches after "..", or after so many lines. What is left out becomes a line "…". tests/program/docs_test.cpp then finds no difference,
so read the prose around each change: numbers in sentences are not refreshed.
"""
import os
import pathlib
import re
import subprocess
import sys
import tempfile

ELISION = "…"
SAVED = re.compile(r"[Ss]ave (?:this|it|the file) as `([^`/]+\.(?:json|csv))`")
PART = re.compile(r"(.*?)(?: \.\. (.*)| \+(\d+))?")
SHOWS = re.compile(r"<!-- shows: (.*) -->")


def output_of(command, folder, program):
    env = dict(os.environ, COLUMNS="80", LC_ALL="C.UTF-8", PATH=f"{program.parent}:{os.environ['PATH']}")
    ran = subprocess.run(["sh", "-c", command + " 2>&1"], cwd=folder, env=env,
                         capture_output=True, text=True, check=False)
    return ran.stdout.rstrip("\n").split("\n")


def shown(output, parts):
    if not parts:
        return output
    lines, done = [], 0
    for part in parts:
        begins, ends, count = PART.fullmatch(part).groups()
        begin = next((i for i in range(done, len(output)) if re.search(begins, output[i])), None)
        if begin is None:
            raise SystemExit(f"no line matches {begins!r} in\n" + "\n".join(output))
        end = begin + int(count or 1)
        while not count and end < len(output) and not re.search(ends or "^$", output[end]):
            end += 1
        lines += ([ELISION] if begin > done else []) + output[begin:end]
        done = end
    return lines + ([ELISION] if done < len(output) else [])


def refreshed(text, folder, program):
    old, new = text.split("\n"), []
    name, parts = None, []
    lines = iter(old)
    for line in lines:
        new.append(line)
        if saved := SAVED.search(line):
            name = saved[1]
        elif shows := SHOWS.fullmatch(line):
            parts = [part.strip() for part in shows[1].split(" | ")]
        elif line in ("```json", "```csv") and name:
            body = []
            for inner in lines:
                new.append(inner)
                if inner == "```":
                    break
                body.append(inner)
            pathlib.Path(folder, name).write_text("\n".join(body) + "\n", encoding="utf-8")
            name = None
        elif line == "```console":
            for inner in lines:
                if inner.startswith("$ "):
                    new += [inner] + shown(output_of(inner[2:], folder, program), parts)
                elif inner == "```":
                    new.append(inner)
                    break
            parts = []
    return "\n".join(new)


def main():
    if len(sys.argv) < 2:
        raise SystemExit(__doc__)
    program = pathlib.Path(sys.argv[1]).resolve()
    here = pathlib.Path(__file__).resolve().parent
    for path in [pathlib.Path(p) for p in sys.argv[2:]] or sorted(here.glob("*.md")):
        text = path.read_text(encoding="utf-8")
        with tempfile.TemporaryDirectory() as folder:
            fresh = refreshed(text, folder, program)
        if fresh != text:
            path.write_text(fresh, encoding="utf-8")
            print(path.name)


if __name__ == "__main__":
    main()
