// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/result_json_sweep.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <exception>
#include <memory>
#include <new>
#include <utility>

#include "rigs/answers/helps.hpp"
#include "rigs/answers/plan_check.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

constexpr std::string_view kNoPlan = "no plan";

// How names of figures end, and what the number then counts.
struct NamedUnit {
  QuantityKind kind;
  std::string_view ending;
  std::string_view one;
  double counts = 1.0;
};
constexpr std::array kNamedUnits{
    NamedUnit{QuantityKind::Fraction, "", "100 %", 0.01},
    NamedUnit{QuantityKind::FractionRate, "_per_h", "1 %/h", 0.01},
    NamedUnit{QuantityKind::Power, "_W", "1 W"},
    NamedUnit{QuantityKind::Energy, "_kWh", "1 kWh"},
    NamedUnit{QuantityKind::Volume, "_L", "1 L"},
    NamedUnit{QuantityKind::Mass, "_kg", "1 kg"},
    NamedUnit{QuantityKind::Temperature, "_C", "1 °C"},
    NamedUnit{QuantityKind::TemperatureDifference, "_K", "1 K"},
    NamedUnit{QuantityKind::TemperatureRate, "_K_per_min", "1 K/min"},
    NamedUnit{QuantityKind::Time, "_s", "1 s"},
    NamedUnit{QuantityKind::Length, "_m", "1 m"},
    NamedUnit{QuantityKind::Area, "_mm2", "1 mm2"},
    NamedUnit{QuantityKind::Velocity, "_m_per_s", "1 m/s"},
    NamedUnit{QuantityKind::Voltage, "_V", "1 V"},
    NamedUnit{QuantityKind::Current, "_A", "1 A"},
    NamedUnit{QuantityKind::Resistance, "_ohm", "1 ohm"},
    NamedUnit{QuantityKind::ResistancePerLength, "_ohm_per_m", "1 ohm/m"},
    NamedUnit{QuantityKind::Pressure, "_Pa", "1 Pa"},
    NamedUnit{QuantityKind::ThermalInsulance, "_m2_K_per_W", "1 m2*K/W"},
    NamedUnit{QuantityKind::ThermalConductivity, "_W_per_m_K", "1 W/(m K)"},
    NamedUnit{QuantityKind::HeatTransferCoefficient, "_W_per_m2_K", "1 W/(m2 K)"},
    NamedUnit{QuantityKind::ThermalConductance, "_W_per_K", "1 W/K"},
    NamedUnit{QuantityKind::HeatCapacity, "_J_per_K", "1 J/K"},
    NamedUnit{QuantityKind::SpecificHeat, "_J_per_kg_K", "1 J/(kg K)"},
    NamedUnit{QuantityKind::SpecificEnergy, "_J_per_kg", "1 J/kg"},
    NamedUnit{QuantityKind::HeatFlux, "_W_per_m2", "1 W/m2"},
    NamedUnit{QuantityKind::MassDensity, "_kg_per_m3", "1 kg/m3"},
    NamedUnit{QuantityKind::VolumePerMass, "_L_per_kg", "1 L/kg"},
    NamedUnit{QuantityKind::MassFlow, "_kg_per_h", "1 kg/h"},
    NamedUnit{QuantityKind::MassFlux, "_kg_per_m2_h", "1 kg/(m2 h)"},
    NamedUnit{QuantityKind::VolumeFlow, "_L_per_h", "1 L/h"}};

const NamedUnit& namedUnit(QuantityKind kind) {
  return *std::find_if(kNamedUnits.begin(), kNamedUnits.end(),
                       [kind](const NamedUnit& one) { return one.kind == kind; });
}

bool isQuantityOrShare(const Key& key) {
  return key.kind == ValueKind::Quantity || key.kind == ValueKind::Share ||
         key.kind == ValueKind::WordOrShare;
}

Json asJson(const Figure& figure) {
  return figure.isWord ? Json(figure.text) : Json::parse(figure.text);
}

std::string lineOf(const Json& json) {
  return json.dump(-1, ' ', false, Json::error_handler_t::replace) + '\n';
}

