# What is installed where, and the Debian package: cmake --build --preset release && cpack --config
# build/release/CPackConfig.cmake (docs/packages.md).
include(GNUInstallDirs)
set(CMAKE_SKIP_INSTALL_ALL_DEPENDENCY ON) # packing does not build the tests
set(package ${CMAKE_CURRENT_LIST_DIR})

install(TARGETS undercowl undercowlctl RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
# Where platform/plugins looks for them: beside the programs, whatever the machine calls its libraries.
if(NOT UNDERCOWL_ONE_PIECE)
    get_property(plugins GLOBAL PROPERTY UNDERCOWL_PLUGINS)
    foreach(name IN LISTS plugins)
        install(TARGETS undercowl_${name}_plugin LIBRARY DESTINATION lib/undercowl)
    endforeach()
endif()
install(DIRECTORY ${PROJECT_SOURCE_DIR}/assets/demo/ DESTINATION ${CMAKE_INSTALL_DATADIR}/undercowl/demo)
install(FILES ${package}/org.undercowl.Undercowl.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${package}/org.undercowl.Undercowl.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${package}/undercowl.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
foreach(size 48 128 256)
    install(FILES ${package}/undercowl-${size}.png RENAME undercowl.png
            DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/${size}x${size}/apps)
endforeach()
install(FILES ${package}/undercowlctl.bash RENAME undercowlctl
        DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions)

# Debian wants these compressed, without the time of packing.
function(undercowl_compressed FILE DESTINATION NAME)
    set(made ${CMAKE_BINARY_DIR}/package/${NAME}.gz)
    add_custom_command(OUTPUT ${made} COMMAND gzip -9nc ${package}/${FILE} > ${made} DEPENDS ${package}/${FILE} VERBATIM)
    list(APPEND compressed ${made})
    set(compressed ${compressed} PARENT_SCOPE)
    install(FILES ${made} DESTINATION ${DESTINATION})
endfunction()
file(MAKE_DIRECTORY ${CMAKE_BINARY_DIR}/package)
undercowl_compressed(undercowl.1 ${CMAKE_INSTALL_MANDIR}/man1 undercowl.1)
undercowl_compressed(undercowlctl.1 ${CMAKE_INSTALL_MANDIR}/man1 undercowlctl.1)
undercowl_compressed(changelog ${CMAKE_INSTALL_DATADIR}/doc/undercowl changelog)
add_custom_target(undercowl_package_texts ALL DEPENDS ${compressed})

# The copyright file holds both licences, each line set in as its format wants it.
function(undercowl_licence FILE VARIABLE)
    file(READ ${FILE} text)
    string(STRIP "${text}" text)
    string(REGEX REPLACE "\n\n" "\n.\n" text "${text}")
    string(REGEX REPLACE "\n\n" "\n.\n" text "${text}")
    string(REPLACE "\n" "\n " text " ${text}")
    set(${VARIABLE} "${text}" PARENT_SCOPE)
endfunction()
undercowl_licence(${PROJECT_SOURCE_DIR}/LICENSE LICENSE_TEXT)
undercowl_licence(${PROJECT_SOURCE_DIR}/assets/fonts/OFL.txt FONT_LICENSE_TEXT)
configure_file(${package}/copyright ${CMAKE_BINARY_DIR}/package/copyright @ONLY)
install(FILES ${CMAKE_BINARY_DIR}/package/copyright DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/undercowl)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME undercowl)
set(CPACK_PACKAGE_VENDOR Undercowl)
set(CPACK_PACKAGE_CONTACT "Undercowl contributors <undercowl@example.org>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "memory of a mechanic who strips and refits small machines")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
    "Carries a job on a scooter or small motorcycle from taking in to handing over:
findings, strip steps with photos, bags and hardware, wiring, readings with
verdicts, and the record for the owner. Works on a touch screen, without a
network.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_RELEASE "")
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
if(CMAKE_SYSTEM_PROCESSOR STREQUAL aarch64)
    set(CPACK_DEBIAN_PACKAGE_ARCHITECTURE arm64)
endif()
# What is loaded by name, which dpkg-shlibdeps cannot see.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "qml6-module-qtqml, qml6-module-qtqml-models, qml6-module-qtqml-workerscript, qml6-module-qtquick, qml6-module-qtquick-templates, qml6-module-qtquick-layouts, qml6-module-qtquick-window, pocketsphinx-en-us, qt6-qpa-plugins")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-speech-flite-plugin, gstreamer1.0-plugins-base, gstreamer1.0-plugins-good")
include(CPack)
