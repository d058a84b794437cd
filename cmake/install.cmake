# SPDX-License-Identifier: GPL-3.0-or-later
# What `cmake --install` puts where. The Shelf and the demonstration gym are inside the programs.
include(GNUInstallDirs)
set(BW_APP_ID io.github.blockwright.Blockwright) # desktop id, AppStream id and icon name are one
set(resources ${PROJECT_SOURCE_DIR}/resources)

install(TARGETS bwright blockwright RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES ${resources}/desktop/${BW_APP_ID}.desktop
        DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${resources}/desktop/${BW_APP_ID}.metainfo.xml
        DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${resources}/desktop/${BW_APP_ID}.mime.xml
        DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages RENAME ${BW_APP_ID}.xml)
install(FILES ${resources}/icons/${BW_APP_ID}.svg
        DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES ${PROJECT_SOURCE_DIR}/README.md ${PROJECT_SOURCE_DIR}/CHANGELOG.md
        DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(DIRECTORY ${PROJECT_SOURCE_DIR}/docs/ DESTINATION ${CMAKE_INSTALL_DOCDIR}/docs)
