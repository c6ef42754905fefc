# SPDX-License-Identifier: GPL-3.0-or-later
# cmake -DOUTPUT=... -DDOCUMENTS=a;b -P embed.cmake: the bytes of each document as a C++ array.
# Bytes, since string literals have a length limit and a character encoding of the compiler's.
set(arrays "")
set(table "")
set(number 0)
foreach(document IN LISTS DOCUMENTS)
  file(READ ${document} bytes HEX)
  string(REGEX REPLACE "(..)" "0x\\1," bytes "${bytes}")
  string(APPEND arrays "constexpr unsigned char kBytes${number}[] = {${bytes}};\n")
  string(APPEND table "    {\"${document}\", text(kBytes${number}, sizeof kBytes${number})},\n")
  math(EXPR number "${number} + 1")
endforeach()
file(WRITE ${OUTPUT} "// SPDX-License-Identifier: GPL-3.0-or-later
// Made by rigs/embed.cmake.
#include \"rigs/documents/embedded.hpp\"

#include <cstddef>

namespace rigs {
namespace {

std::string_view text(const unsigned char* bytes, std::size_t size) {
  return {reinterpret_cast<const char*>(bytes), size};
}
${arrays}
const EmbeddedDocument kDocuments[] = {
${table}};

}  // namespace

std::span<const EmbeddedDocument> embeddedDocuments() {
  return kDocuments;
}

}  // namespace rigs
")
