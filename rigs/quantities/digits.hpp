// SPDX-License-Identifier: GPL-3.0-or-later
// Digits as plans write them: of no locale, unlike those of <cctype>.
#pragma once

namespace rigs {

inline bool isDigit(char c) { return '0' <= c && c <= '9'; }

}  // namespace rigs
