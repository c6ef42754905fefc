// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/readings/readings_reader.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <utility>

#include "physics/wort.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace rigs::readings {
namespace {

using physics::inSeconds;
using physics::seconds;

constexpr std::size_t kLinesOfALayout = 20;
// Above boiling that a thermometer may be off.
constexpr physics::TemperatureDifference kMayBeOff = physics::kelvins(4.0);
constexpr physics::Temperature kColdest = physics::celsius(-5.0);
// A meter's last digit may flicker.
constexpr double kMeterFlickers = 1.5;

std::string_view nextLine(std::string_view& text) {
  const std::size_t end = std::min(text.find('\n'), text.size());
  const std::string_view line = withoutBlanks(text.substr(0, end));
  text.remove_prefix(std::min(end + 1, text.size()));
  return line;
}

bool saysSomething(std::string_view line) { return !line.empty() && line.front() != '#'; }

std::string_view withoutMark(std::string_view text) {
  constexpr std::string_view kMark = "\xEF\xBB\xBF";
  if (text.starts_with(kMark)) text.remove_prefix(kMark.size());
  return text;
}

constexpr double kMostPlato = 34.0;  // see physics::gravityFromPlato()

Told exampleOfAMoment() {
  return Told(TOLD("Readings", "write 21:05, 9:05 pm or 2026-03-01T21:05"));
}

class LinesReader {
 public:
  LinesReader(std::string_view text, const Setting& setting, const Corrections& corrections,
              Problems& problems)
      : text_(withoutMark(text)),
        setting_(setting),
        corrections_(corrections),
        problems_(problems) {}

  ReadLines read() {
    learnLayout();
    std::size_t line = 0;
    bool heads = read_.layout.hasHeads;
    for (std::string_view left = text_; !left.empty();) {
      const std::string_view one = nextLine(left);
      ++line;
      if (!saysSomething(one)) continue;
      if (std::exchange(heads, false)) continue;
      readRow(one, line);
    }
    tellTheRest();
    tellWhatIsLittle();
    read_.midnight = midnight_;
    read_.isUniversal = midnight_ && universal_;
    return std::move(read_);
  }

 private:
  void learnLayout() {
    std::vector<std::string_view> lines;
    for (std::string_view left = text_; !left.empty() && lines.size() < kLinesOfALayout;) {
      const std::string_view line = nextLine(left);
      if (saysSomething(line)) lines.push_back(line);
    }
    read_.layout = layoutOf(lines, corrections_, setting_.name, problems_);
  }

  void wrong(std::size_t line, Told message) {
    bad_ = true;
    if (++wrong_ > kMostNamed) {
      lastWrong_ = line;
      return;
    }
    problems_.push_back(
        {severity(), setting_.name + ':' + std::to_string(line), std::move(message)});
  }
  Severity severity() const {
    return corrections_.leaveOutBadRows ? Severity::Warning : Severity::Error;
  }

  void readRow(std::string_view line, std::size_t number) {
    ++read_.rows;
    cellsOf(line, read_.layout.separator, cells_);
    bad_ = false;
    found_.clear();
    const auto at = timeOf(number);
    for (std::size_t i = 0; at && !bad_ && i < cells_.size(); ++i) readCell(i, number, *at);
    if (at && !bad_ && found_.empty())
      wrong(number, Told(TOLD("Readings",
                              "nothing was read in %1; write what was read behind the "
                              "time, e.g. \"21:05 66.3 °C\""),
                         Quoted{std::string(line)}));
    if (at && !bad_) judge(number);
    if (at && !bad_) judgeBeginning(*at, number);
    if (bad_) {
      ++read_.leftOut;
      return;
    }
    last_ = at;
    for (Reading& one : found_) {
      if (const auto* energy = std::get_if<physics::Energy>(&one.value))
        lastEnergy_ = {physics::inJoules(*energy), one.step};
      if (const auto* gravity = std::get_if<ReadGravity>(&one.value))
        lastGravity_ = gravity->gravity;
      if (const auto* event = std::get_if<Event>(&one.value))
        boils_ = boils_ || *event == Event::Boil;
      hasBegun_ = hasBegun_ || isMoment(one);
      read_.readings.push_back(one);
    }
  }

