// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/sheet_text.hpp"

#include <algorithm>
#include <utility>
#include <vector>

#include "gui/terminal/text_layout.hpp"

namespace gui {
namespace {

using rigs::Told;
using telling::Sheet;
using telling::SheetLine;

constexpr std::size_t kLongestSheetLine = 96;  // of prose, however wide the terminal

class SheetPage {
 public:
  SheetPage(const rigs::Reader& reader, const TextStyle& style)
      : reader_(reader),
        bold_(style.bold),
        width_(std::clamp(style.width, kNarrowest, kLongestSheetLine)) {}

  void gap() { text_ += '\n'; }
  void strong(const Told& told) { lines("", told, true); }
  void say(const Told& told, const std::string& lead = "  ", bool strongly = false) {
    lines(lead, told, strongly);
  }

  void line(const SheetLine& line, std::size_t times) {
    if (!line.newDay.empty()) {
      gap();
      say(line.newDay, "  ", true);
    }
    const std::string clock = plain(line.clock());
    const std::string box = line.isToDo ? "[ ] " : "    ";
    std::vector<std::string> left{clock, plain(line.band)};
    std::vector<Part> right;
    add(right, sentenceOf(line), true, times);
    add(right, plain(telling::sideBySide(line.expected)), false, times);
    std::string writing;
    for (const Told& one : line.toWrite)
      writing += (writing.empty() ? "" : "  ") + plain(one) + " ________";
    add(right, writing, false, times);
    const std::size_t rows = std::max<std::size_t>(right.size(), left[1].empty() ? 1 : 2);
    for (std::size_t row = 0; row < rows; ++row) {
      std::string whole = "  " + padded(row < left.size() ? left[row] : "", times) + "  " +
                          (row == 0 ? box : "    ");
      if (row < right.size()) whole += heavy(right[row].text, right[row].strongly);
      text_ += whole.substr(0, whole.find_last_not_of(' ') + 1) + '\n';
    }
  }
  std::size_t timesOf(const Sheet& sheet) const {
    std::size_t widest = 5;
    for (const SheetLine& one : sheet.lines)
      widest = std::max({widest, displayWidth(plain(one.band)), displayWidth(plain(one.clock()))});
    return widest;
  }
  std::string take() { return std::move(text_); }

 private:
  struct Part {
    std::string text;
    bool strongly = false;
  };

  std::string plain(const Told& told) const { return plainText(rigs::tell(told, reader_)); }
  std::string heavy(const std::string& part, bool strongly) const {
    return strongly && bold_ ? "\033[1m" + part + "\033[0m" : part;
  }
  void lines(const std::string& lead, const Told& told, bool strongly) {
    if (told.empty()) return;
    std::string before = lead;
    for (const std::string& part : wrapped(plain(told), width_ - displayWidth(lead))) {
      text_ += heavy(before + part, strongly) + '\n';
      before = std::string(displayWidth(lead), ' ');
    }
  }
  // "Grain in, 5 kg; stir": what to do and what goes with it, as one sentence.
  std::string sentenceOf(const SheetLine& line) const {
    const std::string action = plain(line.action);
    const std::string more = plain(line.more);
    if (action.empty() || more.empty()) return action + more;
    return action + (line.isToDo ? "; " : ": ") + more;
  }
  void add(std::vector<Part>& to, const std::string& text, bool strongly, std::size_t times) const {
    if (text.empty()) return;
    const std::size_t before = times + 8;
    for (std::string& part : wrapped(text, width_ > before + 10 ? width_ - before : 10))
      to.push_back({std::move(part), strongly});
  }

  const rigs::Reader& reader_;
  bool bold_;
  std::size_t width_;
  std::string text_;
};

}  // namespace

std::string sheetText(const Sheet& sheet, const rigs::Reader& reader, const TextStyle& style) {
  SheetPage page(reader, style);
  page.strong(sheet.title);
  page.say(sheet.rig);
  page.say(rigs::sentences(sheet.circuits));
  page.say(sheet.batch);
  page.say(sheet.place);
  page.say(sheet.origin);
  if (!sheet.warnings.empty()) {
    page.gap();
    page.strong(Told(TOLD("Sheet", "Before anything else")));
    for (const Told& one : sheet.warnings) page.say(one, "  ", true);
  }
  page.gap();
  page.strong(Told(TOLD("Sheet", "The day by the clock")));
  const std::size_t times = page.timesOf(sheet);
  for (const SheetLine& one : sheet.lines) page.line(one, times);
  page.say(sheet.ofBands);
  if (!sheet.sums.empty()) {
    page.gap();
    for (const telling::SheetSum& one : sheet.sums)
      page.say(Told(TOLD("Sheet", "%1 %2"), one.figure, one.label));
  }
  page.gap();
  page.strong(sheet.danger);
  for (const Told& one : sheet.cautions) page.say(one, "  · ");
  return page.take();
}

}  // namespace gui
