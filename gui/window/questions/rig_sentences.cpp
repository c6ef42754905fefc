// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/rig_sentences.hpp"

#include <QEvent>
#include <QTextDocumentFragment>

#include "gui/telling/rig_words.hpp"
#include "gui/window/forms/plan_edits.hpp"

namespace gui {
namespace {

constexpr int kSampleWidth = 30;  // px

// Where the part's keys stand in the document; of a list its first entry.
QStringList placesOf(const telling::SentencePart& part, std::size_t rig) {
  QStringList places;
  for (const std::string& key : part.keys) {
    QString place = QString::fromStdString(key);
    place.replace(QStringLiteral("/rigs/*"), QStringLiteral("/rigs/%1").arg(rig));
    places += place.replace(QLatin1Char('*'), QLatin1Char('0'));
  }
  return places;
}

QString linked(const QString& text, std::size_t number, const QColor& ink) {
  return QStringLiteral("<a href=\"%1\" style=\"color:%2\">%3</a>")
      .arg(number)
      .arg(ink.name(), text.toHtmlEscaped());
}

}  // namespace

RigSentences::RigSentences(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 6);
  grid_->setHorizontalSpacing(8);
  grid_->setVerticalSpacing(3);
  grid_->setColumnStretch(1, 1);
  another_ = new QToolButton(this);
  another_->setObjectName(QStringLiteral("same, with"));
  another_->setAutoRaise(true);
  // Below as many as there can be.
  grid_->addWidget(another_, static_cast<int>(kMostRigs), 1, Qt::AlignRight);
  connect(another_, &QToolButton::clicked, this, &RigSentences::anotherWanted);
  hide();
}

RigSentences::Line RigSentences::newLine(int row) {
  Line line{new RigSample(0, this), new QLabel(this), {}};
  line.sample->setFixedWidth(kSampleWidth);
  line.sentence->setTextFormat(Qt::RichText);
  line.sentence->setWordWrap(true);
  line.sentence->setTextInteractionFlags(Qt::LinksAccessibleByMouse |
                                         Qt::LinksAccessibleByKeyboard);
  grid_->addWidget(line.sample, row, 0, Qt::AlignTop);
  grid_->addWidget(line.sentence, row, 1);
  connect(line.sentence, &QLabel::linkActivated, this, [this, row](const QString& number) {
    const auto& places = lines_[static_cast<std::size_t>(row)].places;
    const std::size_t link = number.toULong();
    if (link < places.size()) Q_EMIT partChosen(places[link]);
  });
  return line;
}

void RigSentences::show(const rigs::SolutionPtr& solution, const rigs::Reader& reader) {
  solution_ = solution;
  reader_ = reader;
  write();
  setVisible(solution_ != nullptr);
}

void RigSentences::write() {
  const std::size_t count = solution_ ? solution_->plan.rigs.size() : 0;
  while (lines_.size() > count) {
    delete lines_.back().sample;
    delete lines_.back().sentence;
    lines_.pop_back();
  }
  while (lines_.size() < count) lines_.push_back(newLine(static_cast<int>(lines_.size())));
  if (!solution_) return;
  another_->setText(tr("+ same, with ..."));
  another_->setToolTip(
      tr("One more rig, the same as the one compared with but for what you then say"));
  another_->setEnabled(count < kMostRigs);
  const telling::Case of{*solution_, solution_->plan, reader_, {}};
  const auto slots = of.slots();
  for (std::size_t i = 0; i < count; ++i) {
    Line& line = lines_[i];
    line.sample->setFixedHeight(fontMetrics().height());  // of the sentence's first line
    line.sample->setSlot(static_cast<int>(slots[i]));
    line.places.clear();
    QString text = QStringLiteral("<b>%1</b>: ")
                       .arg(QString::fromStdString(of.text(of.named(i))).toHtmlEscaped());
    for (const telling::SentencePiece& piece : telling::rigInPieces(of.plan, i, reader_)) {
      const QString said = QString::fromStdString(piece.text);
      if (!piece.isPart() || piece.part->keys.empty()) {
        text += said.toHtmlEscaped();
        continue;
      }
      const auto role = piece.part->assumed ? QPalette::PlaceholderText : QPalette::WindowText;
      text += linked(said, line.places.size(), palette().color(role));
      line.places.push_back(placesOf(*piece.part, i));
    }
    if (line.sentence->text() != text) line.sentence->setText(text);
  }
}

QStringList RigSentences::texts() const {
  QStringList all;
  for (const Line& line : lines_)
    all += QTextDocumentFragment::fromHtml(line.sentence->text()).toPlainText();
  return all;
}

void RigSentences::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::PaletteChange) write();
}

}  // namespace gui
