undercowl_screen_files(
    QML BackupPage.qml
    SOURCES backupview.cpp backupview.h rollingcopy.cpp rollingcopy.h)
