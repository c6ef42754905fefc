// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/verbs.hpp"

#include <algorithm>
#include <array>

namespace gui {
namespace {

using Text = std::string_view;

constexpr std::array<Text, 3> kAnswer{"heatledger answer",
                                      "heatledger answer my-plan.json --units US",
                                      "heatledger answer my-plan.json --supply-voltage \"208 V\""};
constexpr std::array<Text, 2> kOverview{"heatledger overview my-plan.json",
                                        "heatledger overview my-plan.json --rig b"};
constexpr std::array<Text, 2> kDay{"heatledger day my-plan.json",
                                   "heatledger day my-plan.json --csv > day.csv"};
constexpr std::array<Text, 2> kSize{
    "heatledger size my-plan.json --within \"45 min\"",
    "heatledger size my-plan.json --boil-off \"8 %/h\" --supply-voltage \"208 V\""};
constexpr std::array<Text, 2> kInsulate{"heatledger insulate my-plan.json",
                                        "heatledger insulate my-plan.json --alone \"10 h\""};
constexpr std::array<Text, 3> kNight{"heatledger night my-plan.json --alone \"10 h\"",
                                     "heatledger night my-plan.json --suppose-jacket",
                                     "heatledger night my-plan.json --csv > night.csv"};
constexpr std::array<Text, 2> kBoil{"heatledger boil my-plan.json",
                                    "heatledger boil my-plan.json --altitude \"1600 m\""};
constexpr std::array<Text, 2> kCost{"heatledger cost my-plan.json",
                                    "heatledger cost my-plan.json --json"};
constexpr std::array<Text, 3> kCircuit{"heatledger circuit my-plan.json",
                                       "heatledger circuit my-plan.json --region Canada",
                                       "heatledger circuit my-plan.json --circuit \"20 A\""};
constexpr std::array<Text, 2> kRoom{"heatledger room my-plan.json",
                                    "heatledger room my-plan.json --humidity \"60 %\""};
constexpr std::array<Text, 3> kChill{"heatledger chill my-plan.json",
                                     "heatledger chill my-plan.json --rig b",
                                     "heatledger chill my-plan.json --csv > chill.csv"};
constexpr std::array<Text, 3> kWort{"heatledger wort my-plan.json",
                                    "heatledger wort my-plan.json --altitude \"1600 m\"",
                                    "heatledger wort my-plan.json --csv > wort.csv"};
constexpr std::array<Text, 3> kHelps{"heatledger helps my-plan.json",
                                     "heatledger helps my-plan.json --wish sooner --rig b",
                                     "heatledger helps my-plan.json --together all"};
constexpr std::array<Text, 3> kSure{"heatledger sure my-plan.json",
                                    "heatledger sure my-plan.json --rig b",
                                    "heatledger sure my-plan.json --csv > sure.csv"};
constexpr std::array<Text, 2> kSafety{"heatledger safety my-plan.json",
                                      "heatledger safety my-plan.json --language de"};
constexpr std::array<Text, 3> kLearn{
    "heatledger learn my-plan.json --readings night.csv",
    "heatledger learn my-plan.json --readings night.csv --rig b --checked",
    "heatledger learn my-plan.json --readings log.csv --temperature 3 --leave-out"};
constexpr std::array<Text, 3> kFollow{
    "heatledger follow my-plan.json --readings night.csv --rig b",
    "heatledger follow my-plan.json --readings log.csv --leave-out",
    "heatledger follow my-plan.json --readings night.csv --once --now 21:30"};
constexpr std::array<Text, 3> kSweep{
    "heatledger sweep my-plan.json --vary \"batch/boil=45 min, 60 min, 90 min\"",
    "heatledger sweep --vary \"rigs/b/element/power=1 kW..5 kW in 20\" --rig b",
    "heatledger sweep --vary \"place/room=5 C..30 C by 5 C\" --figures cost --json"};
constexpr std::array<Text, 3> kSheet{
    "heatledger sheet my-plan.json", "heatledger sheet my-plan.json --rig b --to sheet.html",
    "heatledger sheet my-plan.json --rig b --language de --units SI,F,gal"};
constexpr std::array<Text, 3> kPicture{
    "heatledger picture how-long my-plan.json --to day.svg",
    "heatledger picture where-heat my-plan.json --rig 2 --to heat.png",
    "heatledger picture worth-jacket my-plan.json --over power --to jacket.csv"};
constexpr std::array<Text, 2> kReport{
    "heatledger report my-plan.json --to day.pdf",
    "heatledger report my-plan.json --language de --units US --to tag.pdf"};
constexpr std::array<Text, 1> kCheck{"heatledger check my-plan.json"};
constexpr std::array<Text, 4> kNew{
    "heatledger new my-plan.json",
    "heatledger new my-kettle.json --kettle \"45 L\" --power \"2.2 kW\" --circuit \"16 A\"",
    "heatledger new my-plan.json --like one-kettle",
    "heatledger new my-plan.json --like night-unplugged --units US"};
constexpr std::array<Text, 3> kList{"heatledger list materials", "heatledger list supplies",
                                    "heatledger list tariffs"};
constexpr std::array<Text, 3> kSchema{"heatledger schema > plan.schema.json",
                                      "heatledger schema rules > rules.schema.json",
                                      "heatledger schema tariff > tariff.schema.json"};

constexpr std::array kVerbs{
    Verb{Command::Answer, "answer", "[PLAN]", TOLD("Terminal", "everything, all rigs side by side"),
         kAnswer},
    Verb{Command::Overview, "overview", "[PLAN]",
         TOLD("Terminal", "the figures that decide, each rig against the first"), kOverview},
    Verb{Command::Day, "day", "[PLAN]",
         TOLD("Terminal", "the day stage by stage, and where the heat went"), kDay},
    Verb{Command::Size, "size", "[PLAN]",
         TOLD("Terminal", "the element, the circuit and the batch that fit each other"), kSize},
    Verb{Command::Insulate, "insulate", "[PLAN]",
         TOLD("Terminal", "what a jacket saves, and whether it is worth it"), kInsulate},
    Verb{Command::Night, "night", "[PLAN]",
         TOLD("Terminal", "how far a mash cools that is left unplugged, hour by hour"), kNight},
    Verb{Command::Boil, "boil", "[PLAN]",
         TOLD("Terminal", "how hard it boils, and what is left afterwards"), kBoil},
    Verb{Command::Cost, "cost", "[PLAN]",
         TOLD("Terminal", "energy and money, by stage, batch and volume"), kCost},
    Verb{Command::Circuit, "circuit", "[PLAN]",
         TOLD("Terminal", "whether the circuit carries it, rule by rule, with the clauses"),
         kCircuit},
    Verb{Command::Room, "room", "[PLAN]",
         TOLD("Terminal", "vapour, heat and humidity in the room, and the airflow that helps"),
         kRoom},
    Verb{Command::Chill, "chill", "[PLAN]",
         TOLD("Terminal",
              "how long the wort takes to its pitching temperature, and the water for it"),
         kChill},
    Verb{Command::Wort, "wort", "[PLAN]",
         TOLD("Terminal", "what time and heat do to the wort: mash, hops and DMS"), kWort},
    Verb{Command::Helps, "helps", "[PLAN]",
         TOLD("Terminal", "the one change that helps most, and the few together"), kHelps},
    Verb{Command::Sure, "sure", "[PLAN]",
         TOLD("Terminal", "how far off the figures may be, and what makes them so"), kSure},
    Verb{Command::Safety, "safety", "[PLAN]",
         TOLD("Terminal", "all there is to take care of on this day, with this plan's figures"),
         kSafety},
    Verb{Command::Learn, "learn", "[PLAN]",
         TOLD("Terminal", "what your own readings of a day say of a kettle, and how sure"), kLearn},
    Verb{Command::Follow, "follow", "[PLAN]",
         TOLD("Terminal",
              "the day while it goes on: what comes next and when, anew with all that is read"),
         kFollow},
    Verb{Command::Sweep, "sweep", "[PLAN]",
         TOLD("Terminal",
              "any keys of the plan over lists and ranges, a row for each combination, for "
              "scripts"),
         kSweep},
    Verb{Command::Sheet, "sheet", "[PLAN]",
         TOLD("Terminal",
              "one rig's day on a page to brew by: times, what to do, what to read and write in"),
         kSheet},
    Verb{Command::Picture, "picture", "QUESTION [PLAN]",
         TOLD("Terminal",
              "one question as a picture (.svg, .png) or as the numbers behind it (.csv, .json)"),
         kPicture},
    Verb{Command::Report, "report", "[PLAN]",
         TOLD("Terminal", "all questions with pictures and tables, as a PDF document"), kReport},
    Verb{Command::Check, "check", "PLAN",
         TOLD("Terminal", "what is wrong with a plan, and nothing else"), kCheck},
    Verb{Command::New, "new", "FILE",
         TOLD("Terminal", "writes a plan to start from; never over a file that exists"), kNew},
    Verb{Command::List, "list", "SUBJECT",
         TOLD("Terminal",
              "what a plan may name: materials, supplies, rigs or tariffs, with sources"),
         kList},
    Verb{Command::Schema, "schema", "[SUBJECT]",
         TOLD("Terminal",
              "the JSON Schema of plans, rules, tariffs, the catalogue or results, for editors and "
              "validators"),
         kSchema}};

}  // namespace

std::span<const Verb> verbs() { return kVerbs; }

const Verb& verbOf(Command command) {
  return *std::find_if(kVerbs.begin(), kVerbs.end(),
                       [&](const Verb& verb) { return verb.command == command; });
}

const Verb* verbCalled(std::string_view name) {
  for (const Verb& verb : kVerbs)
    if (verb.name == name) return &verb;
  return nullptr;
}

bool isAboutAPlan(Command command) {
  return command != Command::New && command != Command::List && command != Command::Schema;
}

bool isDrawn(Command command) { return command == Command::Picture || command == Command::Report; }

bool mayWrite(Command command) { return isDrawn(command) || command == Command::Sheet; }

bool isAboutOneRig(Command command) {
  return isAboutAPlan(command) && command != Command::Check && command != Command::Report &&
         command != Command::Safety;
}

bool hasTable(Command command) {
  return command == Command::List ||
         (isAboutOneRig(command) && !mayWrite(command) && command != Command::Follow);
}

bool isExplained(Command command) {
  return hasTable(command) && command != Command::List && command != Command::Answer &&
         command != Command::Sweep;
}

bool hasSubject(Command command) {
  return command == Command::Picture || command == Command::List || command == Command::Schema;
}

}  // namespace gui
