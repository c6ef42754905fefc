// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/translations.hpp"

#include <algorithm>
#include <cstdlib>
#include <tuple>

#include "gui/telling/translation_table.hpp"

namespace gui::telling {
namespace {

class German final : public rigs::Language {
 public:
  std::string_view code() const override { return "de"; }
  std::string_view decimalSign() const override { return ","; }
  std::optional<std::string_view> translation(std::string_view context,
                                              std::string_view english) const override {
    const std::span<const Translation> all = germanTranslations();
    const auto wanted = std::tie(context, english);
    const auto at = std::lower_bound(all.begin(), all.end(), wanted,
                                     [](const Translation& one, const auto& other) {
                                       return std::tie(one.context, one.english) < other;
                                     });
    if (at == all.end() || std::tie(at->context, at->english) != wanted) return std::nullopt;
    return at->translated;
  }
};

}  // namespace

std::vector<std::string> languageCodes() { return {"en", "de"}; }

const rigs::Language& languageOf(std::string_view code) {
  static const German kGerman;
  if (code == kGerman.code()) return kGerman;
  return rigs::english();
}

std::string languageFromEnvironment(const std::function<const char*(const char*)>& variable) {
  for (const char* name : {"LC_ALL", "LC_MESSAGES", "LANG"}) {
    const char* value = variable(name);
    if (!value || *value == '\0') continue;
    const std::string_view locale = value;
    const std::string_view code = locale.substr(0, locale.find_first_of("_.@"));
    return std::string(languageOf(code).code());
  }
  return "en";
}

std::string languageFromEnvironment() {
  return languageFromEnvironment([](const char* name) { return std::getenv(name); });
}

}  // namespace gui::telling
