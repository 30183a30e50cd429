undercowl_screen_files(
    QML
        AfterwardsPage.qml NeedsLines.qml NeedsPage.qml NeedsPanel.qml
        ReadAloud.qml ReadBackActions.qml ReadBackChoice.qml ReadBackEnd.qml ReadBackMismatch.qml ReadBackPage.qml ReadBackWire.qml RefitPage.qml
        RefitStepsPage.qml
    SOURCES afterwardsview.cpp afterwardsview.h listenerforeign.h needsview.cpp needsview.h readbackear.cpp readbackear.h readbackview.cpp readbackview.h refitview.cpp refitview.h speakerforeign.h voice.cpp voice.h)
# Comparing photos needs the reader of wires.
if(TARGET undercowl::sight)
    undercowl_screen_files(QML AlignedPhoto.qml ComparePage.qml SOURCES comparealign.cpp compareview.cpp compareview.h)
endif()