// Under the letter that it has among all.
Plan onlyLettered(const Plan& plan, std::size_t index) {
  Plan alone = onlyRig(plan, index);
  alone.rigs.front().statedSlot = slotsOf(plan.rigs)[index];
  return alone;
}

SweepRow rowWithout(Problems problems) {
  std::erase_if(problems, [](const Problem& one) { return one.severity != Severity::Error; });
  return {.rig = {}, .outcome = std::string(kNoPlan), .figures = {}, .problems = problems};
}

// What checks of one rig alone call the first is another of the plan's.
void renumber(Problems& problems, std::size_t index) {
  constexpr std::string_view kFirst = "/rigs/0";
  for (Problem& one : problems)
    if (one.where.starts_with(kFirst))
      one.where = "/rigs/" + std::to_string(index) + one.where.substr(kFirst.size());
}

bool showsRig(const Sweep& sweep, const Plan& plan, std::size_t i) {
  return !sweep.rig || plan.rigs.size() == 1 || i == *sweep.rig;
}

// False where it was stopped.
bool addWhatHelps(const Sweep& sweep, const Plan& plan, const std::function<bool()>& stop,
                  Answers& answers) {
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) {
    if (!showsRig(sweep, plan, i)) continue;
    auto found = std::make_shared<const HelpsAnswer>(
        helps(plan, i, kUsualTogether, {.stop = stop, .progress = {}}));
    if (found->isPart()) return false;
    answers.rigs[i].helps = std::move(found);
  }
  return true;
}

// Nothing where it was stopped.
std::vector<SweepRow> rowsOfPlan(const Sweep& sweep, const Plan& plan,
                                 const std::function<bool()>& stop) {
  std::vector<Answers> answers;
  for (const Depth depth : depthsFor(sweep.figures)) answers.push_back(answer(plan, depth));
  if (needsWhatHelps(sweep.figures) && !addWhatHelps(sweep, plan, stop, answers.front())) return {};
  const auto slots = slotsOf(plan.rigs);
  std::vector<SweepRow> rows;
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) {
    if (!showsRig(sweep, plan, i)) continue;
    SweepRow row{.rig = letterOfSlot(slots[i]),
                 .outcome = std::string(outcomeKey(answers.front().rigs[i].day.outcome)),
                 .figures = figuresOf(plan, answers.front(), i, sweep.figures),
                 .problems = {}};
    for (std::size_t k = 1; k < answers.size(); ++k) {
      const auto more = figuresOf(plan, answers[k], i, sweep.figures);
      for (std::size_t f = 0; f < more.size(); ++f)
        if (!row.figures[f]) row.figures[f] = more[f];
    }
    rows.push_back(std::move(row));
  }
  return rows;
}

std::vector<SweepRow> rowsOf(const Sweep& sweep, const std::vector<VariedValue>& values,
                             const std::function<bool()>& stop) {
  Problems problems;
  auto plan = readPlan(sweep.combinations.document(sweep.document, values), sweep.folder, problems);
  if (!plan) return {rowWithout(std::move(problems))};
  problems.clear();
  const bool alone = sweep.rig && !needsAllRigs(sweep.figures);
  if (alone) plan = onlyLettered(*plan, *sweep.rig);
  checkPlan(*plan, problems);
  if (alone) renumber(problems, *sweep.rig);
  if (hasErrors(problems)) return {rowWithout(std::move(problems))};
  return rowsOfPlan(sweep, *plan, stop);
}

Json problemsOf(const SweepRow& row) {
  Json all = Json::array();
  for (const Problem& one : row.problems)
    all.push_back({{"where", one.where}, {"message", inEnglish(one.message)}});
  return all;
}

}  // namespace

