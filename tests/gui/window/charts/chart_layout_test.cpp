// SPDX-License-Identifier: GPL-3.0-or-later
// Layout facts of every picture at every size: nothing overlaps, nothing is cut, nothing is
// missing from the legend, everything is dark or light enough.
#include "gui/window/charts/chart_layouter.hpp"
#include "gui/window/charts/rig_swatch.hpp"

#include <gtest/gtest.h>

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <array>

#include "gui/telling/curve.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::ChartLayout;
using gui::telling::Picture;
using gui::telling::Question;

gui::ChartLook look(bool dark, int pixels) {
  QPalette palette;
  palette.setColor(QPalette::Window, dark ? QColor(0x1c, 0x1f, 0x23) : QColor(Qt::white));
  palette.setColor(QPalette::WindowText,
                   dark ? QColor(0xe6, 0xe8, 0xea) : QColor(0x1a, 0x1d, 0x21));
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(pixels);
  return gui::lookOf(palette, font, QLocale(QLocale::German));
}

const std::string kOverload = "▲\u00a0overload";

struct Case {
  std::string name;
  Picture picture;
};
std::vector<Case> allPictures() {
  std::vector<Case> cases;
  for (const Question question : gui::telling::allQuestions()) {
    for (const bool other : {false, true}) {
      gui::telling::QuestionView view;
      view.rig = 1;
      view.asBars = other;
      view.overThickness = !other;
      view.savings = other;
      view.asWritten = !other;
      for (const rigs::UnitSystem units : {rigs::UnitSystem::SI, rigs::UnitSystem::UsCustomary}) {
        for (const Picture& picture : test_support::askDemo(question, view, units).pictures) {
          const std::string name(gui::telling::identifierOf(question));
          cases.push_back({name + ' ' + picture.title, picture});
          if (units != rigs::UnitSystem::SI) continue;
          cases.push_back({name + " overloaded " + picture.title, picture});
          cases.back().picture.rigMarks = {"", kOverload, kOverload};
        }
      }
    }
  }
  return cases;
}

QVector<ChartLayout::Label> everyLabel(const ChartLayout& layout) {
  QVector<ChartLayout::Label> all;
  for (const auto* labels :
       {&layout.xTicks, &layout.yTicks, &layout.lineEnds, &layout.marks, &layout.bands,
        &layout.limits, &layout.legend, &layout.titles, &layout.parts, &layout.barNames}) {
    for (const auto& label : *labels) {
      if (!label.box.isEmpty()) all.push_back(label);
    }
  }
  return all;
}

constexpr std::array<std::pair<int, int>, 4> kSizes{
    {{620, 330}, {840, 420}, {1240, 500}, {2500, 1000}}};

TEST(ChartLayout, KeepsLabelsApart) {
  for (const Case& one : allPictures()) {
    for (const auto& [width, height] : kSizes) {
      for (const int pixels : {12, 16}) {
        SCOPED_TRACE(one.name + " " + std::to_string(width) + " " + std::to_string(pixels));
        const auto labels =
            everyLabel(gui::layOut(one.picture, QSizeF(width, height), look(false, pixels)));
        for (qsizetype i = 0; i < labels.size(); ++i) {
          for (qsizetype j = i + 1; j < labels.size(); ++j) {
            EXPECT_FALSE(labels[i]
                             .box.adjusted(0.5, 1, -0.5, -1)
                             .intersects(labels[j].box.adjusted(0.5, 1, -0.5, -1)))
                << labels[i].text.toStdString() << " / " << labels[j].text.toStdString();
          }
        }
      }
    }
  }
}

// As the report sets them, in little space.
TEST(ChartLayout, KeepsTitlesAndLegendApartWhereTheyShareALine) {
  gui::ChartLook usual = look(false, 8);
  gui::ChartLook dense = usual;
  dense.dense = true;
  int saved = 0;
  for (const Case& one : allPictures()) {
    SCOPED_TRACE(one.name);
    constexpr int kWidth = 566;
    const int around = gui::aroundPlot(one.picture, kWidth, dense);
    EXPECT_LE(around, gui::aroundPlot(one.picture, kWidth, usual));
    if (around < gui::aroundPlot(one.picture, kWidth, usual)) ++saved;
    const QSizeF size(kWidth, around + 86.0);
    const ChartLayout layout = gui::layOut(one.picture, size, dense);
    const auto labels = layout.titles + layout.legend + layout.xTicks;
    for (qsizetype i = 0; i < labels.size(); ++i) {
      EXPECT_TRUE(QRectF(QPointF(), size).contains(labels[i].box)) << labels[i].text.toStdString();
      for (qsizetype j = i + 1; j < labels.size(); ++j)
        EXPECT_FALSE(labels[i].box.intersects(labels[j].box.adjusted(0.5, 1, -0.5, -1)))
            << labels[i].text.toStdString() << " / " << labels[j].text.toStdString();
    }
    dense.legend = false;
    EXPECT_TRUE(gui::layOut(one.picture, size, dense).legend.isEmpty());
    dense.legend = true;
  }
  EXPECT_GT(saved, 20);
}

