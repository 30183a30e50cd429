undercowl_screen_files(
    QML BagEntry.qml HardwareEntry.qml HardwarePlaces.qml StepList.qml StepsPage.qml StripActions.qml StripDetails.qml StripEntryActions.qml StripPage.qml StripPanel.qml StripTask.qml
    SOURCES stripdraft.cpp stripdraft.h stripplaces.cpp stripview.cpp stripview.h)
