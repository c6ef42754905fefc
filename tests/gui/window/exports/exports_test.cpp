// SPDX-License-Identifier: GPL-3.0-or-later
// Every export opened again, and its numbers compared with where they came from.
#include "gui/window/exports/exports.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QPainter>
#include <QSet>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include "gui/window/words/language.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::Answer;
using gui::Question;
using test_support::solvedDemo;

Answer demoAnswer(Question question, const gui::QuestionView& view = {}) {
  return gui::answerTo(question, *solvedDemo(), rigs::UnitSystem::SI, view);
}

// Every question, and every view whose pictures differ.
QVector<Answer> allAnswers() {
  QVector<Answer> all;
  for (const Question question : gui::allQuestions()) all.push_back(demoAnswer(question));
  all.push_back(demoAnswer(Question::WhereHeat, {.asBars = true}));
  all.push_back(demoAnswer(Question::WorthJacket, {.overThickness = false}));
  return all;
}

std::filesystem::path pathOf(const QString& path) { return path.toStdString(); }

// RFC 4180, as a spreadsheet reads it.
QVector<QStringList> csvRows(const QByteArray& bytes) {
  QVector<QStringList> rows{{QString()}};
  bool quoted = false;
  const QString text = QString::fromUtf8(bytes);
  for (qsizetype i = 0; i < text.size(); ++i) {
    const QChar c = text[i];
    if (quoted && c == u'"' && i + 1 < text.size() && text[i + 1] == u'"') {
      rows.back().back() += text[++i];
    } else if (c == u'"') {
      quoted = !quoted;
    } else if (!quoted && c == u',') {
      rows.back().push_back({});
    } else if (!quoted && c == u'\n') {
      rows.push_back({QString()});
    } else {
      rows.back().back() += c;
    }
  }
  rows.pop_back();  // after the last line's end
  return rows;
}

// What a person reads in an SVG document, without its line breaks.
QString svgText(const QByteArray& bytes, QString* problem = nullptr) {
  QXmlStreamReader xml(bytes);
  QString text;
  while (!xml.atEnd()) {
    if (xml.readNext() == QXmlStreamReader::StartElement && xml.name() == QLatin1String("text")) {
      text += xml.readElementText().simplified() + u' ';
    }
  }
  if (problem) *problem = xml.errorString();
  return text.simplified();
}

TEST(PictureFile, IsAPngOfTheStatedWidthWithInkOnIt) {
  const QTemporaryDir folder;
  for (const Answer& answer : allAnswers()) {
    SCOPED_TRACE(answer.title.toStdString());
    const QString path = folder.filePath(QStringLiteral("seen.png"));
    gui::exportAnswer(pathOf(path), Question::HowLong, answer, *solvedDemo(), gui::paperLook());

    const QImage image(path);

    ASSERT_FALSE(image.isNull());
    EXPECT_EQ(image.width(), 2 * gui::kSheetWidth);
    QSet<QRgb> colours;
    qsizetype inked = 0;
    for (int y = 0; y < image.height(); y += 3) {
      for (int x = 0; x < image.width(); x += 3) {
        colours.insert(image.pixel(x, y));
        if (qGray(image.pixel(x, y)) < 128) ++inked;
      }
    }
    EXPECT_GT(colours.size(), 8);
    // A page of text and thin lines is 1-10 % dark; a blank one 0 %, a spilt one far more.
    const double share = 9.0 * static_cast<double>(inked) / (image.width() * image.height());
    EXPECT_GT(share, 0.005);
    EXPECT_LT(share, 0.35);
  }
}

TEST(PictureFile, IsAnSvgWithTitleSentenceRigsAndCautionsAsText) {
  for (const Answer& answer : allAnswers()) {
    SCOPED_TRACE(answer.title.toStdString());
    const QByteArray svg = gui::answerSvg(answer, gui::kSheetWidth, gui::paperLook());

    QString problem;
    const QString text = svgText(svg, &problem);

    EXPECT_EQ(problem.toStdString(), "");
    EXPECT_FALSE(svg.contains("nan")) << "a point that is no number";
    EXPECT_TRUE(text.contains(answer.title.simplified()));
    EXPECT_TRUE(text.contains(answer.sentence.simplified())) << text.toStdString();
    EXPECT_FALSE(answer.cautions.isEmpty());
    for (const QString& caution : answer.cautions) {
      EXPECT_TRUE(text.contains(caution.simplified())) << caution.toStdString();
    }
    for (const gui::Picture& picture : answer.pictures) {
      EXPECT_TRUE(text.contains(picture.yTitle)) << picture.yTitle.toStdString();
      for (const gui::PictureLine& line : picture.lines) {
        EXPECT_TRUE(text.contains(gui::letterOfRig(line.rig)) || text.contains(line.name))
            << line.name.toStdString();
      }
    }
  }
}

