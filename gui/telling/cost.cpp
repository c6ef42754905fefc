// SPDX-License-Identifier: GPL-3.0-or-later
// What does it cost?
#include "gui/telling/cost.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "gui/telling/begins.hpp"
#include "gui/telling/cost_otherwise.hpp"
#include "gui/telling/cost_parts.hpp"
#include "gui/telling/jacket.hpp"
#include "gui/telling/tariff.hpp"
#include "gui/telling/words.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/money.hpp"

namespace gui::telling {
namespace {

using rigs::Told;

bool isDone(const Case& of, std::size_t i) { return of.rig(i).day.finished(); }

rigs::Money money(const Case& of, double amount) { return {amount, of.plan.tariff.currency}; }
Cell moneyCell(const Case& of, const std::optional<double>& amount) {
  return amount ? Cell(money(of, *amount)) : std::nullopt;
}
rigs::Number brews(const Case& of) { return {brewsPerYear(of.plan)}; }

// --- Pictures.

}  // namespace

Picture costPicture(const Case& of) {
  Picture picture;
  picture.kind = Picture::Kind::StackedBars;
  picture.title = of.text(of.plan.tariff.isStated()
                              ? Told(TOLD("Answer", "What a batch costs, stage by stage"))
                              : Told(TOLD("Answer", "Energy of a batch, stage by stage")));
  picture.xUnit = of.plan.tariff.isStated() ? of.plan.tariff.currency : of.unit<physics::Energy>();
  picture.xTitle = of.text(Told(TOLD("Answer", "%1 a batch"), rigs::Verbatim{picture.xUnit}));
  const std::vector<CostPart> parts = costParts(of);
  for (const CostPart& part : parts) picture.partNames.push_back(of.text(part.name));
  for (std::size_t i = 0; i < of.count(); ++i) {
    PictureStack stack{.rig = static_cast<int>(i), .name = of.name(i), .parts = {}};
    for (const CostPart& part : parts) {
      const auto energy = part.energy(i);
      const double drawn = energy ? of.axis(*energy) : 0.0;
      stack.parts.push_back(of.plan.tariff.isStated() ? part.cost(i).value_or(0.0) : drawn);
    }
    picture.stacks.push_back(std::move(stack));
  }
  return picture;
}

namespace {

// When it would be cheapest to begin, where the hour makes a difference.
std::optional<rigs::StartChoice> startChoice(const Case& of, std::size_t i) {
  return rigs::cheapestStart(of.rig(i).day, of.plan.tariff);
}

// Begun as planned: a line for all, or each rig's own.
void addPlannedStarts(const Case& of, Picture& picture) {
  const auto add = [&](physics::Time begins, const Told& label) {
    picture.limits.push_back({physics::inMinutes(rigs::clockOfDay(begins)), of.text(label)});
  };
  const Told planned(TOLD("Answer", "begun as planned"));
  if (of.plan.start()) return add(*of.plan.start(), planned);
  for (std::size_t i = 0; i < of.count(); ++i)
    if (const auto& begins = of.rig(i).begins)
      add(*begins, of.isAlone()
                       ? planned
                       : Told(TOLD("Answer", "%1 as planned"), rigs::Verbatim{of.letter(i)}));
}

}  // namespace

Picture startPicture(const Case& of) {
  Picture picture;
  picture.title = of.text(Told(TOLD("Answer", "What a batch costs by the hour it begins")));
  picture.xTitle = of.text(Told(TOLD("Answer", "Start of the day")));
  picture.xIsClock = true;
  picture.yUnit = of.plan.tariff.currency;
  picture.yDecimals = 2;
  picture.yTitle = of.text(Told(TOLD("Answer", "%1 a batch"), rigs::Verbatim{picture.yUnit}));
  for (std::size_t i = 0; i < of.count(); ++i) {
    const int rig = static_cast<int>(i);
    PictureLine line{.rig = rig, .name = of.name(i), .points = {}};
    for (int quarter = 0; quarter <= 96; ++quarter) {
      const physics::Time at = static_cast<double>(quarter) * rigs::kStartStep;
      const auto cost = rigs::dayCost(of.rig(i).day, of.plan.tariff, at);
      if (cost) line.points.push_back({physics::inMinutes(at), *cost});
    }
    picture.lines.push_back(std::move(line));
    if (const auto choice = startChoice(of, i)) {
      picture.marks.push_back(
          {rig, {physics::inMinutes(choice->cheapest.at), choice->cheapest.cost}, {}});
    }
  }
  addPlannedStarts(of, picture);
  picture.xFrom = 0.0;
  picture.xTo = 24.0 * 60.0;
  picture.yFrom = 0.0;
  return picture;
}

namespace {

// --- The table.

void addEnergies(RigTable& table, const Case& of, const std::vector<CostPart>& parts) {
  table.heading(Told(TOLD("Answer", "Energy from the wall")));
  for (const CostPart& part : parts)
    table.row(part.name, part.energy, {.result = part.energyResult});
  table.row(Told(TOLD("Answer", "from the wall")),
            [&](std::size_t i) { return of.rig(i).day.total.fromWall(); },
            {.result = "/day/total/from_wall_kWh"});
}

void addCosts(RigTable& table, const Case& of, const std::vector<CostPart>& parts) {
  table.heading(Told(TOLD("Answer", "Cost")));
  for (const CostPart& part : parts)
    table.row(part.name, [&](std::size_t i) { return moneyCell(of, part.cost(i)); },
              {.result = part.costResult});
  table.row(Told(TOLD("Answer", "a batch")),
            [&](std::size_t i) { return moneyCell(of, of.rig(i).cost); }, {.result = "/cost"});
  const auto one = rigs::fromNumberIn<physics::Volume>(1.0, of.reader.units);
  table.row(
      Told(TOLD("Answer", "a %1 of wort in the end"), rigs::Verbatim{of.unit<physics::Volume>()}),
      [&](std::size_t i) { return numberCell(rigs::costPer(of.rig(i), one), 3); },
      {.unit = of.plan.tariff.currency, .result = "/cost_per_L"});
  table.row(Told(TOLD("Answer", "a year of %1 batches"), brews(of)),
            [&](std::size_t i) {
              // What a day that stops has spent is no year's cost.
              return isDone(of, i) ? moneyCell(of, rigs::costOfAYear(of.rig(i), of.plan.tariff))
                                   : std::nullopt;
            },
            {.result = "/cost_per_year"});
}

void addStarts(RigTable& table, const Case& of) {
  const auto row = [&](Told label, std::string result, const auto& cell) {
    table.row(std::move(label),
              [&](std::size_t i) {
                const auto choice = startChoice(of, i);
                return choice ? Cell(cell(*choice)) : std::nullopt;
              },
              {.result = std::move(result)});
  };
  using Choice = rigs::StartChoice;
  table.heading(Told(TOLD("Answer", "When to begin")));
  row(Told(TOLD("Answer", "cheapest start, by the clock")), "/cheapest_start/at_s",
      [](const Choice& c) { return rigs::Clock{c.cheapest.at}; });
  row(Told(TOLD("Answer", "a batch begun then")), "/cheapest_start/cost",
      [&](const Choice& c) { return money(of, c.cheapest.cost); });
  row(Told(TOLD("Answer", "dearest start, by the clock")), "/dearest_start/at_s",
      [](const Choice& c) { return rigs::Clock{c.dearest.at}; });
  row(Told(TOLD("Answer", "a batch begun at that time")), "/dearest_start/cost",
      [&](const Choice& c) { return money(of, c.dearest.cost); });
}

Cell yearsCell(const rigs::Payback& back) {
  return back.years ? numberCell(back.years, 1) : Cell(Told(TOLD("Answer", "never")));
}

void addJacketPayback(RigTable& table, const Case& of) {
  const auto& price = of.plan.tariff.jacketPrice;
  if (!price) return;
  const Told jacket = comparedJacket(of, false);
  table.heading(jacket.empty()
                    ? Told(TOLD("Answer", "A jacket for %1"), money(of, *price))
                    : Told(TOLD("Answer", "A jacket for %1: %2"), money(of, *price), jacket));
  table.row(Told(TOLD("Answer", "saves in a year")),
            [&](std::size_t i) {
              const auto back = rigs::jacketPayback(of.rig(i), of.plan);
              return back ? moneyCell(of, back->perYear) : std::nullopt;
            },
            {.result = "/jacket_payback/saved_per_year"});
  table.row(Told(TOLD("Answer", "paid back after, years")),
            [&](std::size_t i) {
              const auto back = rigs::jacketPayback(of.rig(i), of.plan);
              return back ? yearsCell(*back) : std::nullopt;
            },
            {.result = "/jacket_payback/years"});
}

void addElementPayback(RigTable& table, const Case& of) {
  const auto& price = of.plan.tariff.elementPrice;
  if (!price) return;
  const auto back = [&](std::size_t i) {
    return rigs::elementPayback(of.plan, of.solution.answers, i);
  };
  table.heading(Told(TOLD("Answer", "An element for %1"), money(of, *price)));
  table.row(Told(TOLD("Answer", "for each batch of its first year")), [&](std::size_t i) {
    return isDone(of, i) ? moneyCell(of, *price / std::max(brewsPerYear(of.plan), 1.0))
                         : std::nullopt;
  });
  if (of.isAlone()) return;  // it is paid back against another rig
  table.row(Told(TOLD("Answer", "saves in a year")),
            [&](std::size_t i) {
              const auto found = back(i);
              return found ? moneyCell(of, found->payback.perYear) : std::nullopt;
            },
            {.result = "/element_payback/saved_per_year"});
  // What a stronger element does not save in energy it saves in time only.
  table.row(Told(TOLD("Answer", "paid back after, years, against the first rig that finishes")),
            [&](std::size_t i) {
              const auto found = back(i);
              return found ? yearsCell(found->payback) : std::nullopt;
            },
            {.result = "/element_payback/years"});
}

void addCarbonDioxide(RigTable& table, const Case& of) {
  if (!of.plan.tariff.co2PerKilowattHour) return;
  const auto row = [&](Told label, double batches, const char* result) {
    table.row(std::move(label),
              [&](std::size_t i) -> std::optional<physics::Mass> {
                const auto co2 = rigs::co2Of(of.rig(i).day.total.fromWall(), of.plan.tariff);
                if (!co2 || !isDone(of, i)) return std::nullopt;
                return physics::Mass(batches * *co2);
              },
              {.result = result});
  };
  table.heading(Told(TOLD("Answer", "Carbon dioxide")));
  row(Told(TOLD("Answer", "a batch")), 1.0, "/co2_kg");
  row(Told(TOLD("Answer", "a year of %1 batches"), brews(of)), brewsPerYear(of.plan), "");
}

Table costTable(const Case& of) {
  RigTable table("cost", of);
  const std::vector<CostPart> parts = costParts(of);
  addEnergies(table, of, parts);
  if (of.plan.tariff.isStated()) {
    addCosts(table, of, parts);
    if (of.plan.tariff.dependsOnTheHour()) addStarts(table, of);
    addJacketPayback(table, of);
    addElementPayback(table, of);
  }
  addCarbonDioxide(table, of);
  addHeatedOtherwise(table, of);
  return table.take();
}

// --- Sentences.

using CostTemplate = rigs::Template<6>;

Told costSentence(const Case& of, std::size_t i, const CostTemplate& text) {
  const auto one = rigs::fromNumberIn<physics::Volume>(1.0, of.reader.units);
  // A day that is done ends with wort, which has a price where the day has one.
  return Told(text, money(of, *of.rig(i).cost), of.named(i),
              money(of, rigs::costPer(of.rig(i), one).value()),
              rigs::Verbatim{of.unit<physics::Volume>()},
              money(of, rigs::costOfAYear(of.rig(i), of.plan.tariff).value()), brews(of));
}

rigs::Clock beginsAt(const Case& of, std::size_t i) { return of.clockAt(i, physics::seconds(0.0)); }

Told startSentence(const Case& of, std::size_t i) {
  const auto choice = startChoice(of, i);
  if (!choice || !of.rig(i).begins) return {};
  return Told(TOLD("Answer", "Begun at %1 instead of %2 it would cost %3 with %4; dearest is %5."),
              rigs::Clock{choice->cheapest.at}, beginsAt(of, i), money(of, choice->cheapest.cost),
              of.named(i), rigs::Clock{choice->dearest.at});
}

std::vector<Told> costInShort(const Case& of) {
  std::vector<Told> told;
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const rigs::RigAnswer& rig = of.rig(i);
    // The cheapest is of those that make the beer that is meant.
    if (rig.day.outcome != physics::Outcome::Done) return std::nullopt;
    if (of.plan.tariff.isStated()) return rig.cost;
    return physics::inKilowattHours(rig.day.total.fromWall());
  });
  const auto energy = [&](std::size_t i) { return rigs::amount(of.rig(i).day.total.fromWall()); };
  if (e.counted > 0 && of.plan.tariff.isStated()) {
    told.push_back(costSentence(
        of, e.least,
        e.least == e.most ? CostTemplate(TOLD("Answer",
                                              "%1 a batch with %2: %3/%4, and %5 a year of %6 "
                                              "batches."))
                          : CostTemplate(TOLD("Answer",
                                              "%1 a batch with %2, the cheapest: %3/%4, and %5 a "
                                              "year of %6 batches."))));
    if (e.least != e.most) {
      told.push_back(costSentence(of, e.most,
                                  TOLD("Answer",
                                       "%1 with %2, the dearest: %3/%4, and %5 a year of %6 "
                                       "batches.")));
    }
    if (Told start = startSentence(of, e.least); !start.empty()) told.push_back(std::move(start));
  } else if (e.counted > 0) {
    told.push_back(
        Told(e.least == e.most
                 ? rigs::Template<2>(TOLD("Answer", "%1 a batch with %2; the plan gives no price."))
                 : rigs::Template<2>(
                       TOLD("Answer", "%1 a batch with %2, the least; the plan gives no price.")),
             energy(e.least), of.named(e.least)));
    if (e.least != e.most)
      told.push_back(
          Told(TOLD("Answer", "%1 with %2, the most."), energy(e.most), of.named(e.most)));
  }
  for (Told& one : unfinishedOfAll(of)) told.push_back(std::move(one));
  return told;
}

