undercowl_screen_files(
    QML JobMemos.qml MemoMeter.qml MemoPage.qml MemoRow.qml RecordActions.qml SpokenMemo.qml Waveform.qml
    SOURCES jobmemolist.cpp jobmemolist.h memoforeign.h memoplayback.cpp memoplayback.h memorecording.cpp memorecording.h
            pendingmemos.cpp pendingmemos.h)
