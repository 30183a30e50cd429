undercowl_screen_files(
    QML LabelsPage.qml ScanPage.qml
    SOURCES labelsview.cpp labelsview.h scanview.cpp scanview.h)
