// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/field_cell.hpp"

#include <QSignalBlocker>
#include <QVBoxLayout>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/forms/bare_number.hpp"
#include "gui/window/forms/kettle_volume.hpp"
#include "gui/window/forms/plan_edits.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/documents/json_edit.hpp"
#include "rigs/plans/key_steps.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace gui {
namespace {

constexpr qsizetype kMayBeCut = 8;  // characters

QString textIn(const rigs::Texts& texts, const std::string& pointer) {
  const auto found = texts.find(pointer);
  return found == texts.end() ? QString() : QString::fromStdString(found->second);
}

const rigs::Key* keyOf(const PlanField& field, std::optional<std::size_t> rig) {
  if (field.kind == FieldKind::KettleVolume) return rigs::keyAt("/batch/wort");  // another volume
  return rigs::keyAt((rig ? "/rigs/*" : "") + field.place);
}

// A value with a unit that the key takes. Bare shares ("0.5") are values without one.
bool isValueWithUnit(const rigs::Key& key, const std::string& text) {
  switch (key.kind) {
    case rigs::ValueKind::Quantity:
    case rigs::ValueKind::Share:
    case rigs::ValueKind::WordOrShare:
      return rigs::isQuantity(key.quantity, text);
    case rigs::ValueKind::Price:
      return text.ends_with("/kWh");
    default:
      return false;
  }
}

std::string siblingOf(const std::string& pointer, const char* name) {
  return pointer.substr(0, pointer.rfind('/') + 1) + name;
}

}  // namespace

std::string placeOfElement(const rigs::Texts& texts, std::optional<std::size_t> rig,
                           const std::string& place) {
  constexpr std::string_view kElement = "/element/";
  if (!rig || !place.starts_with(kElement)) return place;
  const std::string list = "/elements/0/" + place.substr(kElement.size());
  return texts.contains("/rigs/" + std::to_string(*rig) + list) ? list : place;
}

FormState formStateOf(const PlanDocument& document) {
  FormState state;
  const std::size_t count = rigs::rigCount(document.text());
  for (std::size_t i = 0; i < count; ++i) {
    state.origins.push_back(rigs::originsOf(document.text(), i, document.folder()));
    state.inherited.push_back(rigs::inheritedTexts(state.origins.back()));
    const auto from = document.texts().find("/rigs/" + std::to_string(i) + "/from");
    state.originNames.push_back(from == document.texts().end() ? "" : from->second);
  }
  return state;
}

FieldCell::FieldCell(PlanDocument& document, PlanField field, std::optional<std::size_t> rig,
                     QWidget* parent)
    : QWidget(parent), document_(document), field_(std::move(field)), rig_(rig) {
  pointer_ = (rig ? "/rigs/" + std::to_string(*rig) : std::string()) + field_.place;
  layout_ = new QVBoxLayout(this);
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(1);
  if (field_.kind == FieldKind::Choice) {
    combo_ = new PlanComboBox(this);
    connect(combo_, &QComboBox::activated, this,
            [this](int index) { apply(combo_->itemData(index).toString()); });
    connect(combo_, &PlanComboBox::left, this, [this] { ++visit_; });
  } else {
    line_ = new PlanLineEdit(this);
    line_->setMinimumWidth(64);
    connect(line_, &PlanLineEdit::committed, this, [this](const QString& text) { apply(text); });
    connect(line_, &PlanLineEdit::stepWanted, this, &FieldCell::step);
    connect(line_, &PlanLineEdit::slideWanted, this, &FieldCell::slide);
    connect(line_, &PlanLineEdit::menuOpens, this, &FieldCell::menuOpens);
    connect(line_, &PlanLineEdit::left, this, [this] { ++visit_; });
    connect(line_, &QLineEdit::textEdited, &document_, &PlanDocument::beingTyped);
  }
  if (field_.kind == FieldKind::Shown) line_->setReadOnly(true);
  key_ = keyOf(field_, rig_);
  if (line_ && key_) line_->setHasSteps(!line_->isReadOnly() && rigs::hasSteps(*key_));
  offerSlider();
  editor()->setWhatsThis(field_.help.isEmpty() ? field_.meaning : field_.help);
  editor()->setObjectName(QString::fromStdString(pointer_));
  layout_->addWidget(editor());
  layout_->addStretch(1);
}

QWidget* FieldCell::editor() const {
  return line_ ? static_cast<QWidget*>(line_) : static_cast<QWidget*>(combo_);
}

