undercowl_screen_files(
    QML CostPage.qml CostSum.qml FilesWritten.qml HandOverPage.qml RecordView.qml SignaturePage.qml
    SOURCES costview.cpp costview.h devicefiles.cpp devicefiles.h signaturepad.cpp signaturepad.h signatureview.cpp signatureview.h
            handoverview.cpp handoverview.h recordwords.cpp recordwords.h)
