// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? How a jacket is named, and a rig that is only supposed.
#include <algorithm>

#include "gui/telling/jacket.hpp"

namespace gui::telling {
namespace {

using rigs::Joint;
using rigs::List;
using rigs::Told;
using rigs::Verbatim;

List layersOf(const rigs::FaceText& face, const rigs::Reader& reader) {
  List layers{{}, Joint::Plus};
  for (const rigs::LayerText& layer : face.layers) {
    // An author's own words may stand here, so that this is told for the reader.
    const Verbatim thick{
        rigs::withDecimalSign(rigs::amountIn(layer, reader.units), *reader.language)};
    layers.items.emplace_back(List{{thick, rigs::Bundled{"Catalogue", layer.material}}});
  }
  return layers;
}

}  // namespace

Told jacketWords(const Case& of, std::size_t i) {
  return jacketWords(of.planned(i).jacket, of.reader);
}

Told jacketWords(const rigs::JacketText& jacket, const rigs::Reader& reader) {
  List faces{{}, Joint::Semicolon};
  for (const rigs::FaceText& face : jacket.faces)
    faces.items.emplace_back(
        List{{rigs::Bundled{"Catalogue", face.where}, layersOf(face, reader)}});
  return Told::just(std::move(faces));
}

bool isAlikeAllOver(const rigs::JacketText& jacket) {
  return std::all_of(jacket.faces.begin(), jacket.faces.end(), [&](const rigs::FaceText& face) {
    return face.layers == jacket.faces.front().layers;
  });
}

Told jacketInShort(const Case& of, std::size_t i) {
  return jacketShortly(of.planned(i).jacket, of.reader);
}

Told jacketShortly(const rigs::JacketText& jacket, const rigs::Reader& reader) {
  const auto& faces = jacket.faces;
  if (faces.empty()) return Told(TOLD("Answer", "a jacket"));
  if (!isAlikeAllOver(jacket))
    return Told(TOLD("Answer", "a jacket (%1)"), jacketWords(jacket, reader));
  List layers = layersOf(faces.front(), reader);
  if (faces.size() == 1 && faces.front().where == "side") return Told::just(std::move(layers));
  List where{{}, Joint::And};
  for (const rigs::FaceText& face : faces)
    where.items.emplace_back(rigs::Bundled{"Catalogue", face.where});
  return Told(TOLD("Answer", "%1 on %2"), std::move(layers), std::move(where));
}

Told ifBare() { return Told(TOLD("Answer", "if it were bare")); }

Told supposedText(const Case& of, std::size_t i) {
  if (of.planned(i).hasJacket) return ifBare();
  return Told(TOLD("Answer", "if it had %1"), jacketInShort(of, i));
}

Told supposedNamed(const Case& of, std::size_t i) {
  const std::string own = of.lettered(i);
  if (own.empty()) return supposedText(of, i);
  return Told(TOLD("Answer", "%1 %2"), Verbatim{own}, supposedText(of, i));
}

Told comparedJacket(const Case& of, bool ofBareRigsOnly) {
  Told common;
  for (std::size_t i = 0; i < of.count(); ++i) {
    if (!of.rig(i).jacket || (ofBareRigsOnly && of.planned(i).hasJacket)) continue;
    Told one = jacketInShort(of, i);
    if (!common.empty() && !(common == one)) return {};
    common = std::move(one);
  }
  return common;
}

Told ifJacketed(const Case& of) {
  const Told jacket = comparedJacket(of, true);
  return Told(TOLD("Answer", "if it had %1"),
              jacket.empty() ? Told(TOLD("Answer", "a jacket")) : jacket);
}

Told jacketNamed(const Case& of, std::size_t i) {
  const Told shortly = jacketInShort(of, i);
  return of.planned(i).hasJacket ? Told(TOLD("Answer", "its own jacket (%1)"), shortly)
                                 : Told(TOLD("Answer", "a supposed jacket (%1)"), shortly);
}

}  // namespace gui::telling
