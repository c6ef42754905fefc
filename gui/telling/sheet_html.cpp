// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/telling/sheet_html.hpp"

#include <string_view>
#include <vector>

#include "gui/telling/plain_text.hpp"
#include "gui/telling/sheet_fit.hpp"
#include "gui/telling/sheet_style.hpp"
#include "rigs/documents/written_files.hpp"

namespace gui::telling {
namespace {

using rigs::Told;

// Beside what no terminal shows either: what XML has no sign for, and the marks that only hint at a
// direction.
bool isUnseen(std::uint32_t point) {
  return point == 0x061c || point == 0x200e || point == 0x200f || (point & 0xfffe) == 0xfffe ||
         (0xfdd0 <= point && point <= 0xfdef);
}

std::string escaped(std::string_view text) {
  const std::string plain = plainText(text);
  std::string safe;
  for (std::string_view rest = plain; !rest.empty();) {
    const Character character = firstCharacter(rest);
    const std::string_view written = rest.substr(0, character.length);
    rest.remove_prefix(character.length);
    if (isUnseen(character.point))
      safe += '?';
    else if (written == " " && !safe.empty() && '0' <= safe.back() && safe.back() <= '9')
      safe += "&#160;";  // a number stays with its unit
    else if (written == "&")
      safe += "&amp;";
    else if (written == "<")
      safe += "&lt;";
    else if (written == ">")
      safe += "&gt;";
    else if (written == "\"")
      safe += "&quot;";
    else if (written == "'")
      safe += "&#39;";
    else
      safe += written;
  }
  return safe;
}

class Html {
 public:
  Html(const Sheet& sheet, const rigs::Reader& reader) : sheet_(sheet), reader_(reader) {}

  std::string take() {
    head();
    opening();
    warnings();
    table();
    sums();
    cautions();
    out_ += "</main>\n</body>\n</html>\n";
    return std::move(out_);
  }

 private:
  std::string text(const Told& told) const { return escaped(rigs::tell(told, reader_)); }
  void element(std::string_view name, const Told& told, std::string_view attributes = {}) {
    if (told.empty()) return;
    out_.append("<").append(name).append(attributes).append(">");
    out_.append(text(told)).append("</").append(name).append(">\n");
  }

  void head() {
    const std::string language(reader_.language->code());
    const bool us = paperFor(reader_) == SheetPaperSize::Letter;
    out_ += "<!DOCTYPE html>\n";
    out_.append(rigs::kOwnSheetMark).append("\n");
    out_ += "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"" + language + "\" xml:lang=\"" +
            language + "\">\n<head>\n<meta charset=\"utf-8\"/>\n";
    out_ += "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n";
    // Whatever got through all the same would neither run nor fetch anything.
    out_ +=
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
        "style-src 'unsafe-inline'\"/>\n";
    out_ += "<meta name=\"color-scheme\" content=\"light dark\"/>\n";
    element("title", sheet_.title);
    out_.append("<style>\n@page { size: ").append(us ? "letter" : "A4").append("; }\n");
    out_.append(kSheetStyle).append("@media print { :root { font-size: ");
    out_.append(rigs::formatNumber(printSize(sheet_, reader_), {.decimals = 2}));
    out_.append("pt; } }\n</style>\n</head>\n<body>\n");
    out_ += "<main>\n";
  }

  void opening() {
    out_ += "<header>\n";
    element("h1", sheet_.title, " dir=\"auto\"");
    element("p", sheet_.rig, " class=\"rig\"");
    if (!sheet_.circuits.empty()) {
      out_ += "<p class=\"circuit\">";
      for (const Told& one : sheet_.circuits) {
        if (&one != &sheet_.circuits.front()) out_ += ' ';
        out_ += text(one);
      }
      out_ += "</p>\n";
    }
    element("p", rigs::sentences({sheet_.batch, sheet_.place}), " class=\"quiet\"");
    element("p", sheet_.origin, " class=\"quiet\"");
    out_ += "</header>\n";
  }

