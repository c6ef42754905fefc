#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Which lines of physics/ and rigs/ the tests have executed, file by file, the lowest first.

Usage, from the top of the project and after a build with the preset `coverage`:

    tests/line_coverage.py build/coverage                    # what has run since that build
    tests/line_coverage.py build/coverage --run physics_tests rigs_tests   # these alone, from zero
    tests/line_coverage.py build/coverage --missed rigs/answers/figures.cpp        # and which lines did not

A line counts once, however many translation units or instances of a template it is compiled into,
and as executed if any of them executed it. The exit status is 1 if a folder is below --least.
"""
import argparse
import collections
import json
import os
import pathlib
import subprocess
import sys
import tempfile

FOLDERS = ("physics", "rigs")
AT_ONCE = 8  # objects per call of gcov


def run_from_zero(build, programs):
    """Forgets all counts, then runs these test programs."""
    paths = {path.name: path for path in build.glob("tests/*/*_tests") if path.is_file()}
    for program in programs:
        if program not in paths:
            sys.exit(f"{program} is not built; there are: {', '.join(sorted(paths)) or 'none'}")
    for counts in build.rglob("*.gcda"):
        counts.unlink()
    for program in programs:
        run = subprocess.run([paths[program], "--gtest_brief=1"], cwd=paths[program].parent)
        if run.returncode != 0:
            sys.exit(f"{program} fails: its counts mean nothing")


def objects(build):
    """The counts of every object; its notes where it never ran, so that its lines count as missed."""
    for notes in sorted(build.rglob("*.gcno")):
        counts = notes.with_suffix(".gcda")
        yield str(counts if counts.exists() else notes)


def executed_lines(source, build):
    """{file from the top: {line: whether it was executed}}, over all objects of the build."""
    lines = collections.defaultdict(dict)
    all_objects = list(objects(build))
    with tempfile.TemporaryDirectory() as scratch:
        for first in range(0, len(all_objects), AT_ONCE):
            gcov = subprocess.run(
                ["gcov", "--json-format", "--stdout", *all_objects[first : first + AT_ONCE]],
                cwd=scratch, capture_output=True, text=True, check=True)
            if "stamp mismatch" in gcov.stderr:
                sys.exit("some counts are older than their objects: measure again with --run\n"
                         + gcov.stderr)
            for document in filter(None, gcov.stdout.splitlines()):
                report = json.loads(document)
                for file in report["files"]:
                    path = os.path.normpath(
                        os.path.join(report["current_working_directory"], file["file"]))
                    name = os.path.relpath(path, source)
                    if name.split(os.sep)[0] not in FOLDERS:
                        continue
                    known = lines[name]
                    for line in file["lines"]:
                        number = line["line_number"]
                        known[number] = known.get(number, False) or line["count"] > 0
    return lines


def ranges(numbers):
    """[1, 2, 3, 7] as "1-3, 7"."""
    runs = []
    for number in numbers:
        if runs and number == runs[-1][1] + 1:
            runs[-1][1] = number
        else:
            runs.append([number, number])
    return ", ".join(str(a) if a == b else f"{a}-{b}" for a, b in runs)


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("build", type=pathlib.Path, help="folder built with --coverage")
    parser.add_argument("--run", nargs="+", metavar="PROGRAM", help="test programs to run from zero")
    parser.add_argument("--least", type=float, default=95.0, help="per cent that a folder must reach")
    parser.add_argument("--missed", nargs="+", default=[], metavar="FILE",
                        help="files whose missed lines to name")
    options = parser.parse_args()
    source = pathlib.Path(__file__).resolve().parent.parent
    build = options.build.resolve()
    if options.run:
        run_from_zero(build, options.run)
    lines = executed_lines(source, build)

    def row(name, files):
        total = sum(len(lines[file]) for file in files)
        covered = sum(sum(lines[file].values()) for file in files)
        share = 100.0 * covered / total if total else 0.0
        return share, f"{share:7.2f} %  {covered:5} / {total:5}  {name}"

    for _, text in sorted(row(file, [file]) for file in lines if lines[file]):
        print(text)
    for file in options.missed:
        missed = sorted(number for number, executed in lines.get(file, {}).items() if not executed)
        print(f"{file}, not executed: {ranges(missed) or 'no line'}")
    print()
    low = False
    for folder in FOLDERS:
        share, text = row(folder + "/", [f for f in lines if f.startswith(folder + "/")])
        low = low or share < options.least
        print(text)
    return 1 if low else 0


if __name__ == "__main__":
    sys.exit(main())