Told beginsWhen(const Case& of, std::size_t i) {
  const auto choice = startChoice(of, i);
  if (!choice || !of.rig(i).begins) return {};
  const rigs::Clock planned = beginsAt(of, i);
  const rigs::Clock cheapest{choice->cheapest.at};
  const rigs::Clock dearest{choice->dearest.at};
  const rigs::Tariff& tariff = of.plan.tariff;
  if (!tariff.brewFrom || !tariff.brewUntil) {
    return Told(TOLD("Answer",
                     "Begun at %1 it costs %2; at any hour cheapest at %3 with %4, dearest at %5 "
                     "with %6."),
                planned, money(of, *of.rig(i).cost), cheapest, money(of, choice->cheapest.cost),
                dearest, money(of, choice->dearest.cost));
  }
  return Told(TOLD("Answer",
                   "Begun at %1 it costs %2; from %3 to %4 cheapest at %5 with %6, dearest at %7 "
                   "with %8."),
              planned, money(of, *of.rig(i).cost), rigs::Clock{*tariff.brewFrom},
              rigs::Clock{*tariff.brewUntil}, cheapest, money(of, choice->cheapest.cost), dearest,
              money(of, choice->dearest.cost));
}

rigs::Number years(const rigs::Payback& back) {
  return {*back.years, {.significantDigits = 2, .decimals = {}}};
}