void FieldCell::nameFor(const QString& owner) {
  editor()->setAccessibleName(owner.isEmpty() ? field_.label
                                              : tr("%1, %2").arg(field_.label, owner));
  describe();
}

// What is wrong before what it means.
void FieldCell::describe() {
  QStringList all;
  if (problem_ && !problem_->text().isEmpty()) all += problem_->text();
  if (overload_) all += overload_->toolTip();
  all += field_.meaning;
  all.removeAll(QString());
  editor()->setAccessibleDescription(all.join(QLatin1Char('\n')));
}

void FieldCell::displayOverload(const QString& sentence) {
  if (sentence.isEmpty() && !overload_) return;
  if (!overload_) {
    overload_ = new OverloadMark(editor()->objectName() + QLatin1Char('!'), this);
    layout_->insertWidget(1, overload_);
  }
  overload_->setToolTip(sentence);
  overload_->setVisible(!sentence.isEmpty());
  QFont weight = editor()->font();
  weight.setBold(!sentence.isEmpty());
  editor()->setFont(weight);
  showTip(tip_);
  describe();
}

void FieldCell::commit() {
  if (line_) line_->commit();
}

std::string FieldCell::textAsTyped() const {
  if (!line_ || !line_->isBeingTyped()) return document_.text();
  rigs::Problems notYet;
  return textWith(line_->text(), notYet).value_or(document_.text());
}

std::optional<FieldCell::Visit> FieldCell::visit() const {
  if (!line_ || !line_->isInHand()) return std::nullopt;
  return Visit{line_->hand(), unit_, visit_};
}

void FieldCell::resume(const Visit& visit) {
  if (!line_) return;
  line_->takeOver(visit.hand);
  unit_ = visit.unit;
  visit_ = visit.number;
}

std::optional<std::string> FieldCell::textWith(const QString& asTyped,
                                               rigs::Problems& problems) const {
  if (asTyped == shown_) return std::nullopt;  // typed and taken back
  const QString typed = withUnitOf(unit_, asTyped);
  static const std::vector<std::string> kNoOrigins;
  FieldOwner owner{.rig = rig_, .origins = &kNoOrigins, .folder = document_.folder()};
  std::vector<std::string> origins;
  if (rig_) {
    origins = rigs::originsOf(document_.text(), *rig_, document_.folder());
    owner.origins = &origins;
  }
  const std::string written = typed.toStdString();
  try {
    if (field_.kind == FieldKind::KettleVolume)
      return withKettleVolume(document_.text(), owner, written, problems);
    return withField(document_.text(), {owner, field_, written});
  } catch (const rigs::EditError&) {
    // A file with, say, a number where an object belongs; its own problem says so.
    return std::nullopt;
  }
}

// By the hand that did it: what is typed is another step than what a slider did.
void FieldCell::apply(const QString& typed, const QString& hand) {
  rigs::Problems problems;  // of what no document could hold
  std::optional<std::string> text = textWith(typed, problems);
  if (field_.kind == FieldKind::KettleVolume)
    display(problems.empty() ? QString() : told(problems.front().message, document_.units()),
            false);
  if (!text) return;
  document_.change(
      stepName(), std::move(*text),
      QString::fromStdString(pointer_) + QLatin1Char('#') + QString::number(visit_) + hand);
}

// "change of Power (Element) of (b)": labels alone are alike in many rigs and sections.
QString FieldCell::stepName() const {
  const std::size_t count = rig_ ? rigs::rigCount(document_.text()) : 0;
  const bool lettered = count > 1;
  const QString letter =
      lettered ? letterOfRig(static_cast<int>(rigs::slotsIn(document_.texts(), count)[*rig_]))
               : QString();
  if (field_.section.isEmpty())
    return lettered ? tr("change of %1 of %2").arg(field_.label, letter)
                    : tr("change of %1").arg(field_.label);
  return lettered ? tr("change of %1 (%2) of %3").arg(field_.label, field_.section, letter)
                  : tr("change of %1 (%2)").arg(field_.label, field_.section);
}

