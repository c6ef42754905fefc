// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/conductor.hpp"

#include <algorithm>
#include <cmath>

#include "rigs/circuits/readings.hpp"

namespace rigs {

using namespace physics;

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
    Told nearest;
    const auto found = ampacity(q_.rules, *q_.details.cable, nearest);
    if (!found) {
      add(RuleKind::Conductor, theCable(), Fit::CannotSay, {}).condition = noTable(nearest);
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
  // Of this use at all, or of this size and length.
  Told noTable(const Told& nearest) const {
    const CableUse use = q_.details.cable->use;
    const bool any = std::any_of(q_.rules.conductors.begin(), q_.rules.conductors.end(),
                                 [&](const ConductorTable& table) { return table.use == use; });
    if (!any)
      return Told(
          use == CableUse::ExtensionSet
              ? Template<1>(TOLD("Phrases", "no table of extension sets is at hand for %1"))
          : use == CableUse::Cord
              ? Template<1>(TOLD("Phrases", "no table of cords is at hand for %1"))
              : Template<1>(TOLD("Phrases", "no table of building wires is at hand for %1")),
          fromRules(q_.rules.region));
    if (nearest.empty()) return Told(TOLD("Phrases", "no table has this size and length"));
    return Told(TOLD("Phrases", "no table has this size and length; the nearest is %1"), nearest);
  }

  static Told theCable() { return Told(TOLD("Phrases", "the cable")); }

  Finding& add(RuleKind kind, Told name, Fit fit, const Cite& cite) {
    Finding& finding = findings_.emplace_back();
    finding.kind = kind;
    finding.name = std::move(name);
    finding.fit = fit;
    finding.cite = cite;
    return finding;
  }

  void notStated() {
    if (!q_.details.cable && !q_.details.run && q_.judged.supply.cableLoop <= ohms(0.0)) return;
    Finding& finding = add(RuleKind::Conductor, theCable(), Fit::CannotSay, {});
    finding.binding = false;
    finding.condition =
        q_.rules.conductors.empty()
            ? Told(TOLD("Phrases", "no table of conductors is at hand for %1"),
                   fromRules(q_.rules.region))
            : Told(TOLD("Phrases",
                        "the plan does not say whether the cable is a building wire, a cord or an "
                        "extension set (\"use\")"));
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

  Told allMarked() const {
    const Terminations& terminations = *q_.rules.terminations;
    return Told(TOLD("Phrases", "every termination is marked for %1 (%2)"),
                amount(terminations.marked), Verbatim{terminations.cite.clause});
  }
  // As the row has it: "14 AWG".
  Verbatim size() const { return {found_.row->size}; }

  // Against the usual terminations, else the marked ones.
  Finding& compare(RuleKind kind, Told name, Current load, Current usual, Current marked) {
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
    Finding& finding =
        compare(RuleKind::Conductor, Told(TOLD("Phrases", "%1 under the load"), size()), q_.load,
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
    Finding& finding = compare(RuleKind::ConductorLongUse,
                               Told(TOLD("Phrases", "%1 under a %2"), size(), fromRules(rule.name)),
                               q_.load / rule.share, usual_.tabled, marked_.tabled);
    finding.cite = rule.cite;
    finding.rating = q_.load;
    finding.share = 1.0 / rule.share;
    if (finding.fit != Fit::DoesNotFit) return;
    if (!wire) {
      finding.fit = Fit::OnlyIf;
      finding.condition = Told(TOLD("Phrases",
                                    "a %1 asks no such margin of a cord, which electricians argue "
                                    "about; an electrician's or inspector's judgement decides"),
                               fromRules(rule.name));
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
    const Current breaker = q_.judged.supply.rating;
    const bool mayBeAlone = q_.details.feeds != Feeds::SeveralOutlets;
    Finding& finding =
        compare(RuleKind::BreakerForConductor, Told(TOLD("Phrases", "the breaker of %1"), size()),
                breaker, cap(usual_, mayBeAlone), cap(marked_, mayBeAlone));
    finding.rating = breaker;
    if (finding.fit == Fit::DoesNotFit) return;
    const Carries& taken = finding.fit == Fit::Fits ? usual_ : marked_;
    if (within(breaker, cap(taken, false))) return;
    // It is the next size up that lets it pass.
    finding.cite = q_.rules.nextSize->cite;
    if (q_.details.feeds == Feeds::OneOutlet) return;
    finding.fit = Fit::OnlyIf;
    finding.condition = finding.condition.empty() ? feedsOneOutletAlone()
                                                  : Told(TOLD("Phrases", "%1, and %2"),
                                                         finding.condition, feedsOneOutletAlone());
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
