// The files of a hand-over: the owner's record as PDF and HTML, and the job's archive.
#pragma once

#include "core/handover/record.h"
#include "core/store/store.h"

#include <QString>
#include <QStringList>

#include <atomic>
#include <filesystem>
#include <functional>

namespace undercowl::ui {

struct RecordFiles {
    QString folder;
    QStringList names; // what was written, in the order written
};

// Opens its own store on the folder, so that it may run on any thread. Each file is written beside and
// renamed. 'told' is called with the share that is done, 0 to 1; it answers false to cancel. Files that were
// whole by then stay.
[[nodiscard]] store::Result<RecordFiles> writeRecord(const std::filesystem::path& store, const job::Id& job,
                                                     const QString& folder, const handover::Words& words,
                                                     const std::function<bool(double)>& told);

} // namespace undercowl::ui
