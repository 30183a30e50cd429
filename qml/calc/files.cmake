undercowl_screen_files(QML CalcEntry.qml CalcInputRow.qml CalcListPage.qml CalcMore.qml CalcPage.qml CalcResults.qml
    SOURCES calcjob.cpp calclist.cpp calclist.h calcreading.cpp calcreading.h calcview.cpp calcview.h calcwords.h)
