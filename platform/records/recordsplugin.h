#pragma once

#include "platform/records/recordfiles.h"

#include <QObject>

namespace undercowl::platform {

class RecordsPlugin : public QObject, public RecordWriter {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID "undercowl.records")
    Q_INTERFACES(undercowl::platform::RecordWriter)

public:
    [[nodiscard]] store::Result<RecordFiles> write(const std::filesystem::path& store, const job::Id& job,
                                                   const QString& folder, const RecordLanguage& language,
                                                   const std::function<bool(double)>& told) const override;
    [[nodiscard]] store::Result<RecordFiles>
    writeDocument(const handover::Document& document, const QString& folder, const QString& stem,
                  const handover::Words& words,
                  const std::vector<std::pair<QString, std::string>>& texts) const override;
    [[nodiscard]] store::Result<RecordFiles> writeLabels(const std::vector<handover::BagLabel>& labels,
                                                         LabelStock stock, int first, const QString& folder,
                                                         const QString& stem) const override;
};

} // namespace undercowl::platform
