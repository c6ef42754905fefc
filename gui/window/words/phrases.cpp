// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/words/phrases.hpp"

#include <QCoreApplication>
#include <QHash>
#include <QStringList>
#include <QVector>
#include <array>
#include <optional>

#include "gui/telling/translations.hpp"

namespace gui {
namespace {

// Longer ones before those that would take their parts.
constexpr std::array kPhrases{
    // Regions and what stands behind a figure.
    QT_TRANSLATE_NOOP("Phrases", "United States"),
    QT_TRANSLATE_NOOP("Phrases", "Canada"),
    QT_TRANSLATE_NOOP("Phrases", "Europe"),
    QT_TRANSLATE_NOOP("Phrases", "United Kingdom"),
    QT_TRANSLATE_NOOP("Phrases", "Australia and New Zealand"),
    QT_TRANSLATE_NOOP("Phrases", "Japan"),
    QT_TRANSLATE_NOOP("Phrases", "read"),
    QT_TRANSLATE_NOOP("Phrases", "computed"),
    QT_TRANSLATE_NOOP("Phrases", "from memory, check"),
    // Verdicts.
    QT_TRANSLATE_NOOP("Phrases", "fits"),
    QT_TRANSLATE_NOOP("Phrases", "fits only if"),
    QT_TRANSLATE_NOOP("Phrases", "cannot say"),
    QT_TRANSLATE_NOOP("Phrases", "does not fit"),
    // Names of rules.
    QT_TRANSLATE_NOOP("Phrases", "supply voltage"),
    QT_TRANSLATE_NOOP("Phrases", "over-voltage"),
    QT_TRANSLATE_NOOP("Phrases", "the circuit's rating"),
    QT_TRANSLATE_NOOP("Phrases", "the circuit's rating, other loads included"),
    QT_TRANSLATE_NOOP("Phrases", "continuous load"),
    QT_TRANSLATE_NOOP("Phrases", "one plug-in load on a circuit with several outlets"),
    QT_TRANSLATE_NOOP("Phrases", "outlet among several on a circuit"),
    QT_TRANSLATE_NOOP("Phrases", "outlet"),
    QT_TRANSLATE_NOOP("Phrases", "outlet %1 on the circuit"),
    QT_TRANSLATE_NOOP("Phrases", "neutral of %1"),
    QT_TRANSLATE_NOOP("Phrases", "earth of %1"),
    QT_TRANSLATE_NOOP("Phrases", "both sockets of %1"),
    QT_TRANSLATE_NOOP("Phrases", "long use of a household socket"),
    QT_TRANSLATE_NOOP("Phrases", "largest breaker for one appliance"),
    QT_TRANSLATE_NOOP("Phrases", "division of large heaters"),
    QT_TRANSLATE_NOOP("Phrases", "the cable"),
    QT_TRANSLATE_NOOP("Phrases", "a breaker that protects %1"),
    QT_TRANSLATE_NOOP("Phrases", "voltage drop, branch circuit"),
    QT_TRANSLATE_NOOP("Phrases", "voltage drop, whole way"),
    QT_TRANSLATE_NOOP("Phrases", "Class A GFCI"),
    QT_TRANSLATE_NOOP("Phrases", "30 mA RCD"),
    QT_TRANSLATE_NOOP("Phrases", "%1 under the load"),
    QT_TRANSLATE_NOOP("Phrases", "%1 under a continuous load"),
    QT_TRANSLATE_NOOP("Phrases", "the breaker of %1"),
    QT_TRANSLATE_NOOP("Phrases", "continuous load beside the other loads"),
    QT_TRANSLATE_NOOP("Phrases", "what the other loads leave of the circuit"),
    QT_TRANSLATE_NOOP("Phrases",
                      "the element's own rating; supplies rise to 110 % of their nominal"),
    QT_TRANSLATE_NOOP("Phrases",
                      "a continuous load asks no such margin of a cord, which electricians "
                      "argue about; an electrician's or inspector's reading decides"),
    // Readings.
    QT_TRANSLATE_NOOP("Phrases", "the circuit's whole rating"),
    QT_TRANSLATE_NOOP("Phrases", "counted as continuous load"),
    QT_TRANSLATE_NOOP("Phrases", "a household socket for hours"),
    // What a verdict hangs on, after "fits only if".
    QT_TRANSLATE_NOOP("Phrases",
                      "the time with the element merely enabled does not count as a continuous "
                      "load; an electrician's or inspector's reading decides"),
    QT_TRANSLATE_NOOP("Phrases", "the circuit feeds one outlet alone"),
    QT_TRANSLATE_NOOP("Phrases", "socket and plug stand that for as long as it takes"),
    QT_TRANSLATE_NOOP("Phrases",
                      "the kettle's maker marks it for a circuit of %1, or its own control has a "
                      "smaller fuse"),
    QT_TRANSLATE_NOOP("Phrases",
                      "the load is divided; Heating appliances above 48 A are divided into loads "
                      "of up to 48 A, each protected at up to 60 A."),
    QT_TRANSLATE_NOOP("Phrases", "more than the recommended drop is accepted"),
    QT_TRANSLATE_NOOP("Phrases",
                      "the column for NM-B cable and for circuits up to 100 A unless every "
                      "termination is marked 75 C (110.14(C), 334.80)"),
    QT_TRANSLATE_NOOP("Phrases", "only where every termination is marked 75 C (110.14(C))"),
    QT_TRANSLATE_NOOP("Phrases", "for corrections only; the termination keeps its own column"),
    QT_TRANSLATE_NOOP("Phrases", "every termination is marked for %1"),
    // What is lacking or wrong.
    QT_TRANSLATE_NOOP("Phrases", "%1 is no supply voltage of %2; there it is %3"),
    QT_TRANSLATE_NOOP("Phrases", "no outlet called %1 is among those of %2"),
    QT_TRANSLATE_NOOP("Phrases", "it is made for %1"),
    QT_TRANSLATE_NOOP("Phrases", "it has no neutral for the pump's %1; earth is not a neutral"),
    QT_TRANSLATE_NOOP("Phrases", "it has no earth contact, which a metal kettle needs"),
    QT_TRANSLATE_NOOP("Phrases", "no table of conductors is at hand for %1"),
    QT_TRANSLATE_NOOP("Phrases",
                      "the plan does not say whether the cable is a building wire, a cord or an "
                      "extension set (\"use\")"),
    QT_TRANSLATE_NOOP("Phrases", "no table has this size and length; the nearest is %1"),
    QT_TRANSLATE_NOOP("Phrases", "no table has this size and length"),
    // Protection.
    QT_TRANSLATE_NOOP("Phrases",
                      "Receptacles of 125 to 250 V in kitchens, basements, garages, laundries, "
                      "outdoors and within 6 ft of a sink need it (210.8(A), 2023 wording; places "
                      "differ)."),
    QT_TRANSLATE_NOOP("Phrases", "Receptacles near sinks and outdoors need it."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Socket circuits up to 32 A need a residual-current device of 30 mA or less. "
                      "It may trip from half its rating; that half is from memory."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Socket-outlets up to 32 A need a residual-current device of 30 mA. Keep "
                      "standing leakage below 30 % of that (531.3.2, from memory)."),
    QT_TRANSLATE_NOOP("Phrases",
                      "All final circuits of Australian dwellings need 30 mA; New Zealand asks for "
                      "less."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Wet places need a leakage breaker of 30 mA or finer (15 mA is common)."),
    // Arithmetic.
    QT_TRANSLATE_NOOP("Phrases",
                      "an element rated at %1 would give %2 times its power and surface load; use "
                      "one rated for this supply"),
    QT_TRANSLATE_NOOP("Phrases", "%1 outlet on a circuit of %2"),
    QT_TRANSLATE_NOOP("Phrases", "%1 for %2, above %3 for longer than %4"),
    QT_TRANSLATE_NOOP("Phrases",
                      "a breaker of %1 for an appliance of %2 without a marked one; the most is "
                      "%3"),
    QT_TRANSLATE_NOOP("Phrases", "a breaker of %1, the most is %2"),
    QT_TRANSLATE_NOOP("Phrases",
                      "an element of this power may leak %1, the device may trip from %2"),
    QT_TRANSLATE_NOOP("Phrases", "the device may trip from %1"),
    QT_TRANSLATE_NOOP("Phrases",
                      "current flows for %1 in the fullest %2, the element is enabled for %3 of "
                      "it, the rule counts from %4"),
    QT_TRANSLATE_NOOP("Phrases",
                      "current flows for %1 without a break, the element is enabled for %2 on "
                      "end, the rule counts from %3"),
    QT_TRANSLATE_NOOP("Phrases", "%1 against %2, a recommendation"),
    QT_TRANSLATE_NOOP("Phrases", "at least %1 of copper would keep it"),
    QT_TRANSLATE_NOOP("Phrases", "up to %1 (%2) of this cable keep it"),
    QT_TRANSLATE_NOOP("Phrases", "%1 of %2 = %3 against %4, without it %5"),
    QT_TRANSLATE_NOOP("Phrases", "%1 against %2 of %3 = %4"),
    QT_TRANSLATE_NOOP("Phrases", "%1 against %2"),
    // Cautions.
    QT_TRANSLATE_NOOP("Phrases",
                      "Metal kettle, stand and pump must be earthed through the supply. Never cut "
                      "an earth pin or use an adaptor without one."),
    QT_TRANSLATE_NOOP("Phrases",
                      "An element that was stored damp may leak and trip the protection: have it "
                      "dried or replaced, never bypass the protection."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Dry firing: %1. In air an element's sheath goes to %2 in seconds; switch "
                      "off before draining or transferring."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Head-space at the fullest moment: %1. Reduce power before the boil and at "
                      "additions."),
    QT_TRANSLATE_NOOP("Phrases",
                      "A flexible cord or extension has its own, lower limit; for a time only, "
                      "fully uncoiled and uncovered, with an earth wire. If a plug or cord is more "
                      "than warm, switch off."),
    QT_TRANSLATE_NOOP("Phrases",
                      "A full kettle weighs up to %1, more than the %2 that one person lifts under "
                      "ideal conditions (NIOSH). Do not carry hot liquid: let it run, pump or "
                      "siphon."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Stay with a heating kettle; do not leave it on a timer or a remote start "
                      "without someone present who can switch it off."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Wort is between %1 and %2 for %3 of this day. Food service passes from %4 "
                      "to %5 within 2 h and to %6 within 6 h (FDA Food Code 3-501.14); always "
                      "boil after a luke-warm hold, and do not count on the boil to undo many warm "
                      "hours."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Do not seal unfermented wort for storage at room temperature: botulism "
                      "spores survive boiling. Pitch promptly."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Planning estimate only. Electrical rules, adopted editions and inspections "
                      "differ by place; local codes decide. Have a licensed electrician check the "
                      "circuit, protection, plug, cord and enclosure before use, and follow the "
                      "equipment maker's instructions."),
    QT_TRANSLATE_NOOP("Phrases",
                      "This day releases up to %1 of water vapour. Extract it outdoors and let "
                      "replacement air in. Check that fuel-burning appliances do not draw back."),
    QT_TRANSLATE_NOOP("Phrases",
                      "An element of this size may leak up to %1 by its standard, and a %2 may "
                      "trip from %3: expect trips while it is damp. Have it dried or replaced; "
                      "never take the protection away or bypass it."),
    QT_TRANSLATE_NOOP("Phrases",
                      "%1: %2 That may be so here: %3. An inspector's or electrician's reading "
                      "decides; the stricter result is shown."),
    QT_TRANSLATE_NOOP("Phrases",
                      "A load is continuous unless it is shown not to persist for more than 1 h "
                      "in any 2 h (up to 225 A); without a marking for 100 % it may then take "
                      "80 % of the circuit."),
    QT_TRANSLATE_NOOP("Phrases",
                      "A load whose maximum current is expected to continue for 3 h or more; "
                      "circuit and conductor then need 125 % of it."),
    QT_TRANSLATE_NOOP("Phrases",
                      "Below its rated voltage an element gives less: %1. All times here count "
                      "with that. Do not fit a larger one to make up for it without having the "
                      "circuit checked again."),
    QT_TRANSLATE_NOOP("Phrases", "%1: %2 of its element's rating, %3 on %4"),
    QT_TRANSLATE_NOOP("Phrases", "%1: %2 in place of %3"),
    QT_TRANSLATE_NOOP("Phrases",
                      "%1, the hottest of this mash. %2. (After Moritz & Henriques 1947, tabled "
                      "up to %3.) Children and older people burn faster, and wort clings. Keep "
                      "children and pets at least %4 away."),
    QT_TRANSLATE_NOOP("Phrases",
                      "%1. (After Moritz & Henriques 1947, tabled up to %2.) Children and older "
                      "people burn faster, and wort clings. Keep children and pets at least %3 "
                      "away."),
    QT_TRANSLATE_NOOP("Phrases",
                      "At %1 bare skin burns to the second degree in %2 and to the third in %3 "
                      "at the most"),
    QT_TRANSLATE_NOOP("Phrases",
                      "At %1 bare skin burns to the second degree in %2 and to the third in %3"),
    QT_TRANSLATE_NOOP("Phrases",
                      "Vents, drains and lids stay open while it heats: at %1 trapped steam "
                      "would already push on a lid of %2 like a weight of %3."),
    QT_TRANSLATE_NOOP("Phrases",
                      "The plan says nothing of cooling, and no hours after the boil are "
                      "counted. Left in the kettle to cool by itself, lid as in the mash, the "
                      "slowest (%1) would take about %2 to come down to %3 and %4 more to %5 "
                      "(one time constant of %6, an estimate). Food service allows 2 h for "
                      "that, a time constant of %7 here, and 6 h to %8, which air of this room "
                      "never gives (FDA Food Code 3-501.14). What doubles every 20 min (USDA) "
                      "is %9 times as much after 2 h. Cool quickly and pitch promptly."),
    QT_TRANSLATE_NOOP("Phrases",
                      "The plan says nothing of cooling, and no hours after the boil are "
                      "counted. Left in the kettle to cool by itself, lid as in the mash, the "
                      "slowest (%1) would take about %2 to come down to %3 and %4 more to %5 "
                      "(one time constant of %6, an estimate). Food service allows 2 h for "
                      "that, a time constant of %7 here, and 6 h to %8 (FDA Food Code "
                      "3-501.14). What doubles every 20 min (USDA) is %9 times as much after 2 "
                      "h. Cool quickly and pitch promptly."),
    QT_TRANSLATE_NOOP("Phrases",
                      "The plan says nothing of cooling, and no hours after the boil are "
                      "counted. Left in the kettle to cool by itself, lid as in the mash, the "
                      "slowest (%1) would never come down to %2 in this room (one time constant "
                      "of %3, an estimate). Food service allows 2 h for that, and 6 h to %4, "
                      "which air of this room never gives (FDA Food Code 3-501.14). What "
                      "doubles every 20 min (USDA) is %5 times as much after 2 h. Cool quickly "
                      "and pitch promptly."),
    QT_TRANSLATE_NOOP("Phrases",
                      "%1 needs %2 to cover its element and has %3 at the least with it on"),
    QT_TRANSLATE_NOOP("Phrases", "%1 keeps %2"),
    QT_TRANSLATE_NOOP("Phrases", "%1 carries the load"),
    QT_TRANSLATE_NOOP("Phrases", "outlet %1"),
};

// "%1 against %2": the texts between the places.
struct Template {
  const char* english;
  QStringList between;
};

const QVector<Template>& templates() {
  static const QVector<Template> kAll = [] {
    QVector<Template> all;
    for (const char* english : kPhrases) {
      QStringList between{QString()};
      const QString text = QString::fromUtf8(english);
      for (qsizetype i = 0; i < text.size(); ++i) {
        if (text[i] == u'%' && i + 1 < text.size() && text[i + 1].isDigit()) {
          between.push_back({});
          ++i;
        } else {
          between.back() += text[i];
        }
      }
      if (between.size() > 1) all.push_back({english, between});
    }
    return all;
  }();
  return kAll;
}

const QHash<QString, const char*>& wholeTexts() {
  static const QHash<QString, const char*> kAll = [] {
    QHash<QString, const char*> all;
    for (const char* english : kPhrases) all.insert(QString::fromUtf8(english), english);
    return all;
  }();
  return kAll;
}

// What stands in the places, each as short as can be; nothing where the text is another one.
std::optional<QStringList> placesIn(const QString& text, const QStringList& between) {
  if (!text.startsWith(between.front()) || !text.endsWith(between.back())) return std::nullopt;
  QStringList places;
  qsizetype at = between.front().size();
  for (qsizetype i = 1; i < between.size(); ++i) {
    const bool last = i + 1 == between.size();
    const qsizetype next =
        last ? text.size() - between[i].size() : text.indexOf(between[i], at + 1);
    if (next <= at) return std::nullopt;
    places.push_back(text.mid(at, next - at));
    // Sentences in a row are taken one by one; only a colon may open a list.
    if (places.back().contains(QLatin1String("; ")) &&
        !between[i - 1].endsWith(QLatin1String(": "))) {
      return std::nullopt;
    }
    at = next + between[i].size();
  }
  return places;
}

QString inParts(const QString& text, const QString& separator, const QLocale& locale) {
  QStringList parts;
  for (const QString& part : text.split(separator)) parts.push_back(phrase(part, locale));
  return parts.join(separator);
}

// Numbers as the locale writes them.
QString withSign(const QString& text, const QLocale& locale) {
  const bool comma = locale.decimalPoint() == QLatin1String(",");
  const rigs::Language& language = telling::languageOf(comma ? "de" : "en");
  return QString::fromStdString(rigs::withDecimalSign(text.toStdString(), language));
}

}  // namespace

QString phrase(std::string_view english, const QLocale& locale) {
  return phrase(QString::fromUtf8(english.data(), static_cast<qsizetype>(english.size())), locale);
}

QString phrase(const QString& text, const QLocale& locale) {
  if (const char* whole = wholeTexts().value(text))
    return QCoreApplication::translate("Phrases", whole);
  for (const Template& one : templates()) {
    const auto places = placesIn(text, one.between);
    if (!places) continue;
    QString result = QCoreApplication::translate("Phrases", one.english);
    for (qsizetype i = places->size(); i-- > 0;) {
      result.replace(QStringLiteral("%%1").arg(i + 1), phrase(places->at(i), locale));
    }
    return result;
  }
  if (text.contains(QLatin1String("; "))) return inParts(text, QStringLiteral("; "), locale);
  if (!text.isEmpty() && text[0].isDigit()) return withSign(text, locale);
  return text;
}

}  // namespace gui
