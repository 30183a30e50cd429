undercowl_screen_files(
    QML
        AfterwardsPage.qml LineBackPage.qml NeedsLines.qml NeedsPage.qml NeedsPanel.qml
        ReadBackActions.qml ReadBackBefore.qml ReadBackChoice.qml ReadBackEnd.qml ReadBackMismatch.qml ReadBackPage.qml ReadBackWire.qml RefitActions.qml RefitPage.qml
        RefitStepsPage.qml
    SOURCES afterwardsview.cpp afterwardsview.h linebackview.cpp linebackview.h needsview.cpp needsview.h readbackview.cpp readbackview.h readbackwalk.cpp readbackwalk.h refitview.cpp refitview.h)
# Comparing photos needs the reader of wires.
if(TARGET undercowl::sight)
    undercowl_screen_files(QML AlignedPhoto.qml ComparePage.qml SOURCES comparealign.cpp compareview.cpp compareview.h)
endif()
