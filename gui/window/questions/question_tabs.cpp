// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/question_tabs.hpp"

#include <QFontMetrics>
#include <QPainter>
#include <QStyleOptionTab>
#include <algorithm>

namespace gui {
namespace {

constexpr int kBesideMark = 12;  // of a tab, left and right together

}  // namespace

void QuestionTabs::setMark(const QString& mark) {
  if (mark == mark_) return;
  mark_ = mark;
  // The bar lays its tabs out anew when one of them changes.
  if (count() > 0) setTabText(0, tabText(0) + QLatin1Char(' '));
  if (count() > 0) setTabText(0, tabText(0).chopped(1));
  updateGeometry();
  update();
}

QFont QuestionTabs::fontOfMark() const {
  QFont heavy = font();
  heavy.setBold(true);
  heavy.setPointSizeF(0.85 * heavy.pointSizeF());
  return heavy;
}

QSize QuestionTabs::tabSizeHint(int index) const {
  const QSize plain = QTabBar::tabSizeHint(index);
  if (mark_.isEmpty()) return plain;
  const int width = QFontMetrics(fontOfMark()).horizontalAdvance(mark_) + kBesideMark;
  return {std::max(plain.width(), width), plain.height() + fontMetrics().height()};
}

// A line of its own, which stays free: the style knows one weight for all of a tab.
void QuestionTabs::initStyleOption(QStyleOptionTab* option, int index) const {
  QTabBar::initStyleOption(option, index);
  if (!mark_.isEmpty()) option->text += QStringLiteral("\n ");
}

void QuestionTabs::paintEvent(QPaintEvent* event) {
  QTabBar::paintEvent(event);
  if (mark_.isEmpty()) return;
  QPainter painter(this);
  painter.setFont(fontOfMark());
  painter.setPen(palette().color(QPalette::WindowText));
  const int line = fontMetrics().height();
  for (int i = 0; i < count(); ++i) {
    const QRect tab = tabRect(i);
    const QRect room(tab.left(), tab.center().y() + 1, tab.width(), line);
    painter.drawText(room, Qt::AlignHCenter | Qt::AlignTop, mark_);
  }
}

}  // namespace gui
