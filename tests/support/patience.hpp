// SPDX-License-Identifier: GPL-3.0-or-later
// How long a test waits for what must come: time that only a failing test takes.
#pragma once

namespace test_support {

#if defined(__SANITIZE_ADDRESS__)
inline constexpr bool kUnderAddressSanitizer = true;
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
inline constexpr bool kUnderAddressSanitizer = true;
#else
inline constexpr bool kUnderAddressSanitizer = false;
#endif
#else
inline constexpr bool kUnderAddressSanitizer = false;
#endif

// ms; sanitizers take some ten times as long.
inline constexpr int kPatience = kUnderAddressSanitizer ? 600'000 : 60'000;

}  // namespace test_support
