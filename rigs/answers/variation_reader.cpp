// SPDX-License-Identifier: GPL-3.0-or-later
// From what was typed to places and values, with all that is wrong on the way.
#include <algorithm>
#include <charconv>
#include <cmath>

#include "rigs/answers/key_numbers.hpp"
#include "rigs/answers/variation.hpp"
#include "rigs/documents/json_cursor.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/plan.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace rigs {
namespace {

// More than anybody waits for; as many as sums of them can be counted.
constexpr double kMostInRange = 1e15;

std::string_view bareOf(std::string_view text) {
  while (text.starts_with(' ')) text.remove_prefix(1);
  while (text.ends_with(' ')) text.remove_suffix(1);
  return text;
}

std::vector<std::string_view> stepsOf(std::string_view text) {
  std::vector<std::string_view> all;
  for (;;) {
    const std::size_t end = text.find('/');
    all.push_back(text.substr(0, end));
    if (end == std::string_view::npos) return all;
    text.remove_prefix(end + 1);
  }
}

// Between semicolons, or commas with a space behind them.
std::vector<std::string_view> valuesIn(std::string_view text) {
  std::vector<std::string_view> all;
  std::size_t begin = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const bool ends =
        text[at] == ';' || (text[at] == ',' && (at + 1 == text.size() || text[at + 1] == ' '));
    if (!ends) continue;
    all.push_back(bareOf(text.substr(begin, at - begin)));
    begin = at + 1;
  }
  all.push_back(bareOf(text.substr(begin)));
  return all;
}

std::optional<std::size_t> indexIn(std::string_view step) {
  std::size_t index = 0;
  const auto [end, error] = std::from_chars(step.data(), step.data() + step.size(), index);
  if (error != std::errc{} || end != step.data() + step.size()) return std::nullopt;
  return index;
}

}  // namespace

class VariationReader {
 public:
  VariationReader(std::string_view place, const Varied& varied, Problems& problems)
      : typed_(place), varied_(varied), problems_(problems) {}

  std::optional<Variation> read(std::string_view values) {
    const bool known = readPlace();
    if (!known) return std::nullopt;
    readValues(values);
    if (!failed_) tryInThePlan();
    return failed_ ? std::nullopt : std::optional(std::move(made_));
  }

 private:
  void error(Told message) {
    problems_.push_back({Severity::Error, "--vary " + std::string(typed_), std::move(message)});
    failed_ = true;
  }

  // --- The place.

  bool readPlace() {
    std::string_view place = typed_;
    if (place.starts_with('/')) place.remove_prefix(1);
    made_.pointers_ = {""};
    const Key* key = nullptr;
    for (const std::string_view step : stepsOf(place)) {
      const bool inList = key && key->kind == ValueKind::List;
      if (!(inList ? enterEntry(step) : enterKey(step))) return false;
      key = inList ? nullptr : keyAt(pattern_);
    }
    return isOneKey(key);
  }

  bool enterKey(std::string_view step) {
    const std::vector<std::string_view> known = keysOf(pattern_);
    if (std::find(known.begin(), known.end(), step) == known.end()) {
      unknownKey(step, known);
      return false;
    }
    enter(std::string(step));
    add(step);
    return true;
  }

  void unknownKey(std::string_view step, std::vector<std::string_view> known) {
    std::erase(known, "note");  // which nothing depends on
    const Quoted given{std::string(step)};
    const std::string_view near = nearestWord(step, known);
    if (known.empty())
      return error(Told(TOLD("Sweep", "%1 is no place of a plan"), Quoted{std::string(typed_)}));
    Told found = made_.place_.empty()
                     ? Told(TOLD("Sweep", "a plan has no key %1"), given)
                     : Told(TOLD("Sweep", "%1 has no key %2"), inQuotes(made_.place_), given);
    if (!near.empty()) return error(perhapsMeant(std::move(found), near));
    error(advised(std::move(found), Told(TOLD("Sweep", "it may have %1"), choice(known))));
  }

  // Of each list so far, in each of which "*" stands for its own entries.
  bool enterEntry(std::string_view step) {
    std::vector<std::string> entered;
    bool everywhere = true;
    std::size_t most = 0;
    for (const std::string& list : made_.pointers_) {
      const std::size_t count = entriesAt(varied_.document, list).value_or(0);
      const std::vector<std::size_t> chosen = chosenEntries(step, count);
      for (const std::size_t i : chosen) entered.push_back(list + '/' + std::to_string(i));
      everywhere = everywhere && (step == "*" || !chosen.empty());
      most = std::max(most, count);
    }
    if (most == 0)
      error(Told(TOLD("Sweep", "this plan states no entries of %1"), inQuotes(made_.place_)));
    else if (!everywhere)
      error(noSuchEntry(step, most));
    if (failed_) return false;
    made_.pointers_ = std::move(entered);
    add(nameOfEntry(step));
    pattern_ += "/*";
    return true;
  }

  bool inRigs() const { return pattern_ == "/rigs"; }

