undercowl_screen_files(SOURCES rowjson.cpp wirerows.cpp wirerows.h words.cpp words.h)
