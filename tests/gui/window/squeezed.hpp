// SPDX-License-Identifier: GPL-3.0-or-later
// Text out of a PDF, to be compared with what was put in.
#pragma once

#include <QRegularExpression>
#include <QString>

namespace test_support {

// Without white space and ligatures: lines end where the paper does, and fonts join "ff".
inline QString squeezed(const QString& text) {
  static const QRegularExpression kSpace(QStringLiteral("\\s"));
  return text.normalized(QString::NormalizationForm_KC).remove(kSpace);
}

}  // namespace test_support