TEST(ChartLayout, CutsNoLabel) {
  for (const Case& one : allPictures()) {
    for (const auto& [width, height] : kSizes) {
      SCOPED_TRACE(one.name + " " + std::to_string(width));
      const ChartLayout layout = gui::layOut(one.picture, QSizeF(width, height), look(false, 13));
      EXPECT_GT(layout.plot.height(), 0.4 * height);
      EXPECT_GT(layout.plot.width(), 0.7 * width);
      for (const auto& label : everyLabel(layout)) {
        SCOPED_TRACE(label.text.toStdString());
        EXPECT_TRUE(QRectF(0, 0, width, height).contains(label.box));
      }
      for (const auto* labels :
           {&layout.xTicks, &layout.yTicks, &layout.lineEnds, &layout.limits, &layout.barNames}) {
        for (const auto& label : *labels) {
          EXPECT_GE(label.box.width(),
                    QFontMetricsF(layout.font).horizontalAdvance(label.text) - 0.01)
              << label.text.toStdString();
        }
      }
    }
  }
}

TEST(ChartLayout, HasTicksOnBothAxes) {
  for (const Case& one : allPictures()) {
    SCOPED_TRACE(one.name);
    const ChartLayout layout = gui::layOut(one.picture, {840, 420}, look(false, 13));
    EXPECT_GE(layout.xTicks.size(), 3);
    if (one.picture.kind == Picture::Kind::StackedBars) continue;
    EXPECT_GE(layout.yTicks.size(), 3);
  }
}

TEST(ChartLayout, NamesEverythingInTheLegend) {
  for (const Case& one : allPictures()) {
    SCOPED_TRACE(one.name);
    const ChartLayout layout = gui::layOut(one.picture, {840, 420}, look(false, 13));
    QStringList legend;
    for (const auto& label : layout.legend) {
      legend += label.text;
      EXPECT_GT(label.sample.width(), 0.0);
    }
    for (const gui::telling::PictureLine& line : one.picture.lines) {
      if (line.limit) continue;  // named at its end, see below
      EXPECT_TRUE(legend.join(QLatin1Char('\n')).contains(QString::fromStdString(line.name)))
          << line.name;
    }
    // A single part is what the axis says.
    EXPECT_TRUE(one.picture.partNames.size() != 1 || !one.picture.xTitle.empty());
    for (const std::string& part : one.picture.partNames) {
      if (one.picture.partNames.size() == 1) continue;
      EXPECT_TRUE(legend.join(QLatin1Char('\n')).contains(QString::fromStdString(part))) << part;
    }
    for (const gui::telling::PictureBand& band : one.picture.bands) {
      EXPECT_TRUE(legend.join(QLatin1Char('\n')).contains(QString::fromStdString(band.source)));
    }
  }
}

// In the accent, right beside its line and within the frame, whatever else stands there.
TEST(ChartLayout, NamesEveryLimitAlongItsLine) {
  int limits = 0;
  for (const Case& one : allPictures()) {
    for (const auto& [width, height] : kSizes) {
      SCOPED_TRACE(one.name + " " + std::to_string(width));
      const ChartLayout layout = gui::layOut(one.picture, QSizeF(width, height), look(false, 13));
      for (const gui::telling::PictureLine& line : one.picture.lines) {
        if (!line.limit || line.points.empty()) continue;
        ++limits;
        const QString name = QString::fromStdString(line.name);
        const auto label =
            std::find_if(layout.titles.begin(), layout.titles.end(),
                         [&](const ChartLayout::Label& title) { return title.text == name; });
        ASSERT_NE(label, layout.titles.end()) << line.name;
        EXPECT_EQ(label->index, 3);
        EXPECT_TRUE(layout.plot.contains(label->box));
        const double at = layout.at({0.0, line.points.back().y}).y();
        EXPECT_LT(std::min(std::abs(label->box.bottom() - at), std::abs(label->box.top() - at)),
                  4.0);
        for (const auto& entry : layout.legend) EXPECT_NE(entry.text, name);
      }
    }
  }
  EXPECT_GT(limits, 20);
}

