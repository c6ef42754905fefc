// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/results/circuit_words.hpp"

#include <algorithm>

#include "rigs/circuits/rating.hpp"

namespace rigs {

using namespace physics;

namespace {

Amount percent(double share) { return amount(share, {.significantDigits = 3, .decimals = {}}); }

Told against(const Argument& load, const Argument& limit) {
  return Told(TOLD("Phrases", "%1 against %2"), load, limit);
}

Told againstShare(const Finding& f) {
  if (!f.rating || !f.share || *f.share == 1.0) return against(closely(*f.load), closely(*f.limit));
  return Told(TOLD("Phrases", "%1 against %2 of %3 = %4"), closely(*f.load), percent(*f.share),
              closely(*f.rating), closely(*f.limit));
}

// Contacts that are not there are the arithmetic; those that are not known are a condition.
bool saysItsCondition(const Finding& f) {
  return f.kind == RuleKind::OutletContacts && f.fit == Fit::DoesNotFit;
}

bool isOfARating(const Finding& f) {
  return (f.kind == RuleKind::Rating || f.kind == RuleKind::OutletRating) && f.load && f.limit;
}

// Against what something is rated for, without what its fuse or breaker does.
Told againstRated(const Finding& f) {
  if (f.fit != Fit::OnTheEdge || !f.foundShare) return againstShare(f);
  return Told(TOLD("Phrases", "%1 against %2, %3 more"), closely(*f.load), closely(*f.limit),
              percent(*f.foundShare));
}

// With what heat, a drum or many conductors take off, and with the terminations' own limit.
Told againstConductor(const Finding& f) {
  const Current corrected = *f.share * *f.rating;
  const bool byTerminations = *f.limit < (1.0 - 1e-9) * corrected;
  if (*f.share == 1.0) {
    if (!byTerminations) return against(closely(*f.load), closely(*f.limit));
    return Told(TOLD("Phrases", "%1 against %2 of its terminations"), closely(*f.load),
                closely(*f.limit));
  }
  if (!byTerminations) {
    return Told(TOLD("Phrases", "%1 against %2 of %3 = %4"), closely(*f.load), Number{*f.share},
                closely(*f.rating), closely(corrected));
  }
  return Told(TOLD("Phrases", "%1 against %2 of %3 = %4, no more than %5 of its terminations"),
              closely(*f.load), Number{*f.share}, closely(*f.rating), closely(corrected),
              closely(*f.limit));
}

Told durations(const Finding& f) {
  if (f.within) {
    return Told(TOLD("Phrases",
                     "current flows for %1 in the fullest %2, the element is enabled for %3 of it, "
                     "the rule counts from %4"),
                amount(*f.full), amount(*f.within), amount(*f.enabled), amount(*f.needed));
  }
  return Told(TOLD("Phrases",
                   "current flows for %1 without a break, the element is enabled for %2 on end, "
                   "the rule counts from %3"),
              amount(*f.full), amount(*f.enabled), amount(*f.needed));
}

Told drop(const Finding& f) {
  const Template<2> shares = f.binding
                                 ? Template<2>(TOLD("Phrases", "%1 against %2"))
                                 : Template<2>(TOLD("Phrases", "%1 against %2, a recommendation"));
  List all{.items = {Told(shares, percent(*f.foundShare), percent(*f.share))},
           .joint = Joint::Semicolon};
  if (f.least)
    all.items.emplace_back(Told(TOLD("Phrases", "at least %1 of copper would keep it"),
                                amountLike(*f.least, "1 mm2")));
  if (f.longest)
    all.items.emplace_back(Told(TOLD("Phrases", "up to %1 (%2) of this cable keep it"),
                                amountLike(*f.longest, "1 m"), amountLike(*f.longest, "1 ft")));
  return Told::just(std::move(all));
}

Told leak(const Finding& f) {
  if (!f.load) return Told(TOLD("Phrases", "the device may trip from %1"), closely(*f.limit));
  return Told(TOLD("Phrases", "an element of this power may leak %1, the device may trip from %2"),
              closely(*f.load), closely(*f.limit));
}

}  // namespace

Amount closely(Current current) {
  if (current < amperes(0.1)) return amountLike(current, "1 mA");
  return amount(current, {.significantDigits = 4, .decimals = {}});
}

Told arithmetic(const Finding& f) {
  switch (f.kind) {
    case RuleKind::Voltage:
      return {};
    case RuleKind::OverVoltage:
      return Told(TOLD("Phrases",
                       "an element rated at %1 would give %2 times its power and surface load; "
                       "use one rated for this supply"),
                  amount(*f.voltage), Number{*f.foundShare});
    case RuleKind::Rating:
    case RuleKind::OutletRating: {
      if (!isOfARating(f)) return {};
      const Told device = f.kind == RuleKind::Rating || f.fused ? deviceText(f) : Told();
      if (device.empty()) return againstRated(f);
      return Told::just(List{{againstRated(f), device}, Joint::Semicolon});
    }
    case RuleKind::LongUse:
      return Told::just(List{{againstShare(f), durations(f)}, Joint::Semicolon});
    case RuleKind::OutletOnCircuit:
      return Told(TOLD("Phrases", "%1 outlet on a circuit of %2"), closely(*f.limit),
                  closely(*f.rating));
    case RuleKind::OutletContacts:
      return saysItsCondition(f) ? f.condition : Told();
    case RuleKind::HouseholdSocket:
      return Told(TOLD("Phrases", "%1 for %2, above %3 for longer than %4"), closely(*f.load),
                  amount(*f.full), closely(*f.limit), amount(*f.needed));
    case RuleKind::LargestProtection:
      return Told(TOLD("Phrases",
                       "a breaker of %1 for an appliance of %2 without a marked one; the most is "
                       "%3"),
                  closely(*f.rating), closely(*f.load), closely(*f.limit));
    case RuleKind::Conductor:
      return f.load ? againstConductor(f) : Told();
    case RuleKind::ConductorLongUse:
      return Told(TOLD("Phrases", "%1 of %2 = %3 against %4, without it %5"), percent(*f.share),
                  closely(*f.rating), closely(*f.load), closely(*f.limit), closely(*f.rating));
    case RuleKind::BreakerForConductor:
      return Told(TOLD("Phrases", "a breaker of %1, the most is %2"), closely(*f.load),
                  closely(*f.limit));
    case RuleKind::VoltageDrop:
      return drop(f);
    case RuleKind::GroundFault:
      return leak(f);
    default:
      return f.load && f.limit ? againstShare(f) : Told();
  }
}

Told citeText(const Cite& cite) {
  if (cite.clause.empty()) return {};
  // A source that begins with the clause says it already.
  if (cite.source.starts_with(cite.clause)) {
    return Told::just(List{{fromRules(cite.source), statusWords(cite.status)}, Joint::Semicolon});
  }
  return Told::just(List{{fromRules(cite.clause), fromRules(cite.source), statusWords(cite.status)},
                         Joint::Semicolon});
}

namespace {

Told onTheEdge() {
  return Told(TOLD("Phrases",
                   "on the edge: an element may take a few percent more or less than its plate "
                   "says; have the current measured, or leave room with less power"));
}

// "fits", "fits only if ...", "cannot say: ...".
Told fitText(const Finding& f) {
  if (f.fit == Fit::OnTheEdge) return onTheEdge();
  if (f.condition.empty() || saysItsCondition(f)) return fitWords(f.fit);
  if (f.fit == Fit::OnlyIf) return Told(TOLD("Phrases", "fits only if %1"), f.condition);
  if (f.fit == Fit::CannotSay) return Told(TOLD("Phrases", "cannot say: %1"), f.condition);
  return fitWords(f.fit);
}

Told withCite(Told text, const Cite& cite) {
  const Told where = citeText(cite);
  return where.empty() ? text : Told(TOLD("Phrases", "%1 [%2]"), std::move(text), where);
}

}  // namespace

Told outcomeText(const Finding& f) {
  const Told sum = arithmetic(f);
  if (f.kind == RuleKind::GroundFault) {
    // The protection's text ends its own sentence.
    return f.condition.empty() ? Told(TOLD("Phrases", "%1."), sum)
                               : Told(TOLD("Phrases", "%1. %2"), sum, f.condition);
  }
  const bool advice = !f.binding && f.fit != Fit::CannotSay;
  const Told fit = advice ? Told(TOLD("Phrases", "advice: %1"), fitText(f)) : fitText(f);
  return sum.empty() ? Told(TOLD("Phrases", "%1."), fit)
                     : Told(TOLD("Phrases", "%1: %2."), sum, fit);
}

Told findingText(const Finding& f) {
  return withCite(Told(TOLD("Phrases", "%1: %2"), f.name, outcomeText(f)), f.cite);
}

Told rulesText(const CircuitRules& rules) {
  return Told(TOLD("Phrases", "%1, %2 %3"), fromRules(rules.region), Verbatim{rules.code},
              Verbatim{rules.edition});
}

namespace {

// What the binding findings of this outcome say, each once.
List reasons(const CircuitVerdict& verdict, Fit fit, bool withArithmetic) {
  List all{.items = {}, .joint = Joint::Semicolon};
  for (const Finding& f : verdict.findings) {
    if (!f.binding || f.fit != fit) continue;
    Told one = f.name;
    if (fit == Fit::OnlyIf || fit == Fit::CannotSay) {
      one = f.condition;
    } else if (fit == Fit::OnTheEdge) {
      one = Told(TOLD("Phrases", "%1 (%2)"), f.name, againstRated(f));
    } else if (const Told sum = isOfARating(f) ? againstRated(f) : arithmetic(f);
               withArithmetic && !sum.empty()) {
      one = Told(TOLD("Phrases", "%1 (%2)"), f.name, sum);
    }
    const Argument reason(std::move(one));
    if (std::find(all.items.begin(), all.items.end(), reason) == all.items.end())
      all.items.push_back(reason);
  }
  return all;
}

Told conditionOf(const List& reasons) {
  Told all;
  for (const Argument& one : reasons.items)
    all = all.empty() ? Told::just(one) : Told(TOLD("Phrases", "%1; and if %2"), all, one);
  return all;
}

Told partSaid(const CircuitVerdict& verdict, Fit fit, bool withArithmetic) {
  List why = reasons(verdict, fit, withArithmetic);
  if (why.items.empty()) return {};
  switch (fit) {
    case Fit::Fits:
      return {};
    case Fit::OnlyIf:
      return Told(TOLD("Phrases", "fits only if %1"), conditionOf(why));
    case Fit::OnTheEdge:
      return Told(TOLD("Phrases", "on the edge: %1"), std::move(why));
    case Fit::CannotSay:
      return Told(TOLD("Phrases", "cannot say: %1"), std::move(why));
    case Fit::DoesNotFit:
      return Told(TOLD("Phrases", "does not fit: %1"), std::move(why));
  }
  return {};
}

// What decides first; and what else it would hang on, unless it does not fit anyway.
Told verdictSaid(const CircuitVerdict& verdict, bool withArithmetic) {
  const Told rules = rulesText(*verdict.rules);
  if (verdict.overall == Fit::Fits)
    return Told(TOLD("Phrases", "%1: fits, %2."), rules, closely(verdict.load));
  if (verdict.overall == Fit::DoesNotFit)
    return Told(TOLD("Phrases", "%1: %2."), rules,
                partSaid(verdict, Fit::DoesNotFit, withArithmetic));
  List parts{.items = {}, .joint = Joint::Semicolon};
  for (const Fit fit : {Fit::CannotSay, Fit::OnTheEdge, Fit::OnlyIf}) {
    Told part = partSaid(verdict, fit, withArithmetic);
    if (!part.empty()) parts.items.emplace_back(std::move(part));
  }
  return Told(TOLD("Phrases", "%1: %2."), rules, std::move(parts));
}

}  // namespace

Told verdictText(const CircuitVerdict& verdict) { return verdictSaid(verdict, true); }
Told verdictInBrief(const CircuitVerdict& verdict) { return verdictSaid(verdict, false); }

std::vector<Told> conditionsOf(const CircuitVerdict& verdict) {
  std::vector<Told> all;
  if (verdict.overall == Fit::DoesNotFit) return all;
  for (const Finding& f : verdict.findings) {
    if (!f.binding || f.fit != Fit::OnlyIf) continue;
    if (std::find(all.begin(), all.end(), f.condition) == all.end()) all.push_back(f.condition);
  }
  return all;
}

Told outcomeText(const CircuitVerdict& verdict) {
  const Told fit = fitWords(verdict.overall);
  if (conditionsOf(verdict).empty()) return fit;
  const Told condition = partSaid(verdict, Fit::OnlyIf, false);
  if (verdict.overall == Fit::OnlyIf) return condition;
  return Told::just(List{{fit, condition}, Joint::Semicolon});
}

Told informationText(const CircuitVerdict& v) {
  if (!v.nextBreaker) return {};
  const auto with = [](Current breaker, const std::string& wire) {
    return wire.empty()
               ? Told::just(closely(breaker))
               : Told(TOLD("Phrases", "%1 with %2 of copper"), closely(breaker), Verbatim{wire});
  };
  const Told next = with(*v.nextBreaker, v.conductorForNext);
  // "Standard size" must not be read as a larger fuse for the same plug.
  if (v.largestFuse)
    return withCite(
        Told(TOLD("Phrases",
                  "For information, not to be installed by this: no fuse of its kind is larger "
                  "than %1, so no plug with one carries more; the standard size of a breaker for "
                  "%2 is %3."),
             closely(*v.largestFuse), closely(v.load), next),
        v.rules->breakers.cite);
  const bool another = v.nextBreakerContinuous && *v.nextBreakerContinuous != *v.nextBreaker;
  Told text =
      another
          ? Told(TOLD("Phrases",
                      "For information, not to be installed by this: the standard size for %1 is "
                      "%2; counted as continuous, %3."),
                 closely(v.load), next, with(*v.nextBreakerContinuous, v.conductorForContinuous))
          : Told(TOLD("Phrases",
                      "For information, not to be installed by this: the standard size for %1 is "
                      "%2."),
                 closely(v.load), next);
  return withCite(std::move(text), v.rules->breakers.cite);
}

Told electricianText() {
  return Told(TOLD(
      "Phrases",
      "For planning only: rules, adopted editions and inspections differ by place; local codes "
      "decide. Have a licensed electrician check circuit, protection, plug, cord and enclosure "
      "before use; follow the maker's instructions."));
}

}  // namespace rigs
