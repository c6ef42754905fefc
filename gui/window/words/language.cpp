// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/words/language.hpp"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include "gui/telling/translations.hpp"

namespace gui {
namespace {

QString& spoken() {
  static QString code = QStringLiteral("en");
  return code;
}

// The table that the terminal reads, too.
class OurTexts final : public QTranslator {
 public:
  bool isEmpty() const override { return false; }  // else nobody is asked
  QString translate(const char* context, const char* english, const char*, int) const override {
    const auto text = telling::languageOf(spoken().toStdString()).translation(context, english);
    return text ? QString::fromUtf8(text->data(), static_cast<qsizetype>(text->size())) : QString();
  }
};

// Replaced as a pair: our texts, and those of Qt's own dialogs where they are installed.
struct Translators {
  OurTexts ours;
  QTranslator ofQt;
};

Translators& translators() {
  static Translators both;
  return both;
}

}  // namespace

QStringList languages() {
  QStringList all;
  for (const std::string& code : telling::languageCodes()) all += QString::fromStdString(code);
  return all;
}

QString nameOfLanguage(const QString& code) {
  return code == QLatin1String("de") ? QStringLiteral("Deutsch") : QStringLiteral("English");
}

QString systemLanguage() {
  const QStringList wanted = QLocale::system().uiLanguages();
  for (const QString& one : wanted) {
    const QString code = one.section(u'-', 0, 0);
    if (languages().contains(code)) return code;
  }
  return languages().front();
}

QLocale localeOf(const QString& code) {
  QLocale locale =
      code == QLatin1String("de") ? QLocale(QLocale::German, QLocale::Germany) : QLocale::c();
  locale.setNumberOptions(QLocale::OmitGroupSeparator);
  return locale;
}

void speak(const QString& code) {
  const QString chosen = languages().contains(code) ? code : languages().front();
  QCoreApplication::removeTranslator(&translators().ours);
  QCoreApplication::removeTranslator(&translators().ofQt);
  spoken() = chosen;
  QLocale::setDefault(localeOf(chosen));
  if (chosen != languages().front() &&
      translators().ofQt.load(QStringLiteral("qtbase_") + chosen,
                              QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
    QCoreApplication::installTranslator(&translators().ofQt);
  }
  QCoreApplication::installTranslator(&translators().ours);
}

QString spokenLanguage() { return spoken(); }

}  // namespace gui
