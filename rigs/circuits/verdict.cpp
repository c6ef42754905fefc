// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/verdict.hpp"

#include <algorithm>

#include "rigs/circuits/conductor.hpp"
#include "rigs/circuits/rating.hpp"
#include "rigs/circuits/readings.hpp"

namespace rigs {

using namespace physics;

namespace {

// One circuit being judged; every rule appends its finding.
class Judge {
 public:
  Judge(const CircuitRules& rules, const CircuitDetails& details, const JudgedLoad& load)
      : rules_(rules), details_(details), judged_(load) {
    verdict_.rules = &rules;
    electrical_ = electricalLoad(load.element, load.supply);
    own_ = branchCurrent(load.element, load.supply);
    other_ = details.beside(load.supply.nominal);
    verdict_.load = own_;
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
    guard_ = guardOf(rules, details, load.supply.rating);
  }

  CircuitVerdict run() {
    voltage();
    overVoltage();
    rating(verdict_.load, TOLD("Phrases", "the fuse's rating"),
           TOLD("Phrases", "the circuit's rating"));
    rinseHeater();
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
  Finding& add(RuleKind kind, Told name, Fit fit, const Cite& cite) {
    Finding& finding = verdict_.findings.emplace_back();
    finding.kind = kind;
    finding.name = std::move(name);
    finding.fit = fit;
    finding.cite = cite;
    return finding;
  }
  Finding& compare(RuleKind kind, Told name, Current load, Current limit, const Cite& cite) {
    Finding& finding =
        add(kind, std::move(name), within(load, limit) ? Fit::Fits : Fit::DoesNotFit, cite);
    finding.load = load;
    finding.limit = limit;
    return finding;
  }

  void voltage() {
    const auto ranges = rules_.rangesOf(judged_.supply.nominal);
    if (ranges.empty()) {
      Finding& finding =
          add(RuleKind::Voltage, Told(TOLD("Phrases", "supply voltage")), Fit::CannotSay,
              rules_.voltages.empty() ? Cite{} : rules_.voltages.front().cite);
      finding.voltage = judged_.supply.nominal;
      finding.condition = unknownVoltage();
      return;
    }
    const RatingTolerance exact;
    for (const VoltageRange* range : ranges) {
      verdict_.spreads.push_back(
          {range, loadSpread(judged_.element, judged_.supply, range->lowest, range->highest,
                             rules_.tolerance ? rules_.tolerance->rating : exact)});
    }
  }

  // A measured voltage lies within what a nominal one may be.
  Told unknownVoltage() const {
    const Amount stated = amount(judged_.supply.nominal);
    if (const auto nominal = rules_.nominalOf(judged_.supply.nominal))
      return Told(TOLD("Phrases",
                       "%1 is no nominal voltage of %2 but within what its %3 may be: if it was "
                       "measured, state %3, at which codes count"),
                  stated, fromRules(rules_.region), amount(*nominal));
    return Told(TOLD("Phrases", "%1 is no supply voltage of %2; there it is %3"), stated,
                fromRules(rules_.region), knownVoltages());
  }

  List knownVoltages() const {
    List known{.items = {}, .joint = Joint::Comma};
    for (const VoltageRange& range : rules_.voltages) {
      const Argument voltage = amount(range.nominal);
      if (std::find(known.items.begin(), known.items.end(), voltage) == known.items.end())
        known.items.push_back(voltage);
    }
    return known;
  }

  void overVoltage() {
    const double times = static_cast<double>(judged_.supply.nominal / judged_.element.ratedAt);
    if (times <= kMostOverRated) return;
    Finding& finding =
        add(RuleKind::OverVoltage, Told(TOLD("Phrases", "over-voltage")), Fit::DoesNotFit,
            {.clause = TOLD("Phrases",
                            "the element's own rating; supplies rise to 110 % of their nominal")
                           .english,
             .source = "EN 50160, as quoted in an electricians' forum",
             .status = Status::Seen,
             .note = ""});
    finding.voltage = judged_.element.ratedAt;
    finding.foundShare = times * times;
  }

  // By the fuse, where one is known, else by the breaker.
  void rating(Current load, const Template<0>& ofFuse, const Template<0>& ofCircuit) {
    Finding finding = judgeRating({.load = load,
                                   .rating = judged_.supply.rating,
                                   .fused = guard_.fused,
                                   .device = guard_.device});
    finding.name = Told(guard_.fused ? ofFuse : ofCircuit);
    finding.cite = guard_.fuse ? guard_.fuse->cite : guard_.fused ? Cite{} : rules_.breakers.cite;
    verdict_.findings.push_back(std::move(finding));
  }

  // Its power is counted among the other loads, where it is known.
  void rinseHeater() {
    if (!details_.heatsRinse || details_.rinseHeater) return;
    if (judged_.supply.rating <= verdict_.load + other_) return;  // the rating says so
    Finding& finding = add(RuleKind::RinseHeater,
                           Told(TOLD("Phrases", "the rinsing water's heater")), Fit::OnlyIf, {});
    // As if the load lasted: others take their own share first.
    const Current left = judged_.supply.rating - other_ - verdict_.load / strictestShare();
    finding.condition =
        left > amperes(0.1)
            ? Told(TOLD("Phrases",
                        "the rinsing water's heater, whose load is not known here and must be "
                        "added, takes less than the %1 that are left, or is never on together with "
                        "the element"),
                   amount(left, {.significantDigits = 2, .decimals = {}}))
            : Told(TOLD("Phrases",
                        "the rinsing water's heater, whose load is not known here and must be "
                        "added, is never on together with the element"));
  }
  double strictestShare() const {
    double strictest = 1.0;
    for (const LongUse& rule : rules_.longUse) strictest = std::min(strictest, rule.share);
    return strictest;
  }

  void longUse(const LongUse& rule) {
    const Duty& duty = judged_.duty;
    // Other loads take their own share first; their times are not known.
    const Current left = judged_.supply.rating - other_;
    Finding& finding =
        compare(RuleKind::LongUse,
                other_ > amperes(0.0)
                    ? Told(TOLD("Phrases", "%1 beside the other loads"), fromRules(rule.name))
                    : Told::just(fromRules(rule.name)),
                verdict_.load, rule.share * left, rule.cite);
    finding.rating = left;
    finding.share = rule.share;
    finding.full = rule.within ? duty.mostCurrentWithin(*rule.within) : duty.longestFull();
    finding.enabled = rule.within ? duty.mostEnabledWithin(*rule.within) : duty.longestEnabled();
    finding.needed = rule.lasts;
    finding.within = rule.within;
    const Counts counts = countsAsLong(rule, duty);
    if (finding.fit == Fit::Fits || counts == Counts::Yes) return;
    finding.fit = Fit::Fits;
    if (counts == Counts::Perhaps) {
      finding.fit = Fit::OnlyIf;
      finding.condition = enabledIsNot(rule);
    }
  }

  void shared(const SharedUse& rule) {
    if (!within(judged_.supply.rating, rule.upTo) || details_.feeds == Feeds::OneOutlet) return;
    Finding& finding = compare(RuleKind::SharedCircuit, Told::just(fromRules(rule.name)),
                               verdict_.load, rule.share * judged_.supply.rating, rule.cite);
    finding.rating = judged_.supply.rating;
    finding.share = rule.share;
    if (finding.fit == Fit::DoesNotFit && details_.feeds == Feeds::NotStated) {
      finding.fit = Fit::OnlyIf;
      finding.condition = feedsOneOutletAlone();
    }
  }

  void outletLoad() {
    if (!outlet_ || details_.feeds == Feeds::OneOutlet) return;
    for (const OutletLoad& row : rules_.outletLoads) {
      if (row.circuit != judged_.supply.rating || row.outlet != outlet_->current) continue;
      Finding& finding =
          compare(RuleKind::OutletLoad, Told(TOLD("Phrases", "outlet among several on a circuit")),
                  verdict_.load, row.most, row.cite);
      finding.rating = row.outlet;
      if (finding.fit == Fit::DoesNotFit && details_.feeds == Feeds::NotStated) {
        finding.fit = Fit::OnlyIf;
        finding.condition = feedsOneOutletAlone();
      }
    }
  }

  void outletOnCircuit() {
    if (!outlet_) return;
    for (const OutletsOnCircuit& row : rules_.outletsOnCircuit) {
      if (row.circuit != judged_.supply.rating) continue;
      const bool allowed =
          std::find(row.outlets.begin(), row.outlets.end(), outlet_->current) != row.outlets.end();
      Finding& finding = add(RuleKind::OutletOnCircuit,
                             Told(TOLD("Phrases", "outlet %1 on the circuit"), outletName()),
                             allowed ? Fit::Fits : Fit::DoesNotFit, row.cite);
      finding.rating = row.circuit;
      finding.limit = outlet_->current;
    }
  }

  Verbatim outletName() const { return {outlet_->name}; }
  Told outletItsName() const { return Told(TOLD("Phrases", "outlet %1"), outletName()); }

  // The plug's own fuse is told here where the circuit has another protection.
  void outletRating() {
    const Fuse* fuse = guard_.fuse ? nullptr : rules_.fuse(outlet_->fuse);
    Finding finding =
        judgeRating({.load = verdict_.load,
                     .rating = outlet_->current,
                     .fused = fuse != nullptr,
                     .device = fuse ? deviceOf(*fuse, outlet_->current) : std::nullopt});
    finding.kind = RuleKind::OutletRating;
    finding.name = outletItsName();
    finding.cite = outlet_->cite;
    verdict_.findings.push_back(std::move(finding));
  }

  void outletItself() {
    if (details_.outlet.empty()) return;
    if (!outlet_) {
      Finding& finding =
          add(RuleKind::OutletRating, Told(TOLD("Phrases", "outlet")), Fit::CannotSay, {});
      finding.condition = Told(TOLD("Phrases", "no outlet called %1 is among those of %2"),
                               Quoted{details_.outlet}, fromRules(rules_.region));
      return;
    }
    outletRating();
    if (!within(amperes(inVolts(judged_.supply.nominal)), amperes(inVolts(outlet_->voltage)))) {
      Finding& finding =
          add(RuleKind::OutletContacts, outletItsName(), Fit::DoesNotFit, outlet_->cite);
      finding.condition = Told(TOLD("Phrases", "it is made for %1"), amount(outlet_->voltage));
    }
    if (!outlet_->neutral && verdict_.neutral > amperes(0.0)) {
      Finding& finding =
          add(RuleKind::OutletContacts, Told(TOLD("Phrases", "neutral of %1"), outletName()),
              Fit::DoesNotFit, outlet_->cite);
      finding.condition =
          Told(TOLD("Phrases", "it has no neutral for the pump's %1; earth is not a neutral"),
               amount(details_.pumpAt));
      finding.load = verdict_.neutral;
    }
    if (outlet_->earth == Earth::There) return;
    const bool missing = outlet_->earth == Earth::Missing;
    Finding& finding =
        add(RuleKind::OutletContacts, Told(TOLD("Phrases", "earth of %1"), outletName()),
            missing ? Fit::DoesNotFit : Fit::OnlyIf, outlet_->cite);
    finding.condition =
        missing ? Told(TOLD("Phrases", "it has no earth contact, which a metal kettle needs"))
                : Told(TOLD("Phrases",
                            "this very outlet has an earth contact that is connected, which is not "
                            "known here and which a metal kettle needs"));
  }

  void socketPair() {
    if (other_ > amperes(0.0))
      rating(verdict_.load + other_, TOLD("Phrases", "the fuse's rating, other loads included"),
             TOLD("Phrases", "the circuit's rating, other loads included"));
    if (!outlet_ || !outlet_->bothSockets) return;
    compare(RuleKind::SocketPair, Told(TOLD("Phrases", "both sockets of %1"), outletName()),
            verdict_.load + other_, *outlet_->bothSockets, outlet_->cite);
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
        add(RuleKind::HouseholdSocket, Told(TOLD("Phrases", "long use of a household socket")),
            Fit::OnlyIf, rule.cite);
    finding.binding = false;
    finding.load = verdict_.load;
    finding.limit = rule.moreThan;
    finding.full = verdict_.full;
    finding.needed = rule.longerThan;
    finding.condition = Told(TOLD("Phrases", "socket and plug stand that for as long as it takes"));
  }

  void largestProtection() {
    if (!rules_.largestProtection) return;
    const LargestProtection& rule = *rules_.largestProtection;
    const Current own = own_;
    Current most = rule.thenUpTo;
    if (!within(own, rule.upTo)) {
      most = rules_.nextBreaker(rule.times * own).value_or(rule.times * own);
    }
    Finding& finding =
        add(RuleKind::LargestProtection, Told(TOLD("Phrases", "largest breaker for one appliance")),
            within(judged_.supply.rating, most) ? Fit::Fits : Fit::OnlyIf, rule.cite);
    finding.rating = judged_.supply.rating;
    finding.load = own;
    finding.share = rule.times;
    finding.limit = most;
    if (finding.fit == Fit::OnlyIf)
      finding.condition = Told(TOLD("Phrases",
                                    "the kettle's maker marks it for a circuit of %1, or its own "
                                    "control has a smaller fuse"),
                               amount(judged_.supply.rating));
  }

  void subdivide() {
    if (!rules_.subdivide || within(own_, rules_.subdivide->above)) return;
    Finding& finding = add(RuleKind::Subdivide, Told(TOLD("Phrases", "division of large heaters")),
                           Fit::OnlyIf, rules_.subdivide->cite);
    finding.load = own_;
    finding.limit = rules_.subdivide->above;
    finding.condition =
        Told(TOLD("Phrases", "the load is divided; %1"), fromRules(rules_.subdivide->text));
  }

  void conductor() {
    for (Finding& finding : judgeConductor({rules_, details_, judged_, verdict_.load}))
      verdict_.findings.push_back(std::move(finding));
  }

  void voltageDrop(const DropLimit& rule) {
    const double lost = electrical_.inCable / electrical_.fromWall;
    if (lost <= 0.0) return;
    Finding& finding =
        add(RuleKind::VoltageDrop, Told(TOLD("Phrases", "voltage drop, %1"), fromRules(rule.part)),
            lost <= rule.share ? Fit::Fits : Fit::DoesNotFit, rule.cite);
    finding.binding = rule.binding;
    finding.foundShare = lost;
    finding.share = rule.share;
    if (!rule.binding && finding.fit == Fit::DoesNotFit) {
      finding.fit = Fit::OnlyIf;
      finding.condition = Told(TOLD("Phrases", "more than the recommended drop is accepted"));
    }
    if (!details_.run || details_.run->length <= metres(0.0)) return;
    const CableRun& run = *details_.run;
    const Length longest = longestCable(rule.share, judged_.supply.nominal, own_,
                                        judged_.supply.cableLoop / run.length);
    // The textbook's length is the shorter one. Within that little of the limit it stays unsaid.
    if (finding.fit != Fit::Fits || longest >= run.length) finding.longest = longest;
    if (finding.fit == Fit::Fits) return;
    const Resistivity resistivity = judged_.supply.cableLoop * run.area / (2.0 * run.length);
    finding.least =
        leastConductor(rule.share, judged_.supply.nominal, own_, run.length, resistivity);
  }

  void groundFault() {
    if (rules_.leakage) verdict_.leakage = allowedLeakage(*rules_.leakage, judged_.element.rating);
    if (!rules_.groundFault) return;
    const Protection& device = *rules_.groundFault;
    Finding& finding =
        add(RuleKind::GroundFault, Told::just(fromRules(device.name)), Fit::OnlyIf, device.cite);
    finding.binding = false;
    finding.limit = device.holds;
    finding.load = verdict_.leakage;
    finding.condition = Told::just(fromRules(device.text));
    if (!verdict_.leakage || *verdict_.leakage <= device.holds) return;
    verdict_.leakageMayTrip = true;
    finding.condition = sentences(
        {finding.condition,
         Told(TOLD("Phrases",
                   "Expect it to trip now and then while the element is damp: dry or replace the "
                   "element, and never take the protection away."))});
  }

  void information() {
    const double strictest = strictestShare();
    if (guard_.fuse) verdict_.largestFuse = guard_.fuse->upTo;
    verdict_.nextBreaker = rules_.nextBreaker(verdict_.load + other_);
    verdict_.nextBreakerContinuous = rules_.nextBreaker(verdict_.load / strictest + other_);
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
  Guard guard_;
  ElectricalLoad electrical_;
  Current own_, other_;  // of the element as codes count; of other people's appliances
  CircuitVerdict verdict_{};
};

}  // namespace

CircuitVerdict judge(const CircuitRules& rules, const CircuitDetails& details,
                     const JudgedLoad& load) {
  return Judge(rules, details, load).run();
}

}  // namespace rigs
