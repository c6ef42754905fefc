// SPDX-License-Identifier: GPL-3.0-or-later
// What a drag costs: from an edited number to the painted picture, four rigs. Offscreen, so that
// nothing waits for a display.
#include <benchmark/benchmark.h>

#include <QApplication>
#include <QEventLoop>
#include <QMouseEvent>
#include <QPixmap>
#include <QTemporaryDir>
#include <QTimer>
#include <array>
#include <clocale>
#include <functional>
#include <memory>
#include <string>

#include "gui/telling/answer_to.hpp"
#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/main_window.hpp"
#include "gui/window/questions/question_page.hpp"
#include "gui/window/questions/solver.hpp"
#include "gui/window/words/reader.hpp"
#include "rigs/plans/plan_writer.hpp"

namespace {

using gui::telling::Question;

const auto kLastQuestion = static_cast<int>(gui::telling::allQuestions().size()) - 1;

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

// The wanted time under a hand that pulls its line.
rigs::Plan withGoal(int step) {
  rigs::Plan plan = demo();
  plan.goals.boilWithin = physics::minutes(25.0 + 0.5 * (step % 60));
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

// The whole way: solving off the thread, the answer's text and table, and the paint, until the
// first picture of this edit with everything its question needs is on the screen. At first the
// solver is idle, as for one edit; under a continuous drag it is still at the last edit's rest.
void editToPaintedPicture(benchmark::State& state, bool dragging,
                          const std::function<rigs::Plan(int)>& edit) {
  Shown shown(static_cast<Question>(state.range(0)));
  gui::Solver solver;
  solver.lookAt(shown.page.needed());
  int edition = 0;
  int step = 0;
  bool painted = false;
  QEventLoop wait;
  QObject::connect(&solver, &gui::Solver::solved, &wait, [&](const gui::SolutionPtr& solution) {
    if (painted) return;
    shown.page.show(solution, rigs::UnitSystem::SI);
    if (solution->edition != edition || !solution->done.covers(shown.page.needed())) return;
    shown.paint();
    painted = true;
    wait.quit();
  });
  // What was open before the hand began.
  solver.solve(std::make_shared<const rigs::Plan>(edit(0)), ++edition);
  wait.exec();
  while (!solver.isIdle()) QApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
  for (auto _ : state) {
    if (!dragging) {
      state.PauseTiming();
      while (!solver.isIdle()) QApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
      state.ResumeTiming();
    }
    painted = false;
    solver.solve(std::make_shared<const rigs::Plan>(edit(++step)), ++edition);
    wait.exec();
  }
}
void EditToPaintedPicture(benchmark::State& state) { editToPaintedPicture(state, false, edited); }
BENCHMARK(EditToPaintedPicture)
    ->DenseRange(0, kLastQuestion)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
void DragToPaintedPicture(benchmark::State& state) { editToPaintedPicture(state, true, edited); }
BENCHMARK(DragToPaintedPicture)
    ->DenseRange(0, kLastQuestion)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();
void GoalDragToPaintedPicture(benchmark::State& state) {
  editToPaintedPicture(state, true, withGoal);
}
BENCHMARK(GoalDragToPaintedPicture)
    ->Arg(static_cast<int>(Question::WhichElement))
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();

// The line itself under the hand, in the whole window: from the mouse's move to the painted line.
// The plan, its fields and the solver follow; the picture does not wait for them.
void GoalDragInTheWindow(benchmark::State& state) {
  const QTemporaryDir recovery;
  gui::MainWindow window({}, recovery.path());
  window.resize(1280, 720);
  window.setQuestion(Question::WhichElement);
  window.show();
  while (!window.isSettled()) QApplication::processEvents(QEventLoop::WaitForMoreEvents, 5);
  auto* chart = window.page().findChild<gui::PlanChart*>();
  chart->grab();
  const gui::ChartLayout layout =
      gui::layOut(chart->picture(), chart->size(),
                  gui::lookOf(chart->palette(), chart->font(), chart->locale()));
  const QPointF grip = layout.at({2000.0, *chart->picture().draggable});
  const auto mouse = [&](QEvent::Type type, QPointF at) {
    QMouseEvent event(type, at, chart->mapToGlobal(at), Qt::LeftButton, Qt::LeftButton, {});
    QApplication::sendEvent(chart, &event);
  };
  mouse(QEvent::MouseButtonPress, grip);
  int step = 0;
  for (auto _ : state) {
    mouse(QEvent::MouseMove, grip - QPointF(0.0, 4.0 * (++step % 20)));
    QApplication::processEvents();
    chart->repaint();
  }
  mouse(QEvent::MouseButtonRelease, grip);
}
BENCHMARK(GoalDragInTheWindow)->Unit(benchmark::kMillisecond)->UseRealTime();

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
BENCHMARK(SolutionToPaintedPicture)->DenseRange(0, kLastQuestion)->Unit(benchmark::kMillisecond);

void CrossHairMove(benchmark::State& state) {
  gui::PlanChart chart;
  chart.resize(900, 500);
  static_cast<QWidget&>(chart).show();
  chart.show(gui::telling::answerTo(Question::HowLong, *gui::solveAtOnce(demo()),
                                    gui::readerOf(rigs::UnitSystem::SI))
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
