// SPDX-License-Identifier: GPL-3.0-or-later
// Help right where one is: a note at what it is about, gone with the next key or click.
#pragma once

#include <QFrame>
#include <QRect>
#include <QString>

#include "gui/telling/question.hpp"
#include "rigs/words/language.hpp"

namespace gui {

class AnswerTable;

class HelpNote : public QFrame {
  Q_OBJECT

 public:
  // Deletes itself when it closes.
  HelpNote(const QString& heading, const QString& text, QWidget& about);
  QString text() const { return text_; }
  // Below the place on the screen, or above it where there is no room.
  void openAt(const QRect& place);

 protected:
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QString text_;
};

// How the figure of that row was computed.
void explainFigure(AnswerTable& table, int row, telling::Question question,
                   const rigs::Reader& reader);
// The same of what a question is about, at what shows it.
void explainQuestion(telling::Question question, const rigs::Reader& reader, QWidget& about);
QString explanationText(telling::Question question, const rigs::Reader& reader);

}  // namespace gui
