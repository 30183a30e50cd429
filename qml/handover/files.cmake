undercowl_screen_files(
    QML HandOverPage.qml RecordView.qml
    SOURCES handoverview.cpp handoverview.h recordwords.cpp recordwords.h)