TEST(ChartLayout, NamesEveryLineAtItsEnd) {
  for (const Case& one : allPictures()) {
    if (one.picture.kind != Picture::Kind::Lines) continue;
    SCOPED_TRACE(one.name);
    const ChartLayout layout = gui::layOut(one.picture, {840, 420}, look(false, 13));
    qsizetype drawn = 0;
    for (const gui::telling::PictureLine& line : one.picture.lines) {
      // A rig's; a level is named in the legend.
      if (!line.faint && line.rig >= 0 && !line.points.empty()) ++drawn;
    }
    EXPECT_EQ(layout.lineEnds.size(), drawn);
  }
}

// In the word of the legend or of its bar, and in the shape at the end of its line.
TEST(ChartLayout, MarksARigWhereverItNamesIt) {
  for (const Case& one : allPictures()) {
    SCOPED_TRACE(one.name);
    const bool marked = !one.picture.rigMarks.empty();
    const ChartLayout layout = gui::layOut(one.picture, {840, 420}, look(false, 13));
    for (const auto* labels : {&layout.legend, &layout.barNames}) {
      for (const auto& label : *labels) {
        const bool ofTwo = label.text.startsWith(QStringLiteral("(b) New element, kitchen")) ||
                           label.text.startsWith(QStringLiteral("(c) New element, jacket"));
        EXPECT_EQ(label.text.contains(QString::fromStdString('[' + kOverload + ']')),
                  marked && ofTwo)
            << label.text.toStdString();
      }
    }
    for (const auto& label : layout.lineEnds) {
      EXPECT_EQ(label.text.endsWith(QChar(0x25B2)),
                marked && (label.index == 1 || label.index == 2))
          << label.text.toStdString();
    }
  }
}

// WCAG 2.1: 4.5 for text, 3 for graphics.
TEST(ChartLook, IsReadInLightAndDark) {
  for (const bool dark : {false, true}) {
    const gui::ChartLook one = look(dark, 13);
    EXPECT_EQ(one.dark, dark);
    EXPECT_GE(gui::contrastRatio(one.ink, one.paper), 4.5);
    EXPECT_GE(gui::contrastRatio(one.quietInk, one.paper), 4.5);
    EXPECT_GE(gui::contrastRatio(one.accent, one.paper), 4.5);
    // A rig's letter is written in its hue.
    for (int rig = 0; rig < 14; ++rig) {
      EXPECT_GE(gui::contrastRatio(gui::shadeOfRig(rig, one), one.paper), 4.5) << rig;
    }
    for (int part = 0; part < 9; ++part) {
      const QColor shade = gui::shadeOfPart(part, 9, one);
      EXPECT_GE(gui::contrastRatio(gui::inkOn(shade), shade), 4.5) << part;
    }
  }
  EXPECT_NEAR(gui::contrastRatio(Qt::black, Qt::white), 21.0, 1e-6);
}

TEST(ChartLook, TellsRigsApartWithoutColour) {
  for (int i = 0; i < static_cast<int>(gui::kRigLooks); ++i) {
    for (int j = 0; j < i; ++j) {
      EXPECT_NE(gui::dashesOfRig(i), gui::dashesOfRig(j));
      EXPECT_NE(gui::pointOfRig(i), gui::pointOfRig(j));
    }
  }
  EXPECT_EQ(gui::letterOfRig(0), QStringLiteral("(a)"));
  EXPECT_EQ(gui::letterOfRig(26), QStringLiteral("(aa)"));
}

