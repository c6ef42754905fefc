// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/words/language.hpp"

namespace rigs {
namespace {

class English final : public Language {
 public:
  std::string_view code() const override { return "en"; }
  std::string_view decimalSign() const override { return "."; }
  std::optional<std::string_view> translation(std::string_view, std::string_view) const override {
    return std::nullopt;
  }
};

}  // namespace

const Language& english() {
  static const English kEnglish;
  return kEnglish;
}

std::string withDecimalSign(std::string number, const Language& language) {
  const auto isDigit = [&](std::size_t at) { return '0' <= number[at] && number[at] <= '9'; };
  for (std::size_t i = 1; i + 1 < number.size(); ++i) {
    if (number[i] == '.' && isDigit(i - 1) && isDigit(i + 1))
      number.replace(i, 1, language.decimalSign());
  }
  return number;
}

}  // namespace rigs
