# SPDX-License-Identifier: GPL-3.0-or-later
include(GNUInstallDirs)
install(TARGETS bwright blockwright RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
