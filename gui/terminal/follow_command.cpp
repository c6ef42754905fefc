// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/follow_command.hpp"

#include <poll.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <cerrno>
#include <chrono>
#include <set>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

#include "gui/terminal/followed_day.hpp"
#include "gui/terminal/interruption.hpp"
#include "gui/terminal/plan_input.hpp"
#include "gui/terminal/problem_text.hpp"
#include "gui/terminal/reading_input.hpp"
#include "gui/terminal/text_layout.hpp"
#include "gui/terminal/wall_clock.hpp"
#include "gui/terminal/watched_file.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/results/result_json.hpp"

namespace gui {
namespace {

using rigs::Told;
using rigs::Verbatim;
using Steady = std::chrono::steady_clock;

constexpr int kPollMilliseconds = 1000;
// How often it is looked whether time alone has brought something to heed.
constexpr std::chrono::seconds kLooksAgain{15};
// Longer ones are no reading.
constexpr std::size_t kLongestTyped = 1000;

rigs::readings::WallClock nowFor(const Request& request) {
  return request.readings.now ? wallClockFrom(*request.readings.now) : wallClock();
}

bool wasInterrupted() { return Interruption::signal() != 0; }

// Something was typed that nobody has read yet.
bool somethingWaits() {
  pollfd input{.fd = STDIN_FILENO, .events = POLLIN, .revents = 0};
  return ::poll(&input, 1, 0) > 0;
}

// --- Lines that are typed, as they arrive.

class TypedLines {
 public:
  bool isOpen() const { return isOpen_; }

  // What was finished since the last call; call it when something has arrived.
  std::vector<std::string> take() {
    char some[4096];
    const ssize_t size = ::read(STDIN_FILENO, some, sizeof some);
    std::vector<std::string> lines;
    if (size < 0 && (errno == EINTR || errno == EAGAIN)) return lines;
    if (size <= 0) {
      isOpen_ = false;
      if (!unfinished_.empty()) lines.push_back(std::exchange(unfinished_, {}));
      return lines;
    }
    for (const char c : std::string_view(some, static_cast<std::size_t>(size))) {
      if (c == '\n')
        lines.push_back(std::exchange(unfinished_, {}));
      else if (unfinished_.size() <= kLongestTyped)
        unfinished_ += c;
    }
    return lines;
  }

 private:
  std::string unfinished_;
  bool isOpen_ = true;
};

// --- Watching.

class Watch {
 public:
  // While it `listens`, what is typed comes before what is being computed.
  Watch(const Request& request, const Audience& audience, FollowedDay& day, WatchedFile& file,
        std::atomic<bool>& listens)
      : request_(request), audience_(audience), day_(day), file_(file), listens_(listens) {
    listens_ = true;
  }

  // Nothing that stood there before is told again.
  void remember(const rigs::Problems& problems) {
    for (const rigs::Problem& one : problems) told_.insert(keyOf(one));
  }

  int run(const std::string& text) {
    text_ = text;
    sayHowItWorks();
    bool goesOn = learn();
    while (goesOn && !wasInterrupted()) goesOn = wait() && lookAtFile() && lookAtClock();
    return wasInterrupted() ? 128 + Interruption::signal() : exitCode_;
  }

 private:
  static std::string keyOf(const rigs::Problem& one) {
    return one.where + '\n' + rigs::inEnglish(one.message);
  }

  // False where nobody reads any more.
  bool write(const std::string& text) {
    if (rigs::writeAll(STDOUT_FILENO, text)) return true;
    if (errno == EPIPE) return false;
    exitCode_ = 1;
    complain(Told(TOLD("Terminal", "the answer could not be written: %1."),
                  Verbatim{std::generic_category().message(errno)}));
    return false;
  }
  void complain(const Told& sentence) const {
    static_cast<void>(rigs::writeAll(
        STDERR_FILENO, complaintText(sentence, audience_.reader, audience_.style.width)));
  }
  void tell(const rigs::Problems& problems, const Told& of) const {
    static_cast<void>(rigs::writeAll(
        STDERR_FILENO, problemText(problems, of, audience_.reader, audience_.style.width)));
  }
  // One sentence among the blocks; programs have no use for it.
  bool say(const Told& sentence) {
    if (request_.form == Form::Json) return true;
    std::string text;
    for (const std::string& line :
         wrapped(plainText(rigs::tell(sentence, audience_.reader)), audience_.style.width))
      text += line + '\n';
    return write(text);
  }
  Told fileName() const { return Told::just(Verbatim{nameOfReadings(request_)}); }

  void sayHowItWorks() {
    const Told name = fileName();
    say(file_.isThere()
            ? Told(
                  TOLD("Terminal",
                       "Following %1. Type what you read, such as 66.3, \"lid on\" or \"boil\": it "
                       "is written there with the time. Ctrl-C ends."),
                  name)
            : Told(TOLD("Terminal",
                        "%1 is not there yet and is waited for. Type what you read, such as 66.3, "
                        "\"lid on\" or \"boil\": that begins it. Ctrl-C ends."),
                   name));
  }

  bool showBlock() {
    const rigs::Followed followed = day_.at(nowFor(request_));
    remember(followed);
    if (request_.form == Form::Json) return write(day_.shown(followed));
    std::string rule;
    for (std::size_t i = 0; i < std::min<std::size_t>(audience_.style.width, 60); ++i) rule += "─";
    return write('\n' + rule + '\n' + day_.shown(followed)) && sayWhatWaits();
  }
  bool sayWhatWaits() {
    if (wholeLines(text_).size() == text_.size()) return true;
    return say(Told(TOLD("Terminal", "The last line of %1 has no end yet; it waits for its rest."),
                    fileName()));
  }

