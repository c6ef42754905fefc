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
#include "rigs/plans/plan.hpp"

namespace gui {

using rigs::KettleFigure;

namespace {

constexpr double kHeadlineSize = 1.4;  // times the page's own font
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
    headline_->setEnabled(!rigs::hasErrors(problems));
    setFine(!rigs::hasErrors(problems));
  });
  connect(&solver_, &Solver::failed, this, [this](const rigs::Told& why, int edition) {
    if (edition == edition_) headline_->setText(tr("There is no answer: %1.").arg(told(why)));
  });
  connect(&solver_, &Solver::solved, this, &KettlePage::showAnswer);
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
  QWidget* power = field(KettleFigure::Power, tr("&Element"), QStringLiteral("start/power"));
  QWidget* voltage = field(KettleFigure::Voltage, tr("mad&e for"), QStringLiteral("start/voltage"));
  addRow(*grid, fields_[KettleFigure::Power].label,
         {power, fields_[KettleFigure::Voltage].label, voltage},
         {KettleFigure::Power, KettleFigure::Voltage});
  addCircuit(*grid);
  QWidget* altitude =
      field(KettleFigure::Altitude, tr("Al&titude"), QStringLiteral("start/altitude"));
  QWidget* room = field(KettleFigure::Room, tr("&room"), QStringLiteral("start/room"));
  addRow(*grid, fields_[KettleFigure::Altitude].label,
         {altitude, fields_[KettleFigure::Room].label, room},
         {KettleFigure::Altitude, KettleFigure::Room});
  QWidget* batch = field(KettleFigure::Batch, tr("&Finished beer"), QStringLiteral("start/batch"));
  addRow(*grid, fields_[KettleFigure::Batch].label, {batch}, {KettleFigure::Batch});
  addLidAndJacket(*grid);
  column.addLayout(grid);
  otherProblem_ = new ProblemLabel;
  column.addWidget(otherProblem_);
  column.addWidget(
      note(tr("Grey is assumed. A number alone takes the unit that stands there."), kNoteSize));
  column.addStretch(1);
}

void KettlePage::addKettle(QGridLayout& grid) {
  statedBy_ = new PlanComboBox;
  statedBy_->setObjectName(QStringLiteral("start/stated by"));
  statedBy_->setAccessibleName(tr("How the kettle's size is stated"));
  statedBy_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  statedBy_->addItem(tr("by volume"), 0);
  statedBy_->addItem(tr("by diameter and height"), 1);
  QWidget* volume = field(KettleFigure::Volume, tr("&Kettle"), QStringLiteral("start/volume"));
  QWidget* diameter =
      field(KettleFigure::Diameter, tr("&diameter"), QStringLiteral("start/diameter"));
  QWidget* height = field(KettleFigure::Height, tr("&height"), QStringLiteral("start/height"));
  addRow(grid, fields_[KettleFigure::Volume].label, {volume, statedBy_}, {KettleFigure::Volume});
  addRow(grid, nullptr,
         {fields_[KettleFigure::Diameter].label, diameter, fields_[KettleFigure::Height].label,
          height},
         {KettleFigure::Diameter, KettleFigure::Height});
  proportions_ = note({}, kNoteSize);
  proportions_->setObjectName(QStringLiteral("start/proportions"));
  grid.addWidget(proportions_, grid.rowCount(), 1);
  connect(statedBy_, &QComboBox::activated, this, [this](int index) {
    kettle_.bySize = index == 1;
    startAnew();
    fields_[kettle_.bySize ? KettleFigure::Diameter : KettleFigure::Volume].line->setFocus();
  });
}

