// The files of a hand-over: the owner's record as PDF and HTML, and the job's archive. Behind an interface,
// since what packs them is loaded with the first record and not with the program.
#pragma once

#include "core/handover/record.h"
#include "core/store/store.h"
#include "platform/labels.h"

#include <QString>
#include <QStringList>
#include <QtPlugin>

#include <filesystem>
#include <functional>
#include <string>
#include <utility>
#include <vector>

namespace undercowl::platform {

struct RecordFiles {
    QString folder;
    QStringList names; // what was written, in the order written
};

// In which words a record is written, and the code of their language, which its page names.
struct RecordLanguage {
    handover::Words words;
    std::string code;
};

// The plugin "records".
class RecordWriter {
public:
    virtual ~RecordWriter() = default;

    // Opens its own store on the folder, so that it may run on any thread. Each file is written beside and
    // renamed. 'told' is called with the share that is done, 0 to 1; it answers false to cancel. Files that
    // were whole by then stay.
    [[nodiscard]] virtual store::Result<RecordFiles> write(const std::filesystem::path& store,
                                                           const job::Id& job, const QString& folder,
                                                           const RecordLanguage& language,
                                                           const std::function<bool(double)>& told) const = 0;

    // The document as STEM.pdf in the folder, which is made, and beside it texts by their suffix: {"csv",
    // ...}. No pictures.
    [[nodiscard]] virtual store::Result<RecordFiles>
    writeDocument(const handover::Document& document, const QString& folder, const QString& stem,
                  const handover::Words& words,
                  const std::vector<std::pair<QString, std::string>>& texts) const = 0;

    // Labels for bags as STEM.pdf in the folder, which is made; stock and first place as in
    // platform/labels.h.
    [[nodiscard]] virtual store::Result<RecordFiles>
    writeLabels(const std::vector<handover::BagLabel>& labels, LabelStock stock, int first,
                const QString& folder, const QString& stem) const = 0;
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::RecordWriter, "undercowl.records")