  void remember(const rigs::Followed& followed) {
    heeded_.clear();
    for (const rigs::Alarm& one : followed.alarms) heeded_.emplace_back(one.what, one.isNow);
    due_ = !followed.coming.empty() && followed.coming.front().isDue;
    lookedAgain_ = Steady::now();
  }

  // False where it is to end. Where something was typed meanwhile it is done anew afterwards.
  bool learn() {
    isBehind_ = !day_.learn();
    if (isBehind_) return !wasInterrupted();
    return showBlock();
  }

  // --- What changes.

  bool wait() {
    pollfd input{.fd = typed_.isOpen() ? STDIN_FILENO : -1, .events = POLLIN, .revents = 0};
    if (::poll(&input, 1, kPollMilliseconds) <= 0 || input.revents == 0) return true;
    const std::vector<std::string> lines = typed_.take();
    listens_ = typed_.isOpen();
    bool again = isBehind_;
    for (const std::string& line : lines) again = take(line) || again;
    return !again || update();
  }

  // Whether a new block is due.
  bool take(const std::string& line) {
    if (rigs::readings::withoutBlanks(line).empty()) return true;  // shows it again
    // What others wrote meanwhile is read here, too, and told all the same.
    const bool changed = file_.hasChanged();
    try {
      const std::string text = file_.read();
      const FollowedDay::Typed typed = day_.typed(line, text, nowFor(request_));
      if (typed.wrong.empty()) {
        file_.append(typed.line);
        return true;
      }
      tell(typed.wrong, Told(TOLD("Terminal", "what was typed, and is not written")));
    } catch (const rigs::FileError& error) {
      complain(Told(TOLD("Terminal", "%1; not written: %2"), error.told(), rigs::Quoted{line}));
    }
    return changed;
  }

  bool lookAtFile() { return !file_.hasChanged() || update(); }

  bool update() {
    try {
      text_ = file_.read();
      failed_ = {};
    } catch (const rigs::FileError& error) {
      if (!(failed_ == error.told())) complain(Told(TOLD("Terminal", "%1."), error.told()));
      failed_ = error.told();
      return true;
    }
    rigs::Problems fresh;
    for (rigs::Problem& one : day_.read(wholeLines(text_), true))
      if (told_.insert(keyOf(one)).second) fresh.push_back(std::move(one));
    tell(fresh, fileName());
    return learn();
  }

  bool lookAtClock() {
    if (request_.readings.now || isBehind_) return true;
    const auto now = wallClock();
    if (const auto jump = jumps_.look(now, Steady::now()))
      return say(Told(TOLD("Terminal", "The clock went from %1 to %2 meanwhile."),
                      rigs::Clock{physics::seconds(jump->from)},
                      rigs::Clock{physics::seconds(jump->to)})) &&
             showBlock();
    if (Steady::now() - lookedAgain_ < kLooksAgain) return true;
    lookedAgain_ = Steady::now();
    return !hasSomethingNew(day_.at(now)) || showBlock();
  }
  // What time alone has brought.
  bool hasSomethingNew(const rigs::Followed& followed) const {
    const bool due = !followed.coming.empty() && followed.coming.front().isDue;
    if (due && !due_) return true;
    return std::any_of(followed.alarms.begin(), followed.alarms.end(), [&](const auto& one) {
      return std::find(heeded_.begin(), heeded_.end(), std::pair(one.what, one.isNow)) ==
             heeded_.end();
    });
  }

  const Request& request_;
  const Audience& audience_;
  FollowedDay& day_;
  WatchedFile& file_;
  std::atomic<bool>& listens_;
  TypedLines typed_;
  ClockJumps jumps_;
  std::string text_;
  std::set<std::string> told_;
  std::vector<std::pair<rigs::AlarmOf, bool>> heeded_;
  bool due_ = false;
  bool isBehind_ = false;  // what is shown is not by all that was read
  Steady::time_point lookedAgain_ = Steady::now();
  Told failed_;
  int exitCode_ = 0;
};

}  // namespace

Finished followADay(const Request& request, const Audience& audience, rigs::Problems ofOptions) {
  PlanInput input = readPlanInput(request, std::move(ofOptions));
  askForRig(input, TOLD("Terminal", "a day is followed of one rig; say of which: %1"));
  beginAsSolved(input, input.rig.value_or(0));
  const std::string& path = request.readings.file;
  const bool once = request.readings.once;
  WatchedFile file(path, rigs::readings::kLargestLog);
  const std::string text = once ? textOfReadings(request) : file.read();
  if (path != "-" && !request.file.empty() && rigs::isSameFile(path, request.file))
    input.ofOptions.push_back(
        {rigs::Severity::Error, "--readings",
         Told(TOLD("Terminal", "%1 is the plan; readings are in a file of their own"),
              Verbatim{rigs::shownPath(path)})});
  const Interruption interruption(Interruption::Second::Ends);
  std::atomic<bool> listens = false;
  const auto stop = [&listens] { return wasInterrupted() || (listens && somethingWaits()); };
  std::optional<FollowedDay> day;
  rigs::Problems ofReadings;
  if (input.plan) {
    day.emplace(*input.plan, input.rig.value_or(0), request, audience, stop);
    ofReadings = day->read(once ? std::string_view(text) : wholeLines(text), false);
  }
  const Finished judged = judge(request, audience, input, ofReadings);
  if (judged.exitCode != 0) return judged;
  if (once) {
    if (!day->learn()) return {{}, judged.complaint, 128 + Interruption::signal()};
    return {day->shown(day->at(nowFor(request))), judged.complaint, 0};
  }
  static_cast<void>(rigs::writeAll(STDERR_FILENO, judged.complaint));
  Watch watch(request, audience, *day, file, listens);
  watch.remember(ofReadings);
  return {{}, {}, watch.run(text)};
}

}  // namespace gui
