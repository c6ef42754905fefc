// SPDX-License-Identifier: GPL-3.0-or-later
#include "rigs/fitting/dense.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <utility>

namespace rigs::fitting {
namespace {

// Reflects column k and all behind it so that below its diagonal nothing is left.
bool reflect(Matrix& a, Numbers& b, std::size_t k) {
  double below = 0.0;
  for (std::size_t i = k; i < a.rows(); ++i) below += a(i, k) * a(i, k);
  const double length = std::sqrt(below);
  if (!(length > 0.0) || !std::isfinite(length)) return false;
  const double pivot = a(k, k) > 0.0 ? -length : length;
  Numbers mirror(a.rows(), 0.0);
  for (std::size_t i = k; i < a.rows(); ++i) mirror[i] = a(i, k);
  mirror[k] -= pivot;
  const double size = dot(mirror, mirror);
  const auto mirrored = [&](const auto& at) {
    double along = 0.0;
    for (std::size_t i = k; i < a.rows(); ++i) along += mirror[i] * at(i);
    for (std::size_t i = k; i < a.rows(); ++i) at(i) -= 2.0 * along / size * mirror[i];
  };
  for (std::size_t j = k; j < a.columns(); ++j)
    mirrored([&](std::size_t i) -> double& { return a(i, j); });
  mirrored([&](std::size_t i) -> double& { return b[i]; });
  return true;
}

}  // namespace

double dot(const Numbers& a, const Numbers& b) {
  assert(a.size() == b.size());
  double sum = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}

Numbers times(const Matrix& m, const Numbers& x) {
  assert(m.columns() == x.size());
  Numbers product(m.rows(), 0.0);
  for (std::size_t i = 0; i < m.rows(); ++i)
    for (std::size_t j = 0; j < m.columns(); ++j) product[i] += m(i, j) * x[j];
  return product;
}

std::optional<LeastSquares> leastSquares(Matrix a, Numbers b) {
  const std::size_t n = a.columns();
  assert(a.rows() >= n && b.size() == a.rows());
  Numbers sizes(n, 0.0);
  for (std::size_t j = 0; j < n; ++j)
    for (std::size_t i = 0; i < a.rows(); ++i) sizes[j] += a(i, j) * a(i, j);
  Matrix triangle(n, n);
  for (std::size_t k = 0; k < n; ++k) {
    if (!reflect(a, b, k)) return std::nullopt;
    const double rounding = 16.0 * std::numeric_limits<double>::epsilon() * std::sqrt(sizes[k]);
    if (std::abs(a(k, k)) <= rounding) return std::nullopt;
    for (std::size_t i = 0; i <= k; ++i) triangle(i, k) = a(i, k);
  }
  Numbers x(n, 0.0);
  for (std::size_t k = n; k-- > 0;) {
    double left = b[k];
    for (std::size_t j = k + 1; j < n; ++j) left -= triangle(k, j) * x[j];
    x[k] = left / triangle(k, k);
  }
  return LeastSquares{std::move(x), std::move(triangle)};
}

Matrix inverseOfSquare(const Matrix& triangle) {
  const std::size_t n = triangle.rows();
  Matrix inverse(n, n);  // of the triangle
  for (std::size_t j = 0; j < n; ++j) {
    inverse(j, j) = 1.0 / triangle(j, j);
    for (std::size_t i = j; i-- > 0;) {
      double sum = 0.0;
      for (std::size_t k = i + 1; k <= j; ++k) sum += triangle(i, k) * inverse(k, j);
      inverse(i, j) = -sum / triangle(i, i);
    }
  }
  Matrix square(n, n);
  for (std::size_t i = 0; i < n; ++i)
    for (std::size_t j = 0; j < n; ++j)
      for (std::size_t k = std::max(i, j); k < n; ++k)
        square(i, j) += inverse(i, k) * inverse(j, k);
  return square;
}

std::optional<Matrix> lowerRoot(const Matrix& m) {
  assert(m.rows() == m.columns());
  Matrix root(m.rows(), m.rows());
  for (std::size_t i = 0; i < m.rows(); ++i) {
    for (std::size_t j = 0; j <= i; ++j) {
      double left = m(i, j);
      for (std::size_t k = 0; k < j; ++k) left -= root(i, k) * root(j, k);
      if (i > j) {
        root(i, j) = left / root(j, j);
      } else {
        if (!(left > 0.0)) return std::nullopt;
        root(i, i) = std::sqrt(left);
      }
    }
  }
  return root;
}

Numbers solveLower(const Matrix& lower, const Numbers& x) {
  Numbers solved(x.size(), 0.0);
  for (std::size_t i = 0; i < x.size(); ++i) {
    double left = x[i];
    for (std::size_t j = 0; j < i; ++j) left -= lower(i, j) * solved[j];
    solved[i] = left / lower(i, i);
  }
  return solved;
}

}  // namespace rigs::fitting