// Grey pixels of every pair of swatches: what a printer without colours makes of them.
TEST(TheSwatches, AreToldApartInBlackAndWhite) {
  const gui::ChartLook paper = gui::paperLook();
  QVector<QImage> grey;
  for (int rig = 0; rig < static_cast<int>(gui::kRigLooks); ++rig) {
    QImage image(34, 14, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    gui::drawRigSwatch(painter, rig, QRectF(image.rect()), paper);
    painter.end();
    grey += image.convertToFormat(QImage::Format_Grayscale8);
  }
  for (qsizetype i = 0; i < grey.size(); ++i) {
    for (qsizetype j = 0; j < i; ++j) {
      int unlike = 0;
      for (int x = 0; x < 34; ++x)
        for (int y = 0; y < 14; ++y)
          if (std::abs(qGray(grey[i].pixel(x, y)) - qGray(grey[j].pixel(x, y))) > 100) ++unlike;
      EXPECT_GE(unlike, 12) << i << ' ' << j;
    }
  }
}

TEST(FullWindow, HoldsAllDataAndSurvivesNone) {
  const gui::ChartWindow none = gui::fullWindow({});
  EXPECT_LT(none.xFrom, none.xTo);
  EXPECT_LT(none.yFrom, none.yTo);
  Picture one;
  one.lines = {{.rig = 0, .name = {}, .points = {{3.0, 61.2}, {4.0, 68.7}}}};
  const gui::ChartWindow window = gui::fullWindow(one);
  EXPECT_LE(window.yFrom, 61.2);
  EXPECT_GE(window.yTo, 68.7);
  EXPECT_GT(window.yFrom, 50.0);
  one.lines = {{.rig = 0, .name = {}, .points = {{3.0, 5.0}, {4.0, 5.0}}}};
  EXPECT_LT(gui::fullWindow(one).yFrom, gui::fullWindow(one).yTo);
}

// Told apart in a legend too: what is not solid shows a gap and the next dash within its sample.
TEST(TheDashes, ShowInTheLengthOfALegendsSample) {
  constexpr double kSample = 34.0;  // pixels
  for (int rig = 0; rig < static_cast<int>(gui::kRigLooks); ++rig) {
    const auto dashes = gui::dashesOfRig(rig);
    if (dashes.isEmpty()) continue;
    EXPECT_LE((dashes[0] + dashes[1] + dashes[2 % dashes.size()]) * gui::kLineWidth, kSample)
        << rig;
    EXPECT_GE(dashes[1] * gui::kLineWidth, 4.0) << rig;
  }
}

// Where there is room the events stand beside a dot, each once, and off the lines. That nothing
// overlaps or is cut is tested above for every label.
TEST(TheLayout, NamesEventsBesideTheirDots) {
  const Picture picture = test_support::askDemo(Question::HowLong).pictures[0];
  // The demo's slowest day takes 6:49.
  for (const QSizeF size : {QSizeF(870, 500), QSizeF(1240, 500), QSizeF(2500, 1000)}) {
    SCOPED_TRACE(size.width());
    const ChartLayout layout = gui::layOut(picture, size, look(false, 12));
    QStringList told;
    for (const auto& mark : layout.marks) {
      if (mark.box.isEmpty() || mark.text.startsWith(QLatin1Char('('))) continue;
      told += mark.text;
      EXPECT_GE(mark.box.width(),
                QFontMetricsF(layout.smallFont).horizontalAdvance(mark.text) - 0.01);
      for (const gui::telling::PictureLine& line : picture.lines) {
        for (double x = layout.window.xFrom; x < layout.window.xTo;
             x += layout.window.width() / 4000.0) {
          const auto y = gui::telling::valueAt(line.points, x);
          EXPECT_FALSE(y && mark.box.adjusted(1, 3, -1, -3).contains(layout.at({x, *y})))
              << mark.text.toStdString() << " on " << line.rig;
        }
      }
    }
    for (const char* event : {"strike reached", "mashed in", "mash done"})
      EXPECT_EQ(told.count(QString::fromLatin1(event)), 1) << event;
  }
}

// At the ends of lines, but neither on the axis nor across another line.
TEST(TheLayout, KeepsLineNamesOffTheAxisAndTheLines) {
  for (const Question question : {Question::WhichElement, Question::BoilsEnough}) {
    const Picture picture = test_support::askDemo(question).pictures[0];
    for (const QSizeF size : {QSizeF(700, 330), QSizeF(900, 480)}) {
      const gui::ChartLayout layout = gui::layOut(picture, size, gui::paperLook());
      for (const auto& label : layout.lineEnds) {
        EXPECT_LE(label.box.bottom(), layout.plot.bottom());
        for (const gui::telling::PictureLine& line : picture.lines) {
          int inside = 0;
          for (double x = layout.window.xFrom; x < layout.window.xTo;
               x += layout.window.width() / 2000.0) {
            const auto y = gui::telling::valueAt(line.points, x);
            if (!y) continue;
            const QPointF at = layout.at({x, *y});  // above or below the plot nothing is drawn
            if (layout.plot.contains(at) && label.box.adjusted(1, 3, -1, -3).contains(at)) ++inside;
          }
          EXPECT_EQ(inside, 0) << label.text.toStdString() << " by " << line.rig << ": "
                               << picture.title;
        }
      }
    }
  }
}

}  // namespace
