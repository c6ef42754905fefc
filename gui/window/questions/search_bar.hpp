// SPDX-License-Identifier: GPL-3.0-or-later
// How far a long search is, and a button for who is content with what was found.
#pragma once

#include <QElapsedTimer>
#include <QWidget>

class QProgressBar;
class QPushButton;

namespace gui {

class SearchBar : public QWidget {
  Q_OBJECT

 public:
  explicit SearchBar(QWidget* parent = nullptr);

  // Seen from a second after the first call on, until all is tried.
  void setProgress(qulonglong done, qulonglong of);
  // No search is running any more.
  void finish();

 Q_SIGNALS:
  void enough();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void relabel();

  QProgressBar* bar_;
  QPushButton* enough_;
  QElapsedTimer since_;
  qulonglong of_ = 0;
};

}  // namespace gui
