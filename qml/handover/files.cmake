undercowl_screen_files(
    QML CostPage.qml CostSum.qml HandOverPage.qml RecordView.qml SignaturePage.qml
    SOURCES costview.cpp costview.h signaturepad.cpp signaturepad.h signatureview.cpp signatureview.h
            handoverview.cpp handoverview.h recordwords.cpp recordwords.h)
