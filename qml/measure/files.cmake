undercowl_screen_files(QML LimitsEntry.qml MeasurePage.qml ReadingRow.qml ReadingsPage.qml SOURCES measureview.cpp measureview.h)
