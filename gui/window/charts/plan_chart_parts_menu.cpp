// SPDX-License-Identifier: GPL-3.0-or-later
// What a picture offers by a menu: all of it by keys and mouse as well, but a menu can be found.
#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QMenu>
#include <QMetaMethod>
#include <algorithm>

#include "gui/window/charts/chart_legend.hpp"
#include "gui/window/charts/plan_chart_parts.hpp"

namespace gui {

namespace {

// The key is the picture's own, while it has the focus.
QString withKey(const QString& text, const char* key) {
  return text + QLatin1Char('\t') + QLatin1String(key);
}
// An ampersand of a name is none of the menu's.
QString asEntry(QString text) { return text.replace(QLatin1Char('&'), QLatin1String("&&")); }

}  // namespace

void PlanChart::fillMenu(QMenu& menu) {
  const telling::Picture& picture = parts_->picture;
  if (parts_->zoomable()) {
    menu.addAction(withKey(tr("Zoom &in"), "+"), this,
                   [this] { zoomAtCrosshair(kZoomStep, false); });
    menu.addAction(withKey(tr("Zoom &out"), "-"), this,
                   [this] { zoomAtCrosshair(1.0 / kZoomStep, false); })
        ->setEnabled(isZoomed());
    menu.addAction(withKey(tr("&Whole picture"), "0"), this, [this] { resetZoom(); })
        ->setEnabled(isZoomed());
    if (const auto stages = stagesOf(picture); !stages.empty()) {
      QMenu* only = menu.addMenu(tr("&Stage"));
      for (const PictureStage& stage : stages)
        only->addAction(asEntry(QString::fromStdString(stage.name)), this,
                        [this, stage] { showOnly(stage.from, stage.to); });
    }
  }
  fillRigs(menu);
  menu.addSeparator();
  menu.addAction(tr("&Copy picture"), this, &PlanChart::copyPicture);
  if (isSignalConnected(QMetaMethod::fromSignal(&PlanChart::explanationWanted)))
    menu.addAction(withKey(tr("&How was this computed?"), "F1"), this,
                   &PlanChart::explanationWanted);
}

// A tick a rig, for whoever does not click its name.
void PlanChart::fillRigs(QMenu& menu) {
  const telling::Picture& picture = parts_->picture;
  std::vector<LegendEntry> rigs;
  for (const LegendEntry& entry : legendOf(picture))
    if (entry.kind == LegendSample::Line) rigs.push_back(entry);
  for (const telling::PictureStack& stack : picture.stacks) {
    if (stack.rig >= 0)
      rigs.push_back(
          {rigInPicture(picture, stack.rig, QString::fromStdString(stack.name)), stack.rig});
  }
  if (rigs.size() < 2) return;
  std::stable_sort(rigs.begin(), rigs.end(),
                   [](const LegendEntry& a, const LegendEntry& b) { return a.index < b.index; });
  menu.addSection(tr("Drawn"));
  for (const LegendEntry& rig : rigs) {
    QAction* action =
        menu.addAction(asEntry(rig.text), this, [this, rig] { Q_EMIT rigToggled(rig.index); });
    action->setCheckable(true);
    action->setChecked(!rig.isOut);
  }
}

void PlanChart::copyPicture() {
  telling::Picture shown = parts_->picture;
  shown.leftOut.clear();
  const ChartWindow w = visibleWindow();
  if (isZoomed()) {
    shown.xFrom = w.xFrom;
    shown.xTo = w.xTo;
    shown.yFrom = w.yFrom;
    shown.yTo = w.yTo;
    shown.exactly = true;
  }
  ChartLook look = parts_->look;
  look.lifted.reset();
  QApplication::clipboard()->setImage(pictureImage(shown, size(), look, 2.0));
}

void PlanChart::contextMenuEvent(QContextMenuEvent* event) {
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  fillMenu(*menu);
  // By the keyboard in the middle of what it is about.
  const bool byKey = event->reason() == QContextMenuEvent::Keyboard;
  menu->popup(byKey ? mapToGlobal(rect().center()) : event->globalPos());
}

}  // namespace gui