void FieldCell::pointOut() {
  QWidget* shown = editor();
  QPalette marked = shown->palette();
  const QColor base = marked.color(QPalette::Base);
  const QColor accent = marked.color(QPalette::Highlight);
  const auto between = [](int a, int b) { return (3 * a + b) / 4; };  // text stays readable on it
  const QColor tint(between(base.red(), accent.red()), between(base.green(), accent.green()),
                    between(base.blue(), accent.blue()));
  for (const QPalette::ColorRole role : {QPalette::Base, QPalette::Button})
    marked.setColor(role, tint);
  shown->setPalette(marked);
  shown->setProperty("pointed out", true);
  QTimer::singleShot(kPointedOut, shown, [shown] {
    shown->setPalette({});
    shown->setProperty("pointed out", false);
  });
}

QString FieldCell::inheritedFrom(const FormState& state) const {
  return rig_ && *rig_ < state.originNames.size()
             ? catalogueName(QString::fromStdString(state.originNames[*rig_]))
             : QString();
}

// What is not in any one place of the document: as the plan has it, or had it last.
void FieldCell::refreshShown() {
  if (!document_.plan()) return;
  const QString text = field_.shown(*document_.plan());
  shown_ = text;
  line_->display(text);
  line_->setCursorPosition(0);
  line_->setPlaceholderText(QStringLiteral("–"));
  line_->setToolTip(text.isEmpty() ? field_.meaning : field_.meaning + QLatin1Char('\n') + text);
}

void FieldCell::refreshVolume(const FormState& state) {
  const auto volume = kettleVolume(document_.texts(), *rig_, state.inherited[*rig_]);
  shown_ = volume ? QString::fromStdString(rigs::format(*volume, document_.units())) : QString();
  stated_ = shown_;
  line_->display(shown_);
  noteUnit(shown_, QString());
  showTip(field_.meaning);
}

void FieldCell::refresh(const FormState& state) {
  if (field_.kind == FieldKind::Shown) return refreshShown();
  if (field_.kind == FieldKind::KettleVolume) return refreshVolume(state);
  const rigs::Texts& texts = document_.texts();
  const std::string place = placeOfElement(document_.texts(), rig_, field_.place);
  const std::string pointer = pointer_.substr(0, pointer_.size() - field_.place.size()) + place;
  QString own = textIn(texts, pointer);
  QString inherited;
  if (field_.kind == FieldKind::LayerAmount && own.isEmpty()) {
    own = textIn(texts, siblingOf(pointer_, "R"));
  } else if (field_.kind == FieldKind::LayerAmount &&
             !textIn(texts, siblingOf(pointer_, "R")).isEmpty()) {
    own = textIn(texts, siblingOf(pointer_, "R"));  // a stated R is what counts
  }
  if (rig_ && *rig_ < state.inherited.size()) {
    const std::string part = place.substr(1, place.find('/', 1) - 1);
    const std::string partAt = "/rigs/" + std::to_string(*rig_) + "/" + part;
    const auto below = texts.lower_bound(partAt);
    const bool isStated = below != texts.end() && below->first.starts_with(partAt);
    const bool follows = texts.contains("/rigs/" + std::to_string(*rig_) + "/same_as");
    if (!isStated || follows || rigs::mergesByKey(part)) {
      inherited = textIn(state.inherited[*rig_], place);
      if (inherited.isEmpty() && field_.kind == FieldKind::LayerAmount)
        inherited = textIn(state.inherited[*rig_], siblingOf(place, "R"));
    }
    // What stands instead of it is stated here: the origin's no longer counts.
    for (const std::string& other : field_.replaces)
      if (texts.contains("/rigs/" + std::to_string(*rig_) + other)) inherited.clear();
    if (own.isEmpty() && textIn(texts, partAt) == QLatin1String("none") &&
        field_.place.ends_with("/material"))
      own = QStringLiteral("none");
  }
  shown_ = own;
  stated_ = own.isEmpty() ? inherited : own;
  if (combo_)
    refreshChoice(own, inherited, state);
  else
    refreshText(own, inherited, state);
}

