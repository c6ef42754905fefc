// SPDX-License-Identifier: GPL-3.0-or-later
// Rules documents, read.
#include <algorithm>
#include <cassert>

#include "rigs/circuits/rules.hpp"
#include "rigs/documents/embedded.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/documents/json_parse.hpp"
#include "rigs/documents/problem_words.hpp"

namespace rigs {
namespace {

using namespace physics;

constexpr Range<Current> kRulesCurrents{amperes(0.1), amperes(1000.0)};
constexpr Range<Current> kLeaks{amperes(1e-5), amperes(1.0)};
constexpr Range<Voltage> kRulesVoltages{volts(12.0), volts(1000.0)};
constexpr Range<double> kRulesShares{0.0, 1.0};
constexpr CountRange kSome{1, 100};
constexpr CountRange kAny{0, 100};

// What is missing leaves an error behind; the value then does not matter.
class RulesPart {
 public:
  explicit RulesPart(JsonCursor at) : at_(std::move(at)) {}

  std::string text(std::string_view key) const { return at_.text(key, kLongestText).value_or(""); }
  std::string maybeText(std::string_view key) const {
    return at_.optionalText(key, "", kLongestText).value_or("");
  }
  Current current(std::string_view key, const Range<Current>& range = kRulesCurrents) const {
    return at_.quantity<Current>(key, range).value_or(range.min);
  }
  Voltage voltage(std::string_view key) const {
    return at_.quantity<Voltage>(key, kRulesVoltages).value_or(kRulesVoltages.min);
  }
  double share(std::string_view key) const {
    return at_.quantity<double>(key, kRulesShares).value_or(1.0);
  }
  Temperature temperature(std::string_view key, Temperature otherwise) const {
    return at_.quantity<Temperature>(key, {celsius(-40.0), celsius(200.0)}).value_or(otherwise);
  }
  Time time(std::string_view key) const {
    return at_.quantity<Time>(key, {minutes(1.0), hours(24.0)}).value_or(hours(1.0));
  }
  template <class Q>
  std::optional<Q> maybe(std::string_view key, const Range<Q>& range) const {
    return at_.quantityIfGiven<Q>(key, range);
  }
  std::optional<double> maybeNumber(std::string_view key) const {
    if (!at_.has(key)) return std::nullopt;
    return at_.number(key, {0.0, 1000.0});
  }
  bool flag(std::string_view key, bool absent) const {
    return at_.optionalBoolean(key, absent).value_or(absent);
  }
  // true, false or "not known"; left out, it is not known.
  Earth earth() const {
    if (!at_.has("earth")) return Earth::NotKnown;
    if (at_.isText("earth")) {
      static_cast<void>(at_.oneOf("earth", {"not known"}));
      return Earth::NotKnown;
    }
    const auto stated = at_.optionalBoolean("earth", false);
    return !stated ? Earth::NotKnown : *stated ? Earth::There : Earth::Missing;
  }
  Cite cite() const {
    return {.clause = text("clause"),
            .source = text("source"),
            .status = at_.oneOf<Status>("status", {{"seen", Status::Seen},
                                                   {"computed", Status::Computed},
                                                   {"memory", Status::Memory}})
                          .value_or(Status::Memory),
            .note = maybeText("note")};
  }
  std::vector<Current> currents(std::string_view key) const {
    std::vector<Current> all;
    for (const JsonCursor& one : at_.array(key, kSome).value_or(std::vector<JsonCursor>{}))
      all.push_back(one.asQuantity<Current>(kRulesCurrents).value_or(kRulesCurrents.min));
    return all;
  }
  std::vector<double> shares(std::string_view key) const {
    std::vector<double> all;
    for (const JsonCursor& one : at_.array(key, kSome).value_or(std::vector<JsonCursor>{}))
      all.push_back(one.asNumber(kRulesShares).value_or(1.0));
    return all;
  }
  // May be left out unless it needs an entry.
  template <class Read>
  auto each(std::string_view key, const Read& read, CountRange count = kAny) const {
    std::vector<decltype(read(*this))> all;
    const auto entries = count.min > 0 ? at_.objects(key, count).value_or(std::vector<JsonCursor>{})
                                       : at_.objectsIfGiven(key, count);
    for (const JsonCursor& one : entries) all.push_back(read(RulesPart(one)));
    return all;
  }
  template <class Read>
  auto one(std::string_view key, const Read& read) const -> std::optional<decltype(read(*this))> {
    const auto object = at_.objectIfGiven(key);
    if (!object) return std::nullopt;
    return read(RulesPart(*object));
  }
  const JsonCursor& at() const { return at_; }

