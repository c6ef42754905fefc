// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/readings/typed_line.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <utility>
#include <vector>

namespace rigs::readings {
namespace {

using physics::inSeconds;
using physics::seconds;

// A reader takes half a day back for the next one: longer gaps need a date.
constexpr double kLongGap = 11.5 * kHour;

std::string twoFigures(long long number) {
  std::array<char, 8> text{};
  std::snprintf(text.data(), text.size(), "%02lld", number % 100);
  return text.data();
}

// "21:05", "21:05:12".
std::string clockText(double secondsOfDay) {
  const auto all = static_cast<long long>(std::floor(secondsOfDay));
  std::string text = twoFigures(all / 3600) + ':' + twoFigures(all / 60 % 60);
  if (all % 60 != 0) text += ':' + twoFigures(all % 60);
  return text;
}

// "2026-03-01", of days from 1970-01-01; Hinnant's algorithm.
std::string dateText(std::int64_t days) {
  const std::int64_t z = days + 719468;
  const std::int64_t era = z / 146097;
  const std::int64_t ofEra = z - era * 146097;
  const std::int64_t year = (ofEra - ofEra / 1460 + ofEra / 36524 - ofEra / 146096) / 365;
  const std::int64_t ofYear = ofEra - (365 * year + year / 4 - year / 100);
  const std::int64_t month = (5 * ofYear + 2) / 153;
  const std::int64_t day = ofYear - (153 * month + 2) / 5 + 1;
  const std::int64_t shown = month < 10 ? month + 3 : month - 9;
  return std::to_string(year + era * 400 + (shown <= 2 ? 1 : 0)) + '-' + twoFigures(shown) + '-' +
         twoFigures(day);
}

bool hasColumn(const Layout& layout, ColumnOf of) {
  return std::any_of(layout.columns.begin(), layout.columns.end(),
                     [&](const Column& column) { return column.of == of; });
}

// Of the clock, as that file writes its times.
class Stamp {
 public:
  Stamp(const WallClock& clock, const ReadLines& read, physics::Time startOfDay)
      : clock_(clock), read_(read), at_(momentOf(clock, read, startOfDay) - startOfDay) {
    const bool gap =
        !read.readings.empty() && inSeconds(at_ + startOfDay - read.readings.back().at) > kLongGap;
    isDated_ = clock.day && (read.midnight || gap);
  }

  std::string time() const {
    if (read_.layout.count != Count::Clock) return counted();
    if (!isDated_ || hasColumn(read_.layout, ColumnOf::Date)) return clockText(clock_.secondsOfDay);
    if (read_.isUniversal && clock_.sinceEpoch) {
      const double day = std::floor(*clock_.sinceEpoch / kDay);
      return dateText(static_cast<std::int64_t>(day)) + 'T' +
             clockText(*clock_.sinceEpoch - day * kDay) + 'Z';
    }
    return date() + 'T' + clockText(clock_.secondsOfDay);
  }
  std::string date() const { return clock_.day ? dateText(*clock_.day) : std::string(); }

 private:
  std::string counted() const {
    const double unit = read_.layout.count == Count::Hours     ? kHour
                        : read_.layout.count == Count::Minutes ? 60.0
                                                               : 1.0;
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.2f", inSeconds(at_) / unit);
    return text.data();
  }

  const WallClock& clock_;
  const ReadLines& read_;
  physics::Time at_;
  bool isDated_ = false;
};

ColumnOf columnOf(Kind kind) {
  switch (kind) {
    case Kind::Energy:
      return ColumnOf::Energy;
    case Kind::Volume:
      return ColumnOf::Volume;
    case Kind::Gravity:
      return ColumnOf::Gravity;
    case Kind::Temperature:
      break;
  }
  return ColumnOf::Temperature;
}

ColumnOf columnOf(std::string_view value) {
  if (eventFrom(value)) return ColumnOf::Event;
  const auto number = numberFrom(value);
  const auto unit = number ? unitFrom(number->rest) : std::nullopt;
  return unit ? columnOf(unit->kind) : ColumnOf::Temperature;
}

std::string inColumns(const std::vector<std::string_view>& values, const std::string& time,
                      const Stamp& stamp, const Layout& layout) {
  std::vector<std::string> cells(layout.columns.size());
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (layout.columns[i].of == ColumnOf::Time) cells[i] = time;
    if (layout.columns[i].of == ColumnOf::Date) cells[i] = stamp.date();
  }
  for (const std::string_view value : values) {
    std::string cell(value);
    if (layout.separator == ',') std::replace(cell.begin(), cell.end(), ',', '.');
    const auto column =
        std::find_if(layout.columns.begin(), layout.columns.end(),
                     [of = columnOf(value)](const Column& one) { return one.of == of; });
    if (column == layout.columns.end())
      cells.push_back(std::move(cell));
    else
      cells[static_cast<std::size_t>(column - layout.columns.begin())] = std::move(cell);
  }
  std::string line;
  for (std::size_t i = 0; i < cells.size(); ++i) {
    if (i > 0) line += layout.separator;
    line += cells[i];
  }
  return line;
}

}  // namespace

physics::Time momentOf(const WallClock& clock, const ReadLines& read, physics::Time startOfDay) {
  if (read.midnight && clock.day) {
    const double now = read.isUniversal && clock.sinceEpoch
                           ? *clock.sinceEpoch
                           : kDay * static_cast<double>(*clock.day) + clock.secondsOfDay;
    return seconds(now - *read.midnight);
  }
  const double from =
      read.readings.empty() ? inSeconds(startOfDay) : inSeconds(read.readings.back().at);
  const double earliest = from - 6.0 * kHour;
  return seconds(clock.secondsOfDay + kDay * std::ceil((earliest - clock.secondsOfDay) / kDay));
}

std::string lineOf(std::string_view typed, const WallClock& clock, const ReadLines& read,
                   physics::Time startOfDay) {
  typed = withoutBlanks(typed);
  if (typed.starts_with('#')) return std::string(typed);
  const Stamp stamp(clock, read, startOfDay);
  std::vector<std::string_view> values;
  cellsOf(typed, ' ', values);
  const auto moment = values.empty() ? std::nullopt : momentFrom(values.front());
  const bool saysTime = moment && moment->secondsOfDay;
  if (read.layout.separator == ' ' || read.layout.columns.empty())
    return saysTime ? std::string(typed) : stamp.time() + ' ' + std::string(typed);
  const std::string time = saysTime ? std::string(values.front()) : stamp.time();
  if (saysTime) values.erase(values.begin());
  return inColumns(values, time, stamp, read.layout);
}

}  // namespace rigs::readings
