// SPDX-License-Identifier: GPL-3.0-or-later
// What is seen, as a file for others: the picture with its sentence and its cautions, or the
// numbers behind it.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QSize>
#include <filesystem>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/exports/number_exports.hpp"
#include "gui/window/questions/shown_answer.hpp"

class QPainter;

namespace gui {

// Title, sentence, pictures with their legends, cautions. A sheet too low for its text grows
// downwards; this is the height a given width needs to show each picture well.
qreal sheetHeight(const ShownAnswer& answer, qreal width, const ChartLook& look);
void paintSheet(QPainter& painter, const QRectF& area, const ShownAnswer& answer,
                const ChartLook& look);

inline constexpr int kSheetWidth = 1200;  // logical pixels
QImage answerImage(const ShownAnswer& answer, int width, const ChartLook& look,
                   qreal sharpness = 2.0);
QByteArray answerSvg(const ShownAnswer& answer, int width, const ChartLook& look);

// Format by the file's ending. Throws rigs::FileError, also for an unknown ending.
void exportAnswer(const std::filesystem::path& path, const SeenAnswer& seen, const ChartLook& look);

}  // namespace gui
