// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/answer.hpp"

#include <algorithm>
#include <utility>

#include "gui/telling/letters.hpp"

namespace gui::telling {
namespace {

bool isOfAnother(const Block& block, std::size_t rig) {
  if (const auto* sentence = std::get_if<Sentence>(&block)) {
    const auto& about = sentence->about;
    if (!about.empty()) return std::find(about.begin(), about.end(), rig) == about.end();
    return sentence->rig && *sentence->rig != rig;
  }
  const auto* table = std::get_if<Table>(&block);
  return table && table->rig && *table->rig != rig;
}

// A table about one rig takes what is said below it along, up to the next heading.
std::vector<Block> withoutOthers(std::vector<Block> blocks, std::size_t rig) {
  std::vector<Block> kept;
  bool belowAnother = false;
  for (Block& block : blocks) {
    const auto* sentence = std::get_if<Sentence>(&block);
    const bool other = isOfAnother(block, rig) || (belowAnother && sentence && !sentence->rig);
    if (!sentence) belowAnother = other;
    if (!other) kept.push_back(std::move(block));
  }
  return kept;
}

template <class Things>
void keepOnly(Things& all, std::size_t rig) {
  if (rig < all.size()) all = {std::move(all[rig])};
}

void keepColumn(Table& table, std::size_t rig) {
  if (!table.ofRigs) return;
  table.base.reset();  // alone it is compared with nothing
  keepOnly(table.columns, rig);
  for (Row& row : table.rows) keepOnly(row.cells, rig);
}

template <class IsOut>
void leaveOut(Picture& picture, const IsOut& isOut) {
  std::erase_if(picture.lines, [&](const PictureLine& one) { return isOut(one.rig); });
  std::erase_if(picture.marks, [&](const PictureMark& one) { return isOut(one.rig); });
  std::erase_if(picture.stacks,
                [&](const PictureStack& one) { return one.rig >= 0 && isOut(one.rig); });
}

// By its name, once.
template <class IsOut>
std::vector<PictureLeftOut> leftOutOf(const Picture& whole, const IsOut& isOut) {
  std::vector<PictureLeftOut> all;
  const auto add = [&](int rig, const std::string& name) {
    const bool known = std::any_of(all.begin(), all.end(),
                                   [&](const PictureLeftOut& one) { return one.rig == rig; });
    if (rig >= 0 && isOut(rig) && !known) all.push_back({rig, name});
  };
  for (const PictureLine& line : whole.lines)
    if (!line.faint) add(line.rig, line.name);
  for (const PictureStack& stack : whole.stacks) add(stack.rig, stack.name);
  return all;
}

void keepLines(Picture& picture, std::size_t rig) {
  leaveOut(picture, [&](int one) { return one != static_cast<int>(rig); });
}

// Of those left without anything below them.
void dropEmptyHeadings(std::vector<Block>& blocks) {
  std::vector<Block> kept;
  for (Block& block : blocks) {
    const bool next = std::holds_alternative<Heading>(block);
    if (next && !kept.empty() && std::holds_alternative<Heading>(kept.back())) kept.pop_back();
    kept.push_back(std::move(block));
  }
  if (!kept.empty() && std::holds_alternative<Heading>(kept.back())) kept.pop_back();
  blocks = std::move(kept);
}

}  // namespace

Answer aboutRig(Answer all, std::size_t rig) {
  all.blocks = withoutOthers(std::move(all.blocks), rig);
  for (Block& block : all.blocks)
    if (auto* table = std::get_if<Table>(&block)) keepColumn(*table, rig);
  dropEmptyHeadings(all.blocks);
  for (Picture& picture : all.pictures) keepLines(picture, rig);
  return all;
}

void leaveOutOfPictures(Answer& answer, const std::vector<std::size_t>& rigs) {
  for (Picture& picture : answer.pictures) {
    Picture some = picture;
    const auto isOut = [&](int one) {
      return one >= 0 &&
             std::find(rigs.begin(), rigs.end(), static_cast<std::size_t>(one)) != rigs.end();
    };
    leaveOut(some, isOut);
    some.leftOut = leftOutOf(picture, isOut);
    if (!some.lines.empty() || !some.stacks.empty()) picture = std::move(some);
  }
}

void Answer::setSlots(std::vector<std::size_t> ofRigs) {
  slots = std::move(ofRigs);
  for (Picture& picture : pictures) picture.slots.assign(slots.begin(), slots.end());
}

std::string Answer::letterOf(std::size_t rig) const {
  return letter(rig < slots.size() ? slots[rig] : rig);
}

void Answer::dropLetters() {
  lettered = false;
  for (Picture& picture : pictures) picture.lettered = false;
}

std::vector<rigs::Told> Answer::allCautions() const {
  std::vector<rigs::Told> all = furtherCautions;
  all.insert(all.end(), dayCautions.begin(), dayCautions.end());
  all.insert(all.end(), cautions.begin(), cautions.end());
  return all;
}

rigs::Told Answer::markOf(std::size_t rig) const {
  return rig < rigMarks.size() ? rigMarks[rig] : rigs::Told();
}

rigs::Told Answer::textOf(const Sentence& sentence) const {
  if (!sentence.rig || sentence.goesOn || sentence.text.empty()) return sentence.text;
  rigs::Told mark = markOf(*sentence.rig);
  if (mark.empty()) return sentence.text;
  return rigs::Told(TOLD("Answer", "[%1] %2"), std::move(mark), sentence.text);
}

std::vector<const Table*> Answer::tables() const {
  std::vector<const Table*> all;
  for (const Block& block : blocks)
    if (const auto* table = std::get_if<Table>(&block)) all.push_back(table);
  return all;
}

}  // namespace gui::telling
