// A new part in place of the old one: which wire goes where, what stays empty, what has to be found out.
#pragma once

#include "core/wiring/carryover.h"
#include "qml/shell/jobscreen.h"
#include "qml/shell/linemodel.h"

#include <QtQml/qqmlregistration.h>

namespace undercowl::ui {

// gathering   the new part; it names the one that it replaces
// carried     title the wire, detail "from place 2 to place 5", more by what, mark its colour's code, on:
// said found       "place 3: leave empty" and wires without a place, one line each measures    wires to be
// measured before anything is tried: title, detail how, mark the colour's code trials      id "3/1", title,
// detail the sign, more the places in order, mark the colour's code toSay       how many carried wires the
// new map does not hold yet
class CarryView : public undercowl::ui::JobScreen {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString gathering READ gathering WRITE setGathering NOTIFY changed)
    Q_PROPERTY(QString oldGathering READ oldGathering NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(int toSay READ toSay NOTIFY changed)
    Q_PROPERTY(int mostTrials READ mostTrials NOTIFY changed)
    Q_PROPERTY(undercowl::ui::LineModel* carried READ carried CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* found READ found CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* measures READ measures CONSTANT)
    Q_PROPERTY(undercowl::ui::LineModel* trials READ trials CONSTANT)

public:
    using JobScreen::JobScreen;

    [[nodiscard]] QString gathering() const { return id_; }
    void setGathering(const QString& id);
    [[nodiscard]] QString oldGathering() const;
    [[nodiscard]] QString title() const { return title_; } // "new switch in place of right switch cluster"
    [[nodiscard]] int toSay() const { return toSay_; }
    [[nodiscard]] int mostTrials() const { return static_cast<int>(over_.mostTrials); }
    [[nodiscard]] LineModel* carried() { return &carried_; }
    [[nodiscard]] LineModel* found() { return &found_; }
    [[nodiscard]] LineModel* measures() { return &measures_; }
    [[nodiscard]] LineModel* trials() { return &trials_; }

    Q_INVOKABLE void takeOver(); // the carried wires become the map of the new part, as it should be
    // The places of a trial, in order, as words; and its sign was seen at the one with that index.
    Q_INVOKABLE QStringList placesOf(const QString& wire) const;
    Q_INVOKABLE void seenAt(const QString& wire, int index);

protected:
    void show(const Snapshot& snapshot) override;

private:
    [[nodiscard]] const wiring::Gathering* find(const std::string& id) const;
    [[nodiscard]] const wiring::Trial* trial(const QString& wire) const;
    [[nodiscard]] journal::Draft wireAt(wiring::PlaceKey wire, wiring::PlaceKey place,
                                        const std::string& serves, const QString& source) const;

    QString id_, title_;
    wiring::CarryOver over_;
    int toSay_{};
    LineModel carried_, found_, measures_, trials_;
};

} // namespace undercowl::ui
