// SPDX-License-Identifier: GPL-3.0-or-later
// The foot of a page: one line of what can hurt in this plan, and all cautions a click behind it.
#pragma once

#include <QLabel>
#include <QStringList>
#include <QToolButton>
#include <QWidget>

namespace gui {

class CautionsFoot : public QWidget {
  Q_OBJECT

 public:
  explicit CautionsFoot(QWidget* parent = nullptr);
  void show(const QString& strip, const QStringList& cautions);
  // In letters of this size.
  void setLetters(const QFont& font);
  // Re-reads what it says of itself after a change of language.
  void retranslate();

 private:
  QLabel* strip_;
  QToolButton* all_;
  QLabel* cautions_;
};

}  // namespace gui
