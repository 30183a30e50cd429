undercowl_screen_files(
    QML FindPage.qml
    SOURCES finder.cpp finder.h)
