// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/plan_texts.hpp"

#include "rigs/documents/files.hpp"
#include "rigs/documents/json_parse.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/rig_variants.hpp"

namespace rigs {
namespace {

namespace fs = std::filesystem;

std::string rigPointer(std::size_t index) { return "/rigs/" + std::to_string(index); }

std::string_view partOf(std::string_view pointer) {
  const std::string_view rest = pointer.substr(1);
  return rest.substr(0, rest.find('/'));
}

// "" where there is none.
std::string originNamed(const std::string& name, const fs::path& root, fs::path& folder) {
  if (!name.ends_with(".json")) {
    const GenericRig* generic = catalogue().rig(name);
    return generic ? std::string(generic->document) : std::string();
  }
  const fs::path relative = fs::path(name).lexically_normal();
  if (relative.is_absolute() || relative.begin() == relative.end() || *relative.begin() == "..")
    return {};
  const fs::path path = folder / relative;
  folder = path.parent_path();
  try {
    std::string text = readWithin(root, path);
    Problems problems;
    return parseJson(text, problems) ? text : std::string();
  } catch (const FileError&) {
    return {};
  }
}

}  // namespace

std::vector<std::string> originsOf(std::string_view document, std::size_t index,
                                   const fs::path& folder) {
  std::vector<std::string> origins;
  if (followsAnother(document, index)) {
    if (auto whole = wholeRigAt(document, index, folder)) origins.push_back(std::move(*whole));
    return origins;
  }
  fs::path here = folder;
  auto name = textAt(document, rigPointer(index) + "/from");
  while (name && origins.size() < kMostBases) {
    std::string origin = originNamed(*name, folder, here);
    if (origin.empty()) break;
    name = textAt(origin, "/from");
    origins.push_back(std::move(origin));
  }
  return origins;
}

Texts inheritedTexts(const std::vector<std::string>& origins) {
  Texts all;
  for (auto origin = origins.rbegin(); origin != origins.rend(); ++origin) {
    const Texts texts = textsOf(*origin);
    for (const auto& [pointer, text] : texts) {
      const std::string_view part = partOf(pointer);
      if (mergesByKey(part)) continue;
      std::erase_if(all, [&](const auto& old) { return partOf(old.first) == part; });
    }
    for (const auto& [pointer, text] : texts) all[pointer] = text;
  }
  return all;
}

std::string withPartStated(std::string_view document, std::size_t index, std::string_view part,
                           const std::vector<std::string>& origins) {
  const std::string own = rigPointer(index) + "/" + std::string(part);
  if (mergesByKey(part) || exists(document, own)) return std::string(document);
  const std::string there = "/" + std::string(part);
  for (const std::string& origin : origins) {
    if (exists(origin, there)) return withValue(document, own, valueAt(origin, there));
  }
  return std::string(document);
}

}  // namespace rigs
