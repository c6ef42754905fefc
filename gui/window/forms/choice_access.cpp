// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/choice_access.hpp"

#include <QAbstractItemView>
#include <QAccessibleWidget>
#include <QComboBox>

namespace gui {
namespace {

class ChoiceAccess : public QAccessibleWidget {
 public:
  explicit ChoiceAccess(QComboBox* box) : QAccessibleWidget(box, QAccessible::ComboBox) {}

  QString text(QAccessible::Text kind) const override {
    return kind == QAccessible::Value ? box().currentText() : QAccessibleWidget::text(kind);
  }

  // The list, as Qt has it.
  int childCount() const override { return 1; }
  QAccessibleInterface* child(int index) const override {
    if (index != 0) return nullptr;
    box().view()->setAccessibleName(widget()->accessibleName());
    return QAccessible::queryAccessibleInterface(box().view());
  }
  int indexOfChild(const QAccessibleInterface* one) const override {
    return one && one->object() == box().view() ? 0 : -1;
  }
  QAccessibleInterface* childAt(int x, int y) const override {
    return box().view()->isVisible() &&
                   box().view()->rect().contains(box().view()->mapFromGlobal(QPoint(x, y)))
               ? child(0)
               : nullptr;
  }

  QStringList actionNames() const override {
    return QStringList{showMenuAction(), pressAction()} + QAccessibleWidget::actionNames();
  }
  void doAction(const QString& name) override {
    if (name != showMenuAction() && name != pressAction()) return QAccessibleWidget::doAction(name);
    if (box().view()->isVisible())
      box().hidePopup();
    else
      box().showPopup();
  }

 private:
  QComboBox& box() const { return *static_cast<QComboBox*>(widget()); }
};

// Asked for each class of an object, the most particular first.
QAccessibleInterface* accessTo(const QString& ofClass, QObject* object) {
  auto* box = qobject_cast<QComboBox*>(object);
  return box && ofClass == QLatin1String("gui::PlanComboBox") ? new ChoiceAccess(box) : nullptr;
}

}  // namespace

void nameChoicesByTheirLabels() {
  QAccessible::installFactory(accessTo);  // the same one is not installed twice
}

}  // namespace gui
