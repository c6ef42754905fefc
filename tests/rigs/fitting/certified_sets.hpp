// SPDX-License-Identifier: GPL-3.0-or-later
// Nonlinear regression sets with certified answers: Statistical Reference Datasets of the National
// Institute of Standards and Technology, as they stand in lmfit's NIST_STRD folder (also in
// ceres-solver's data/nist).
#pragma once

#include <cmath>
#include <functional>
#include <ostream>
#include <string>
#include <vector>

#include "rigs/fitting/least_squares.hpp"

struct CertifiedSet {
  std::string name;
  std::function<double(const std::vector<double>& b, double x)> model;
  std::vector<double> x, y;
  std::vector<std::vector<double>> starts;
  std::vector<double> b, standardError;
  double residualDeviation;
  double digits = 6.0;
};
inline std::ostream& operator<<(std::ostream& out, const CertifiedSet& set) {
  return out << set.name;
}

inline std::vector<double> evenlyFrom0(std::size_t count, double apart) {
  std::vector<double> x;
  for (std::size_t i = 0; i < count; ++i) x.push_back(apart * static_cast<double>(i));
  return x;
}

inline std::vector<CertifiedSet> certifiedSets() {
  using B = const std::vector<double>&;
  const auto approach = [](B b, double x) { return b[0] * (1.0 - std::exp(-b[1] * x)); };
  return {
      {"Misra1a",
       approach,
       {77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1,
        760},
       {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47,
        81.78},
       {{500, 1e-4}, {250, 5e-4}},
       {238.94212918, 5.5015643181e-4},
       {2.7070075241, 7.2668688436e-6},
       .10187876330},
      {"BoxBOD",
       approach,
       {1, 2, 3, 5, 7, 10},
       {109, 149, 149, 191, 213, 224},
       {{1, 1}, {100, .75}},
       {213.80940889, .54723748542},
       {12.354515176, .10455993237},
       17.088072423},
      {"DanWood",
       [](B b, double x) { return b[0] * std::pow(x, b[1]); },
       {1.309, 1.471, 1.490, 1.565, 1.611, 1.680},
       {2.138, 3.421, 3.597, 4.340, 4.882, 5.660},
       {{1, 5}, {.7, 4}},
       {.76886226176, 3.8604055871},
       {.018281973860, .051726610913},
       .032853114039},
      {"MGH09",
       [](B b, double x) { return b[0] * (x * x + b[1] * x) / (x * x + b[2] * x + b[3]); },
       {4, 2, 1, .5, .25, .167, .125, .1, .0833, .0714, .0625},
       {.1957, .1947, .1735, .16, .0844, .0627, .0456, .0342, .0323, .0235, .0246},
       {{25, 39, 41.5, 39}, {.25, .39, .415, .39}},
       {.19280693458, .19128232873, .12305650693, .13606233068},
       {.011435312227, .19633220911, .080842031232, .090025542308},
       .0066279236551},
      {"MGH17",
       [](B b, double x) { return b[0] + b[1] * std::exp(-b[3] * x) + b[2] * std::exp(-b[4] * x); },
       evenlyFrom0(33, 10.0),
       {.844, .908, .932, .936, .925, .908, .881, .850, .818, .784, .751,
        .718, .685, .658, .628, .603, .580, .558, .538, .522, .506, .490,
        .478, .467, .457, .448, .438, .431, .424, .420, .414, .411, .406},
       {{50, 150, -100, 1, 2}, {.5, 1.5, -1, .01, .02}},
       {.37541005211, 1.9358469127, -1.4646871366, .012867534640, .022122699662},
       {.0020723153551, .22031669222, .22175707739, 4.4861358114e-4, 8.9471996575e-4},
       .0013970497866},
      {"Rat42",
       [](B b, double x) { return b[0] / (1.0 + std::exp(b[1] - b[2] * x)); },
       {9, 14, 21, 28, 42, 57, 63, 70, 79},
       {8.93, 10.80, 18.59, 22.33, 39.35, 56.11, 61.73, 64.62, 67.08},
       {{100, 1, .1}, {75, 2.5, .07}},
       {72.462237576, 2.6180768402, .067359200066},
       {1.7340283401, .088295217536, .0034465663377},
       1.1587725499},
      {"Lanczos3",
       [](B b, double x) {
         return b[0] * std::exp(-b[1] * x) + b[2] * std::exp(-b[3] * x) +
                b[4] * std::exp(-b[5] * x);
       },
       evenlyFrom0(24, .05),
       {2.5134, 2.0443, 1.6684, 1.3664, 1.1232, .9269, .7679, .6389, .5338, .4479, .3776, .3197,
        .2720,  .2325,  .1997,  .1723,  .1493,  .1301, .1138, .1000, .0883, .0783, .0698, .0624},
       {{1.2, .3, 5.6, 5.5, 6.5, 7.6}, {.5, .7, 3.6, 4.2, 4, 6.3}},
       {.086816414977, .95498101505, .84400777463, 2.9515951832, 1.5825685901, 4.9863565084},
       {.017197908859, .097041624475, .041488663282, .10766312506, .058371576281, .034436403035},
       2.9923229172e-5,
       4.0}};
}

inline rigs::fitting::Model residualsOf(const CertifiedSet& set) {
  return [&set](const std::vector<rigs::fitting::Numbers>& places) {
    std::vector<rigs::fitting::Numbers> all;
    for (const auto& b : places) {
      all.emplace_back();
      for (std::size_t i = 0; i < set.x.size(); ++i)
        all.back().push_back(set.model(b, set.x[i]) - set.y[i]);
    }
    return all;
  };
}
