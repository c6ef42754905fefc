// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/questions/cautions_foot.hpp"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace gui {
namespace {

// Whole sentences, which a person may copy.
QLabel* sentences(const char* name, QWidget* parent) {
  auto* label = new QLabel(parent);
  label->setObjectName(QLatin1String(name));
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  return label;
}

}  // namespace

CautionsFoot::CautionsFoot(QWidget* parent)
    : QWidget(parent),
      strip_(sentences("strip", this)),
      all_(new QToolButton(this)),
      cautions_(sentences("cautions", this)) {
  all_->setObjectName(QStringLiteral("all cautions"));
  all_->setCheckable(true);
  all_->setAutoRaise(true);
  cautions_->hide();
  auto* rows = new QVBoxLayout(this);
  rows->setContentsMargins(0, 0, 0, 0);
  auto* line = new QHBoxLayout;
  line->addWidget(strip_, 1);
  line->addWidget(all_, 0, Qt::AlignTop);
  rows->addLayout(line);
  rows->addWidget(cautions_);
  connect(all_, &QToolButton::toggled, cautions_, &QLabel::setVisible);
}

void CautionsFoot::show(const QString& strip, const QStringList& cautions) {
  strip_->setText(strip);
  cautions_->setText(cautions.join(QLatin1Char(' ')));
  all_->setText(tr("All cautions (%1)").arg(cautions.size()));
  all_->setVisible(!strip.isEmpty());
}

void CautionsFoot::setLetters(const QFont& font) {
  strip_->setFont(font);
  cautions_->setFont(font);
}

void CautionsFoot::retranslate() {
  strip_->setAccessibleName(tr("Cautions"));
  cautions_->setAccessibleName(strip_->accessibleName());
  all_->setToolTip(tr("Shows all that there is to take care of, or folds it away"));
}

}  // namespace gui
