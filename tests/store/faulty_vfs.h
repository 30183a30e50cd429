// SQLite's own VFS with every operation asked of a FaultyDisk first.
#pragma once

#include <string>

namespace undercowl::store::test {

class FaultyDisk;

// The disk has to outlive every database opened through the VFS, and takes it out again before it goes.
void addFaultyVfs(const std::string& name, FaultyDisk& disk);
void removeFaultyVfs(const std::string& name);

} // namespace undercowl::store::test
