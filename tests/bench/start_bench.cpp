// SPDX-License-Identifier: GPL-3.0-or-later
// From starting the program to its first painted answer, and the most memory it has taken by then.
// Every round is a process of its own that runs the very window of the program; offscreen, so that
// no display is waited for.
#include <benchmark/benchmark.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QApplication>
#include <QEvent>
#include <QTemporaryDir>
#include <QTimer>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <sstream>
#include <string>

#include "gui/window/charts/plan_chart.hpp"
#include "gui/window/window_program.hpp"

namespace {

constexpr const char* kChild = "--first-answer";

long long nowInNanoseconds() {  // of a clock that all processes share
  return std::chrono::steady_clock::now().time_since_epoch().count();
}

double mostMegabytes() {
  std::ifstream status("/proc/self/status");
  for (std::string line; std::getline(status, line);) {
    double kilobytes = 0.0;
    if (line.rfind("VmHWM:", 0) == 0 && std::istringstream(line.substr(6)) >> kilobytes)
      return kilobytes / 1024.0;
  }
  return 0.0;
}

// Ends the program as soon as a chart with curves or bars has been painted.
class FirstAnswer : public QObject {
 public:
  using QObject::QObject;
  bool eventFilter(QObject* watched, QEvent* event) override {
    const auto* chart =
        event->type() == QEvent::Paint ? qobject_cast<gui::PlanChart*>(watched) : nullptr;
    if (chart && !(chart->picture().lines.empty() && chart->picture().stacks.empty()) && !seen_) {
      seen_ = true;
      QTimer::singleShot(0, this, [] {  // the paint is done
        std::printf("%lld %f\n", nowInNanoseconds(), mostMegabytes());
        std::fflush(stdout);
        QCoreApplication::exit();
      });
    }
    return QObject::eventFilter(watched, event);
  }

 private:
  bool seen_ = false;
};

bool isChild = false;

void watch() {
  if (!isChild) return;
  QTimer::singleShot(0, qApp, [] { qApp->installEventFilter(new FirstAnswer(qApp)); });
}
Q_COREAPP_STARTUP_FUNCTION(watch)

void StartToFirstAnswer(benchmark::State& state) {
  const QTemporaryDir home;  // nobody's settings, nobody's unsaved plans
  for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_RUNTIME_DIR"})
    qputenv(name, home.path().toLocal8Bit());
  double megabytes = 0.0;
  for (auto _ : state) {
    std::array<int, 2> pipe{};
    if (::pipe(pipe.data()) != 0) return state.SkipWithError("no pipe");
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, pipe[1], STDOUT_FILENO);
    std::string self = "/proc/self/exe";
    std::string word = kChild;
    std::array<char*, 3> arguments{self.data(), word.data(), nullptr};
    pid_t child = 0;
    const long long begun = nowInNanoseconds();
    const int failed =
        posix_spawn(&child, self.c_str(), &actions, nullptr, arguments.data(), environ);
    close(pipe[1]);
    posix_spawn_file_actions_destroy(&actions);
    std::string said;
    char letter = 0;
    while (!failed && read(pipe[0], &letter, 1) == 1) said += letter;
    close(pipe[0]);
    if (!failed) waitpid(child, nullptr, 0);
    long long painted = 0;
    std::istringstream(said) >> painted >> megabytes;
    if (painted <= begun) return state.SkipWithError("no answer was painted");
    state.SetIterationTime(1e-9 * static_cast<double>(painted - begun));
  }
  state.counters["VmHWM_MB"] = megabytes;
}
BENCHMARK(StartToFirstAnswer)->Unit(benchmark::kMillisecond)->UseManualTime()->Iterations(20);

}  // namespace

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  isChild = argc == 2 && std::strcmp(argv[1], kChild) == 0;
  if (isChild) return gui::runWindow(argc, argv, "");
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
