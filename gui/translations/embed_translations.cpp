// SPDX-License-Identifier: GPL-3.0-or-later
// Run while building: embed_translations heatledger_de.ts translation_table.cpp. Makes the table
// of gui/telling/translation_table.hpp from the translators' file. What is not translated yet is
// left out, so that its English stands.
#include <boost/property_tree/ptree.hpp>
#include <boost/property_tree/xml_parser.hpp>
#include <exception>
#include <fstream>
#include <iostream>
#include <map>
#include <stdexcept>
#include <string>
#include <utility>

namespace {

using boost::property_tree::ptree;
// Context and English; ordered as the table is.
using Key = std::pair<std::string, std::string>;
using Texts = std::map<Key, std::string>;

void add(const std::string& context, const ptree& message, Texts& texts) {
  const std::string english = message.get<std::string>("source");
  const ptree& translation = message.get_child("translation");
  if (translation.count("numerusform") > 0)
    throw std::runtime_error("singular and plural are two messages here: " + english);
  if (!translation.get("<xmlattr>.type", "").empty() || translation.data().empty()) return;
  if (!texts.emplace(Key{context, english}, translation.data()).second)
    throw std::runtime_error("twice in " + context + ": " + english);
}

Texts textsOf(const std::string& path) {
  ptree document;
  boost::property_tree::read_xml(path, document);
  Texts texts;
  for (const auto& [tag, context] : document.get_child("TS")) {
    if (tag != "context") continue;
    const std::string name = context.get<std::string>("name");
    for (const auto& [inner, message] : context)
      if (inner == "message") add(name, message, texts);
  }
  return texts;
}

std::string literal(const std::string& text) {
  std::string result = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') result += '\\';
    result += c == '\n' ? std::string("\\n") : std::string(1, c);
  }
  return result + "\"sv";
}

void write(const Texts& texts, std::ostream& out) {
  out << "// SPDX-License-Identifier: GPL-3.0-or-later\n"
         "// Made by gui/translations/embed_translations.cpp.\n"
         "#include \"gui/telling/translation_table.hpp\"\n\n"
         "namespace gui::telling {\n"
         "namespace {\n\n"
         "using namespace std::string_view_literals;\n\n"
         "constexpr Translation kGerman[] = {\n";
  for (const auto& [key, translated] : texts)
    out << "    {" << literal(key.first) << ", " << literal(key.second) << ",\n     "
        << literal(translated) << "},\n";
  out << "};\n\n"
         "}  // namespace\n\n"
         "std::span<const Translation> germanTranslations() { return kGerman; }\n\n"
         "}  // namespace gui::telling\n";
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3) {
    std::cerr << "embed_translations TRANSLATIONS.ts TABLE.cpp\n";
    return 2;
  }
  try {
    const Texts texts = textsOf(argv[1]);
    std::ofstream out(argv[2], std::ios::binary);
    write(texts, out);
    if (!out.flush()) throw std::runtime_error(std::string("cannot write ") + argv[2]);
    return 0;
  } catch (const std::exception& problem) {
    std::cerr << argv[1] << ": " << problem.what() << '\n';
    return 1;
  }
}
