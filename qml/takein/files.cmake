undercowl_screen_files(
    QML TakeInPage.qml TakeInMachine.qml TakeInOwner.qml TakeInReason.qml
    SOURCES takein.cpp takein.h takeinreturn.cpp)
