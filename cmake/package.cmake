# SPDX-License-Identifier: GPL-3.0-or-later
# The Debian package, by `cpack -G DEB` in a build folder; tools/package.sh does it all.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME blockwright)
set(CPACK_PACKAGE_VENDOR "The Blockwright contributors")
# There is no address to write to; .invalid is a name that never leads anywhere (RFC 2606).
set(CPACK_PACKAGE_CONTACT "The Blockwright contributors <contributors@blockwright.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "draft and check a month of strength classes")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"A workbench for the head coach of a small strength gym: one session that the
class repeats for a month, drafted on one sheet, timed and checked against a
rule book while you type, played person by person with the gym's kit, and
printed for the wall.

It works alone on a laptop, with no account and no network, and the gym file
is your own. It drafts a plan for a qualified coach; it does not screen,
diagnose, clear or treat anybody.

The package has the window program, blockwright, and bwright for the terminal.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE
    GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_PRE_BUILD_SCRIPTS ${PROJECT_SOURCE_DIR}/cmake/debian_files.cmake)
set(CPACK_BW_SOURCE_DIR ${PROJECT_SOURCE_DIR})

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION education)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# What is not linked: the fonts of the sheets, and the icons' drawing, which Debian 12 has in
# libqt6svg6 and 13 in a package of its own.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "fonts-dejavu-core, qt6-svg-plugins | libqt6svg6 (<< 6.7)")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-wayland, qt6-translations-l10n, shared-mime-info")
set(CPACK_DEBIAN_PACKAGE_SUGGESTS "bash-completion, zsh")
include(CPack)
