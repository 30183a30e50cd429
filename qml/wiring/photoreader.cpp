#include "qml/wiring/photoreader.h"

#include "platform/eye/eye.h"
#include "platform/plugins/plugin.h"
#include "platform/threads/across.h"
#include "qml/language/corewords.h"

#include <algorithm>
#include <utility>

namespace undercowl::ui {

namespace {

// A small piece of the card round the point, so that a thumb need not find its edges.
sight::Card cardAt(QPointF at, QSize photo, double reflectance) {
    const int side = std::max(8, photo.width() / 40);
    const int x = static_cast<int>(at.x() * photo.width()) - side / 2;
    const int y = static_cast<int>(at.y() * photo.height()) - side / 2;
    return {{std::clamp(x, 0, photo.width() - side), std::clamp(y, 0, photo.height() - side), side, side},
            reflectance};
}

// The mechanic chose a photo, not a file: the folder of the store means nothing.
QString withoutName(const std::string& problem, const std::string& file) {
    const std::string head = file + ": ";
    return QString::fromStdString(problem.starts_with(head) ? problem.substr(head.size()) : problem);
}

} // namespace

// Touched by the worker thread only, but for its construction.
struct PhotoReader::Bench {
    std::unique_ptr<platform::SeenPhoto> photo;
};

PhotoReader::PhotoReader(QObject* parent)
    : QObject(parent), seat_(std::make_unique<QObject>()), bench_(std::make_shared<Bench>()),
      newest_(std::make_shared<std::atomic<std::uint64_t>>(0)) {
    seat_->moveToThread(&thread_);
    thread_.setObjectName(QStringLiteral("photo reader"));
    thread_.start();
}

PhotoReader::~PhotoReader() {
    ++*newest_;
    // The seat has to die in its own thread, after what is queued for it.
    seat_.release()->deleteLater();
    thread_.quit();
    thread_.wait();
}

void PhotoReader::setState(State state, const QString& problem) {
    state_ = state;
    problem_ = problem;
    emit stateChanged();
}

void PhotoReader::setFile(const QString& file) {
    if (file == file_) {
        return;
    }
    file_ = file;
    card_ = {};
    emit fileChanged();
    open();
}

void PhotoReader::open() {
    const std::uint64_t request = ++*newest_;
    size_ = {};
    if (file_.isEmpty()) {
        setState(State::Closed);
        return;
    }
    setState(State::Opening);
    platform::across(seat_.get(), [this, request, bench = bench_, newest = newest_, card = card_,
                                   reflectance = reflectance_, path = file_.toStdString()] {
        if (request < *newest) {
            return;
        }
        bench->photo.reset();
        QString problem;
        QSize size;
        if (const auto* eye = platform::pluginFor<platform::Eye>(QStringLiteral("eye"), problem);
            eye != nullptr) {
            if (auto photo = eye->open(path); photo) {
                size = {(*photo)->width(), (*photo)->height()};
                if (!card.isNull())
                    (*photo)->setCard(cardAt(card, size, reflectance));
                if (request == *newest)
                    bench->photo = *std::move(photo);
            } else {
                problem = withoutName(photo.error(), path);
            }
        }
        platform::across(this, [this, request, problem, size] {
            if (request != *newest_) {
                return;
            }
            size_ = size;
            setState(problem.isEmpty() ? State::Ready : State::Failed, coreWords(problem.toStdString()));
        });
        // While the mechanic looks at the photo; a tap or a stroke comes first.
        if (bench->photo)
            bench->photo->lookOver([newest, request] { return request != *newest; });
    });
}

void PhotoReader::setCard(QPointF at, double reflectance) {
    card_ = at;
    reflectance_ = reflectance;
    open();
}

sight::Point PhotoReader::pixel(QPointF relative) const {
    // The far edge belongs to the last pixel.
    const auto within = [](double share, int length) { return qBound(0.0, share * length, length - 1.0); };
    return {within(relative.x(), size_.width()), within(relative.y(), size_.height())};
}

sight::Polyline PhotoReader::pixels(const QList<QPointF>& relative) const {
    sight::Polyline line;
    for (const QPointF point : relative)
        line.push_back(pixel(point));
    return line;
}

QPointF PhotoReader::relative(sight::Point point) const {
    return size_.isEmpty() ? QPointF{} : QPointF{point.x / size_.width(), point.y / size_.height()};
}

template<class Work, class Tell>
void PhotoReader::ask(Work work, Tell tell) {
    const std::uint64_t request = ++*newest_;
    setState(State::Reading);
    platform::across(seat_.get(),
                     [this, request, bench = bench_, newest = newest_, work = std::move(work), tell] {
                         if (!bench->photo || request < *newest) {
                             return;
                         }
                         auto answer = work(*bench->photo, [newest, request] { return request < *newest; });
                         platform::across(this, [this, request, tell, answer = std::move(answer)] {
                             if (request != *newest_) {
                                 return;
                             }
                             setState(State::Ready, answer ? QString() : coreWords(answer.error()));
                             if (answer) {
                                 tell(*answer);
                             }
                         });
                     });
}

void PhotoReader::sweep(const QList<QPointF>& along) {
    if (size_.isEmpty()) {
        return;
    }
    ask(
        [stroke = pixels(along)](platform::SeenPhoto& photo, const sight::Cancelled& cancelled) {
            return photo.sweep(stroke, cancelled);
        },
        [this](const std::vector<sight::WireReading>& wires) { emit swept(wires); });
}

void PhotoReader::tap(QPointF at) {
    if (size_.isEmpty()) {
        return;
    }
    ask([point = pixel(at)](platform::SeenPhoto& photo,
                            const sight::Cancelled& /*cancelled*/) { return photo.tap(point); },
        [this](const sight::WireReading& wire) { emit tapped(wire); });
}

void PhotoReader::beside(QPointF at, sight::Side side) {
    if (size_.isEmpty()) {
        return;
    }
    const auto next =
        [point = pixel(at), side, none = tr("no wire was found further on that side").toStdString()](
            platform::SeenPhoto& photo,
            const sight::Cancelled& /*cancelled*/) -> tl::expected<sight::WireReading, std::string> {
        const auto here = photo.tap(point);
        if (!here) {
            return here;
        }
        auto other = photo.beside(*here, side);
        if (!other) {
            return tl::unexpected(none);
        }
        return *std::move(other);
    };
    ask(next, [this](const sight::WireReading& wire) { emit tapped(wire); });
}

void PhotoReader::propose(const QList<QPointF>& mouth) {
    if (size_.isEmpty()) {
        return;
    }
    ask([line = pixels(mouth)](platform::SeenPhoto& photo,
                               const sight::Cancelled& cancelled) { return photo.propose(line, cancelled); },
        [this](const sight::Proposal& proposal) { emit proposed(proposal); });
}

void PhotoReader::confirm(QPointF at, const colour::WireColour& wire) {
    if (size_.isEmpty()) {
        return;
    }
    platform::across(seat_.get(), [bench = bench_, known = sight::Confirmed{pixel(at), wire}] {
        if (bench->photo) {
            bench->photo->confirm(known);
        }
    });
}

void PhotoReader::cancel() {
    if (!busy()) {
        return;
    }
    const bool opening = state_ == State::Opening;
    ++*newest_;
    setState(opening ? State::Closed : State::Ready);
}

} // namespace undercowl::ui
