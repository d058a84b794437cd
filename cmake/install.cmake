# SPDX-License-Identifier: GPL-3.0-or-later
# What `cmake --install` puts where. The Shelf and the demonstration gym are inside the programs.
include(GNUInstallDirs)
set(BW_APP_ID io.github.blockwright.Blockwright) # desktop id, AppStream id and icon name are one
set(BW_DOCDIR ${CMAKE_INSTALL_DATADIR}/doc/blockwright)
set(resources ${PROJECT_SOURCE_DIR}/resources)

install(TARGETS bwright blockwright RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES ${resources}/man/bwright.1 ${resources}/man/blockwright.1
        DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES ${resources}/completion/bwright.bash
        DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions RENAME bwright)
install(FILES ${resources}/completion/bwright.zsh
        DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/site-functions RENAME _bwright)
install(FILES ${resources}/desktop/${BW_APP_ID}.desktop
        DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${resources}/desktop/${BW_APP_ID}.metainfo.xml
        DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${resources}/desktop/${BW_APP_ID}.mime.xml
        DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages RENAME ${BW_APP_ID}.xml)
install(FILES ${resources}/icons/${BW_APP_ID}.svg
        DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES ${PROJECT_SOURCE_DIR}/README.md ${PROJECT_SOURCE_DIR}/CHANGELOG.md
              ${PROJECT_SOURCE_DIR}/LICENSE DESTINATION ${BW_DOCDIR})
install(DIRECTORY ${PROJECT_SOURCE_DIR}/docs/ DESTINATION ${BW_DOCDIR}/docs)
