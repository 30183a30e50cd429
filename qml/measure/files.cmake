undercowl_screen_files(QML BandPlot.qml CurvePlot.qml InstrumentForm.qml InstrumentPage.qml InstrumentRow.qml InstrumentsPage.qml LimitsEntry.qml
    MeasureActions.qml MeasureMore.qml MeasurePage.qml MeasureValue.qml MeasureWorking.qml ReadingRow.qml ReadingsPage.qml
    SOURCES band.cpp band.h course.cpp course.h curve.cpp curve.h heardreading.cpp heardreading.h instrumentsview.cpp instrumentsview.h measuretarget.cpp measureview.cpp measureview.h measuring.cpp
    measuring.h)
