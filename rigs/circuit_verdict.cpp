// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuit_verdict.hpp"

#include <algorithm>
#include <cmath>

#include "rigs/quantity_text.hpp"

namespace rigs {

using namespace physics;

namespace {

// Currents that agree to this share are the same: 24 A is 80 % of 30 A.
constexpr double kSlack = 1e-9;
bool within(Current load, Current limit) { return load <= (1.0 + kSlack) * limit; }

// Supply standards let a voltage rise by 10 %; a rating is made for that, and no more.
constexpr double kOverVoltage = 1.10;

std::string si(const auto& q) { return format(q, UnitSystem::SI); }

// One circuit being judged; every rule appends its finding.
class Judge {
 public:
  Judge(const CircuitRules& rules, const CircuitDetails& details, const JudgedLoad& load)
      : rules_(rules), details_(details), judged_(load) {
    verdict_.rules = &rules;
    electrical_ = electricalLoad(load.element, load.supply);
    verdict_.load = electrical_.current;
    verdict_.neutral = amperes(0.0);
    if (details.pump) {
      const Current pump = *details.pump / details.pumpAt;
      verdict_.load += pump;
      if (details.pumpAt < 0.9 * load.supply.nominal) verdict_.neutral = pump;
    }
    verdict_.full = load.duty.longestFull();
    verdict_.enabled = load.duty.longestEnabled();
    verdict_.meanShare = load.duty.mean();
    outlet_ = details.outlet.empty() ? nullptr : rules.outlet(details.outlet);
  }

  CircuitVerdict run() {
    voltage();
    overVoltage();
    rating();
    for (const LongUse& rule : rules_.longUse) longUse(rule);
    for (const SharedUse& rule : rules_.shared) shared(rule);
    outletLoad();
    outletOnCircuit();
    outletItself();
    socketPair();
    householdSocket();
    largestProtection();
    subdivide();
    conductor();
    for (const DropLimit& rule : rules_.voltageDrop) voltageDrop(rule);
    groundFault();
    information();
    std::stable_sort(verdict_.findings.begin(), verdict_.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.binding && !b.binding; });
    verdict_.overall = Fit::Fits;
    for (const Finding& finding : verdict_.findings) {
      if (finding.binding) verdict_.overall = std::max(verdict_.overall, finding.fit);
    }
    return std::move(verdict_);
  }

 private:
  Finding& add(RuleKind kind, std::string name, Fit fit, const Cite& cite) {
    Finding& finding = verdict_.findings.emplace_back();
    finding.kind = kind;
    finding.name = std::move(name);
    finding.fit = fit;
    finding.cite = cite;
    return finding;
  }
  Finding& compare(RuleKind kind, std::string name, Current load, Current limit, const Cite& cite) {
    Finding& finding =
        add(kind, std::move(name), within(load, limit) ? Fit::Fits : Fit::DoesNotFit, cite);
    finding.load = load;
    finding.limit = limit;
    return finding;
  }

  void voltage() {
    const auto ranges = rules_.rangesOf(judged_.supply.nominal);
    if (ranges.empty()) {
      std::string known;
      for (const VoltageRange& range : rules_.voltages) {
        const std::string text = si(range.nominal);
        if (known.find(text) == std::string::npos) known += (known.empty() ? "" : ", ") + text;
      }
      Finding& finding = add(RuleKind::Voltage, "supply voltage", Fit::CannotSay,
                             rules_.voltages.empty() ? Cite{} : rules_.voltages.front().cite);
      finding.voltage = judged_.supply.nominal;
      finding.condition = si(judged_.supply.nominal) + " is no supply voltage of " + rules_.region +
                          "; there it is " + known;
      return;
    }
    const RatingTolerance exact;
    for (const VoltageRange* range : ranges) {
      verdict_.spreads.push_back(
          {range, loadSpread(judged_.element, judged_.supply, range->lowest, range->highest,
                             rules_.tolerance ? rules_.tolerance->rating : exact)});
    }
  }

  void overVoltage() {
    const double times = static_cast<double>(judged_.supply.nominal / judged_.element.ratedAt);
    if (times <= kOverVoltage) return;
    Finding& finding = add(RuleKind::OverVoltage, "over-voltage", Fit::DoesNotFit,
                           {.clause = "the element's own rating; supply voltages may rise by 10 %",
                            .source = "IEC 60038",
                            .status = Status::Memory,
                            .note = ""});
    finding.voltage = judged_.element.ratedAt;
    finding.foundShare = times * times;
  }

  void rating() {
    Finding& finding = compare(RuleKind::Rating, "the circuit's rating", verdict_.load,
                               judged_.supply.rating, rules_.breakers.cite);
    finding.rating = judged_.supply.rating;
    finding.share = 1.0;
  }

