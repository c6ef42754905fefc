// SPDX-License-Identifier: GPL-3.0-or-later
// Which part of the plane a picture shows, and how a value in it is read.
#pragma once

#include <QLocale>
#include <QString>

#include "gui/telling/picture.hpp"
#include "gui/window/charts/curves.hpp"

namespace gui {

// All data, rounded outwards where nothing else is asked.
ChartWindow fullWindow(const telling::Picture& picture);
// As wide as `window`, as high as what lies there takes, rounded outwards; from zero where the
// picture is.
ChartWindow fittedUpward(const telling::Picture& picture, const ChartWindow& window);
// One value along an axis as text, finer than a tick.
QString readingText(double value, double range, bool clock, const QLocale& locale);

}  // namespace gui
