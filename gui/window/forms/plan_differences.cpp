// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/forms/plan_differences.hpp"

#include <QCoreApplication>
#include <string>

#include "gui/window/forms/field_words.hpp"
#include "rigs/documents/json_edit.hpp"

namespace gui {
namespace {

class Differences {  // whose texts these are, for translators
  Q_DECLARE_TR_FUNCTIONS(Differences)
};

constexpr qsizetype kFew = 3;
constexpr qsizetype kLongest = 32;  // characters of a value

QString valueAt(const rigs::Texts& texts, const std::string& place) {
  const auto found = texts.find(place);
  if (found == texts.end()) return Differences::tr("not stated");
  QString value = QString::fromStdString(found->second).simplified();
  if (value.size() > kLongest) value = value.left(kLongest - 1) + QChar(0x2026);
  return value;
}

// "Power, My kettle": the rig as the later of the two names it.
QString labelWithRig(const rigs::Texts& after, const std::string& place) {
  const QString label = labelAt(place);
  constexpr std::string_view kRigs = "/rigs/";
  if (label.isEmpty() || !place.starts_with(kRigs)) return label;
  const auto rig = after.find(place.substr(0, place.find('/', kRigs.size())) + "/name");
  return rig == after.end()
             ? label
             : Differences::tr("%1, %2").arg(label, QString::fromStdString(rig->second));
}

}  // namespace

PlanDifferences differencesOf(std::string_view before, std::string_view after) {
  const rigs::Texts was = rigs::textsOf(before);
  const rigs::Texts is = rigs::textsOf(after);
  rigs::Texts all = is;
  all.insert(was.begin(), was.end());
  PlanDifferences found;
  for (const auto& [place, text] : all) {
    const auto old = was.find(place);
    const auto now = is.find(place);
    if (old != was.end() && now != is.end() && old->second == now->second) continue;
    ++found.count;
    const QString label = labelWithRig(is, place);
    if (label.isEmpty() || found.first.size() == kFew) continue;
    found.first +=
        Differences::tr("%1 %2 → %3").arg(label, valueAt(was, place), valueAt(is, place));
  }
  return found;
}

}  // namespace gui
