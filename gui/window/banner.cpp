// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/banner.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <algorithm>

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

void Banner::ask(Subject subject, const QString& text, std::vector<Choice> choices) {
  const auto same = std::find_if(asked_.begin(), asked_.end(),
                                 [&](const Asked& one) { return one.subject == subject; });
  // The same question again, as when a file is written in two goes: no button moves away from
  // under the hand.
  if (same != asked_.end() && same->text == text) return;
  Asked now{subject, text, std::move(choices)};
  if (same != asked_.end()) {
    *same = std::move(now);
  } else {
    asked_.push_back(std::move(now));
  }
  if (asked_.front().subject == subject) showFirst();
}

void Banner::drop(Subject subject) {
  std::erase_if(asked_, [&](const Asked& one) { return one.subject == subject; });
  showFirst();
}

void Banner::showFirst() {
  for (QWidget* button : buttons_) {
    button->hide();
    button->deleteLater();
  }
  buttons_.clear();
  setVisible(!asked_.empty());
  if (asked_.empty()) return;
  const Asked& first = asked_.front();
  text_->setText(first.text);
  for (const Choice& choice : first.choices) {
    auto* button = new QPushButton(choice.first);
    connect(button, &QPushButton::clicked, this,
            [this, subject = first.subject, act = choice.second] {
              drop(subject);
              if (act) act();
            });
    row_->addWidget(button);
    button->show();
    buttons_.push_back(button);
  }
}

QString Banner::text() const { return text_->text(); }

}  // namespace gui
