// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/answers/published_airflows.hpp"

#include "rigs/words/told.hpp"

namespace rigs {

using namespace physics;

namespace {

// For translators; whoever shows them looks them up as a whole.
constexpr std::string_view text(Marked marked) { return marked.english; }

constexpr std::string_view kAshrae =
    text(TOLD("Room", "ASHRAE 62.2, quoted by a national laboratory's page"));
constexpr std::string_view kIrc =
    text(TOLD("Room", "International Residential Code, quoted in a building-code forum"));
constexpr std::string_view kUk =
    text(TOLD("Room", "United Kingdom, Approved Document F, quoted by a testing firm's page"));

VolumeFlow litresPerSecond(double n) { return litresPerHour(3600.0 * n); }
VolumeFlow changesPerHour(double n, Volume room) { return n * room / hours(1.0); }

}  // namespace

std::vector<PublishedAirflow> publishedAirflows(Volume room) {
  constexpr double kLitresInCubicFoot = 28.316846592;
  const auto cfm = [](double n) { return litresPerHour(n * 60.0 * kLitresInCubicFoot); };
  return {{text(TOLD("Room", "vented hood, on demand")), kAshrae, "read", cfm(100.0), true},
          {text(TOLD("Room", "other exhaust of a kitchen, on demand")), kAshrae, "read", cfm(300.0),
           false},
          {text(TOLD("Room", "enclosed kitchen, continuous, 5 air changes an hour")), kAshrae,
           "read", changesPerHour(5.0, room), false},
          {text(TOLD("Room", "kitchen, on demand")), kIrc, "read", cfm(100.0), false},
          {text(TOLD("Room", "kitchen, continuous")), kIrc, "read", cfm(25.0), false},
          {text(TOLD("Room", "hood over the hob")), kUk, "read", litresPerSecond(30.0), true},
          {text(TOLD("Room", "kitchen, fan elsewhere")), kUk, "read", litresPerSecond(60.0), false},
          {text(TOLD("Room", "kitchen, continuous")), kUk, "read", litresPerSecond(13.0), false},
          {text(TOLD("Room", "commercial hoods, 15 air changes an hour")),
           text(TOLD("Room", "a rule of thumb of the hood industry")), "read",
           changesPerHour(15.0, room), true}};
}

std::vector<JudgedAirflow> judgedAirflows(Volume room, const std::optional<VolumeFlow>& needed) {
  std::vector<JudgedAirflow> all;
  for (const PublishedAirflow& one : publishedAirflows(room))
    all.push_back({one, needed.has_value() && one.airflow >= *needed});
  return all;
}

}  // namespace rigs
