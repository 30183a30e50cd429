#include "qml/refit/linebackview.h"

#include "core/journal/say.h"
#include "core/talk/readback.h"
#include "qml/shell/words.h"
#include "qml/strip/stripdraft.h"

#include <algorithm>

namespace undercowl::ui {

void LineBackView::show(const Snapshot& /*snapshot*/) {
    shown_ = snapshot();
    lines_ = job::linesOf(shown_->job);
    if (!std::exchange(begun_, true)) { // after a break it goes on where it stopped
        const auto at = std::ranges::find_if(lines_, [this](const job::RefitStep& line) {
            return wanted_.isEmpty() ? !line.strip->lineCheck : line.strip->id == wanted_.toStdString();
        });
        goTo(at == lines_.end() ? 0 : static_cast<int>(at - lines_.begin()));
    }
    if (index() > count())
        goTo(count());
    followUndo();
}

const job::RefitStep* LineBackView::line() const {
    return open() ? &lines_[static_cast<std::size_t>(index())] : nullptr;
}

QString LineBackView::spoken() const {
    return line() == nullptr ? QString()
                             : text(talk::english(talk::lineSentence(shown_->job, *line()->strip)));
}

QString LineBackView::briefSentence() const {
    return line() == nullptr
               ? QString()
               : text(talk::english(talk::endsOnly(talk::lineSentence(shown_->job, *line()->strip))));
}

QString LineBackView::stepId() const {
    return line() == nullptr ? QString() : text(line()->strip->id);
}

QString LineBackView::details() const {
    if (line() == nullptr)
        return {};
    const job::StripStep& step = *line()->strip;
    QStringList all = notesOf(step);
    if (!job::isDescribed(step))
        all += job::photographed(shown_->job, step)
                   ? tr("How it runs was not written down: look at its photo.")
                   : tr("How it runs was not written down and there is no photo: look it up in the machine's "
                        "manual.");
    if (!step.note.empty())
        all += text(step.note);
    return all.join(u'\n');
}

bool LineBackView::refitted() const {
    return line() != nullptr && line()->done;
}

QUrl LineBackView::photo() const {
    const auto* photo = line() == nullptr ? nullptr : clearestPhoto(*line());
    return photo == nullptr ? QUrl() : session()->mediaUrl(text(photo->media));
}

QVariantList LineBackView::marks() const {
    const auto* photo = line() == nullptr ? nullptr : clearestPhoto(*line());
    return photo == nullptr ? QVariantList() : marksOn(*line()->strip, photo->id);
}

std::optional<job::MatchOutcome> LineBackView::outcome(int index) const {
    const auto& check = lines_[static_cast<std::size_t>(index)].strip->lineCheck;
    return check ? std::optional(check->outcome) : std::nullopt;
}

QString LineBackView::named(int index) const {
    return text(lines_[static_cast<std::size_t>(index)].strip->title);
}

std::vector<journal::Draft> LineBackView::saysMatch() const {
    return {journal::lineChecked(jobId(), line()->strip->id, job::MatchOutcome::Matches)};
}

std::vector<journal::Draft> LineBackView::saysMismatch(const std::string& note) const {
    return {journal::lineChecked(jobId(), line()->strip->id, job::MatchOutcome::DoesNotMatch, note)};
}

} // namespace undercowl::ui
