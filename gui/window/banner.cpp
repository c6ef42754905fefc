// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/banner.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace gui {

Banner::Banner(QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("banner"));
  setFrameShape(QFrame::StyledPanel);
  row_ = new QHBoxLayout(this);
  row_->setContentsMargins(8, 4, 8, 4);
  text_ = new QLabel;
  text_->setWordWrap(true);
  row_->addWidget(text_, 1);
  hide();
}

void Banner::ask(const QString& text, std::vector<Choice> choices) {
  // The same question again, as when a file is written in two goes: no button moves away from
  // under the hand.
  if (isVisible() && text_->text() == text) return;
  for (QWidget* button : buttons_) {
    button->hide();
    button->deleteLater();
  }
  buttons_.clear();
  text_->setText(text);
  for (Choice& choice : choices) {
    auto* button = new QPushButton(choice.first);
    connect(button, &QPushButton::clicked, this, [this, act = std::move(choice.second)] {
      hide();
      if (act) act();
    });
    row_->addWidget(button);
    button->show();
    buttons_.push_back(button);
  }
  show();
}

QString Banner::text() const { return text_->text(); }

}  // namespace gui
