// SPDX-License-Identifier: GPL-3.0-or-later
// The room's air, for programs.
#include "rigs/results/result_json_object.hpp"

namespace rigs {

Json roomJson(const RoomAnswer& room) {
  Json points = Json::array();
  for (const physics::RoomPoint& p : room.day.points) {
    points.push_back(Object()
                         .set("time", p.time)
                         .set("relative_humidity", p.relativeHumidity)
                         .set("humidity_ratio", p.humidityRatio)
                         .set("dew_point", p.dewPoint)
                         .set("vapour", p.vapour)
                         .set("sensible", p.sensible)
                         .take());
  }
  Json published = Json::array();
  for (const JudgedAirflow& one : room.published) {
    published.push_back(Object()
                            .set("name", one.published.name)
                            .set("source", one.published.source)
                            .set("status", one.published.status)
                            .set("airflow", one.published.airflow)
                            .set("is_hood", one.published.isHood)
                            .set("suffices", one.suffices)
                            .take());
  }
  Object object;
  object.set("released", room.day.released)
      .set("into_room", room.day.intoRoom)
      .set("condensed", room.day.condensed)
      .set("sensible", room.day.sensible)
      .set("peak_vapour", room.day.peakVapour)
      .set("peak_sensible", room.day.peakSensible)
      .set("peak_humidity", room.day.peakHumidity)
      .set("peak_at", room.day.peakAt)
      .setIf("saturated_at", room.day.saturatedAt)
      .setIf("window_face", room.windowFace)
      .setIf("window_wet_at", room.day.windowWetAt)
      .setIf("airflow", room.airflow)
      .setIf("airflow_behind_hood", room.airflowBehindHood)
      .setIf("closed_room_full_after", room.closedFull)
      .setIf("level_humidity_at_peak_vapour", room.levelHumidity)
      .set("dry_air_filled", room.fills)
      .set("heat_with_air", room.airHeat)
      .set("method", "humidity ratio")
      .put("published_airflows", std::move(published))
      .put("points", std::move(points));
  return object.take();
}

}  // namespace rigs