  void longUse(const LongUse& rule) {
    const Duty& duty = judged_.duty;
    const Time full = rule.within ? duty.mostCurrentWithin(*rule.within) : duty.longestFull();
    const Time enabled = rule.within ? duty.mostEnabledWithin(*rule.within) : duty.longestEnabled();
    // "3 h or more" without a break, but "more than 1 h" within a longer stretch.
    const auto lasts = [&](Time t) { return rule.within ? t > rule.lasts : t >= rule.lasts; };
    Finding& finding = compare(RuleKind::LongUse, rule.name, verdict_.load,
                               rule.share * judged_.supply.rating, rule.cite);
    finding.rating = judged_.supply.rating;
    finding.share = rule.share;
    finding.full = full;
    finding.enabled = enabled;
    finding.needed = rule.lasts;
    finding.within = rule.within;
    if (finding.fit == Fit::Fits || lasts(full)) return;
    finding.fit = Fit::Fits;
    if (lasts(enabled)) {
      finding.fit = Fit::OnlyIf;
      finding.condition = "the time with the element merely enabled does not count as a " +
                          rule.name + "; an electrician's or inspector's reading decides";
    }
  }

  void shared(const SharedUse& rule) {
    if (!within(judged_.supply.rating, rule.upTo) || details_.feeds == Feeds::OneOutlet) return;
    Finding& finding = compare(RuleKind::SharedCircuit, rule.name, verdict_.load,
                               rule.share * judged_.supply.rating, rule.cite);
    finding.rating = judged_.supply.rating;
    finding.share = rule.share;
    if (finding.fit == Fit::DoesNotFit && details_.feeds == Feeds::NotStated) {
      finding.fit = Fit::OnlyIf;
      finding.condition = "the circuit feeds one outlet alone";
    }
  }

  void outletLoad() {
    if (!outlet_ || details_.feeds == Feeds::OneOutlet) return;
    for (const OutletLoad& row : rules_.outletLoads) {
      if (row.circuit != judged_.supply.rating || row.outlet != outlet_->current) continue;
      Finding& finding = compare(RuleKind::OutletLoad, "outlet among several on a circuit",
                                 verdict_.load, row.most, row.cite);
      finding.rating = row.outlet;
      if (finding.fit == Fit::DoesNotFit && details_.feeds == Feeds::NotStated) {
        finding.fit = Fit::OnlyIf;
        finding.condition = "the circuit feeds one outlet alone";
      }
    }
  }

  void outletOnCircuit() {
    if (!outlet_) return;
    for (const OutletsOnCircuit& row : rules_.outletsOnCircuit) {
      if (row.circuit != judged_.supply.rating) continue;
      const bool allowed =
          std::find(row.outlets.begin(), row.outlets.end(), outlet_->current) != row.outlets.end();
      Finding& finding =
          add(RuleKind::OutletOnCircuit, "outlet " + outlet_->name + " on the circuit",
              allowed ? Fit::Fits : Fit::DoesNotFit, row.cite);
      finding.rating = row.circuit;
      finding.limit = outlet_->current;
    }
  }

  void outletItself() {
    if (details_.outlet.empty()) return;
    if (!outlet_) {
      Finding& finding = add(RuleKind::OutletRating, "outlet", Fit::CannotSay, {});
      finding.condition =
          "no outlet called " + quotedText(details_.outlet) + " is among those of " + rules_.region;
      return;
    }
    compare(RuleKind::OutletRating, "outlet " + outlet_->name, verdict_.load, outlet_->current,
            outlet_->cite);
    if (!within(amperes(inVolts(judged_.supply.nominal)), amperes(inVolts(outlet_->voltage)))) {
      Finding& finding =
          add(RuleKind::OutletContacts, "outlet " + outlet_->name, Fit::DoesNotFit, outlet_->cite);
      finding.condition = "it is made for " + si(outlet_->voltage);
    }
    if (!outlet_->neutral && verdict_.neutral > amperes(0.0)) {
      Finding& finding = add(RuleKind::OutletContacts, "neutral of " + outlet_->name,
                             Fit::DoesNotFit, outlet_->cite);
      finding.condition =
          "it has no neutral for the pump's " + si(details_.pumpAt) + "; earth is not a neutral";
      finding.load = verdict_.neutral;
    }
    if (!outlet_->earth) {
      Finding& finding = add(RuleKind::OutletContacts, "earth of " + outlet_->name, Fit::DoesNotFit,
                             outlet_->cite);
      finding.condition = "it has no earth contact, which a metal kettle needs";
    }
  }

