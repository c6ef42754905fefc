// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/start/page_parts.hpp"

namespace gui {

QLabel* note(const QString& text, double size, bool heavy) {
  auto* label = new QLabel(text);
  label->setWordWrap(true);
  label->setTextFormat(Qt::PlainText);
  QFont font = label->font();
  font.setPointSizeF(font.pointSizeF() * size);
  font.setBold(heavy);
  label->setFont(font);
  return label;
}

QFrame* hairline() {
  auto* line = new QFrame;
  line->setFrameShape(QFrame::HLine);
  line->setFrameShadow(QFrame::Plain);
  line->setForegroundRole(QPalette::Mid);
  return line;
}

void emphasize(QLabel& label, bool warns) {
  QFont font = label.font();
  font.setBold(warns);
  label.setFont(font);
  label.setMargin(warns ? label.fontMetrics().height() / 3 : 0);
  label.setAutoFillBackground(warns);
  label.setBackgroundRole(warns ? QPalette::WindowText : QPalette::Window);
  label.setForegroundRole(warns ? QPalette::Window : QPalette::WindowText);
}

}  // namespace gui
