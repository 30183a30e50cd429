undercowl_screen_files(
    QML BackupPage.qml FileChooser.qml RestoreLists.qml RestorePage.qml
    SOURCES backupview.cpp backupview.h places.cpp places.h restoreview.cpp restoreview.h rollingcopy.cpp rollingcopy.h
            shopswitch.h)
