// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/exports/pdf.hpp"

#include <QBuffer>
#include <QDateTime>
#include <QHashFunctions>
#include <QMarginsF>
#include <QPageSize>
#include <QPdfWriter>
#include <optional>
#include <string>

#include "version.hpp"

namespace gui {
namespace {

constexpr int kDotsPerInch = 1200;  // of coordinates; everything stays vectors

// Who sets SOURCE_DATE_EPOCH (seconds since 1970, reproducible-builds.org) wants the same bytes at
// any time. The writer takes the clock's and cannot be told another; digits for digits, nothing
// moves to another place in the file, as its table of places demands.
std::optional<QDateTime> dateAsked() {
  bool isSet = false;
  const qint64 seconds = qEnvironmentVariable("SOURCE_DATE_EPOCH").toLongLong(&isSet);
  const QDateTime date = QDateTime::fromSecsSinceEpoch(seconds, Qt::UTC);
  if (!isSet || date.date().year() < 1970 || date.date().year() > 9999) return std::nullopt;
  return date;
}

QByteArray withDate(QByteArray pdf, const QDateTime& date) {
  static const QByteArray kBefore = "/CreationDate (D:";
  const qsizetype at = pdf.indexOf(kBefore);
  if (at < 0) return pdf;
  const qsizetype begin = at + kBefore.size();
  const qsizetype length = pdf.indexOf(')', begin) - begin;
  QByteArray stamp = date.toString(QStringLiteral("yyyyMMddHHmmss")).toLatin1();
  stamp += length == stamp.size() + 1 ? "Z" : "+00'00'";
  return stamp.size() == length ? pdf.replace(begin, length, stamp) : pdf;
}

}  // namespace

QDate dayOfDocuments() {
  const std::optional<QDateTime> asked = dateAsked();
  return asked ? asked->date() : QDate::currentDate();
}

QByteArray pdfOf(const PdfAbout& about, const std::function<bool(QPagedPaintDevice&)>& paint) {
  const std::optional<QDateTime> date = dateAsked();
  // The writer puts fonts in the order of a hash, which is another one in each process.
  if (date) QHashSeed::setDeterministicGlobalSeed();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kDotsPerInch);
  writer.setTitle(about.title);
  writer.setCreator(QString::fromUtf8(std::string(about.mark).c_str()) + QLatin1String(kVersion));
  const bool us = about.units.base() == rigs::UnitSystem::UsCustomary;
  writer.setPageSize(QPageSize(us ? QPageSize::Letter : QPageSize::A4));
  writer.setPageMargins(QMarginsF());
  if (!about.plan.isEmpty()) {
    writer.addFileAttachment(QStringLiteral("plan.json"), about.plan,
                             QStringLiteral("application/json"));
  }
  if (!paint(writer)) return {};
  return date ? withDate(std::move(bytes), *date) : bytes;
}

}  // namespace gui
