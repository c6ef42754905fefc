// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/chill.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "gui/telling/words.hpp"
#include "rigs/answers/night.hpp"

namespace gui::telling {
namespace {

using rigs::amount;
using rigs::ChillAnswer;
using rigs::Chiller;
using rigs::ChillWay;
using rigs::roughly;
using rigs::Told;
using Kind = rigs::Chiller::Kind;

rigs::Amount chillDigits(const auto& quantity) {
  return amount(quantity, {.significantDigits = 2, .decimals = {}});
}

// As taps and pumps are read.
rigs::Amount chillFlow(const Case& of, physics::VolumeFlow one) {
  const bool metric = of.reader.units.isMetric(rigs::QuantityKind::Volume);
  return rigs::amountLike(one, metric ? "1 L/min" : "1 gal/min",
                          {.significantDigits = 2, .decimals = {}});
}

// Whole hours from three hours on: nobody knows such a time to the minute.
Told chillTime(physics::Time time) {
  if (time < physics::hours(3.0)) return roughly(time);
  return Told::just(amount(physics::hours(std::round(physics::inHours(time)))));
}

Told wayWord(const ChillAnswer& chill) {
  switch (chill.chiller.kind) {
    case Kind::Coil:
      return chill.chiller.stirred ? Told(TOLD("Answer", "stirred all the time"))
                                   : Told(TOLD("Answer", "left still"));
    case Kind::Counterflow:
      return Told(TOLD("Answer", "in one pass"));
    case Kind::Air:
      return Told(TOLD("Answer", "by air alone"));
  }
  return {};
}

// --- The headline.

template <class Is>
bool anyChill(const Case& of, const Is& is) {
  for (std::size_t i = 0; i < of.count(); ++i)
    if (const ChillAnswer* chill = chillOf(of, i); chill && is(*chill)) return true;
  return false;
}

bool reachesGoal(const ChillAnswer& chill) { return !rigs::isTooWarmToPitch(chill); }

// Who is quickest and slowest, of those that get cold enough if any does.
Extremes chillExtremes(const Case& of) {
  const auto ordered = [&](bool enough) {
    return extremesOf(of, [&](std::size_t i) -> std::optional<double> {
      const ChillAnswer* chill = chillOf(of, i);
      const auto span = chill && !isColdAlready(*chill) && (!enough || reachesGoal(*chill))
                            ? chillSpan(*chill)
                            : std::nullopt;
      return span ? std::optional(physics::inSeconds(span->least)) : std::nullopt;
    });
  };
  const Extremes enough = ordered(true);
  return enough.counted > 0 ? enough : ordered(false);
}

// Conductances of chillers are good to a quarter: times within it are the same.
constexpr double kToldApart = 1.25;

std::optional<std::size_t> firstCold(const Case& of) {
  for (std::size_t i = 0; i < of.count(); ++i)
    if (const ChillAnswer* chill = chillOf(of, i); chill && isColdAlready(*chill)) return i;
  return std::nullopt;
}

Told coldText(const Case& of, std::size_t i) {
  const ChillAnswer& chill = *chillOf(of, i);
  if (chill.begins < chill.pitching - physics::kelvins(1.0))
    return Told(TOLD("Answer",
                     "%1 is what the wort of %2 has without chilling, by what goes in as the boil "
                     "ends: colder than the %3 for pitching."),
                amount(chill.begins), of.named(i), amount(chill.pitching));
  return Told(TOLD("Answer",
                   "%1 is what the wort of %2 has without chilling, by what goes in as the boil "
                   "ends."),
              amount(chill.begins), of.named(i));
}

std::vector<Told> chillInShort(const Case& of) {
  const Extremes e = chillExtremes(of);
  const auto said = [&](std::size_t i, const rigs::Template<4>& text) {
    const ChillAnswer& chill = *chillOf(of, i);
    return Told(text, chillSpanText(*chillSpan(chill)), chilledToText(chill), of.named(i),
                wayWord(chill));
  };
  if (const auto cold = firstCold(of); cold && e.counted == 0) return {coldText(of, *cold)};
  if (e.counted == 0)
    return {
        anyChill(of, [](const ChillAnswer&) { return true; })
            ? Told(TOLD("Answer", "%1 is never reached: what cools the wort is too warm for that."),
                   amount(of.plan.chilling.pitching))
            : Told(TOLD("Answer", "There is no finished wort that could be chilled."))};
  if (e.counted == 1 || e.least == e.most)
    return {said(e.least, TOLD("Answer", "%1 to %2 is what %3 takes, %4."))};
  const ChillSpan quickest = *chillSpan(*chillOf(of, e.least));
  const ChillSpan slowest = *chillSpan(*chillOf(of, e.most));
  const bool allGetThere = e.counted == of.count();
  if (allGetThere && slowest.least < kToldApart * quickest.most)
    return {Told(TOLD("Answer", "%1 to %2 is what they all take; that tells none from another."),
                 chillSpanText({quickest.least, std::max(quickest.most, slowest.most)}),
                 chilledToText(*chillOf(of, e.least)))};
  return {said(e.least, TOLD("Answer", "%1 to %2 is what %3 takes, %4: the quickest.")),
          said(e.most, TOLD("Answer", "%1 to %2 with %3, %4: the slowest."))};
}

// --- Rig by rig.

Told volumesText(physics::Volume least, physics::Volume most) {
  return Told(TOLD("Answer", "%1 to %2"), chillDigits(least), chillDigits(most));
}

Told chillRestText(const ChillWay& way) {
  return Told(TOLD("Answer",
                   "The water takes too little: it comes to rest at about %1, where the room gives "
                   "as much."),
              amount(*way.comesToRestAt));
}

Told coilText(const ChillAnswer& chill) {
  const ChillWay& stirred = *chill.stirred;
  const ChillWay& still = *chill.still;
  const ChillWay& worst = *chill.stillAtWorst;
  const auto goal = amount(chill.goal);
  if (!stirred.toGoal) return stirred.comesToRestAt ? chillRestText(stirred) : Told();
  const Told pair =
      still.toGoal && worst.toGoal
          ? Told(TOLD("Answer",
                      "Stirred all the time it comes to %1 in about %2 with %3 of water, left "
                      "still in about %4 with %5."),
                 goal, roughly(*stirred.toGoal), chillDigits(stirred.water),
                 chillSpanText({*still.toGoal, *worst.toGoal}),
                 volumesText(still.water, worst.water))
          : Told(
                TOLD("Answer",
                     "Stirred all the time it comes to %1 in about %2 with %3 of water; left still "
                     "it may never get there."),
                goal, roughly(*stirred.toGoal), chillDigits(stirred.water));
  if (!stirred.firstOutlet) return pair;
  return rigs::sentences(
      {pair, Told(TOLD("Answer", "The water leaves at up to about %1 at first."),
                  chillDigits(std::max(*stirred.firstOutlet,
                                       still.firstOutlet.value_or(*stirred.firstOutlet))))});
}

Told passText(const Case& of, const ChillAnswer& chill) {
  const rigs::ExchangerPass& pass = *chill.pass;
  const Told through =
      Told(TOLD("Answer",
                "At %1 of wort one pass takes %2 and %3 of water. The wort leaves at about %4 (%5 "
                "to %6), the water at about %7."),
           chillFlow(of, chill.chiller.wortFlow), roughly(pass.time), chillDigits(pass.water),
           chillDigits(pass.likely.hotOut), chillDigits(pass.best.hotOut),
           chillDigits(pass.worst.hotOut), chillDigits(pass.likely.coldOut));
  if (pass.likely.hotOut <= chill.goal) return through;
  if (pass.flowForGoal)
    return rigs::sentences(
        {through,
         Told(TOLD("Answer", "That is warmer than %1: with about %2 of wort it leaves at that."),
              amount(chill.goal), chillFlow(of, *pass.flowForGoal))});
  return rigs::sentences(
      {through, Told(TOLD("Answer",
                          "That is warmer than %1, and no slower wort gets there: a longer tube, "
                          "more water or a second pass would."),
                     amount(chill.goal))});
}

Told refusedText(const ChillAnswer& chill) {
  return Told(TOLD("Answer",
                   "%1 is out of reach: water of %2 brings wort to about %3 at best. What would do "
                   "it: about %4 of ice in a bath round it; water of %5 or colder; or pitching at "
                   "%3."),
              amount(chill.pitching), amount(chill.water), amount(chill.floor),
              chillDigits(chill.refused->ice), amount(chill.refused->warmestWater));
}

// The jacket, where the rig wears one: it is in the way.
Told jacketOffText(const ChillAnswer& chill) {
  if (!chill.inJacket || !chill.airBare || !chill.airBare->toHotHolding) return {};
  return Told(
      TOLD("Answer",
           "Take the jacket off for that: bare it is at %1 after about %2. A jacket is safer for "
           "a mash and worse for cooling wort."),
      amount(rigs::kWarmUpTo), chillTime(*chill.airBare->toHotHolding));
}

Told airText(const Case& of, const ChillAnswer& chill) {
  const ChillWay& air = chill.air;
  const auto hold = amount(rigs::kWarmUpTo);
  // What goes in last may leave it colder than that.
  if (!air.toHotHolding && air.toGoal)
    return Told(TOLD("Answer",
                     "Left to cool by itself, its lid as in the mash, it is at %1 after about %2."),
                amount(chill.pitching), chillTime(*air.toGoal));
  if (!air.toHotHolding) return {};
  if (!air.toGoal)
    return Told(
        TOLD("Answer",
             "Left to cool by itself, its lid as in the mash, it is at %1 after about %2; a room "
             "of %3 never brings it to %4."),
        hold, chillTime(*air.toHotHolding), amount(of.plan.place.room), amount(chill.pitching));
  const auto inspected = air.throughTheDanger();
  const Told down(
      TOLD("Answer",
           "Left to cool by itself, its lid as in the mash, it is at %1 after about %2 and "
           "at %3 after about %4."),
      hold, chillTime(*air.toHotHolding), amount(chill.pitching), chillTime(*air.toGoal));
  if (!inspected) return down;
  return rigs::sentences(
      {down, Told(TOLD("Answer", "From %1 to %2 that is about %3, where food service allows 2 h."),
                  hold, amount(physics::celsius(21.0)), chillTime(*inspected))});
}

Told chillerText(const Case& of, const ChillAnswer& chill) {
  const Chiller& chiller = chill.chiller;
  if (chiller.isStated) return {};
  return Told(
      TOLD("Answer",
           "No chiller is stated: a common one is supposed, a %1 coil of %2 tube, %3 long, "
           "with %4 of water."),
      rigs::Bundled{"Catalogue", chiller.material},
      rigs::amountLike(chiller.tube,
                       of.reader.units.isMetric(rigs::QuantityKind::Length) ? "1 mm" : "1 in"),
      rigs::amountLike(chiller.length,
                       of.reader.units.isMetric(rigs::QuantityKind::Length) ? "1 m" : "1 ft"),
      chillFlow(of, chiller.waterFlow));
}

bool isStatedByAny(const Case& of) {
  return anyChill(of, [](const ChillAnswer& chill) { return chill.chiller.isStated; });
}

void sayChill(Answer& answer, const Case& of, std::size_t i) {
  const ChillAnswer* chill = chillOf(of, i);
  if (!chill) {
    if (Told text = unfinishedText(of, i); !text.empty()) answer.say(i, std::move(text));
    return;
  }
  if (isColdAlready(*chill)) {
    answer.say(i, coldText(of, i));
    return;
  }
  const Told byChiller = chill->stirred ? coilText(*chill)
                         : chill->pass  ? passText(of, *chill)
                                        : Told();
  const bool air = chill->chiller.kind == Kind::Air;
  answer.say(
      i, rigs::sentences({byChiller, chill->refused ? refusedText(*chill) : Told(),
                          air ? airText(of, *chill) : Told(), air ? jacketOffText(*chill) : Told(),
                          isStatedByAny(of) ? chillerText(of, *chill) : Told()}));
}

bool hasCoil(const ChillAnswer& chill) { return chill.stirred.has_value(); }
// Twice the tube or the water halves the time at most.
bool gainsLittleByStirring(const ChillAnswer& chill) {
  return hasCoil(chill) && chill.stirred->toGoal && chill.still->toGoal &&
         *chill.still->toGoal < 2.0 * *chill.stirred->toGoal;
}
bool hasPass(const ChillAnswer& chill) { return chill.pass.has_value(); }

// The same for all is said once.
void sayWhatIsSupposed(Answer& answer, const Case& of) {
  for (std::size_t i = 0; i < of.count() && !isStatedByAny(of); ++i) {
    if (!chillOf(of, i)) continue;
    answer.say(chillerText(of, *chillOf(of, i)));
    return;
  }
}

void addChillGeneral(Answer& answer, const Case& of) {
  sayWhatIsSupposed(answer, of);
  if (anyChill(of, hasCoil)) {
    const Told band(
        TOLD("Answer", "Still wort is told as a band, since measured coils differ by so much."));
    const Told worth(
        TOLD("Answer", "Stirring is worth more than a coil twice as long, or twice the water."));
    answer.say(anyChill(of, gainsLittleByStirring) ? band : rigs::sentences({worth, band}));
  }
  const bool water = anyChill(of, hasCoil) || anyChill(of, hasPass);
  if (water && !of.plan.chilling.water)
    answer.say(Told(TOLD("Answer",
                         "The cooling water is taken to be as cold as the water for brewing, %1; "
                         "summer mains are warmer."),
                    amount(of.plan.place.water)));
  if (of.plan.chilling.hotStand > physics::seconds(0.0))
    answer.say(Told(TOLD("Answer", "The hot stand of %1 comes before all of this."),
                    rigs::asChosen(of.plan.chilling.hotStand)));
}

std::vector<Told> chillNotes(const Case& of) {
  std::vector<Told> notes;
  if (anyChill(of, [](const ChillAnswer&) { return true; }))
    notes.push_back(Told(TOLD("Answer",
                              "Followed over the falling temperature with the kettle's own losses "
                              "and all of its metal. Wort that is not stirred is warmer at the top "
                              "than told here.")));
  if (anyChill(of, hasCoil))
    notes.push_back(
        Told(TOLD("Answer",
                  "A coil: Gnielinski inside, across a stream of 0.15 m/s outside where it is "
                  "stirred (Churchill & Bernstein), else its own buoyancy (Xin & Ebadian), down to "
                  "400 W/(m²K) overall for the slow end. Lid off, the coil 60 % as wide as the "
                  "kettle, tube walls 0.8 mm, no scale.")));
  if (anyChill(of, hasPass))
    notes.push_back(Told(
        TOLD("Answer",
             "A counterflow chiller: effectiveness by transfer units, its hose 7 mm wider than "
             "the tube, the conductance 25 % less and more for the two ends.")));
  return notes;
}

}  // namespace

const ChillAnswer* chillOf(const Case& of, std::size_t i) { return of.rig(i).chill.get(); }

Told chillSpanText(const ChillSpan& span) {
  if (span.most - span.least < physics::minutes(1.0)) return chillTime(span.least);
  const auto whole = [](physics::Time time) { return std::round(physics::inMinutes(time)); };
  if (whole(span.most) >= 60.0 || whole(span.least) < 1.0)
    return Told(TOLD("Answer", "%1 to %2"), chillTime(span.least), chillTime(span.most));
  return Told(TOLD("Answer", "%1 to %2"), rigs::Number{whole(span.least), {.decimals = 0}},
              chillTime(span.most));
}

rigs::Amount chilledToText(const ChillAnswer& chill) {
  return chill.pass ? chillDigits(chill.pass->likely.hotOut) : amount(chill.goal);
}

Answer howLongChills(const Case& of) {
  Answer answer;
  answer.sentences = chillInShort(of);
  for (std::size_t i = 0; i < of.count(); ++i) sayChill(answer, of, i);
  addChillGeneral(answer, of);
  answer.notes = chillNotes(of);
  answer.pictures = {chillPicture(of)};
  answer.show(chillTable(of));
  return answer;
}

}  // namespace gui::telling
