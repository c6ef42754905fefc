// SPDX-License-Identifier: GPL-3.0-or-later
// What the mash's temperature makes of malt's starch.
#include <algorithm>
#include <cmath>
#include <utility>

#include "gui/telling/words.hpp"
#include "gui/telling/wort.hpp"

namespace gui::telling {
namespace {

using physics::MashConversion;
using physics::Time;
using rigs::amount;
using rigs::MashedWort;
using rigs::Told;

const MashedWort* mashedOf(const Case& of, std::size_t i) {
  const rigs::WortAnswer* wort = wortOf(of, i);
  return wort && wort->mashed ? &*wort->mashed : nullptr;
}

constexpr rigs::FormatOptions kWhole{.significantDigits = 2, .decimals = 0};
rigs::Number points(double share) { return {100.0 * share, kWhole}; }

// Less than half a percent of it is none that anybody would see.
constexpr double kHardlyAny = 0.005;

Told coldText(const MashConversion& mash) {
  if (mash.reached < kHardlyAny)
    return Told(TOLD("Answer",
                     "The mash is never above %1: hardly any starch swells so cold (from %2 to %3 "
                     "on, by malt), and there may be next to no sugar of it."),
                amount(mash.hottest), rigs::numberAlone(physics::celsius(58.5), {.decimals = 1}),
                amount(physics::celsius(64.3), {.decimals = 1}));
  return Told(
      TOLD("Answer",
           "The mash is never above %1, where starch of some malts does not swell yet (from %2 to "
           "%3 on): only %4 to %5 of it may be reached, and the gravity be lower than planned."),
      amount(physics::kColdMash), rigs::numberAlone(physics::celsius(58.5), {.decimals = 1}),
      amount(physics::celsius(64.3), {.decimals = 1}),
      rigs::numberAlone(mash.reachedAtLeast, kWhole), amount(mash.reached, kWhole));
}

Told doneByText(const MashConversion& mash, Time doneBy) {
  if (mash.doneLateBy && *mash.doneLateBy - doneBy < physics::minutes(1.0))
    return Told(TOLD("Answer", "The mash's starch is done after %1 at the latest."),
                rigs::roughly(*mash.doneLateBy));
  if (mash.doneLateBy)
    return Told(TOLD("Answer",
                     "The mash's starch is done after about %1 with common malt, after %2 at the "
                     "latest."),
                rigs::roughly(doneBy), rigs::roughly(*mash.doneLateBy));
  const double left = 1.0 - mash.reachedAtLeast;
  if (left < 1.0 - physics::kNearlyAllStarch)
    return Told(TOLD("Answer",
                     "With common malt the starch is done after about %1; malt that swells late "
                     "may take longer than this mash does."),
                rigs::roughly(doneBy));
  return Told(TOLD("Answer",
                   "With common malt the starch is done after about %1; malt that swells late "
                   "leaves up to %2."),
              rigs::roughly(doneBy), amount(left, kWhole));
}

Told doneText(const MashConversion& mash) {
  if (isColdMash(mash)) return coldText(mash);
  if (mash.doneBy) return doneByText(mash, *mash.doneBy);
  return Told(
      TOLD("Answer", "The mash does not get all its starch: about %1 to %2 of it, by malt."),
      rigs::numberAlone(mash.reachedAtLeast, kWhole), amount(mash.reached, kWhole));
}

Told limitText(const MashConversion& mash) {
  if (!mash.limit)
    return Told(TOLD("Answer", "So cold nobody can tell how far its wort ferments."));
  const auto least = rigs::numberAlone(mash.limit->least, kWhole);
  const auto most = amount(mash.limit->most, kWhole);
  if (mash.limit->validity == physics::Validity::InRange)
    return Told(TOLD("Answer", "Its wort can ferment to about %1 to %2, as apparent attenuation."),
                least, most);
  return Told(TOLD("Answer",
                   "Its wort might ferment to about %1 to %2, as apparent attenuation; that was "
                   "measured from %3 to %4 only."),
              least, most, rigs::numberAlone(physics::kAttenuationFrom),
              amount(physics::kAttenuationTo));
}

// What nobody knows is told.
Told trimmingText(const MashConversion& mash) {
  if (!mash.trimming)
    return Told(
        TOLD("Answer",
             "What enzymes go on trimming in so many hours nobody has measured, and nothing "
             "is told of it."));
  if (mash.betweenTrims < physics::minutes(1.0))
    return Told(TOLD("Answer",
                     "What enzymes go on trimming in so many hours nobody has measured: 0 to %1 "
                     "points more, at most %2."),
                points(mash.trimming->probably), points(mash.trimming->atMost));
  return Told(TOLD("Answer",
                   "For %1 it is at %2 to %3. What enzymes go on trimming in such hours nobody has "
                   "measured: 0 to %4 points more, at most %5."),
              rigs::roughly(mash.betweenTrims), rigs::numberAlone(physics::kTrimsFrom),
              amount(physics::kTrimsTo), points(mash.trimming->probably),
              points(mash.trimming->atMost));
}

Told longHoursText(const MashConversion& mash) {
  if (mash.lasts <= physics::kTrimmingFrom || !mash.limit) return {};
  return trimmingText(mash);
}

Told bedText(const MashedWort& mash) {
  if (!mash.isLeftAlone) return {};
  const Time lasts = mash.conversion.lasts;
  const auto bed = physics::unstirredBedAfter(lasts);
  if (!bed) return {};
  if (lasts > physics::kTrimmingTo)
    return Told(
        TOLD("Answer",
             "After %1 that nobody stirs, the middle of the grain may be %2 to %3 warmer than "
             "its side, and of longer no range is known; all this is told of the mean."),
        rigs::asChosen(bed->after), rigs::numberAlone(bed->least, {.decimals = 0}),
        amount(bed->most, {.decimals = 0}));
  return Told(
      TOLD("Answer",
           "After %1 that nobody stirs, the middle of the grain may be %2 to %3 warmer than "
           "its side; all this is told of the mean."),
      rigs::asChosen(bed->after), rigs::numberAlone(bed->least, {.decimals = 0}),
      amount(bed->most, {.decimals = 0}));
}

Told mashText(const MashConversion& mash) {
  return rigs::sentences({doneText(mash), limitText(mash), longHoursText(mash)});
}

// Whether nobody would tell one from the other.
bool sameMash(const MashConversion& a, const MashConversion& b) {
  constexpr double kShare = 0.005;
  constexpr Time kTime = physics::minutes(2.0);
  const auto near = [](double x, double y) { return std::abs(x - y) < kShare; };
  const auto nearTime = [&](Time x, Time y) { return abs(x - y) < kTime; };
  if (!near(a.reached, b.reached) || !near(a.reachedAtLeast, b.reachedAtLeast) ||
      !nearTime(a.betweenTrims, b.betweenTrims) || isColdMash(a) != isColdMash(b))
    return false;
  if (a.doneBy.has_value() != b.doneBy.has_value() || a.limit.has_value() != b.limit.has_value() ||
      a.doneLateBy.has_value() != b.doneLateBy.has_value() ||
      a.trimming.has_value() != b.trimming.has_value())
    return false;
  if (a.doneLateBy && !nearTime(*a.doneLateBy, *b.doneLateBy)) return false;
  if (a.doneBy && !nearTime(*a.doneBy, *b.doneBy)) return false;
  if (a.trimming && !near(a.trimming->probably, b.trimming->probably)) return false;
  return !a.limit || (near(a.limit->least, b.limit->least) && near(a.limit->most, b.limit->most) &&
                      a.limit->validity == b.limit->validity);
}

// Nothing where they are unlike, or one alone.
std::optional<MashConversion> sameForAll(const Case& of) {
  const MashedWort* first = mashedOf(of, 0);
  if (!first || of.count() < 2) return std::nullopt;
  MashConversion all = first->conversion;
  for (std::size_t i = 1; i < of.count(); ++i) {
    const MashedWort* mash = mashedOf(of, i);
    if (!mash || !sameMash(first->conversion, mash->conversion)) return std::nullopt;
    all.doneBy = std::max(all.doneBy, mash->conversion.doneBy);
    all.doneLateBy = std::max(all.doneLateBy, mash->conversion.doneLateBy);
  }
  return all;
}

template <class Figure>
void mashRow(RigTable& table, const Case& of, Told label, const std::string& key,
             const Figure& figure) {
  table.row(std::move(label),
            [&](std::size_t i) -> Cell {
              const MashedWort* mash = mashedOf(of, i);
              return mash ? figure(*mash) : std::nullopt;
            },
            {.decimals = 0, .result = "/wort/mash/" + key});
}

Cell shareCell(double share) { return rigs::Argument(percent(share)); }

void addLimitRows(RigTable& table, const Case& of) {
  const auto limit = [&](Told label, const std::string& key, auto which) {
    mashRow(table, of, std::move(label), key, [&](const MashedWort& m) {
      return m.conversion.limit ? shareCell((*m.conversion.limit).*which) : std::nullopt;
    });
  };
  limit(Told(TOLD("Answer", "attenuation limit, at least")), "attenuation_limit_low",
        &physics::AttenuationLimit::least);
  limit(Told(TOLD("Answer", "attenuation limit, at most")), "attenuation_limit_high",
        &physics::AttenuationLimit::most);
  const auto more = [&](Told label, const std::string& key, auto which) {
    mashRow(table, of, std::move(label), key, [&](const MashedWort& m) {
      return m.conversion.trimming ? shareCell((*m.conversion.trimming).*which) : std::nullopt;
    });
  };
  more(Told(TOLD("Answer", "long hours may add to it up to")), "long_hours_add_up_to",
       &MashConversion::Trimming::probably);
  more(Told(TOLD("Answer", "long hours add to it at most")), "long_hours_add_at_most",
       &MashConversion::Trimming::atMost);
}

void addGravityRows(RigTable& table, const Case& of) {
  const auto gravity = [&](Told label, const std::string& key, auto which) {
    table.row(std::move(label),
              [&](std::size_t i) -> Cell {
                const MashedWort* mash = mashedOf(of, i);
                if (!mash || !mash->gravity) return std::nullopt;
                return numberCell(std::optional((*mash->gravity).*which), 3);
              },
              {.result = "/wort/mash/" + key});
  };
  using Gravity = MashedWort::Gravity;
  gravity(Told(TOLD("Answer", "gravity before it ferments")), "gravity_before", &Gravity::before);
  gravity(Told(TOLD("Answer", "gravity at the limit, at least")), "gravity_fermented_low",
          &Gravity::afterLeast);
  gravity(Told(TOLD("Answer", "gravity at the limit, at most")), "gravity_fermented_high",
          &Gravity::afterMost);
}

}  // namespace

bool isColdMash(const MashConversion& mash) {
  // No controller holds a tenth of that.
  return mash.hottest < physics::kColdMash + physics::kelvins(0.1);
}

Told mashLimitShortly(const MashConversion& mash) {
  if (!mash.limit) return {};
  return Told(TOLD("Answer", "ferments to about %1 to %2"),
              rigs::numberAlone(mash.limit->least, kWhole), amount(mash.limit->most, kWhole));
}

std::vector<Told> mashInShort(const Case& of) {
  const auto limitIn = [&](std::size_t i) -> std::optional<physics::AttenuationLimit> {
    const MashedWort* mash = mashedOf(of, i);
    return mash ? mash->conversion.limit : std::nullopt;
  };
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const auto limit = limitIn(i);
    return limit ? std::optional(limit->least) : std::nullopt;
  });
  if (e.counted == 0) return {};
  const auto tell = [&](std::size_t i, const rigs::Template<3>& text) {
    return Told(text, rigs::numberAlone(limitIn(i)->least, kWhole),
                amount(limitIn(i)->most, kWhole), of.named(i));
  };
  if (sameForAll(of))
    return {
        Told(TOLD("Answer", "%1 to %2 is about how far the mash's wort ferments, whichever rig."),
             rigs::numberAlone(limitIn(e.least)->least, kWhole),
             amount(limitIn(e.least)->most, kWhole))};
  std::vector<Told> told{tell(
      e.least, TOLD("Answer", "%1 to %2 is about how far the mash's wort ferments, with %3."))};
  if (e.counted > 1)
    told.push_back(tell(
        e.most, TOLD("Answer", "%1 to %2 is about how far the mash's wort ferments, with %3.")));
  return told;
}

