// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/bare_number.hpp"

#include <QRegularExpression>

namespace gui {
namespace {

// As the parser of quantities reads numbers: "3000", "5.5", "5,5", "1e3", "1/2", "1 1/2".
const QString kNumber =
    QStringLiteral(R"((?:[-+−]?(?:\d+ +)?\d+/\d+|[-+−]?(?:\d+[.,]?\d*|[.,]\d+)(?:[eE][-+]?\d+)?))");

}  // namespace

QString withUnitOf(const QString& shown, const QString& typed) {
  static const QRegularExpression kBare(QStringLiteral("^\\s*(%1)\\s*$").arg(kNumber));
  // One number, and a unit before it, behind it or around it ("$0.17/kWh").
  static const QRegularExpression kWithUnit(QStringLiteral("^(\\D*?)(%1)(\\D\\D*)?$").arg(kNumber));
  const QRegularExpressionMatch bare = kBare.match(typed);
  if (!bare.hasMatch()) return typed;
  // Exponents are no second number: "ft2", "W/(m2 K)".
  static const QRegularExpression kPower(QStringLiteral("(?<=[A-Za-z])[23](?!\\d)"));
  QString letters = shown;
  letters.replace(kPower, QStringLiteral("²"));
  const QRegularExpressionMatch seen = kWithUnit.match(letters);
  if (!seen.hasMatch()) return typed;
  const qsizetype begin = seen.capturedStart(2);
  const qsizetype end = seen.capturedEnd(2);
  const QString before = shown.left(begin);
  const QString behind = shown.mid(end);
  if (QString(before + behind).trimmed().isEmpty()) return typed;
  return before + bare.captured(1) + behind;
}

}  // namespace gui
