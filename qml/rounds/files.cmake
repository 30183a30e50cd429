undercowl_screen_files(
    QML AsFoundPage.qml CheckWalkBody.qml FunctionsPage.qml RoundListPage.qml RoundListsPage.qml RoundPage.qml RoundsPage.qml
    SOURCES checkwalk.cpp checkwalk.h functionsview.cpp functionsview.h roundlistsview.cpp roundlistsview.h roundsview.cpp roundsview.h
            roundview.cpp roundview.h viewsview.cpp viewsview.h)
