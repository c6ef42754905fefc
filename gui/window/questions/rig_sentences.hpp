// SPDX-License-Identifier: GPL-3.0-or-later
// The rigs in words, one below the other, each with a piece of its line: the parts of a sentence
// are links to their fields, those that are assumed in quieter letters.
#pragma once

#include <QGridLayout>
#include <QLabel>
#include <QStringList>
#include <QToolButton>
#include <QWidget>
#include <vector>

#include "gui/telling/case.hpp"
#include "gui/window/charts/rig_sample.hpp"
#include "rigs/answers/solution.hpp"

namespace gui {

class RigSentences : public QWidget {
  Q_OBJECT

 public:
  explicit RigSentences(QWidget* parent = nullptr);
  // Null shows nothing.
  void show(const rigs::SolutionPtr& solution, const rigs::Reader& reader);
  // As they are read, without their links.
  QStringList texts() const;

 Q_SIGNALS:
  // Its fields' places in the document, the first the one to go to.
  void partChosen(const QStringList& places);
  // One more rig, the same but for something.
  void anotherWanted();

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Line {
    RigSample* sample;
    QLabel* sentence;
    std::vector<QStringList> places;  // of the links, by number
  };
  Line newLine(int row);
  void write();

  QGridLayout* grid_;
  QToolButton* another_;
  std::vector<Line> lines_;
  rigs::SolutionPtr solution_;
  rigs::Reader reader_;
};

}  // namespace gui
