// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/words/reader.hpp"

#include <QCoreApplication>
#include <map>
#include <string>
#include <utility>

#include "gui/window/words/language.hpp"

namespace gui {
namespace {

// The translators' texts that Qt has loaded.
class OfQt final : public rigs::Language {
 public:
  explicit OfQt(std::string code) : code_(std::move(code)) {}
  std::string_view code() const override { return code_; }
  std::string_view decimalSign() const override { return code_ == "de" ? "," : "."; }
  std::optional<std::string_view> translation(std::string_view context,
                                              std::string_view english) const override {
    const std::pair key{std::string(context), std::string(english)};
    auto at = known_.find(key);
    if (at == known_.end()) {
      const QString text = QCoreApplication::translate(key.first.c_str(), key.second.c_str());
      at = known_.emplace(key, text.toStdString()).first;
    }
    return at->second;
  }

 private:
  std::string code_;
  mutable std::map<std::pair<std::string, std::string>, std::string> known_;
};

const rigs::Language& spokenNow() {
  static const OfQt kGerman("de");
  return spokenLanguage() == QLatin1String("de") ? static_cast<const rigs::Language&>(kGerman)
                                                 : rigs::english();
}

}  // namespace

rigs::Reader readerIn(rigs::UnitSystem units) { return {.units = units, .language = &spokenNow()}; }

QString told(const rigs::Told& text, const rigs::Reader& reader) {
  return QString::fromStdString(rigs::tell(text, reader));
}

QString told(const rigs::Argument& argument, const rigs::Reader& reader) {
  return QString::fromStdString(rigs::tell(argument, reader));
}

QString told(const rigs::Told& text) { return told(text, readerIn(rigs::UnitSystem::SI)); }

}  // namespace gui
