// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/circuit_words.hpp"

namespace rigs {

using namespace physics;

namespace {

std::string amp(Current current) {
  if (current < amperes(0.1)) return formatLike(current, "1 mA");
  return format(current, UnitSystem::SI, {.significantDigits = 4, .decimals = {}});
}
std::string shown(const auto& q) { return format(q, UnitSystem::SI); }
std::string percent(double share) {
  return format(share, UnitSystem::SI, {.significantDigits = 3, .decimals = {}});
}

std::string againstShare(const Finding& f) {
  std::string text = amp(*f.load) + " against ";
  if (f.rating && f.share && *f.share != 1.0)
    text += percent(*f.share) + " of " + amp(*f.rating) + " = ";
  return text + amp(*f.limit);
}

// With what heat, a drum or many conductors take off, and with the terminations' own limit.
std::string againstConductor(const Finding& f) {
  std::string text = amp(*f.load) + " against ";
  const Current corrected = *f.share * *f.rating;
  if (*f.share != 1.0)
    text += formatNumber(*f.share) + " of " + amp(*f.rating) + " = " + amp(corrected);
  if (*f.share != 1.0 && *f.limit >= (1.0 - 1e-9) * corrected) return text;
  if (*f.share != 1.0) text += ", no more than ";
  text += amp(*f.limit);
  return *f.limit < (1.0 - 1e-9) * corrected ? text + " of its terminations" : text;
}

std::string durations(const Finding& f) {
  const std::string stretch =
      f.within ? " in the fullest " + shown(*f.within) : std::string(" without a break");
  const std::string enabled =
      f.within ? shown(*f.enabled) + " of it" : shown(*f.enabled) + " on end";
  return "; current flows for " + shown(*f.full) + stretch + ", the element is enabled for " +
         enabled + ", the rule counts from " + shown(*f.needed);
}

}  // namespace

std::string arithmetic(const Finding& f) {
  switch (f.kind) {
    case RuleKind::Voltage:
      return {};
    case RuleKind::OverVoltage:
      return "an element rated at " + shown(*f.voltage) + " would give " +
             formatNumber(*f.foundShare) +
             " times its power and surface load; use one rated for "
             "this supply";
    case RuleKind::LongUse:
      return againstShare(f) + durations(f);
    case RuleKind::OutletOnCircuit:
      return amp(*f.limit) + " outlet on a circuit of " + amp(*f.rating);
    case RuleKind::OutletContacts:
      return f.condition;
    case RuleKind::HouseholdSocket:
      return amp(*f.load) + " for " + shown(*f.full) + ", above " + amp(*f.limit) +
             " for longer than " + shown(*f.needed);
    case RuleKind::LargestProtection:
      return "a breaker of " + amp(*f.rating) + " for an appliance of " + amp(*f.load) +
             " without a marked one; the most is " + amp(*f.limit);
    case RuleKind::Conductor:
      return f.load ? againstConductor(f) : std::string();
    case RuleKind::ConductorLongUse:
      return percent(*f.share) + " of " + amp(*f.rating) + " = " + amp(*f.load) + " against " +
             amp(*f.limit) + ", without it " + amp(*f.rating);
    case RuleKind::BreakerForConductor:
      return "a breaker of " + amp(*f.load) + ", the most is " + amp(*f.limit);
    case RuleKind::VoltageDrop:
      return percent(*f.foundShare) + " against " + percent(*f.share) +
             (f.binding ? "" : ", a recommendation") +
             (f.least ? "; at least " + formatLike(*f.least, "1 mm2") + " of copper would keep it"
                      : std::string()) +
             (f.longest ? "; up to " + formatLike(*f.longest, "1 m") + " (" +
                              formatLike(*f.longest, "1 ft") + ") of this cable keep it"
                        : std::string());
    case RuleKind::GroundFault:
      return f.load ? "an element of this power may leak " + amp(*f.load) +
                          ", the device may trip from " + amp(*f.limit)
                    : "the device may trip from " + amp(*f.limit);
    default:
      return f.load && f.limit ? againstShare(f) : std::string();
  }
}

std::string citeText(const Cite& cite) {
  if (cite.clause.empty()) return {};
  // A source that begins with the clause says it already.
  const bool said = cite.source.starts_with(cite.clause);
  return (said ? std::string() : cite.clause + "; ") + cite.source + "; " +
         std::string(statusWords(cite.status));
}

namespace {

std::string findingSaid(const Finding& f, bool withCondition) {
  std::string text = f.name;
  const std::string sum = arithmetic(f);
  if (!sum.empty()) text += ": " + sum;
  const bool said = f.kind == RuleKind::OutletContacts;
  if (f.kind == RuleKind::GroundFault) {
    text += ". " + f.condition;
  } else if (!withCondition) {
    text += '.';
  } else {
    text += f.binding || f.fit == Fit::CannotSay ? ": " : ": advice: ";
    text += fitWords(f.fit);
    if (!f.condition.empty() && !said) text += (f.fit == Fit::CannotSay ? ": " : " ") + f.condition;
    text += '.';
  }
  const std::string cite = citeText(f.cite);
  return cite.empty() ? text : text + " [" + cite + ']';
}

std::string verdictSaid(const CircuitVerdict& verdict, bool withArithmetic);

}  // namespace

std::string findingText(const Finding& finding) { return findingSaid(finding, true); }

std::string findingInBrief(const CircuitVerdict& verdict, const Finding& finding) {
  const bool stated = finding.binding && finding.fit == verdict.overall &&
                      finding.fit == Fit::OnlyIf && finding.kind != RuleKind::OutletContacts;
  return findingSaid(finding, !stated);
}

std::string rulesText(const CircuitRules& rules) {
  return rules.region + ", " + rules.code + ' ' + rules.edition;
}

std::string verdictText(const CircuitVerdict& verdict) { return verdictSaid(verdict, true); }
std::string verdictInBrief(const CircuitVerdict& verdict) { return verdictSaid(verdict, false); }

namespace {

std::string verdictSaid(const CircuitVerdict& verdict, bool withArithmetic) {
  const std::string rules = rulesText(*verdict.rules);
  if (verdict.overall == Fit::Fits) return rules + ": fits, " + amp(verdict.load) + '.';
  std::string why;
  for (const Finding& f : verdict.findings) {
    if (!f.binding || f.fit != verdict.overall) continue;
    const std::string one = f.fit == Fit::OnlyIf || f.fit == Fit::CannotSay ? f.condition
                            : withArithmetic ? f.name + " (" + arithmetic(f) + ')'
                                             : f.name;
    if (why.find(one) == std::string::npos) why += (why.empty() ? "" : "; and if ") + one;
  }
  if (verdict.overall == Fit::DoesNotFit) {
    for (std::size_t at = why.find("; and if "); at != std::string::npos;
         at = why.find("; and if "))
      why.replace(at, 9, "; ");
  }
  return rules + ": " + std::string(fitWords(verdict.overall)) +
         (verdict.overall == Fit::OnlyIf ? " " : ": ") + why + '.';
}

}  // namespace

std::string informationText(const CircuitVerdict& v) {
  if (!v.nextBreaker) return {};
  const auto with = [](Current breaker, const std::string& wire) {
    return amp(breaker) + (wire.empty() ? std::string() : " with " + wire + " of copper");
  };
  std::string text = "For information, not to be installed by this: the standard size for " +
                     amp(v.load) + " is " + with(*v.nextBreaker, v.conductorForNext);
  if (v.nextBreakerContinuous && *v.nextBreakerContinuous != *v.nextBreaker)
    text += "; counted as continuous, " + with(*v.nextBreakerContinuous, v.conductorForContinuous);
  return text + ". [" + citeText(v.rules->breakers.cite) + ']';
}

std::string_view electricianText() {
  return "Planning estimate only. Electrical rules, adopted editions and inspections differ by "
         "place; local codes decide. Have a licensed electrician check the circuit, protection, "
         "plug, cord and enclosure before use, and follow the equipment maker's instructions.";
}

}  // namespace rigs