void FieldCell::refreshText(const QString& own, const QString& inherited, const FormState& state) {
  const rigs::UnitSystem units = document_.units();
  Conversion conversion = field_.conversion;
  if (field_.kind == FieldKind::LayerAmount) {
    const std::string& shown = own.isEmpty() ? inherited.toStdString() : own.toStdString();
    if (rigs::parseQuantity<physics::ThermalInsulance>(shown))
      conversion = converted<physics::ThermalInsulance>;
  }
  const QString shown = shownText(own.toStdString(), units, conversion);
  line_->display(shown);
  QString hint = inherited.isEmpty() ? field_.usual : inherited;
  hint = shownText(hint.toStdString(), units, conversion);
  line_->setPlaceholderText(hint);
  noteUnit(shown, hint);
  // First what a narrow field may cut.
  QString tip =
      shown.size() > kMayBeCut ? shown + QLatin1Char('\n') + field_.meaning : field_.meaning;
  if (!own.isEmpty() && shown != own) tip += QLatin1Char('\n') + tr("Written as %1.").arg(own);
  if (own.isEmpty() && !inherited.isEmpty())
    tip += QLatin1Char('\n') + tr("Not stated here: %1, as in %2.").arg(hint, inheritedFrom(state));
  else if (own.isEmpty() && !field_.usual.isEmpty())
    tip += QLatin1Char('\n') + tr("Not stated: %1.").arg(hint);
  showTip(tip);
}

// As the field is found, not as it is while it is typed in.
void FieldCell::noteUnit(const QString& shown, const QString& hint) {
  if (line_->isInHand()) return;
  unit_.clear();
  if (!key_) return;
  for (const QString& seen : {hint, shown}) {
    const std::string text = seen.toStdString();
    const bool isR = field_.kind == FieldKind::LayerAmount &&
                     rigs::isQuantity(rigs::QuantityKind::ThermalInsulance, text);
    if (isR || isValueWithUnit(*key_, text)) unit_ = seen;
  }
}

// As the reader sees it; the plan keeps the English word.
QString FieldCell::choiceText(const QString& choice) const {
  if (choice == QLatin1String("none")) return tr("none");
  return field_.place == "/place/region" ? regionName(choice.toStdString()) : catalogueName(choice);
}

QString FieldCell::valueInWords() const {
  if (combo_) return stated_.isEmpty() ? QString() : choiceText(stated_);
  return line_->text().isEmpty() ? line_->placeholderText() : line_->text();
}

void FieldCell::refreshChoice(const QString& own, const QString& inherited,
                              const FormState& state) {
  std::string about;
  if (field_.place == "/place/edition" || field_.place.ends_with("/outlet")) {
    about = textIn(document_.texts(), "/place/region").toStdString();
  } else if (field_.place.ends_with("/finish")) {
    about = textIn(document_.texts(), siblingOf(pointer_, "material")).toStdString();
    if (about.empty() && rig_ && *rig_ < state.inherited.size())
      about = textIn(state.inherited[*rig_], siblingOf(field_.place, "material")).toStdString();
  }
  const QString none =
      !inherited.isEmpty() ? tr("%1 (as in %2)").arg(choiceText(inherited), inheritedFrom(state))
      : !field_.usual.isEmpty() ? tr("%1 (not stated)").arg(choiceText(field_.usual))
                                : QStringLiteral("—");
  QStringList offered{none, QString()};
  for (const std::string& choice : field_.choices(about)) offered << QString::fromStdString(choice);
  if (!own.isEmpty() && !offered.mid(2).contains(own)) offered << own;
  const QSignalBlocker quiet(combo_);
  if (offered != offered_) {
    offered_ = offered;
    combo_->clear();
    combo_->addItem(none, QString());
    for (const QString& choice : offered.mid(2)) combo_->addItem(choiceText(choice), choice);
  }
  combo_->setCurrentIndex(own.isEmpty() ? 0 : combo_->findData(own));
  showTip(combo_->currentText() + QLatin1Char('\n') + field_.meaning);
}

void FieldCell::tellProblemsIn(QVBoxLayout* room, const QString& whose) {
  room_ = room;
  whose_ = whose;
}

// A tip may cover the problem beside it, and so says it too.
void FieldCell::showTip(const QString& tip) {
  tip_ = tip;
  QStringList all{problem_ ? problem_->text() : QString(),
                  overload_ ? overload_->toolTip() : QString(), tip};
  all.removeAll(QString());
  editor()->setToolTip(all.join(QLatin1Char('\n')));
}

void FieldCell::display(const QString& problem, bool isRemark) {
  if (problem.isEmpty() && !problem_) return;
  if (!problem_) {
    problem_ = new ProblemLabel(room_ ? room_->parentWidget() : this);
    problem_->setObjectName(editor()->objectName() + QStringLiteral("?"));
    if (room_)
      room_->addWidget(problem_);
    else
      layout_->insertWidget(1, problem_);
  }
  problem_->display(problem, isRemark, whose_);
  showTip(tip_);
  describe();
}

}  // namespace gui
