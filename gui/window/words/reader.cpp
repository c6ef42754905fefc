// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/words/reader.hpp"

#include "gui/telling/translations.hpp"
#include "gui/window/words/language.hpp"
#include "rigs/circuits/rules.hpp"

namespace gui {

rigs::Reader readerOf(rigs::UnitSystem units) {
  return {.units = units, .language = &telling::languageOf(spokenLanguage().toStdString())};
}

QString told(const rigs::Told& text, const rigs::Reader& reader) {
  return QString::fromStdString(rigs::tell(text, reader));
}

QString told(const rigs::Argument& argument, const rigs::Reader& reader) {
  return QString::fromStdString(rigs::tell(argument, reader));
}

QString told(const rigs::Told& text, rigs::UnitSystem units) { return told(text, readerOf(units)); }

QString told(const rigs::Told& text) { return told(text, readerOf(rigs::UnitSystem::SI)); }

QString catalogueName(const QString& english) {
  return told(rigs::Bundled{"Catalogue", english.toStdString()}, readerOf(rigs::UnitSystem::SI));
}

QString regionName(const std::string& english) {
  return told(rigs::fromRules(english), readerOf(rigs::UnitSystem::SI));
}

}  // namespace gui