Told jacketPaysBack(const Case& of, std::size_t i) {
  const auto back = rigs::jacketPayback(of.rig(i), of.plan);
  if (!back) return {};
  const rigs::Money price = money(of, *of.plan.tariff.jacketPrice);
  const bool has = of.planned(i).hasJacket;
  const Told jacket = jacketInShort(of, i);
  if (!back->years) {
    return Told(has ? rigs::Template<2>(TOLD("Answer",
                                             "Its jacket (%2) for %1 saves nothing and is never "
                                             "paid back."))
                    : rigs::Template<2>(TOLD("Answer",
                                             "If it had %2: a jacket for %1 would save nothing "
                                             "and never be paid back.")),
                price, jacket);
  }
  return Told(has ? rigs::Template<4>(TOLD("Answer",
                                           "Its jacket (%4) for %1 saves %2 a year and is paid "
                                           "back in %3 years."))
                  : rigs::Template<4>(TOLD("Answer",
                                           "If it had %4: a jacket for %1 would save %2 a year "
                                           "and be paid back in %3 years.")),
              price, money(of, back->perYear), years(*back), jacket);
}

Told elementPaysBack(const Case& of, std::size_t i) {
  const auto back = rigs::elementPayback(of.plan, of.solution.answers, i);
  if (!back) return {};
  const rigs::Verbatim against{of.lettered(back->against)};
  const rigs::Money price = money(of, *of.plan.tariff.elementPrice);
  if (!back->payback.years) {
    return Told(TOLD("Answer",
                     "Its element in place of %1's, with all else that differs, for %2 saves "
                     "nothing and is never paid back."),
                against, price);
  }
  return Told(TOLD("Answer",
                   "Its element in place of %1's, with all else that differs, for %2 saves %3 a "
                   "year and is paid back in %4 years."),
              against, price, money(of, back->payback.perYear), years(back->payback));
}

