undercowl_screen_files(
    QML BagEntry.qml HardwareEntry.qml StepsPage.qml StripActions.qml StripEntryActions.qml StripPage.qml StripPanel.qml StripTask.qml
    SOURCES stripdraft.cpp stripdraft.h stripview.cpp stripview.h)
