undercowl_screen_files(
    QML ApprovalPage.qml FindingPage.qml FindingRow.qml LookOverPage.qml OwnersAnswer.qml RefusalPage.qml SettlePage.qml
    SOURCES findings.cpp findings.h ownersword.cpp ownersword.h settleview.cpp settleview.h)
