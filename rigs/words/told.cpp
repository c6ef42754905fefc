// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/words/told.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>

namespace rigs {
namespace {

std::string translated(const std::string& context, const std::string& english,
                       const Language& language) {
  return std::string(language.translation(context, english).value_or(english));
}

// All places at once: what is put in may hold a "%1" of its own.
std::string filled(std::string_view text, const std::vector<Argument>& arguments,
                   const Reader& reader) {
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool place = text[i] == '%' && i + 1 < text.size() && '1' <= text[i + 1] &&
                       static_cast<std::size_t>(text[i + 1] - '0') <= arguments.size();
    if (!place || text[i + 1] > '9') {
      result += text[i];
      continue;
    }
    result += tell(arguments[static_cast<std::size_t>(text[++i] - '1')], reader);
  }
  return result;
}

// Of a moment beyond any day, a slip of whoever typed it, as many as can be told.
long wholeMinutes(physics::Time time) {
  constexpr double kMost = 1e12;
  return std::lround(std::clamp(physics::inMinutes(time), -kMost, kMost));
}

std::string twoDigits(long n) {
  const std::string digits = std::to_string(n);
  return digits.size() < 2 ? '0' + digits : digits;
}

std::string moneyText(const Money& money) {
  const bool small = money.amount != 0.0 && std::abs(money.amount) < 0.0995;
  const FormatOptions digits = small ? FormatOptions{.significantDigits = 2, .decimals = {}}
                                     : FormatOptions{.significantDigits = 3, .decimals = 2};
  const std::string number = formatNumber(std::abs(money.amount), digits);
  const bool something = number.find_first_not_of("0.") != std::string::npos;
  const std::string sign = money.amount < 0.0 && something ? "-" : "";
  // A symbol stands in front, a code such as EUR behind.
  const char last = money.currency.empty() ? ' ' : money.currency.back();
  const bool code = ('a' <= last && last <= 'z') || ('A' <= last && last <= 'Z');
  return code ? sign + number + ' ' + money.currency : sign + money.currency + number;
}

struct Teller {
  const Reader& reader;

  std::string operator()(const Amount& a) const {
    if (a.alone)
      return withDecimalSign(formatNumber(detail::toColumn(a.kind, a.si, reader.units), a.options),
                             *reader.language);
    return withDecimalSign(a.like.empty() ? detail::print(a.kind, a.si, reader.units, a.options)
                                          : detail::printLike(a.kind, a.si, a.like, a.options),
                           *reader.language);
  }
  std::string operator()(const Number& n) const {
    return withDecimalSign(formatNumber(n.value, n.options), *reader.language);
  }
  std::string operator()(const Gap& gap) const {
    if (gap.share < 1e-9) return "<1e-9";
    char text[16];
    std::snprintf(text, sizeof text, "%.0e", gap.share);  // one digit: no decimal sign
    return text;
  }
  std::string operator()(const Count& n) const { return std::to_string(n.value); }
  std::string operator()(const Money& m) const {
    return withDecimalSign(moneyText(m), *reader.language);
  }
  std::string operator()(const HoursAndMinutes& t) const {
    const long minutes = wholeMinutes(t.time);
    return (minutes < 0 ? "-" : "") + std::to_string(std::abs(minutes) / 60) + ':' +
           twoDigits(std::abs(minutes) % 60);
  }
  std::string operator()(const Clock& c) const {
    if (c.counted)
      return tell(Told(TOLD("Words", "hour %1"), HoursAndMinutes{c.sinceMidnight}), reader);
    const long minutes = wholeMinutes(c.sinceMidnight);
    constexpr long kDay = 24L * 60L;
    const long days = (minutes < 0 ? minutes - (kDay - 1) : minutes) / kDay;
    const long left = minutes - days * kDay;
    const std::string clock = twoDigits(left / 60) + ':' + twoDigits(left % 60);
    if (days == 0) return clock;
    return (days > 0 ? "+" : "-") + std::to_string(std::abs(days)) + " d " + clock;
  }
  std::string operator()(const Quoted& q) const { return quotedText(q.text); }
  std::string operator()(const Verbatim& v) const { return v.text; }
  std::string operator()(const Bundled& b) const {
    return translated(b.context, b.english, *reader.language);
  }
  std::string operator()(const Told& t) const { return tell(t, reader); }

  std::string operator()(const List& list) const {
    std::vector<std::string> items;
    for (const Argument& item : list.items) {
      std::string text = tell(item, reader);
      if (!text.empty()) items.push_back(std::move(text));
    }
    std::string result;
    for (std::size_t i = 0; i < items.size(); ++i) {
      if (i > 0) result += between(list.joint, i + 1 == items.size());
      result += items[i];
    }
    return result;
  }
  std::string between(Joint joint, bool last) const {
    switch (joint) {
      case Joint::Space:
        return " ";
      case Joint::Comma:
        return ", ";
      case Joint::Semicolon:
        return "; ";
      case Joint::Plus:
        return " + ";
      case Joint::And:
        return last ? ' ' + tell(Told(TOLD("Words", "and")), reader) + ' ' : ", ";
      case Joint::Or:
        return last ? ' ' + tell(Told(TOLD("Words", "or")), reader) + ' ' : ", ";
    }
    return {};
  }
};

}  // namespace

bool operator==(const Argument& a, const Argument& b) { return a.value == b.value; }
bool operator==(const List& a, const List& b) { return a.joint == b.joint && a.items == b.items; }
bool operator==(const Told& a, const Told& b) {
  return a.context() == b.context() && a.english() == b.english() && a.arguments() == b.arguments();
}

Told Told::just(Argument argument) {
  Told told;
  told.english_ = "%1";
  told.arguments_.push_back(std::move(argument));
  return told;
}

Amount asChosen(physics::Time time) {
  const double minutes = physics::inMinutes(time);
  if (!std::isfinite(minutes)) return amount(time);
  return amount(std::abs(minutes) < 10.0 ? physics::seconds(std::round(physics::inSeconds(time)))
                                         : physics::minutes(std::round(minutes)));
}

Told roughly(physics::Time time) {
  const double minutes = std::round(physics::inMinutes(time));
  if (!std::isfinite(minutes)) return Told::just(amount(time));
  if (minutes == 0.0) return Told(TOLD("Answer", "less than %1"), amount(physics::minutes(1.0)));
  return Told::just(amount(physics::minutes(minutes)));
}

Amount inWholeWatts(physics::Power power) {
  if (!(std::abs(physics::inWatts(power)) < 9999.5)) return amount(power);
  return amountLike(power, "1 W", {.significantDigits = 4, .decimals = 0});
}

Told sentences(std::vector<Told> all) {
  List list;
  for (Told& one : all)
    if (!one.empty()) list.items.emplace_back(std::move(one));
  return list.items.empty() ? Told() : Told::just(std::move(list));
}

std::string tell(const Argument& argument, const Reader& reader) {
  return std::visit(Teller{reader}, argument.value);
}

std::string tell(const Told& told, const Reader& reader) {
  const std::string text = told.context().empty()
                               ? told.english()
                               : translated(told.context(), told.english(), *reader.language);
  return filled(text, told.arguments(), reader);
}

std::string inEnglish(const Told& told, UnitSystem units) {
  return tell(told, {.units = units, .language = &english()});
}

}  // namespace rigs