void KettlePage::addCircuit(QGridLayout& grid) {
  const auto choice = [this, &grid](const QString& text, const QString& name) {
    auto* box = new PlanComboBox;
    box->setObjectName(name);
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* label = new QLabel(text);
    label->setBuddy(box);
    box->setAccessibleName(QString(text).remove(QLatin1Char('&')));
    addRow(grid, label, {box}, {});
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
  const auto box = [this](const QString& text, const QString& name, bool& on) {
    auto* check = new QCheckBox(text);
    check->setObjectName(name);
    check->setChecked(on);
    connect(check, &QCheckBox::toggled, this, [this, &on](bool checked) {
      on = checked;
      startAnew();
    });
    return check;
  };
  lid_ = box(tr("&lid while it heats"), QStringLiteral("start/lid"), kettle_.lid);
  jacket_ = box(tr("&jacket"), QStringLiteral("start/jacket"), kettle_.jacket);
  addRow(grid, new QLabel(tr("With")), {lid_, jacket_}, {});
}

QWidget* KettlePage::field(KettleFigure figure, const QString& label, const QString& name) {
  Field& field = fields_[figure];
  field.line = new PlanLineEdit;
  field.line->setObjectName(name);
  field.line->setMinimumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000.00 mmm, ")) +
                              fontMetrics().horizontalAdvance(tr("assumed")));
  field.label = new QLabel(label);
  field.label->setBuddy(field.line);
  field.line->setAccessibleName(QString(label).remove(QLatin1Char('&')));
  field.problem = new ProblemLabel;
  field.problem->setObjectName(name + QLatin1Char('?'));
  connect(field.line, &PlanLineEdit::committed, this,
          [this, figure](const QString& text) { take(figure, text); });
  return field.line;
}

int KettlePage::addRow(QGridLayout& grid, QLabel* label, const std::vector<QWidget*>& widgets,
                       const std::vector<KettleFigure>& figures) {
  const int row = grid.rowCount();
  if (label) grid.addWidget(label, row, 0, Qt::AlignRight | Qt::AlignVCenter);
  auto* line = new QHBoxLayout;
  for (QWidget* widget : widgets) line->addWidget(widget);
  line->addStretch(1);
  grid.addLayout(line, row, 1);
  for (std::size_t i = 0; i < figures.size(); ++i)
    grid.addWidget(fields_[figures[i]].problem, row + 1 + static_cast<int>(i), 1);
  return row;
}

void KettlePage::buildAnswer(QVBoxLayout& column) {
  const auto line = [&](QLabel* label, const QString& name) {
    label->setObjectName(name);
    label->setWordWrap(true);
    column.addWidget(label);
    return label;
  };
  headline_ = line(note({}, kHeadlineSize, true), QStringLiteral("start/headline"));
  circuitSays_ = line(new QLabel, QStringLiteral("start/circuit says"));
  day_ = line(new QLabel, QStringLiteral("start/day"));
  jacketSays_ = line(new QLabel, QStringLiteral("start/jacket says"));
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
  started_ = rigs::startWith(kettle_, tr("My kettle").toStdString(), units_);
  ++edition_;
  showFields();
  showProblems({});
  rigs::Problems again;
  auto plan = rigs::readPlan(started_.document, ".", again);
  const bool fine = plan && !rigs::hasErrors(started_.problems);
  if (fine) solver_.solve(std::make_shared<const rigs::Plan>(std::move(*plan)), edition_);
  headline_->setEnabled(fine);  // grey: of what was there before
  setFine(fine);
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
    field.line->setPlaceholderText(tr("%1, assumed").arg(assumed(figure)));
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
  if (shown_ == edition_) return;  // its searches come later and change nothing here
  shown_ = edition_;
  const rigs::Reader reader = readerOf(units_);
  const telling::FirstMinute minute = telling::firstMinute(*solution, reader);
  const auto joined = [&](const std::vector<rigs::Told>& all) {
    return told(rigs::sentences(all), reader);
  };
  headline_->setText(told(minute.headline, reader));
  circuitSays_->setText(told(minute.circuit, reader));
  emphasize(*circuitSays_, minute.overloaded);
  day_->setText(joined(minute.day));
  jacketSays_->setText(told(minute.jacket, reader));
  assumed_->setText(told(minute.assumed, reader));
  cautions_->setText(joined(minute.cautions));
}

}  // namespace gui
