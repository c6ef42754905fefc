# SPDX-License-Identifier: GPL-3.0-or-later
# The second language and the icon become part of the window. lrelease is found by name: Qt's own
# CMake package for it would bring the whole set of its development tools along.
# After changing texts, in the project's folder:
#   lupdate -no-obsolete -locations none -I . gui -ts gui/translations/heatledger_de.ts
#   lupdate -no-obsolete -locations none -pluralonly -I . gui -ts gui/translations/heatledger_en.ts
# then translate what it says is new.
find_program(LRELEASE NAMES lrelease PATHS /usr/lib/qt6/bin NO_DEFAULT_PATH)
find_program(LRELEASE NAMES lrelease6 lrelease-qt6 lrelease REQUIRED)

set(TRANSLATIONS ${PROJECT_SOURCE_DIR}/gui/translations)
# English stands in the sources; its file only knows singular and plural.
set(COMPILED)
foreach(language de en)
  set(compiled ${CMAKE_CURRENT_BINARY_DIR}/heatledger_${language}.qm)
  add_custom_command(
    OUTPUT ${compiled}
    COMMAND ${LRELEASE} -silent ${TRANSLATIONS}/heatledger_${language}.ts -qm ${compiled}
    DEPENDS ${TRANSLATIONS}/heatledger_${language}.ts
    VERBATIM)
  set_source_files_properties(${compiled} PROPERTIES QT_RESOURCE_ALIAS heatledger_${language}.qm)
  list(APPEND COMPILED ${compiled})
endforeach()
qt_add_resources(window "translations" PREFIX "/i18n" FILES ${COMPILED})

set(ICON ${PROJECT_SOURCE_DIR}/gui/packaging/heatledger.svg)
set_source_files_properties(${ICON} PROPERTIES QT_RESOURCE_ALIAS heatledger.svg)
qt_add_resources(window "icon" PREFIX "/" FILES ${ICON})
