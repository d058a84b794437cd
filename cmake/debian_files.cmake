# SPDX-License-Identifier: GPL-3.0-or-later
# Run by CPack on the installed tree before it is packed: what Debian wants otherwise than
# `cmake --install` leaves it. Nothing in it depends on the day of the build.
set(tree ${CPACK_TEMPORARY_INSTALL_DIRECTORY}/usr/share)
if(NOT IS_DIRECTORY ${tree}/doc/blockwright)
  message(FATAL_ERROR "no documents in ${tree}")
endif()
set(docs ${tree}/doc/blockwright)

function(bw_zip file)
  execute_process(COMMAND gzip -9nf ${file} COMMAND_ERROR_IS_FATAL ANY)
endfunction()

file(GLOB manuals ${tree}/man/man1/*.1)
foreach(manual IN LISTS manuals)
  bw_zip(${manual})
endforeach()

# Debian's zsh looks for what packages bring in a folder of its own.
file(MAKE_DIRECTORY ${tree}/zsh/vendor-completions)
file(RENAME ${tree}/zsh/site-functions/_bwright ${tree}/zsh/vendor-completions/_bwright)
file(REMOVE_RECURSE ${tree}/zsh/site-functions)

# The licence is in /usr/share/common-licenses, where `copyright` points to. Parts of two libraries
# that are headers only are in the programs: their notices come from the packages they came with.
file(REMOVE ${docs}/LICENSE)
file(COPY_FILE ${CPACK_BW_SOURCE_DIR}/resources/debian/copyright ${docs}/copyright)
foreach(package nlohmann-json3-dev libcli11-dev)
  file(COPY_FILE /usr/share/doc/${package}/copyright ${docs}/copyright.${package})
endforeach()

# Debian's own form of the list of changes.
file(READ ${CPACK_BW_SOURCE_DIR}/resources/desktop/io.github.blockwright.Blockwright.metainfo.xml metainfo)
string(REGEX MATCH "date=\"([0-9-]+)\"" ignored "${metainfo}")
execute_process(COMMAND date -u -d ${CMAKE_MATCH_1} "+%a, %d %b %Y 00:00:00 +0000"
                OUTPUT_VARIABLE day OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
file(WRITE ${docs}/changelog
"${CPACK_PACKAGE_NAME} (${CPACK_PACKAGE_VERSION}) unstable; urgency=medium

  * What changed for a coach stands in CHANGELOG.md beside this file.

 -- ${CPACK_PACKAGE_CONTACT}  ${day}
")
bw_zip(${docs}/changelog)
