// SPDX-License-Identifier: GPL-3.0-or-later
// A document that somebody, or something, has damaged in one place: it stays JSON, so that what
// reads it is reached behind the parser.
#pragma once

#include <array>
#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <random>
#include <string>
#include <string_view>
#include <vector>

#include "rigs/plans/keys.hpp"
#include "rigs/quantities/unit_table.hpp"

namespace test_support {

class Mutator {
 public:
  using Json = nlohmann::ordered_json;

  explicit Mutator(unsigned seed) : random_(seed) {}

  void mutate(Json& document) {
    std::vector<Json*> nodes;
    collect(document, nodes);
    Json& node = *nodes[below(nodes.size())];
    switch (below(9)) {
      case 0:
        node = strange();
        return;
      case 1:
        node = Json(*nodes[below(nodes.size())]);
        return;
      case 2:
        return duplicate(node);
      case 3:
        return drop(node);
      case 4:
        return addKey(document);
      case 5:
        node = quantity();
        return;
      default:
        return nudge(node);
    }
  }

  std::size_t below(std::size_t count) { return count == 0 ? 0 : random_() % count; }

 private:
  static void collect(Json& node, std::vector<Json*>& nodes) {
    nodes.push_back(&node);
    for (Json& child : node)
      if (node.is_structured()) collect(child, nodes);
  }

  Json strange() {
    static const std::array<Json, 26> kStrange{nullptr,
                                               true,
                                               false,
                                               0,
                                               -1,
                                               1,
                                               12,
                                               1e308,
                                               -1e-308,
                                               0.5,
                                               9223372036854775807LL,
                                               "",
                                               " ",
                                               "NaN",
                                               "inf L",
                                               "none",
                                               "1e999 W",
                                               "\u00e4\u2003\U0001f37a",
                                               "\x1b[2J",
                                               "=1+1",
                                               "..",
                                               "/dev/zero",
                                               Json::array(),
                                               Json::object(),
                                               std::string(5000, 'x'),
                                               "2026-02-30"};
    if (below(20) > 0) return kStrange[below(kStrange.size())];
    Json deep = Json::array();
    for (int level = 0; level < 70; ++level) deep = Json::array({deep});
    return deep;
  }

  std::string number() {
    static constexpr std::array<std::string_view, 20> kNumbers{
        "0",  "1",    "-1", "0.001", "0.5", "2",   "3",    "5",    "9.9", "12",
        "20", "23.4", "30", "65",    "100", "240", "1000", "3500", "1e6", "1e-9"};
    return std::string(kNumbers[below(kNumbers.size())]);
  }
  std::string unit() {
    const auto& units = rigs::unitSpellings();
    return std::string(units[below(units.size())].spelling);
  }
  std::string quantity() { return number() + ' ' + unit(); }

  // Twice the same thing, or two things in each other's place.
  void duplicate(Json& node) {
    if (!node.is_array() || node.empty()) return nudge(node);
    const Json one = node[below(node.size())];
    if (below(2) == 0 && node.size() < 40) return node.push_back(one);
    std::swap(node[below(node.size())], node[below(node.size())]);
  }

  void drop(Json& node) {
    if (!node.is_structured() || node.empty()) return nudge(node);
    node.erase(std::next(node.begin(), static_cast<std::ptrdiff_t>(below(node.size()))));
  }

  // One that plans may have, with something that is accepted there or just so.
  void addKey(Json& document) {
    const auto& keys = rigs::planKeys();
    const rigs::Key& key = keys[below(keys.size())];
    std::string place;
    for (const char c : key.place) place += c == '*' ? std::to_string(below(2)) : std::string(1, c);
    const std::array<std::string_view, 4> texts{key.example, key.standard, key.least, key.most};
    std::string_view text = texts[below(texts.size())];
    if (!key.words.empty() && below(2) == 0) text = key.words[below(key.words.size())];
    try {
      Json value = Json::parse(text, nullptr, false);
      if (value.is_discarded()) value = std::string(text);
      document[Json::json_pointer(place)] = value;
    } catch (const Json::exception&) {
      nudge(document);  // the way there is not of objects
    }
  }

  std::string scaled(const std::string& text) {
    static constexpr std::array<double, 8> kFactors{0.1, 0.5, 0.9, 1.01, 1.2, 2.0, 5.0, -1.0};
    char digits[32];
    std::snprintf(digits, sizeof digits, "%.4g",
                  std::strtod(text.c_str(), nullptr) * kFactors[below(kFactors.size())]);
    return digits;
  }

  // Another number before the same unit, another unit behind the same number, or another letter.
  void nudge(Json& node) {
    if (!node.is_string()) {
      node = node.is_number() ? Json(std::stod(number())) : strange();
      return;
    }
    std::string text = node.get<std::string>();
    const std::size_t space = text.find(' ');
    const std::string behind = space == std::string::npos ? "" : text.substr(space);
    const std::size_t choice = below(8);
    if (choice == 0 && !text.empty()) {
      text[below(text.size())] = static_cast<char>(32 + below(95));
    } else if (choice < 5) {
      text = scaled(text) + behind;
    } else if (choice < 7) {
      text = number() + behind;
    } else {
      text = text.substr(0, space) + ' ' + unit();
    }
    node = text;
  }

  std::mt19937 random_;
};

}  // namespace test_support
