// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/page.hpp"

#include <algorithm>

#include "gui/terminal/text_layout.hpp"

namespace gui {
namespace {

constexpr std::size_t kLongestLine = 96;  // of prose, however wide the terminal

class Writer {
 public:
  explicit Writer(const TextStyle& style)
      : style_(style),
        width_(std::max(style.width, kNarrowest)),
        prose_(std::min(width_, kLongestLine)) {}

  void gap() {
    if (!text_.empty()) text_ += '\n';
  }
  void line(const std::string& content) { text_ += content + '\n'; }
  void strong(const std::string& content) {
    for (const std::string& part : wrapped(plainText(content), prose_)) {
      line(style_.bold ? "\033[1m" + part + "\033[0m" : part);
    }
  }
  // Continuation lines stand under the first word, not under the lead.
  void sentence(const std::string& lead, const std::string& content) {
    const std::string first = lead.empty() ? "  " : "  " + lead + ' ';
    const std::string next(displayWidth(first), ' ');
    bool started = false;
    for (const std::string& part : wrapped(plainText(content), prose_ - displayWidth(first))) {
      line((started ? next : first) + part);
      started = true;
    }
  }
  void table(const Table& content) {
    for (const std::string& row : tableLines(content, width_)) line(plainText(row));
  }
  std::string take() { return std::move(text_); }

 private:
  TextStyle style_;
  std::size_t width_, prose_;
  std::string text_;
};

}  // namespace

std::string letter(std::size_t rig) {
  std::string letters;
  for (std::size_t n = rig + 1; n > 0; n = (n - 1) / 26) {
    letters.insert(letters.begin(), static_cast<char>('a' + (n - 1) % 26));
  }
  return '(' + letters + ')';
}

std::string pageText(const Page& page, const TextStyle& style) {
  Writer out(style);
  out.strong(page.title);
  for (const std::string& note : page.notes) out.sentence("", note);
  if (!page.rigNames.empty()) out.gap();
  for (std::size_t i = 0; i < page.rigNames.size(); ++i) {
    out.sentence(letter(i), page.rigNames[i]);
  }
  for (const Block& block : page.blocks) {
    if (const auto* heading = std::get_if<Heading>(&block)) {
      out.gap();
      out.strong(heading->text);
    } else if (const auto* sentence = std::get_if<Sentence>(&block)) {
      out.sentence(sentence->lead, sentence->text);
    } else {
      out.gap();
      out.table(std::get<Table>(block));
    }
  }
  if (!page.cautions.empty()) {
    out.gap();
    out.strong("Take care");
    for (const std::string& caution : page.cautions) out.sentence("·", caution);
  }
  return out.take();
}

}  // namespace gui
