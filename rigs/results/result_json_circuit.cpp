// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts about circuits, for programs.
#include "rigs/results/circuit_words.hpp"
#include "rigs/results/result_json_object.hpp"

namespace rigs {
namespace {

std::string_view word(Status status) {
  switch (status) {
    case Status::Seen:
      return "read";
    case Status::Computed:
      return "computed";
    case Status::Memory:
      return "from memory";
  }
  return "";
}

Json cite(const Cite& c) {
  return Object()
      .set("clause", std::string_view(c.clause))
      .set("source", std::string_view(c.source))
      .set("status", word(c.status))
      .take();
}

Json device(const Device& d) {
  return Object()
      .set("kind", d.isFuse ? "fuse" : "breaker")
      .set("carries", d.carries)
      .set("carries_for", d.carriesFor)
      .set("acts_from", d.acts)
      .set("acts_within", d.actsWithin)
      .take();
}

Json finding(const Finding& f) {
  Object object;
  object.set("rule", inEnglish(f.name))
      .set("verdict", inEnglish(fitWords(f.fit)))
      .set("binding", f.binding)
      .setIf("load", f.load)
      .setIf("rating", f.rating)
      .setIf("limit", f.limit)
      .setIf("share", f.share)
      .setIf("found_share", f.foundShare)
      .setIf("voltage", f.voltage)
      .setIf("full_current", f.full)
      .setIf("enabled", f.enabled)
      .setIf("counts_from", f.needed)
      .setIf("within", f.within)
      .setIf("least_conductor", f.least)
      .setIf("longest_cable", f.longest);
  if (f.device) object.put("device", device(*f.device));
  if (!f.condition.empty()) object.set("condition", inEnglish(f.condition));
  if (!f.cite.clause.empty()) object.put("cite", cite(f.cite));
  return object.set("text", inEnglish(findingText(f))).take();
}

std::optional<std::string_view> textIf(const std::string& text) {
  return text.empty() ? std::nullopt : std::optional<std::string_view>(text);
}

Json verdict(const CircuitVerdict& v) {
  Json findings = Json::array();
  for (const Finding& f : v.findings) findings.push_back(finding(f));
  Json spreads = Json::array();
  for (const SpreadInRange& s : v.spreads) {
    spreads.push_back(Object()
                          .set("range", std::string_view(s.range->name))
                          .set("lowest", s.range->lowest)
                          .set("highest", s.range->highest)
                          .set("least_current", s.spread.least.current)
                          .set("most_current", s.spread.most.current)
                          .set("least_delivered", s.spread.least.delivered)
                          .set("most_delivered", s.spread.most.delivered)
                          .put("cite", cite(s.range->cite))
                          .take());
  }
  return Object()
      .set("region", std::string_view(v.rules->region))
      .set("code", std::string_view(v.rules->code))
      .set("edition", std::string_view(v.rules->edition))
      .set("verdict", inEnglish(fitWords(v.overall)))
      .set("text", inEnglish(verdictText(v)))
      .set("load", v.load)
      .set("neutral_current", v.neutral)
      .setIf("conductor_for_next_breaker", textIf(v.conductorForNext))
      .setIf("conductor_if_continuous", textIf(v.conductorForContinuous))
      .put("findings", std::move(findings))
      .put("voltage_ranges", std::move(spreads))
      .setIf("next_breaker", v.nextBreaker)
      .setIf("next_breaker_if_continuous", v.nextBreakerContinuous)
      .setIf("allowed_leakage", v.leakage)
      .set("leakage_may_trip", v.leakageMayTrip)
      .take();
}

Json elementJson(const physics::Element& element) {
  return Object().set("rating", element.rating).set("rated_at", element.ratedAt).take();
}

Json shortestDays(const std::vector<ShortestDay>& all) {
  Json days = Json::array();
  for (const ShortestDay& s : all) {
    Json circuits = Json::array();
    for (std::size_t i = 0; i < s.elements.size(); ++i)
      circuits.push_back(Object()
                             .set("limit", s.limits[i])
                             .put("largest_element", elementJson(s.elements[i]))
                             .take());
    days.push_back(Object()
                       .set("region", std::string_view(s.region))
                       .set("reading", inEnglish(s.reading))
                       .put("circuits", std::move(circuits))
                       .set("second_circuit_imagined", s.imagined)
                       .set("delivered", s.delivered)
                       .set("boils", s.outcome == physics::Outcome::Done)
                       .setIf("mash_to_boil", s.toBoil)
                       .set("day", s.day)
                       .take());
  }
  return days;
}

Json split(const Split& split) {
  Json parts = Json::array();
  for (const SplitPart& part : split.parts) {
    Json verdicts = Json::array();
    for (const CircuitVerdict& v : part.verdicts) verdicts.push_back(verdict(v));
    parts.push_back(Object()
                        .put("element", elementJson(part.element))
                        .set("current", part.current)
                        .put("verdicts", std::move(verdicts))
                        .take());
  }
  return Object()
      .set("fits", split.overall() == Fit::Fits)
      .set("verdict", inEnglish(fitWords(split.overall())))
      .set("second_circuit_imagined", split.imagined)
      .put("parts", std::move(parts))
      .take();
}

}  // namespace

Json circuitJson(const CircuitAnswer& circuit) {
  Json circuits = Json::array();
  for (const CircuitLoad& load : circuit.circuits) {
    Json verdicts = Json::array();
    for (const CircuitVerdict& v : load.verdicts) verdicts.push_back(verdict(v));
    circuits.push_back(Object()
                           .set("nominal", load.supply.nominal)
                           .set("rating", load.supply.rating)
                           .set("resistance_hot", load.hot)
                           .set("resistance_cold", load.cold)
                           .set("peak_current", load.load.current)
                           .set("branch_current", load.branch)
                           .set("mean_current", load.mean)
                           .set("delivered", load.load.delivered)
                           .set("from_wall", load.load.fromWall)
                           .set("in_cable", load.load.inCable)
                           .set("drop", load.supply.nominal - load.load.atTerminals)
                           .set("drop_share", 1.0 - static_cast<double>(load.load.atTerminals /
                                                                        load.supply.nominal))
                           .put("nameplate", finding(load.nameplate))
                           .setIf("granted_to_long_use", load.granted)
                           .put("verdicts", std::move(verdicts))
                           .take());
  }
  Object object;
  object.set("verdict", inEnglish(fitWords(circuit.overall())))
      .put("circuits", std::move(circuits))
      .put("duty", Object()
                       .set("longest_full_current", circuit.duty.longestFull())
                       .set("longest_enabled", circuit.duty.longestEnabled())
                       .set("share_with_current", circuit.duty.mean())
                       .take())
      .setIf("added_by_cable", circuit.addedByCable);
  if (!circuit.readings.empty()) {
    Json readings = Json::array();
    for (const ReadingDay& r : circuit.readings) {
      readings.push_back(Object()
                             .set("region", std::string_view(r.region))
                             .set("reading", inEnglish(r.reading.name))
                             .set("limit", r.reading.limit)
                             .set("largest_element", r.largest.rating)
                             .set("rated_at", r.largest.ratedAt)
                             .set("delivered", r.delivered)
                             .set("outcome", outcomeKey(r.outcome))
                             .setIf("mash_to_boil", r.toBoil)
                             .set("day", r.day)
                             .set("rig_stays_within", r.fits)
                             .put("cite", cite(r.reading.cite))
                             .take());
    }
    object.put("readings", std::move(readings));
  }
  if (!circuit.shortest.empty()) object.put("shortest_days", shortestDays(circuit.shortest));
  if (circuit.split) object.put("split", split(*circuit.split));
  return object.set("deferral", inEnglish(electricianText())).take();
}

}  // namespace rigs
