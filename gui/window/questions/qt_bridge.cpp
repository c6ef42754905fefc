// SPDX-License-Identifier: GPL-3.0-or-later
// The window's own answers as those of the telling.
#include "gui/telling/answer.hpp"
#include "gui/window/questions/question.hpp"

namespace gui::telling {
namespace {

rigs::Told plain(const QString& text) {
  return rigs::Told::just(rigs::Verbatim{text.toStdString()});
}

std::vector<rigs::Told> plain(const QStringList& texts) {
  std::vector<rigs::Told> all;
  for (const QString& text : texts) all.push_back(plain(text));
  return all;
}

std::vector<PicturePoint> plain(const QVector<QPointF>& points) {
  std::vector<PicturePoint> all;
  for (const QPointF& p : points) all.push_back({p.x(), p.y()});
  return all;
}

Picture plain(const QtPicture& from) {
  Picture to;
  to.kind = static_cast<Picture::Kind>(from.kind);
  to.title = from.title.toStdString();
  to.xTitle = from.xTitle.toStdString();
  to.yTitle = from.yTitle.toStdString();
  to.xUnit = from.xUnit.toStdString();
  to.yUnit = from.yUnit.toStdString();
  to.xIsClock = from.xIsClock;
  to.xFrom = from.xFrom;
  to.xTo = from.xTo;
  to.yFrom = from.yFrom;
  to.yTo = from.yTo;
  to.exactly = from.exactly;
  for (const QtPictureLine& line : from.lines) {
    to.lines.push_back({line.rig, line.name.toStdString(), plain(line.points), line.faint, {}});
    for (const QtPicturePhase& phase : line.phases)
      to.lines.back().phases.push_back({phase.until, phase.name.toStdString()});
  }
  for (const QtPictureMark& mark : from.marks)
    to.marks.push_back(
        {mark.rig, {mark.at.x(), mark.at.y()}, mark.label.toStdString(), mark.event.toStdString()});
  for (const QtPictureBand& band : from.bands)
    to.bands.push_back({band.from, band.to, band.alongX, band.label.toStdString(),
                        band.source.toStdString(), band.shaded});
  for (const QtPictureLimit& limit : from.limits)
    to.limits.push_back({limit.x, limit.label.toStdString()});
  for (const QString& name : from.partNames) to.partNames.push_back(name.toStdString());
  for (const QtPictureStack& stack : from.stacks)
    to.stacks.push_back(
        {stack.rig, stack.name.toStdString(), {stack.parts.begin(), stack.parts.end()}});
  for (const auto& area : from.areas) to.areas.push_back(plain(area));
  to.draggable = from.draggable;
  to.draggableLabel = from.draggableLabel.toStdString();
  return to;
}

Table plain(const PictureTable& from) {
  Table to{.name = "answer", .columns = {}, .rows = {}, .ofRigs = false};
  for (const QString& head : from.head.mid(1)) to.columns.push_back(plain(head));
  for (const QVector<QString>& cells : from.rows) {
    const bool heading = std::all_of(cells.begin() + 1, cells.end(),
                                     [](const QString& cell) { return cell.isEmpty(); });
    Row row{plain(cells.front()), {}, {}, {}};
    for (const QString& cell : heading ? QVector<QString>() : cells.mid(1))
      row.cells.push_back(cellOf(rigs::Verbatim{cell.toStdString()}));
    to.rows.push_back(std::move(row));
  }
  return to;
}

}  // namespace

Answer answerTo(Question question, const rigs::Solution& solution, const rigs::Reader& reader,
                const QuestionView& view) {
  const QtAnswer from = qtAnswerTo(question, solution, reader.units, view);
  Answer to;
  to.title = titleOf(question);
  to.sentences = {plain(from.sentence)};
  for (const QtPicture& picture : from.pictures) to.pictures.push_back(plain(picture));
  to.show(plain(from.table));
  to.notes = plain(from.notes);
  to.cautions = plain(from.cautions);
  to.furtherCautions = plain(from.furtherCautions);
  return to;
}

rigs::Searches neededBy(Question question, const QuestionView& view) {
  switch (question) {
    case Question::BoilsEnough:
      return {.power = true};
    case Question::WorthJacket:
      return view.overThickness ? rigs::Searches{.thickness = true}
                                : rigs::Searches{.jacketPower = true};
    case Question::WhichElement:
      return {.sizing = true, .power = true};
    case Question::HowFarCools:
      return {.cooling = true};
    case Question::Circuit:
      return {.circuit = true};
    default:
      return {};
  }
}

}  // namespace gui::telling
