// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/words/told_problem.hpp"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>
#include <QStringList>
#include <QVector>
#include <optional>

#include "gui/window/words/catalogue_words.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/phrases.hpp"
#include "gui/window/words/problem_phrases.hpp"
#include "rigs/circuits/rules.hpp"
#include "rigs/quantities/quantity_text.hpp"

namespace gui {
namespace {

QString textOf(std::string_view utf8) {
  return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

// "%1 is missing": the texts between the places.
struct Pattern {
  const char* english;
  QStringList between;
};

const QVector<Pattern>& patterns() {
  static const QVector<Pattern> kAll = [] {
    static const QRegularExpression kPlace(QStringLiteral("%\\d"));
    QVector<Pattern> all;
    for (const char* english : problemPhrases())
      all.push_back({english, QString::fromUtf8(english).split(kPlace)});
    return all;
  }();
  return kAll;
}

// Names that stand in sentences without quotation marks, and the units offered for a kind.
const QStringList& bareNames() {
  static const QStringList kAll = [] {
    QStringList all;
    for (const rigs::CircuitRules& rules : rigs::bundledRules()) {
      all << QString::fromStdString(rules.region) << QString::fromStdString(rules.code);
    }
    for (int kind = 0; kind <= static_cast<int>(rigs::QuantityKind::VolumeFlow); ++kind)
      all << textOf(rigs::usualUnits(static_cast<rigs::QuantityKind>(kind)));
    return all;
  }();
  return kAll;
}

// What no language changes: something quoted, an example, a figure with its unit.
bool isAsWritten(const QString& text) {
  static const QRegularExpression kQuoted(QStringLiteral("\"[^\"]*\""));
  static const QRegularExpression kLetter(QStringLiteral("\\p{L}"));
  static const QRegularExpression kFigures(QStringLiteral("^[-+]?[\\d.][^\"]*$"),
                                           QRegularExpression::UseUnicodePropertiesOption);
  static const QRegularExpression kSentence(
      QStringLiteral("\\b(a|and|are|is|of|or|than|the|to|with)\\b|[;:]$|; "));
  if (text.startsWith(u'/')) return !text.contains(u' ');
  if (text.startsWith(u'"') || text.startsWith(u'{') || text.startsWith(u'['))
    return !QString(text).remove(kQuoted).contains(kLetter);
  return kFigures.match(text).hasMatch() && !kSentence.match(text).hasMatch();
}

// One sentence is told: parts of it come back many times while the places are looked for.
class Teller {
 public:
  std::optional<QString> tell(const QString& text) {
    if (text.isEmpty()) return std::nullopt;
    const auto known = told_.constFind(text);
    if (known != told_.constEnd()) return *known;
    if (told_.size() >= kMostParts) return std::nullopt;
    const std::optional<QString> result = find(text);
    told_.insert(text, result);
    return result;
  }

 private:
  // Many times what a sentence of ours has; a long path full of our words has more.
  static constexpr qsizetype kMostParts = 2000;

  std::optional<QString> find(const QString& text) {
    static const QRegularExpression kOneQuote(QStringLiteral("^\"[^\"]*\"$"));
    if (kOneQuote.match(text).hasMatch()) return text;
    for (const Pattern& one : patterns()) {
      QStringList places;
      if (!text.startsWith(one.between.front()) || !text.endsWith(one.between.back())) continue;
      if (!fill(text, one.between, 1, one.between.front().size(), places)) continue;
      QString result = QCoreApplication::translate("Problem", one.english);
      return filled(result, places);
    }
    if (isCatalogueWord(text)) return catalogueWord(text);
    if (bareNames().contains(text)) return phrase(text);
    if (isAsWritten(text)) return text.contains(u'"') ? text : phrase(text);
    return std::nullopt;
  }

  // The places from the `i`th on; each must be known itself. Tries every way to part them.
  bool fill(const QString& text, const QStringList& between, qsizetype i, qsizetype at,
            QStringList& places) {
    if (i == between.size()) return at == text.size();
    const QString& next = between[i];
    const bool last = i + 1 == between.size();
    qsizetype end = last ? text.size() - next.size() : text.indexOf(next, at + 1);
    while (end > at && told_.size() < kMostParts) {
      if (const auto place = tell(text.mid(at, end - at))) {
        places.push_back(*place);
        if (fill(text, between, i + 1, end + next.size(), places)) return true;
        places.pop_back();
      }
      if (last) return false;
      end = text.indexOf(next, end + 1);
    }
    return false;
  }

  // All at once: what is put in may hold a "%1" of its own.
  static QString filled(const QString& pattern, const QStringList& places) {
    QString result;
    for (qsizetype i = 0; i < pattern.size(); ++i) {
      const int place = pattern[i] == u'%' && i + 1 < pattern.size() && pattern[i + 1].isDigit()
                            ? pattern[i + 1].digitValue()
                            : 0;
      if (place < 1 || place > places.size()) {
        result += pattern[i];
        continue;
      }
      result += places[place - 1];
      ++i;
    }
    return result;
  }

  QHash<QString, std::optional<QString>> told_;
};

}  // namespace

QString toldProblem(std::string_view english) {
  const QString text = textOf(english);
  if (spokenLanguage() == languages().front()) return text;
  return Teller().tell(text).value_or(text);
}

}  // namespace gui
