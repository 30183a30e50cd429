undercowl_screen_files(
    SOURCES
        folderstore.cpp photofile.cpp photofile.h session.cpp session.h sessiondrafts.cpp sessionsay.cpp shopstore.h
        words.cpp words.h worker.cpp worker.h)
