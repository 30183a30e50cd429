// Spoken memos on their way from the microphone into the store.
//
// A memo is written beside the store while it is spoken, under a name that says what it is about, so that it
// survives the end of the program: the next start keeps what was said until then.
#pragma once

#include "qml/shell/session.h"

#include <QString>

#include <functional>
#include <optional>
#include <vector>

namespace undercowl::ui {

struct MemoToKeep {
    QString file; // WAV; deleted once its content is safe in the store
    Id job;
    Id about; // what was open when it began; may be empty
    std::vector<int> marks{};
};

// A new file name beside the store: JOB_memo_ABOUT_ID.part. Empty where no folder can be made.
[[nodiscard]] QString memoName(const ShopSession& session, const MemoToKeep& memo);

// What the name says; nothing when it is none of ours.
[[nodiscard]] std::optional<MemoToKeep> memoOfName(const QString& file);

// It is at its end: keeps it. A sound shorter than a word is dropped. Where it cannot be kept it stays under
// a name of its own, and rescueMemos() tries again.
void keepMemo(ShopSession& session, const MemoToKeep& memo, std::function<void(bool kept)> then = {});

// Keeps every memo that was recorded and not kept; 'cut' those too whose recording a former run did not end:
// only at the start, while none is being recorded.
void rescueMemos(ShopSession& session, bool cut, std::function<void(int)> then = {});

} // namespace undercowl::ui
