// SPDX-License-Identifier: GPL-3.0-or-later
// How a sheet looks in a browser: paper, ink and hairlines. Text stands at 4.5:1 or more on its
// paper, in light and in dark (WCAG 2.1, 1.4.3). No sign that XML would read as markup.
#pragma once

#include <string_view>

namespace gui::telling {

inline constexpr std::string_view kSheetStyle = R"css(
@page { margin: 11mm 13mm; }
:root { --paper: #fbfaf7; --field: #ffffff; --ink: #1b1a18; --quiet: #66625b; --line: #d9d5cb;
  --accent: #8a2b0e; color-scheme: light dark; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #171715; --field: #1e1d1b; --ink: #f1efea; --quiet: #a7a39b; --line: #3a3834;
    --accent: #ff9a6b; }
}
* { box-sizing: border-box; margin: 0; }
body { background: var(--paper); color: var(--ink); padding: 1rem; overflow-wrap: anywhere;
  font: 1rem/1.4 system-ui, "Noto Sans", "DejaVu Sans", sans-serif;
  font-variant-numeric: tabular-nums lining-nums; }
main { max-width: 52rem; margin: 0 auto; }
h1 { font-size: 1.55rem; line-height: 1.25; }
h2 { font-size: 1rem; }
header p { margin-top: .3rem; }
.quiet { color: var(--quiet); font-size: .86rem; }
table { border-collapse: collapse; width: 100%; margin-top: .7rem; border-top: 2px solid var(--ink); }
caption, .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden;
  clip-path: inset(50%); }
th { text-align: left; font-weight: 600; }
thead th { font-size: .8rem; font-weight: 400; color: var(--quiet); padding: .2rem .6rem .1rem 0; }
thead th:nth-child(n + 4) { text-align: right; }
thead th:last-child { padding-right: 0; }
tbody td, tbody th { padding: .4rem .6rem .4rem 0; border-bottom: 1px solid var(--line);
  vertical-align: top; }
tr { break-inside: avoid; }
.day th { padding-bottom: .1rem; color: var(--quiet); font-size: .86rem; font-weight: 400; }
.tick { width: 1.7rem; }
.tick input { width: 1.05rem; height: 1.05rem; margin-top: .25rem; accent-color: var(--accent); }
.time { width: 5.6rem; font-size: 1.2rem; line-height: 1.25; white-space: nowrap; }
.band { display: block; font-size: .72rem; font-weight: 400; color: var(--quiet); }
.do b { font-weight: 700; }
.expected { color: var(--quiet); text-align: right; width: 9.5rem; }
.expected span { white-space: nowrap; }
.boxes { width: 16.2rem; padding-right: 0; text-align: right; }
label { display: inline-block; vertical-align: top; width: 4.9rem; height: 2.3rem;
  margin: 0 0 .25rem .4rem; padding: .05rem .3rem; border: 1px solid var(--quiet); border-radius: 2px; text-align: left;
  font-size: .7rem; line-height: 1.2; color: var(--quiet); background: var(--field);
  overflow: hidden; white-space: nowrap; }
label input { display: block; width: 100%; border: 0; padding: 0; font: inherit; font-size: .95rem;
  color: var(--ink); background: transparent; outline-offset: 1px; }
:focus-visible { outline: 2px solid var(--accent); }
.stop b { color: var(--accent); }
dl { display: flex; flex-wrap: wrap; gap: .3rem 2rem; padding: .6rem 0; break-inside: avoid;
  border-bottom: 3px double var(--ink); }
dl div { display: flex; flex-direction: column-reverse; justify-content: flex-end; }
dd { font-size: 1.15rem; font-weight: 700; }
dt { color: var(--quiet); font-size: .8rem; }
.care { border: 1.5px solid var(--ink); padding: .5rem .7rem; margin-top: .8rem; break-inside: avoid;
  font-size: .86rem; }
.care ul { padding-left: 1.1rem; columns: 2; column-gap: 1.6rem; }
.care li { break-inside: avoid; }
.first { border-color: var(--accent); border-width: 2px; font-size: 1rem; }
.first h2 { color: var(--accent); }
@media screen and (max-width: 46rem) {
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  table, tbody { display: block; }
  tr { display: grid; grid-template-columns: 2.2rem 1fr auto; padding: .5rem 0;
    border-bottom: 1px solid var(--line); }
  tbody td, tbody th { border: 0; padding: 0; width: auto; }
  .day th { grid-column: 1 / -1; }
  .tick input { width: 1.5rem; height: 1.5rem; margin-top: .1rem; }
  .time { grid-column: 2; }
  .band { display: inline; margin-left: .5rem; font-size: .8rem; }
  .tick, .time, .expected, .boxes { width: auto; }
  .expected { grid-column: 3; grid-row: 1; text-align: right; }
  .expected span { display: block; }
  .do { grid-column: 2 / -1; grid-row: 2; }
  .boxes { grid-column: 2 / -1; grid-row: 3; text-align: left; padding-top: .3rem; }
  label { margin: 0 .4rem .3rem 0; width: 6.2rem; height: 2.9rem; font-size: .8rem; }
  label input { font-size: 1.05rem; height: 1.6rem; }
  .care ul { columns: 1; }
}
@media print {
  :root { --paper: #ffffff; --field: #ffffff; --ink: #000000; --quiet: #55514a; --line: #b9b5ab;
    --accent: #000000; color-scheme: light; }
  body { padding: 0; line-height: 1.28; }
  main { max-width: none; }
  table { margin-top: .5rem; }
  tbody td, tbody th { padding: .3rem .6rem .25rem 0; }
  .care { font-size: .82rem; }
  .first { font-size: 1rem; }
}
)css";

}  // namespace gui::telling