void sayMashOfAll(Answer& answer, const Case& of) {
  if (const auto same = sameForAll(of)) answer.say(mashText(*same));
}

Told mashOfRigText(const Case& of, std::size_t i) {
  const MashedWort* mash = mashedOf(of, i);
  return mash && !sameForAll(of) ? mashText(mash->conversion) : Told();
}

Told mashCertaintyText(const Case& of) {
  for (std::size_t i = 0; i < of.count(); ++i)
    if (const MashedWort* mash = mashedOf(of, i); mash && mash->conversion.limit)
      return rigs::sentences(
          {bedText(*mash), Told(TOLD("Answer",
                                     "How far wort ferments is known to 4 points either way at "
                                     "best, by malt and by model; yeast may stop before."))});
  return {};
}

void addMashRows(RigTable& table, const Case& of) {
  table.heading(Told(TOLD("Answer", "The mash")));
  mashRow(table, of, Told(TOLD("Answer", "starch done after, with common malt")),
          "starch_done_by_s", [](const MashedWort& m) { return cellOf(m.conversion.doneBy); });
  mashRow(table, of, Told(TOLD("Answer", "starch done after, with malt that swells late")),
          "starch_done_late_by_s",
          [](const MashedWort& m) { return cellOf(m.conversion.doneLateBy); });
  mashRow(table, of, Told(TOLD("Answer", "starch reached, with common malt")), "starch_reached",
          [](const MashedWort& m) { return shareCell(m.conversion.reached); });
  mashRow(table, of, Told(TOLD("Answer", "starch reached, with malt that swells late")),
          "starch_reached_at_least",
          [](const MashedWort& m) { return shareCell(m.conversion.reachedAtLeast); });
  mashRow(table, of,
          Told(TOLD("Answer", "time at %1 to %2"), rigs::numberAlone(physics::kTrimsFrom),
               amount(physics::kTrimsTo)),
          "at_45_to_60_C_s", [](const MashedWort& m) { return cellOf(m.conversion.betweenTrims); });
  addLimitRows(table, of);
  addGravityRows(table, of);
}

std::vector<Told> mashNotes() {
  return {
      Told(TOLD("Answer",
                "Mash: starch dissolves by Brandam et al. 2003 (from memory) as far as it is "
                "accessible, all of it at 63.4 °C and 3 °C sooner or later by malt (25 malts, "
                "Patindol et al. 2012). Two sets of constants for the enzymes, that one in dilute "
                "extract and one of the structure of Koljonen et al. 1995 (second hand) with as "
                "much beta-amylase as Muller 1991 found in a mash, 7 % of it stable.")),
      Told(
          TOLD("Answer",
               "Attenuation: both sets were fitted (own) to 82 % at 65 °C and 50 % at 75 °C, "
               "taken as of an hour (Chandrasekhar, second hand). Trimming: 0.001 a minute at "
               "65 °C, at most 0.002, is an estimate; no measured overnight mash was found. Not in "
               "it: pH, crush, how thick the mash is, what happens after the grain is lifted.")),
      Told(TOLD("Answer",
                "An uneven bed: by conduction alone, 34 cm wide and high, at 67 °C first and in a "
                "room of 15 °C, with 1 to 10 W/(m²K) all round (own). Loose coarse grain mixes "
                "itself more."))};
}

}  // namespace gui::telling
