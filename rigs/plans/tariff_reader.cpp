// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/tariff_reader.hpp"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>
#include <string>
#include <string_view>

#include "rigs/documents/embedded.hpp"
#include "rigs/documents/json_parse.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/keys.hpp"
#include "rigs/plans/plan_names.hpp"
#include "rigs/quantities/digits.hpp"

namespace rigs {
namespace {

using namespace physics;

std::string_view trimmed(std::string_view text) {
  while (text.starts_with(' ')) text.remove_prefix(1);
  while (text.ends_with(' ')) text.remove_suffix(1);
  return text;
}

// Two digits as a number, -1 for anything else.
int twoDigits(std::string_view text) {
  if (text.size() != 2 || !isDigit(text[0]) || !isDigit(text[1])) return -1;
  return 10 * (text[0] - '0') + (text[1] - '0');
}

// Hours and minutes; nullopt for anything else. "24:00" is the end of the day.
std::optional<Time> clockFrom(std::string_view text) {
  const std::size_t colon = text.find(':');
  if (colon == std::string_view::npos) return std::nullopt;
  std::string hour(text.substr(0, colon));
  if (hour.size() == 1) hour.insert(hour.begin(), '0');
  const int h = twoDigits(hour);
  const int m = twoDigits(text.substr(colon + 1));
  if (h < 0 || h > 24 || m < 0 || m > 59 || (h == 24 && m > 0)) return std::nullopt;
  return hours(h) + minutes(m);
}

struct Price {
  double perKilowattHour = 0.0;
  std::string currency;
};

// Takes a minus away that stands before or behind a currency: "-$0.15", "EUR -0.15".
bool takeMinus(std::string_view& before) {
  constexpr std::string_view kMinuses[] = {"-", "−"};
  for (const std::string_view minus : kMinuses) {
    if (before.starts_with(minus)) {
      before = trimmed(before.substr(minus.size()));
      return true;
    }
    if (before.ends_with(minus)) {
      before = trimmed(before.substr(0, before.size() - minus.size()));
      return true;
    }
  }
  return false;
}

// "0.28 EUR/kWh", "0,28 €/kWh", "$0.15/kWh", "-0.02 EUR/kWh".
std::optional<Price> priceFrom(std::string_view text) {
  text = trimmed(text);
  const std::size_t slash = text.find('/');
  if (slash == std::string_view::npos || trimmed(text.substr(slash + 1)) != "kWh")
    return std::nullopt;
  const std::string_view money = trimmed(text.substr(0, slash));
  const std::size_t first = money.find_first_of("0123456789");
  if (first == std::string_view::npos) return std::nullopt;
  const std::size_t last = money.find_last_of("0123456789");
  std::string number(money.substr(first, last + 1 - first));
  if (const std::size_t comma = number.find(','); comma != std::string::npos) number[comma] = '.';
  std::string_view before = trimmed(money.substr(0, first));
  const bool negative = takeMinus(before);
  const std::string_view after = trimmed(money.substr(last + 1));
  if (before.empty() == after.empty()) return std::nullopt;
  const std::string_view currency = before.empty() ? after : before;
  constexpr std::size_t kLongestCurrency = 8;
  if (currency.size() > kLongestCurrency) return std::nullopt;
  for (const char c : currency) {
    const bool letter = ('A' <= c && c <= 'Z') || ('a' <= c && c <= 'z');
    const bool symbol = c == '$' || static_cast<unsigned char>(c) >= 0x80;
    if (!letter && !symbol) return std::nullopt;
  }
  Price price;
  const char* const end = number.data() + number.size();
  const auto read =
      std::from_chars(number.data(), end, price.perKilowattHour, std::chars_format::fixed);
  if (read.ec != std::errc() || read.ptr != end) return std::nullopt;
  if (negative && price.perKilowattHour > 0.0) price.perKilowattHour = -price.perKilowattHour;
  price.currency = currency;
  return price;
}

// "2026-01" or "2026-01-31".
bool isDate(std::string_view text) {
  if (text.size() != 7 && text.size() != 10) return false;
  if (twoDigits(text.substr(0, 2)) < 0 || twoDigits(text.substr(2, 2)) < 0) return false;
  const int month = twoDigits(text.substr(5, 2));
  if (text[4] != '-' || month < 1 || month > 12) return false;
  if (text.size() == 7) return true;
  const int day = twoDigits(text.substr(8, 2));
  return text[7] == '-' && 1 <= day && day <= 31;
}

// As a document writes it; "24:00" is the end of the day.
Verbatim clockText(Time t) {
  const int minute = static_cast<int>(std::lround(inMinutes(t)));
  const auto two = [](int n) { return std::string(n < 10 ? "0" : "") + std::to_string(n); };
  return {two(minute / 60) + ':' + two(minute % 60)};
}

Told noPrice(Time from, Time to) {
  return advised(
      Told(TOLD("Problem", "no price is stated from %1 to %2"), clockText(from), clockText(to)),
      Told(TOLD("Problem", "cover the whole day")));
}

// On some exchanges an hour's price falls below nothing; a household's only price does not.
enum class Sign { Positive, Any };

// Every price of one tariff, in one currency.
class Prices {
 public:
  std::optional<double> read(const JsonCursor& at, Sign sign) {
    const auto text = at.text("price", kLongestName);
    if (!text) return std::nullopt;
    const auto price = priceFrom(*text);
    if (!price) {
      at.error("price",
               withExample(advised(Told(TOLD("Problem", "%1 is no price of energy"), Quoted{*text}),
                                   Told(TOLD("Problem", "write number, currency and \"/kWh\""))),
                           inQuotes("0.28 EUR/kWh")));
      return std::nullopt;
    }
    if (price->perKilowattHour < 0.0 && sign == Sign::Positive) {
      at.error("price",
               withExample(advised(Told(TOLD("Problem", "%1 is negative"), Quoted{*text}),
                                   Told(TOLD("Problem", "only prices by \"times\" may be"))),
                           inQuotes("0.28 EUR/kWh")));
      return std::nullopt;
    }
    if (currency_.empty()) currency_ = price->currency;
    if (price->currency != currency_) {
      at.error("price", advised(Told(TOLD("Problem", "this price is in %1, those before in %2"),
                                     Quoted{price->currency}, Quoted{currency_}),
                                Told(TOLD("Problem", "keep to one"))));
      return std::nullopt;
    }
    return price->perKilowattHour;
  }
  const std::string& currency() const { return currency_; }