TEST(PictureFile, KeepsEverythingInsideTheSheet) {
  for (const Answer& answer : allAnswers()) {
    SCOPED_TRACE(answer.title.toStdString());
    const gui::ChartLook look = gui::paperLook();
    const int height = static_cast<int>(gui::sheetHeight(answer, gui::kSheetWidth, look));
    const int margin = 40;
    QImage image(gui::kSheetWidth + 2 * margin, height + 2 * margin, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    gui::paintSheet(painter, QRectF(margin, margin, gui::kSheetWidth, height), answer, look);
    painter.end();

    int spilt = 0;
    const QRect sheet(margin, margin, gui::kSheetWidth, height);
    for (int y = 0; y < image.height(); ++y) {
      for (int x = 0; x < image.width(); ++x) {
        if (!sheet.contains(x, y) && image.pixelColor(x, y) != QColor(Qt::magenta)) ++spilt;
      }
    }
    EXPECT_EQ(spilt, 0);
  }
}

TEST(NumbersFile, HoldsTheTableAndEveryPointOfEveryPicture) {
  for (const Answer& answer : allAnswers()) {
    SCOPED_TRACE(answer.title.toStdString());
    const QVector<QStringList> rows = csvRows(gui::answerCsv(answer));

    ASSERT_GT(rows.size(), answer.table.rows.size());
    for (qsizetype i = 0; i < answer.table.rows.size(); ++i) {
      EXPECT_EQ(rows[i + 1].front(), answer.table.rows[i].front());
      EXPECT_EQ(rows[i + 1].size(), answer.table.rows[i].size());
    }
    // Each point stands in one line, in the picture's order, to 15 digits.
    QVector<QPointF> written;
    for (const QStringList& row : rows) {
      bool isX = false;
      bool isY = false;
      const QPointF point(row.value(2).toDouble(&isX), row.value(3).toDouble(&isY));
      const bool ofLine =
          std::any_of(answer.pictures.begin(), answer.pictures.end(), [&](const gui::Picture& p) {
            return p.title == row.value(0) && !p.lines.isEmpty() &&
                   !p.partNames.contains(row.value(1));
          });
      if (isX && isY && ofLine && row.size() == 4) written.push_back(point);
    }
    QVector<QPointF> drawn;
    for (const gui::Picture& picture : answer.pictures) {
      for (const gui::PictureLine& line : picture.lines) drawn += line.points;
    }
    ASSERT_EQ(written.size(), drawn.size());
    for (qsizetype i = 0; i < drawn.size(); ++i) {
      EXPECT_NEAR(written[i].x(), drawn[i].x(), 1e-12 * (1.0 + std::abs(drawn[i].x())));
      EXPECT_NEAR(written[i].y(), drawn[i].y(), 1e-12 * (1.0 + std::abs(drawn[i].y())));
    }
    EXPECT_EQ(rows.back().front(), QStringLiteral("caution"));
  }
}

TEST(NumbersFile, HasDecimalPointsInGermanToo) {
  gui::speak(QStringLiteral("de"));
  const Answer answer = demoAnswer(Question::WhatCost);
  const QVector<QStringList> rows = csvRows(gui::answerCsv(answer));
  gui::speak(QStringLiteral("en"));

  qsizetype numbers = 0;
  for (qsizetype i = 0; i < answer.table.rows.size(); ++i) {
    for (qsizetype column = 1; column < answer.table.rows[i].size(); ++column) {
      const QString shown = answer.table.rows[i][column];
      bool isNumber = false;
      QLocale(QLocale::German).toDouble(shown, &isNumber);
      if (!isNumber || !shown.contains(u',')) continue;
      ++numbers;
      bool isPointed = false;
      const double read = rows[i + 1][column].toDouble(&isPointed);
      EXPECT_TRUE(isPointed) << rows[i + 1][column].toStdString();
      EXPECT_DOUBLE_EQ(read, QLocale(QLocale::German).toDouble(shown));
    }
  }
  EXPECT_GT(numbers, 3);
}

TEST(NumbersFile, GivesNoSpreadsheetAFormula) {
  Answer answer = demoAnswer(Question::HowLong);
  answer.table.rows.push_back({QStringLiteral("=1+1"), QStringLiteral("@SUM(A1)")});

  const QByteArray csv = gui::answerCsv(answer);

  EXPECT_TRUE(csv.contains("\n'=1+1,'@SUM(A1)\n"));
}

TEST(NumbersFile, IsJsonWithTheTerminalsResultInside) {
  const auto terminalOf = [](rigs::Depth depth) {
    return rigs::resultJson(solvedDemo()->plan, rigs::answer(solvedDemo()->plan, depth));
  };
  const std::string everything = terminalOf(rigs::Depth::Everything);
  for (const Question question : gui::allQuestions()) {
    // Two commands of the terminal go deeper than the rest.
    const std::string terminal = question == Question::Circuit ? terminalOf(rigs::Depth::Circuit)
                                 : question == Question::Room  ? terminalOf(rigs::Depth::Room)
                                                               : everything;
    const Answer answer = demoAnswer(question);
    SCOPED_TRACE(answer.title.toStdString());
    const QByteArray json = gui::answerJson(question, answer, *solvedDemo());

    QJsonParseError problem;
    const QJsonObject file = QJsonDocument::fromJson(json, &problem).object();

    ASSERT_EQ(problem.error, QJsonParseError::NoError) << problem.errorString().toStdString();
    EXPECT_THAT(json.toStdString(), testing::HasSubstr(terminal.substr(0, terminal.size() - 1)));
    EXPECT_EQ(file["seen"]["question"].toString(), gui::identifierOf(question));
    EXPECT_EQ(file["seen"]["sentence"].toString(), answer.sentence);
    const QJsonArray pictures = file["seen"]["pictures"].toArray();
    ASSERT_EQ(pictures.size(), answer.pictures.size());
    for (qsizetype p = 0; p < pictures.size(); ++p) {
      const QJsonArray lines = pictures[p]["lines"].toArray();
      ASSERT_EQ(lines.size(), answer.pictures[p].lines.size());
      for (qsizetype l = 0; l < lines.size(); ++l) {
        const auto& drawn = answer.pictures[p].lines[l].points;
        const QJsonArray points = lines[l]["points"].toArray();
        ASSERT_EQ(points.size(), drawn.size());
        for (qsizetype i = 0; i < points.size(); ++i) {
          EXPECT_EQ(points[i].toArray().at(0).toDouble(), drawn[i].x());
          EXPECT_EQ(points[i].toArray().at(1).toDouble(), drawn[i].y());
        }
      }
    }
  }
}

TEST(Export, IsRefusedForAnUnknownEndingAndLeavesNothing) {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("seen.bmp"));

  EXPECT_THROW(gui::exportAnswer(pathOf(path), Question::HowLong, demoAnswer(Question::HowLong),
                                 *solvedDemo(), gui::paperLook()),
               rigs::FileError);
  EXPECT_FALSE(QFile::exists(path));
}

TEST(Export, SaysWhyWhenItCannotBeWritten) {
  try {
    gui::exportAnswer("/proc/nowhere/seen.csv", Question::HowLong, demoAnswer(Question::HowLong),
                      *solvedDemo(), gui::paperLook());
    FAIL() << "was written";
  } catch (const rigs::FileError& error) {
    EXPECT_THAT(error.what(), testing::HasSubstr("/proc/nowhere/seen.csv"));
  }
}

TEST(Export, IsTheSameEveryTime) {
  const Answer answer = demoAnswer(Question::BoilsEnough);
  const gui::ChartLook look = gui::paperLook();
  EXPECT_EQ(gui::answerSvg(answer, 900, look), gui::answerSvg(answer, 900, look));
  EXPECT_EQ(gui::answerImage(answer, 900, look), gui::answerImage(answer, 900, look));
}

}  // namespace
