undercowl_screen_files(
    QML TalkAloud.qml TalkBar.qml TalkHeard.qml TalkTool.qml
    SOURCES liftear.cpp liftear.h listenerforeign.h saidwords.cpp saidwords.h speakerforeign.h voice.cpp voice.h)
