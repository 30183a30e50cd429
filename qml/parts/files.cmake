undercowl_screen_files(
    QML ConsumablesPage.qml OrdersPage.qml PartPage.qml PartsPage.qml
    SOURCES consumablesview.cpp consumablesview.h ordersview.cpp ordersview.h partform.cpp partform.h partslist.cpp partslist.h)
