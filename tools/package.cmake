# What `cmake --install` puts where, and the Debian package made of it: cpack --config build/native/CPackConfig.cmake
include(GNUInstallDirs)
set(PACKAGE ${CMAKE_SOURCE_DIR}/tools/package)
install(TARGETS hemline hemline-desk hemline-cli)
install(DIRECTORY assets DESTINATION ${CMAKE_INSTALL_DATADIR}/hemline PATTERN README.md EXCLUDE)
install(FILES ${PACKAGE}/hemline.desktop ${PACKAGE}/hemline-desk.desktop
        DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)

# The icon is drawn, as for the site: one drawing in every size that a desktop asks for.
add_executable(draw_icon field/shell/web/draw_icon.cpp)
target_compile_features(draw_icon PRIVATE cxx_std_20)
target_include_directories(draw_icon SYSTEM PRIVATE /usr/include/stb)
set(ICONS)
foreach(side 48 64 128 256 512)
    set(icon ${CMAKE_BINARY_DIR}/icons/${side}.png)
    add_custom_command(OUTPUT ${icon} COMMAND ${CMAKE_COMMAND} -E make_directory ${CMAKE_BINARY_DIR}/icons
        COMMAND draw_icon ${side} ${icon})
    install(FILES ${icon} DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/${side}x${side}/apps RENAME hemline.png)
    list(APPEND ICONS ${icon})
endforeach()
add_custom_target(icons ALL DEPENDS ${ICONS})

# Pages for `man`, what has changed, and the copyright. Debian wants pages and changes packed, without a date
# inside.
set(PAGES ${CMAKE_BINARY_DIR}/pages)
file(MAKE_DIRECTORY ${PAGES})
foreach(page hemline hemline-desk hemline-cli)
    add_custom_command(OUTPUT ${PAGES}/${page}.1.gz DEPENDS ${PACKAGE}/${page}.1
        COMMAND gzip -9nc ${PACKAGE}/${page}.1 > ${PAGES}/${page}.1.gz VERBATIM)
    install(FILES ${PAGES}/${page}.1.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
    list(APPEND PAGES_MADE ${PAGES}/${page}.1.gz)
endforeach()
foreach(changes CHANGELOG.md debian)
    if(changes STREQUAL debian)
        set(from ${PACKAGE}/changelog)
        set(to changelog.gz)
    else()
        set(from ${CMAKE_SOURCE_DIR}/docs/CHANGELOG.md)
        set(to NEWS.md.gz)
    endif()
    add_custom_command(OUTPUT ${PAGES}/${to} DEPENDS ${from} COMMAND gzip -9nc ${from} > ${PAGES}/${to} VERBATIM)
    install(FILES ${PAGES}/${to} DESTINATION ${CMAKE_INSTALL_DOCDIR})
    list(APPEND PAGES_MADE ${PAGES}/${to})
endforeach()
add_custom_target(pages ALL DEPENDS ${PAGES_MADE})
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS docs/notices.md)
file(READ docs/notices.md PARTS)
string(REGEX REPLACE "^.*<!-- From here on written by tools/notices write. -->\n" "" PARTS "${PARTS}")
# Debian's systems carry the license itself, and want it named in place of said again.
file(READ assets/notices/apache.txt apache)
string(REPLACE "${apache}" "Apache License, version 2.0: /usr/share/common-licenses/Apache-2.0\n" PARTS "${PARTS}")
configure_file(${PACKAGE}/copyright.in ${PAGES}/copyright @ONLY)
install(FILES ${PAGES}/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES ${PACKAGE}/lintian-overrides DESTINATION ${CMAKE_INSTALL_DATADIR}/lintian/overrides RENAME hemline)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME hemline)
set(CPACK_PACKAGE_CONTACT "Hemline's owner <owner@hemline.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "trim of a standing-seam metal roof, from the tape to the edge")
set(CPACK_PACKAGE_DESCRIPTION
"Walks the installer, the foreman and the apprentice along a roof's edge:
takes tape readings and questions those that cannot be right, divides
the run into pieces, finds how many sticks of stock that takes, shows
each cut with every mark, and keeps a record on this machine alone.
.
It holds a program for tablets, one for mouse and keyboard, and one for
the command line.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_PACKAGE_DIRECTORY ${CMAKE_BINARY_DIR})
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE
    WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS fonts-b612)
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS libgl1-mesa-dri)
include(CPack)
