// SPDX-License-Identifier: GPL-3.0-or-later
// Where and when the brewing happens, what energy costs there, what a person aims at.
#include <charconv>
#include <string>
#include <string_view>

#include "physics/air.hpp"
#include "rigs/plan_parts.hpp"

namespace rigs {
namespace {

using namespace physics;

bool isDigit(char c) { return '0' <= c && c <= '9'; }

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

// "0.28 EUR/kWh", "0,28 €/kWh", "$0.15/kWh".
std::optional<Tariff> priceFrom(std::string_view text) {
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
  const std::string_view before = trimmed(money.substr(0, first));
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
  Tariff tariff;
  const char* const end = number.data() + number.size();
  const auto read =
      std::from_chars(number.data(), end, tariff.perKilowattHour, std::chars_format::fixed);
  if (read.ec != std::errc() || read.ptr != end) return std::nullopt;
  tariff.currency = currency;
  return tariff;
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

}  // namespace

std::optional<PlaceRead> readPlace(const JsonCursor& at) {
  std::optional<Pressure> pressure;
  std::optional<Length> altitude;
  if (at.has("altitude") && at.has("pressure"))
    at.error("altitude", "both an altitude and a pressure are stated; keep one of them");
  if (!at.has("altitude") && !at.has("pressure")) {
    at.error(R"(neither an altitude nor a pressure is stated; write e.g. "altitude": "120 m")");
  } else if (at.has("pressure")) {
    pressure = at.quantity<Pressure>("pressure", {pascals(50e3), pascals(110e3)});
  } else {
    // From the shore of the Dead Sea to the highest towns.
    altitude = at.quantity<Length>("altitude", {metres(-430.0), metres(5200.0)});
    if (altitude) pressure = standardAtmosphere(*altitude).pressure;
  }
  const auto room = at.quantity<Temperature>("room", {celsius(-10.0), celsius(50.0)});
  const auto humidity = at.optionalQuantity<double>("humidity", 0.5, {0.01, 1.0});
  const auto water = at.quantity<Temperature>("water", {celsius(0.5), celsius(95.0)});
  const auto draught = at.optionalQuantity<Velocity>("draught", metresPerSecond(0.0),
                                                     {metresPerSecond(0.0), metresPerSecond(5.0)});
  at.warnAboutKeysExcept({"altitude", "pressure", "room", "humidity", "water", "draught", "note"});
  if (!pressure || !room || !humidity || !water || !draught) return std::nullopt;
  return PlaceRead{.place = {.room = *room,
                             .relativeHumidity = *humidity,
                             .pressure = *pressure,
                             .water = *water,
                             .draught = *draught},
                   .altitude = altitude};
}

std::optional<Tariff> readTariff(const JsonCursor& at) {
  const auto price = at.text("price", kLongestName);
  const auto dated = at.optionalText("dated", "", kLongestName);
  at.warnAboutKeysExcept({"price", "dated", "note"});
  if (!price || !dated) return std::nullopt;
  auto tariff = priceFrom(*price);
  if (!tariff)
    at.error("price", quotedText(*price) +
                          " is no price of energy; write number, currency and \"/kWh\", e.g. "
                          "\"0.28 EUR/kWh\"");
  if (!dated->empty() && !isDate(*dated)) {
    at.error("dated", quotedText(*dated) +
                          " is no date; write year and month, e.g. \"2026-01\", or a day, e.g. "
                          "\"2026-01-31\"");
    return std::nullopt;
  }
  if (tariff) tariff->dated = *dated;
  return tariff;
}

std::optional<Time> readClock(const JsonCursor& at, std::string_view key) {
  const auto text = at.optionalText(key, "08:00", kLongestName);
  if (!text) return std::nullopt;
  const std::size_t colon = text->find(':');
  const std::string hour = (colon == 1 ? "0" : "") + text->substr(0, colon);
  const int h = twoDigits(hour);
  const int m = colon == std::string::npos ? -1 : twoDigits(text->substr(colon + 1));
  if (0 <= h && h <= 23 && 0 <= m && m <= 59) return hours(h) + minutes(m);
  at.error(key, quotedText(*text) +
                    " is no time of day; write hours and minutes from 00:00 to 23:59, e.g. "
                    "\"08:00\"");
  return std::nullopt;
}

std::optional<Goals> readGoals(const JsonCursor& at) {
  const auto within =
      at.optionalQuantity<Time>("boil_within", minutes(60.0), {minutes(1.0), hours(12.0)});
  const auto boilOff = at.optionalQuantity<FractionPerTime>("boil_off", 0.08 / hours(1.0),
                                                            {0.001 / hours(1.0), 0.5 / hours(1.0)});
  const auto headspace = at.optionalQuantity<double>("headspace", 0.10, {0.0, 0.8});
  const auto unplugged =
      at.optionalQuantity<Time>("unplugged", hours(8.0), {minutes(1.0), hours(48.0)});
  at.warnAboutKeysExcept({"boil_within", "boil_off", "headspace", "unplugged", "note"});
  if (!within || !boilOff || !headspace || !unplugged) return std::nullopt;
  return Goals{.boilWithin = *within,
               .boilOffPerHour = static_cast<double>(*boilOff * hours(1.0)),
               .headspace = *headspace,
               .unplugged = *unplugged};
}

}  // namespace rigs
