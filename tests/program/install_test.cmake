# SPDX-License-Identifier: GPL-3.0-or-later
# cmake -DBUILD=... -P install_test.cmake: installs into an empty folder and looks what is there.
set(ROOT ${BUILD}/install_test)
file(REMOVE_RECURSE ${ROOT})
execute_process(COMMAND ${CMAKE_COMMAND} --install ${BUILD} --prefix ${ROOT}
                OUTPUT_QUIET COMMAND_ERROR_IS_FATAL ANY)
foreach(file bin/heatledger libexec/heatledger/heatledger-desktop share/applications/heatledger.desktop
             share/icons/hicolor/scalable/apps/heatledger.svg share/man/man1/heatledger.1
             share/bash-completion/completions/heatledger share/zsh/vendor-completions/_heatledger
             share/fish/vendor_completions.d/heatledger.fish share/metainfo/local.heatledger.heatledger.metainfo.xml)
  if(NOT EXISTS ${ROOT}/${file})
    message(FATAL_ERROR "${file} was not installed")
  endif()
endforeach()
execute_process(COMMAND ${ROOT}/bin/heatledger --version
                OUTPUT_VARIABLE said COMMAND_ERROR_IS_FATAL ANY)
if(NOT said MATCHES "^heatledger [0-9]")
  message(FATAL_ERROR "the installed program says: ${said}")
endif()
# The half that draws is found from where it was installed.
execute_process(COMMAND ${ROOT}/bin/heatledger picture how-long --to ${ROOT}/day.csv
                OUTPUT_QUIET COMMAND_ERROR_IS_FATAL ANY)
if(NOT EXISTS ${ROOT}/day.csv)
  message(FATAL_ERROR "the installed program drew nothing")
endif()
file(REMOVE_RECURSE ${ROOT})
