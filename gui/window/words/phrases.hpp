// SPDX-License-Identifier: GPL-3.0-or-later
// Texts that rules of circuits, their verdicts and the safety pages give in English, in the
// reader's language.
#pragma once

#include <QLocale>
#include <QString>
#include <string_view>

namespace gui {

// The same in the reader's language and with the locale's decimal sign; text that is unknown here,
// such as a clause or a rig's name, stays as it is.
QString phrase(std::string_view english, const QLocale& locale = QLocale());
QString phrase(const QString& english, const QLocale& locale = QLocale());

}  // namespace gui
