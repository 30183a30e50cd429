# The screens and their view models: one QML module, URI Undercowl. Each folder lists its files in FOLDER/files.cmake
# by undercowl_screen_files(QML a.qml ... SOURCES b.cpp b.h ...); the folder's files lie flat in the module, so that a
# screen uses another one by its name alone.
set(UNDERCOWL_SCREEN_QML "")
set(UNDERCOWL_SCREEN_SOURCES "")
set(UNDERCOWL_SCREEN_FOLDERS "")

macro(undercowl_screen_files)
    cmake_parse_arguments(FILES "" "" "QML;SOURCES" ${ARGN})
    foreach(file IN LISTS FILES_QML)
        list(APPEND UNDERCOWL_SCREEN_QML ${folder}/${file})
        set_source_files_properties(${folder}/${file} PROPERTIES QT_RESOURCE_ALIAS ${file})
    endforeach()
    foreach(file IN LISTS FILES_SOURCES)
        list(APPEND UNDERCOWL_SCREEN_SOURCES ${folder}/${file})
    endforeach()
    list(APPEND UNDERCOWL_SCREEN_FOLDERS ${CMAKE_CURRENT_SOURCE_DIR}/${folder})
endmacro()

foreach(folder shell talk memo backup takein lookover rounds prove knowledge scan sheets parts find handover strip wiring refit measure calc)
    if(EXISTS ${CMAKE_CURRENT_SOURCE_DIR}/${folder}/files.cmake)
        include(${folder}/files.cmake)
    endif()
endforeach()

undercowl_strict_sources(${UNDERCOWL_SCREEN_SOURCES})
# What a device offers stands behind interfaces in platform; only these headers are known here.
qt_add_qml_module(undercowl_screens STATIC
    URI Undercowl
    VERSION 1.0
    RESOURCE_PREFIX /qt/qml
    OUTPUT_DIRECTORY ${CMAKE_BINARY_DIR}/qml/Undercowl
    DEPENDENCIES QtQuick
    IMPORTS Undercowl.Style
    IMPORT_PATH ${CMAKE_BINARY_DIR}/qml
    QML_FILES ${UNDERCOWL_SCREEN_QML}
    SOURCES ${UNDERCOWL_SCREEN_SOURCES})
# Type registration includes each header by its bare name.
target_include_directories(undercowl_screens PUBLIC ${PROJECT_SOURCE_DIR} PRIVATE ${UNDERCOWL_SCREEN_FOLDERS})
target_link_libraries(undercowl_screens PUBLIC Qt6::Quick undercowl_style undercowl::language undercowl::job undercowl::journal undercowl::store undercowl::handover
    undercowl::camera undercowl::eye undercowl::level undercowl::listener undercowl::memo undercowl::reading undercowl::records undercowl::scanner undercowl::screen undercowl::signals undercowl::sharing undercowl::speaker undercowl::talk undercowl::units
    undercowl::verdict undercowl::trade)
# Half of the time would go into reading the same headers again. Each file includes what it uses all the same. GCC takes no precompiled header for a file that is compiled with -Wpedantic when it was not, and at -O3 it
# then sees overflows in std::string where there are none.
target_precompile_headers(undercowl_screens PRIVATE <algorithm> <array> <cmath> <functional> <map> <memory> <optional> <set>
    <span> <string> <string_view> <tl/expected.hpp> <variant> <vector>
    <QCoreApplication> <QDateTime> <QObject> <QPointer> <QQmlParserStatus> <QString> <QStringList> <QUrl> <QVariantList>
    <QVariantMap> <QtQml/qqml.h> <QtQml/qqmlregistration.h>)
target_compile_options(undercowl_screens PRIVATE -Wpedantic $<$<CONFIG:Release>:-O2>)
cmake_language(DEFER CALL undercowl_join_screens undercowl_screens)
