// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/help_search.hpp"

#include <unistd.h>

#include <chrono>
#include <memory>
#include <string>

#include "gui/terminal/interruption.hpp"
#include "gui/terminal/text_layout.hpp"
#include "rigs/answers/helps.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/words/told.hpp"

namespace gui {
namespace {

using rigs::Count;
using rigs::Told;

class ProgressLine {
 public:
  explicit ProgressLine(const rigs::Reader& reader)
      : reader_(reader), shown_(::isatty(STDERR_FILENO) == 1) {}
  ~ProgressLine() { wipe(); }
  ProgressLine(const ProgressLine&) = delete;
  ProgressLine& operator=(const ProgressLine&) = delete;

  void show(std::uint64_t done, std::uint64_t of) {
    if (!shown_) return;
    const auto now = std::chrono::steady_clock::now();
    const bool many = of > kMany && done == 0;
    if (!many && now < next_) return;
    next_ = now + std::chrono::milliseconds(200);
    const Count all{static_cast<long long>(of)};
    const Told text =
        done == 0 ? Told(TOLD("Terminal", "%1 ways to try; Ctrl-C shows what was found"), all)
                  : Told(TOLD("Terminal", "%1 of %2 ways tried; Ctrl-C shows what was found"),
                         Count{static_cast<long long>(done)}, all);
    write("\r\033[K" + plainText(rigs::tell(text, reader_)));
    written_ = true;
  }

 private:
  // A search of so many takes more than a moment.
  static constexpr std::uint64_t kMany = 5000;

  static void write(const std::string& text) {
    static_cast<void>(rigs::writeAll(STDERR_FILENO, text));
  }
  void wipe() {
    if (written_) write("\r\033[K");
  }

  const rigs::Reader& reader_;
  bool shown_;
  bool written_ = false;
  std::chrono::steady_clock::time_point next_ =
      std::chrono::steady_clock::now() + std::chrono::seconds(1);
};

}  // namespace

void addWhatHelps(rigs::Solution& solution, std::optional<std::size_t> rig, std::size_t together,
                  const rigs::Reader& reader) {
  const Interruption interruption(Interruption::Second::IsNothing);
  ProgressLine line(reader);
  const rigs::Watched watched{
      .stop = [] { return Interruption::signal() != 0; },
      .progress = [&](std::uint64_t done, std::uint64_t of) { line.show(done, of); }};
  for (std::size_t i = 0; i < solution.answers.rigs.size(); ++i)
    if (!rig || *rig == i)
      solution.answers.rigs[i].helps = std::make_shared<const rigs::HelpsAnswer>(
          rigs::helps(solution.plan, i, together, watched));
}

}  // namespace gui