  std::string_view cellOf(ColumnOf of) const {
    for (std::size_t i = 0; i < read_.layout.columns.size() && i < cells_.size(); ++i)
      if (read_.layout.columns[i].of == of) return cells_[i];
    return {};
  }

  // Since midnight of the plan's day; nothing where that is wrong, which is then told.
  std::optional<double> timeOf(std::size_t line) {
    const std::string_view cell = cellOf(ColumnOf::Time);
    if (cell.empty()) {
      wrong(line, advisedHere(Told(TOLD("Readings", "there is no time")), exampleOfAMoment()));
      return std::nullopt;
    }
    std::optional<double> at =
        read_.layout.count == Count::Clock ? clockTime(cell, line) : countedTime(cell, line);
    if (!at) return std::nullopt;
    if (last_ && *at < *last_) {
      const bool backAnHour = *last_ - *at <= 1.1 * kHour && dated_ && !universal_;
      wrong(
          line,
          backAnHour
              ? Told(TOLD("Readings",
                          "%1 comes after %2 in the line before; if the clock was put back, write "
                          "times with their offset, e.g. 2026-10-25T02:10+01:00"),
                     Quoted{std::string(cell)}, Clock{seconds(*last_)})
              : Told(TOLD("Readings",
                          "%1 comes after %2 in the line before; readings follow the clock"),
                     Quoted{std::string(cell)}, Clock{seconds(*last_)}));
      return std::nullopt;
    }
    return at;
  }

  static Told advisedHere(Told found, Told advice) {
    return Told(TOLD("Readings", "%1; %2"), std::move(found), std::move(advice));
  }

  std::optional<double> countedTime(std::string_view cell, std::size_t line) {
    const auto number = numberFrom(cell);
    if (!number || !number->rest.empty()) {
      wrong(line, Told(TOLD("Readings", "%1 is no time since the day began, e.g. 95"),
                       Quoted{std::string(cell)}));
      return std::nullopt;
    }
    const double unit = read_.layout.count == Count::Hours     ? kHour
                        : read_.layout.count == Count::Minutes ? 60.0
                                                               : 1.0;
    return inSeconds(setting_.startOfDay) + unit * number->value;
  }

  std::optional<double> clockTime(std::string_view cell, std::size_t line) {
    auto moment = momentFrom(cell);
    if (moment && !moment->day)
      if (const auto date = momentFrom(cellOf(ColumnOf::Date))) moment->day = date->day;
    if (!moment || !moment->secondsOfDay) {
      wrong(line, advisedHere(
                      Told(TOLD("Readings", "%1 is no time of a clock"), Quoted{std::string(cell)}),
                      exampleOfAMoment()));
      return std::nullopt;
    }
    universal_ = moment->universal;
    dated_ = moment->day.has_value();
    return moment->day ? datedTime(*moment) : undatedTime(*moment->secondsOfDay);
  }

  // The first one's day is the plan's, unless its clock had not come to the plan's beginning.
  double datedTime(const Moment& moment) {
    const double at = kDay * static_cast<double>(*moment.day) + *moment.secondsOfDay;
    if (!midnight_) {
      double ofDay = *moment.secondsOfDay;
      const double midnight = kDay * static_cast<double>(*moment.day);
      if (moment.universal) ofDay = std::fmod(ofDay + kDay, kDay);
      midnight_ = midnight - (isNextDay(ofDay) ? kDay : 0.0);
    }
    return at - *midnight_;
  }
  bool isNextDay(double secondsOfDay) const {
    return secondsOfDay < inSeconds(setting_.startOfDay) - 6.0 * kHour;
  }
  double undatedTime(double secondsOfDay) const {
    if (!last_) return secondsOfDay + (isNextDay(secondsOfDay) ? kDay : 0.0);
    const double days = std::floor(*last_ / kDay);
    const double at = days * kDay + secondsOfDay;
    // Half a day back is tomorrow; less than that is a line in the wrong place.
    return at < *last_ - 0.5 * kDay ? at + kDay : at;
  }

  void readCell(std::size_t i, std::size_t line, double at) {
    const Column none{};
    const Column& column = i < read_.layout.columns.size() ? read_.layout.columns[i] : none;
    const std::string_view cell = cells_[i];
    const bool known = i < read_.layout.columns.size();
    if (column.of == ColumnOf::Time || column.of == ColumnOf::Date || cell.empty()) return;
    if (const auto event = known || read_.layout.hasHeads ? std::nullopt : eventFrom(cell))
      return keep(line, at, *event, 0.0);
    if (column.of == ColumnOf::Event) return readEvent(cell, line, at);
    if (known && column.of == ColumnOf::Unused) return;
    if (!known && read_.layout.hasHeads) return;
    readNumber(cell, column, line, at);
  }

