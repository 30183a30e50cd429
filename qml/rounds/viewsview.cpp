#include "qml/rounds/viewsview.h"

#include "core/journal/rounds.h"
#include "qml/shell/words.h"

#include <algorithm>

namespace undercowl::ui {

void ViewsView::componentComplete() {
    readList(journal::RoundUse::Views);
}

void ViewsView::show(const Snapshot& snapshot) {
    std::vector<WalkedCheck> checks;
    for (const job::RoundCheck& view : list()) {
        WalkedCheck walked{knownWords(view.group), knownWords(view.text), {}, {}, view.text};
        const auto taken = std::ranges::count_if(snapshot.job.photos, [&](const job::Photo& photo) {
            return photo.purpose == job::PhotoPurpose::AsFound && photo.note == view.text;
        });
        if (taken > 0) {
            walked.answer = tr("photos: %1").arg(taken);
            walked.mark = QStringLiteral("done");
        } else if (skipped_.contains(text(walked.key))) {
            walked.answer = tr("passed over");
        }
        checks.push_back(std::move(walked));
    }
    walk(std::move(checks));
}

void ViewsView::skip() {
    skipped_.insert(key());
    if (const auto now = snapshot())
        show(*now);
    emit changed();
}

} // namespace undercowl::ui
