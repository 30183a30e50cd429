// A shop with one job in the middle of its work, for the tests of the screens at the lift.
#pragma once

#include "core/journal/say.h"
#include "core/store/store.h"
#include "qml/shell/session.h"

#include <QTemporaryDir>

#include <memory>

namespace undercowl::ui {

struct LiftShop {
    LiftShop();

    // A session on this shop with its job open; waits until it is read.
    [[nodiscard]] std::unique_ptr<ShopSession> session() const;
    // The job as another store on the same folder reads it: what is not synced is not there.
    [[nodiscard]] job::Job stored() const;
    void say(const journal::Draft& draft) const;
    // Keeps a photo of assets/demo in the store; the id of its entry.
    [[nodiscard]] Id photo(const char* file, const Id& about, job::PhotoPurpose purpose) const;
    // Three wires as found in the loom half of 'gathering': green with white, grey, grey.
    void answer() const;

    QTemporaryDir dir;
    std::filesystem::path folder;
    Id job;
    Id task;      // with the first step
    Id step;      // unplugs the connector, two screws in bag 7
    Id lastStep;  // takes the lever off: lies before the first on refit
    Id gathering; // six places, a photo, nothing answered yet
};

[[nodiscard]] wiring::PlaceAnswer answerOf(colour::Insulation base,
                                           std::optional<colour::Insulation> tracer = std::nullopt);

} // namespace undercowl::ui
