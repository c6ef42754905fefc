// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/words/catalogue_words.hpp"

#include <QCoreApplication>
#include <QHash>
#include <array>
#include <optional>

namespace gui {
namespace {

constexpr std::array kWords{
    // Materials.
    QT_TRANSLATE_NOOP("Catalogue", "stainless steel"),
    QT_TRANSLATE_NOOP("Catalogue", "aluminium"),
    QT_TRANSLATE_NOOP("Catalogue", "copper"),
    QT_TRANSLATE_NOOP("Catalogue", "enamelled steel"),
    QT_TRANSLATE_NOOP("Catalogue", "polypropylene"),
    QT_TRANSLATE_NOOP("Catalogue", "glass"),
    QT_TRANSLATE_NOOP("Catalogue", "closed-cell rubber foam"),
    QT_TRANSLATE_NOOP("Catalogue", "elastomeric foam, flexible"),
    QT_TRANSLATE_NOOP("Catalogue", "foam rubber"),
    QT_TRANSLATE_NOOP("Catalogue", "expanded rubber"),
    QT_TRANSLATE_NOOP("Catalogue", "neoprene foam"),
    QT_TRANSLATE_NOOP("Catalogue", "neoprene, solid"),
    QT_TRANSLATE_NOOP("Catalogue", "natural rubber"),
    QT_TRANSLATE_NOOP("Catalogue", "silicone"),
    QT_TRANSLATE_NOOP("Catalogue", "silicone foam"),
    QT_TRANSLATE_NOOP("Catalogue", "polyurethane foam"),
    QT_TRANSLATE_NOOP("Catalogue", "polyethylene foam"),
    QT_TRANSLATE_NOOP("Catalogue", "extruded polystyrene"),
    QT_TRANSLATE_NOOP("Catalogue", "mineral wool"),
    QT_TRANSLATE_NOOP("Catalogue", "cork"),
    QT_TRANSLATE_NOOP("Catalogue", "wool felt"),
    QT_TRANSLATE_NOOP("Catalogue", "fleece blanket"),
    QT_TRANSLATE_NOOP("Catalogue", "cotton blanket"),
    QT_TRANSLATE_NOOP("Catalogue", "reflective bubble wrap"),
    QT_TRANSLATE_NOOP("Catalogue", "air gap"),
    QT_TRANSLATE_NOOP("Catalogue", "pine"),
    QT_TRANSLATE_NOOP("Catalogue", "oak"),
    QT_TRANSLATE_NOOP("Catalogue", "plywood"),
    QT_TRANSLATE_NOOP("Catalogue", "concrete"),
    QT_TRANSLATE_NOOP("Catalogue", "ceramic tile"),
    QT_TRANSLATE_NOOP("Catalogue", "steel plate"),
    QT_TRANSLATE_NOOP("Catalogue", "PVC"),
    // How surfaces look.
    QT_TRANSLATE_NOOP("Catalogue", "bright"),
    QT_TRANSLATE_NOOP("Catalogue", "brushed"),
    QT_TRANSLATE_NOOP("Catalogue", "dull"),
    QT_TRANSLATE_NOOP("Catalogue", "painted"),
    QT_TRANSLATE_NOOP("Catalogue", "anodised"),
    QT_TRANSLATE_NOOP("Catalogue", "blackened"),
    QT_TRANSLATE_NOOP("Catalogue", "enamel"),
    QT_TRANSLATE_NOOP("Catalogue", "plastic"),
    QT_TRANSLATE_NOOP("Catalogue", "foil"),
    QT_TRANSLATE_NOOP("Catalogue", "aluminium sheet"),
    QT_TRANSLATE_NOOP("Catalogue", "lacquered"),
    QT_TRANSLATE_NOOP("Catalogue", "tape"),
    QT_TRANSLATE_NOOP("Catalogue", "cloth"),
    QT_TRANSLATE_NOOP("Catalogue", "rubber"),
    QT_TRANSLATE_NOOP("Catalogue", "bright steel"),
    QT_TRANSLATE_NOOP("Catalogue", "emissivity %1"),
    // What a kettle stands on.
    QT_TRANSLATE_NOOP("Catalogue", "table"),
    QT_TRANSLATE_NOOP("Catalogue", "thick floor"),
    QT_TRANSLATE_NOOP("Catalogue", "legs"),
    // Where a jacket is.
    QT_TRANSLATE_NOOP("Catalogue", "side"),
    QT_TRANSLATE_NOOP("Catalogue", "lid"),
    QT_TRANSLATE_NOOP("Catalogue", "base"),
    // Wiring, cables and days.
    QT_TRANSLATE_NOOP("Catalogue", "one outlet"),
    QT_TRANSLATE_NOOP("Catalogue", "several outlets"),
    QT_TRANSLATE_NOOP("Catalogue", "building wire"),
    QT_TRANSLATE_NOOP("Catalogue", "cord"),
    QT_TRANSLATE_NOOP("Catalogue", "extension set"),
    QT_TRANSLATE_NOOP("Catalogue", "parallel"),
    QT_TRANSLATE_NOOP("Catalogue", "series"),
    QT_TRANSLATE_NOOP("Catalogue", "two circuits"),
    QT_TRANSLATE_NOOP("Catalogue", "weekday"),
    QT_TRANSLATE_NOOP("Catalogue", "weekend"),
    // Where circuits are usual.
    QT_TRANSLATE_NOOP("Catalogue", "North America %1"),
    QT_TRANSLATE_NOOP("Catalogue", "UK 230 V 13 A plug"),
    QT_TRANSLATE_NOOP("Catalogue", "Europe %1"),
    QT_TRANSLATE_NOOP("Catalogue", "Switzerland %1"),
    QT_TRANSLATE_NOOP("Catalogue", "Australia/New Zealand %1"),
    QT_TRANSLATE_NOOP("Catalogue", "Japan %1"),
    // Rigs.
    QT_TRANSLATE_NOOP("Catalogue", "20 L steel pot"),
    QT_TRANSLATE_NOOP("Catalogue", "30 L double-wall urn"),
    QT_TRANSLATE_NOOP("Catalogue", "35 L all-in-one kettle"),
    QT_TRANSLATE_NOOP("Catalogue", "40 L steel kettle"),
    QT_TRANSLATE_NOOP("Catalogue", "60 L steel kettle"),
    QT_TRANSLATE_NOOP("Catalogue", "70 L steel kettle"),
    QT_TRANSLATE_NOOP("Catalogue", "a stock pot with an immersion heater hung in"),
    QT_TRANSLATE_NOOP(
        "Catalogue",
        "a tea urn or all-in-one kettle: heater below the base, air gap behind a steel shell"),
    QT_TRANSLATE_NOOP("Catalogue", "single wall, heater below the base, pump and hose"),
    QT_TRANSLATE_NOOP("Catalogue", "a brewing kettle with a screwed-in element"),
    QT_TRANSLATE_NOOP("Catalogue", "a wide kettle on legs"),
};

const QHash<QString, const char*>& words() {
  static const QHash<QString, const char*> kAll = [] {
    QHash<QString, const char*> all;
    for (const char* word : kWords) all.insert(QString::fromUtf8(word), word);
    return all;
  }();
  return kAll;
}

// "North America %1" for "North America 120 V 15 A"; such places stand at the end.
std::optional<QString> withNumbers(const QString& english) {
  for (const char* word : kWords) {
    const QString before = QString::fromUtf8(word);
    if (!before.endsWith(QLatin1String("%1"))) continue;
    const qsizetype length = before.size() - 2;
    if (english.size() > length && english.startsWith(before.left(length)))
      return QCoreApplication::translate("Catalogue", word).arg(english.mid(length));
  }
  return std::nullopt;
}

}  // namespace

bool isCatalogueWord(const QString& english) {
  return words().contains(english) || withNumbers(english).has_value();
}

QString catalogueWord(const QString& english) {
  if (const char* word = words().value(english))
    return QCoreApplication::translate("Catalogue", word);
  return withNumbers(english).value_or(english);
}

}  // namespace gui
