// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/number_exports.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include "gui/telling/answer_to.hpp"
#include "gui/telling/csv.hpp"
#include "rigs/results/result_json.hpp"

namespace gui {
namespace {

using telling::Picture;
using telling::PictureBand;
using telling::PictureLimit;
using telling::PictureLine;
using telling::PictureMark;
using telling::PicturePoint;
using telling::PictureStack;
using telling::Question;

QString text(const std::string& utf8) { return QString::fromStdString(utf8); }

QJsonArray pair(double x, double y) { return {x, y}; }

QJsonArray pointsJson(const std::vector<PicturePoint>& all) {
  QJsonArray list;
  for (const PicturePoint& p : all) list.push_back(pair(p.x, p.y));
  return list;
}

// One object for each of `all`, left out where there is none.
template <class Things, class Write>
void addAll(QJsonObject& json, const char* key, const Things& all, Write write) {
  QJsonArray list;
  for (const auto& one : all) list.push_back(write(one));
  if (!list.isEmpty()) json.insert(QLatin1String(key), list);
}

QString partName(const Picture& picture, std::size_t part) {
  return part < picture.partNames.size() ? text(picture.partNames[part]) : QString();
}

QJsonObject stackJson(const Picture& picture, const PictureStack& stack) {
  QJsonObject parts;
  for (std::size_t i = 0; i < stack.parts.size(); ++i)
    parts.insert(partName(picture, i), stack.parts[i]);
  QJsonObject json{{"name", text(stack.name)}, {"parts", parts}};
  if (stack.rig >= 0) json.insert("rig", stack.rig + 1);
  return json;
}

// Rigs are counted from 1, as people do.
QJsonObject pictureJson(const Picture& picture) {
  QJsonObject json{{"title", text(picture.title)},
                   {"x", text(telling::xTitleWith(picture, "min"))},
                   {"y", text(picture.yTitle)}};
  addAll(json, "lines", picture.lines, [](const PictureLine& line) {
    return QJsonObject{
        {"rig", line.rig + 1}, {"name", text(line.name)}, {"points", pointsJson(line.points)}};
  });
  addAll(json, "marks", picture.marks, [](const PictureMark& mark) {
    return QJsonObject{
        {"rig", mark.rig + 1}, {"at", pair(mark.at.x, mark.at.y)}, {"label", text(mark.label)}};
  });
  addAll(json, "bands", picture.bands, [](const PictureBand& band) {
    return QJsonObject{{"along", band.alongX ? "x" : "y"},
                       {"from", band.from},
                       {"to", band.to},
                       {"label", text(band.label)},
                       {"source", text(band.source)}};
  });
  addAll(json, "limits", picture.limits, [](const PictureLimit& limit) {
    return QJsonObject{{"x", limit.x}, {"label", text(limit.label)}};
  });
  std::size_t part = 0;
  addAll(json, "areas", picture.areas, [&](const std::vector<PicturePoint>& area) {
    return QJsonObject{{"name", partName(picture, part++)}, {"points", pointsJson(area)}};
  });
  addAll(json, "stacks", picture.stacks,
         [&](const PictureStack& stack) { return stackJson(picture, stack); });
  if (picture.draggable) {
    json.insert("wanted",
                QJsonObject{{"y", *picture.draggable}, {"label", text(picture.draggableLabel)}});
  }
  return json;
}

QJsonObject tableJson(const ShownTable& table) {
  QJsonObject json{{"head", QJsonArray::fromStringList(table.head)}};
  addAll(json, "rows", table.rows,
         [](const ShownTable::Row& row) { return QJsonArray::fromStringList(row.cells); });
  return json;
}

// Computed anew: keeping curves makes the integrator stop more often, which shows in the twelfth
// digit, and these are to be the terminal's bytes.
// What was searched for has none, and is taken as it was found.
rigs::Answers withoutCurves(const rigs::Solution& solution, rigs::Depth depth, Question question) {
  rigs::Answers answers = rigs::answer(solution.plan, depth);
  for (std::size_t i = 0; i < answers.rigs.size(); ++i)
    answers.rigs[i].helps = solution.answers.rigs[i].helps;
  if (question != Question::HowSure) return answers;
  for (std::size_t i = 0; i < answers.rigs.size(); ++i) {
    answers.rigs[i].bands = solution.answers.rigs[i].bands;
    answers.rigs[i].sure = solution.answers.rigs[i].sure;
  }
  return answers;
}

std::string resultText(const rigs::Solution& solution, Question question) {
  const rigs::Depth depth = question == Question::Circuit       ? rigs::Depth::Circuit
                            : question == Question::Room        ? rigs::Depth::Room
                            : question == Question::HowChills   ? rigs::Depth::Chill
                            : question == Question::WortChanges ? rigs::Depth::Wort
                            : question == Question::HelpsMost   ? rigs::Depth::Day
                            : question == Question::HowSure     ? rigs::Depth::Day
                                                                : rigs::Depth::Everything;
  rigs::Answers answers = withoutCurves(solution, depth, question);
  // Only where that is asked: else it would depend on what was looked at before.
  if (question != Question::HelpsMost)
    for (rigs::RigAnswer& rig : answers.rigs) rig.helps.reset();
  return rigs::resultJson(solution.plan, answers);
}

}  // namespace

ShownAnswer shown(const SeenAnswer& seen) {
  return shown(seen.answer, rigNamesOf(*seen.solution), seen.reader);
}

QByteArray answerCsv(const SeenAnswer& seen) {
  rigs::Solution solution = *seen.solution;
  solution.answers = withoutCurves(*seen.solution, telling::depthOf(seen.question), seen.question);
  const telling::Answer answer = telling::answerTo(seen.question, solution, seen.reader, seen.view);
  std::vector<std::string> names = rigNamesOf(solution);
  if (seen.view.only) names = {names.at(*seen.view.only)};  // the one column that is left
  return QByteArray::fromStdString(telling::csvOf(answer, names, seen.reader));
}

QByteArray answerJson(const SeenAnswer& seen) {
  const ShownAnswer answer = shown(seen);
  QJsonObject json{{"question", text(std::string(telling::identifierOf(seen.question)))},
                   {"title", answer.title},
                   {"sentence", answer.headline()},
                   {"notes", QJsonArray::fromStringList(asLines(answer.notes))},
                   {"cautions", QJsonArray::fromStringList(answer.allCautions())}};
  addAll(json, "tables", answer.tables, tableJson);
  addAll(json, "pictures", answer.pictures, pictureJson);
  const QByteArray written = QJsonDocument(json).toJson(QJsonDocument::Indented).trimmed();
  // Put together as text: the result keeps the order of its keys.
  return "{\n\"seen\": " + written + ",\n\"result\": " +
         QByteArray::fromStdString(resultText(*seen.solution, seen.question)).trimmed() + "\n}\n";
}

}  // namespace gui
