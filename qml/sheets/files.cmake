undercowl_screen_files(QML SheetsPage.qml SOURCES sheetsview.cpp sheetsview.h)
