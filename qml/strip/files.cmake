undercowl_screen_files(SOURCES stripdraft.cpp stripdraft.h)