  void warnings() {
    if (sheet_.warnings.empty()) return;
    out_ += "<section class=\"care first\">\n";
    element("h2", Told(TOLD("Sheet", "Before anything else")));
    for (const Told& one : sheet_.warnings) element("p", one);
    out_ += "</section>\n";
  }

  void table() {
    if (sheet_.lines.empty()) return;
    out_ += "<table>\n";
    element("caption", Told(TOLD("Sheet", "The day by the clock")));
    out_ += "<thead>\n<tr>";
    // The boxes to tick need no head that is seen.
    out_ += "<th scope=\"col\"><span class=\"unseen\">" + text(Told(TOLD("Sheet", "Done"))) +
            "</span></th>";
    for (const Told& one : {Told(TOLD("Sheet", "Time")), Told(TOLD("Sheet", "What to do")),
                            Told(TOLD("Sheet", "Expected")), Told(TOLD("Sheet", "Write in"))})
      out_ += "<th scope=\"col\">" + text(one) + "</th>";
    out_ += "</tr>\n</thead>\n<tbody>\n";
    for (const SheetLine& line : sheet_.lines) row(line);
    out_ += "</tbody>\n</table>\n";
    element("p", sheet_.ofBands, " class=\"quiet\"");
  }

  void row(const SheetLine& line) {
    if (!line.newDay.empty())
      out_ += "</tbody>\n<tbody>\n<tr class=\"day\"><th colspan=\"5\" scope=\"rowgroup\">" +
              text(line.newDay) + "</th></tr>\n";
    out_ += line.isToDo ? "<tr>" : "<tr class=\"stop\">";
    out_ += "<td class=\"tick\">";
    if (line.isToDo) out_ += "<input type=\"checkbox\" aria-label=\"" + text(tickOf(line)) + "\"/>";
    out_ += "</td><th class=\"time\" scope=\"row\">" + text(line.clock());
    if (!line.band.empty()) out_ += "<span class=\"band\">" + text(line.band) + "</span>";
    out_ += "</th><td class=\"do\">";
    if (!line.action.empty()) out_ += "<b>" + text(line.action) + "</b>";
    if (!line.action.empty() && !line.more.empty()) out_ += line.isToDo ? "; " : ": ";
    out_ += text(line.more) + "</td><td class=\"expected\">";
    for (const Told& one : line.expected) out_ += "<span>" + text(one) + "</span> ";
    out_ += "</td><td class=\"boxes\">";
    for (const Told& one : line.toWrite)
      out_ += "<label>" + text(one) + "<input type=\"text\" autocomplete=\"off\" aria-label=\"" +
              text(Told(TOLD("Sheet", "%1 %2"), line.clock(), one)) + "\"/></label>";
    out_ += "</td></tr>\n";
  }

  // What a screen reader says of the box.
  static Told tickOf(const SheetLine& line) {
    const Told& what = line.action.empty() ? line.more : line.action;
    return Told(TOLD("Sheet", "%1 done: %2"), line.clock(), what);
  }

  void sums() {
    if (sheet_.sums.empty()) return;
    out_ += "<dl>\n";
    for (const SheetSum& one : sheet_.sums)
      out_ += "<div><dt>" + text(one.label) + "</dt><dd>" + text(one.figure) + "</dd></div>\n";
    out_ += "</dl>\n";
  }

  void cautions() {
    out_ += "<section class=\"care\">\n";
    element("h2", sheet_.danger);
    out_ += "<ul>\n";
    for (const Told& one : sheet_.cautions) element("li", one);
    out_ += "</ul>\n</section>\n";
  }

  const Sheet& sheet_;
  const rigs::Reader& reader_;
  std::string out_;
};

}  // namespace

std::string sheetHtml(const Sheet& sheet, const rigs::Reader& reader) {
  return Html(sheet, reader).take();
}

}  // namespace gui::telling
