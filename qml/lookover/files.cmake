undercowl_screen_files(
    QML FindingPage.qml FindingRow.qml LookOverPage.qml
    SOURCES findings.cpp findings.h)