  void socketPair() {
    const Current other =
        details_.otherLoad ? *details_.otherLoad / judged_.supply.nominal : amperes(0.0);
    if (other > amperes(0.0)) {
      Finding& finding =
          compare(RuleKind::Rating, "the circuit's rating, other loads included",
                  verdict_.load + other, judged_.supply.rating, rules_.breakers.cite);
      finding.rating = judged_.supply.rating;
    }
    if (!outlet_ || !outlet_->bothSockets) return;
    compare(RuleKind::SocketPair, "both sockets of " + outlet_->name, verdict_.load + other,
            *outlet_->bothSockets, outlet_->cite);
  }

  void householdSocket() {
    if (!rules_.householdSockets) return;
    const HouseholdSockets& rule = *rules_.householdSockets;
    // Without a named outlet, circuits up to 16 A are taken for household sockets.
    const bool household =
        outlet_ ? outlet_->household : within(judged_.supply.rating, amperes(16.0));
    if (!household || within(verdict_.load, rule.moreThan) || verdict_.full <= rule.longerThan)
      return;
    Finding& finding =
        add(RuleKind::HouseholdSocket, "long use of a household socket", Fit::OnlyIf, rule.cite);
    finding.binding = false;
    finding.load = verdict_.load;
    finding.limit = rule.moreThan;
    finding.full = verdict_.full;
    finding.needed = rule.longerThan;
    finding.condition = "socket and plug stand that for as long as it takes";
  }

  void largestProtection() {
    if (!rules_.largestProtection) return;
    const LargestProtection& rule = *rules_.largestProtection;
    const Current own = electrical_.current;
    Current most = rule.thenUpTo;
    if (!within(own, rule.upTo)) {
      most = rules_.nextBreaker(rule.times * own).value_or(rule.times * own);
    }
    Finding& finding =
        add(RuleKind::LargestProtection, "largest breaker for one appliance",
            within(judged_.supply.rating, most) ? Fit::Fits : Fit::OnlyIf, rule.cite);
    finding.rating = judged_.supply.rating;
    finding.load = own;
    finding.share = rule.times;
    finding.limit = most;
    if (finding.fit == Fit::OnlyIf)
      finding.condition = "the kettle's maker marks it for a circuit of " +
                          si(judged_.supply.rating) + ", or its own control has a smaller fuse";
  }

  void subdivide() {
    if (!rules_.subdivide || within(electrical_.current, rules_.subdivide->above)) return;
    Finding& finding =
        add(RuleKind::Subdivide, "division of large heaters", Fit::OnlyIf, rules_.subdivide->cite);
    finding.load = electrical_.current;
    finding.limit = rules_.subdivide->above;
    finding.condition = "the load is divided; " + rules_.subdivide->text;
  }

  void conductor() {
    if (!details_.cable || rules_.conductors.empty()) {
      if (judged_.supply.cableLoop <= ohms(0.0)) return;
      Finding& finding = add(RuleKind::Conductor, "the cable", Fit::CannotSay, {});
      finding.binding = false;
      finding.condition =
          rules_.conductors.empty()
              ? "no table of conductors is at hand for " + rules_.region
              : "the plan does not say whether the cable is a building wire, a cord "
                "or an extension set (\"use\")";
      return;
    }
    std::string nearest;
    const auto found = ampacity(rules_, *details_.cable, nearest);
    if (!found) {
      Finding& finding = add(RuleKind::Conductor, "the cable", Fit::CannotSay, {});
      finding.condition = "no table has this size and length" +
                          (nearest.empty() ? std::string() : "; the nearest is " + nearest);
      return;
    }
    Finding& carries = compare(RuleKind::Conductor, found->row->size + " carries the load",
                               verdict_.load, found->allowed, found->table->cite);
    carries.rating = found->row->ampacity;
    carries.share = found->ambientFactor * found->drumFactor;
    if (found->table->use != CableUse::BuildingWire) return;
    const Current most =
        found->row->breaker ? std::min(*found->row->breaker, found->allowed) : found->allowed;
    // Where a table caps the breaker, a smaller ampacity counts for the load only.
    const Current cap = found->row->breaker ? *found->row->breaker : most;
    Finding& protects =
        compare(RuleKind::BreakerForConductor, "a breaker that protects " + found->row->size,
                judged_.supply.rating, cap, found->table->cite);
    protects.rating = judged_.supply.rating;
    const bool hotColumn = found->table->insulation && *found->table->insulation > celsius(61.0) &&
                           !found->table->ambientFactors.empty();
    if (hotColumn && carries.fit != Fit::DoesNotFit && protects.fit == Fit::Fits) {
      Finding& termination = verdict_.findings[verdict_.findings.size() - 2];
      termination.fit = Fit::OnlyIf;
      termination.condition = found->table->cite.note.empty() ? "every termination is marked for " +
                                                                    si(*found->table->insulation)
                                                              : found->table->cite.note;
    }
  }

