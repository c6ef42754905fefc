// SPDX-License-Identifier: GPL-3.0-or-later
// What is wrong with a plan, told in German.
#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QTemporaryDir>
#include <cerrno>
#include <system_error>

#include "gui/telling/jacket.hpp"
#include "gui/telling/translations.hpp"
#include "gui/window/words/language.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/circuits/rules_file.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/quantity_problems.hpp"
#include "rigs/plans/catalogue.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/rigs/plans/wrong_plans.hpp"

namespace {

using test_support::Json;
using test_support::WindowTest;
using namespace physics;

class InGerman {
 public:
  InGerman() { gui::speak(QStringLiteral("de")); }
  ~InGerman() { gui::speak(QStringLiteral("en")); }
  InGerman(const InGerman&) = delete;
  InGerman& operator=(const InGerman&) = delete;
};

// Outside of quotation marks and examples: what is quoted is the plan's own English.
bool holdsEnglish(QString text) {
  static const QRegularExpression kQuoted(QStringLiteral("\"[^\"]*\""));
  static const QRegularExpression kEnglish(
      QStringLiteral("\\b(the|is|are|of|or|to|and|has|with|write|needed|one|this|e\\.g)\\b"));
  return text.remove(kQuoted).contains(kEnglish);
}

void expectGerman(const rigs::Told& message) {
  const QString text = gui::told(message);
  EXPECT_NE(text.toStdString(), rigs::inEnglish(message));
  EXPECT_FALSE(holdsEnglish(text)) << rigs::inEnglish(message) << '\n' << text.toStdString();
}

void expectGerman(const rigs::Problems& problems) {
  for (const rigs::Problem& problem : problems) expectGerman(problem.message);
}

// Nothing where the text is understood.
template <class Q>
rigs::Told refusal(const std::string& text) {
  const auto fault = rigs::parseQuantity<Q>(text).fault;
  return fault ? rigs::quantityProblem(*fault, text, rigs::kKindOf<Q>) : rigs::Told();
}

QString toldOf(const char* pointer, const Json& value) {
  const auto reading = test_support::readChecked(test_support::demoWith({{pointer, value}}));
  return reading.problems.empty() ? QString() : gui::told(reading.problems.front().message);
}

TEST(ToldProblem, IsEnglishInEnglish) {
  EXPECT_EQ(toldOf("/rigs/1/element/power", "5 gallons"),
            QStringLiteral("\"5 gallons\" is a volume; a power is needed, e.g. \"3000 W\""));
}

TEST(ToldProblem, SaysInGermanWhatWasFoundAndWhatIsAccepted) {
  const InGerman german;
  EXPECT_EQ(toldOf("/rigs/1/element/power", "5 gallons"),
            QStringLiteral("\"5 gallons\" ist ein Volumen; gebraucht wird eine Leistung, z. B. "
                           "\"3000 W\""));
  EXPECT_EQ(toldOf("/batch/wort", "0.1 L"),
            QStringLiteral("\"0.1 L\" liegt außerhalb des Bereichs; zulässig ist 0,5 L bis 2000 L, "
                           "z. B. \"23 L\""));
}

TEST(ToldProblem, KeepsWhatSomebodyWrote) {
  const InGerman german;
  const std::string name = "%2; keep one, e.g. the power is needed";
  const auto reading = test_support::readChecked(
      test_support::demoWith({{"/rigs/0/name", name}, {"/rigs/1/name", name}}));
  ASSERT_EQ(reading.problems.size(), 1U);
  EXPECT_EQ(gui::told(reading.problems.front().message).toStdString(),
            "zwei Anlagen heißen \"" + name + "\"; geben Sie jeder einen eigenen Namen");
}

TEST(ToldProblem, IsGermanForEveryWrongPlan) {
  const InGerman german;
  std::size_t told = 0;
  for (const auto& list :
       {test_support::wrongBatches(), test_support::wrongPlaces(), test_support::wrongRigs()}) {
    for (const auto& wrong : list) {
      SCOPED_TRACE(wrong.where + ": " + wrong.says);
      const auto reading = test_support::readChecked(wrong.document);
      expectGerman(reading.problems);
      told += reading.problems.size();
    }
  }
  EXPECT_GT(told, 70U);
}

// Every value of the example, replaced by what is of another type, another unit, or nothing.
TEST(ToldProblem, IsGermanWhateverStandsInAPlan) {
  const InGerman german;
  const Json flat = Json::parse(rigs::newPlanText()).flatten();
  const Json wrongs =
      Json::array({"", "nonsense", "5", "5 gallons", "-3 W", "1e30 kW", "2 h", "900 kg", "7 %", 3,
                   -1, true, nullptr, Json::array(), Json::object()});
  for (const auto& entry : flat.items()) {
    for (const Json& wrong : wrongs) {
      SCOPED_TRACE(entry.key() + ": " + wrong.dump());
      Json document = Json::parse(rigs::newPlanText());
      document[Json::json_pointer(entry.key())] = wrong;
      rigs::Problems problems;
      static_cast<void>(rigs::readPlan(document.dump(), "/nonexistent", problems));
      expectGerman(problems);
    }
  }
}

TEST(ToldProblem, IsGermanForQuantitiesOfEveryKindOfSlip) {
  const InGerman german;
  for (const char* text : {"",
                           "W",
                           "5",
                           "nan W",
                           "1.250,5 W",
                           "1,250 W",
                           "1 250 W",
                           "1e999 W",
                           "1/0 W",
                           "3 mw",
                           "5 (W",
                           "5 )W",
                           "5 W/",
                           "5 *W",
                           "5 W^9",
                           "5 ((W))",
                           "5 ()",
                           "5 W é",
                           "5 W W W W W W W W W",
                           "5 W/m2 K",
                           "5 W/mK",
                           "3 kW 200 W",
                           "5 W/(m/s)",
                           "5 W/2",
                           "5 foo",
                           "5 ton",
                           "5 bbl",
                           "5 cal",
                           "5 kcal",
                           "5 k",
                           "5 deg",
                           "5 gr",
                           "5 ps",
                           "5 va",
                           "5 kva",
                           "5 psig",
                           "5:30",
                           "5 W 3",
                           "5 kg5",
                           "5 !"}) {
    SCOPED_TRACE(text);
    for (const rigs::Told& problem :
         {refusal<Power>(text), refusal<Time>(text), refusal<Mass>(text),
          refusal<Temperature>(text), refusal<double>(text), refusal<ThermalInsulance>(text),
          refusal<Area>(text)}) {
      if (!problem.empty()) expectGerman(problem);
    }
  }
  for (const char* text : {"1 h 90 min", "1.5 h 30 min", "1 h -30 min", "5 m"})
    expectGerman(refusal<Time>(text));
  expectGerman(refusal<Temperature>("-400 C"));
  expectGerman(refusal<Volume>("5 oz"));
  expectGerman(refusal<Mass>("1 kg 200 g"));
  expectGerman(refusal<ThermalInsulance>("R 1.8 m2 K/W"));
  expectGerman(refusal<ThermalInsulance>("RSI 1.8 m2 K/W"));
  expectGerman(refusal<Area>("99 AWG"));
}

TEST(ToldProblem, IsGermanForFiles) {
  const InGerman german;
  for (const char* path : {"/nonexistent/a plan.json", "/"}) {
    try {
      static_cast<void>(rigs::readText(path));
      ADD_FAILURE() << path;
    } catch (const rigs::FileError& error) {
      expectGerman(error.told());
    }
  }
}

// What a system may answer where a file is opened, read, written, renamed or forced out.
TEST(ToldProblem, IsGermanForWhatTheSystemAnswers) {
  const InGerman german;
  const rigs::Reader reader = gui::readerOf(rigs::UnitSystem::SI);
  for (const int error : {EINTR,     EIO,       ENXIO,  EBADF,        EAGAIN, ENOMEM,    EBUSY,
                          EEXIST,    EXDEV,     ENODEV, ENOTDIR,      EINVAL, ENFILE,    EMFILE,
                          ETXTBSY,   EFBIG,     EMLINK, ENAMETOOLONG, ELOOP,  EOVERFLOW, EOPNOTSUPP,
                          ETIMEDOUT, EHOSTDOWN, ESTALE, EREMOTEIO}) {
    const std::string text = std::generic_category().message(error);
    EXPECT_NE(rigs::tell(rigs::Argument(rigs::Bundled{"Problem", text}), reader), text);
  }
  for (const std::string& path : {std::string("/etc/passwd/plan.json"), std::string(5000, 'x')}) {
    try {
      static_cast<void>(rigs::readText(path));
      ADD_FAILURE() << path;
    } catch (const rigs::FileError& error) {
      const QString text = gui::told(error.told());
      EXPECT_TRUE(text.contains(QStringLiteral("kann nicht gelesen werden: "))) << path;
      EXPECT_FALSE(text.contains(QStringLiteral("Not a directory"))) << path;
      EXPECT_FALSE(text.contains(QStringLiteral("too long"))) << path;
    }
  }
}

// A region's rules in a file of one's own: every problem with its place in that file.
TEST(ToldProblem, IsGermanForRulesFiles) {
  const InGerman german;
  const QTemporaryDir folder;
  const std::string name = "my region.json";
  const std::string in = folder.path().toStdString();
  const std::string path = in + '/' + name;
  const auto problemsOf = [&](const std::string& text) {
    rigs::saveText(path, text);
    rigs::Problems problems;
    EXPECT_FALSE(rigs::readRulesFile(in, name, "/place/rules", problems)) << text;
    EXPECT_FALSE(problems.empty()) << text;
    return problems;
  };
  const std::string good =
      rigs::readText(std::string(HEATLEDGER_SOURCE_DIR) + "/rigs/data/rules/united-states.json");
  const Json flat = Json::parse(good).flatten();
  // One of a kind: "/outlets/3/current" stands for all outlets.
  static const QRegularExpression kNumber(QStringLiteral("/\\d+"));
  QStringList kinds;
  std::size_t told = 0;
  for (const auto& entry : flat.items()) {
    const QString kind = QString::fromStdString(entry.key()).remove(kNumber);
    if (kinds.contains(kind)) continue;
    kinds.push_back(kind);
    for (const Json& wrong : Json::array({"3 kg", 7, nullptr})) {
      Json document = Json::parse(good);
      document[Json::json_pointer(entry.key())] = wrong;
      rigs::Problems problems;
      rigs::saveText(path, document.dump());
      static_cast<void>(rigs::readRulesFile(in, name, "/place/rules", problems));
      expectGerman(problems);
      told += problems.size();
    }
  }
  EXPECT_GT(told, 150U);
  for (const auto& [pointer, value] : {std::pair{"/voltages/0/lowest", Json("125 V")},
                                       std::pair{"/voltages/0/highest", Json("110 V")},
                                       std::pair{"/breakers/sizes", Json::array({"20 A", "15 A"})},
                                       std::pair{"/format/version", Json(2)}}) {
    Json document = Json::parse(good);
    document[Json::json_pointer(pointer)] = value;
    expectGerman(problemsOf(document.dump()));
  }
  for (const char* text : {"", "{", "[]", "[1,]", "\xff\xfe{\0}\0", "// none"}) {
    SCOPED_TRACE(text);
    expectGerman(problemsOf(text));
  }
  expectGerman(problemsOf(std::string(2 * 1024 * 1024, ' ')));
  rigs::Problems none;
  EXPECT_FALSE(rigs::readRulesFile("/nonexistent", "rules.json", "/place/rules", none));
  expectGerman(none);
}

TEST(CatalogueWord, IsKnownForAllOfTheCatalogue) {
  const InGerman german;
  const auto expectKnown = [](const std::string& name) {
    EXPECT_TRUE(gui::telling::languageOf("de").translation("Catalogue", name)) << name;
  };
  for (const rigs::Circuit& circuit : rigs::catalogue().circuits) {
    // A connector's standard is called the same everywhere.
    if (!circuit.name.starts_with("IEC")) expectKnown(circuit.name);
  }
  for (const rigs::GenericRig& rig : rigs::catalogue().rigs) {
    expectKnown(rig.name);
    expectKnown(std::string(rig.about));
  }
  for (const rigs::Finish& outside : rigs::catalogue().outsides) expectKnown(outside.word);
  for (const rigs::Use use :
       {rigs::Use::Vessel, rigs::Use::Lid, rigs::Use::Jacket, rigs::Use::Stand, rigs::Use::Hose}) {
    for (const std::string_view name : rigs::catalogue().namesFor(use)) {
      expectKnown(std::string(name));
      for (const rigs::Finish& finish : rigs::catalogue().material(name)->finishes)
        if (!finish.word.empty()) expectKnown(finish.word);
    }
  }
  EXPECT_EQ(gui::catalogueName(QStringLiteral("my own")), QStringLiteral("my own"));
  EXPECT_EQ(gui::catalogueName(QStringLiteral("Europe 230 V 16 A")),
            QStringLiteral("Europa 230 V 16 A"));
}

TEST(CatalogueWord, NamesAJacketsLayers) {
  const InGerman german;
  const rigs::JacketText jacket{
      .faces = {{.where = "side",
                 .layers = {{.material = "cork", .thickness = millimetres(12.5)},
                            {.material = "", .insulance = squareMetreKelvinsPerWatt(0.3)}}},
                {.where = "lid", .layers = {{.material = "oak", .thickness = millimetres(20.0)}}}}};
  const rigs::Reader reader = gui::readerOf(rigs::UnitSystem::SI);
  EXPECT_EQ(gui::told(gui::telling::jacketWords(jacket, reader), reader),
            QStringLiteral("Seite 12,5 mm Kork + R 0,3 m²·K/W; Deckel 20 mm Eiche"));
}

class AGermanWindow : public WindowTest {
 protected:
  void SetUp() override {
    gui::speak(QStringLiteral("de"));
    WindowTest::SetUp();
  }
  void TearDown() override {
    WindowTest::TearDown();
    gui::speak(QStringLiteral("en"));
  }
};

TEST_F(AGermanWindow, TellsAProblemInGerman) {
  type("/rigs/1/element/power", "5 gallons");
  EXPECT_TRUE(problemAt("/rigs/1/element/power")
                  .contains("\"5 gallons\" ist ein Volumen; gebraucht wird eine Leistung"))
      << problemAt("/rigs/1/element/power").toStdString();
}

TEST_F(AGermanWindow, WritesTheCataloguesNameIntoThePlan) {
  choose("/rigs/0/vessel/material", "Kupfer");
  EXPECT_EQ(textAt("/rigs/0/vessel/material"), "copper");
  choose("/rigs/0/vessel/finish", "gebürstet");
  EXPECT_EQ(textAt("/rigs/0/vessel/finish"), "brushed");
  choose("/rigs/0/supply/from", "Europa 230 V 16 A");
  EXPECT_EQ(textAt("/rigs/0/supply/from"), "Europe 230 V 16 A");
  choose("/rigs/0/stands_on/kind", "Tisch");
  EXPECT_EQ(textAt("/rigs/0/stands_on/kind"), "table");
  EXPECT_EQ(textAt("/rigs/0/stands_on/material"), "plywood");
  choose("/place/region", "Vereinigte Staaten");
  EXPECT_EQ(textAt("/place/region"), "United States");
  EXPECT_EQ(problemAt("/rigs/0/stands_on/kind"), QString());
}

}  // namespace
