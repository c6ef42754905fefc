// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/circuits/rating.hpp"

namespace rigs {

using namespace physics;

Fit againstRating(Current load, Current rating) {
  if (within(load, rating)) return Fit::Fits;
  return within(load, (1.0 + kOnTheEdge) * rating) ? Fit::OnTheEdge : Fit::DoesNotFit;
}

std::optional<Device> deviceOf(const Breakers& breakers, Current rating) {
  if (!breakers.holds || !breakers.trips || !within(rating, amperes(63.0))) return std::nullopt;
  return Device{.isFuse = false,
                .carries = *breakers.holds * rating,
                .carriesFor = hours(1.0),
                .acts = *breakers.trips * rating,
                .actsWithin = hours(1.0)};
}

std::optional<Device> deviceOf(const Fuse& fuse, Current rating) {
  if (!within(rating, fuse.upTo)) return std::nullopt;
  return Device{.isFuse = true,
                .carries = fuse.carries * rating,
                .carriesFor = fuse.carriesFor,
                .acts = fuse.blows * rating,
                .actsWithin = fuse.blowsWithin};
}

Guard guardOf(const CircuitRules& rules, const CircuitDetails& details, Current rating) {
  Guard guard{.fuse = rules.fuse(details.fuse),
              .fused = !details.fuse.empty() && !rules.fuse(details.fuse),
              .device = std::nullopt};
  // A circuit as large as the fuse of its outlet's plug is that plug.
  const Outlet* outlet = details.outlet.empty() ? nullptr : rules.outlet(details.outlet);
  if (!guard.fuse && outlet && outlet->current == rating) guard.fuse = rules.fuse(outlet->fuse);
  if (guard.fuse && !within(rating, guard.fuse->upTo)) guard.fuse = nullptr;
  guard.fused = guard.fused || guard.fuse;
  if (guard.fuse) guard.device = deviceOf(*guard.fuse, rating);
  if (!guard.fused) guard.device = deviceOf(rules.breakers, rating);
  return guard;
}

Finding judgeRating(const Rated& rated) {
  Finding finding{};
  finding.kind = RuleKind::Rating;
  finding.fit = againstRating(rated.load, rated.rating);
  finding.load = rated.load;
  finding.rating = finding.limit = rated.rating;
  finding.share = 1.0;
  finding.fused = rated.fused;
  finding.device = rated.device;
  if (finding.fit == Fit::OnTheEdge)
    finding.foundShare = static_cast<double>(rated.load / rated.rating) - 1.0;
  return finding;
}

namespace {

Amount amperesOf(Current current) {
  return amount(current, {.significantDigits = 3, .decimals = {}});
}

Told fuseText(const Device& fuse, Current load) {
  if (within(load, fuse.carries))
    return Told(TOLD("Phrases",
                     "a fuse of that size carries %1 for at least %2, so it does not protect plug "
                     "and outlet from this: they get warm"),
                amperesOf(fuse.carries), amount(fuse.carriesFor));
  if (load < fuse.acts)
    return Told(
        TOLD("Phrases",
             "a fuse of that size carries %1 for at least %2 and must blow only from %3 on, "
             "within %4: plug and outlet may get hot before"),
        amperesOf(fuse.carries), amount(fuse.carriesFor), amperesOf(fuse.acts),
        amount(fuse.actsWithin));
  return Told(TOLD("Phrases", "a fuse of that size blows from %1 on, within %2 at the latest"),
              amperesOf(fuse.acts), amount(fuse.actsWithin));
}

Told breakerText(const Device& breaker, Current load) {
  if (within(load, breaker.carries))
    return Told(TOLD("Phrases",
                     "a breaker of that size carries %1 for at least %2, so it does not protect "
                     "cable and outlet from this: they get warm"),
                amperesOf(breaker.carries), amount(breaker.carriesFor));
  if (load < breaker.acts)
    return Told(TOLD("Phrases",
                     "a breaker of that size carries %1 for at least %2 and must trip only from %3 "
                     "on, within %4: cable and outlet may get hot before"),
                amperesOf(breaker.carries), amount(breaker.carriesFor), amperesOf(breaker.acts),
                amount(breaker.actsWithin));
  return Told(TOLD("Phrases", "a breaker of that size trips from %1 on, within %2 at the latest"),
              amperesOf(breaker.acts), amount(breaker.actsWithin));
}

}  // namespace

Told deviceText(const Finding& finding) {
  if (!finding.load || !finding.limit || within(*finding.load, *finding.limit)) return {};
  if (finding.device)
    return finding.device->isFuse ? fuseText(*finding.device, *finding.load)
                                  : breakerText(*finding.device, *finding.load);
  return finding.fused
             ? Told(TOLD("Phrases", "how soon its fuse blows is not known here"))
             : Told(TOLD("Phrases", "how soon its breaker or fuse acts is not known here"));
}

}  // namespace rigs
