undercowl_screen_files(
    QML FindFilters.qml FindPage.qml
    SOURCES finder.cpp finder.h)
