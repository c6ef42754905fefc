// SPDX-License-Identifier: GPL-3.0-or-later
// The languages there are texts for, and which one is spoken.
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

namespace gui {

// Codes, "en" first.
QStringList languages();
// In the language itself: "Deutsch".
QString nameOfLanguage(const QString& code);
// The first of the person's languages that there are texts for; else "en".
QString systemLanguage();

// Texts, QLocale's default and Qt's own dialogs, from now on; every widget gets a LanguageChange.
// An unknown code is English. Needs the application object.
void speak(const QString& code);
QString spokenLanguage();

// English keeps the decimal point whatever the person's locale: texts of rigs/ and files do too.
// German has the comma. Neither groups digits.
QLocale localeOf(const QString& code);

}  // namespace gui
