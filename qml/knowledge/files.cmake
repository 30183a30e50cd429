undercowl_screen_files(
    QML KnowledgePage.qml ModelsPage.qml
    SOURCES knowledgeview.cpp knowledgeview.h modelsview.cpp modelsview.h)
