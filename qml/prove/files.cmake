undercowl_screen_files(
    QML DuePage.qml ProofsPage.qml ProvePage.qml RoadPage.qml SecondEyesPage.qml
    SOURCES dueview.cpp dueview.h proofsview.cpp proofsview.h proveview.cpp proveview.h roadview.cpp roadview.h)
