// SPDX-License-Identifier: GPL-3.0-or-later
// What happens to the room?
#include <algorithm>
#include <array>

#include "gui/window/charts/chart_look.hpp"
#include "gui/window/charts/chart_window.hpp"
#include "gui/window/questions/answer_text.hpp"

namespace gui {
namespace {

constexpr double kLitresInCubicFoot = 28.316846592;

// What others move, in cubic metres an hour.
struct Hood {
  double flow;
  const char* label;
  const char* source;
};
constexpr std::array kHoods{
    Hood{108.0, QT_TRANSLATE_NOOP("Room", "hood over a hob"), "Approved Document F"},
    Hood{180.0, QT_TRANSLATE_NOOP("Room", "vented kitchen hood"), "ASHRAE 62.2"},
    Hood{679.6, QT_TRANSLATE_NOOP("Room", "make-up air from here"), "IRC"}};

const rigs::RoomAnswer* roomOf(const Telling& tell, int i) {
  const auto& room = tell.rig(i).room;
  return room ? &*room : nullptr;
}

bool isMetric(const Telling& tell) { return tell.write.units() == rigs::UnitSystem::SI; }

// As fans are sold: m3/h, or ft3/min.
QString airflowUnit(const Telling& tell) {
  return isMetric(tell) ? QStringLiteral("m³/h") : QStringLiteral("ft³/min");
}
double airflowNumber(const Telling& tell, physics::VolumeFlow flow) {
  const double litresAnHour = physics::inLitresPerHour(flow);
  return isMetric(tell) ? litresAnHour / 1e3 : litresAnHour / (60.0 * kLitresInCubicFoot);
}
QString airflowText(const Telling& tell, physics::VolumeFlow flow) {
  return QStringLiteral("%1 %2").arg(tell.write.plain(airflowNumber(tell, flow), 0),
                                     airflowUnit(tell));
}
physics::VolumeFlow flowOf(const Hood& hood) { return physics::litresPerHour(1e3 * hood.flow); }

QString percent(const Telling& tell, double share) {
  return tell.write.text(share, {.significantDigits = 2, .decimals = {}});
}

QString rigText(const Telling& tell, int i, const QString& text) {
  const rigs::RoomAnswer& room = *roomOf(tell, i);
  QString told = text.arg(tell.write.text(room.day.intoRoom), tell.named(i));
  told += QLatin1Char(' ');
  told +=
      room.day.saturatedAt
          ? translate("Room",
                      "The air is full of it from %1 into the day on, and %2 of water run down "
                      "what is coldest.")
                .arg(tell.write.time(*room.day.saturatedAt), tell.write.text(room.day.condensed))
          : translate("Room", "The air's humidity stays at %1 or below.")
                .arg(percent(tell, room.day.peakHumidity));
  if (room.airflow && room.day.peakHumidity > tell.plan.room.holdHumidity) {
    told += QLatin1Char(' ') +
            translate("Room", "%1 hold %2 while most of it rises.")
                .arg(airflowText(tell, *room.airflow), percent(tell, tell.plan.room.holdHumidity));
  }
  return told;
}

QString sentence(const Telling& tell) {
  const Extremes e = extremesOf(tell, [&](int i) -> std::optional<double> {
    const rigs::RoomAnswer* room = roomOf(tell, i);
    return room ? std::optional(physics::inKilograms(room->day.intoRoom)) : std::nullopt;
  });
  if (e.counted == 0) return translate("Room", "The room has not been computed yet.");
  QStringList told;
  told += rigText(tell, e.most,
                  e.counted == 1
                      ? translate("Room", "%1 of vapour go into the room with %2.")
                      : translate("Room", "%1 of vapour go into the room with %2, the most."));
  if (e.counted > 1 && e.least != e.most) {
    told += rigText(tell, e.least, translate("Room", "%1 with %2, the least."));
  }
  return told.join(QLatin1Char(' '));
}

QtPictureLine level(const QString& name, double y, double until) {
  return {.rig = -1, .name = name, .points = {{0.0, y}, {until, y}}};
}

QtPicture humidityPicture(const Telling& tell) {
  QtPicture picture;
  picture.title = translate("Room", "Humidity of the room over the day");
  picture.xTitle = translate("Room", "Time since the start, h:min");
  picture.yTitle = translate("Room", "Relative humidity, %");
  picture.yUnit = QStringLiteral("%");
  picture.xIsClock = true;
  picture.yFrom = 0.0;
  picture.yTo = 100.0;
  double end = 0.0;
  for (int i = 0; i < tell.count(); ++i) {
    const rigs::RoomAnswer* room = roomOf(tell, i);
    QtPictureLine line{.rig = i, .name = tell.name(i), .points = {}};
    if (room) {
      for (const physics::RoomPoint& point : room->day.points) {
        line.points.push_back({physics::inMinutes(point.time), 100.0 * point.relativeHumidity});
      }
      if (room->day.saturatedAt) {
        const double at = physics::inMinutes(*room->day.saturatedAt);
        picture.marks.push_back(
            {i,
             {at, 100.0},
             translate("Room", "%1 full %2").arg(letterOfRig(i), hoursAndMinutesText(at))});
      }
    }
    if (!line.points.isEmpty()) end = std::max(end, line.points.back().x());
    picture.lines.push_back(line);
  }
  if (end > 0.0) {
    const double hold = tell.plan.room.holdHumidity;
    picture.lines.push_back(
        level(translate("Room", "%1, what the airflow is to hold").arg(percent(tell, hold)),
              100.0 * hold, end));
    picture.lines.push_back(level(translate("Room", "100 %, the air is full"), 100.0, end));
  }
  picture.bands.push_back({.from = 30.0,
                           .to = 50.0,
                           .label = translate("Room", "best in a house, and below 60 %"),
                           .source = QStringLiteral("US EPA")});
  return picture;
}

QtPicture airflowPicture(const Telling& tell) {
  QtPicture picture;
  picture.kind = QtPicture::Kind::StackedBars;
  picture.title = translate("Room", "Air that would hold %1 while most vapour rises")
                      .arg(percent(tell, tell.plan.room.holdHumidity));
  picture.xUnit = airflowUnit(tell);
  picture.xTitle = translate("Room", "Outdoor air, %1").arg(picture.xUnit);
  picture.partNames = {translate("Room", "airflow")};
  for (int i = 0; i < tell.count(); ++i) {
    const rigs::RoomAnswer* room = roomOf(tell, i);
    const double flow = room && room->airflow ? airflowNumber(tell, *room->airflow) : 0.0;
    picture.stacks.push_back({.rig = i, .name = tell.name(i), .parts = {flow}});
  }
  for (const Hood& hood : kHoods) {
    picture.limits.push_back({airflowNumber(tell, flowOf(hood)), translate("Room", hood.label)});
  }
  return picture;
}

PictureTable table(const Telling& tell) {
  TableOf table(tell);
  const auto row = [&](const QString& label, const auto& of) {
    table.row(label, [&tell, of](int i) -> std::optional<QString> {
      const rigs::RoomAnswer* room = roomOf(tell, i);
      return room ? std::optional<QString>(of(*room)) : std::nullopt;
    });
  };
  using Room = rigs::RoomAnswer;
  const Writer& write = tell.write;
  table.heading(translate("Room", "From the kettle"));
  row(translate("Room", "vapour, %1").arg(write.unit<physics::Mass>()),
      [&](const Room& r) { return write.number(r.day.released, 2); });
  row(translate("Room", "of it into the room, %1").arg(write.unit<physics::Mass>()),
      [&](const Room& r) { return write.number(r.day.intoRoom, 2); });
  row(translate("Room", "most vapour, %1").arg(write.unit<physics::MassFlow>()),
      [&](const Room& r) { return write.number(r.day.peakVapour, 2); });
  row(translate("Room", "heat, %1").arg(write.unit<physics::Energy>()),
      [&](const Room& r) { return write.number(r.day.sensible, 2); });
  row(translate("Room", "most heat, W"),
      [&](const Room& r) { return write.number(r.day.peakSensible, 0); });
  table.heading(translate("Room", "The room's air"));
  row(translate("Room", "highest humidity, %"),
      [&](const Room& r) { return write.plain(100.0 * r.day.peakHumidity, 0); });
  row(translate("Room", "reached after, h:min"),
      [](const Room& r) { return hoursAndMinutesText(physics::inMinutes(r.day.peakAt)); });
  row(translate("Room", "full of vapour from, h:min"), [](const Room& r) {
    return r.day.saturatedAt ? hoursAndMinutesText(physics::inMinutes(*r.day.saturatedAt))
                             : QStringLiteral("–");
  });
  row(translate("Room", "condensed, %1").arg(write.unit<physics::Mass>()),
      [&](const Room& r) { return write.number(r.day.condensed, 2); });
  if (tell.plan.room.window) {
    row(translate("Room", "window's inner face, %1").arg(write.unit<physics::Temperature>()),
        [&](const Room& r) { return r.windowFace ? write.number(*r.windowFace, 1) : QString(); });
    row(translate("Room", "window wet from, h:min"), [](const Room& r) {
      return r.day.windowWetAt ? hoursAndMinutesText(physics::inMinutes(*r.day.windowWetAt))
                               : QStringLiteral("–");
    });
  }
  row(translate("Room", "heat lost with the air, W"),
      [&](const Room& r) { return write.number(r.airHeat, 0); });
  table.heading(translate("Room", "Air needed while most vapour rises"));
  row(translate("Room", "to hold %1, %2")
          .arg(percent(tell, tell.plan.room.holdHumidity), airflowUnit(tell)),
      [&](const Room& r) {
        return r.airflow ? write.plain(airflowNumber(tell, *r.airflow), 0) : QStringLiteral("–");
      });
  if (tell.plan.room.captured > 0.0) {
    row(translate("Room", "behind the hood, %1").arg(airflowUnit(tell)), [&](const Room& r) {
      return r.airflowBehindHood ? write.plain(airflowNumber(tell, *r.airflowBehindHood), 0)
                                 : QStringLiteral("–");
    });
  }
  for (const Hood& hood : kHoods) {
    row(translate("Room", "as a multiple of: %1, %2 (%3)")
            .arg(translate("Room", hood.label), airflowText(tell, flowOf(hood)),
                 QString::fromLatin1(hood.source)),
        [&](const Room& r) {
          return r.airflow ? write.plain(static_cast<double>(*r.airflow / flowOf(hood)), 1)
                           : QStringLiteral("–");
        });
  }
  row(translate("Room", "closed room full after, min"), [&](const Room& r) {
    return r.closedFull ? write.plain(physics::inMinutes(*r.closedFull), 0) : QStringLiteral("–");
  });
  return table.take();
}

QStringList notes(const Telling& tell) {
  const rigs::RoomPlan& room = tell.plan.room;
  const bool metric = isMetric(tell);
  const QString volume =
      localized(rigs::formatLike(room.volume, metric ? "1 m3" : "1 ft3"), QLocale());
  QStringList all{
      (room.isStated
           ? translate("Room",
                       "The room: %1 of air, %2 of it exchanged with outdoors at %3 and %4 of "
                       "humidity.")
           : translate("Room",
                       "The plan states no air of the room; assumed: %1 of air, %2 of it exchanged "
                       "with outdoors at %3 and %4 of humidity."))
          .arg(volume, airflowText(tell, room.airflow), tell.write.text(room.outdoors),
               percent(tell, room.outdoorHumidity))};
  if (room.captured > 0.0) {
    all += translate("Room", "A hood takes %1 of the vapour before it mixes with the room.")
               .arg(percent(tell, room.captured));
  }
  all += translate("Room",
                   "Published: a vented kitchen hood moves %1 (ASHRAE 62.2, on demand), one over a "
                   "hob in the United Kingdom %2 (Approved Document F); above %3 houses in North "
                   "America need make-up air (IRC). A hood that gives its air back into the room "
                   "removes no vapour.")
             .arg(airflowText(tell, flowOf(kHoods[1])), airflowText(tell, flowOf(kHoods[0])),
                  airflowText(tell, flowOf(kHoods[2])));
  all += translate("Room",
                   "Indoor humidity is best between 30 and 50 % and below 60 % (United States "
                   "EPA).");
  all += translate("Room",
                   "The balance is over humidity ratios, kg of water per kg of dry air; the older "
                   "one over vapour densities asks 5 to 10 % more air. The room is taken as well "
                   "mixed and as keeping its temperature.");
  return all;
}

}  // namespace

QtAnswer roomChanges(const Telling& tell) {
  QtAnswer answer;
  answer.sentence = sentence(tell);
  answer.pictures = {humidityPicture(tell), airflowPicture(tell)};
  answer.table = table(tell);
  answer.notes = notes(tell);
  return answer;
}

}  // namespace gui
