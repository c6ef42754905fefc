// SPDX-License-Identifier: GPL-3.0-or-later
// What a drag costs: from an edited number to the painted picture, four rigs. Offscreen, so that
// nothing waits for a display.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QEventLoop>
#include <QPixmap>
#include <QTimer>
#include <array>
#include <clocale>
#include <memory>
#include <string>

#include "gui/window/plan_chart.hpp"
#include "gui/window/question_page.hpp"
#include "gui/window/solver.hpp"
#include "rigs/plan_writer.hpp"

namespace {

using gui::Question;

const rigs::Plan& demo() {
  static const rigs::Plan plan = [] {
    rigs::Problems problems;
    return *rigs::readPlan(rigs::demoPlanText(), ".", problems);
  }();
  return plan;
}

// The element a little stronger with every step, as under a slider.
rigs::Plan edited(int step) {
  rigs::Plan plan = demo();
  for (rigs::RigPlan& rig : plan.rigs) {
    const physics::Power more = physics::watts(10.0 * (step % 40));
    rig.rig.element.rating += more;
    rig.bare.element.rating += more;
    rig.jacketed.element.rating += more;
  }
  return plan;
}

struct Shown {
  gui::QuestionPage page;
  explicit Shown(Question question) {
    page.resize(1280, 720);
    page.setQuestion(question);
    static_cast<QWidget&>(page).show();
    page.show(gui::solveAtOnce(demo()), rigs::UnitSystem::SI);
    QApplication::processEvents();
  }
  void paint() {
    QPixmap screen(page.size());
    page.render(&screen);
    benchmark::DoNotOptimize(screen);
  }
};

// The whole way: solving off the thread, the answer's text and table, and the paint. The days
// come first; the time stops when they are on the screen. At first the solver is idle, as for one
// edit; under a continuous drag it is still at the last edit's sweeps.
void editToPaintedPicture(benchmark::State& state, bool dragging) {
  Shown shown(static_cast<Question>(state.range(0)));
  gui::Solver solver;
  int edition = 0;
  int step = 0;
  bool painted = false;
  QEventLoop wait;
  QObject::connect(&solver, &gui::Solver::solved, &wait, [&](const gui::SolutionPtr& solution) {
    if (solution->edition != edition || painted) return;
    shown.page.show(solution, rigs::UnitSystem::SI);
    shown.paint();
    painted = true;
    wait.quit();
  });
  for (auto _ : state) {
    if (!dragging) {
      state.PauseTiming();
      while (!solver.isIdle()) QApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
      state.ResumeTiming();
    }
    painted = false;
    solver.solve(std::make_shared<const rigs::Plan>(edited(++step)), ++edition);
    wait.exec();
  }
}
void EditToPaintedPicture(benchmark::State& state) { editToPaintedPicture(state, false); }
BENCHMARK(EditToPaintedPicture)->DenseRange(0, 8)->Unit(benchmark::kMillisecond)->UseRealTime();
void DragToPaintedPicture(benchmark::State& state) { editToPaintedPicture(state, true); }
BENCHMARK(DragToPaintedPicture)->Arg(0)->Unit(benchmark::kMillisecond)->UseRealTime();

// What the days of four rigs take by themselves, curves and jackets included.
void DaysOfFourRigs(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(rigs::answer(demo(), rigs::Depth::DayAndJacket, true));
  }
}
BENCHMARK(DaysOfFourRigs)->Unit(benchmark::kMillisecond)->UseRealTime();

// The interface thread's share of it: the answer, its table, and the paint.
void SolutionToPaintedPicture(benchmark::State& state) {
  Shown shown(static_cast<Question>(state.range(0)));
  const std::array<gui::SolutionPtr, 2> two{gui::solveAtOnce(edited(1)),
                                            gui::solveAtOnce(edited(2))};
  std::size_t i = 0;
  for (auto _ : state) {
    shown.page.show(two[++i % 2], rigs::UnitSystem::SI);
    shown.paint();
  }
}
BENCHMARK(SolutionToPaintedPicture)->DenseRange(0, 8)->Unit(benchmark::kMillisecond);

void CrossHairMove(benchmark::State& state) {
  gui::PlanChart chart;
  chart.resize(900, 500);
  static_cast<QWidget&>(chart).show();
  chart.show(gui::answerTo(Question::HowLong, *gui::solveAtOnce(demo()), rigs::UnitSystem::SI)
                 .pictures[0]);
  QPixmap screen(chart.size());
  double x = 0.0;
  for (auto _ : state) {
    x = x > 200.0 ? 0.0 : x + 1.0;
    chart.setCrosshair(x);
    chart.render(&screen);
  }
}
BENCHMARK(CrossHairMove)->Unit(benchmark::kMillisecond);

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
