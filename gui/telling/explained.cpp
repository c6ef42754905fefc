// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/explained.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace gui::telling {
namespace {

using rigs::Template;
using rigs::Told;

enum class Subject {
  Time,
  BoilOff,
  Vigour,
  NetHeat,
  BoilingPoint,
  Ledger,
  Money,
  Payback,
  Current,
  Verdict,
  Duty,
  Wort,
  Rinse,
  Night,
  Growth,
  Sizing,
  Jacket,
  RoomAir,
  Chill,
  WortChemistry,
  Mash,
  Skin,
  Change,
  Bands
};

struct Words {
  Subject subject;
  Template<0> formula, source, certainty;
};
const std::array<Words, 24> kWords{{
    {Subject::Time,
     TOLD("Explained",
          "Time is heat over power: from one temperature to the next t = ∫ C "
          "dT / (P − L), where C is what wort, grain and kettle take up per "
          "kelvin, P what the element gives and L all that is lost there."),
     TOLD("Explained",
          "The balance of energy; water after IAPWS SR6-08, sugar after Bubnik "
          "et al. 1995, losses after Churchill & Chu 1975 and Shah 2002"),
     TOLD("Explained",
          "To a few percent where losses are small beside the element, worse "
          "where they are not. The supply alone may move the power by 20 %.")},
    {Subject::BoilOff,
     TOLD("Explained",
          "Vapour is the element's power, less what side, base, lid, dry wall "
          "and surface lose otherwise, over the heat of evaporation; the mean "
          "of the boil, told of the cold volume when its clock starts."),
     TOLD("Explained",
          "The balance of energy at the boil; heat of evaporation by Clapeyron "
          "from IAPWS SR1-86; below boiling Shah 2002"),
     TOLD("Explained",
          "As sure as the net heat: where losses take 80 % of the power, an "
          "error of a fifth in them moves it by four fifths. Below boiling "
          "within 20 %.")},
    {Subject::Vigour,
     TOLD("Explained",
          "A word for the boil-off: a simmer below 5 %/h, gentle below 8, "
          "steady below 10, strong below 15, fierce above; on the edge where a "
          "fifth more or less of the law's evaporation decides whether it "
          "rolls."),
     TOLD("Explained",
          "A scale of our own; 5 to 8 %/h is best practice in EU breweries "
          "(Joint Research Centre)"),
     TOLD("Explained", "As the boil-off is.")},
    {Subject::NetHeat,
     TOLD("Explained",
          "The element's power less everything that is lost but evaporation, "
          "when the clock of the boil starts."),
     TOLD("Explained",
          "The balance of energy; films after Churchill & Chu 1975, radiation "
          "after Stefan and Boltzmann"),
     TOLD("Explained",
          "The convection at the side within 20 %; the emissivity of steel, "
          "from 0.16 to 0.7, adds more where it is guessed.")},
    {Subject::BoilingPoint,
     TOLD("Explained",
          "Wort boils where its vapour has the pressure of the place, 101325 "
          "(1 − 2.25577e-5 h)^5.2559 Pa at h metres; a kettle too weak stays "
          "where what is given and what is lost meet."),
     TOLD("Explained", "IAPWS SR1-86; ICAO; sugar after Starzak & Peacock 1997"),
     TOLD("Explained", "A day's weather moves it by 0.6 K.")},
    {Subject::Ledger,
     TOLD("Explained",
          "What the element gave over its time, with what heated the cable and "
          "drove the pump. All of it is found again: supplied = stored + "
          "lifted out + lost + steam."),
     TOLD("Explained", "The balance of energy of each stage, path by path"),
     TOLD("Explained",
          "Each stage closes to a millionth; how heat divides among the paths "
          "is as sure as their laws: films and evaporation within 20 %, stored "
          "heat within 2 %.")},
    {Subject::Money,
     TOLD("Explained",
          "Energy from the wall times the price of the hour in which it is "
          "drawn and of the month's use so far; a year is as many batches as "
          "the plan says."),
     TOLD("Explained", "The plan's tariff"),
     TOLD("Explained", "As the energy is known; prices are as stated.")},
    {Subject::Payback,
     TOLD("Explained", "What it costs over what it saves in a year of the plan's batches."),
     TOLD("Explained", "The plan's prices and the difference of two whole days"),
     TOLD("Explained",
          "As the difference of the two is known, most errors of which they "
          "share.")},
    {Subject::Current,
     TOLD("Explained",
          "I = V / (R + r): R = V²/P of the element's name plate, r the "
          "copper of the cable, both ways. The kettle gets I²R, the cable "
          "I²r."),
     TOLD("Explained", "Ohm; copper after IEC 60228, gauges after ASTM B258"),
     TOLD("Explained",
          "The nominal voltage is used: real supplies swing by up to 10 %, the "
          "power by 20 %. Name plates allow 5 % more and 10 % less.")},
    {Subject::Verdict,
     TOLD("Explained",
          "Each rule of the region compares the current, and how long it "
          "flows, with what circuit and cable may carry; the strictest "
          "decides."),
     TOLD("Explained", "The rules that the page names, each with its clause and edition"),
     TOLD("Explained",
          "For planning: where a judgement decides, the conditions are told. "
          "An electrician has the last word.")},
    {Subject::Duty,
     TOLD("Explained",
          "A controller switches the element fully on and off. Spans of the "
          "day with it on at 99 % and more count as unbroken; enabled is from "
          "its first to its last use without a long pause."),
     TOLD("Explained", "The day as it is simulated"), TOLD("Explained", "As the times are known.")},
    {Subject::Wort,
     TOLD("Explained",
          "Water, less what the grain keeps and what evaporates; the extract "
          "stays by mass, and gravity follows from its share. Volumes are "
          "those at 20 °C."),
     TOLD("Explained",
          "Density of sugar solutions after ICUMSA (Bubnik et al. 1995); "
          "gravity by the ASBC table's polynomial"),
     TOLD("Explained",
          "Gravity within 0.01 °P of the formula; how much the grain gives "
          "and keeps is as stated.")},
    {Subject::Rinse,
     TOLD("Explained",
          "A balance of water, extract and heat: a share of the wort held by "
          "the grain, half of it if not stated, mixes with the rinsing water; "
          "the grain keeps as much as before, and the rest runs off."),
     TOLD("Explained",
          "Own: one ideal contact; no published measurement of grain rinsed in "
          "a bag or basket was found"),
     TOLD("Explained",
          "Between none and all of the held wort mixed; water that trickles "
          "slowly and evenly may get more than that.")},
    {Subject::Night,
     TOLD("Explained",
          "The mash cools by what wall, base, lid and surface lose, over what "
          "it and the kettle hold per kelvin, from moment to moment."),
     TOLD("Explained",
          "The balance of energy; films after Churchill & Chu 1975, "
          "evaporation after Shah 2002"),
     TOLD("Explained",
          "Films and evaporation within 20 %: an excess over the room of 40 K "
          "after a night is known to some 4 K.")},
    {Subject::Growth,
     TOLD("Explained",
          "How often something doubles is its rate at each temperature, summed "
          "over the night: of the fastest food germ at each, and of lactic "
          "bacteria whose spores survive a mash."),
     TOLD("Explained",
          "A table of doubling times, Snyder 2001, with its limit of ten; the "
          "cardinal model, Rosso 1993, for Bacillus coagulans"),
     TOLD("Explained",
          "The worst case: nothing waits before it grows, as it does in cooling "
          "food. The rate of the spores has no printed unit and is taken for an "
          "hour's.")},
    {Subject::Sizing,
     TOLD("Explained",
          "Days with ever better guesses are simulated until one just does "
          "what is asked. The least power that rolls is what is lost at "
          "boiling, evaporation included."),
     TOLD("Explained", "A bracketed search over the same simulation"),
     TOLD("Explained",
          "As the losses at boiling are: within 20 % of evaporation and "
          "convection.")},
    {Subject::Jacket,
     TOLD("Explained",
          "The same rig with the jacket and without it brews the same batch, "
          "each a whole day; what is told is the difference."),
     TOLD("Explained",
          "The same simulation twice; layers after the textbook, Σ r₁ "
          "ln(rᵢ₊₁/rᵢ)/kᵢ around a kettle"),
     TOLD("Explained",
          "Better than either day alone, as most errors are common; insulation "
          "within 10 to 30 % of its published value.")},
    {Subject::RoomAir,
     TOLD("Explained",
          "The vapour of the day goes into a well-mixed room: airflow = vapour "
          "/ (W indoors − W outdoors), W in kilograms of water per kilogram "
          "of dry air; what is beyond saturation condenses."),
     TOLD("Explained",
          "The balance of mass; moist air after ASHRAE Fundamentals 2017, ch. "
          "1; window after ISO 6946"),
     TOLD("Explained",
          "Real rooms mix badly and walls take up moisture; a few percent "
          "beside that.")},
    {Subject::Chill,
     TOLD("Explained",
          "Wort and kettle cool by what the chiller's water takes and what wall, base, lid and "
          "surface lose, over what they hold per kelvin: t = ∫ C dT / (Q + L). A coil takes ε w c "
          "(T − Tw) with ε = 1 − exp(−UA / (w c))."),
     TOLD("Explained",
          "Gnielinski 1976 within the tube; outside Churchill & Bernstein 1977 at 0.15 m/s where "
          "it is stirred, Xin & Ebadian where it is still; losses as those of the day"),
     TOLD("Explained",
          "Stirred within some 20 %; still by a factor of two or three, as coefficients of 400 to "
          "1300 W/(m²K) are printed for it; by air alone within 20 %.")},
    {Subject::WortChemistry,
     TOLD("Explained",
          "Minutes at 100 °C = ∫ k(T) / k(100 °C) dt along the day's own temperature, k of the "
          "first "
          "order: one sum for hops, another for S-methyl methionine (SMM), which turns to DMS. DMS "
          "leaves by 63.5 times the share of the wort that evaporates."),
     TOLD("Explained",
          "Hops: Malowicki & Shellhammer 2005; SMM: 35 min to the half at 100 °C (Wilson & Booer "
          "1979), twice that 6 °C cooler (Fix 1999); DMS with the steam after Wilson & Booer 1979"),
     TOLD("Explained",
          "Made for comparing: measured at 90 to 130 °C and pH 5.2 for hops. Bitterness is a "
          "quarter to a half less than these rates alone give, by hops, filter, yeast and foam.")},
    {Subject::Mash,
     TOLD("Explained",
          "Starch dissolves by dS/dt = k(T) (a(T) − S), a what is accessible at T. Of it dextrin "
          "becomes fermentable as fast as alpha- and beta-amylase are left, which heat destroys: "
          "all "
          "of the first order, along the mash's own temperature, by two sets of constants."),
     TOLD("Explained",
          "Brandam et al. 2003 (from memory); a set of the structure of Koljonen et al. 1995 "
          "(second "
          "hand); beta-amylase of a mash after Muller 1991; both fitted (own) to 82 % at 65 °C and "
          "50 % at 75 °C"),
     TOLD("Explained",
          "Time to full conversion to 30 %, attenuation to 4 points either way at best; what long "
          "hours at 45 to 60 °C add nobody has measured.")},
    {Subject::Skin,
     TOLD("Explained",
          "Heat over the rod's surface, π d l. In water the skin is as hot as natural convection "
          "needs, and no hotter than boiling needs: the cooler of the two."),
     TOLD("Explained",
          "Churchill & Chu 1975, horizontal cylinder; Gorenflo (VDI Heat Atlas) once it boils; "
          "first bubbles by Bergles & Rohsenow 1964; a mash that does not move by a film of 300 "
          "W/(m²K), which is our own assumption"),
     TOLD("Explained",
          "In water within some 10 K, in a mash a guess; where bubbles begin within 30 % of what "
          "the skin is above boiling, and later on smooth new rods. Scale on it is left out.")},
    {Subject::Change,
     TOLD("Explained",
          "Each change is tried as a whole plan of its own, simulated like any "
          "other; what is told is the difference to the rig as it is."),
     TOLD("Explained", "The same simulation, once for each way"),
     TOLD("Explained", "Better than each day alone, as most errors are common.")},
    {Subject::Bands,
     TOLD("Explained",
          "The day is computed 256 times, each time with other losses, surface, "
          "heat capacity, power and room, drawn evenly from what is believed of "
          "them; 1 day in 10 lies below the band and 1 in 10 above."),
     TOLD("Explained",
          "Even points after Sobol 1967; what is believed of each unknown stands "
          "with its source in the document on how sure it is"),
     TOLD("Explained",
          "The ends are off by 5 or 6 % of a standard deviation for so many "
          "days; they are as good as what is believed.")},
}};

// By the place that a figure has in the result; the longest that fits.
struct Place {
  std::string_view beginning;
  Subject subject;
};
constexpr std::array kPlaces{
    Place{"/jacket/jacketed/boil/share_of_pre_boil_per_h", Subject::BoilOff},
    Place{"/jacket/bare/boil/share_of_pre_boil_per_h", Subject::BoilOff},
    Place{"/day/boil/share_of_pre_boil_per_h", Subject::BoilOff},
    Place{"/day/boil/boil_off_cold_L_per_h", Subject::BoilOff},
    Place{"/day/boil/evaporation_kg_per_h", Subject::BoilOff},
    Place{"/jacket/saved_from_wall_kWh", Subject::Ledger},
    Place{"/circuit/added_by_cable_s", Subject::Time},
    Place{"/day/boil/net_per_litre_W", Subject::NetHeat},
    Place{"/day/boil/temperature_C", Subject::BoilingPoint},
    Place{"/jacket/jacketed/total/", Subject::Ledger},
    Place{"/day/heating_to_boil_s", Subject::Time},
    Place{"/day/pre_boil_gravity", Subject::Wort},
    Place{"/day/pre_boil_cold_L", Subject::Wort},
    Place{"/day/least_to_boil_W", Subject::Sizing},
    Place{"/jacket/bare/total/", Subject::Ledger},
    Place{"/day/result_gravity", Subject::Wort},
    Place{"/jacket/saved_cost", Subject::Money},
    Place{"/day/rinse/from_wall_kWh", Subject::Ledger},
    Place{"/day/rinse/cost", Subject::Money},
    Place{"/day/rinse/", Subject::Rinse},
    Place{"/day/lifted_cold_L", Subject::Wort},
    Place{"/day/result_cold_L", Subject::Wort},
    Place{"/day/to_strike_s", Subject::Time},
    Place{"/day/boil/vigour", Subject::Vigour},
    Place{"/element_payback", Subject::Payback},
    Place{"/day/electrical/", Subject::Current},
    Place{"/circuit/verdict", Subject::Verdict},
    Place{"/day/duration_s", Subject::Time},
    Place{"/day/boil/net_W", Subject::NetHeat},
    Place{"/day/levels_off", Subject::BoilingPoint},
    Place{"/jacket_payback", Subject::Payback},
    Place{"/second_element", Subject::Current},
    Place{"/circuit/split/", Subject::Verdict},
    Place{"/cost_per_year", Subject::Money},
    Place{"/second_supply", Subject::Current},
    Place{"/circuit/duty/", Subject::Duty},
    Place{"/day/stages/", Subject::Ledger},
    Place{"/day/water_L", Subject::Wort},
    Place{"/day/total/", Subject::Ledger},
    Place{"/cost_per_L", Subject::Money},
    Place{"/circuit/", Subject::Current},
    Place{"/element", Subject::Current},
    Place{"/supply", Subject::Current},
    Place{"/sizing", Subject::Sizing},
    Place{"/jacket", Subject::Jacket},
    Place{"/night/souring_tenfolds_at_worst", Subject::Growth},
    Place{"/night/germs_double_at_worst", Subject::Growth},
    Place{"/night/ten_doublings_after_s", Subject::Growth},
    Place{"/bands/", Subject::Bands},
    Place{"/night", Subject::Night},
    Place{"/cost", Subject::Money},
    Place{"/room", Subject::RoomAir},
    Place{"/chilling", Subject::Chill},
    Place{"/wort/mash/gravity_before", Subject::Wort},
    Place{"/wort/mash/", Subject::Mash},
    Place{"/wort", Subject::WortChemistry},
    Place{"/element_skin", Subject::Skin},
};

Subject subjectOf(Question question) {
  switch (question) {
    case Question::Overview:
    case Question::HowLong:
      return Subject::Time;
    case Question::WhereHeat:
      return Subject::Ledger;
    case Question::BoilsEnough:
      return Subject::BoilOff;
    case Question::WorthJacket:
      return Subject::Jacket;
    case Question::WhichElement:
      return Subject::Sizing;
    case Question::Circuit:
      return Subject::Current;
    case Question::WhatCost:
      return Subject::Money;
    case Question::HowFarCools:
      return Subject::Night;
    case Question::Room:
      return Subject::RoomAir;
    case Question::HelpsMost:
      return Subject::Change;
    case Question::HowChills:
      return Subject::Chill;
    case Question::WortChanges:
      return Subject::WortChemistry;
    case Question::HowSure:
      return Subject::Bands;
  }
  return Subject::Time;
}

Subject subjectOf(Question question, const Row& row) {
  const auto place = std::find_if(kPlaces.begin(), kPlaces.end(), [&](const Place& one) {
    return row.result.starts_with(one.beginning);
  });
  if (place != kPlaces.end()) return place->subject;
  return subjectOf(row.opens.value_or(question));
}

Explanation explanationOf(Subject subject) {
  const auto& words = *std::find_if(kWords.begin(), kWords.end(),
                                    [&](const Words& one) { return one.subject == subject; });
  return {Told(words.formula), Told(words.source), Told(words.certainty)};
}

}  // namespace

Explanation explanationOf(Question question) { return explanationOf(subjectOf(question)); }

Explanation explanationOf(Question question, const Row& row) {
  return explanationOf(subjectOf(question, row));
}

Told inWords(const Explanation& explanation) {
  return Told(TOLD("Explained", "%1 Source: %2. How sure: %3"), explanation.formula,
              explanation.source, explanation.certainty);
}

std::vector<Explanation> explanationsOf(Question question, const Answer& answer) {
  std::vector<Explanation> all;
  for (const Table* table : answer.tables())
    for (const Row& row : table->rows)
      if (!row.isHeading()) all.push_back(explanationOf(question, row));
  if (all.empty()) all.push_back(explanationOf(question));
  return all;
}

void explain(const std::vector<Explanation>& all, Answer& answer) {
  answer.heading(Told(TOLD("Explained", "How this was computed")));
  for (auto one = all.begin(); one != all.end(); ++one)
    if (std::find(all.begin(), one, *one) == one) answer.say(inWords(*one));
}

}  // namespace gui::telling
