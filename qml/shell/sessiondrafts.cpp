// Drafts: what is being entered and not yet said. The index of those that wait is a draft of its own.
#include "qml/shell/session.h"

#include "qml/shell/words.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace undercowl::ui {

namespace {

constexpr auto indexName = "index";

QByteArray writeDraftIndex(const std::vector<WaitingDraft>& waiting) {
    QJsonArray lines;
    for (const auto& draft : waiting)
        lines.append(QJsonObject{{QStringLiteral("form"), draft.form},
                                 {QStringLiteral("title"), draft.title},
                                 {QStringLiteral("job"), text(draft.job)},
                                 {QStringLiteral("at"), static_cast<double>(draft.at)}});
    return QJsonDocument(lines).toJson(QJsonDocument::Compact);
}

} // namespace

std::vector<WaitingDraft> readDraftIndex(std::string_view json) {
    std::vector<WaitingDraft> waiting;
    const auto lines =
        QJsonDocument::fromJson(QByteArray(json.data(), static_cast<qsizetype>(json.size()))).array();
    for (const auto& line : lines) {
        const auto object = line.toObject();
        WaitingDraft draft{object[u"form"].toString(), object[u"title"].toString(),
                           object[u"job"].toString().toStdString(),
                           static_cast<job::TimeMs>(object[u"at"].toDouble())};
        if (!draft.form.isEmpty())
            waiting.push_back(std::move(draft));
    }
    return waiting;
}

void ShopSession::keepDraft(const WaitingDraft& draft, const QByteArray& json) {
    std::erase_if(waiting_, [&](const WaitingDraft& other) { return other.form == draft.form; });
    waiting_.insert(waiting_.begin(), draft);
    unwritten_[draft.form] = json;
    unwritten_[QString::fromLatin1(indexName)] = writeDraftIndex(waiting_);
    // Not restarted by each change: the oldest one waits no longer than the interval.
    if (!writeSoon_.isActive())
        writeSoon_.start();
    emit draftsChanged();
}

void ShopSession::dropDraft(const QString& form) {
    forgetDraft(form);
    worker_.give([form = form.toStdString()](std::unique_ptr<ShopStore>& store) {
        if (store != nullptr)
            (void)store->dropDraft(form); // a draft too many is offered again: harmless
    });
}

// What is in memory of it; the draft itself has been or is being dropped from the store.
void ShopSession::forgetDraft(const QString& form) {
    unwritten_.erase(form);
    if (std::erase_if(waiting_, [&](const WaitingDraft& draft) { return draft.form == form; }) == 0)
        return;
    unwritten_[QString::fromLatin1(indexName)] = writeDraftIndex(waiting_);
    flush();
    emit draftsChanged();
}

void ShopSession::restoreDraft(QObject* receiver, const QString& form,
                               std::function<void(const QByteArray&)> then) {
    flush(); // so that the store has the latest
    ask(
        receiver,
        [form = form.toStdString()](ShopStore& store) { return store.draft(form).value_or(std::string{}); },
        [then = std::move(then)](const std::string& json) { then(QByteArray::fromStdString(json)); });
}

void ShopSession::flush() {
    writeSoon_.stop();
    if (unwritten_.empty())
        return;
    worker_.give([this, drafts = std::move(unwritten_)](std::unique_ptr<ShopStore>& store) {
        for (const auto& [form, json] : drafts) {
            const auto kept = store == nullptr ? Result<void>(tl::unexpected(store::Problem{
                                                     store::Fault::CannotOpen, "the store is not open"}))
                                               : store->keepDraft(form.toStdString(), json.toStdString());
            if (!kept) {
                platform::across(this, [this, problem = kept.error()] { report(problem); });
                return;
            }
        }
    });
    unwritten_.clear();
}

} // namespace undercowl::ui
