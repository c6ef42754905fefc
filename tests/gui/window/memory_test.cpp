// SPDX-License-Identifier: GPL-3.0-or-later
// A window that is used hard does not grow. HEATLEDGER_TEST_ROUNDS asks for more than a moment's.
#include <gtest/gtest.h>
#include <unistd.h>

#include <QSettings>
#include <QTest>
#include <cstdio>
#include <fstream>

#include "gui/window/appearance.hpp"
#include "rigs/plans/plan_starts.hpp"
#include "tests/gui/window/window_fixture.hpp"
#include "tests/support/patience.hpp"

namespace {

using test_support::WindowTest;

double residentMegabytes() {
  std::ifstream file("/proc/self/statm");
  double pages = 0.0;
  double resident = 0.0;
  file >> pages >> resident;
  return resident * static_cast<double>(::sysconf(_SC_PAGESIZE)) / 1e6;
}

class TheMemory : public WindowTest {
 protected:
  // Edits, steps back, every question, both appearances, both units, a column more and less.
  void use(int round) {
    const auto all = gui::telling::allQuestions();
    window().setQuestion(all[static_cast<std::size_t>(round) % all.size()]);
    type("/rigs/0/element/power", QString::number(2000 + 10 * (round % 40)) + " W");
    QCoreApplication::processEvents();
    switch (round % 4) {
      case 0:
        gui::choose(round % 8 == 0 ? gui::Appearance::Dark : gui::Appearance::Light);
        break;
      case 1:
        window().setUnits(round % 8 == 1 ? rigs::UnitSystem::UsCustomary : rigs::UnitSystem::SI);
        break;
      case 2:
        window().forms().rigColumns().duplicate(0, gui::Variant::Same);
        undo();
        break;
      default:
        type("/batch/mash/rests/1/temperature", "76 C");
        undo();
        redo();
        undo();
    }
    QCoreApplication::processEvents();
    if (round % 7 != 6) return;  // the newest plan wins
    ASSERT_TRUE(settles());      // each question in turn
  }
};

TEST_F(TheMemory, StaysWhatItIsInAWindowThatIsUsed) {
  // Which keeps freed memory back on purpose.
  if (test_support::kUnderAddressSanitizer) GTEST_SKIP() << "under AddressSanitizer";
  // Each kind of use on each page, and each page's searches, till what is kept of them is there.
  constexpr int kWarmUp = 120;
  constexpr int kRounds = 40;
  // Of what the system's allocator keeps in pieces. A leaked page of forms is 5 MB a round.
  constexpr double kMayGrow = 4.0;
  document().startAnew(*rigs::planStartText("one-kettle"));  // solved soonest
  const int rounds = qEnvironmentVariableIntValue("HEATLEDGER_TEST_ROUNDS");
  const int wanted = rounds > 0 ? rounds : kRounds;
  for (int i = 0; i < kWarmUp; ++i) ASSERT_NO_FATAL_FAILURE(use(i));
  const double before = residentMegabytes();
  for (int i = 0; i < wanted; ++i) {
    ASSERT_NO_FATAL_FAILURE(use(i));
    if (rounds > 0 && i % 25 == 24)
      std::printf("%d rounds: %.1f MB, at first %.1f MB\n", i + 1, residentMegabytes(), before);
  }
  EXPECT_LT(residentMegabytes(), before + kMayGrow) << before << " MB at first";
  gui::choose(gui::Appearance::AsSystem);
}

}  // namespace
