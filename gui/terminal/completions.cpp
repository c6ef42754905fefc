// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/completions.hpp"

#include <string_view>
#include <vector>

#include "gui/terminal/options.hpp"
#include "gui/terminal/verbs.hpp"

namespace gui {
namespace {

constexpr std::string_view kLicense = "# SPDX-License-Identifier: GPL-3.0-or-later\n";

std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : " ") + word;
  return all;
}

std::vector<std::string> namesOf(const std::vector<OptionAbout>& options) {
  std::vector<std::string> names;
  for (const OptionAbout& one : options) names.push_back(one.option);
  return names;
}

// Within single quotes; each shell has its own other signs to guard.
std::string guarded(std::string_view text, std::string_view signs) {
  std::string all;
  for (const char c : text) {
    if (signs.find(c) != std::string_view::npos) all += '\\';
    if (c == '\'')
      all += "'\\''";
    else
      all += c;
  }
  return all;
}
std::string about(const rigs::Told& told, std::string_view signs) {
  return guarded(rigs::inEnglish(told), signs);
}

std::string topWords() {
  std::string all = "help --help --version";
  for (const Verb& verb : verbs()) all += ' ' + std::string(verb.name);
  return all;
}

// --- bash

constexpr std::string_view kBashBegin = R"(
_heatledger()
{
    local current=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
    local options= subjects= choices= files=plans
    COMPREPLY=()
)";
constexpr std::string_view kBashEnd = R"(
    if [ -n "$choices" ]; then
        COMPREPLY=($(compgen -W "$choices" -- "$current"))
        return
    fi
    if [ "$files" = none ]; then
        return
    fi
    if [ "$files" = plans ] && [[ $current == -* ]]; then
        COMPREPLY=($(compgen -W "$options --help" -- "$current"))
        return
    fi
    if [ "$files" = plans ] && [ "$COMP_CWORD" = 2 ] && [ -n "$subjects" ]; then
        COMPREPLY=($(compgen -W "$subjects" -- "$current"))
        return
    fi
    compopt -o filenames 2>/dev/null
    local IFS=$'\n'
    if [ "$files" = any ]; then
        COMPREPLY=($(compgen -f -- "$current"))
    else
        COMPREPLY=($(compgen -f -X '!*.json' -- "$current") $(compgen -d -- "$current"))
    fi
}
complete -F _heatledger heatledger
)";

std::string bash() {
  std::string text(kBashBegin);
  text += "    if [ \"$COMP_CWORD\" = 1 ]; then\n        COMPREPLY=($(compgen -W \"" + topWords() +
          "\" -- \"$current\"))\n        [ ${#COMPREPLY[@]} -gt 0 ] && return\n    fi\n";
  text += "    case ${COMP_WORDS[1]} in\n";
  for (const Verb& verb : verbs()) {
    text += "    " + std::string(verb.name) + ")\n        options='" +
            joined(namesOf(optionsOf(verb))) + "'\n";
    if (const auto subjects = subjectsOf(verb.command); !subjects.empty())
      text += "        subjects='" + joined(subjects) + "'\n";
    text += "        case $before in\n";
    for (const OptionAbout& one : optionsOf(verb)) {
      if (one.value.empty()) continue;
      text += "        " + one.option + ") ";
      text += !one.choices.empty() ? "choices='" + joined(one.choices) + "'"
              : one.isFile         ? "files=any"
                                   : "files=none";
      text += " ;;\n";
    }
    text += "        esac ;;\n";
  }
  text += "    help) [ \"$COMP_CWORD\" = 2 ] && choices='" + topWords() + "' ;;\n    esac";
  return text + std::string(kBashEnd);
}

// --- zsh

std::string zshOption(const OptionAbout& one) {
  std::string text = (one.mayRepeat ? "'*" : "'") + one.option;
  text += '[' + about(one.about, "[]:") + ']';
  if (one.value.empty()) return text + '\'';
  text += ':' + guarded(one.value, "[]:") + ':';
  if (!one.choices.empty())
    text += '(' + joined(one.choices) + ')';
  else
    text += one.isFile ? "_files" : " ";
  return text + '\'';
}

std::string zsh() {
  std::string text = "#compdef heatledger\n" + std::string(kLicense) +
                     "local -a commands options first\ncommands=(\n";
  for (const Verb& verb : verbs())
    text += "  '" + std::string(verb.name) + ':' + about(rigs::Told(verb.about), ":") + "'\n";
  text +=
      "  'help:its options, with examples'\n)\n"
      "if (( CURRENT == 2 )); then\n"
      "  _describe command commands\n  _files -g '*.json'\n  return\nfi\n"
      "first=('1:plan:_files -g \"*.json\"')\n"
      "case $words[2] in\n";
  for (const Verb& verb : verbs()) {
    text += "  " + std::string(verb.name) + ")\n    options=(\n";
    for (const OptionAbout& one : optionsOf(verb)) text += "      " + zshOption(one) + '\n';
    text += "    )\n";
    if (const auto subjects = subjectsOf(verb.command); !subjects.empty())
      text += "    first=('1:subject:(" + joined(subjects) + ")' '2:plan:_files -g \"*.json\"')\n";
    text += "    ;;\n";
  }
  text +=
      "  help) first=(\"1:command:(${commands%%:*})\") ;;\nesac\n"
      "shift words\n(( CURRENT-- ))\n_arguments -S $options $first\n";
  return text;
}

// --- fish

std::string fish() {
  std::string text(kLicense);
  text += "complete -c heatledger -f\n";
  const std::string_view quotes = "\\";
  for (const Verb& verb : verbs())
    text += "complete -c heatledger -n __fish_use_subcommand -a " + std::string(verb.name) +
            " -d '" + about(rigs::Told(verb.about), quotes) + "'\n";
  text +=
      "complete -c heatledger -n __fish_use_subcommand -a help -d 'its options, with examples'\n"
      "complete -c heatledger -n __fish_use_subcommand -l version\n";
  for (const Verb& verb : verbs()) {
    const std::string of =
        "complete -c heatledger -n '__fish_seen_subcommand_from " + std::string(verb.name) + "'";
    for (const OptionAbout& one : optionsOf(verb)) {
      text += of + " -l " + one.option.substr(2) + " -d '" + about(one.about, quotes) + "'";
      if (!one.choices.empty())
        text += " -x -a '" + joined(one.choices) + "'";
      else if (!one.value.empty())
        text += one.isFile ? " -r -F" : " -x";
      text += '\n';
    }
    if (const auto subjects = subjectsOf(verb.command); !subjects.empty())
      text += of + " -a '" + joined(subjects) + "'\n";
    if (verb.command != Command::List && verb.command != Command::Schema)
      text += of + " -k -a '(__fish_complete_suffix .json)'\n";
  }
  return text;
}

}  // namespace

std::string completionsFor(Shell shell) {
  switch (shell) {
    case Shell::Bash:
      return std::string(kLicense) + bash();
    case Shell::Zsh:
      return zsh();
    case Shell::Fish:
      return fish();
  }
  return {};
}

}  // namespace gui
