# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds every bundled document against its published schema, and checks that the schemas refuse
documents with one thing wrong. Usage: documents_test.py SOURCE_FOLDER HEATLEDGER"""

import copy
import json
import pathlib
import random
import re
import subprocess
import sys
import unittest

import jsonschema

SOURCE = pathlib.Path(sys.argv[1])
PROGRAM = sys.argv[2]


def read(path):
    return json.loads(path.read_text(encoding="utf-8"))


def schema(name):
    return read(SOURCE / "rigs" / "data" / "schemas" / f"{name}.schema.json")


def validator(of):
    kind = jsonschema.validators.validator_for(of)
    kind.check_schema(of)
    return kind(of)


def part(of, definition):
    """The schema of one part of a document."""
    return {"$schema": of["$schema"], "$ref": f"#/$defs/{definition}", "$defs": of["$defs"]}


def bundled(pattern):
    found = sorted((SOURCE / "rigs" / "data").glob(pattern))
    assert found, pattern
    return found


def wrong(document, path, value):
    """A copy with one value replaced, or taken away where `value` is None."""
    other = copy.deepcopy(document)
    *way, last = path
    at = other
    for step in way:
        at = at[step]
    if value is None:
        del at[last]
    else:
        at[last] = value
    return other


def closed(of):
    """The schema without the freedom to add keys: what the program prints must be described."""
    if isinstance(of, list):
        return [closed(each) for each in of]
    if not isinstance(of, dict):
        return of
    other = {key: closed(value) for key, value in of.items()}
    if other.get("type") == "object" and "properties" in other:
        other["additionalProperties"] = False
    return other


def result_of(command, plan):
    ran = subprocess.run([PROGRAM, command, "-", "--json"], input=json.dumps(plan).encode(), capture_output=True)
    assert ran.returncode == 0, ran.stderr.decode() + ran.stdout.decode()[:500]
    return json.loads(ran.stdout)


def resolved(of, node):
    """What stands beside a reference holds together with what is referred to."""
    while "properties" not in node and "items" not in node:
        if "$ref" in node:
            node = of["$defs"][node["$ref"].split("/")[-1]]
        elif "anyOf" in node:
            node = node["anyOf"][0]
        else:
            break
    return node


def objects_in(of, node, document):
    """Every object of a plan, each with its schema."""
    node = resolved(of, node)
    if isinstance(document, list):
        for entry in document:
            yield from objects_in(of, node["items"], entry)
    elif isinstance(document, dict) and "properties" in node:
        yield document, node["properties"]
        for key, value in document.items():
            if key in node["properties"]:
                yield from objects_in(of, node["properties"][key], value)


def changed(of, plan, chance):
    """The plan with some keys dropped, and others added as the schema's examples have them."""
    plan = copy.deepcopy(plan)
    for _ in range(chance.randint(1, 2)):
        at, known = chance.choice(list(objects_in(of, of, plan)))
        absent = [key for key in known if key not in at and "examples" in known[key]]
        if at and (not absent or chance.random() < 0.5):
            del at[chance.choice(list(at))]
        elif absent:
            key = chance.choice(absent)
            at[key] = copy.deepcopy(known[key]["examples"][0])
    if "grain" not in plan.get("batch", {}):
        plan.get("batch", {}).pop("mash", None)  # without grain nobody looks at it
    return plan


def check(plan):
    """Whether the program accepts a plan, and what it says."""
    ran = subprocess.run([PROGRAM, "check", "-"], input=json.dumps(plan).encode(), capture_output=True)
    assert ran.returncode in (0, 2), ran.stderr.decode()
    return ran.returncode == 0, " ".join((ran.stdout + ran.stderr).decode().split())