const std::vector<std::string>& decidingFigures() {
  static const std::vector<std::string> all{"element/rating_W",
                                            "element/rated_at_V",
                                            "supply/nominal_V",
                                            "supply/overloaded",
                                            "day/electrical/delivered_W",
                                            "day/least_to_boil_W",
                                            "day/to_strike_s",
                                            "day/heating_to_boil_s",
                                            "day/duration_s",
                                            "day/water_L",
                                            "day/pre_boil_cold_L",
                                            "day/result_cold_L",
                                            "day/boil/share_of_pre_boil_per_h",
                                            "day/total/from_wall_kWh",
                                            "cost"};
  return all;
}

SweptCombination swept(const Sweep& sweep, std::uint64_t i, const std::function<bool()>& stop) {
  SweptCombination made{.number = i + 1, .values = sweep.combinations.at(i), .rows = {}};
  try {
    made.rows = rowsOf(sweep, made.values, stop);
    made.isPart = made.rows.empty();
  } catch (const std::bad_alloc&) {
    throw;
  } catch (const std::exception& error) {
    made.rows = {rowWithout({{Severity::Error, "", Told::just(Verbatim{error.what()})}})};
  }
  return made;
}

std::string variedName(const Variation& variation) {
  const Key& key = variation.key();
  if (!isQuantityOrShare(key)) return variation.place();
  const QuantityKind kind = key.kind == ValueKind::Quantity ? key.quantity : QuantityKind::Fraction;
  return variation.place() + std::string(namedUnit(kind).ending);
}

Figure variedFigure(const Variation& variation, const VariedValue& value) {
  if (!value.number) return {value.text, true};
  const Key& key = variation.key();
  double number = *value.number;
  if (key.kind == ValueKind::Quantity) {
    const NamedUnit& unit = namedUnit(key.quantity);
    number = unit.counts * detail::numberLike(key.quantity, number, unit.one);
  }
  // As it was written: 23 L are 0.023 m3, and 23 again; of a temperature kelvins take two digits.
  const bool point = key.kind == ValueKind::Quantity && key.quantity == QuantityKind::Temperature;
  return {formatNumber(number, {.significantDigits = point ? 13 : 15, .decimals = {}}), false};
}

std::string problemsInLine(const SweepRow& row) {
  std::string all;
  for (const Problem& one : row.problems) {
    if (!all.empty()) all += " | ";
    all += (one.where.empty() ? "" : one.where + ": ") + inEnglish(one.message);
  }
  return all;
}

std::string sweepHeadLine(const Sweep& sweep) {
  Json varied = Json::array();
  for (const Variation& one : sweep.combinations.variations())
    varied.push_back({{"name", variedName(one)}, {"values", one.count()}});
  return lineOf({{"format", {{"name", "heat-ledger-sweep"}, {"version", kSweepVersion}}},
                 {"combinations", *sweep.combinations.count()},
                 {"varied", std::move(varied)},
                 {"figures", sweep.figures}});
}

std::string sweepLines(const Sweep& sweep, const SweptCombination& combination) {
  Json varied = Json::object();
  const auto& variations = sweep.combinations.variations();
  for (std::size_t k = 0; k < variations.size(); ++k)
    varied[variedName(variations[k])] = asJson(variedFigure(variations[k], combination.values[k]));
  std::string lines;
  for (const SweepRow& row : combination.rows) {
    Json line{{"combination", combination.number}, {"varied", varied}};
    if (!row.rig.empty()) line["rig"] = row.rig;
    line["outcome"] = row.outcome;
    Json figures = Json::object();
    for (std::size_t f = 0; f < row.figures.size(); ++f)
      if (row.figures[f]) figures[sweep.figures[f]] = asJson(*row.figures[f]);
    if (row.problems.empty())
      line["figures"] = std::move(figures);
    else
      line["problems"] = problemsOf(row);
    lines += lineOf(line);
  }
  return lines;
}

std::string sweepEndLine(const SweepEnd& end, const std::vector<Caution>& cautions) {
  Json all = Json::array();
  for (const Caution& one : cautions)
    all.push_back({{"topic", one.topic}, {"text", inEnglish(one.text)}});
  return lineOf({{"end", end.word()},
                 {"done", end.done},
                 {"of", end.of},
                 {"no_plan", end.noPlan},
                 {"cautions", std::move(all)}});
}

}  // namespace rigs
