// SPDX-License-Identifier: GPL-3.0-or-later
// What happens to the room?
#include "gui/telling/room.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

#include "gui/telling/words.hpp"
#include "rigs/answers/published_airflows.hpp"

namespace gui::telling {
namespace {

using rigs::Told;

// The airflows that the picture and the table set beside a rig's.
struct NamedFlow {
  Told label;
  const char* source;
  physics::VolumeFlow flow;
};
std::vector<NamedFlow> knownFlows(const Case& of) {
  std::vector<NamedFlow> all;
  const auto add = [&](Told label, const char* source, std::string_view published) {
    for (const rigs::PublishedAirflow& one : rigs::publishedAirflows(of.plan.room.volume))
      if (one.name == published) all.push_back({label, source, one.airflow});
  };
  add(Told(TOLD("Room", "hood over a hob")), "Approved Document F", "hood over the hob");
  add(Told(TOLD("Room", "vented kitchen hood")), "ASHRAE 62.2", "vented hood, on demand");
  all.push_back({Told(TOLD("Room", "make-up air from here")), "IRC", rigs::kMakeUpAirAbove});
  return all;
}

const rigs::RoomAnswer* roomOf(const Case& of, std::size_t i) {
  const auto& room = of.rig(i).room;
  return room ? &*room : nullptr;
}

bool isMetric(const Case& of) { return of.reader.units.isMetric(rigs::QuantityKind::Volume); }

// As fans and rooms are sold.
const char* airflowSample(const Case& of) { return isMetric(of) ? "1 m³/h" : "1 ft³/min"; }
std::string airflowUnit(const Case& of) { return isMetric(of) ? "m³/h" : "ft³/min"; }
rigs::Amount airflow(const Case& of, physics::VolumeFlow flow) {
  return rigs::amountLike(flow, airflowSample(of));
}
double airflowNumber(const Case& of, physics::VolumeFlow flow) {
  return cellNumber(airflow(of, flow), of.reader).value_or(0.0);
}
rigs::Amount volume(const Case& of, physics::Volume volume) {
  return rigs::amountLike(volume, isMetric(of) ? "1 m³" : "1 ft³");
}

// --- The headline.

void addToHeadline(std::vector<Told>& told, const Case& of, std::size_t i,
                   rigs::Template<2> opening) {
  const rigs::RoomAnswer& room = *roomOf(of, i);
  told.push_back(Told(opening, rigs::amount(room.day.intoRoom), of.named(i)));
  if (room.day.saturatedAt) {
    told.push_back(Told(TOLD("Room",
                             "The air is full of it from %1 into the day on, and %2 of water run "
                             "down what is coldest."),
                        rigs::roughly(*room.day.saturatedAt), rigs::amount(room.day.condensed)));
  } else {
    told.push_back(Told(TOLD("Room", "The air's humidity stays at %1 or below."),
                        percent(room.day.peakHumidity)));
  }
  const double hold = of.plan.room.holdHumidity;
  if (room.airflow && room.day.peakHumidity > hold) {
    told.push_back(Told(TOLD("Room", "%1 hold %2 while most of it rises."),
                        airflow(of, *room.airflow), percent(hold)));
  }
}

std::vector<Told> roomInShort(const Case& of) {
  const Extremes e = extremesOf(of, [&](std::size_t i) -> std::optional<double> {
    const rigs::RoomAnswer* room = roomOf(of, i);
    return room ? std::optional(physics::inKilograms(room->day.intoRoom)) : std::nullopt;
  });
  if (e.counted == 0) return {Told(TOLD("Room", "The room has not been computed yet."))};
  using Opening = rigs::Template<2>;
  std::vector<Told> told;
  addToHeadline(told, of, e.most,
                e.counted == 1
                    ? Opening(TOLD("Room", "%1 of vapour go into the room with %2."))
                    : Opening(TOLD("Room", "%1 of vapour go into the room with %2, the most.")));
  if (e.counted > 1 && e.least != e.most)
    addToHeadline(told, of, e.least, TOLD("Room", "%1 with %2, the least."));
  return told;
}

// --- Rig by rig.

Told vapourText(const rigs::RoomAnswer& room) {
  return Told(TOLD("Room",
                   "%1 of vapour and %2 of heat go into the room; at most %3 of vapour and %4 of "
                   "heat."),
              rigs::amount(room.day.intoRoom), rigs::amount(room.day.sensible),
              rigs::amount(room.day.peakVapour), rigs::inWholeWatts(room.day.peakSensible));
}

Told humidityText(const Case& of, const rigs::RoomAnswer& room) {
  if (room.day.saturatedAt) {
    return Told(TOLD("Room",
                     "The air is full of vapour from %1 into the day on, and %2 of water run down "
                     "what is coldest."),
                rigs::roughly(*room.day.saturatedAt), rigs::amount(room.day.condensed));
  }
  const double before = of.plan.place.relativeHumidity;
  constexpr double kNoRise = 0.005;  // less would print as the same percent
  if (room.day.peakHumidity < before + kNoRise) {
    return Told(TOLD("Room", "The air never gets moister than the %1 it begins with."),
                percent(before));
  }
  return Told(TOLD("Room", "The air's humidity rises from %1 to %2, %3 into the day."),
              percent(before), percent(room.day.peakHumidity), rigs::roughly(room.day.peakAt));
}

// What room the vapour would need, and where the most of it would take the air if it went on.
Told levelText(const Case& of, const rigs::RoomAnswer& room) {
  Told fills(TOLD("Room", "All its vapour would fill %1 of bone-dry air."), volume(of, room.fills));
  if (!room.levelHumidity || room.day.saturatedAt) return fills;
  const rigs::Amount exchange = airflow(of, of.plan.room.airflow);
  if (*room.levelHumidity > 1.0) {
    return rigs::sentences(
        {std::move(fills), Told(TOLD("Room",
                                     "If the most went on, %1 of exchange would level off beyond "
                                     "what air can hold: it would run down walls and windows."),
                                exchange)});
  }
  return rigs::sentences(
      {std::move(fills),
       Told(TOLD("Room", "If the most went on, %1 of exchange would level off at %2."), exchange,
            percent(*room.levelHumidity))});
}

Told windowText(const rigs::RoomAnswer& room) {
  if (!room.windowFace) return {};
  const rigs::Amount face = rigs::amount(*room.windowFace);
  if (!room.day.windowWetAt)
    return Told(TOLD("Room", "The window's inner face is at %1: it stays dry."), face);
  return Told(TOLD("Room", "The window's inner face is at %1: wet from %2 into the day on."), face,
              rigs::roughly(*room.day.windowWetAt));
}

Told airflowText(const Case& of, const rigs::RoomAnswer& room) {
  const rigs::Amount hold = percent(of.plan.room.holdHumidity);
  if (room.day.peakVapour <= physics::kilogramsPerHour(0.0)) return {};
  if (!room.airflow)
    return Told(TOLD("Room", "No airflow holds %1: outdoors is no drier than that."), hold);
  const bool hood = of.plan.room.captured > 0.0 && room.airflowBehindHood;
  return hood ? Told(TOLD("Room", "%1 hold %2 while most vapour rises, %3 behind the hood."),
                     airflow(of, *room.airflow), hold, airflow(of, *room.airflowBehindHood))
              : Told(TOLD("Room", "%1 hold %2 while most vapour rises."),
                     airflow(of, *room.airflow), hold);
}

Told closedText(const rigs::RoomAnswer& room) {
  if (!room.closedFull) return {};
  return Told(TOLD("Room", "Without any exchange the room is full after %1 of that."),
              rigs::roughly(*room.closedFull));
}

// --- Pictures.

PictureLine level(std::string name, double y, double until) {
  return {.rig = -1, .name = std::move(name), .points = {{0.0, y}, {until, y}}, .limit = true};
}

PictureLine humidityLine(const Case& of, std::size_t i, Picture& picture) {
  const int rig = static_cast<int>(i);
  PictureLine line{.rig = rig, .name = of.name(i), .points = {}};
  const rigs::RoomAnswer* room = roomOf(of, i);
  if (!room) return line;
  for (const physics::RoomPoint& point : room->day.points)
    line.points.push_back({physics::inMinutes(point.time), 100.0 * point.relativeHumidity});
  if (const auto& full = room->day.saturatedAt) {
    picture.marks.push_back(
        {rig,
         {physics::inMinutes(*full), 100.0},
         of.lettered(i, of.text(Told(TOLD("Room", "full %1"), rigs::HoursAndMinutes{*full})))});
  }
  return line;
}

}  // namespace

Picture humidityPicture(const Case& of) {
  Picture picture;
  picture.title = of.text(Told(TOLD("Room", "Humidity of the room over the day")));
  picture.xTitle = of.text(Told(TOLD("Room", "Time since the start")));
  picture.yTitle = of.text(Told(TOLD("Room", "Relative humidity, %")));
  picture.yUnit = "%";
  picture.xIsClock = true;
  picture.yFrom = 0.0;
  picture.yTo = 100.0;
  double end = 0.0;
  for (std::size_t i = 0; i < of.count(); ++i) {
    picture.lines.push_back(humidityLine(of, i, picture));
    const auto& points = picture.lines.back().points;
    if (!points.empty()) end = std::max(end, points.back().x);
  }
  if (end > 0.0) {
    const double hold = of.plan.room.holdHumidity;
    picture.lines.push_back(
        level(of.text(Told(TOLD("Room", "%1, what the airflow is to hold"), percent(hold))),
              100.0 * hold, end));
    picture.lines.push_back(
        level(of.text(Told(TOLD("Room", "100 %, the air is full"))), 100.0, end));
  }
  picture.bands.push_back({.from = 30.0,
                           .to = 50.0,
                           .label = of.text(Told(TOLD("Room", "best in a house, and below 60 %"))),
                           .source = "US EPA"});
  return picture;
}

Picture airflowPicture(const Case& of) {
  Picture picture;
  picture.kind = Picture::Kind::StackedBars;
  picture.title = of.text(Told(TOLD("Room", "Air that would hold %1 while most vapour rises"),
                               percent(of.plan.room.holdHumidity)));
  picture.xUnit = airflowUnit(of);
  picture.xTitle = of.text(Told(TOLD("Room", "Outdoor air, %1"), rigs::Verbatim{picture.xUnit}));
  picture.partNames = {of.text(Told(TOLD("Room", "airflow")))};
  for (std::size_t i = 0; i < of.count(); ++i) {
    const rigs::RoomAnswer* room = roomOf(of, i);
    const double flow = room && room->airflow ? airflowNumber(of, *room->airflow) : 0.0;
    picture.stacks.push_back({.rig = static_cast<int>(i), .name = of.name(i), .parts = {flow}});
  }
  for (const NamedFlow& one : knownFlows(of))
    picture.limits.push_back({airflowNumber(of, one.flow), of.text(one.label)});
  return picture;
}

namespace {

// --- Tables.

// Rows about rooms: a rig whose room was not computed has no figure.
class RoomTable {
 public:
  explicit RoomTable(const Case& of) : of_(of), table_("room", of) {}
  void heading(Told label) { table_.heading(std::move(label)); }
  template <class Figure>
  void row(Told label, const Figure& figure, RigTable::Options options = {}) {
    table_.row(
        std::move(label),
        [&](std::size_t i) {
          const rigs::RoomAnswer* room = roomOf(of_, i);
          return room ? cellOf(figure(*room)) : std::nullopt;
        },
        options);
  }
  Table take() { return table_.take(); }

