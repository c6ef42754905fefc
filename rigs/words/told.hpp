// SPDX-License-Identifier: GPL-3.0-or-later
// A message before it is told: a template and typed arguments. It becomes text only where a person
// reads it, in that person's units and language; nobody ever takes the text apart again.
#pragma once

#include <compare>
#include <concepts>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#include "physics/units.hpp"
#include "rigs/quantities/quantity_text.hpp"
#include "rigs/words/language.hpp"

// Marks an English template for the translators' tools (lupdate -tr-function-alias
// QT_TRANSLATE_NOOP+=TOLD): TOLD("Problem", "%1 is missing").
#define TOLD(context, english) \
  ::rigs::Marked { context, english }

namespace rigs {

struct Marked {
  const char* context;
  const char* english;
};

// A template whose places are exactly %1 to %N, which the compiler checks.
template <std::size_t N>
class Template {
 public:
  consteval Template(Marked marked) : marked_(marked) {  // NOLINT: a marked text is a template
    static_assert(N <= 9);
    bool filled[10] = {};
    for (const char* at = marked.english; *at != '\0'; ++at) {
      if (*at != '%' || at[1] < '0' || at[1] > '9') continue;
      const auto place = static_cast<std::size_t>(at[1] - '0');
      if (place == 0 || place > N) throw "a place without an argument";
      filled[place] = true;
    }
    for (std::size_t place = 1; place <= N; ++place)
      if (!filled[place]) throw "an argument without a place";
  }
  const Marked& marked() const { return marked_; }

 private:
  Marked marked_;
};

// --- What may stand at a place.

// A quantity, in the reader's units, or in the unit of `like` where that is not empty.
struct Amount {
  QuantityKind kind;
  double si;  // coherent units, kelvin for temperatures
  FormatOptions options = {};
  std::string like = {};
  bool alone = false;  // the number without its unit, in that of the reader's columns

  bool operator==(const Amount&) const = default;
};
template <Writable Q>
Amount amount(const Q& q, const FormatOptions& options = {}) {
  return {kKindOf<Q>, detail::siNumber(q), options, {}};
}
template <Writable Q>
Amount amountLike(const Q& q, std::string sample, const FormatOptions& options = {}) {
  return {kKindOf<Q>, detail::siNumber(q), options, std::move(sample)};
}
// "2.5" of "2.5 to 6 L/kg": for kinds that have one unit in each system.
template <Writable Q>
Amount numberAlone(const Q& q, const FormatOptions& options = {}) {
  return {kKindOf<Q>, detail::siNumber(q), options, {}, true};
}
// A duration that a person chose, as sentences tell it: whole minutes, seconds below ten minutes.
Amount asChosen(physics::Time time);
// Whole watts below 10 kW, for sentences that compare them.
Amount inWholeWatts(physics::Power power);

struct Number {  // a pure number
  double value;
  FormatOptions options = {};

  bool operator==(const Number&) const = default;
};
// What a ledger misses of what came in: "3e-09", and "<1e-9" where digits would tell of rounding
// and not of heat.
struct Gap {
  double share;

  bool operator==(const Gap&) const = default;
};
struct Count {
  long long value;

  bool operator==(const Count&) const = default;
};
// "1.94 EUR", "$1.94"; two significant digits where that is less than a tenth.
struct Money {
  double amount;
  std::string currency;

  bool operator==(const Money&) const = default;
};
struct HoursAndMinutes {  // "2:05"
  physics::Time time;

  bool operator==(const HoursAndMinutes&) const = default;
};
// "09:41"; "+1 d 00:10" after midnight, "-1 d 20:10" on the evening before.
struct Clock {
  physics::Time sinceMidnight;
  bool counted = false;  // since a day began that has no clock: "hour 2:05"

  bool operator==(const Clock&) const = default;
};
// What a person wrote: in quotation marks, shortened, nothing in it that moves a cursor.
struct Quoted {
  std::string text;

  bool operator==(const Quoted&) const = default;
};
// The same in every language: a name, a path, a clause, an example of a document.
struct Verbatim {
  std::string text;

  bool operator==(const Verbatim&) const = default;
};
// A text of our own bundled data (a material, a region, a rule): translated as a whole where the
// language knows it.
struct Bundled {
  std::string context;  // as the translators' file has it: "Catalogue"
  std::string english;

  bool operator==(const Bundled&) const = default;
};

struct Argument;
class Told;

enum class Joint { Space, Comma, Semicolon, And, Or, Plus };
// Items one after another: "a, b and c" with And or Or, else with the sign between any two.
struct List {
  std::vector<Argument> items;
  Joint joint = Joint::Space;
};
bool operator==(const List& a, const List& b);

class Told {
 public:
  // The number of arguments is checked against the template by the compiler.
  template <class... A>
  explicit Told(std::type_identity_t<Template<sizeof...(A)>> text, A&&... arguments);
  // Nothing is told: "".
  Told() = default;
  // What has no template of its own: one argument as it stands.
  static Told just(Argument argument);

  bool empty() const { return english_.empty(); }
  const std::string& context() const { return context_; }
  const std::string& english() const { return english_; }  // the template, with its places
  const std::vector<Argument>& arguments() const { return arguments_; }

 private:
  std::string context_, english_;
  std::vector<Argument> arguments_;
};
bool operator==(const Told& a, const Told& b);

struct Argument {
  using Value = std::variant<Amount, Number, Gap, Count, Money, HoursAndMinutes, Clock, Quoted,
                             Verbatim, Bundled, List, Told>;
  Value value;

  // Arguments are given as they are, without a word for it; the constraint keeps copies out.
  template <class T>
  requires(!std::same_as<std::remove_cvref_t<T>, Argument> && std::constructible_from<Value, T&&>)
      // NOLINTNEXTLINE(bugprone-forwarding-reference-overload)
      Argument(T&& from)
      : value(std::forward<T>(from)) {}
};
bool operator==(const Argument& a, const Argument& b);

template <class... A>
Told::Told(std::type_identity_t<Template<sizeof...(A)>> text, A&&... arguments)
    : context_(text.marked().context), english_(text.marked().english) {
  arguments_.reserve(sizeof...(A));
  (arguments_.emplace_back(std::forward<A>(arguments)), ...);
}

// A duration that was computed, to what the physics knows: whole minutes, "less than 1 min".
Told roughly(physics::Time time);

// Sentences one after another; those that tell nothing are left out.
Told sentences(std::vector<Told> all);

// As text. English where the language has no translation.
std::string tell(const Told& told, const Reader& reader);
std::string tell(const Argument& argument, const Reader& reader);
// For programs and tests.
std::string inEnglish(const Told& told, UnitSystem units = UnitSystem::SI);

}  // namespace rigs