 private:
  std::string currency_;
};

// Windows of one kind of day, in order and cut at midnight. Gaps and overlaps are errors.
std::vector<PriceWindow> readDay(const JsonCursor& times, std::string_view day, Prices& prices) {
  std::vector<PriceWindow> windows;
  const auto entries = times.objects(day, {1, 48});
  if (!entries) return windows;
  bool good = true;   // all of it
  bool timed = true;  // the hours at least, which are held against the day whatever the prices
  for (const JsonCursor& at : *entries) {
    at.warnAboutKeysExcept(keysOf("/tariff/times/weekday/*"));
    const auto from = readClock(at, "from", {});
    const auto to = readClock(at, "to", {});
    const auto price = prices.read(at, Sign::Any);
    good = good && price;
    if (!from || !to) {
      timed = false;
      continue;
    }
    if (*from == *to) {
      at.error("to",
               advised(Told(TOLD("Problem", "a window from %1 to %2 has no length"),
                            clockText(*from), clockText(*to)),
                       Told(TOLD("Problem", "for a whole day write from \"00:00\" to \"24:00\""))));
      timed = false;
    } else if (*from < *to) {
      windows.push_back({*from, *to, price.value_or(0.0)});
    } else {
      windows.push_back({*from, hours(24.0), price.value_or(0.0)});
      if (*to > seconds(0.0)) windows.push_back({seconds(0.0), *to, price.value_or(0.0)});
    }
  }
  if (!timed) return {};
  std::stable_sort(windows.begin(), windows.end(),
                   [](const PriceWindow& a, const PriceWindow& b) { return a.from < b.from; });
  Time covered = seconds(0.0);
  for (const PriceWindow& window : windows) {
    if (window.from > covered) times.error(day, noPrice(covered, window.from));
    if (window.from < covered)
      times.error(day,
                  advised(Told(TOLD("Problem", "two prices are stated from %1 to %2"),
                               clockText(window.from), clockText(std::min(covered, window.to))),
                          Told(TOLD("Problem", "keep one"))));
    covered = std::max(covered, window.to);
  }
  if (covered < hours(24.0)) times.error(day, noPrice(covered, hours(24.0)));
  if (!good) return {};
  return windows;
}

void readTimes(const JsonCursor& at, Tariff& tariff, Prices& prices) {
  const auto times = at.object("times");
  if (!times) return;
  times->warnAboutKeysExcept(keysOf("/tariff/times"));
  tariff.weekday = readDay(*times, "weekday", prices);
  tariff.weekend = times->has("weekend") ? readDay(*times, "weekend", prices) : tariff.weekday;
}

constexpr Range<Energy> kMonths{kilowattHours(0.0), kilowattHours(1e5)};

void readTiers(const JsonCursor& at, Tariff& tariff, Prices& prices) {
  const auto entries = at.objects("tiers", {2, 20});
  if (!entries) return;
  Energy before = joules(0.0);
  for (std::size_t i = 0; i < entries->size(); ++i) {
    const JsonCursor& tier = (*entries)[i];
    tier.warnAboutKeysExcept(keysOf("/tariff/tiers/*"));
    const bool last = i + 1 == entries->size();
    if (last && tier.has("up_to"))
      tier.error("up_to", advised(Told(TOLD("Problem", "nothing is stated for use beyond this")),
                                  Told(TOLD("Problem", "leave \"up_to\" of the last tier out"))));
    const auto upTo =
        last ? std::nullopt : std::optional<Energy>(tier.quantity<Energy>("up_to", kMonths));
    const auto price = prices.read(tier, Sign::Positive);
    if (upTo && *upTo <= before)
      tier.error("up_to", Told(TOLD("Problem",
                                    "this tier ends at %1, where the one before has ended already"),
                               amount(*upTo)));
    if (upTo) before = *upTo;
    if (price) tariff.tiers.push_back({upTo, *price});
  }
}

const Tariff* tariffFrom(const JsonCursor& at) {
  const auto name = at.text("from", kLongestName);
  if (!name) return nullptr;
  std::vector<std::string_view> known;
  for (const BundledTariff& bundled : bundledTariffs()) {
    if (bundled.tariff.name == *name) return &bundled.tariff;
    known.push_back(bundled.tariff.name);
  }
  at.error("from",
           perhapsMeant(advised(Told(TOLD("Problem", "%1 is no bundled tariff"), Quoted{*name}),
                                writeOneOf(known)),
                        nearestWord(*name, known)));
  return nullptr;
}

// The prices, one way or another; false where there are none to go by.
bool readPrices(const JsonCursor& at, Tariff& tariff) {
  const int ways = (at.has("times") ? 1 : 0) + (at.has("tiers") ? 1 : 0) +
                   (at.has("price") ? 1 : 0) + (at.has("from") ? 1 : 0);
  if (ways > 1) {
    at.error(at.has("times")   ? "times"
             : at.has("tiers") ? "tiers"
                               : "price",
             advised(Told(TOLD("Problem",
                               "a tariff has one \"price\", or prices by \"times\", or by "
                               "\"tiers\", or those it is \"from\"")),
                     Told(TOLD("Problem", "keep one"))));
    return false;
  }
  if (at.has("from")) {
    const Tariff* from = tariffFrom(at);
    if (from) tariff = *from;
    return from != nullptr;
  }
  Prices prices;
  bool good = true;
  if (at.has("times")) {
    readTimes(at, tariff, prices);
    good = !tariff.weekday.empty() && !tariff.weekend.empty();
  } else if (at.has("tiers")) {
    readTiers(at, tariff, prices);
    good = !tariff.tiers.empty();
  } else {
    const auto price = prices.read(at, Sign::Positive);
    good = price.has_value();
    tariff.perKilowattHour = price.value_or(0.0);
  }
  tariff.currency = prices.currency();
  return good;
}

}  // namespace

const std::vector<BundledTariff>& bundledTariffs() {
  static const std::vector<BundledTariff> all = [] {
    std::vector<BundledTariff> read;
    Problems problems;
    for (const EmbeddedDocument& embedded : embeddedDocuments()) {
      if (!embedded.name.starts_with("tariffs/")) continue;
      const auto document = parseJson(embedded.text, problems);
      if (!document) continue;
      const JsonCursor at(*document, problems);
      auto tariff = readTariff(at);
      if (tariff)
        read.push_back({.region = at.optionalText("region", "", kLongestName).value_or(""),
                        .about = at.optionalText("about", "", kLongestNote).value_or(""),
                        .tariff = std::move(*tariff)});
    }
    assert(problems.empty());  // ours and tested: a problem in it is a mistake of ours
    return read;
  }();
  return all;
}

std::optional<Time> readClock(const JsonCursor& at, std::string_view key,
                              std::optional<std::string_view> absent) {
  const auto text =
      absent ? at.optionalText(key, *absent, kLongestName) : at.text(key, kLongestName);
  if (!text) return std::nullopt;
  const auto clock = clockFrom(*text);
  const bool midnightAfter = clock && *clock >= hours(24.0);
  // Days begin before midnight; windows of prices may end at it.
  if (clock && (!midnightAfter || key == "to")) return clock;
  at.error(key, withExample(
                    advised(Told(TOLD("Problem", "%1 is no time of day"), Quoted{*text}),
                            Told(TOLD("Problem", "write hours and minutes from 00:00 to 23:59"))),
                    inQuotes("08:00")));
  return std::nullopt;
}

std::optional<Tariff> readTariff(const JsonCursor& at) {
  at.warnAboutKeysExcept(keysOf("/tariff"));
  Tariff tariff;
  bool good = readPrices(at, tariff);
  const auto day = at.optionalOneOf<DayOfWeek>(
      "day", DayOfWeek::Weekday,
      {{"weekday", DayOfWeek::Weekday}, {"weekend", DayOfWeek::Weekend}});
  const auto used = at.optionalQuantity<Energy>("used_this_month", kilowattHours(0.0), kMonths);
  const auto rebate = at.optionalQuantity<double>("rebate", tariff.rebate, {-0.5, 0.9});
  const auto dated = at.optionalText("dated", tariff.dated, kLongestName);
  const auto name = at.optionalText("name", tariff.name, kLongestName);
  const auto origin = at.optionalText("source", tariff.source, kLongestNote);
  const auto status = at.optionalText("status", tariff.status, kLongestName);
  const auto co2 = at.has("co2_per_kWh")
                       ? at.quantityIfGiven<Mass>("co2_per_kWh", {kilograms(0.0), kilograms(5.0)})
                       : tariff.co2PerKilowattHour;
  const auto source = at.optionalText(
      "co2_source", at.has("co2_per_kWh") ? std::string() : tariff.co2Source, kLongestNote);
  if (at.has("co2_per_kWh") && source && source->empty())
    at.warn("co2_per_kWh", advised(Told(TOLD("Problem", "no source is stated for this figure")),
                                   Told(TOLD("Problem", "write \"co2_source\""))));
  if (dated && !dated->empty() && !isDate(*dated)) {
    at.error("dated",
             withExample(
                 advised(Told(TOLD("Problem", "%1 is no date"), Quoted{*dated}),
                         Told(TOLD("Problem", "write year and month, e.g. \"2026-01\", or a day"))),
                 inQuotes("2026-01-31")));
    good = false;
  }
  for (const auto& [key, value] :
       {std::pair<std::string_view, std::optional<Time>*>{"brew_from", &tariff.brewFrom},
        std::pair<std::string_view, std::optional<Time>*>{"brew_until", &tariff.brewUntil}}) {
    if (!at.has(key)) continue;
    *value = readClock(at, key, {});
    good = good && value->has_value();
  }
  if (tariff.brewFrom.has_value() != tariff.brewUntil.has_value()) {
    at.error(tariff.brewFrom ? "brew_until" : "brew_from",
             advised(Told(TOLD("Problem", "a window for the start has both ends")),
                     Told(TOLD("Problem", "write \"brew_from\" and \"brew_until\""))));
    good = false;
  }
  if (at.has("brews_per_year")) {
    tariff.brewsPerYear = at.number("brews_per_year", {0.0, 1000.0});
    good = good && tariff.brewsPerYear.has_value();
  }
  constexpr Range<double> kMoney{0.0, 1e7};
  for (const auto& [key, value] :
       {std::pair<std::string_view, std::optional<double>*>{"jacket_price", &tariff.jacketPrice},
        std::pair<std::string_view, std::optional<double>*>{"element_price",
                                                            &tariff.elementPrice}}) {
    if (!at.has(key)) continue;
    *value = at.number(key, kMoney);
    good = good && value->has_value();
  }
  if (!good || !day || !used || !rebate || !dated || !name || !origin || !status || !source)
    return std::nullopt;
  tariff.name = *name;
  tariff.source = *origin;
  tariff.status = *status;
  tariff.usedThisMonth = *used;
  tariff.day = *day;
  tariff.rebate = *rebate;
  tariff.dated = *dated;
  tariff.co2PerKilowattHour = co2;
  tariff.co2Source = *source;
  return tariff;
}

}  // namespace rigs
