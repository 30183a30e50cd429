// The wire reader as the screens use it: behind an interface, since its image libraries are loaded with the
// first photo and not with the program.
#pragma once

#include "core/sight/reader.h"

#include <QtPlugin>

#include <tl/expected.hpp>

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace undercowl::platform {

// One opened photo; what its functions do, core/sight/reader.h says. Not for use from several threads at
// once.
class SeenPhoto {
public:
    SeenPhoto() = default;
    virtual ~SeenPhoto() = default;
    SeenPhoto(const SeenPhoto&) = delete;
    SeenPhoto& operator=(const SeenPhoto&) = delete;
    SeenPhoto(SeenPhoto&&) = delete;
    SeenPhoto& operator=(SeenPhoto&&) = delete;

    // Of the upright photo, in pixels.
    [[nodiscard]] virtual int width() const = 0;
    [[nodiscard]] virtual int height() const = 0;

    // A neutral card lies in view. Before the first of the calls below.
    virtual void setCard(const sight::Card& card) = 0;

    virtual void lookOver(const sight::Cancelled& cancelled) = 0;
    virtual void confirm(const sight::Confirmed& wire) = 0;
    [[nodiscard]] virtual tl::expected<sight::WireReading, std::string> tap(sight::Point at) = 0;
    [[nodiscard]] virtual tl::expected<std::vector<sight::WireReading>, std::string>
    sweep(const sight::Polyline& along, const sight::Cancelled& cancelled) = 0;
    [[nodiscard]] virtual std::optional<sight::WireReading> beside(const sight::WireReading& from,
                                                                   sight::Side side) = 0;
    [[nodiscard]] virtual tl::expected<sight::Proposal, std::string>
    propose(const sight::Polyline& mouth, const sight::Cancelled& cancelled) = 0;
};

class Eye {
public:
    virtual ~Eye() = default;

    // Reads and decodes the file. Fails with words that name the file and the remedy. Any thread.
    [[nodiscard]] virtual tl::expected<std::unique_ptr<SeenPhoto>, std::string>
    open(const std::filesystem::path& file) const = 0;
};

} // namespace undercowl::platform

Q_DECLARE_INTERFACE(undercowl::platform::Eye, "undercowl.eye")
