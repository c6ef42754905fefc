// SPDX-License-Identifier: GPL-3.0-or-later
// Small full matrices: what a fit of a handful of unknowns needs of linear algebra.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace rigs::fitting {

using Numbers = std::vector<double>;

// Row by row.
class Matrix {
 public:
  Matrix() = default;
  Matrix(std::size_t rows, std::size_t columns)
      : rows_(rows), columns_(columns), at_(rows * columns, 0.0) {}

  std::size_t rows() const { return rows_; }
  std::size_t columns() const { return columns_; }
  double& operator()(std::size_t row, std::size_t column) { return at_[row * columns_ + column]; }
  double operator()(std::size_t row, std::size_t column) const {
    return at_[row * columns_ + column];
  }

 private:
  std::size_t rows_ = 0, columns_ = 0;
  std::vector<double> at_;
};

double dot(const Numbers& a, const Numbers& b);
Numbers times(const Matrix& m, const Numbers& x);

// The x for which the sum of squares of a x - b is least, and the upper triangle R for which RᵀR
// is aᵀa. By reflections (Householder 1958), which keeps twice the digits of the normal equations
// where two columns are nearly alike. Empty where a column depends on those before it. Rows are at
// least as many as columns (asserted).
struct LeastSquares {
  Numbers x;
  Matrix triangle;
};
std::optional<LeastSquares> leastSquares(Matrix a, Numbers b);

// (RᵀR)⁻¹ of such a triangle.
Matrix inverseOfSquare(const Matrix& triangle);

// The lower triangle L with LLᵀ = m, by Cholesky; empty where m is not positive definite.
std::optional<Matrix> lowerRoot(const Matrix& m);
// L⁻¹x.
Numbers solveLower(const Matrix& lower, const Numbers& x);

}  // namespace rigs::fitting
