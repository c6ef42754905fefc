// SPDX-License-Identifier: GPL-3.0-or-later
// What is seen, as a file for others: the picture with its sentence and its cautions, or the
// numbers behind it.
#pragma once

#include <QByteArray>
#include <QImage>
#include <QSize>
#include <filesystem>
#include <string>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/questions/question.hpp"

class QPainter;

namespace gui {

// Title, sentence, pictures with their legends, cautions. A sheet too low for its text grows
// downwards; this is the height a given width needs to show each picture well.
qreal sheetHeight(const Answer& answer, qreal width, const ChartLook& look);
void paintSheet(QPainter& painter, const QRectF& area, const Answer& answer, const ChartLook& look);

inline constexpr int kSheetWidth = 1200;  // logical pixels
QImage answerImage(const Answer& answer, int width, const ChartLook& look, qreal sharpness = 2.0);
QByteArray answerSvg(const Answer& answer, int width, const ChartLook& look);

// The table, then every line of every picture as "picture,line,x,y", then the cautions. Decimal
// points whatever the locale; RFC 4180, lines ended by LF, UTF-8.
QByteArray answerCsv(const Answer& answer);
// "seen": title, sentence, pictures and table in the reader's units and language; "result":
// everything in SI, as the terminal's --json writes it.
QByteArray answerJson(Question question, const Answer& answer, const Solution& solution);

// .png, .svg, .csv, .json, in any case.
bool isExportEnding(const std::filesystem::path& path);

// Format by the file's ending. Throws rigs::FileError, also for an unknown ending.
void exportAnswer(const std::filesystem::path& path, Question question, const Answer& answer,
                  const Solution& solution, const ChartLook& look);

}  // namespace gui
