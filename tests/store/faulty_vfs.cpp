#include "tests/store/faulty_vfs.h"

#include "tests/store/faulty_disk.h"

#include <sqlite3.h>
#include <unistd.h>

#include <cstdlib>
#include <cstring>
#include <map>
#include <memory>

namespace undercowl::store::test {
namespace {

using Outcome = FaultyDisk::Outcome;

// Laid out as SQLite wants it: its own part first; the real file in memory of its own.
struct File {
    sqlite3_file base;
    FaultyDisk* disk;
    sqlite3_file* real;
    std::string* name; // null for files without one, which a cut takes anyway
    bool nameToo;      // the first sync of a journal or log syncs its name as well
};

File& of(sqlite3_file* file) {
    return *reinterpret_cast<File*>(file);
}

int code(Outcome outcome, int otherwise) {
    return outcome == Outcome::Full ? SQLITE_FULL : outcome == Outcome::Fine ? SQLITE_OK : otherwise;
}

int closeFile(sqlite3_file* file) {
    File& mine = of(file);
    const int done = mine.real->pMethods != nullptr ? mine.real->pMethods->xClose(mine.real) : SQLITE_OK;
    std::free(mine.real);
    delete mine.name;
    return done;
}

int readFile(sqlite3_file* file, void* to, int amount, sqlite3_int64 at) {
    const Outcome outcome = of(file).disk->deed(Deed::Read);
    return outcome == Outcome::Fine ? of(file).real->pMethods->xRead(of(file).real, to, amount, at)
                                    : SQLITE_IOERR_READ;
}

int writeFile(sqlite3_file* file, const void* from, int amount, sqlite3_int64 at) {
    File& mine = of(file);
    const Outcome outcome = mine.disk->deed(Deed::Write);
    if (outcome != Outcome::Fine && outcome != Outcome::Short) {
        return code(outcome, SQLITE_IOERR_WRITE);
    }
    const int size = outcome == Outcome::Short ? amount / 2 : amount;
    const int done = size > 0 ? mine.real->pMethods->xWrite(mine.real, from, size, at) : SQLITE_OK;
    if (done == SQLITE_OK && mine.name != nullptr && size > 0) {
        mine.disk->wrote(*mine.name, at, {static_cast<const char*>(from), static_cast<std::size_t>(size)});
    }
    return outcome == Outcome::Short ? SQLITE_FULL : done;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    File& mine = of(file);
    const Outcome outcome = mine.disk->deed(Deed::Write, false);
    if (outcome != Outcome::Fine) {
        return code(outcome, SQLITE_IOERR_TRUNCATE);
    }
    const int done = mine.real->pMethods->xTruncate(mine.real, size);
    if (done == SQLITE_OK && mine.name != nullptr) {
        mine.disk->truncated(*mine.name, size);
    }
    return done;
}

// Not asked of the system: what counts is what the disk keeps account of.
int syncFile(sqlite3_file* file, int /*flags*/) {
    File& mine = of(file);
    const Outcome outcome = mine.disk->deed(Deed::Sync);
    if (mine.name != nullptr) {
        mine.disk->synced(*mine.name, mine.nameToo, outcome != Outcome::Fine);
    }
    return code(outcome, SQLITE_IOERR_FSYNC);
}

int fileSize(sqlite3_file* file, sqlite3_int64* size) {
    return of(file).disk->deed(Deed::Read) == Outcome::Fine
               ? of(file).real->pMethods->xFileSize(of(file).real, size)
               : SQLITE_IOERR_FSTAT;
}

// Locks and the log's index live in the system's memory and need no disk.
const sqlite3_io_methods methods{
    2,
    closeFile,
    readFile,
    writeFile,
    truncateFile,
    syncFile,
    fileSize,
    [](sqlite3_file* file, int kind) { return of(file).real->pMethods->xLock(of(file).real, kind); },
    [](sqlite3_file* file, int kind) { return of(file).real->pMethods->xUnlock(of(file).real, kind); },
    [](sqlite3_file* file, int* held) {
        return of(file).real->pMethods->xCheckReservedLock(of(file).real, held);
    },
    [](sqlite3_file* /*file*/, int /*op*/, void* /*value*/) { return SQLITE_NOTFOUND; },
    [](sqlite3_file* file) { return of(file).real->pMethods->xSectorSize(of(file).real); },
    [](sqlite3_file* file) { return of(file).real->pMethods->xDeviceCharacteristics(of(file).real); },
    [](sqlite3_file* file, int region, int size, int extend, void volatile** where) {
        return of(file).real->pMethods->xShmMap(of(file).real, region, size, extend, where);
    },
    [](sqlite3_file* file, int offset, int count, int flags) {
        return of(file).real->pMethods->xShmLock(of(file).real, offset, count, flags);
    },
    [](sqlite3_file* file) { of(file).real->pMethods->xShmBarrier(of(file).real); },
    [](sqlite3_file* file, int away) { return of(file).real->pMethods->xShmUnmap(of(file).real, away); },
    nullptr,
    nullptr};

struct Vfs {
    sqlite3_vfs base{};
    std::string name;
    sqlite3_vfs* real{};
    FaultyDisk* disk{};
};

Vfs& of(sqlite3_vfs* vfs) {
    return *static_cast<Vfs*>(vfs->pAppData);
}

// Not asked of SQLite, which takes an empty file for none.
bool isThere(const char* name) {
    return ::access(name, F_OK) == 0;
}

int openFile(sqlite3_vfs* vfs, const char* name, sqlite3_file* file, int flags, int* got) {
    Vfs& mine = of(vfs);
    file->pMethods = nullptr;
    const bool fresh = name != nullptr && !isThere(name);
    const bool creates = fresh && (flags & SQLITE_OPEN_CREATE) != 0;
    const Outcome outcome = mine.disk->deed(creates ? Deed::Write : Deed::Read);
    if (outcome != Outcome::Fine && outcome != Outcome::Short) {
        return code(outcome, SQLITE_CANTOPEN);
    }
    File& opened = of(file);
    opened.disk = mine.disk;
    opened.real = static_cast<sqlite3_file*>(std::calloc(1, static_cast<std::size_t>(mine.real->szOsFile)));
    const int done = mine.real->xOpen(mine.real, name, opened.real, flags, got);
    if (done != SQLITE_OK) {
        std::free(opened.real);
        return done;
    }
    opened.name = name != nullptr ? new std::string(name) : nullptr;
    opened.nameToo = (flags & (SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_SUPER_JOURNAL)) != 0;
    if (creates) {
        mine.disk->created(*opened.name);
    } else if (name != nullptr) {
        mine.disk->removing(*opened.name); // its content is noted
    }
    opened.base.pMethods = &methods;
    return SQLITE_OK;
}

int deleteFile(sqlite3_vfs* vfs, const char* name, int syncFolder) {
    Vfs& mine = of(vfs);
    if (mine.disk->deed(Deed::Remove) != Outcome::Fine) {
        return SQLITE_IOERR_DELETE;
    }
    const bool there = isThere(name);
    if (there) {
        mine.disk->removing(name);
    }
    const int done = mine.real->xDelete(mine.real, name, 0);
    if (done == SQLITE_OK && there) {
        mine.disk->removed(name, syncFolder != 0);
    }
    return done;
}

std::map<std::string, std::unique_ptr<Vfs>>& all() {
    static std::map<std::string, std::unique_ptr<Vfs>> vfs;
    return vfs;
}

} // namespace

void addFaultyVfs(const std::string& name, FaultyDisk& disk) {
    auto made = std::make_unique<Vfs>();
    made->name = name;
    made->real = sqlite3_vfs_find(nullptr);
    made->disk = &disk;
    made->base = *made->real;
    made->base.iVersion = 2;
    made->base.pNext = nullptr;
    made->base.zName = made->name.c_str();
    made->base.pAppData = made.get();
    made->base.szOsFile = sizeof(File);
    made->base.xOpen = openFile;
    made->base.xDelete = deleteFile;
    made->base.xAccess = [](sqlite3_vfs* vfs, const char* file, int flags, int* answer) {
        return of(vfs).real->xAccess(of(vfs).real, file, flags, answer);
    };
    made->base.xFullPathname = [](sqlite3_vfs* vfs, const char* file, int size, char* full) {
        return of(vfs).real->xFullPathname(of(vfs).real, file, size, full);
    };
    sqlite3_vfs_register(&made->base, 0);
    all()[name] = std::move(made);
}

void removeFaultyVfs(const std::string& name) {
    sqlite3_vfs_unregister(&all().at(name)->base);
    all().erase(name);
}

} // namespace undercowl::store::test
