// SPDX-License-Identifier: GPL-3.0-or-later
// Every export opened again, and its numbers compared with where they came from.
#include "gui/window/exports/exports.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QPainter>
#include <QSet>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <cmath>
#include <vector>

#include "gui/telling/csv.hpp"
#include "gui/window/words/language.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/results/result_json.hpp"
#include "tests/gui/window/solved_demo.hpp"

namespace {

using gui::SeenAnswer;
using gui::ShownAnswer;
using gui::telling::Question;
using test_support::solvedDemo;

SeenAnswer demoAnswer(Question question, const gui::telling::QuestionView& view = {}) {
  return {question, view, test_support::askDemo(question, view), solvedDemo(),
          gui::readerOf(rigs::UnitSystem::SI)};
}

// Every question, and every view whose pictures differ.
std::vector<SeenAnswer> allAnswers() {
  std::vector<SeenAnswer> all;
  for (const Question question : gui::telling::allQuestions()) all.push_back(demoAnswer(question));
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
  for (const SeenAnswer& seen : allAnswers()) {
    SCOPED_TRACE(gui::telling::identifierOf(seen.question));
    const QString path = folder.filePath(QStringLiteral("seen.png"));
    gui::exportAnswer(pathOf(path), seen, gui::paperLook());

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
  for (const SeenAnswer& seen : allAnswers()) {
    const ShownAnswer answer = gui::shown(seen);
    SCOPED_TRACE(answer.title.toStdString());
    const QByteArray svg = gui::answerSvg(answer, gui::kSheetWidth, gui::paperLook());

    QString problem;
    const QString text = svgText(svg, &problem);

    EXPECT_EQ(problem.toStdString(), "");
    EXPECT_FALSE(svg.contains("nan")) << "a point that is no number";
    EXPECT_TRUE(text.contains(answer.title.simplified()));
    EXPECT_TRUE(text.contains(answer.headline().simplified())) << text.toStdString();
    EXPECT_FALSE(answer.cautions.isEmpty());
    for (const QString& caution : answer.cautions) {
      EXPECT_TRUE(text.contains(caution.simplified())) << caution.toStdString();
    }
    for (const gui::telling::Picture& picture : answer.pictures) {
      EXPECT_TRUE(text.contains(QString::fromStdString(picture.yTitle))) << picture.yTitle;
      for (const gui::telling::PictureLine& line : picture.lines) {
        EXPECT_TRUE((line.rig >= 0 && text.contains(gui::letterOfRig(line.rig))) ||
                    text.contains(QString::fromStdString(line.name)))
            << line.name;
      }
    }
  }
}

TEST(PictureFile, KeepsEverythingInsideTheSheet) {
  for (const SeenAnswer& seen : allAnswers()) {
    const ShownAnswer answer = gui::shown(seen);
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

// As the terminal computes it: without the curves that pictures need.
gui::telling::Answer terminalAnswer(const SeenAnswer& seen) {
  rigs::Solution solution = *solvedDemo();
  solution.answers = rigs::answer(solution.plan, gui::telling::depthOf(seen.question));
  for (std::size_t i = 0; i < solution.answers.rigs.size(); ++i)
    solution.answers.rigs[i].helps = solvedDemo()->answers.rigs[i].helps;
  for (std::size_t i = 0; seen.question == Question::HowSure && i < 4; ++i) {
    solution.answers.rigs[i].bands = solvedDemo()->answers.rigs[i].bands;
    solution.answers.rigs[i].sure = solvedDemo()->answers.rigs[i].sure;
  }
  return gui::telling::answerTo(seen.question, solution, seen.reader, seen.view);
}

// The very bytes that the terminal writes for the same question and reader.
TEST(NumbersFile, IsWhatTheTerminalWrites) {
  for (const SeenAnswer& seen : allAnswers()) {
    SCOPED_TRACE(gui::telling::identifierOf(seen.question));
    EXPECT_EQ(
        gui::answerCsv(seen).toStdString(),
        gui::telling::csvOf(terminalAnswer(seen), gui::rigNamesOf(*solvedDemo()), seen.reader));
  }
}

// Every figure of every table stands in one line, in the table's order, with all its digits and a
// decimal point in German, too.
void expectEveryFigure(const SeenAnswer& seen) {
  QVector<QStringList> rows = csvRows(gui::answerCsv(seen));
  rows.removeIf([](const QStringList& row) { return row[0] == QLatin1String("table"); });
  qsizetype at = 0;
  const gui::telling::Answer answer = terminalAnswer(seen);
  for (const gui::telling::Table* table : answer.tables()) {
    for (const gui::telling::Row& row : table->rows) {
      if (row.isHeading()) continue;
      ASSERT_LT(at, rows.size());
      const QStringList& written = rows[at++];
      EXPECT_EQ(written[2], gui::told(row.label, seen.reader));
      ASSERT_EQ(written.size(), static_cast<qsizetype>(4 + row.cells.size()));
      for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const QString& field = written[static_cast<qsizetype>(4 + i)];
        const auto number = gui::telling::cellNumber(row.cells[i], seen.reader);
        if (!number) continue;
        bool isNumber = false;
        EXPECT_NEAR(field.toDouble(&isNumber), *number, 1e-12 * (1.0 + std::abs(*number)));
        EXPECT_TRUE(isNumber) << field.toStdString();
      }
    }
  }
  EXPECT_GT(at, 0);
  // The conditions that cells name by number.
  for (const gui::telling::Table* table : answer.tables()) {
    for (std::size_t i = 0; i < table->legend.size(); ++i, ++at) {
      ASSERT_LT(at, rows.size());
      EXPECT_EQ(rows[at].front().toStdString(), table->name);
      EXPECT_EQ(
          rows[at][2].toStdString(),
          gui::telling::numbered(i) + ' ' + gui::told(table->legend[i], seen.reader).toStdString());
    }
  }
  ASSERT_LT(at, rows.size());
  for (; at < rows.size(); ++at) EXPECT_EQ(rows[at].front(), QStringLiteral("caution"));
}

TEST(NumbersFile, HoldsEveryFigureWithAllItsDigits) {
  for (const char* language : {"en", "de"}) {
    gui::speak(QString::fromLatin1(language));
    for (const SeenAnswer& seen : allAnswers()) {
      SCOPED_TRACE(gui::telling::identifierOf(seen.question));
      expectEveryFigure(seen);
    }
  }
  gui::speak(QStringLiteral("en"));
}

// Every point of every line, to the last digit.
void expectLines(const QJsonArray& lines, const gui::telling::Picture& picture) {
  ASSERT_EQ(lines.size(), static_cast<qsizetype>(picture.lines.size()));
  for (qsizetype l = 0; l < lines.size(); ++l) {
    const auto& drawn = picture.lines[static_cast<std::size_t>(l)].points;
    const QJsonArray points = lines[l]["points"].toArray();
    ASSERT_EQ(points.size(), static_cast<qsizetype>(drawn.size()));
    for (qsizetype i = 0; i < points.size(); ++i) {
      const gui::telling::PicturePoint& point = drawn[static_cast<std::size_t>(i)];
      EXPECT_EQ(points[i].toArray().at(0).toDouble(), point.x);
      EXPECT_EQ(points[i].toArray().at(1).toDouble(), point.y);
    }
  }
}

void expectTables(const QJsonArray& tables, const ShownAnswer& answer) {
  ASSERT_EQ(tables.size(), answer.tables.size());
  for (qsizetype t = 0; t < tables.size(); ++t) {
    const QJsonArray rows = tables[t]["rows"].toArray();
    ASSERT_EQ(rows.size(), answer.tables[t].rows.size());
    for (qsizetype row = 0; row < rows.size(); ++row) {
      EXPECT_EQ(rows[row].toArray(), QJsonArray::fromStringList(answer.tables[t].rows[row].cells));
    }
  }
}

TEST(NumbersFile, IsJsonWithTheTerminalsResultInside) {
  const auto terminalOf = [](rigs::Depth depth) {
    return rigs::resultJson(solvedDemo()->plan, rigs::answer(solvedDemo()->plan, depth));
  };
  const std::string everything = terminalOf(rigs::Depth::Everything);
  rigs::Answers helped = rigs::answer(solvedDemo()->plan, rigs::Depth::Day);
  for (std::size_t i = 0; i < helped.rigs.size(); ++i)
    helped.rigs[i].helps = solvedDemo()->answers.rigs[i].helps;
  rigs::Answers sure = rigs::answer(solvedDemo()->plan, rigs::Depth::Day);
  for (std::size_t i = 0; i < sure.rigs.size(); ++i) {
    sure.rigs[i].bands = solvedDemo()->answers.rigs[i].bands;
    sure.rigs[i].sure = solvedDemo()->answers.rigs[i].sure;
  }
  for (const Question question : gui::telling::allQuestions()) {
    // Three commands of the terminal go deeper than the rest, or elsewhere.
    const std::string terminal =
        question == Question::Circuit       ? terminalOf(rigs::Depth::Circuit)
        : question == Question::Room        ? terminalOf(rigs::Depth::Room)
        : question == Question::HowChills   ? terminalOf(rigs::Depth::Chill)
        : question == Question::WortChanges ? terminalOf(rigs::Depth::Wort)
        : question == Question::HelpsMost   ? rigs::resultJson(solvedDemo()->plan, helped)
        : question == Question::HowSure     ? rigs::resultJson(solvedDemo()->plan, sure)
                                            : everything;
    const SeenAnswer seen = demoAnswer(question);
    const ShownAnswer answer = gui::shown(seen);
    SCOPED_TRACE(answer.title.toStdString());
    const QByteArray json = gui::answerJson(seen);

    QJsonParseError problem;
    const QJsonObject file = QJsonDocument::fromJson(json, &problem).object();

    ASSERT_EQ(problem.error, QJsonParseError::NoError) << problem.errorString().toStdString();
    EXPECT_THAT(json.toStdString(), testing::HasSubstr(terminal.substr(0, terminal.size() - 1)));
    EXPECT_EQ(file["seen"]["question"].toString().toStdString(),
              gui::telling::identifierOf(question));
    EXPECT_EQ(file["seen"]["sentence"].toString(), answer.headline());
    const QJsonArray pictures = file["seen"]["pictures"].toArray();
    ASSERT_EQ(pictures.size(), static_cast<qsizetype>(answer.pictures.size()));
    for (qsizetype p = 0; p < pictures.size(); ++p)
      expectLines(pictures[p]["lines"].toArray(), answer.pictures[static_cast<std::size_t>(p)]);
    expectTables(file["seen"]["tables"].toArray(), answer);
  }
}

TEST(Export, IsRefusedForAnUnknownEndingAndLeavesNothing) {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("seen.bmp"));

  EXPECT_THROW(gui::exportAnswer(pathOf(path), demoAnswer(Question::HowLong), gui::paperLook()),
               rigs::FileError);
  EXPECT_FALSE(QFile::exists(path));
}

TEST(Export, SaysWhyWhenItCannotBeWritten) {
  try {
    gui::exportAnswer("/proc/nowhere/seen.csv", demoAnswer(Question::HowLong), gui::paperLook());
    FAIL() << "was written";
  } catch (const rigs::FileError& error) {
    EXPECT_THAT(error.what(), testing::HasSubstr("/proc/nowhere/seen.csv"));
  }
}

TEST(Export, IsTheSameEveryTime) {
  const ShownAnswer answer = gui::shown(demoAnswer(Question::BoilsEnough));
  const gui::ChartLook look = gui::paperLook();
  EXPECT_EQ(gui::answerSvg(answer, 900, look), gui::answerSvg(answer, 900, look));
  EXPECT_EQ(gui::answerImage(answer, 900, look), gui::answerImage(answer, 900, look));
}

}  // namespace
