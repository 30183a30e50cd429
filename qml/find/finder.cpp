#include "qml/find/finder.h"

#include "qml/shell/words.h"

namespace undercowl::ui {

namespace {

constexpr std::size_t mostHits = 50;

QString kindWords(store::HitKind kind) {
    switch (kind) {
    case store::HitKind::Machine: return Finder::tr("machine");
    case store::HitKind::Owner: return Finder::tr("owner");
    case store::HitKind::Job: return Finder::tr("job");
    case store::HitKind::Finding: return Finder::tr("finding");
    case store::HitKind::Step: return Finder::tr("strip step");
    case store::HitKind::Wire: return Finder::tr("wire");
    case store::HitKind::Part: return Finder::tr("part");
    case store::HitKind::Reading: return Finder::tr("reading");
    case store::HitKind::Memo: return Finder::tr("memo");
    case store::HitKind::Photo: return Finder::tr("photo");
    }
    return {};
}

} // namespace

void Finder::setWords(const QString& words) {
    if (words_ == words)
        return;
    words_ = words;
    searched_ = false;
    emit wordsChanged();
    emit searchedChanged();
    const int number = ++wanted_;
    if (words_.trimmed().isEmpty()) {
        show({});
        return;
    }
    session_->ask(
        this, [text = utf8(words_)](ShopStore& store) { return store.find(text, mostHits); },
        [this, number](const Result<std::vector<store::Hit>>& found) {
            if (number != wanted_)
                return;
            if (!found) {
                session_->report(found.error());
                return;
            }
            show(*found);
            searched_ = true;
            emit searchedChanged();
        });
}

void Finder::show(const std::vector<store::Hit>& hits) {
    std::vector<Line> lines;
    jobs_.clear();
    for (const auto& hit : hits) {
        QString around = text(hit.snippet);
        around.remove(u'[').remove(u']');
        lines.push_back({.id = QString::number(lines.size()),
                         .title = text(hit.title),
                         .detail = around == text(hit.title) ? QString() : around,
                         .more = text(hit.machine),
                         .aside = kindWords(hit.kind)});
        jobs_.push_back(text(hit.job));
    }
    hits_.setLines(std::move(lines));
}

QString Finder::jobOf(int row) const {
    return row < 0 || static_cast<std::size_t>(row) >= jobs_.size() ? QString()
                                                                    : jobs_[static_cast<std::size_t>(row)];
}

} // namespace undercowl::ui