  // In a column of events of its own, what is no event is a note; a line of its own without heads
  // is a reading or nothing.
  void readEvent(std::string_view cell, std::size_t line, double at) {
    if (const auto event = eventFrom(cell)) return keep(line, at, *event, 0.0);
    const auto number = numberFrom(cell);
    if (number && unitFrom(number->rest)) return readNumber(cell, {}, line, at);
    if (read_.layout.hasHeads) return;
    wrong(line,
          Told(TOLD("Readings",
                    "%1 is neither a reading nor an event; events are \"plugged in\", \"grain "
                    "in\", \"unplugged\", \"heating\", \"boil\", \"lid on\" and \"lid off\""),
               Quoted{std::string(cell)}));
  }

  void readNumber(std::string_view cell, const Column& column, std::size_t line, double at) {
    const auto number = numberFrom(cell);
    if (!number) {
      if (const auto event = read_.layout.hasHeads ? std::nullopt : eventFrom(cell))
        return keep(line, at, *event, 0.0);
      return wrong(line, Told(TOLD("Readings",
                                   "%1 is no reading; a number is accepted, with or "
                                   "without its unit, e.g. 66.3 °C"),
                              Quoted{std::string(cell)}));
    }
    auto unit = number->rest.empty() ? column.unit : unitFrom(number->rest);
    if (!unit && number->rest.empty()) unit = usualUnit(column.of);
    if (!unit)
      return wrong(line, Told(TOLD("Readings",
                                   "%1: °C, °F, K, kWh, L, US gal, SG and °P are units "
                                   "of readings"),
                              Quoted{std::string(cell)}));
    keepNumber(*number, *unit, line, at);
  }

  static std::optional<UnitOf> usualUnit(ColumnOf of) {
    switch (of) {
      case ColumnOf::Energy:
        return unitFrom("kWh");
      case ColumnOf::Volume:
        return unitFrom("L");
      case ColumnOf::Gravity:
        return unitFrom("SG");
      default:
        return unitFrom("°C");
    }
  }

  void keepNumber(const CellNumber& number, const UnitOf& unit, std::size_t line, double at) {
    const double si = number.value * unit.factor + unit.shift;
    const double step = number.lastDigit * unit.factor;
    switch (unit.kind) {
      case Kind::Temperature:
        return keep(line, at, physics::kelvin(si), step);
      case Kind::Energy:
        return keep(line, at, physics::joules(si), step);
      case Kind::Volume:
        return keep(line, at, ReadVolume{physics::litres(1e3 * si), unit.hot}, step);
      case Kind::Gravity:
        break;
    }
    if (unit.plato && (number.value < 0.0 || number.value > kMostPlato))
      return wrong(line, Told(TOLD("Readings", "%1: wort is 0 to 34 °P"),
                              Quoted{formatNumber(number.value) + " °P"}));
    const double gravity = unit.plato ? physics::gravityFromPlato(number.value) : number.value;
    keep(line, at, ReadGravity{gravity}, unit.plato ? 0.004 * number.lastDigit : step);
  }

  void keep(std::size_t line, double at, Value value, double step) {
    found_.push_back({line, seconds(at), std::move(value), step});
  }

  // A lid's is none that the plan's day has.
  static bool isMoment(const Reading& one) {
    const auto* event = std::get_if<Event>(&one.value);
    return event && *event != Event::LidOn && *event != Event::LidOff;
  }
  // Who begins sooner than planned says so by an event: then all is counted from that.
  void judgeBeginning(double at, std::size_t line) {
    if (at >= inSeconds(setting_.startOfDay) - 30.0 || hasBegun_) return;
    if (std::any_of(found_.begin(), found_.end(), isMoment)) return;
    wrong(line, Told(TOLD("Readings", "%1 is before the plan's day begins, at %2"),
                     Quoted{std::string(cellOf(ColumnOf::Time))}, Clock{setting_.startOfDay}));
  }

