// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/window/words/reader.hpp"

#include <string_view>
#include <utility>

#include "rigs/circuits/rules.hpp"

namespace gui {
namespace {

QString text(const rigs::Argument& argument) {
  return QString::fromStdString(rigs::tell(argument, readerOf(rigs::UnitSystem::SI)));
}

}  // namespace

rigs::Reader readerOf(rigs::UnitSystem units) {
  return {.units = units, .language = &rigs::english()};
}

QString told(const rigs::Told& told, rigs::UnitSystem units) {
  return QString::fromStdString(rigs::tell(told, readerOf(units)));
}

QString catalogueName(const QString& english) {
  return text(rigs::Bundled{"Catalogue", english.toStdString()});
}

QString finishName(const std::string& finish) {
  constexpr std::string_view kStated = "emissivity ";
  if (!finish.starts_with(kStated)) return text(rigs::Bundled{"Catalogue", finish});
  const rigs::Reader reader = readerOf(rigs::UnitSystem::SI);
  const rigs::Verbatim number{
      rigs::withDecimalSign(finish.substr(kStated.size()), *reader.language)};
  return text(rigs::Told(TOLD("Catalogue", "emissivity %1"), number));
}

QString jacketText(const rigs::JacketText& jacket, rigs::UnitSystem units) {
  const rigs::Reader reader = readerOf(units);
  rigs::List faces{.items = {}, .joint = rigs::Joint::Semicolon};
  for (const rigs::FaceText& face : jacket.faces) {
    rigs::List layers{.items = {}, .joint = rigs::Joint::Plus};
    for (const rigs::LayerText& layer : face.layers) {
      const rigs::Verbatim amount{
          rigs::withDecimalSign(rigs::amountIn(layer, units), *reader.language)};
      layers.items.emplace_back(
          rigs::List{{amount, rigs::Bundled{"Catalogue", layer.material}}, rigs::Joint::Space});
    }
    faces.items.emplace_back(rigs::List{{rigs::Bundled{"Catalogue", face.where}, std::move(layers)},
                                        rigs::Joint::Space});
  }
  return QString::fromStdString(rigs::tell(rigs::Argument(std::move(faces)), reader));
}

QString regionName(const std::string& english) { return text(rigs::fromRules(english)); }

}  // namespace gui
