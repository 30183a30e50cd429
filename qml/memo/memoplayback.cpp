#include "qml/memo/memoplayback.h"

#include "core/journal/say.h"
#include "qml/memo/memorecording.h"
#include "qml/shell/words.h"

#include <algorithm>

namespace undercowl::ui {

MemoPlayback::~MemoPlayback() {
    if (playing())
        player_->stop();
}

void MemoPlayback::setPlayer(platform::Player* player) {
    if (player == player_)
        return;
    if (player_ != nullptr)
        disconnect(player_, nullptr, this, nullptr);
    player_ = player;
    if (player_ != nullptr) {
        connect(player_, &platform::Player::changed, this, &MemoPlayback::moved);
        connect(player_, &platform::Player::outlined, this,
                [this](const QString& file, int milliseconds, const QList<qreal>& levels) {
                    if (file != file_)
                        return;
                    duration_ = milliseconds;
                    levels_ = levels;
                    emit changed();
                    emit moved();
                });
    }
    ask();
}

void MemoPlayback::setMemo(const QString& memo) {
    memo_ = memo;
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

const job::Memo* MemoPlayback::find() const {
    const auto now = snapshot();
    if (now == nullptr)
        return nullptr;
    const auto& memos = now->job.memos;
    const auto found = std::ranges::find(memos, memo_.toStdString(), &job::Memo::id);
    return found == memos.end() ? nullptr : &*found;
}

void MemoPlayback::show(const Snapshot& /*snapshot*/) {
    const auto* known = find();
    const QString file = known == nullptr || known->media.empty()
                             ? QString()
                             : session()->mediaUrl(text(known->media)).toLocalFile();
    if (file == file_)
        return;
    file_ = file;
    ask();
}

void MemoPlayback::ask() {
    if (player_ != nullptr && !file_.isEmpty())
        player_->outline(file_);
}

double MemoPlayback::place() const {
    return duration_ == 0 ? 0 : std::clamp(static_cast<double>(at()) / duration_, 0.0, 1.0);
}

QString MemoPlayback::time() const {
    return minutesAndSeconds(at()) + QStringLiteral(" / ") + minutesAndSeconds(duration_);
}

QList<qreal> MemoPlayback::marks() const {
    QList<qreal> places;
    if (const auto* known = find(); known != nullptr && duration_ > 0)
        for (const int mark : known->marks)
            places += std::clamp(static_cast<double>(mark) / duration_, 0.0, 1.0);
    return places;
}

void MemoPlayback::setPace(double pace) {
    if (pace == pace_)
        return;
    pace_ = pace;
    if (playing())
        player_->play(file_, at(), pace_);
    emit moved();
}

void MemoPlayback::toggle() {
    if (player_ == nullptr || file_.isEmpty())
        return;
    if (playing())
        player_->stop();
    else
        player_->play(file_, at(), pace_);
}

void MemoPlayback::go(double place) {
    if (player_ != nullptr && !file_.isEmpty())
        player_->play(file_, static_cast<int>(std::clamp(place, 0.0, 1.0) * duration_), pace_);
}

void MemoPlayback::toNextMark() {
    const auto* known = find();
    if (player_ == nullptr || known == nullptr || known->marks.empty())
        return;
    constexpr int breath = 500; // while it plays it is just past the mark that it was sent to
    const auto next = std::ranges::find_if(known->marks, [&](int mark) { return mark > at() + breath; });
    player_->play(file_, next == known->marks.end() ? known->marks.front() : *next, pace_);
}

void MemoPlayback::mark() {
    const auto* known = find();
    if (known == nullptr || !ours())
        return;
    job::Memo marked = *known;
    marked.marks.push_back(at());
    std::ranges::sort(marked.marks);
    session()->say({journal::memoKept(jobId(), marked, marked.said.entry)},
                   {.undoText = tr("Place marked"), .form = {}});
}

} // namespace undercowl::ui
