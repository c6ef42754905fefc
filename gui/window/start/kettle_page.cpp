// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/start/kettle_page.hpp"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLocale>
#include <QSignalBlocker>
#include <algorithm>
#include <array>

#include "gui/window/forms/bare_number.hpp"
#include "gui/window/start/page_parts.hpp"
#include "gui/window/words/reader.hpp"

namespace gui {

using rigs::KettleFigure;

namespace {

constexpr double kHeadlineSize = 1.4;  // times the page's own font
constexpr double kAnswerSize = 1.08;
constexpr double kNoteSize = 0.92;

// An element's power is told in watts by some plates and in kilowatts by others. Below 50 W no plan
// takes one, so that a bare number below it can only mean kilowatts.
QString withUnitOfPower(const QString& typed) {
  const QString watts = withUnitOf(QStringLiteral("1 W"), typed);
  const auto power = rigs::parseQuantity<physics::Power>(watts.toStdString());
  return power && *power < physics::watts(50.0) ? withUnitOf(QStringLiteral("1 kW"), typed) : watts;
}

}  // namespace

KettlePage::KettlePage(rigs::UnitSystem units, QWidget* parent) : QWidget(parent), units_(units) {
  kettle_.region = usualRegion();
  auto* columns = new QHBoxLayout(this);
  columns->setSpacing(2 * fontMetrics().height());
  auto* questions = new QVBoxLayout;
  auto* answer = new QVBoxLayout;
  columns->addLayout(questions, 0);
  columns->addLayout(answer, 1);
  buildQuestions(*questions);
  buildAnswer(*answer);
  connect(&solver_, &Solver::checked, this, [this](const rigs::Problems& problems, int edition) {
    if (edition != edition_) return;
    showProblems(problems);
    setFine(!rigs::hasErrors(problems));
  });
  connect(&solver_, &Solver::failed, this, [this](const rigs::Told& why, int edition) {
    if (edition == edition_) headline_->setText(tr("There is no answer: %1.").arg(told(why)));
  });
  connect(&solver_, &Solver::solved, this, &KettlePage::showAnswer);
  solver_.lookAt({.rest = true});
  startAnew();
}

std::string KettlePage::usualRegion() {
  switch (QLocale::system().territory()) {
    case QLocale::UnitedStates:
      return "United States";
    case QLocale::Canada:
      return "Canada";
    case QLocale::Mexico:
      return "Mexico";
    case QLocale::Brazil:
      return "Brazil";
    case QLocale::Japan:
      return "Japan";
    case QLocale::UnitedKingdom:
    case QLocale::Ireland:
      return "United Kingdom";
    case QLocale::Australia:
    case QLocale::NewZealand:
      return "Australia and New Zealand";
    default:
      return std::string(rigs::kUsualRegion);
  }
}

void KettlePage::buildQuestions(QVBoxLayout& column) {
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->setVerticalSpacing(fontMetrics().height() / 3);
  addKettle(*grid);
  addField(*grid, KettleFigure::Power, tr("&Element"), "start/power");
  addField(*grid, KettleFigure::Voltage, tr("made &for"), "start/voltage");
  addCircuit(*grid);
  addField(*grid, KettleFigure::Altitude, tr("Al&titude"), "start/altitude");
  addField(*grid, KettleFigure::Room, tr("&Room"), "start/room");
  addField(*grid, KettleFigure::Batch, tr("Finished &wort"), "start/batch");
  addLidAndJacket(*grid);
  column.addLayout(grid);
  otherProblem_ = new ProblemLabel;
  column.addWidget(otherProblem_);
  column.addWidget(
      note(tr("Grey is assumed. A number alone takes the unit that stands there."), kNoteSize));
  column.addStretch(1);
}

void KettlePage::addKettle(QGridLayout& grid) {
  addField(grid, KettleFigure::Volume, tr("&Kettle"), "start/volume");
  statedBy_ = new PlanComboBox;
  statedBy_->setObjectName(QStringLiteral("start/stated by"));
  statedBy_->setAccessibleName(tr("How the kettle's size is stated"));
  statedBy_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  statedBy_->addItem(tr("by volume"), 0);
  statedBy_->addItem(tr("by diameter and height"), 1);
  addRow(grid, nullptr, statedBy_);
  proportions_ = note({}, kNoteSize);
  proportions_->setObjectName(QStringLiteral("start/proportions"));
  addRow(grid, nullptr, proportions_);
  addField(grid, KettleFigure::Diameter, tr("&Diameter"), "start/diameter");
  addField(grid, KettleFigure::Height, tr("&Height"), "start/height");
  connect(statedBy_, &QComboBox::activated, this, [this](int index) {
    kettle_.bySize = index == 1;
    startAnew();
    fields_[kettle_.bySize ? KettleFigure::Diameter : KettleFigure::Volume].line->setFocus();
  });
}

void KettlePage::addCircuit(QGridLayout& grid) {
  const auto choice = [&grid](const QString& text, const QString& name) {
    auto* box = new PlanComboBox;
    box->setObjectName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = new QLabel(text);
    label->setBuddy(box);
    box->setAccessibleName(QString(text).remove(QLatin1Char('&')));
    addRow(grid, label, box);
    return box;
  };
  region_ = choice(tr("&Country"), QStringLiteral("start/region"));
  circuit_ = choice(tr("&Plugged into"), QStringLiteral("start/circuit"));
  // Without data: nobody has said so, and it shows grey.
  region_->addItem(tr("%1 (assumed)").arg(regionName(kettle_.region)), QString());
  for (const std::string& region : rigs::regionsToOffer())
    region_->addItem(regionName(region), QString::fromStdString(region));
  connect(region_, &QComboBox::activated, this, [this] {
    const std::string chosen = region_->currentData().toString().toStdString();
    kettle_.region = chosen.empty() ? usualRegion() : chosen;
    kettle_.circuit.clear();
    fillCircuits();
    startAnew();
  });
  connect(circuit_, &QComboBox::activated, this, [this] {
    kettle_.circuit = circuit_->currentData().toString().toStdString();
    startAnew();
  });
  fillCircuits();
}

void KettlePage::fillCircuits() {
  const QSignalBlocker quiet(circuit_);
  circuit_->clear();
  const auto offered = rigs::circuitsToOffer(kettle_.region);
  const auto called = [this](const rigs::Circuit& one) {
    return told(rigs::circuitCalled(one, kettle_.region), units_);
  };
  circuit_->addItem(tr("%1 (assumed)").arg(called(*offered.front())), QString());
  for (const rigs::Circuit* one : offered)
    circuit_->addItem(called(*one), QString::fromStdString(one->name));
}

void KettlePage::addLidAndJacket(QGridLayout& grid) {
  const auto add = [this, &grid](QLabel* label, const QString& text, const char* name, bool& on) {
    auto* check = new QCheckBox(text);
    check->setObjectName(QLatin1String(name));
    check->setChecked(on);
    auto* assumed = new QLabel(tr("assumed"));
    assumed->setForegroundRole(QPalette::PlaceholderText);
    connect(check, &QCheckBox::toggled, this, [this, &on, assumed](bool checked) {
      on = checked;
      assumed->hide();
      startAnew();
    });
    auto* both = new QWidget;
    auto* row = new QHBoxLayout(both);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(check);
    row->addWidget(assumed);
    row->addStretch(1);
    addRow(grid, label, both);
  };
  add(new QLabel(tr("With")), tr("&lid while it heats"), "start/lid", kettle_.lid);
  add(nullptr, tr("&jacket"), "start/jacket", kettle_.jacket);
}

void KettlePage::addField(QGridLayout& grid, KettleFigure figure, const QString& label,
                          const char* name) {
  Field& field = fields_[figure];
  field.line = new PlanLineEdit;
  field.line->setObjectName(QLatin1String(name));
  field.label = new QLabel(label);
  field.label->setBuddy(field.line);
  field.line->setAccessibleName(QString(label).remove(QLatin1Char('&')));
  field.problem = new ProblemLabel;
  field.problem->setObjectName(QLatin1String(name) + QLatin1Char('?'));
  addRow(grid, field.label, field.line);
  addRow(grid, nullptr, field.problem);
  connect(field.line, &PlanLineEdit::committed, this,
          [this, figure](const QString& text) { take(figure, text); });
}

void KettlePage::addRow(QGridLayout& grid, QLabel* label, QWidget* widget) {
  const int row = grid.rowCount();
  if (label) grid.addWidget(label, row, 0, Qt::AlignRight | Qt::AlignVCenter);
  grid.addWidget(widget, row, 1);
}

void KettlePage::buildAnswer(QVBoxLayout& column) {
  column.setSpacing(fontMetrics().height() / 2);
  const auto line = [&](QLabel* label, const QString& name) {
    label->setObjectName(name);
    label->setWordWrap(true);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    label->setSizePolicy(policy);
    column.addWidget(label);
    return label;
  };
  headline_ = line(note({}, kHeadlineSize, true), QStringLiteral("start/headline"));
  circuitSays_ = line(note({}, kAnswerSize), QStringLiteral("start/circuit says"));
  day_ = line(note({}, kAnswerSize), QStringLiteral("start/day"));
  jacketSays_ = line(note({}, kAnswerSize), QStringLiteral("start/jacket says"));
  column.addWidget(hairline());
  assumed_ = line(note({}, kNoteSize), QStringLiteral("start/assumed"));
  cautions_ = line(note({}, kNoteSize), QStringLiteral("start/cautions"));
  column.addStretch(1);
}

void KettlePage::commit() {
  for (const auto& [figure, field] : fields_) field.line->commit();
}

bool KettlePage::isSettled() const {
  return shown_ == edition_ && std::none_of(fields_.begin(), fields_.end(), [](const auto& one) {
           return one.second.line->isBeingTyped();
         });
}

QString KettlePage::assumed(KettleFigure figure) const {
  const auto at = started_.assumed.find(figure);
  if (at == started_.assumed.end()) return {};
  QString text = QString::fromStdString(at->second);
  return text.replace(QLatin1Char('.'), QLocale().decimalPoint());
}

void KettlePage::take(KettleFigure figure, const QString& text) {
  const QString typed = text.trimmed();
  kettle_.typed[figure] =
      (figure == KettleFigure::Power ? withUnitOfPower(typed) : withUnitOf(assumed(figure), typed))
          .toStdString();
  startAnew();
}

void KettlePage::startAnew() {
  started_ = rigs::startWith(kettle_, told(rigs::firstKettleName()).toStdString(), units_);
  ++edition_;
  showFields();
  showProblems({});
  if (started_.plan) solver_.solve(started_.plan, edition_);
  headline_->setEnabled(false);  // grey: of what was there before
  setFine(started_.plan != nullptr);
}

void KettlePage::setFine(bool fine) {
  if (fine == isFine_) return;
  isFine_ = fine;
  Q_EMIT fineChanged(fine);
}

void KettlePage::showFields() {
  for (auto& [figure, field] : fields_) {
    const auto typed = kettle_.typed.find(figure);
    QString text = typed == kettle_.typed.end() ? QString() : QString::fromStdString(typed->second);
    const QString shown = tr("%1, assumed").arg(assumed(figure));
    field.line->setPlaceholderText(shown);
    field.line->setMinimumWidth(fontMetrics().horizontalAdvance(shown) + fontMetrics().height());
    field.line->display(text);
  }
  for (const KettleFigure figure : {KettleFigure::Diameter, KettleFigure::Height}) {
    fields_[figure].line->setVisible(kettle_.bySize);
    fields_[figure].label->setVisible(kettle_.bySize);
  }
  fields_[KettleFigure::Volume].line->setVisible(!kettle_.bySize);
  proportions_->setVisible(!kettle_.bySize);
  proportions_->setText(tr("Taken as high as it is wide, %1 × %2: common practice, no source.")
                            .arg(assumed(KettleFigure::Diameter), assumed(KettleFigure::Height)));
}

void KettlePage::showProblems(const rigs::Problems& ofTheDay) {
  std::map<KettleFigure, const rigs::Problem*> first;
  const rigs::Problem* other = nullptr;
  const auto see = [&](const rigs::Problem& problem) {
    const auto figure = rigs::kettleFigureAt(problem.where, kettle_.bySize);
    const rigs::Problem*& place = figure ? first[*figure] : other;
    if (!place) place = &problem;
  };
  for (const rigs::Problem& problem : started_.problems) see(problem);
  for (const rigs::Problem& problem : ofTheDay) see(problem);
  const auto show = [this](ProblemLabel& label, const rigs::Problem* problem) {
    label.display(problem ? told(problem->message, units_) : QString(),
                  problem && problem->severity == rigs::Severity::Warning);
  };
  for (auto& [figure, field] : fields_) show(*field.problem, first[figure]);
  show(*otherProblem_, other);
}

void KettlePage::showAnswer(const SolutionPtr& solution) {
  if (solution->edition < edition_ || solution->answers.rigs.empty()) return;
  if (shown_ == edition_) return;  // its other searches come later and change nothing here
  const rigs::Reader reader = readerOf(units_);
  const telling::FirstMinute minute = telling::firstMinute(*solution, reader);
  const auto joined = [&](const std::vector<rigs::Told>& all) {
    return told(rigs::sentences(all), reader);
  };
  // Until that was searched for nobody knows that it rolls for sure.
  if (solution->done.rest) {
    shown_ = edition_;
    headline_->setText(told(minute.headline, reader));
    headline_->setEnabled(true);
  }
  circuitSays_->setText(told(minute.circuit, reader));
  emphasize(*circuitSays_, minute.overloaded);
  day_->setText(joined(minute.day));
  jacketSays_->setText(told(minute.jacket, reader));
  assumed_->setText(told(minute.assumed, reader));
  cautions_->setText(joined(minute.cautions));
}

}  // namespace gui
