undercowl_screen_files(
    QML
        CameraPage.qml CameraPicture.qml CameraShutter.qml CaptureFooter.qml DraftEntry.qml DraftRow.qml EdgeSignals.qml FirstStart.qml HomePage.qml JobActions.qml JobPage.qml JobRow.qml
        JobTasks.qml TaskPage.qml MorePage.qml PictureCell.qml ShopWindow.qml
        PicturePicker.qml ProblemPanel.qml ShopPage.qml SettingsPage.qml TakenStrip.qml UndoLine.qml
    SOURCES burst.cpp burst.h
        cameraforeign.h camerahints.cpp camerahints.h cameraholder.cpp cameraholder.h cameraview.cpp cameraview.h deviceforeign.h draftpages.cpp draftpages.h folderstore.cpp formdraft.cpp formdraft.h jobscreen.cpp jobscreen.h
        jobview.cpp jobview.h linemodel.cpp linemodel.h pendingphotos.cpp pendingphotos.h photocapture.cpp photocapture.h
        photofile.cpp photofile.h previewpixels.h picturefolder.cpp picturefolder.h session.cpp session.h sessiondrafts.cpp sessionsay.cpp
        shophome.cpp shophome.h shopsettings.cpp shopsettings.h shopstore.h taskview.cpp taskview.h words.cpp words.h worker.cpp worker.h)
