// SPDX-License-Identifier: GPL-3.0-or-later
// Gauss-Legendre nodes on the way from 0 to 1, and the polynomial through what stands at them.
#pragma once

#include <array>
#include <cstddef>

namespace physics {

class GaussNodes {
 public:
  static constexpr std::size_t kMost = 12;
  using Values = std::array<double, kMost>;  // of which count() are used

  // 2 to kMost of them; made once.
  static const GaussNodes& of(std::size_t count);

  std::size_t count() const { return count_; }
  double place(std::size_t i) const { return place_[i]; }
  double weight(std::size_t i) const { return weight_[i]; }
  const Values& weights() const { return weight_; }
  double sum(const Values& values) const { return sum(weight_, values); }
  double sum(const Values& weights, const Values& values) const {
    double total = 0.0;
    for (std::size_t i = 0; i < count_; ++i) total += weights[i] * values[i];
    return total;
  }

  // The polynomial at either end.
  double atBegin(const Values& values) const { return sum(atBegin_, values); }
  double atEnd(const Values& values) const { return sum(atEnd_, values); }

  // The polynomial's integral from 0 to a node.
  double upTo(std::size_t i, const Values& values) const { return sum(upTo_[i], values); }
  // What each value weighs in the polynomial at x, and in its integral from 0 to x.
  Values weightsAt(double x) const;
  Values weightsUpTo(double x) const;

  // The polynomial as a sum of Legendre's, and what that is at x, and its integral from 0 to x.
  // What Legendre's are at x serves many sums.
  Values series(const Values& values) const;
  Values legendreAt(double x) const;
  double valueAt(double x, const Values& series) const { return sum(legendreAt(x), series); }
  double integralTo(double x, const Values& series) const;
  // The larger of its last two terms, as a share of its mean: about by how much the polynomial is
  // wrong within.
  double tail(const Values& series) const;
  // About by what share the integral over all of the way is wrong. It sees twice as many terms as
  // the polynomial has; they are taken to fall as the last four do. At least 4 nodes.
  double unseen(const Values& series) const;

 private:
  explicit GaussNodes(std::size_t count);
  Values legendreIntegralsTo(double x) const;
  Values weighed(const Values& series) const;

  std::size_t count_;
  Values place_{};
  Values weight_{};
  Values atBegin_{}, atEnd_{};
  std::array<Values, kMost> legendre_{};  // [k][i]: (2k + 1) weight P_k at node i
  std::array<Values, kMost> upTo_{};      // [i][j]
};

}  // namespace physics
