#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Gathers what fuzzing begins from, one folder a target: gather_seeds.py HEATLEDGER FOLDER.

The bundled documents, the plans of the documentation, and the examples of the help. Behind it,
`FUZZER -merge=1 tests/fuzz/corpus/NAME FOLDER/NAME` keeps what reaches something new."""

import json
import pathlib
import re
import subprocess
import sys

SOURCE = pathlib.Path(__file__).resolve().parents[2]
PROGRAM, FOLDER = sys.argv[1], pathlib.Path(sys.argv[2])


def put(target, name, text):
    folder = FOLDER / target
    folder.mkdir(parents=True, exist_ok=True)
    (folder / name).write_text(text, encoding="utf-8")


def smaller(text):
    return json.dumps(json.loads(text), ensure_ascii=False)


def said(*words):
    return subprocess.run([PROGRAM, *words], capture_output=True, check=False, text=True).stdout


data = SOURCE / "rigs" / "data"
plans = {p.stem: p.read_text("utf-8") for p in [*data.glob("starts/*.json"), *data.glob("demo/*.json")]}
for page in SOURCE.glob("docs/*.md"):
    for i, block in enumerate(re.findall(r"```json\n(.*?)```", page.read_text("utf-8"), re.S)):
        try:
            if "rigs" in json.loads(block):
                plans[f"{page.stem}-{i}"] = block
        except json.JSONDecodeError:
            pass  # a part of a document
for name, text in plans.items():
    for target in ("plan_fuzz", "answer_fuzz"):
        put(target, name, smaller(text))
    put("recovery_fuzz", name, "/home/brewer/my%20plan.json\n" + smaller(text))
for target, pattern in (("rules_fuzz", "rules/*.json"), ("tariff_fuzz", "tariffs/*.json"),
                        ("rig_fuzz", "catalogue/rigs/*.json")):
    for path in data.glob(pattern):
        put(target, path.stem, smaller(path.read_text("utf-8")))
for i, name in enumerate(plans):
    tariff = json.loads(plans[name]).get("tariff")
    if tariff:
        put("tariff_fuzz", f"of-{name}", json.dumps(tariff))
    for j, rig in enumerate(json.loads(plans[name])["rigs"]):
        put("rig_fuzz", f"of-{name}-{j}", json.dumps(rig, ensure_ascii=False))

commands = re.findall(r"^  ([a-z]+)", said("--help"), re.M)
for command in commands:
    page = said(command, "--help")
    for i, words in enumerate(re.findall(r"heatledger ([^\n]+)", page)):
        put("command_fuzz", f"{command}-{i}", words.replace(" ", "\n"))
    for option, example in re.findall(r"^  (--[a-z-]+)[^\n]*?e\.g\. ([^\n]+)", page, re.M):
        put("command_fuzz", f"{command}{option}", f"{command}\n{option}\n{example}")
edits = ["text /batch/wort 25 L", "value /rigs/0/jacket {\"side\": [{\"material\": \"cork\", "
         "\"thickness\": \"10 mm\"}]}", "without /rigs/0/lid", "copy 0 Second", "move 0", "remove 1",
         "text /rigs/1/element/power 2000 W", "value /rigs/- {\"from\": \"mine.json\"}",
         "same 0 Follower", "value /rigs/1/lid null", "whole 1", "drop 0"]
for i in range(len(edits)):
    put("edits_fuzz", str(i), "\n".join(edits[: i + 1]))
