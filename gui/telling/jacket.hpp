// SPDX-License-Identifier: GPL-3.0-or-later
// Is insulation worth it? The same rig bare and jacketed, on the same day. Declared in words.hpp:
// worthJacket().
#pragma once

#include <cstddef>

#include "gui/telling/case.hpp"
#include "rigs/words/told.hpp"

namespace gui::telling {

// "side 13 mm cork; lid R 0.32 m²·K/W": the jacket that is compared, in the author's own units
// where these are of the reader's system.
rigs::Told jacketWords(const Case& of, std::size_t rig);
rigs::Told jacketWords(const rigs::JacketText& jacket, const rigs::Reader& reader);

// "13 mm cork", "13 mm cork on side and lid"; the whole of jacketWords() where faces differ.
rigs::Told jacketInShort(const Case& of, std::size_t rig);
rigs::Told jacketShortly(const rigs::JacketText& jacket, const rigs::Reader& reader);
bool isAlikeAllOver(const rigs::JacketText& jacket);  // the same layers on each of its faces
// What is only supposed of a rig: "if it had 13 mm cork", "if it were bare"; and led by the rig's
// letter. Nothing else than the rig as it is stands under its name.
rigs::Told supposedText(const Case& of, std::size_t rig);
rigs::Told supposedNamed(const Case& of, std::size_t rig);
// The one of all rigs that have a comparison, or of the bare ones; nothing where they differ.
rigs::Told comparedJacket(const Case& of, bool ofBareRigsOnly);
// Of all rigs that have no jacket, whose compared one is mostly the same; and of those that have.
rigs::Told ifJacketed(const Case& of);
rigs::Told ifBare();

// "its own jacket (13 mm cork)", "a supposed jacket (13 mm cork)".
rigs::Told jacketNamed(const Case& of, std::size_t rig);

// Both for rigs that have a comparison. Minutes, watts and energy that the jacket saves:
rigs::Told jacketSavingText(const Case& of, std::size_t rig);
// Whether that is worth it, by what rule, and why.
rigs::Told jacketVerdictText(const Case& of, std::size_t rig);
// Both in a line or two, where the jacket and the rule are told beforehand.
rigs::Told jacketInBrief(const Case& of, std::size_t rig);
// What is compared, and what of a heat-up must be saved to be called worth it.
rigs::Told comparedAndRule(const rigs::Told& jacket);

// By the name of "insulate" in spreadsheets.
Table jacketTable(const Case& of);
// What it saves, or both days: two pictures, time and money (energy without a price).
std::vector<Picture> jacketPictures(const Case& of);

}  // namespace gui::telling
