// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/learn_command.hpp"

#include <algorithm>
#include <array>
#include <ctime>
#include <filesystem>
#include <utility>
#include <vector>

#include "gui/telling/learned.hpp"
#include "gui/terminal/interruption.hpp"
#include "gui/terminal/page.hpp"
#include "gui/terminal/plan_input.hpp"
#include "gui/terminal/problem_text.hpp"
#include "gui/terminal/reading_input.hpp"
#include "rigs/answers/answers.hpp"
#include "rigs/answers/kept.hpp"
#include "rigs/answers/learned.hpp"
#include "rigs/answers/read_setting.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/rig_letters.hpp"
#include "rigs/readings/readings_reader.hpp"
#include "rigs/results/cautions.hpp"
#include "rigs/results/result_json.hpp"
#include "rigs/results/result_json_learned.hpp"

namespace gui {
namespace {

using rigs::Told;

// By the clock of whoever keeps it.
std::string today() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  ::localtime_r(&now, &local);
  std::array<char, 16> text{};
  std::strftime(text.data(), text.size(), "%Y-%m-%d", &local);
  return text.data();
}

// What was learned, written into the plan's file; and what is said of it.
std::vector<Told> keepIn(const std::string& file, const rigs::Kept& kept) {
  if (!kept.losses && !kept.surface)
    return {Told(TOLD("Terminal",
                      "Nothing was kept: these readings tell neither its losses nor what its open "
                      "surface gives off."))};
  rigs::saveKeepingBefore(file, kept.document);
  const rigs::Verbatim name{rigs::shownPath(file)};
  const rigs::Verbatim before{rigs::shownPath(rigs::versionBefore(file).string())};
  return {
      kept.losses && kept.surface
          ? Told(
                TOLD("Terminal", "Kept in %1: what it loses, and what its open surface gives off."),
                name)
      : kept.losses ? Told(TOLD("Terminal", "Kept in %1: what it loses."), name)
                    : Told(TOLD("Terminal", "Kept in %1: what its open surface gives off."), name),
      Told(TOLD("Terminal",
                "Every answer from it counts with that. To undo it take out its factors and "
                "\"measured\"; the file as it was is %1."),
           before)};
}

// The plan's document with what was learned, fit to be written. Empty with problems, of the options
// or the document, where it is not.
std::optional<rigs::Kept> keptOf(const Request& request, PlanInput& input, std::size_t rig,
                                 const rigs::Learned& learned, std::string_view text,
                                 std::size_t lines) {
  const std::filesystem::path file(request.readings.file);
  auto kept = rigs::withLearned(input.document, *input.plan, rig, learned,
                                {.name = rigs::shownPath(file.filename().string()),
                                 .lines = lines,
                                 .day = today(),
                                 .text = text},
                                input.ofOptions);
  if (!kept) return std::nullopt;
  // A factor or a list of readings may have grown beyond what a plan takes.
  rigs::Problems ofKept;
  rigs::readPlan(kept->document, input.folder, ofKept);
  if (!rigs::hasErrors(ofKept)) return kept;
  input.ofDocument = std::move(ofKept);
  return std::nullopt;
}

void refuseWhatIfsToBeKept(const Request& request, PlanInput& input) {
  if (!request.readings.keep) return;
  for (const Override& one : request.overrides)
    input.ofOptions.push_back(
        {rigs::Severity::Error, "--keep",
         Told(TOLD("Terminal", "what is kept is of the plan as it is; leave %1 out"),
              rigs::Verbatim{one.option})});
}

std::string shown(const Request& request, const Audience& audience, const rigs::Plan& plan,
                  std::size_t rig, const telling::ReadAndLearned& of, std::vector<Told> keeping) {
  const rigs::Solution solution{
      .plan = plan, .answers = rigs::answer(plan, rigs::Depth::Day), .sweeps = {}, .done = {}};
  if (request.form == Form::Json) {
    const rigs::Solution alone = telling::ofThisRigAlone(solution, rig);
    return rigs::learnedJson(plan, rig, of.read, of.learned,
                             rigs::cautionsFor(rigs::About::Insulation, alone.plan, alone.answers));
  }
  const telling::QuestionView view{.rig = static_cast<int>(rig), .only = rig};
  Page page = pageAbout(plan, audience.reader, rig);
  page.add(telling::whatWasLearned({solution, plan, audience.reader, view}, rig, of));
  if (!keeping.empty()) page.answer.heading(Told(TOLD("Terminal", "Kept for later days")));
  for (Told& one : keeping) page.answer.say(std::move(one));
  return request.form == Form::Csv ? pageCsv(page, audience.reader)
                                   : pageText(page, audience.reader, audience.style);
}

}  // namespace

Finished learnFromReadings(const Request& request, const Audience& audience,
                           rigs::Problems ofOptions) {
  PlanInput input = readPlanInput(request, std::move(ofOptions));
  askForRig(input, TOLD("Terminal", "these readings are of one rig; say of which: %1"));
  refuseWhatIfsToBeKept(request, input);
  const std::string text = textOfReadings(request);
  const std::size_t rig = input.rig.value_or(0);
  beginAsSolved(input, rig);
  rigs::Problems ofReadings;
  rigs::readings::ReadLines read;
  if (input.plan)
    read =
        rigs::readings::readLines(text, rigs::settingOf(*input.plan, rig, nameOfReadings(request)),
                                  correctionsFrom(request.readings), ofReadings);
  if (input.plan && !request.readings.keep)
    rigs::tellWhereCountedTwice(*input.plan, rig, text, nameOfReadings(request), ofReadings);
  const Finished judged = judge(request, audience, input, ofReadings);
  if (judged.exitCode != 0) return judged;

  const Interruption interruption(Interruption::Second::Ends);
  const auto learned = rigs::learnedFrom(
      *input.plan, rig, read.readings,
      {.checked = request.readings.checked, .stirred = !request.readings.unstirred},
      [] { return Interruption::signal() != 0; });
  if (!learned) return {{}, judged.complaint, 128 + Interruption::signal()};
  std::vector<Told> keeping;
  if (request.readings.keep) {
    const auto kept = keptOf(request, input, rig, *learned, text, read.readings.size());
    if (!kept) return judge(request, audience, input, ofReadings);
    keeping = keepIn(request.file, *kept);
  }
  return {shown(request, audience, *input.plan, rig, {read.readings, read.layout, *learned},
                std::move(keeping)),
          judged.complaint, 0};
}

}  // namespace gui
