undercowl_screen_files(
    QML DuePage.qml ProvePage.qml RoadPage.qml SecondEyesPage.qml
    SOURCES dueview.cpp dueview.h proveview.cpp proveview.h roadview.cpp roadview.h)
