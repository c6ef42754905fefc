#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Which lines of physics/ and rigs/ their own tests execute, file by file, the lowest first.

Usage, from the top of the project and after a build with the preset `sanitize`:

    tests/line_coverage.py build/sanitize                    # runs the tests of both folders
    tests/line_coverage.py build/sanitize --missed rigs/answers/figures.cpp        # and which lines they miss

A line counts once, however many instances of a template it is compiled into, and as executed if any
of them executed it. The exit status is 1 if a folder is below --least, or a test fails.
"""
import argparse
import collections
import os
import pathlib
import subprocess
import sys
import tempfile

FOLDERS = ("physics", "rigs")
# In so many goes, beside each other.
PROGRAMS = {"physics_tests": 1, "rigs_tests": 2}


def counts_of(build, scratch):
    """Runs the test programs beside each other: (programs, their merged counts)."""
    paths = {path.name: path for path in build.glob("tests/*/*_tests") if path.is_file()}
    running, counted = [], []
    for name, goes in PROGRAMS.items():
        if name not in paths:
            sys.exit(f"{name} is not built; there are: {', '.join(sorted(paths)) or 'none'}")
        for go in range(goes):
            counted.append(f"{scratch}/{name}.{go}.profraw")
            environment = {**os.environ, "LLVM_PROFILE_FILE": counted[-1],
                           "GTEST_TOTAL_SHARDS": str(goes), "GTEST_SHARD_INDEX": str(go)}
            running.append(subprocess.Popen([paths[name], "--gtest_brief=1"],
                                            cwd=paths[name].parent, env=environment))
    # All are waited for, whatever the first of them says.
    if any([run.wait() != 0 for run in running]):
        sys.exit("a test fails: its counts mean nothing")
    merged = f"{scratch}/merged.profdata"
    subprocess.run(["llvm-profdata", "merge", "-sparse", "-o", merged, *counted], check=True)
    return [paths[name] for name in PROGRAMS], merged


def executed_lines(source, build):
    """{file from the top: {line: whether it was executed}}"""
    lines = collections.defaultdict(dict)
    with tempfile.TemporaryDirectory() as scratch:
        programs, merged = counts_of(build, scratch)
        for program in programs:
            exported = subprocess.run(
                ["llvm-cov", "export", "--format=lcov", f"--instr-profile={merged}", program,
                 *(source / folder for folder in FOLDERS)],
                capture_output=True, text=True, check=True).stdout
            for record in exported.splitlines():
                kind, _, rest = record.partition(":")
                if kind == "SF":
                    known = lines[os.path.relpath(rest, source)]
                elif kind == "DA":
                    number, count = (int(part) for part in rest.split(",")[:2])
                    known[number] = known.get(number, False) or count > 0
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
    parser.add_argument("build", type=pathlib.Path, help="folder built with the preset `sanitize`")
    parser.add_argument("--least", type=float, default=95.0, help="per cent that a folder must reach")
    parser.add_argument("--missed", nargs="+", default=[], metavar="FILE",
                        help="files whose missed lines to name")
    options = parser.parse_args()
    source = pathlib.Path(__file__).resolve().parent.parent
    lines = executed_lines(source, options.build.resolve())

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
