// Where the hardware sits on the photo, and what else is to be known when the part goes on again.
#include "qml/shell/words.h"
#include "qml/strip/stripview.h"

#include <array>
#include <cmath>
#include <utility>

namespace undercowl::ui {

namespace {

using Detail = std::pair<const char*, std::string job::StripStep::*>;
constexpr std::array details_{
    Detail{"routing", &job::StripStep::routing}, Detail{"ends", &job::StripStep::ends},
    Detail{"letOut", &job::StripStep::letOut}, Detail{"asFound", &job::StripStep::asFound}};
constexpr double near = 0.04; // of the photo's sides: a thumb's breadth on a photo across a phone

} // namespace

QVariantMap StripView::details() const {
    QVariantMap all;
    for (const auto& [name, member] : details_)
        all[QLatin1String(name)] = text(draft_.step.*member);
    return all;
}

QString StripView::detailText() const {
    return notesOf(draft_.step).join(u'\n');
}

void StripView::setDetail(const QString& name, const QString& text) {
    for (const auto& [known, member] : details_)
        if (name == QLatin1String(known) && draft_.step.*member != utf8(text)) {
            draft_.step.*member = utf8(text);
            changedDraft();
        }
}

QVariantList StripView::marks() const {
    return photos_.count() == 0
               ? QVariantList{}
               : marksOn(draft_.step,
                         photos_.lines()[static_cast<std::size_t>(shownPhoto_)].id.toStdString());
}

void StripView::setPiece(int piece) {
    piece_ = piece >= 0 && piece < static_cast<int>(draft_.step.hardware.size()) ? piece : -1;
    setErrors({});
    emit changed();
}

QString StripView::placed() const {
    if (piece_ < 0)
        return {};
    const job::Hardware& hardware = draft_.step.hardware[static_cast<std::size_t>(piece_)];
    return tr("%1: %2 of %3 on the photo")
        .arg(hardwareText(hardware))
        .arg(hardware.at.size())
        .arg(hardware.count);
}

void StripView::place(qreal x, qreal y) {
    if (piece_ < 0 || photos_.count() == 0)
        return;
    job::Hardware& hardware = draft_.step.hardware[static_cast<std::size_t>(piece_)];
    const std::string photo = photos_.lines()[static_cast<std::size_t>(shownPhoto_)].id.toStdString();
    const auto touched = std::ranges::find_if(hardware.at, [&](const wiring::PhotoMark& mark) {
        return mark.photo == photo && std::hypot(mark.x - x, mark.y - y) < near;
    });
    setErrors({});
    if (touched != hardware.at.end())
        hardware.at.erase(touched);
    else if (std::cmp_less(hardware.at.size(), hardware.count))
        hardware.at.push_back({photo, x, y});
    else
        setErrors({{QStringLiteral("place"),
                    tr("All %1 are on a photo. Touch a ring to take it away.").arg(hardware.count)}});
    changedDraft();
}

void StripView::otherPhoto() {
    if (photos_.count() == 0)
        return;
    shownPhoto_ = (shownPhoto_ + 1) % photos_.count();
    emit changed();
}

} // namespace undercowl::ui