  std::vector<std::size_t> chosenEntries(std::string_view step, std::size_t count) const {
    std::vector<std::size_t> chosen;
    if (step == "*") {
      for (std::size_t i = 0; i < count; ++i) chosen.push_back(i);
    } else if (const auto index = indexIn(step)) {
      if (*index < count) chosen.push_back(*index);
    } else if (const auto slot = inRigs() ? slotOfLetter(step) : std::nullopt) {
      const auto at = std::find(varied_.slots.begin(), varied_.slots.end(), *slot);
      if (at != varied_.slots.end())
        chosen.push_back(static_cast<std::size_t>(at - varied_.slots.begin()));
    }
    return chosen;
  }

  // One name for one rig, whatever was typed.
  std::string nameOfEntry(std::string_view step) const {
    const auto index = inRigs() ? indexIn(step) : std::nullopt;
    return index ? letterOfSlot(varied_.slots[*index]) : std::string(step);
  }

  Told noSuchEntry(std::string_view step, std::size_t count) const {
    const Quoted given{std::string(step)};
    const Count last{static_cast<long long>(count) - 1};
    if (inRigs())
      return Told(TOLD("Sweep",
                       "this plan has no rig %1; a letter of its rigs, a number from 0 to %2, or "
                       "\"*\" for all of them is accepted, e.g. \"rigs/%3\""),
                  given, last, Verbatim{letterOfSlot(varied_.slots.front())});
    return Told(TOLD("Sweep",
                     "%1 has no entry %2; a number from 0 to %3, or \"*\" for all of them is "
                     "accepted"),
                inQuotes(made_.place_), given, last);
  }

  void enter(const std::string& step) {
    for (std::string& pointer : made_.pointers_) pointer += '/' + step;
    pattern_ += '/' + step;
  }
  void add(std::string_view step) {
    made_.place_ += (made_.place_.empty() ? "" : "/") + std::string(step);
  }

  bool isOneKey(const Key* key) {
    if (key && key->kind == ValueKind::Anything) {
      error(Told(TOLD("Sweep", "%1 is a remark: nothing depends on it"), inQuotes(made_.place_)));
      return false;
    }
    if (key && key->kind != ValueKind::Object && key->kind != ValueKind::List) {
      made_.key_ = key;
      return true;
    }
    std::vector<std::string_view> below = keysOf(pattern_);
    if (key && key->kind == ValueKind::List) below = keysOf(pattern_ + "/*");
    std::erase(below, "note");
    Told found(TOLD("Sweep", "%1 has keys of its own; vary one of them"), inQuotes(made_.place_));
    const std::string entry = key && key->kind == ValueKind::List ? "/0/" : "/";
    if (!below.empty())
      found = withExample(std::move(found),
                          inQuotes(made_.place_ + entry + std::string(below.front())));
    error(std::move(found));
    return false;
  }

  // --- The values.

  void readValues(std::string_view text) {
    if (bareOf(text).empty())
      return error(Told(TOLD("Sweep", "no values are given; write them behind \"=\", e.g. %1"),
                        inQuotes(std::string(typed_) + '=' + std::string(made_.key().example))));
    for (const std::string_view value : valuesIn(text)) {
      const bool range = hasNumbers(made_.key()) && value.find("..") != std::string_view::npos;
      if (value.empty())
        error(Told(TOLD("Sweep", "a value is missing between two signs that part them")));
      else if (range)
        readRange(value);
      else
        readOne(value);
    }
  }

  void readOne(std::string_view value) {
    const Key& key = made_.key();
    const std::string text(value);
    const bool word = std::find(key.words.begin(), key.words.end(), value) != key.words.end();
    if (!word && key.kind == ValueKind::Word)
      return error(perhapsMeant(advised(Told(TOLD("Problem", "%1 is not known here"), Quoted{text}),
                                        writeOneOf(key.words)),
                                nearestWord(value, key.words)));
    if (!word && hasNumbers(key)) {
      const ReadNumber read = readNumber(key, value);
      if (!read.number) return error(withSigns(value, read.problem));
    }
    made_.parts_.push_back({.first = text, .last = {}, .step = {}});
  }

  // Two values that no space parts look like one to whoever reads numbers.
  static Told withSigns(std::string_view value, const Told& problem) {
    const std::size_t comma = value.find(',');
    const bool second = comma != std::string_view::npos && comma > 0 &&
                        value.find_first_not_of("0123456789.") < comma;
    if (!second) return problem;
    return advised(problem, Told(TOLD("Sweep",
                                      "values are parted by \"; \", or by a comma with a space "
                                      "behind it")));
  }

  struct Ends {
    std::string_view low, high, in, by;
  };
  static Ends endsOf(std::string_view value) {
    const std::size_t dots = value.find("..");
    Ends ends{
        .low = bareOf(value.substr(0, dots)), .high = value.substr(dots + 2), .in = {}, .by = {}};
    const auto cut = [&ends](std::string_view word, std::string_view& rest) {
      const std::size_t at = ends.high.rfind(word);
      if (at == std::string_view::npos) return;
      rest = bareOf(ends.high.substr(at + word.size()));
      ends.high = ends.high.substr(0, at);
    };
    cut(" by ", ends.by);
    if (ends.by.empty()) cut(" in ", ends.in);
    ends.high = bareOf(ends.high);
    return ends;
  }

