#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Adds German to gui/translations/heatledger_de.ts without Qt's tools.

  gui/translations/add_translations.py NEW.tsv...   a line each: context<TAB>English<TAB>German
  gui/translations/add_translations.py --unused     names messages that no source and no data has
  gui/translations/add_translations.py --remove     and takes them out

Contexts are kept in the order of their names; in each, messages keep their place and new ones
follow. A message that is there already takes the line's German. Lines with a place (%1) that only
one language has are refused, and so are those of other than three columns.
"""
import argparse
import json
import pathlib
import re
import sys
import xml.etree.ElementTree

ROOT = pathlib.Path(__file__).resolve().parents[2]
GERMAN = ROOT / "gui/translations/heatledger_de.ts"

LITERALS = r'((?:\s*"(?:[^"\\]|\\.)*")+)\s*'
MARKED = re.compile(r"\b(?:TOLD|QT_TRANSLATE_NOOP|translate)\(" + LITERALS + "," + LITERALS + r"[,)]")
OF_A_CLASS = re.compile(r"\btr\(" + LITERALS + r"[,)]")


def joined(literals):
    parts = re.findall(r'"((?:[^"\\]|\\.)*)"', literals)
    return re.sub(r"\\(.)", lambda at: {"n": "\n"}.get(at[1], at[1]), "".join(parts))


def in_sources():
    """(context, English) as marked, and the texts of tr(), whose context is their class."""
    marked, of_classes = set(), set()
    for folder in ("physics", "rigs", "gui"):
        for path in (ROOT / folder).rglob("*.[ch]pp"):
            text = path.read_text()
            marked |= {(joined(at[1]), joined(at[2])) for at in MARKED.finditer(text)}
            of_classes |= {joined(at[1]) for at in OF_A_CLASS.finditer(text)}
    return marked, of_classes


def in_data():
    """Every text of the bundled documents, and every word that a plan may say."""

    def texts(value, keys=False):
        if isinstance(value, dict):
            if keys:
                yield from value
            for inner in value.values():
                yield from texts(inner, keys)
        elif isinstance(value, list):
            for inner in value:
                yield from texts(inner, keys)
        elif isinstance(value, str):
            yield value

    found = set()
    for path in (ROOT / "rigs/data").rglob("*.json"):
        if path.parent.name != "schemas":
            found |= set(texts(json.loads(path.read_text())))
    schema = ROOT / "rigs/data/schemas/plan.schema.json"
    return found | set(texts(json.loads(schema.read_text()), keys=True))


def read_messages():
    contexts = {}
    for context in xml.etree.ElementTree.parse(GERMAN).getroot().iter("context"):
        messages = contexts.setdefault(context.findtext("name"), {})
        for message in context.iter("message"):
            translation = message.find("translation")
            messages[message.findtext("source")] = (translation.text or "", translation.get("type"))
    return contexts


def escaped(text):
    for sign, name in (("&", "amp"), ("<", "lt"), (">", "gt"), ('"', "quot"), ("'", "apos")):
        text = text.replace(sign, f"&{name};")
    return text


def write_messages(contexts):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             '<TS version="2.1" language="de" sourcelanguage="en">']
    for context in sorted(contexts):
        if not contexts[context]:
            continue
        lines += ["<context>", f"    <name>{context}</name>"]
        for english, (german, kind) in contexts[context].items():
            marked = f' type="{kind}"' if kind else ""
            lines += ["    <message>", f"        <source>{escaped(english)}</source>",
                      f"        <translation{marked}>{escaped(german)}</translation>",
                      "    </message>"]
        lines.append("</context>")
    GERMAN.write_text("\n".join(lines + ["</TS>", ""]))


def places(text):
    return set(re.findall(r"%[1-9]", text))


def add(path, contexts):
    wrong = []
    for number, line in enumerate(pathlib.Path(path).read_text().splitlines(), 1):
        if not line.strip():
            continue
        row = line.split("\t")
        if len(row) != 3 or not all(row):
            wrong.append(f"{path}:{number}: a context, English and German are needed")
            continue
        context, english, german = row
        if places(english) != places(german):
            wrong.append(f"{path}:{number}: the places differ: {english}")
            continue
        contexts.setdefault(context, {})[english] = (german, None)
    return wrong


def unused(contexts):
    marked, of_classes = in_sources()
    known = in_data() | of_classes
    return [(context, english) for context, messages in contexts.items() for english in messages
            if (context, english) not in marked and english not in known]


def main():
    options = argparse.ArgumentParser(description=__doc__,
                                      formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("tables", nargs="*", metavar="NEW.tsv")
    options.add_argument("--unused", action="store_true", help="name what nothing says any more")
    options.add_argument("--remove", action="store_true", help="name it and take it out")
    given = options.parse_args()

    contexts = read_messages()
    wrong = [line for table in given.tables for line in add(table, contexts)]
    if wrong:
        print("\n".join(wrong), file=sys.stderr)
        return 1
    if given.unused or given.remove:
        for context, english in unused(contexts):
            print(f"{context}: {english}")
            if given.remove:
                del contexts[context][english]
    if given.tables or given.remove:
        write_messages(contexts)
    return 0


if __name__ == "__main__":
    sys.exit(main())