Told makesCarbonDioxide(const Case& of, std::size_t i) {
  const rigs::Tariff& tariff = of.plan.tariff;
  const auto co2 = rigs::co2Of(of.rig(i).day.total.fromWall(), tariff);
  if (!co2) return {};
  return Told(TOLD("Answer", "Its energy makes %1 of carbon dioxide."), rigs::amount(*co2));
}

std::vector<Told> costNotes(const Case& of) {
  const rigs::Tariff& tariff = of.plan.tariff;
  std::vector<Told> all{Told(TOLD("Answer", "Price of energy: %1."), tariffText(tariff))};
  if (Told source = tariffSource(tariff); !source.empty()) all.push_back(std::move(source));
  if (of.plan.ready && tariff.dependsOnTheHour()) all.push_back(otherHoursNote());
  if (of.plan.tariff.isStated() && !tariff.brewsPerYear) {
    all.push_back(
        Told(TOLD("Answer", "A brew a month is assumed: the plan does not say how many.")));
  }
  if (tariff.co2PerKilowattHour) {
    const rigs::Amount each = rigs::amount(*tariff.co2PerKilowattHour);
    all.push_back(
        tariff.co2Source.empty()
            ? Told(TOLD("Answer", "%1 of carbon dioxide a kWh; no source is stated."), each)
            : Told(TOLD("Answer", "%1 of carbon dioxide a kWh: %2."), each,
                   rigs::Verbatim{tariff.co2Source}));
  }
  if (of.plan.tariff.isStated()) {
    all.push_back(
        Told(TOLD("Answer", "Fixed charges are left out: a brew day does not change them.")));
  }
  for (Told& note : heatedOtherwiseNotes()) all.push_back(std::move(note));
  return all;
}

// Why a day stops the headline tells.
Told spentText(const Case& of, std::size_t i) {
  const physics::Outcome outcome = of.rig(i).day.outcome;
  if (outcome == physics::Outcome::Done) return costText(of, i);
  return Told(TOLD("Phrases", "%1: %2"), outcomeWord(outcome), costText(of, i));
}

}  // namespace

Answer whatCost(const Case& of) {
  Answer answer;
  answer.sentences = costInShort(of);
  for (std::size_t i = 0; i < of.count(); ++i) {
    answer.say(i, spentText(of, i));
    answer.goOn(i, beginsWhen(of, i));
    answer.goOn(i, jacketPaysBack(of, i));
    answer.goOn(i, elementPaysBack(of, i));
    answer.goOn(i, makesCarbonDioxide(of, i));
  }
  answer.show(costTable(of));
  answer.pictures.push_back(costPicture(of));
  if (of.plan.tariff.dependsOnTheHour()) answer.pictures.push_back(startPicture(of));
  answer.notes = costNotes(of);
  return answer;
}

}  // namespace gui::telling
