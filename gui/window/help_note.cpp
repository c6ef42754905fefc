// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/help_note.hpp"

#include <QKeyEvent>
#include <QLabel>
#include <QScreen>
#include <QVBoxLayout>
#include <algorithm>

#include "gui/telling/explained.hpp"
#include "gui/window/questions/answer_table.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {
namespace {

constexpr int kNoteEms = 34;  // wide

QString asParagraphs(const telling::Explanation& explanation, const rigs::Reader& reader) {
  return QStringList{told(explanation.formula, reader),
                     HelpNote::tr("Source: %1.").arg(told(explanation.source, reader)),
                     HelpNote::tr("How sure: %1").arg(told(explanation.certainty, reader))}
      .join(QStringLiteral("\n\n"));
}

}  // namespace

HelpNote::HelpNote(const QString& heading, const QString& text, QWidget& about)
    : QFrame(&about, Qt::Popup), text_(text) {
  setObjectName(QStringLiteral("help note"));
  setAttribute(Qt::WA_DeleteOnClose);
  setFrameStyle(QFrame::Box | QFrame::Plain);
  setFont(about.font());
  setAccessibleName(heading);
  setAccessibleDescription(text);
  auto* rows = new QVBoxLayout(this);
  const auto add = [&](const QString& words, bool strongly) {
    auto* label = new QLabel(words);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    QFont weight = font();
    weight.setBold(strongly);
    label->setFont(weight);
    rows->addWidget(label);
  };
  if (!heading.isEmpty()) add(heading, true);
  add(text, false);
  const int em = fontMetrics().height();
  const int width = std::min(kNoteEms * em * 2 / 3, about.screen()->availableGeometry().width());
  setFixedWidth(width);
  setFixedHeight(rows->totalHeightForWidth(width));
}

void HelpNote::openAt(const QRect& place) {
  const QRect room = parentWidget()->screen()->availableGeometry();
  const bool below = place.bottom() + height() < room.bottom();
  const int y = below ? place.bottom() + 1 : std::max(room.top(), place.top() - height());
  const int x =
      std::clamp(place.left(), room.left(), std::max(room.left(), room.right() - width()));
  move(x, y);
  show();
  setFocus(Qt::PopupFocusReason);
}

void HelpNote::keyPressEvent(QKeyEvent*) { close(); }

void explainFigure(AnswerTable& table, int row, telling::Question question,
                   const rigs::Reader& reader) {
  const auto asked = table.asked(row);
  if (!asked) return;
  const QString label = table.item(row, 0) ? table.item(row, 0)->text() : QString();
  auto* note =
      new HelpNote(label, asParagraphs(telling::explanationOf(question, *asked), reader), table);
  note->openAt(table.placeOf(row));
}

void explainQuestion(telling::Question question, const rigs::Reader& reader, QWidget& about) {
  auto* note = new HelpNote(told(telling::titleOf(question), reader),
                            explanationText(question, reader), about);
  note->openAt({about.mapToGlobal(QPoint(0, 0)), about.size()});
}

QString explanationText(telling::Question question, const rigs::Reader& reader) {
  return asParagraphs(telling::explanationOf(question), reader);
}

}  // namespace gui
