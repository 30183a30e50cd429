// Reads wires in one photo, off the touch thread.
//
// Points are relative to the upright photo: 0,0 top left, 1,1 bottom right, so that a screen need not know
// how many pixels the photo has. One request runs at a time; a new one takes the place of a running one.
#pragma once

#include "core/sight/reader.h"

#include <QList>
#include <QObject>
#include <QPointF>
#include <QSize>
#include <QString>
#include <QThread>
#include <QtQml/qqmlregistration.h>

#include <atomic>
#include <cstdint>
#include <memory>
#include <vector>

namespace undercowl::ui {

// file: the photo; setting it opens it in the background.
// state: Closed until a file is set; Failed with `problem` in words when it cannot be read.
// busy: opening or reading; cancel() ends that without an answer.
class PhotoReader : public QObject {
    Q_OBJECT
    Q_PROPERTY(QString file READ file WRITE setFile NOTIFY fileChanged FINAL)
    Q_PROPERTY(State state READ state NOTIFY stateChanged FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY stateChanged FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY stateChanged FINAL)
    Q_PROPERTY(QSize size READ size NOTIFY stateChanged FINAL)
    QML_ELEMENT

public:
    enum class State : std::uint8_t { Closed, Opening, Ready, Reading, Failed };
    Q_ENUM(State)

    explicit PhotoReader(QObject* parent = nullptr);
    ~PhotoReader() override; // waits for the running request, which is told to stop

    [[nodiscard]] QString file() const { return file_; }
    void setFile(const QString& file);
    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] bool busy() const { return state_ == State::Opening || state_ == State::Reading; }
    [[nodiscard]] QString problem() const {
        return problem_;
    }                                                  // of the photo, or of the last request; empty if none
    [[nodiscard]] QSize size() const { return size_; } // of the upright photo, pixels; empty until it is open

    // All wires that the stroke crosses, in stroke order: answered by swept().
    Q_INVOKABLE void sweep(const QList<QPointF>& along);
    // The wire nearest to the point: answered by tapped().
    Q_INVOKABLE void tap(QPointF at);
    // The next wire beside the one nearest to the point, to the right or below, or the other way: answered by
    // tapped(), or by a problem when there is none.
    void beside(QPointF at, sight::Side side);
    // All wires that can be followed: answered by proposed(). With the mouth of the connector, a line across
    // its wires, only those that come from it, in their order.
    void propose(const QList<QPointF>& mouth = {});
    // A colour that the mechanic has confirmed; it calibrates the light for later readings. Not answered.
    void confirm(QPointF at, const colour::WireColour& wire);
    // When opening is cancelled the state is Closed; open() tries again.
    Q_INVOKABLE void cancel();
    Q_INVOKABLE void open();
    // A neutral card lies round the point (white paper: reflectance 0.88): opens the photo again with it.
    // What was confirmed is to be told again. A null point takes the card away.
    void setCard(QPointF at, double reflectance);

    // In relative coordinates, as everything else here.
    [[nodiscard]] QPointF relative(sight::Point point) const;

signals:
    void fileChanged();
    void stateChanged();
    void swept(const std::vector<undercowl::sight::WireReading>& readings);
    void tapped(const undercowl::sight::WireReading& reading);
    void proposed(const undercowl::sight::Proposal& proposal);

private:
    struct Bench; // what lives in the worker thread

    void setState(State state, const QString& problem = {});
    // Has the worker do it with the opened photo, and tells the answer unless another request came meanwhile.
    template<class Work, class Tell>
    void ask(Work work, Tell tell);
    [[nodiscard]] sight::Point pixel(QPointF relative) const;
    [[nodiscard]] sight::Polyline pixels(const QList<QPointF>& relative) const;

    QThread thread_;
    std::unique_ptr<QObject> seat_; // lives in thread_; carries calls over
    std::shared_ptr<Bench> bench_;
    std::shared_ptr<std::atomic<std::uint64_t>> newest_; // requests with a smaller number are to stop
    QPointF card_;                                       // null: none
    double reflectance_{};
    QString file_;
    QString problem_;
    QSize size_;
    State state_ = State::Closed;
};

} // namespace undercowl::ui
