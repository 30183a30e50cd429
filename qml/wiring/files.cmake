undercowl_screen_files(
    QML
        CarryPage.qml GatheringActions.qml GatheringForm.qml GatheringMap.qml GatheringPage.qml PlaceDetails.qml PlacePage.qml PlaceRow.qml
        TwinsPanel.qml WiringPage.qml
    SOURCES
        carryview.cpp carryview.h gatherings.cpp gatherings.h gatheringview.cpp gatheringview.h heardwire.cpp placekeys.h placeview.cpp placeview.h rowjson.cpp
        tracedpath.cpp tracedpath.h wirerows.cpp wirerows.h words.cpp words.h)
# Reading photos needs the reader of wires.
if(TARGET undercowl::sight)
    undercowl_screen_files(
        QML StrokeActions.qml StrokePage.qml StrokePhoto.qml StrokeRows.qml StrokeWire.qml StrokeFinding.qml WireLoupe.qml WireSteps.qml
        SOURCES photoreader.cpp photoreader.h strokefind.cpp strokejournal.cpp strokerows.cpp strokeview.cpp strokeview.h)
endif()
