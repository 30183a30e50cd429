// Where an entry that was begun and not finished is gone on with.
#pragma once

#include <QString>
#include <QVariantMap>

namespace undercowl::ui {

// The page that the form of this name stands on and what the page is opened with, as ShopPage::opens() takes
// them: {"page": "StripPage", "properties": {"step": "..."}}. A form that is not known, as one of a newer
// version, is looked for from its job.
[[nodiscard]] QVariantMap draftPage(const QString& form);

} // namespace undercowl::ui
