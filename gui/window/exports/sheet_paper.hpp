// SPDX-License-Identifier: GPL-3.0-or-later
// A sheet to brew by on one page of paper, and as a file.
#pragma once

#include <QByteArray>
#include <QPagedPaintDevice>
#include <QRectF>
#include <filesystem>
#include <functional>

#include "gui/telling/sheet.hpp"
#include "rigs/words/language.hpp"

namespace gui {

// The same words as everywhere. A long day is set smaller until it fits, down to kSmallestSheet of
// its size; beyond that it goes on over further pages.
bool paintSheetPaper(QPagedPaintDevice& device, const telling::Sheet& sheet,
                     const rigs::Reader& reader);
inline constexpr double kSmallestSheet = 0.7;
// The same within a page of somebody else's, in the painter's points; `newPage` goes on to the next
// one, which is as large, and says whether there is one.
bool drawSheetPaper(QPainter& painter, QRectF page, const telling::Sheet& sheet,
                    const rigs::Reader& reader, const std::function<bool()>& newPage);

// By the file's ending: .html, else PDF. Throws rigs::FileError.
void writeSheet(const std::filesystem::path& path, const telling::Sheet& sheet,
                const rigs::Reader& reader);

}  // namespace gui
