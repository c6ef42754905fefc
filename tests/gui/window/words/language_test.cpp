// SPDX-License-Identifier: GPL-3.0-or-later
// German is complete, means what English means, and is the German of these sources.
#include "gui/window/words/language.hpp"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QVector>
#include <QXmlStreamReader>
#include <clocale>

#include "gui/telling/question.hpp"
#include "gui/window/words/reader.hpp"
#include "tests/support/patience.hpp"

namespace {

struct Message {
  QString context, source, translation, type;
};

QVector<Message> messagesOf(const QString& path) {
  QVector<Message> all;
  QFile file(path);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
  QXmlStreamReader xml(&file);
  QString context;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("name")) context = xml.readElementText();
    if (xml.name() == QLatin1String("source")) {
      all.push_back({context, xml.readElementText(), {}, {}});
    }
    if (xml.name() == QLatin1String("translation") && !all.isEmpty()) {
      all.back().type = xml.attributes().value(QLatin1String("type")).toString();
      all.back().translation =
          xml.readElementText(QXmlStreamReader::IncludeChildElements).simplified();
    }
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  return all;
}

const QString kSource = QStringLiteral(HEATLEDGER_SOURCE_DIR);
const QString kGerman = kSource + QStringLiteral("/gui/translations/heatledger_de.ts");

TEST(German, HasEveryText) {
  const QVector<Message> messages = messagesOf(kGerman);
  EXPECT_GT(messages.size(), 150);
  for (const Message& message : messages) {
    EXPECT_EQ(message.type.toStdString(), "") << message.source.toStdString();
    EXPECT_FALSE(message.translation.isEmpty()) << message.source.toStdString();
  }
}

TEST(German, HasTheTextsOfTheseSources) {
  const QTemporaryDir folder;
  const QString fresh = folder.filePath(QStringLiteral("heatledger_de.ts"));
  ASSERT_TRUE(QFile::copy(kGerman, fresh));
  QProcess lupdate;
  QString program = QStandardPaths::findExecutable(QStringLiteral("lupdate"),
                                                   {QStringLiteral("/usr/lib/qt6/bin")});
  if (program.isEmpty()) program = QStringLiteral("lupdate");
  lupdate.start(program,
                {QStringLiteral("-silent"), QStringLiteral("-no-obsolete"),
                 QStringLiteral("-tr-function-alias"), QStringLiteral("QT_TRANSLATE_NOOP+=TOLD"),
                 QStringLiteral("-I"), kSource, kSource + QStringLiteral("/gui"),
                 kSource + QStringLiteral("/rigs"), QStringLiteral("-ts"), fresh});
  ASSERT_TRUE(lupdate.waitForFinished(test_support::kPatience))
      << lupdate.errorString().toStdString();
  ASSERT_EQ(lupdate.exitCode(), 0) << lupdate.readAllStandardError().toStdString();

  for (const Message& message : messagesOf(fresh)) {
    EXPECT_EQ(message.type.toStdString(), "")
        << message.context.toStdString() << ": " << message.source.toStdString();
  }
}

TEST(German, KeepsEveryPlaceForANumber) {
  static const QRegularExpression kPlace(QStringLiteral("%(?:L?\\d+|n)"));
  const auto placesOf = [](const QString& text) {
    QSet<QString> places;
    for (auto it = kPlace.globalMatch(text); it.hasNext();) places.insert(it.next().captured());
    return places;
  };
  for (const Message& message : messagesOf(kGerman)) {
    EXPECT_EQ(placesOf(message.source), placesOf(message.translation))
        << message.source.toStdString() << '\n'
        << message.translation.toStdString();
  }
}

TEST(German, EndsSentencesWhereEnglishDoes) {
  for (const Message& message : messagesOf(kGerman)) {
    for (const QChar end : {u'.', u'?', u':', u'…'}) {
      EXPECT_EQ(message.source.endsWith(end), message.translation.endsWith(end))
          << message.source.toStdString() << '\n'
          << message.translation.toStdString();
    }
  }
}

TEST(Language, ChangesTitlesAndBack) {
  const QString english = gui::told(gui::telling::titleOf(gui::telling::Question::HowLong));
  gui::speak(QStringLiteral("de"));
  const QString german = gui::told(gui::telling::titleOf(gui::telling::Question::HowLong));
  EXPECT_EQ(gui::spokenLanguage(), QStringLiteral("de"));
  EXPECT_EQ(QLocale().decimalPoint(), QStringLiteral(","));
  gui::speak(QStringLiteral("en"));

  EXPECT_NE(german, english);
  EXPECT_EQ(gui::told(gui::telling::titleOf(gui::telling::Question::HowLong)), english);
  EXPECT_EQ(QLocale().decimalPoint(), QStringLiteral("."));
}

TEST(Language, FallsBackToEnglish) {
  gui::speak(QStringLiteral("tlh"));
  EXPECT_EQ(gui::spokenLanguage(), QStringLiteral("en"));
}

TEST(Language, LeavesNumbersOfFilesAlone) {
  gui::speak(QStringLiteral("de"));
  EXPECT_STREQ(std::localeconv()->decimal_point, ".");
  gui::speak(QStringLiteral("en"));
}

}  // namespace