 private:
  JsonCursor at_;
};

VoltageRange voltageFrom(const RulesPart& p) {
  p.at().warnAboutKeysExcept(
      {"nominal", "lowest", "highest", "name", "clause", "source", "status", "note"});
  const auto nominal = p.at().quantity<Voltage>("nominal", kRulesVoltages);
  const auto lowest = p.at().quantity<Voltage>("lowest", kRulesVoltages);
  const auto highest = p.at().quantity<Voltage>("highest", kRulesVoltages);
  if (nominal && lowest && *lowest > *nominal)
    p.at().error("lowest",
                 advised(Told(TOLD("Problem", "the lowest voltage is above the nominal one, %1"),
                              amount(*nominal)),
                         Told(TOLD("Problem", "write one below it"))));
  if (nominal && highest && *highest < *nominal)
    p.at().error("highest",
                 advised(Told(TOLD("Problem", "the highest voltage is below the nominal one, %1"),
                              amount(*nominal)),
                         Told(TOLD("Problem", "write one above it"))));
  return {.nominal = nominal.value_or(kRulesVoltages.min),
          .lowest = lowest.value_or(kRulesVoltages.min),
          .highest = highest.value_or(kRulesVoltages.min),
          .name = p.text("name"),
          .cite = p.cite()};
}

LongUse longUseFrom(const RulesPart& p) {
  p.at().warnAboutKeysExcept({"name", "text", "share", "lasts", "within", "conductors", "clause",
                              "source", "status", "note"});
  return {.name = p.text("name"),
          .text = p.text("text"),
          .share = p.share("share"),
          .lasts = p.time("lasts"),
          .within = p.maybe<Time>("within", {minutes(1.0), hours(24.0)}),
          .conductors = p.flag("conductors", false),
          .cite = p.cite()};
}

SharedUse sharedFrom(const RulesPart& p) {
  return {.name = p.text("name"),
          .share = p.share("share"),
          .upTo = p.current("up_to"),
          .cite = p.cite()};
}

Outlet outletFrom(const RulesPart& p) {
  p.at().warnAboutKeysExcept({"name", "voltage", "current", "neutral", "earth", "household",
                              "both_sockets", "fuse", "clause", "source", "status", "note"});
  return {.name = p.text("name"),
          .voltage = p.voltage("voltage"),
          .current = p.current("current"),
          .neutral = p.flag("neutral", true),
          .household = p.flag("household", false),
          .earth = p.earth(),
          .bothSockets = p.maybe<Current>("both_sockets", kRulesCurrents),
          .fuse = p.maybeText("fuse"),
          .cite = p.cite()};
}

Fuse fuseFrom(const RulesPart& p) {
  p.at().warnAboutKeysExcept({"name", "up_to", "carries", "carries_for", "blows", "blows_within",
                              "clause", "source", "status", "note"});
  // No link carries less than its rating or blows at it.
  const auto times = [&](std::string_view key) {
    return p.at().number(key, {1.0, 10.0}).value_or(1.0);
  };
  return {.name = p.text("name"),
          .upTo = p.current("up_to"),
          .carries = times("carries"),
          .blows = times("blows"),
          .carriesFor = p.time("carries_for"),
          .blowsWithin = p.time("blows_within"),
          .cite = p.cite()};
}

ConductorRow rowFrom(const RulesPart& p) {
  p.at().warnAboutKeysExcept(
      {"size", "ampacity", "breaker", "up_to", "resistance", "resistance_at_20C", "loop_at_work"});
  constexpr Range<ResistancePerLength> kPerLength{ohmsPerMetre(1e-5), ohmsPerMetre(1.0)};
  ConductorRow row{.area = p.at()
                               .quantity<Area>("size", {squareMetres(0.1e-6), squareMetres(500e-6)})
                               .value_or(squareMetres(1e-6)),
                   .size = p.text("size"),
                   .ampacity = p.current("ampacity"),
                   .breaker = p.maybe<Current>("breaker", kRulesCurrents),
                   .upTo = p.maybe<Length>("up_to", {metres(0.1), metres(1000.0)}),
                   .upToText = p.maybeText("up_to"),
                   .resistance = p.maybe("resistance", kPerLength),
                   .loopAtWork = p.maybe("loop_at_work", kPerLength)};
  return row;
}

ConductorTable tableFrom(const RulesPart& p) {
  p.at().warnAboutKeysExcept({"use", "insulation", "ambient", "loaded_conductors", "method", "rows",
                              "ambient_factors", "clause", "source", "status", "note"});
  constexpr Range<Temperature> kTemperatures{celsius(-40.0), celsius(200.0)};
  ConductorTable table{
      .use = p.at()
                 .oneOf<CableUse>("use", {{"building wire", CableUse::BuildingWire},
                                          {"cord", CableUse::Cord},
                                          {"extension set", CableUse::ExtensionSet}})
                 .value_or(CableUse::Cord),
      .insulation = p.maybe<Temperature>("insulation", kTemperatures),
      .ambient = p.at().quantity<Temperature>("ambient", kTemperatures).value_or(celsius(30.0)),
      .loaded = p.at().integer("loaded_conductors", {2, 40}).value_or(3),
      .method = p.maybeText("method"),
      .rows = p.each("rows", rowFrom, kSome),
      .ambientFactors = p.each(
          "ambient_factors",
          [&](const RulesPart& row) {
            return AmbientRow{
                .upTo =
                    row.at().quantity<Temperature>("up_to", kTemperatures).value_or(celsius(30.0)),
                .factor = row.at().number("factor", {0.0, 2.0}).value_or(0.0)};
          }),
      .cite = p.cite()};
  return table;
}

Breakers breakersFrom(const RulesPart& p) {
  return {.sizes = p.currents("sizes"),
          .holds = p.maybeNumber("holds"),
          .trips = p.maybeNumber("trips"),
          .instant = p.each("instant",
                            [](const RulesPart& one) {
                              return Instant{.type = one.text("type"),
                                             .from = one.maybeNumber("from").value_or(0.0),
                                             .to = one.maybeNumber("to").value_or(0.0)};
                            }),
          .cite = p.cite()};
}

CircuitRules rulesFrom(const RulesPart& p) {
  CircuitRules r;
  r.region = p.text("region");
  r.code = p.text("code");
  r.edition = p.text("edition");
  r.about = p.text("about");
  for (const JsonCursor& word : p.at().arrayIfGiven("circuits_of", kAny))
    r.circuitsOf.push_back(word.asText(kLongestText).value_or(""));
  r.voltages = p.each("voltages", voltageFrom, kSome);
  r.tolerance = p.one("rating_tolerance", [](const RulesPart& one) {
    return Tolerance{.rating = {.below = one.share("below"),
                                .above = one.share("above"),
                                .atLeast = one.maybe<Power>("at_least", {watts(0.0), watts(1000.0)})
                                               .value_or(watts(0.0))},
                     .cite = one.cite()};
  });
  r.breakers = p.one("breakers", breakersFrom).value_or(Breakers{});
  r.fuses = p.each("fuses", fuseFrom);
  r.longUse = p.each("long_use", longUseFrom);
  r.shared = p.each("shared", sharedFrom);
  r.outlets = p.each("outlets", outletFrom);
  r.outletLoads = p.each("outlet_loads", [](const RulesPart& one) {
    return OutletLoad{.circuit = one.current("circuit"),
                      .outlet = one.current("outlet"),
                      .most = one.current("most"),
                      .cite = one.cite()};
  });
  r.outletsOnCircuit = p.each("outlets_on_circuit", [](const RulesPart& one) {
    return OutletsOnCircuit{
        .circuit = one.current("circuit"), .outlets = one.currents("outlets"), .cite = one.cite()};
  });
  r.householdSockets = p.one("household_sockets", [](const RulesPart& one) {
    return HouseholdSockets{.moreThan = one.current("more_than"),
                            .longerThan = one.time("longer_than"),
                            .text = one.text("text"),
                            .cite = one.cite()};
  });
  r.largestProtection = p.one("largest_protection", [](const RulesPart& one) {
    return LargestProtection{.times = one.maybeNumber("times").value_or(1.5),
                             .upTo = one.current("up_to"),
                             .thenUpTo = one.current("then"),
                             .cite = one.cite()};
  });
  r.subdivide = p.one("subdivide", [](const RulesPart& one) {
    return Subdivide{.above = one.current("above"), .text = one.text("text"), .cite = one.cite()};
  });
  r.nextSize = p.one("next_size", [](const RulesPart& one) {
    return NextSize{.text = one.text("text"), .cite = one.cite()};
  });
  r.terminations = p.one("terminations", [](const RulesPart& one) {
    return Terminations{.usual = one.temperature("usual", celsius(60.0)),
                        .marked = one.temperature("marked", celsius(75.0)),
                        .cite = one.cite()};
  });
  r.adjustments = p.each("adjustments", [](const RulesPart& one) {
    return Adjustment{.from = one.at().integer("from", {2, 100}).value_or(4),
                      .upTo = one.at().integer("up_to", {2, 100}).value_or(6),
                      .factor = one.at().number("factor", {0.0, 1.0}).value_or(1.0),
                      .cite = one.cite()};
  });
  r.groundFault = p.one("ground_fault", [](const RulesPart& one) {
    return Protection{.name = one.text("name"),
                      .text = one.text("text"),
                      .holds = one.current("holds", kLeaks),
                      .trips = one.current("trips", kLeaks),
                      .cite = one.cite()};
  });
  r.leakage = p.one("leakage", [](const RulesPart& one) {
    return Leakage{.perKilowatt = one.current("per_kW", kLeaks),
                   .atLeast = one.current("at_least", kLeaks),
                   .atMost = one.current("at_most", kLeaks),
                   .cite = one.cite()};
  });
  r.conductors = p.each("conductors", tableFrom);
  r.drum = p.one("drum", [](const RulesPart& one) {
    return Drum{.layers = one.shares("layers"), .cite = one.cite()};
  });
  r.voltageDrop = p.each("voltage_drop", [](const RulesPart& one) {
    return DropLimit{.share = one.share("share"),
                     .part = one.text("part"),
                     .binding = one.flag("binding", false),
                     .cite = one.cite()};
  });
  return r;
}

}  // namespace

std::optional<CircuitRules> readRules(std::string_view document, Problems& problems) {
  const std::size_t before = problems.size();
  const auto json = parseJson(document, problems);
  if (!json) return std::nullopt;
  const auto at = JsonCursor(*json, problems).asObject();
  if (!at) return std::nullopt;
  if (!at->has("format")) {
    at->error("format", missing("format", withExample(Told(TOLD("Problem", "an object is needed")),
                                                      Verbatim{R"({"name": "heat-ledger-rules", )"
                                                               R"("version": 1})"})));
  } else if (const auto format = at->object("format")) {
    static_cast<void>(format->oneOf("name", {"heat-ledger-rules"}));
    static_cast<void>(format->integer("version", {1, 1}));
  }
  at->warnAboutKeysExcept({"format",
                           "region",
                           "code",
                           "edition",
                           "about",
                           "circuits_of",
                           "voltages",
                           "rating_tolerance",
                           "breakers",
                           "fuses",
                           "long_use",
                           "shared",
                           "outlets",
                           "outlet_loads",
                           "outlets_on_circuit",
                           "household_sockets",
                           "largest_protection",
                           "subdivide",
                           "next_size",
                           "terminations",
                           "adjustments",
                           "ground_fault",
                           "leakage",
                           "conductors",
                           "drum",
                           "voltage_drop"});
  CircuitRules rules = rulesFrom(RulesPart(*at));
  if (!std::is_sorted(rules.breakers.sizes.begin(), rules.breakers.sizes.end()))
    at->error("breakers", Told(TOLD("Problem", "the sizes must stand in ascending order")));
  const bool failed =
      hasErrors({problems.begin() + static_cast<std::ptrdiff_t>(before), problems.end()});
  if (failed) return std::nullopt;
  return rules;
}

const std::vector<CircuitRules>& bundledRules() {
  // They are ours and tested: a problem in them is a mistake of ours.
  static const std::vector<CircuitRules> all = [] {
    std::vector<CircuitRules> read;
    Problems problems;
    for (const EmbeddedDocument& document : embeddedDocuments()) {
      if (!document.name.starts_with("rules/")) continue;
      if (auto one = readRules(document.text, problems)) read.push_back(std::move(*one));
    }
    assert(problems.empty());
    return read;
  }();
  return all;
}

}  // namespace rigs
