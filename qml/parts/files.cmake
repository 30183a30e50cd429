undercowl_screen_files(
    QML PartsPage.qml
    SOURCES partslist.cpp partslist.h)
