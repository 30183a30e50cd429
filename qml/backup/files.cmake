undercowl_screen_files(
    QML BackupPage.qml FileChooser.qml RestoreLists.qml RestorePage.qml
    SOURCES backupview.cpp backupview.h found.cpp found.h places.cpp places.h restoreview.cpp restoreview.h rollingcopy.cpp rollingcopy.h
            shopswitch.h)
