// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/words/text_access.hpp"

#include <QAccessibleWidget>
#include <QLabel>
#include <QTextDocumentFragment>

namespace gui {
namespace {

class TextAccess : public QAccessibleWidget {
 public:
  explicit TextAccess(QLabel* label) : QAccessibleWidget(label, QAccessible::StaticText) {}

  QString text(QAccessible::Text kind) const override {
    if (kind != QAccessible::Name) return QAccessibleWidget::text(kind);
    const QString said = label().textFormat() == Qt::RichText
                             ? QTextDocumentFragment::fromHtml(label().text()).toPlainText()
                             : label().text();
    const QString called = label().accessibleName();
    return called.isEmpty() || said.isEmpty() ? called + said
                                              : QStringLiteral("%1: %2").arg(called, said);
  }

 private:
  QLabel& label() const { return *static_cast<QLabel*>(widget()); }
};

// Asked for each class of an object, the most particular first.
QAccessibleInterface* accessToText(const QString& ofClass, QObject* object) {
  auto* label = ofClass == QLatin1String("QLabel") ? qobject_cast<QLabel*>(object) : nullptr;
  return label && !label->buddy() && label->textInteractionFlags() != Qt::NoTextInteraction
             ? new TextAccess(label)
             : nullptr;
}

}  // namespace

void speakTextsWhole() {
  QAccessible::installFactory(accessToText);  // the same one is not installed twice
}

}  // namespace gui