 private:
  const Case& of_;
  RigTable table_;
};

using Room = rigs::RoomAnswer;

void addKettle(RoomTable& table) {
  table.heading(Told(TOLD("Room", "From the kettle")));
  table.row(Told(TOLD("Room", "vapour")), [](const Room& r) { return r.day.released; },
            {.result = "/room/released_kg"});
  table.row(Told(TOLD("Room", "of it into the room")), [](const Room& r) { return r.day.intoRoom; },
            {.result = "/room/into_room_kg"});
  table.row(Told(TOLD("Room", "most vapour")), [](const Room& r) { return r.day.peakVapour; },
            {.result = "/room/peak_vapour_kg_per_h"});
  table.row(Told(TOLD("Room", "heat")), [](const Room& r) { return r.day.sensible; },
            {.result = "/room/sensible_kWh"});
  table.row(Told(TOLD("Room", "most heat")), [](const Room& r) { return r.day.peakSensible; },
            {.result = "/room/peak_sensible_W"});
}

void addAir(RoomTable& table, const Case& of) {
  table.heading(Told(TOLD("Room", "The room's air")));
  table.row(Told(TOLD("Room", "highest humidity")),
            [](const Room& r) { return r.day.peakHumidity; }, {.result = "/room/peak_humidity"});
  table.row(Told(TOLD("Room", "reached after")),
            [](const Room& r) { return hoursAndMinutes(r.day.peakAt); },
            {.result = "/room/peak_at_s"});
  table.row(Told(TOLD("Room", "full of vapour from")),
            [](const Room& r) { return hoursAndMinutes(r.day.saturatedAt); },
            {.result = "/room/saturated_at_s"});
  table.row(Told(TOLD("Room", "condensed")), [](const Room& r) { return r.day.condensed; },
            {.result = "/room/condensed_kg"});
  table.row(Told(TOLD("Room", "would level off at, if the most went on")),
            [](const Room& r) { return r.levelHumidity; },
            {.result = "/room/level_humidity_at_peak_vapour"});
  table.row(Told(TOLD("Room", "bone-dry air that the vapour would fill")),
            [&](const Room& r) { return Cell(volume(of, r.fills)); },
            {.decimals = 1, .result = "/room/dry_air_filled_L"});
  if (of.plan.room.window) {
    table.row(Told(TOLD("Room", "window's inner face")), [](const Room& r) { return r.windowFace; },
              {.result = "/room/window_face_C"});
    table.row(Told(TOLD("Room", "window wet from")),
              [](const Room& r) { return hoursAndMinutes(r.day.windowWetAt); },
              {.result = "/room/window_wet_at_s"});
  }
  table.row(Told(TOLD("Room", "heat lost with the air")), [](const Room& r) { return r.airHeat; },
            {.result = "/room/heat_with_air_W"});
}

void addAirflows(RoomTable& table, const Case& of) {
  const auto cell = [&](const std::optional<physics::VolumeFlow>& flow) {
    return flow ? Cell(airflow(of, *flow)) : std::nullopt;
  };
  table.heading(Told(TOLD("Room", "Air needed while most vapour rises")));
  table.row(Told(TOLD("Room", "to hold %1"), percent(of.plan.room.holdHumidity)),
            [&](const Room& r) { return cell(r.airflow); },
            {.decimals = 0, .result = "/room/airflow_L_per_h"});
  if (of.plan.room.captured > 0.0) {
    table.row(Told(TOLD("Room", "behind the hood")),
              [&](const Room& r) { return cell(r.airflowBehindHood); },
              {.decimals = 0, .result = "/room/airflow_behind_hood_L_per_h"});
  }
  for (const NamedFlow& known : knownFlows(of)) {
    table.row(Told(TOLD("Room", "as a multiple of: %1, %2 (%3)"), known.label,
                   airflow(of, known.flow), rigs::Verbatim{known.source}),
              [&](const Room& r) -> Cell {
                if (!r.airflow) return std::nullopt;
                return numberCell(static_cast<double>(*r.airflow / known.flow), 1);
              });
  }
  table.row(Told(TOLD("Room", "closed room full after")),
            [](const Room& r) { return r.closedFull; },
            {.result = "/room/closed_room_full_after_s"});
}

Table roomTable(const Case& of) {
  RoomTable table(of);
  addKettle(table);
  addAir(table, of);
  addAirflows(table, of);
  return table.take();
}

// --- What others move.

// What a published airflow would do for these rigs.
Told published(const Case& of, std::size_t k) {
  rigs::List enough{.items = {}, .joint = rigs::Joint::Comma};
  rigs::List tooLittle = enough;
  const rigs::PublishedAirflow* one = nullptr;
  for (std::size_t i = 0; i < of.count(); ++i) {
    const rigs::RoomAnswer* room = roomOf(of, i);
    if (!room) continue;
    one = &room->published[k].published;
    (room->published[k].suffices ? enough : tooLittle)
        .items.emplace_back(rigs::Verbatim{of.lettered(i)});
  }
  const rigs::Amount flow = airflow(of, one->airflow);
  const rigs::Bundled name{"Room", std::string(one->name)};
  const rigs::Bundled source{"Room", std::string(one->source)};
  const rigs::Bundled status{"Phrases", std::string(one->status)};
  if (of.isAlone()) {
    return Told(enough.items.empty()
                    ? rigs::Template<4>(TOLD("Room", "%1: %2, too little [%3; %4]"))
                    : rigs::Template<4>(TOLD("Room", "%1: %2, enough [%3; %4]")),
                flow, name, source, status);
  }
  if (enough.items.empty())
    return Told(TOLD("Room", "%1: %2, too little for all [%3; %4]"), flow, name, source, status);
  if (tooLittle.items.empty())
    return Told(TOLD("Room", "%1: %2, enough for all [%3; %4]"), flow, name, source, status);
  return Told(TOLD("Room", "%1: %2, enough for %3, too little for %4 [%5; %6]"), flow, name,
              std::move(enough), std::move(tooLittle), source, status);
}

void sayPublished(Answer& answer, const Case& of) {
  const rigs::RoomAnswer* first = nullptr;
  for (std::size_t i = 0; i < of.count() && !first; ++i) first = roomOf(of, i);
  if (!first) return;
  const rigs::Amount hold = percent(of.plan.room.holdHumidity);
  answer.heading(Told(TOLD("Room", "What others move, and is it enough?")));
  answer.say(of.plan.room.captured > 0.0
                 ? Told(TOLD("Room",
                             "Published airflows of kitchens beside the airflow that holds %1 "
                             "while most vapour rises, for what the plan's hood leaves. They are "
                             "made for cooking, not for a boil of hours."),
                        hold)
                 : Told(TOLD("Room",
                             "Published airflows of kitchens beside the airflow that holds %1 "
                             "while most vapour rises, all of it mixed with the room's air; a "
                             "hood over the kettle takes vapour before it mixes and can do with "
                             "less: state what the hood captures. They are made for cooking, not "
                             "for a boil of hours."),
                        hold));
  for (std::size_t k = 0; k < first->published.size(); ++k) answer.say(published(of, k));
  answer.say(Told(TOLD("Room",
                       "Above %1 houses in North America need make-up air (International "
                       "Residential Code; %2). A hood that gives its air back into the room "
                       "removes no vapour."),
                  airflow(of, rigs::kMakeUpAirAbove), rigs::Bundled{"Phrases", "read"}));
}

// --- Notes.

std::vector<Told> roomNotes(const Case& of) {
  using Opening = rigs::Template<4>;
  const rigs::RoomPlan& room = of.plan.room;
  std::vector<Told> all;
  all.push_back(Told(
      room.isStated
          ? Opening(TOLD("Room",
                         "The room: %1 of air, %2 of it exchanged with outdoors at %3 and %4 of "
                         "humidity."))
          : Opening(TOLD("Room",
                         "The plan states no air of the room; assumed: %1 of air, %2 of it "
                         "exchanged with outdoors at %3 and %4 of humidity.")),
      volume(of, room.volume), airflow(of, room.airflow), rigs::amount(room.outdoors),
      percent(room.outdoorHumidity)));
  if (room.captured > 0.0) {
    all.push_back(Told(TOLD("Room", "A hood takes %1 of the vapour before it mixes with the room."),
                       percent(room.captured)));
  }
  all.push_back(Told(TOLD("Room",
                          "Indoor humidity is best between 30 and 50 % and below 60 % (United "
                          "States EPA).")));
  all.push_back(Told(TOLD("Room",
                          "The balance is over humidity ratios, kg of water per kg of dry air; the "
                          "older one over vapour densities asks 5 to 10 % more air. The room is "
                          "taken as well mixed and as keeping its temperature.")));
  return all;
}

}  // namespace

Answer roomChanges(const Case& of) {
  Answer answer;
  answer.sentences = roomInShort(of);
  for (std::size_t i = 0; i < of.count(); ++i) {
    const rigs::RoomAnswer* room = roomOf(of, i);
    if (!room) continue;
    answer.say(i, rigs::sentences({vapourText(*room), humidityText(of, *room)}));
    answer.goOn(i, levelText(of, *room));
    answer.goOn(i, windowText(*room));
    answer.goOn(i, rigs::sentences({airflowText(of, *room), closedText(*room)}));
  }
  answer.show(roomTable(of));
  sayPublished(answer, of);
  answer.pictures = {humidityPicture(of), airflowPicture(of)};
  answer.notes = roomNotes(of);
  return answer;
}

}  // namespace gui::telling