  void voltageDrop(const DropLimit& rule) {
    const double lost = electrical_.inCable / electrical_.fromWall;
    if (lost <= 0.0) return;
    Finding& finding = add(RuleKind::VoltageDrop, "voltage drop, " + rule.part,
                           lost <= rule.share ? Fit::Fits : Fit::DoesNotFit, rule.cite);
    finding.binding = rule.binding;
    finding.foundShare = lost;
    finding.share = rule.share;
    if (!rule.binding && finding.fit == Fit::DoesNotFit) {
      finding.fit = Fit::OnlyIf;
      finding.condition = "more than the recommended drop is accepted";
    }
  }

  void groundFault() {
    if (rules_.leakage) verdict_.leakage = allowedLeakage(*rules_.leakage, electrical_.delivered);
    if (!rules_.groundFault) return;
    const Protection& device = *rules_.groundFault;
    Finding& finding = add(RuleKind::GroundFault, device.name, Fit::OnlyIf, device.cite);
    finding.binding = false;
    finding.limit = device.holds;
    finding.load = verdict_.leakage;
    finding.condition = device.text;
  }

  void information() {
    double strictest = 1.0;
    for (const LongUse& rule : rules_.longUse) strictest = std::min(strictest, rule.share);
    verdict_.nextBreaker = rules_.nextBreaker(verdict_.load);
    verdict_.nextBreakerContinuous = rules_.nextBreaker(verdict_.load / strictest);
    verdict_.conductorForNext = wireFor(verdict_.nextBreaker);
    verdict_.conductorForContinuous = wireFor(verdict_.nextBreakerContinuous);
  }

  std::string wireFor(const std::optional<Current>& breaker) const {
    if (!breaker) return {};
    for (const ConductorTable& table : rules_.conductors) {
      if (table.use != CableUse::BuildingWire) continue;
      for (const ConductorRow& row : table.rows) {
        const Current most = row.breaker ? std::min(*row.breaker, row.ampacity) : row.ampacity;
        if (within(*breaker, most)) return row.size;
      }
      return {};  // the first table is the usual one
    }
    return {};
  }

  const CircuitRules& rules_;
  const CircuitDetails& details_;
  const JudgedLoad& judged_;
  const Outlet* outlet_ = nullptr;
  ElectricalLoad electrical_;
  CircuitVerdict verdict_{};
};

}  // namespace

std::string_view fitWords(Fit fit) {
  switch (fit) {
    case Fit::Fits:
      return "fits";
    case Fit::OnlyIf:
      return "fits only if";
    case Fit::CannotSay:
      return "cannot say";
    case Fit::DoesNotFit:
      return "does not fit";
  }
  return "";
}

CircuitVerdict judge(const CircuitRules& rules, const CircuitDetails& details,
                     const JudgedLoad& load) {
  return Judge(rules, details, load).run();
}

std::vector<Reading> readingsOf(const CircuitRules& rules, const CircuitDetails& details,
                                Current rating) {
  const Outlet* outlet = details.outlet.empty() ? nullptr : rules.outlet(details.outlet);
  const Current whole = outlet ? std::min(rating, outlet->current) : rating;
  std::vector<Reading> all{{"the circuit's whole rating", whole, rules.breakers.cite}};
  for (const LongUse& rule : rules.longUse)
    all.push_back(
        {"counted as " + rule.name, std::min(Current(rule.share * rating), whole), rule.cite});
  for (const SharedUse& rule : rules.shared) {
    if (details.feeds != Feeds::OneOutlet && within(rating, rule.upTo))
      all.push_back({rule.name, std::min(Current(rule.share * rating), whole), rule.cite});
  }
  if (rules.householdSockets && within(rating, amperes(16.0)) &&
      within(rules.householdSockets->moreThan, whole))
    all.push_back({"a household socket for hours", rules.householdSockets->moreThan,
                   rules.householdSockets->cite});
  std::stable_sort(all.begin(), all.end(),
                   [](const Reading& a, const Reading& b) { return a.limit > b.limit; });
  return all;
}

Current allowedLeakage(const Leakage& leakage, Power power) {
  const Current byPower = inWatts(power) / 1000.0 * leakage.perKilowatt;
  return std::clamp(byPower, leakage.atLeast, leakage.atMost);
}

Time groundFaultTripTime(Current fault) {
  return seconds(std::pow(20.0 / (1e3 * inAmperes(fault)), 1.43));
}

std::vector<const CircuitRules*> rulesFor(std::string_view statedRegion,
                                          const CircuitDetails& details) {
  if (!statedRegion.empty()) {
    const CircuitRules* stated = rulesOf(statedRegion);
    return stated ? std::vector<const CircuitRules*>{stated} : std::vector<const CircuitRules*>{};
  }
  return rulesForCircuitsOf(details.circuitRegion);
}

}  // namespace rigs
