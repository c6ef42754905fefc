// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/conductor.hpp"

#include <algorithm>
#include <cmath>

#include "rigs/quantities/quantity_text.hpp"

namespace rigs {

using namespace physics;

std::string enabledIsNot(const LongUse& rule) {
  return "the time with the element merely enabled does not count as a " + rule.name +
         "; an electrician's or inspector's reading decides";
}

namespace {

// What a conductor carries with one kind of terminations: as corrected, and as tabled.
struct Carries {
  Current corrected, tabled;
};

// The uncorrected figure of the same size in the column for this temperature.
std::optional<Current> columnOf(const CircuitRules& rules, const ConductorRow& size,
                                Temperature column) {
  for (const ConductorTable& table : rules.conductors) {
    if (table.use != CableUse::BuildingWire || !table.insulation) continue;
    if (std::abs(inKelvins(*table.insulation - column)) > 0.5) continue;
    for (const ConductorRow& row : table.rows)
      if (row.size == size.size) return row.ampacity;
  }
  return std::nullopt;
}

class Conductor {
 public:
  explicit Conductor(const ConductorQuestion& question) : q_(question) {}

  std::vector<Finding> run() {
    if (!q_.details.cable || q_.rules.conductors.empty()) {
      notStated();
      return std::move(findings_);
    }
    std::string nearest;
    const auto found = ampacity(q_.rules, *q_.details.cable, nearest);
    if (!found) {
      add(RuleKind::Conductor, "the cable", Fit::CannotSay, {}).condition =
          "no table has this size and length" +
          (nearest.empty() ? std::string() : "; the nearest is " + nearest);
      return std::move(findings_);
    }
    found_ = *found;
    usual_ = marked_ = {.corrected = found_.allowed, .tabled = found_.row->ampacity};
    terminate();
    carriesTheLoad();
    for (const LongUse& rule : q_.rules.longUse)
      if (rule.conductors) longUse(rule);
    if (found_.table->use == CableUse::BuildingWire) breaker();
    return std::move(findings_);
  }

 private:
  Finding& add(RuleKind kind, std::string name, Fit fit, const Cite& cite) {
    Finding& finding = findings_.emplace_back();
    finding.kind = kind;
    finding.name = std::move(name);
    finding.fit = fit;
    finding.cite = cite;
    return finding;
  }

  void notStated() {
    if (!q_.details.cable && !q_.details.run && q_.judged.supply.cableLoop <= ohms(0.0)) return;
    Finding& finding = add(RuleKind::Conductor, "the cable", Fit::CannotSay, {});
    finding.binding = false;
    finding.condition =
        q_.rules.conductors.empty()
            ? "no table of conductors is at hand for " + q_.rules.region
            : "the plan does not say whether the cable is a building wire, a cord or an extension "
              "set (\"use\")";
  }

  // A hotter column counts no further than the terminations' own, uncorrected.
  void terminate() {
    if (!q_.rules.terminations || found_.table->use != CableUse::BuildingWire ||
        !found_.table->insulation)
      return;
    const auto held = [&](Temperature column) {
      Carries c{.corrected = found_.allowed, .tabled = found_.row->ampacity};
      if (*found_.table->insulation <= column + kelvins(0.5)) return c;
      if (const auto most = columnOf(q_.rules, *found_.row, column)) {
        c.corrected = std::min(c.corrected, *most);
        c.tabled = std::min(c.tabled, *most);
      }
      return c;
    };
    usual_ = held(q_.rules.terminations->usual);
    marked_ = held(q_.rules.terminations->marked);
  }

  std::string allMarked() const {
    return "every termination is marked for " +
           format(q_.rules.terminations->marked, UnitSystem::SI) + " (" +
           q_.rules.terminations->cite.clause + ")";
  }

  // Against the usual terminations, else the marked ones.
  Finding& compare(RuleKind kind, std::string name, Current load, Current usual, Current marked) {
    Finding& finding = add(kind, std::move(name), Fit::Fits, found_.table->cite);
    finding.load = load;
    finding.limit = usual;
    if (within(load, usual)) return finding;
    finding.limit = marked;
    if (!within(load, marked)) {
      finding.fit = Fit::DoesNotFit;
    } else {
      finding.fit = Fit::OnlyIf;
      finding.condition = allMarked();
    }
    return finding;
  }

  void carriesTheLoad() {
    Finding& finding = compare(RuleKind::Conductor, found_.row->size + " under the load", q_.load,
                               usual_.corrected, marked_.corrected);
    finding.rating = found_.row->ampacity;
    finding.share = found_.factor();
    if (!found_.lacks.empty() && finding.fit != Fit::DoesNotFit) {
      finding.fit = Fit::CannotSay;
      finding.condition = found_.lacks;
    }
  }

  // The tabled ampacity, before any correction, with the long load's margin.
  void longUse(const LongUse& rule) {
    const Counts counts = countsAsLong(rule, q_.judged.duty);
    if (counts == Counts::No) return;
    const bool wire = found_.table->use == CableUse::BuildingWire;
    Finding& finding =
        compare(RuleKind::ConductorLongUse, found_.row->size + " under a " + rule.name,
                q_.load / rule.share, usual_.tabled, marked_.tabled);
    finding.cite = rule.cite;
    finding.rating = q_.load;
    finding.share = 1.0 / rule.share;
    if (finding.fit != Fit::DoesNotFit) return;
    if (!wire) {
      finding.fit = Fit::OnlyIf;
      finding.condition = "a " + rule.name +
                          " asks no such margin of a cord, which electricians argue about; an "
                          "electrician's or inspector's reading decides";
    } else if (counts == Counts::Perhaps) {
      finding.fit = Fit::OnlyIf;
      finding.condition = enabledIsNot(rule);
    }
  }

  // The most that may protect it.
  Current cap(const Carries& carries, bool next) const {
    Current most = carries.corrected;
    if (next && q_.rules.nextSize) most = q_.rules.nextBreaker(most).value_or(most);
    return found_.row->breaker ? std::min(*found_.row->breaker, most) : most;
  }

  void breaker() {
    const Current size = q_.judged.supply.rating;
    const bool mayBeAlone = q_.details.feeds != Feeds::SeveralOutlets;
    Finding& finding = compare(RuleKind::BreakerForConductor, "the breaker of " + found_.row->size,
                               size, cap(usual_, mayBeAlone), cap(marked_, mayBeAlone));
    finding.rating = size;
    if (finding.fit == Fit::DoesNotFit) return;
    const Carries& taken = finding.fit == Fit::Fits ? usual_ : marked_;
    if (within(size, cap(taken, false))) return;
    // It is the next size up that lets it pass.
    finding.cite = q_.rules.nextSize->cite;
    if (q_.details.feeds == Feeds::OneOutlet) return;
    finding.fit = Fit::OnlyIf;
    finding.condition += (finding.condition.empty() ? "" : ", and ") + std::string(kOneOutlet);
  }

  const ConductorQuestion& q_;
  Ampacity found_;
  Carries usual_{}, marked_{};
  std::vector<Finding> findings_;
};

}  // namespace

std::vector<Finding> judgeConductor(const ConductorQuestion& question) {
  return Conductor(question).run();
}

}  // namespace rigs
