// SPDX-License-Identifier: GPL-3.0-or-later
// Verdicts about circuits, for programs.
#include "rigs/circuit_words.hpp"
#include "rigs/result_json_object.hpp"

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

Json finding(const Finding& f) {
  Object object;
  object.set("rule", std::string_view(f.name))
      .set("verdict", fitWords(f.fit))
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
      .setIf("within", f.within);
  if (!f.condition.empty()) object.set("condition", std::string_view(f.condition));
  if (!f.cite.clause.empty()) object.put("cite", cite(f.cite));
  return object.set("text", std::string_view(findingText(f))).take();
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
      .set("verdict", fitWords(v.overall))
      .set("text", std::string_view(verdictText(v)))
      .set("load", v.load)
      .set("neutral_current", v.neutral)
      .setIf("conductor_for_next_breaker", textIf(v.conductorForNext))
      .setIf("conductor_if_continuous", textIf(v.conductorForContinuous))
      .put("findings", std::move(findings))
      .put("voltage_ranges", std::move(spreads))
      .setIf("next_breaker", v.nextBreaker)
      .setIf("next_breaker_if_continuous", v.nextBreakerContinuous)
      .setIf("allowed_leakage", v.leakage)
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
                           .set("mean_current", load.mean)
                           .set("delivered", load.load.delivered)
                           .set("from_wall", load.load.fromWall)
                           .set("in_cable", load.load.inCable)
                           .set("drop", load.supply.nominal - load.load.atTerminals)
                           .set("drop_share", 1.0 - static_cast<double>(load.load.atTerminals /
                                                                        load.supply.nominal))
                           .put("verdicts", std::move(verdicts))
                           .take());
  }
  Object object;
  object.set("verdict", fitWords(circuit.overall()))
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
                             .set("reading", std::string_view(r.reading.name))
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
  if (circuit.split) {
    object.put("split", Object()
                            .set("each", circuit.split->each)
                            .set("current", circuit.split->current)
                            .set("largest_together", circuit.split->largestTogether)
                            .setIf("mash_to_boil", circuit.split->toBoil)
                            .set("day", circuit.split->day)
                            .take());
  }
  return object.set("deferral", electricianText()).take();
}

}  // namespace rigs
