// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/plans/rig_bases.hpp"

#include <algorithm>

#include "rigs/documents/files.hpp"
#include "rigs/documents/problem_words.hpp"
#include "rigs/plans/catalogue.hpp"
#include "rigs/plans/keys.hpp"

namespace rigs {

namespace fs = std::filesystem;

bool mergesByKey(std::string_view part) { return part == "vessel" || part == "element"; }

std::vector<JsonCursor> RigBases::follow(const JsonCursor& rig, const fs::path& folder) {
  std::vector<JsonCursor> layers{rig};
  root_ = folder;
  fs::path here = folder;
  while (layers.back().has("from")) {
    const auto base = open(layers.back(), here);
    if (!base) break;
    layers.push_back(*base);
  }
  return layers;
}

void RigBases::tell(const JsonCursor& rig, Problems& problems) const {
  for (const Base& base : bases_)
    for (const Problem& p : base.problems)
      problems.push_back({p.severity, rig.where() + "/from", withinFile(base.name, p)});
}

bool RigBases::failed() const {
  return std::any_of(bases_.begin(), bases_.end(),
                     [](const Base& base) { return hasErrors(base.problems); });
}

std::optional<JsonCursor> RigBases::open(const JsonCursor& at, fs::path& folder) {
  const auto name = at.text("from", 400);
  if (!name) return std::nullopt;
  if (name->ends_with(".json")) return openFile(at, *name, folder);
  if (const GenericRig* generic = catalogue().rig(*name)) return add(at, *name, generic->document);
  std::vector<std::string_view> known;
  for (const GenericRig& rig : catalogue().rigs) known.push_back(rig.name);
  at.error(
      "from",
      perhapsMeant(advised(Told(TOLD("Problem", "%1 is no rig of the catalogue"), Quoted{*name}),
                           Told(TOLD("Problem",
                                     "write %1, or the relative path of a file that ends in .json"),
                                choice(known))),
                   nearestWord(*name, known)));
  return std::nullopt;
}

std::optional<JsonCursor> RigBases::openFile(const JsonCursor& at, const std::string& name,
                                             fs::path& folder) {
  const fs::path relative = fs::path(name).lexically_normal();
  // A plan from a stranger reads nothing but what came with it.
  if (relative.is_absolute() || relative.begin() == relative.end() || *relative.begin() == "..") {
    at.error("from", withExample(advised(Told(TOLD("Problem", "%1 leads out of the plan's folder"),
                                              Quoted{name}),
                                         Told(TOLD("Problem", "write a path within it"))),
                                 inQuotes("rigs/my-kettle.json")));
    return std::nullopt;
  }
  std::error_code ignored;
  const fs::path path = folder / relative;
  if (!fs::exists(path, ignored)) {
    at.error("from",
             advised(Told(TOLD("Problem", "%1 is not there"), Quoted{name}),
                     Told(TOLD("Problem", "looked for %1"), Verbatim{shownPath(path.string())})));
    return std::nullopt;
  }
  const fs::path real = fs::weakly_canonical(path, ignored);
  if (std::find(files_.begin(), files_.end(), real) != files_.end()) {
    at.error("from", Told(TOLD("Problem", "%1 is from itself, directly or over other files"),
                          Quoted{name}));
    return std::nullopt;
  }
  if (!fs::is_regular_file(path, ignored)) {
    at.error("from", Told(TOLD("Problem", "%1 is not a file"), Quoted{name}));
    return std::nullopt;
  }
  files_.push_back(real);
  folder = path.parent_path();
  try {
    constexpr std::size_t kLargestRig = std::size_t{256} * 1024;
    return add(at, name, readWithin(root_, path, kLargestRig));
  } catch (const FileError& error) {
    at.error("from", error.told());
    return std::nullopt;
  }
}

std::optional<JsonCursor> RigBases::add(const JsonCursor& at, std::string name,
                                        std::string_view text) {
  if (bases_.size() >= kMostBases) {
    at.error("from", advised(Told(TOLD("Problem", "more than %1 rigs are from one another"),
                                  Count{kMostBases}),
                             Told(TOLD("Problem", "keep fewer"))));
    return std::nullopt;
  }
  Base& base = bases_.emplace_back();
  base.name = std::move(name);
  base.document = parseJson(text, base.problems);
  if (!base.document) return std::nullopt;
  return JsonCursor(*base.document, base.problems, {}, &rigExamples()).asObject();
}

std::vector<std::string> RigBases::names() const {
  std::vector<std::string> all;
  for (const Base& base : bases_) all.push_back(base.name);
  return all;
}

}  // namespace rigs
