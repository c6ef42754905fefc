// SPDX-License-Identifier: GPL-3.0-or-later
// What does it cost?
#include <algorithm>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "gui/window/questions/answer_text.hpp"
#include "gui/window/questions/tariff_text.hpp"
#include "rigs/answers/figures.hpp"
#include "rigs/answers/money.hpp"

namespace gui {
namespace {

using physics::StageKind;

bool priced(const Telling& tell) { return tell.plan.tariff.isStated(); }

bool isDone(const Telling& tell, int i) {
  return tell.rig(i).day.outcome == physics::Outcome::Done;
}

QString brewsText(const Telling& tell) {
  return localized(rigs::formatNumber(brewsPerYear(tell.plan)), QLocale());
}

struct CostStage {
  StageKind kind;
  QString name;
};
QVector<CostStage> costStages(const Telling& tell) {
  const QVector<CostStage> all{
      {StageKind::Strike, translate("Answer", "heating the strike water")},
      {StageKind::Ramp, translate("Answer", "between rests")},
      {StageKind::Rest, translate("Answer", "holding rests")},
      {StageKind::HeatingToBoil, translate("Answer", "heating to the boil")},
      {StageKind::Boil, translate("Answer", "boiling")}};
  QVector<CostStage> used;
  for (const CostStage& stage : all) {
    for (int i = 0; i < tell.count(); ++i) {
      const auto energy = rigs::fromWall(tell.rig(i).day, stage.kind);
      if (!energy || *energy <= physics::joules(0.0)) continue;
      used.push_back(stage);
      break;
    }
  }
  return used;
}

// Of a stage, at the hour and after the use it falls into; in kWh where the plan has no price.
std::optional<double> worth(const Telling& tell, int i, StageKind kind) {
  if (priced(tell)) return rigs::costOf(tell.rig(i), kind);
  const auto energy = rigs::fromWall(tell.rig(i).day, kind);
  return energy ? std::optional(tell.write.axis(*energy)) : std::nullopt;
}

// When it would be cheapest to begin, where the hour makes a difference.
std::optional<rigs::StartChoice> startChoice(const Telling& tell, int i) {
  return rigs::cheapestStart(tell.rig(i).day, tell.plan.tariff);
}

QtPicture costPicture(const Telling& tell) {
  QtPicture picture;
  picture.kind = QtPicture::Kind::StackedBars;
  picture.title = priced(tell) ? translate("Answer", "What a batch costs, stage by stage")
                               : translate("Answer", "Energy of a batch, stage by stage");
  picture.xUnit = priced(tell) ? QString::fromStdString(tell.plan.tariff.currency)
                               : tell.write.unit<physics::Energy>();
  picture.xTitle = translate("Answer", "%1 a batch").arg(picture.xUnit);
  const QVector<CostStage> stages = costStages(tell);
  for (const CostStage& stage : stages) picture.partNames.push_back(stage.name);
  for (int i = 0; i < tell.count(); ++i) {
    QtPictureStack stack{.rig = i, .name = tell.name(i), .parts = {}};
    for (const CostStage& stage : stages) {
      stack.parts.push_back(worth(tell, i, stage.kind).value_or(0.0));
    }
    picture.stacks.push_back(stack);
  }
  return picture;
}

// What a day costs that begins at each hour: only where the hour decides.
std::optional<QtPicture> startPicture(const Telling& tell) {
  const rigs::Tariff& tariff = tell.plan.tariff;
  if (!tariff.dependsOnTheHour()) return std::nullopt;
  QtPicture picture;
  picture.title = translate("Answer", "What a batch costs by the hour it begins");
  picture.xTitle = translate("Answer", "Start of the day, h:min");
  picture.xIsClock = true;
  picture.yUnit = QString::fromStdString(tariff.currency);
  picture.yTitle = translate("Answer", "%1 a batch").arg(picture.yUnit);
  for (int i = 0; i < tell.count(); ++i) {
    QtPictureLine line{.rig = i, .name = tell.name(i), .points = {}};
    for (int quarter = 0; quarter <= 96; ++quarter) {
      const physics::Time at = static_cast<double>(quarter) * rigs::kStartStep;
      const auto cost = rigs::dayCost(tell.rig(i).day, tariff, at);
      if (cost) line.points.push_back({physics::inMinutes(at), *cost});
    }
    picture.lines.push_back(line);
    if (const auto choice = startChoice(tell, i)) {
      picture.marks.push_back(
          {i, {physics::inMinutes(choice->cheapest.at), choice->cheapest.cost}, {}});
    }
  }
  picture.limits.push_back(
      {physics::inMinutes(tell.plan.startOfDay), translate("Answer", "begun as planned")});
  picture.xFrom = 0.0;
  picture.xTo = 24.0 * 60.0;
  picture.yFrom = 0.0;
  return picture;
}

void addStarts(TableOf& table, const Telling& tell) {
  if (!tell.plan.tariff.dependsOnTheHour()) return;
  const auto row = [&](const QString& label, const auto& of) {
    table.row(label, [&tell, of](int i) -> std::optional<QString> {
      const auto choice = startChoice(tell, i);
      return choice ? std::optional<QString>(of(*choice)) : std::nullopt;
    });
  };
  table.heading(translate("Answer", "When to begin"));
  row(translate("Answer", "cheapest start, by the clock"),
      [&](const rigs::StartChoice& c) { return tell.write.clock(c.cheapest.at); });
  row(translate("Answer", "a batch begun then"),
      [&](const rigs::StartChoice& c) { return tell.write.plain(c.cheapest.cost, 2); });
  row(translate("Answer", "dearest start, by the clock"),
      [&](const rigs::StartChoice& c) { return tell.write.clock(c.dearest.at); });
  row(translate("Answer", "a batch begun at that time"),
      [&](const rigs::StartChoice& c) { return tell.write.plain(c.dearest.cost, 2); });
}

void addPaybacks(TableOf& table, const Telling& tell) {
  const rigs::Tariff& tariff = tell.plan.tariff;
  if (tariff.jacketPrice) {
    table.heading(
        translate("Answer", "A jacket for %1").arg(tell.write.money(*tariff.jacketPrice, tariff)));
    table.row(translate("Answer", "saves in a year"), [&](int i) -> std::optional<QString> {
      const auto back = rigs::jacketPayback(tell.rig(i), tell.plan);
      return back ? std::optional(tell.write.plain(back->perYear, 2)) : std::nullopt;
    });
    table.row(translate("Answer", "paid back after, years"), [&](int i) -> std::optional<QString> {
      const auto back = rigs::jacketPayback(tell.rig(i), tell.plan);
      if (!back) return std::nullopt;
      return back->years ? tell.write.plain(*back->years, 1) : translate("Answer", "never");
    });
  }
  if (!tariff.elementPrice) return;
  table.heading(
      translate("Answer", "An element for %1").arg(tell.write.money(*tariff.elementPrice, tariff)));
  table.row(translate("Answer", "for each batch of its first year"),
            [&](int i) -> std::optional<QString> {
              if (!isDone(tell, i)) return std::nullopt;
              return tell.write.plain(*tariff.elementPrice / std::max(brewsPerYear(tell.plan), 1.0),
                                      2);
            });
  // What a stronger element does not save in energy it saves in time only.
  table.row(translate("Answer", "paid back after, years, against the first rig that finishes"),
            [&](int i) -> std::optional<QString> {
              const auto back = rigs::elementPayback(tell.plan, tell.solution.answers,
                                                     static_cast<std::size_t>(i));
              if (!back) return std::nullopt;
              return back->payback.years ? tell.write.plain(*back->payback.years, 1)
                                         : translate("Answer", "never");
            });
}

void addCarbonDioxide(TableOf& table, const Telling& tell) {
  if (!tell.plan.tariff.co2PerKilowattHour) return;
  const auto row = [&](const QString& label, double batches) {
    table.row(label, [&tell, batches](int i) -> std::optional<QString> {
      const auto co2 = rigs::co2Of(tell.rig(i).day.total.fromWall(), tell.plan.tariff);
      if (!co2 || !isDone(tell, i)) return std::nullopt;
      return tell.write.number(physics::Mass(batches * *co2), 2);
    });
  };
  table.heading(translate("Answer", "Carbon dioxide, %1").arg(tell.write.unit<physics::Mass>()));
  row(translate("Answer", "a batch"), 1.0);
  row(translate("Answer", "a year of %1 batches").arg(brewsText(tell)), brewsPerYear(tell.plan));
}

PictureTable costTable(const Telling& tell) {
  TableOf table(tell);
  const QVector<CostStage> stages = costStages(tell);
  table.heading(
      translate("Answer", "Energy from the wall, %1").arg(tell.write.unit<physics::Energy>()));
  for (const CostStage& stage : stages) {
    table.row(stage.name, [&](int i) -> std::optional<QString> {
      const auto energy = rigs::fromWall(tell.rig(i).day, stage.kind);
      return energy ? std::optional(tell.write.number(*energy, 2)) : std::nullopt;
    });
  }
  table.row(translate("Answer", "a batch"), [&](int i) -> std::optional<QString> {
    return tell.write.number(tell.rig(i).day.total.fromWall(), 2);
  });
  if (!priced(tell)) return table.take();
  table.heading(
      translate("Answer", "Cost, %1").arg(QString::fromStdString(tell.plan.tariff.currency)));
  for (const CostStage& stage : stages) {
    table.row(stage.name, [&](int i) -> std::optional<QString> {
      const auto cost = worth(tell, i, stage.kind);
      return cost ? std::optional(tell.write.plain(*cost, 2)) : std::nullopt;
    });
  }
  table.row(translate("Answer", "a batch"), [&](int i) -> std::optional<QString> {
    const auto& cost = tell.rig(i).cost;
    return cost ? std::optional(tell.write.plain(*cost, 2)) : std::nullopt;
  });
  const auto one = rigs::fromNumberIn<physics::Volume>(1.0, tell.write.units());
  table.row(translate("Answer", "a %1 of wort in the end").arg(tell.write.unit<physics::Volume>()),
            [&](int i) -> std::optional<QString> {
              if (!isDone(tell, i)) return std::nullopt;
              const auto cost = rigs::costPer(tell.rig(i), one);
              return cost ? std::optional(tell.write.plain(*cost, 3)) : std::nullopt;
            });
  table.row(translate("Answer", "a year of %1 batches").arg(brewsText(tell)),
            [&](int i) -> std::optional<QString> {
              const auto& cost = tell.rig(i).cost;
              if (!isDone(tell, i) || !cost) return std::nullopt;
              return tell.write.plain(*cost * brewsPerYear(tell.plan), 2);
            });
  addStarts(table, tell);
  addPaybacks(table, tell);
  addCarbonDioxide(table, tell);
  return table.take();
}

QString costSentence(const Telling& tell, int i, const QString& text) {
  const rigs::RigAnswer& rig = tell.rig(i);
  const auto one = rigs::fromNumberIn<physics::Volume>(1.0, tell.write.units());
  const auto each = rigs::costPer(rig, one);
  const rigs::Tariff& tariff = tell.plan.tariff;
  return text.arg(tell.write.money(*rig.cost, tariff), tell.named(i),
                  tell.write.money(each.value_or(0.0), tariff), tell.write.unit<physics::Volume>(),
                  tell.write.money(*rig.cost * brewsPerYear(tell.plan), tariff), brewsText(tell));
}

QString startSentence(const Telling& tell, int i) {
  const auto choice = startChoice(tell, i);
  if (!choice) return {};
  const rigs::Tariff& tariff = tell.plan.tariff;
  return translate("Answer", "Begun at %1 instead of %2 it would cost %3 with %4; dearest is %5.")
      .arg(tell.write.clock(choice->cheapest.at), tell.write.clock(tell.plan.startOfDay),
           tell.write.money(choice->cheapest.cost, tariff), tell.named(i),
           tell.write.clock(choice->dearest.at));
}

QStringList costNotes(const Telling& tell) {
  QStringList notes;
  const rigs::Tariff& tariff = tell.plan.tariff;
  notes += translate("Answer", "Price of energy: %1.").arg(tariffText(tariff));
  if (!priced(tell)) return notes;
  if (!tariff.brewsPerYear) {
    notes += translate("Answer", "A brew a month is assumed: the plan does not say how many.");
  }
  if (tariff.co2PerKilowattHour) {
    const QString each = tell.write.text(*tariff.co2PerKilowattHour);
    const QString source = QString::fromStdString(tariff.co2Source);
    notes += source.isEmpty()
                 ? translate("Answer", "%1 of carbon dioxide a kWh; no source is stated.").arg(each)
                 : translate("Answer", "%1 of carbon dioxide a kWh: %2.").arg(each, source);
  }
  notes += translate("Answer", "Fixed charges are left out: a brew day does not change them.");
  return notes;
}

}  // namespace

double brewsPerYear(const rigs::Plan& plan) { return plan.tariff.brewsPerYear.value_or(12.0); }

QtAnswer whatCost(const Telling& tell) {
  QtAnswer answer;
  QStringList told;
  const Extremes e = extremesOf(tell, [&](int i) -> std::optional<double> {
    const rigs::RigAnswer& rig = tell.rig(i);
    if (!isDone(tell, i)) return std::nullopt;
    if (priced(tell)) return rig.cost;
    return physics::inKilowattHours(rig.day.total.fromWall());
  });
  if (e.counted > 0 && priced(tell)) {
    told +=
        costSentence(tell, e.least,
                     e.counted == 1 ? translate("Answer",
                                                "%1 a batch with %2: %3/%4, and %5 a year of %6 "
                                                "batches.")
                                    : translate("Answer",
                                                "%1 a batch with %2, the cheapest: %3/%4, and %5 "
                                                "a year of %6 batches."));
    if (e.counted > 1) {
      told += costSentence(tell, e.most,
                           translate("Answer",
                                     "%1 with %2, the dearest: %3/%4, and %5 a year of "
                                     "%6 batches."));
    }
    const QString start = startSentence(tell, e.least);
    if (!start.isEmpty()) told += start;
  } else if (e.counted > 0) {
    told += translate("Answer", "%1 a batch with %2, the least; the plan gives no price.")
                .arg(tell.write.text(tell.rig(e.least).day.total.fromWall()), tell.named(e.least));
    if (e.counted > 1) {
      told += translate("Answer", "%1 with %2, the most.")
                  .arg(tell.write.text(tell.rig(e.most).day.total.fromWall()), tell.named(e.most));
    }
  }
  told += unfinishedTexts(tell);
  answer.sentence = told.join(QLatin1Char(' '));
  answer.pictures = {costPicture(tell)};
  if (const auto starts = startPicture(tell)) answer.pictures.push_back(*starts);
  answer.table = costTable(tell);
  answer.notes = costNotes(tell);
  return answer;
}

}  // namespace gui
