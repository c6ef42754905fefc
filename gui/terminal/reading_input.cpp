// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/reading_input.hpp"

#include "gui/terminal/problem_text.hpp"
#include "rigs/answers/read_setting.hpp"
#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/readings/cells.hpp"
#include "rigs/readings/readings_reader.hpp"
#include "rigs/results/result_json.hpp"

namespace gui {

rigs::readings::Corrections correctionsFrom(const ReadingOptions& typed) {
  rigs::readings::Corrections corrections{
      .time = typed.time, .temperature = typed.temperature, .leaveOutBadRows = typed.leaveOut};
  using rigs::readings::Count;
  if (typed.unit) corrections.temperatureUnit = rigs::readings::unitFrom(*typed.unit);
  if (typed.since)
    corrections.count = *typed.since == "s"     ? Count::Seconds
                        : *typed.since == "min" ? Count::Minutes
                                                : Count::Hours;
  if (typed.separator)
    corrections.separator = *typed.separator == "comma"       ? ','
                            : *typed.separator == "semicolon" ? ';'
                            : *typed.separator == "tab"       ? '\t'
                                                              : ' ';
  return corrections;
}

std::string nameOfReadings(const Request& request) {
  return request.readings.file == "-" ? "-" : rigs::shownPath(request.readings.file);
}

std::string textOfReadings(const Request& request) {
  const std::string& file = request.readings.file;
  return rigs::readText(file == "-" ? "/dev/stdin" : file, rigs::readings::kLargestLog);
}

void beginAsSolved(PlanInput& input, std::size_t rig) {
  if (input.plan) input.plan = rigs::begunToBeRead(*input.plan, rig, input.ofDocument);
}

Finished judge(const Request& request, const Audience& audience, const PlanInput& input,
               const rigs::Problems& ofReadings) {
  const bool fine = input.fine() && !rigs::hasErrors(ofReadings);
  if (request.form == Form::Json && !fine) {
    rigs::Problems all = input.allProblems();
    all.insert(all.end(), ofReadings.begin(), ofReadings.end());
    return {rigs::problemsJson(all, rigs::inEnglish(input.name)), {}, 2};
  }
  const auto told = [&](const rigs::Problems& some, const rigs::Told& of) {
    return problemText(some, of, audience.reader, audience.style.width);
  };
  return {{},
          told(input.ofOptions, theCommand()) + told(input.ofDocument, input.name) +
              told(ofReadings, rigs::Told::just(rigs::Verbatim{nameOfReadings(request)})),
          fine ? 0 : 2};
}

}  // namespace gui
