undercowl_screen_files(QML BandPlot.qml CurvePlot.qml LimitsEntry.qml MeasurePage.qml ReadingRow.qml ReadingsPage.qml
    SOURCES band.cpp band.h curve.cpp curve.h measureview.cpp measureview.h)