class Schemas(unittest.TestCase):
    def accept(self, of, document, name):
        problems = [f"{list(e.absolute_path)}: {e.message}" for e in validator(of).iter_errors(document)]
        self.assertEqual(problems, [], name)

    def refuse(self, of, document, path, value):
        self.assertTrue(validator(of).is_valid(document), "the document that is to be broken")
        self.assertFalse(validator(of).is_valid(wrong(document, path, value)), f"{path} = {value!r}")

    def test_are_schemas_of_the_dialect_they_name(self):
        for path in bundled("schemas/*.schema.json"):
            with self.subTest(path.name):
                validator(read(path))

    def test_accept_the_bundled_rules(self):
        for path in bundled("rules/*.json"):
            with self.subTest(path.name):
                self.accept(schema("rules"), read(path), path.name)

    def test_accept_the_bundled_catalogue(self):
        for path in bundled("catalogue/*.json"):
            with self.subTest(path.name):
                self.accept(schema("catalogue"), read(path), path.name)
        rig = part(schema("plan"), "rig")
        for path in bundled("catalogue/rigs/*.json"):
            with self.subTest(path.name):
                self.accept(rig, read(path), path.name)

    def test_accept_the_bundled_tariffs(self):
        for path in bundled("tariffs/*.json"):
            with self.subTest(path.name):
                self.accept(schema("tariff"), read(path), path.name)

    def test_say_the_same_of_a_tariff_within_a_plan(self):
        alone = schema("tariff")
        within = schema("plan")["$defs"]["tariff"]
        # A document of its own is one that others build on: it says of itself what it is.
        for key in ("$schema", "$id", "title", "if", "then"):
            del alone[key]
        for tariff in (alone, within):
            for key in ("format", "status"):
                del tariff["properties"][key]
        self.assertEqual(alone, within)

    def test_accept_the_bundled_plan_and_those_of_the_documentation(self):
        for path in bundled("demo/*.json") + bundled("starts/*.json"):
            with self.subTest(path.name):
                self.accept(schema("plan"), read(path), path.name)
        plans = 0
        for page in sorted((SOURCE / "docs").glob("*.md")):
            text = page.read_text(encoding="utf-8")
            blocks = re.findall(r"as `([^`]+\.json)`:?\s+```json\n(.*?)```", text, re.DOTALL)
            for name, block in blocks:
                document = json.loads(block)
                if "rigs" not in document or name == "broken.json":
                    continue  # a rig of its own, or the one that shows problems
                plans += 1
                with self.subTest(name):
                    self.accept(schema("plan"), document, name)
        self.assertGreater(plans, 0)

    def test_refuse_wrong_rules(self):
        rules = read(SOURCE / "rigs/data/rules/united-states.json")
        for path, value in [
            (["format", "name"], "heat-ledger-plan"),
            (["format", "version"], 2),
            (["region"], None),
            (["edition"], None),
            (["voltages"], None),
            (["voltages", 0, "clause"], None),
            (["voltages", 0, "source"], None),
            (["voltages", 0, "status"], "certain"),
            (["voltages", 0, "nominal"], "none"),
            (["voltages", 0, "highest"], 126),
            (["voltages", 0, "higest"], "126 V"),
            (["breakers", "sizes"], "15 A"),
            (["long_use"], {}),
            (["rulez"], []),
        ]:
            with self.subTest(path=path, value=value):
                self.refuse(schema("rules"), rules, path, value)

    def test_refuse_a_wrong_catalogue(self):
        supplies = read(SOURCE / "rigs/data/catalogue/supplies.json")
        materials = read(SOURCE / "rigs/data/catalogue/materials.json")
        for document, path, value in [
            (supplies, ["supplies", 0, "source"], None),
            (supplies, ["supplies", 0, "voltage"], 120),
            (supplies, ["supplies", 0, "amps"], "15 A"),
            (materials, ["materials", 0, "status"], "sure"),
            (materials, ["materials", 0, "use"], ["roof"]),
            (materials, ["materials", 0, "source"], ""),
        ]:
            with self.subTest(path=path, value=value):
                self.refuse(schema("catalogue"), document, path, value)

    def test_refuse_a_wrong_plan(self):
        plan = read(bundled("demo/*.json")[0])
        for path, value in [
            (["format", "version"], 2),
            (["batch"], None),
            (["batch", "boil"], 60),
            (["place", "room"], None),
            (["rigs"], []),
            (["rigs", 0, "name"], ""),
            (["rigs", 0, "wired"], "star"),
            (["tariff"], {"dated": "2026-01"}),
            (["tariff"], {"price": 0.17}),
            (["tariff"], {"price": "0.17 USD/kWh", "day": "holiday"}),
            (["tariff"], {"price": "0.17 USD/kWh", "dated": "January"}),
            (["tariff"], {"price": "0.17 USD/kWh", "tiers": []}),
            (["tariff"], {"times": {"weekend": []}}),
            (["tariff"], {"tiers": [{"price": "0.1 CAD/kWh"}]}),
            (["tariff"], {"price": "0.17 USD/kWh", "brew_from": "8 o'clock"}),
        ]:
            with self.subTest(path=path, value=value):
                self.refuse(schema("plan"), plan, path, value)

    def test_agree_with_the_reader_on_which_keys_go_together(self):
        of = schema("plan")
        plan = read(bundled("demo/*.json")[0])
        kettle = read(SOURCE / "rigs/data/catalogue/rigs/40-l-steel-kettle.json")
        pair = [{"power": "1 kW", "rated_voltage": "230 V", "top_height": "60 mm"}] * 2
        in_full = {**copy.deepcopy(kettle), "name": "In full", "supply": {"voltage": "230 V", "current": "16 A"}}
        two = {key: value for key, value in in_full.items() if key != "element"}
        two.update(name="Two", elements=pair, wired="parallel", pump={"power": "30 W"})
        accepted = refused = 0
        chance = random.Random(2025)
        for number in range(250):
            base = {**plan, "rigs": [*chance.sample(plan["rigs"], 1), copy.deepcopy(chance.choice([in_full, two]))]}
            document = changed(of, base, chance) if number else base
            fine, said = check(document)
            problems = [f"{list(e.absolute_path)}: {e.message}" for e in validator(of).iter_errors(document)]
            with self.subTest(number):
                if fine:
                    accepted += 1
                    self.assertEqual(problems, [], f"the reader accepts {json.dumps(document)}")
                elif any("same_as" in rig for rig in document.get("rigs", [])):
                    continue  # what goes together is then the reader's to know: it takes two rigs
                elif re.search(r"is missing|keep one|neither|around nothing", said):
                    refused += 1
                    self.assertNotEqual(problems, [], f"the reader: {said}\n{json.dumps(document)}")
        self.assertGreater(accepted, 70)
        self.assertGreater(refused, 70)

    def test_accept_a_rig_that_follows_another_and_refuse_it_where_it_is_wrong(self):
        of = schema("plan")
        plan = read(bundled("demo/*.json")[0])
        plan["rigs"][1] = {
            "name": "Bare",
            "same_as": "a",
            "vessel": {"height": "420 mm"},
            "element": None,
            "wired": "parallel",
            "elements": [{"power": "1 kW", "rated_voltage": "120 V", "top_height": "60 mm"}] * 2,
            "jacket": None,
            "lid": {"open": {"boil": None}},
            "evaporation_factor": None,
        }
        fine, said = check(plan)
        self.assertTrue(fine, said)
        self.accept(of, plan, "a variant")
        for path, value in [
            (["rigs", 1, "name"], None),
            (["rigs", 1, "same_as"], None),
            (["rigs", 1, "same_as"], 1),
            (["rigs", 1, "same_as"], "A"),
            (["rigs", 1, "from"], "40 L steel kettle"),
            (["rigs", 1, "vessel"], "none"),
            (["rigs", 1, "elements"], []),
            (["rigs", 1, "wired"], "star"),
            (["rigs", 1, "jacket"], []),
        ]:
            with self.subTest(path=path, value=value):
                self.refuse(of, plan, path, value)
                broken = json.loads(json.dumps(wrong(plan, path, value)))
                self.assertFalse(check(broken)[0], broken["rigs"][1])

    def test_refuse_a_wrong_tariff(self):
        hours = read(SOURCE / "rigs/data/tariffs/ontario-time-of-use-2024.json")
        tiers = read(SOURCE / "rigs/data/tariffs/ontario-tiered-winter-2024.json")
        flat = read(SOURCE / "rigs/data/tariffs/united-states-average-2024.json")
        for document, path, value in [
            (hours, ["source"], None),
            (hours, ["status"], None),
            (hours, ["status"], "sure"),
            (hours, ["dated"], None),
            (hours, ["name"], None),
            (hours, ["times", "weekday"], None),
            (hours, ["times", "weekday", 0, "from"], "seven"),
            (hours, ["times", "weekday", 0, "price"], None),
            (hours, ["price"], "0.1 CAD/kWh"),
            (tiers, ["tiers"], tiers["tiers"][:1]),
            (tiers, ["tiers", 0, "up_to"], 1000),
            (flat, ["price"], 0.165),
            (flat, ["price"], None),
            (flat, ["format", "version"], 2),
            (flat, ["from"], "Germany average 2025"),
        ]:
            with self.subTest(path=path, value=value):
                self.refuse(schema("tariff"), document, path, value)

    def test_describe_every_key_of_the_results(self):
        demo = read(bundled("demo/*.json")[0])
        stalled, two, hours, tiers, plain = (copy.deepcopy(demo) for _ in range(5))
        for rig in stalled["rigs"][:2]:
            rig["element"] = {"power": "150 W", "rated_voltage": "120 V", "top_height": "60 mm"}
        two["batch"].update(wort="14 L")
        two["batch"]["grain"]["mass"] = "3.2 kg"
        two["rigs"][3]["wired"] = "two circuits"
        two["rigs"][3]["elements"] = [
            {"power": "3 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
            {"power": "8 kW", "rated_voltage": "230 V", "top_height": "60 mm"},
        ]
        hours["tariff"] = {
            "from": "Ontario time of use, winter 2024",
            "brew_from": "08:00",
            "brew_until": "19:00",
            "brews_per_year": 20,
            "jacket_price": 40,
            "element_price": 50,
        }
        hours["place"]["region"] = "United States"
        hours["rigs"][1]["supply"].update(outlet="5-15", feeds="several outlets", other_load="300 W")
        hours["rigs"][1]["cable"] = {"length": "60 m", "conductor": "14 AWG", "use": "building wire"}
        hours["rigs"][1]["pump"] = {"power": "30 W"}
        tiers["tariff"] = {"from": "Ontario tiered, winter 2024", "used_this_month": "990 kWh", "rebate": "13 %"}
        tiers["batch"]["mash"] = {"unplugged": {"temperature": "67 C", "time": "8 h"}}
        del tiers["place"]["altitude"]
        tiers["place"]["pressure"] = "1013 hPa"
        for key in ("tariff", "jacket_to_compare"):
            plain.pop(key, None)
        for key in ("grain", "mash", "mashing_in"):
            plain["batch"].pop(key, None)
        for rig in plain["rigs"]:
            rig["supply"] = {"voltage": "208 V", "current": "15 A"}
            rig["element"] = {"power": "3 kW", "rated_voltage": "230 V", "top_height": "60 mm"}
        plans = {"demo": demo, "stalled": stalled, "two": two, "hours": hours, "tiers": tiers, "plain": plain}
        commands = ["answer", "day", "size", "insulate", "night", "boil", "cost", "circuit", "room", "sure", "chill", "wort"]
        for name, plan in plans.items():
            for command in commands if name == "demo" else ["answer", "night", "circuit", "room", "cost", "sure", "chill", "wort"]:
                with self.subTest(f"{command} {name}"):
                    result = result_of(command, plan)
                    self.accept(schema("result"), result, name)
                    self.accept(closed(schema("result")), result, name)

    def test_refuse_a_wrong_result(self):
        result = result_of("circuit", read(bundled("demo/*.json")[0]))
        circuit = ["rigs", 0, "circuit"]
        for path, value in [
            (["format", "version"], 1),
            (["cautions"], None),
            (["rigs", 0, "day", "outcome"], "boils"),
            ([*circuit, "verdict"], "fits perhaps"),
            ([*circuit, "deferral"], None),
            ([*circuit, "split", "parts"], None),
            ([*circuit, "circuits", 0, "branch_current_A"], "6.8 A"),
            ([*circuit, "circuits", 0, "verdicts", 0, "edition"], None),
            ([*circuit, "circuits", 0, "verdicts", 0, "findings", 0, "cite", "status"], "sure"),
        ]:
            with self.subTest(path=path, value=value):
                self.refuse(schema("result"), result, path, value)

    def test_are_printed_by_the_program(self):
        for path in bundled("schemas/*.schema.json"):
            name = path.name.removesuffix(".schema.json")
            with self.subTest(name):
                ran = subprocess.run([PROGRAM, "schema", name], capture_output=True, check=True)
                self.assertEqual(json.loads(ran.stdout), read(path))


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
