// SPDX-License-Identifier: GPL-3.0-or-later
// A PDF document of this program's: its paper, its mark and its date.
#pragma once

#include <QByteArray>
#include <QDate>
#include <QString>
#include <functional>
#include <string_view>

#include "rigs/quantities/unit_system.hpp"

class QPagedPaintDevice;

namespace gui {

struct PdfAbout {
  QString title;
  std::string_view mark;   // by which a later document knows that it may replace this one
  rigs::UnitSystem units;  // A4, or letter size for US units
  QByteArray plan = {};    // attached, where there is one
};
// The day that is printed on them: today, or that of SOURCE_DATE_EPOCH.
QDate dayOfDocuments();
// What `paint` draws; empty where it says that not everything could be. The same bytes at any time
// for who sets SOURCE_DATE_EPOCH.
QByteArray pdfOf(const PdfAbout& about, const std::function<bool(QPagedPaintDevice&)>& paint);

}  // namespace gui