  // What no kettle does.
  void judge(std::size_t line) {
    for (const Reading& one : found_) {
      if (const auto* t = std::get_if<physics::Temperature>(&one.value)) judge(*t, line);
      if (const auto* energy = std::get_if<physics::Energy>(&one.value)) judge(*energy, line);
      if (const auto* gravity = std::get_if<ReadGravity>(&one.value)) judge(*gravity, line);
    }
  }
  void judge(physics::Temperature t, std::size_t line) {
    if (t > setting_.boiling + kMayBeOff)
      wrong(line, Told(TOLD("Readings", "%1 is hotter than wort can be there, which boils at %2"),
                       amount(t), amount(setting_.boiling)));
    else if (t < kColdest)
      wrong(line, Told(TOLD("Readings", "%1 is colder than wort can be"), amount(t)));
  }
  void judge(physics::Energy energy, std::size_t line) {
    const double here = physics::inJoules(energy);
    if (lastEnergy_ && here < lastEnergy_->first - kMeterFlickers * lastEnergy_->second)
      wrong(line, Told(TOLD("Readings", "the meter runs backwards, from %1 to %2"),
                       amount(physics::joules(lastEnergy_->first)), amount(energy)));
  }
  void judge(const ReadGravity& gravity, std::size_t line) {
    const Number read{gravity.gravity, {.significantDigits = 4, .decimals = 3}};
    if (gravity.gravity < 0.98 || gravity.gravity > 1.2)
      wrong(line,
            Told(TOLD("Readings", "%1 is no gravity of wort; 0.980 to 1.200 is accepted"), read));
    else if (boils_ && lastGravity_ && gravity.gravity < *lastGravity_ - 0.0015)
      wrong(line, Told(TOLD("Readings", "the gravity falls in the boil, from %1 to %2"),
                       Number{*lastGravity_, {.significantDigits = 4, .decimals = 3}}, read));
  }

  void tellTheRest() {
    if (wrong_ <= kMostNamed) return;
    problems_.push_back(
        {severity(), setting_.name + ':' + std::to_string(lastWrong_),
         Told(TOLD("Readings", "%1 more lines are wrong, of which this is the last"),
              rigs::Count{static_cast<long long>(wrong_ - kMostNamed)})});
  }

  void tellWhatIsLittle() {
    const auto note = [&](Severity severity, Told message) {
      problems_.push_back({severity, setting_.name, std::move(message)});
    };
    std::vector<physics::Temperature> read;
    for (const Reading& one : read_.readings)
      if (const auto* t = std::get_if<physics::Temperature>(&one.value)) read.push_back(*t);
    if (read_.readings.empty()) {
      if (wrong_ == 0 || corrections_.leaveOutBadRows)
        note(Severity::Error, Told(TOLD("Readings",
                                        "no reading was found; lines such as \"21:05 66.3 °C\" are "
                                        "accepted")));
      return;
    }
    if (read.size() == 1)
      note(Severity::Warning,
           Told(TOLD("Readings",
                     "one temperature alone tells little: the thermometer may be off "
                     "by as much")));
    const bool alike =
        std::adjacent_find(read.begin(), read.end(), [](const auto& a, const auto& b) {
          return physics::inKelvin(a) < physics::inKelvin(b) ||
                 physics::inKelvin(b) < physics::inKelvin(a);
        }) == read.end();
    if (read.size() > 2 && alike)
      note(Severity::Warning,
           Told(TOLD("Readings", "all temperatures are the same; does the thermometer hang?")));
  }

  std::string_view text_;
  const Setting& setting_;
  const Corrections& corrections_;
  Problems& problems_;
  ReadLines read_;
  std::vector<std::string_view> cells_;
  std::vector<Reading> found_;
  std::optional<double> last_;      // since midnight of the plan's day
  std::optional<double> midnight_;  // of the plan's day, since 1970
  std::optional<std::pair<double, double>> lastEnergy_;
  std::optional<double> lastGravity_;
  bool hasBegun_ = false, boils_ = false, dated_ = false, universal_ = false, bad_ = false;
  std::size_t wrong_ = 0, lastWrong_ = 0;
};

}  // namespace

ReadLines readLines(std::string_view text, const Setting& setting, const Corrections& corrections,
                    Problems& problems) {
  return LinesReader(text, setting, corrections, problems).read();
}

}  // namespace rigs::readings
