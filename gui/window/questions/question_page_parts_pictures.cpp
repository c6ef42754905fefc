// SPDX-License-Identifier: GPL-3.0-or-later
// The pictures of a question's page: how tall they stand, which rigs they draw, and the line that a
// hand may drag.
#include <QMenu>
#include <algorithm>

#include "gui/window/help_note.hpp"
#include "gui/window/questions/question_page_parts.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {

using telling::Picture;
using telling::Question;
using telling::QuestionView;

namespace {

// From this width two pictures stand side by side.
constexpr int kSideBySide = 1050;
constexpr int kShortestPicture = 300;
constexpr int kShortestPlot = 180;
constexpr int kTitleInSight = 24;
constexpr int kShareOfWindow = 46;  // %

}  // namespace

// Pictures as tall as what is seen allows: one with the table's beginning still in view; of two
// below one another both, or the first with all of its legend and the second's title as a hint.
void QuestionPage::Parts::arrange() {
  // The overview is a table, which its picture only illustrates.
  shownBelow->setDirection(question == Question::Overview ? QBoxLayout::BottomToTop
                                                          : QBoxLayout::TopToBottom);
  const int width = scroll->viewport()->width();
  const int room = scroll->viewport()->height();
  const bool beside = charts.size() > 1 && width >= kSideBySide;
  pictures->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  int height = room * 70 / 100;
  if (!beside && charts.size() > 1) {
    const int half = (room - pictures->spacing()) / 2;
    height = half >= kShortestPicture ? half : room - pictures->spacing() - kTitleInSight;
  }
  // Of the whole window nearly half, whatever stands above.
  height = std::max(
      {kShortestPicture, height, std::min(room, page->window()->height() * kShareOfWindow / 100)});
  // A tall legend must not squeeze the curves.
  const int each = beside ? width / static_cast<int>(charts.size()) : width;
  for (PlanChart* chart : charts)
    height = std::max(
        height, std::min(room, kShortestPlot + aroundPlot(chart->picture(), each,
                                                          lookOf(chart->palette(), chart->font(),
                                                                 chart->locale()))));
  for (PlanChart* chart : charts) {
    if (chart->minimumHeight() != height) chart->setFixedHeight(height);
  }
}

void QuestionPage::Parts::placeWanted(Picture& picture) const {
  if (!picture.draggable || !wanted) return;
  picture.draggable = wanted;
  picture.draggableLabel = rigs::tell(
      rigs::Told(TOLD("Answer", "wanted: %1"), rigs::asChosen(physics::minutes(*wanted))),
      readerOf(units));
}

// Where the plan has it: also when the hand lets go, for that is not always where the hand was.
void QuestionPage::Parts::putWanted() {
  for (std::size_t i = 0; i < std::min(charts.size(), answer.pictures.size()); ++i) {
    Picture& picture = answer.pictures[i];
    placeWanted(picture);
    shown.pictures[i].draggable = picture.draggable;
    shown.pictures[i].draggableLabel = picture.draggableLabel;
    if (picture.draggable)
      charts[i]->setDraggable(*picture.draggable, QString::fromStdString(picture.draggableLabel));
  }
}

void QuestionPage::Parts::showPictures() {
  while (charts.size() > shown.pictures.size()) {
    delete charts.back();
    charts.pop_back();
  }
  while (charts.size() < shown.pictures.size()) {
    charts.push_back(newChart());
    arrange();
  }
  for (std::size_t i = 0; i < charts.size(); ++i) {
    charts[i]->show(shown.pictures[i]);
    charts[i]->setAccessibleDescription(shown.headline());
  }
  if (const QStringList around = aroundTexts(shown.pictures); around != arrangedFor) {
    arrangedFor = around;
    arrange();
  }
}

PlanChart* QuestionPage::Parts::newChart() {
  auto* chart = new PlanChart(scroll->widget());
  QObject::connect(chart, &PlanChart::dragged, page, &QuestionPage::goalDragged);
  QObject::connect(chart, &PlanChart::handChanged, page, [this](bool on) {
    holdStill(on);
    if (!on) putWanted();
  });
  QObject::connect(chart, &PlanChart::rigPointed, page, [this](int rig) {
    for (PlanChart* one : charts) one->lift(rig < 0 ? std::nullopt : std::optional(rig));
  });
  QObject::connect(chart, &PlanChart::rigToggled, page, [this](int rig) { toggleDrawn(rig); });
  QObject::connect(chart, &PlanChart::pointedAt, page, &QuestionPage::picturePointedAt);
  QObject::connect(chart, &PlanChart::explanationWanted, page,
                   [this, chart] { explainQuestion(question, page->reader(), *chart); });
  pictures->addWidget(chart, 1);
  if (!charts.empty()) QWidget::setTabOrder(charts.back(), chart);
  if (!tables.isEmpty()) QWidget::setTabOrder(chart, tables.front());
  return chart;
}

// One that is left out of a picture is left out of all, as by the overview's boxes. Out of the last
// one all come back.
void QuestionPage::Parts::toggleDrawn(int rig) {
  if (!solution || rig < 0 || static_cast<std::size_t>(rig) >= solution->plan.rigs.size()) return;
  const std::string& name = solution->plan.rigs[static_cast<std::size_t>(rig)].name;
  QuestionView changed = view;
  if (std::erase(changed.undrawn, name) == 0) changed.undrawn.push_back(name);
  const auto& all = solution->plan.rigs;
  const bool none = std::all_of(all.begin(), all.end(), [&](const rigs::RigPlan& one) {
    return std::find(changed.undrawn.begin(), changed.undrawn.end(), one.name) !=
           changed.undrawn.end();
  });
  if (none) changed.undrawn.clear();
  // The picture that sent this still has its event in hand.
  QMetaObject::invokeMethod(
      page, [this, changed] { page->setView(changed); }, Qt::QueuedConnection);
}

telling::Answer QuestionPage::seenAnswer() const {
  telling::Answer seen = parts_->answer;
  for (Picture& picture : seen.pictures) picture.leftOut.clear();
  for (std::size_t i = 0; i < std::min(seen.pictures.size(), parts_->charts.size()); ++i) {
    const PlanChart& chart = *parts_->charts[i];
    if (!chart.isZoomed()) continue;
    const ChartWindow window = chart.visibleWindow();
    Picture& picture = seen.pictures[i];
    picture.xFrom = window.xFrom;
    picture.xTo = window.xTo;
    picture.yFrom = window.yFrom;
    picture.yTo = window.yTo;
    picture.exactly = true;
  }
  return seen;
}

void QuestionPage::fillPictureMenu(QMenu& menu) {
  for (PlanChart* chart : parts_->charts) {
    QMenu* to = &menu;
    if (parts_->charts.size() > 1)
      to = menu.addMenu(QString::fromStdString(chart->picture().title)
                            .replace(QLatin1Char('&'), QLatin1String("&&")));
    chart->fillMenu(*to);
  }
}

}  // namespace gui