  void readRange(std::string_view value) {
    const Ends ends = endsOf(value);
    if (ends.low.empty() || ends.high.empty())
      return error(Told(TOLD("Sweep", "%1 is a range that lacks an end; both are needed"),
                        Quoted{std::string(value)}));
    const ReadNumber low = readNumber(made_.key(), ends.low);
    const ReadNumber high = readNumber(made_.key(), ends.high);
    for (const ReadNumber* read : {&low, &high})
      if (!read->number) error(read->problem);
    if (!low.number || !high.number) return;
    Variation::Part part{.first = std::string(ends.low),
                         .last = std::string(ends.high),
                         .low = *low.number,
                         .high = *high.number,
                         .step = {}};
    if (!ends.by.empty())
      readSteps(part, ends.by, value);
    else if (!ends.in.empty())
      readCount(part, ends.in, value);
    else
      error(Told(TOLD("Sweep",
                      "%1 does not say how many values it has; write e.g. \"%2..%3 in 5\" for "
                      "five of them evenly apart"),
                 Quoted{std::string(value)}, Verbatim{part.first}, Verbatim{part.last}));
    if (!failed_) made_.parts_.push_back(std::move(part));
  }

  void readCount(Variation::Part& part, std::string_view in, std::string_view value) {
    const auto count = indexIn(in);
    const Quoted given{std::string(value)};
    if (!count || *count < 2 || static_cast<double>(*count) > kMostInRange)
      return error(Told(TOLD("Sweep",
                             "%1: behind \"in\" a whole number of values from 2 on is "
                             "needed"),
                        given));
    part.count = *count;
    const double gaps = static_cast<double>(part.count - 1);
    if (isWhole(made_.key()) && std::fmod(part.high - part.low, gaps) != 0.0)
      error(Told(TOLD("Sweep", "%1 has values between whole numbers; choose a step with \"by\""),
                 given));
  }

  void readSteps(Variation::Part& part, std::string_view by, std::string_view value) {
    const ReadNumber step = readStep(made_.key(), by);
    if (!step.number) return error(step.problem);
    const double across = std::abs(part.high - part.low) / *step.number;
    // A hair beyond the other end is rounding.
    const double steps = std::floor(across * (1.0 + 1e-12) + 1e-9);
    if (steps >= kMostInRange)
      return error(
          Told(TOLD("Sweep", "%1 has too many values to be counted"), Quoted{std::string(value)}));
    part.count = static_cast<std::uint64_t>(steps) + 1;
    part.step = part.high < part.low ? -*step.number : *step.number;
    const bool meets = std::abs(across - steps) <= 1e-9 * std::max(1.0, across);
    if (!meets) part.last.clear();
  }

  // --- What the document has to say.

  // Names, prices, dates: whether they are such depends on nothing else. Where text stands in the
  // way, nothing can be written below it.
  void tryInThePlan() {
    for (const Variation::Part& part : made_.parts_) {
      const VariedValue value{part.first, part.step || part.count > 1 ? std::optional(part.low)
                                                                      : readIfNumber(part.first)};
      try {
        const std::string document = withAll(varied_.document, made_.placed(value));
        if (hasNumbers(made_.key())) return;
        Problems found;
        static_cast<void>(readPlan(document, varied_.folder, found));
        for (const Problem& one : found)
          if (one.severity == Severity::Error && one.where == made_.pointers_.front())
            error(one.message);
      } catch (const EditError&) {
        return error(Told(TOLD("Sweep",
                               "in this plan no value can stand there, as something else stands "
                               "on the way")));
      }
    }
  }
  std::optional<double> readIfNumber(const std::string& text) const {
    return hasNumbers(made_.key()) ? readNumber(made_.key(), text).number : std::nullopt;
  }

  std::string_view typed_;
  const Varied& varied_;
  Problems& problems_;
  std::string pattern_;  // "/rigs/*/element"
  Variation made_;
  bool failed_ = false;
};

std::optional<Variation> readVariation(std::string_view typed, const Varied& varied,
                                       Problems& problems) {
  const std::size_t equals = typed.find('=');
  if (equals != std::string_view::npos && !bareOf(typed.substr(0, equals)).empty())
    return VariationReader(bareOf(typed.substr(0, equals)), varied, problems)
        .read(typed.substr(equals + 1));
  problems.push_back({Severity::Error, "--vary",
                      Told(TOLD("Sweep",
                                "%1 was given; a key of the plan and its values are needed, e.g. "
                                "\"batch/boil=45 min, 60 min\""),
                           Quoted{std::string(typed)})});
  return std::nullopt;
}

}  // namespace rigs
