#include "qml/parts/ordersview.h"

#include "core/units/date.h"
#include "platform/plugins/plugin.h"
#include "platform/records/recordfiles.h"
#include "platform/threads/across.h"
#include "qml/handover/recordwords.h"
#include "qml/shell/words.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QPointer>

namespace undercowl::ui {

namespace {

Result<std::vector<handover::OrderGroup>> readOrders(const ShopStore& store) {
    const auto jobs = store.jobs(0); // those that are handed over order nothing
    if (!jobs)
        return tl::unexpected(jobs.error());
    std::vector<handover::WantedPart> wanted;
    for (const store::JobLine& line : *jobs) {
        const auto job = store.job(line.id);
        if (!job)
            return tl::unexpected(job.error());
        const auto machine = store.machine(job->machine);
        for (handover::WantedPart& part : handover::toOrder(*job, machine.value_or(job::Machine{})))
            wanted.push_back(std::move(part));
    }
    return handover::bySupplier(wanted);
}

} // namespace

void OrdersView::componentComplete() {
    session_->ask(
        this, [](ShopStore& store) { return readOrders(store); },
        [this](const Result<std::vector<handover::OrderGroup>>& groups) {
            if (groups)
                show(*groups);
            else
                session_->report(groups.error());
        });
}

void OrdersView::show(std::vector<handover::OrderGroup> groups) {
    groups_ = std::move(groups);
    ready_ = true;
    std::vector<Line> lines;
    for (const handover::OrderGroup& group : groups_) {
        QStringList sums;
        for (const job::TypedValue& sum : group.sums)
            sums += numberText(sum.digits) + QChar(QChar::Nbsp) + text(sum.unit);
        lines.push_back({.id = QString::number(lines.size()),
                         .title = group.supplier.empty() ? tr("No supplier chosen") : text(group.supplier),
                         .detail = sums.join(QStringLiteral(" + ")),
                         .mark = QStringLiteral("supplier")});
        for (const handover::WantedPart& wanted : group.parts) {
            const job::Part& part = wanted.part;
            QStringList detail{text(part.number), text(part.otherNumbers), words(part.state)};
            detail.removeAll(QString());
            QStringList more{text(wanted.machine)};
            if (part.price)
                more += numberText(part.price->digits) + QChar(QChar::Nbsp) + text(part.price->unit);
            more.removeAll(QString());
            lines.push_back({.id = QString::number(lines.size()),
                             .title = text(part.name),
                             .detail = detail.join(QStringLiteral(" · ")),
                             .more = more.join(QStringLiteral(" · "))});
        }
    }
    lines_.setLines(std::move(lines));
    emit changed();
}

QString OrdersView::asText() const {
    return text(handover::orderText(groups_, recordWords));
}

void OrdersView::copy() const {
    QGuiApplication::clipboard()->setText(asText());
}

void OrdersView::write() {
    if (writing_ || groups_.empty())
        return;
    writing_ = true;
    const std::string day = units::formatDate(dayOf(session_->now()));
    const QString folder = text(session_->folder().string()) + QStringLiteral("-orders");
    platform::offTouch([self = QPointer(this), folder, day, groups = groups_,
                        spoken = recordWordsIn(Catalogue::shown()->code())] {
        QString missing;
        const auto* writer = platform::pluginFor<platform::RecordWriter>(QStringLiteral("records"), missing);
        auto result =
            writer != nullptr
                ? writer->writeDocument(handover::orderDocument(groups, day), folder,
                                        QStringLiteral("orders-") + text(day), spoken,
                                        {{QStringLiteral("csv"), handover::orderCsv(groups)},
                                         {QStringLiteral("txt"), handover::orderText(groups, spoken)}})
                : tl::unexpected(store::Problem{store::Fault::InputOutput, utf8(missing)});
        platform::toTouch([self, result = std::move(result)] {
            if (self == nullptr)
                return;
            self->writing_ = false;
            if (result) {
                self->folder_ = result->folder;
                self->files_ = result->names;
            } else {
                self->session_->report(result.error());
            }
            emit self->changed();
        });
    });
}

} // namespace undercowl::ui
