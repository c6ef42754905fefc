// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/page.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "gui/telling/csv.hpp"
#include "gui/telling/opening.hpp"
#include "gui/telling/rig_words.hpp"
#include "gui/terminal/table_lines.hpp"
#include "gui/terminal/text_layout.hpp"
#include "rigs/plans/rig_letters.hpp"

namespace gui {
namespace {

using rigs::Told;
using telling::Answer;
using telling::Heading;
using telling::Sentence;
using telling::Table;

constexpr std::size_t kLongestLine = 96;  // of prose, however wide the terminal

class Writer {
 public:
  Writer(const rigs::Reader& reader, const TextStyle& style)
      : reader_(reader),
        style_(style),
        width_(std::max(style.width, kNarrowest)),
        prose_(std::min(width_, kLongestLine)) {}

  void gap() {
    if (!text_.empty()) text_ += '\n';
  }
  void strong(const Told& content) {
    underHeading_ = true;
    for (const std::string& part : wrapped(plain(content), prose_)) line(heavy(part));
  }
  // Continuation lines stand under the first word, not under the lead.
  void sentence(const std::string& lead, const Told& content, bool strongly = false) {
    if (content.empty()) return;
    underHeading_ = false;
    const std::string first = lead.empty() ? "  " : "  " + lead + ' ';
    const std::string next(displayWidth(first), ' ');
    bool started = false;
    for (const std::string& part : wrapped(plain(content), prose_ - displayWidth(first))) {
      const std::string whole = (started ? next : first) + part;
      line(strongly ? heavy(whole) : whole);
      started = true;
    }
  }
  void table(const Table& content, const std::vector<Told>& rigMarks) {
    const std::vector<std::string> rows = tableLines(content, reader_, width_, rigMarks);
    if (!rows.empty() && !underHeading_) gap();
    underHeading_ = false;
    for (const std::string& row : rows) line(plainText(row));
  }
  std::string take() { return std::move(text_); }

 private:
  std::string heavy(const std::string& part) const {
    return style_.bold ? "\033[1m" + part + "\033[0m" : part;
  }
  std::string plain(const Told& content) const { return plainText(rigs::tell(content, reader_)); }
  void line(const std::string& content) { text_ += content + '\n'; }

