#include "platform/eye/eyeplugin.h"

#include <optional>
#include <utility>

namespace undercowl::platform {

namespace {

class SightPhoto : public SeenPhoto {
public:
    explicit SightPhoto(sight::Photo photo)
        : width_(photo.width()), height_(photo.height()), photo_(std::move(photo)) {}

    [[nodiscard]] int width() const override { return width_; }
    [[nodiscard]] int height() const override { return height_; }
    void setCard(const sight::Card& card) override { options_.card = card; }
    void lookOver(const sight::Cancelled& cancelled) override { reader().lookOver(cancelled); }
    void confirm(const sight::Confirmed& wire) override { reader().confirm(wire); }
    [[nodiscard]] tl::expected<sight::WireReading, std::string> tap(sight::Point at) override {
        return reader().tap(at);
    }
    [[nodiscard]] tl::expected<std::vector<sight::WireReading>, std::string>
    sweep(const sight::Polyline& along, const sight::Cancelled& cancelled) override {
        return reader().sweep(along, cancelled);
    }
    [[nodiscard]] std::optional<sight::WireReading> beside(const sight::WireReading& from,
                                                           sight::Side side) override {
        return reader().beside(from, side);
    }
    [[nodiscard]] tl::expected<sight::Proposal, std::string>
    propose(const sight::Polyline& mouth, const sight::Cancelled& cancelled) override {
        return reader().propose(mouth, cancelled);
    }

private:
    // Made when the card is known.
    sight::Reader& reader() {
        if (photo_)
            reader_.emplace(*std::exchange(photo_, std::nullopt), options_);
        return *reader_;
    }

    int width_;
    int height_;
    std::optional<sight::Photo> photo_;
    sight::ReadOptions options_;
    std::optional<sight::Reader> reader_;
};

} // namespace

tl::expected<std::unique_ptr<SeenPhoto>, std::string>
EyePlugin::open(const std::filesystem::path& file) const {
    auto photo = sight::Photo::read(file);
    if (!photo)
        return tl::unexpected(photo.error().message);
    return std::make_unique<SightPhoto>(*std::move(photo));
}

} // namespace undercowl::platform
