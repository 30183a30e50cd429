#include "qml/scan/labelsview.h"

#include "platform/plugins/plugin.h"
#include "platform/records/recordfiles.h"
#include "platform/threads/across.h"
#include "qml/shell/words.h"

#include <QPointer>

#include <algorithm>

namespace undercowl::ui {

namespace {

QString joined(const std::vector<std::string>& words) {
    QStringList all;
    for (const std::string& word : words)
        all += text(word);
    return all.join(QStringLiteral(", "));
}

} // namespace

void LabelsView::show(const Snapshot& snapshot) {
    all_ = handover::bagLabels(snapshot.job, snapshot.machine);
    std::vector<Line> lines;
    for (const handover::BagLabel& label : all_) {
        const QString bag = text(label.bag);
        lines.push_back(
            {.id = bag,
             .title = label.open ? tr("Bag %1, all of it is on again").arg(bag) : tr("Bag %1").arg(bag),
             .detail = joined(label.content),
             .more = joined(label.steps),
             .on = !left_.contains(bag)});
    }
    labels_.setLines(std::move(lines));
}

int LabelsView::chosen() const {
    return static_cast<int>(std::ranges::count(labels_.lines(), true, &Line::on));
}

void LabelsView::choose(const QString& bag) {
    if (left_.erase(bag) == 0)
        left_.insert(bag);
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

void LabelsView::write(int stock, const QString& first) {
    const auto paper = stock == 1 ? platform::LabelStock::Letter : platform::LabelStock::A4;
    bool whole = true;
    const int place = first.trimmed().isEmpty() ? 1 : first.trimmed().toInt(&whole);
    if (!whole || place < 1) {
        setErrors({{QStringLiteral("first"), tr("Type a place on the sheet, such as 1.")}});
        return;
    }
    setErrors({});
    std::vector<handover::BagLabel> wanted;
    for (const handover::BagLabel& label : all_)
        if (!left_.contains(text(label.bag)))
            wanted.push_back(label);
    const QString folder = text(session()->folder().string()) + QStringLiteral("-labels");
    platform::offTouch([self = QPointer(this), wanted, paper, place, folder] {
        QString missing;
        const auto* writer = platform::pluginFor<platform::RecordWriter>(QStringLiteral("records"), missing);
        auto result = writer != nullptr
                          ? writer->writeLabels(wanted, paper, place, folder, QStringLiteral("labels"))
                          : tl::unexpected(store::Problem{store::Fault::InputOutput, utf8(missing)});
        platform::toTouch([self, result = std::move(result)] {
            if (self == nullptr)
                return;
            if (!result)
                return self->session()->report(result.error());
            self->file_ = result->folder + u'/' + result->names.front();
            emit self->changed();
        });
    });
}

} // namespace undercowl::ui