  const rigs::Reader& reader_;
  TextStyle style_;
  std::size_t width_, prose_;
  std::string text_;
  bool underHeading_ = false;
};

std::string leadOf(const Sentence& sentence, const Answer& of) {
  if (!sentence.rig || !of.lettered) return {};
  const std::string letter = of.letterOf(*sentence.rig);
  return sentence.goesOn ? std::string(letter.size(), ' ') : letter;
}

void write(const telling::Block& block, const Answer& of, Writer& out) {
  if (const auto* heading = std::get_if<Heading>(&block)) {
    out.gap();
    out.strong(heading->text);
  } else if (const auto* sentence = std::get_if<Sentence>(&block)) {
    out.sentence(leadOf(*sentence, of), of.textOf(*sentence));
  } else {
    out.table(std::get<Table>(block), of.rigMarks);
  }
}

// The first that a page says of a rig.
void legend(const Page& page, std::size_t rig, Writer& out) {
  const rigs::Verbatim name{page.rigNames[rig]};
  const Told mark = page.answer.markOf(rig);
  Told text = mark.empty() ? Told::just(name) : Told(TOLD("Answer", "%1 [%2]"), name, mark);
  const std::vector<Told>& more = page.verdicts.empty() ? page.rigWords : page.verdicts;
  if (rig < more.size()) text = Told(TOLD("Terminal", "%1: %2."), std::move(text), more[rig]);
  out.sentence(page.answer.lettered ? page.answer.letterOf(rig) : "", text, !mark.empty());
}

void addMissing(const std::vector<Told>& from, std::vector<Told>& to) {
  for (const Told& one : from)
    if (std::find(to.begin(), to.end(), one) == to.end()) to.push_back(one);
}

}  // namespace

void Page::add(const Answer& further) {
  if (!further.title.empty() && further.title != title) answer.heading(further.title);
  const auto firstOfRest =
      further.sentences.begin() + static_cast<std::ptrdiff_t>(further.warnings);
  addMissing({further.sentences.begin(), firstOfRest}, warnings);
  for (auto sentence = firstOfRest; sentence != further.sentences.end(); ++sentence) {
    // What opens several questions is said once a page.
    const bool said =
        std::any_of(answer.blocks.begin(), answer.blocks.end(), [&](const telling::Block& block) {
          const auto* before = std::get_if<Sentence>(&block);
          return before && before->text == *sentence;
        });
    if (!said) answer.say(*sentence);
  }
  answer.blocks.insert(answer.blocks.end(), further.blocks.begin(), further.blocks.end());
  if (answer.rigMarks.empty()) answer.rigMarks = further.rigMarks;
  if (!further.notes.empty()) {
    answer.heading(Told(TOLD("Terminal", "Notes")));
    for (const Told& note : further.notes) answer.say(note);
  }
  addMissing(further.cautions, answer.cautions);
  addMissing(further.furtherCautions, answer.furtherCautions);
  addMissing(further.dayCautions, answer.dayCautions);
}

Page pageAbout(const rigs::Plan& plan, const rigs::Reader& reader,
               std::optional<std::size_t> only) {
  Page page;
  page.only = only;
  page.opening = telling::openingOf(plan);
  page.title = page.opening.front();
  page.opening.erase(page.opening.begin());
  for (std::size_t i = 0; i < plan.rigs.size(); ++i) {
    page.rigNames.push_back(plan.rigs[i].name);
    // Who is alone is like nobody on the page.
    page.rigWords.push_back(
        (only ? telling::rigInFull(plan, i, reader) : telling::rigInWords(plan, i, reader)).text);
  }
  page.answer.lettered = page.rigNames.size() > 1;
  page.answer.setSlots(rigs::slotsOf(plan.rigs));
  return page;
}

std::string verdictsAlone(const Page& page, const rigs::Reader& reader, const TextStyle& style) {
  Writer out(reader, style);
  out.strong(page.title);
  for (const Told& warning : page.warnings) out.sentence("", warning, true);
  for (std::size_t i = 0; i < page.rigNames.size(); ++i)
    if (!page.only || i == *page.only) legend(page, i, out);
  for (const Told& caution : page.vital) out.sentence("·", caution);
  return out.take();
}

std::string pageText(const Page& page, const rigs::Reader& reader, const TextStyle& style) {
  Writer out(reader, style);
  out.strong(page.title);
  for (const Told& sentence : page.opening) out.sentence("", sentence);
  for (const Told& warning : page.warnings) out.sentence("", warning, true);
  if (!page.rigNames.empty()) out.gap();
  const bool isOne = page.only || page.rigNames.size() == 1;
  for (std::size_t i = 0; i < page.rigNames.size(); ++i) {
    if (page.only && i != *page.only) continue;
    legend(page, i, out);
    // Of several a page with verdicts has no room to say what they are.
    if (isOne && !page.verdicts.empty() && i < page.rigWords.size())
      out.sentence("", Told(TOLD("Terminal", "It is %1."), page.rigWords[i]));
  }
  for (const telling::Block& block : page.answer.blocks) write(block, page.answer, out);
  std::vector<Told> cautions = page.answer.furtherCautions;
  if (const auto more = static_cast<long long>(page.answer.dayCautions.size()); more > 0)
    cautions.push_back(Told(TOLD("Terminal",
                                 "\"heatledger safety\" tells %1 more of this plan's day: scalds, "
                                 "lifting, cooling and the like."),
                            rigs::Count{more}));
  cautions.insert(cautions.end(), page.answer.cautions.begin(), page.answer.cautions.end());
  if (!cautions.empty()) {
    out.gap();
    out.strong(Told(TOLD("Terminal", "Take care")));
    for (const Told& caution : cautions) out.sentence("·", caution);
  }
  return out.take();
}

std::string pageCsv(const Page& page, const rigs::Reader& reader) {
  if (!page.only) return telling::csvOf(page.answer, page.rigNames, reader);
  return telling::csvOf(page.answer, {page.rigNames.at(*page.only)}, reader);
}

}  // namespace gui
