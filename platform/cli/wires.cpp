#include "platform/cli/wires.h"

#include "core/sight/compare.h"
#include "core/sight/reader.h"
#include "platform/cli/wires_json.h"

#include <CLI/CLI.hpp>

#include <charconv>
#include <cmath>
#include <iostream>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace undercowl::platform {
namespace {

using nlohmann::json;

constexpr int done = 0;
constexpr int changed = 1; // or, of a proposal: nothing to propose
constexpr int wrongUse = 2;

// What was typed for one of the commands.
struct Typed {
    std::string photo;
    std::string after;
    std::vector<std::string> at;
    std::vector<std::string> along;
    std::vector<std::string> alongAfter;
    std::string card;
    double reflectance{};
    const bool& asJson;
};

int complain(const std::string& message) {
    std::cerr << "undercowlctl wires: " << message << '\n';
    return wrongUse;
}

// Numbers joined by commas, exactly that many.
std::optional<std::vector<double>> numbers(const std::string& text, std::size_t count) {
    std::vector<double> all;
    const char* at = text.data();
    const char* const end = at + text.size();
    while (at < end) {
        double value = 0.0;
        const auto [next, failed] = std::from_chars(at, end, value);
        if (failed != std::errc{} || (next != end && *next != ','))
            return std::nullopt;
        all.push_back(value);
        at = next == end ? end : next + 1;
    }
    return all.size() == count ? std::optional(all) : std::nullopt;
}

tl::expected<sight::Polyline, std::string> polyline(const std::vector<std::string>& texts,
                                                    const char* option) {
    sight::Polyline line;
    for (const std::string& text : texts) {
        const auto pair = numbers(text, 2);
        if (!pair)
            return tl::unexpected(std::string(option) + ": '" + text +
                                  "' is not a place: write X,Y in pixels");
        line.push_back({(*pair)[0], (*pair)[1]});
    }
    return line;
}

tl::expected<sight::Reader, std::string> open(const std::string& file, const Typed& typed) {
    auto photo = sight::Photo::read(file);
    if (!photo)
        return tl::unexpected(photo.error().message);
    sight::ReadOptions options;
    if (!typed.card.empty()) {
        const auto box = numbers(typed.card, 4);
        if (!box || (*box)[2] < 1.0 || (*box)[3] < 1.0)
            return tl::unexpected("--card: '" + typed.card + "' is not a rectangle: write X,Y,W,H in pixels");
        if (typed.reflectance <= 0.0 || typed.reflectance > 1.0)
            return tl::unexpected(
                std::string("--card-reflectance: must lie above 0 and at most 1, such as 0.18"));
        options.card = sight::Card{{static_cast<int>((*box)[0]), static_cast<int>((*box)[1]),
                                    static_cast<int>((*box)[2]), static_cast<int>((*box)[3])},
                                   typed.reflectance};
    }
    return sight::Reader(std::move(*photo), options);
}

int tap(const Typed& typed) {
    const auto points = polyline(typed.at, "--at");
    if (!points)
        return complain(points.error());
    auto reader = open(typed.photo, typed);
    if (!reader)
        return complain(reader.error());
    json answer{{"photo", typed.photo}, {"readings", json::array()}};
    for (const sight::Point& p : *points) {
        const auto reading = reader->tap(p);
        if (!reading)
            return complain("--at: " + reading.error());
        answer["readings"].push_back(tapToJson(*reading));
        if (!typed.asJson)
            std::cout << p.x << ',' << p.y << "  " << toText(*reading) << '\n';
    }
    if (typed.asJson)
        std::cout << answer.dump() << '\n';
    return done;
}

tl::expected<std::vector<sight::WireReading>, std::string> sweepOf(const std::string& file,
                                                                   const Typed& typed,
                                                                   const std::vector<std::string>& along,
                                                                   const char* option) {
    const auto line = polyline(along, option);
    if (!line)
        return tl::unexpected(line.error());
    auto reader = open(file, typed);
    if (!reader)
        return tl::unexpected(reader.error());
    auto row = reader->sweep(*line);
    if (!row)
        return tl::unexpected(std::string(option) + ": " + row.error());
    return row;
}

int sweep(const Typed& typed) {
    const auto row = sweepOf(typed.photo, typed, typed.along, "--along");
    if (!row)
        return complain(row.error());
    json answer{{"photo", typed.photo}, {"wires", json::array()}};
    for (const sight::WireReading& reading : *row) {
        answer["wires"].push_back(crossingToJson(reading));
        if (!typed.asJson)
            std::cout << answer["wires"].size() << "  " << toText(reading) << '\n';
    }
    if (typed.asJson)
        std::cout << answer.dump() << '\n';
    return done;
}

int propose(const Typed& typed) {
    const auto mouth = polyline(typed.along, "--mouth");
    if (!mouth)
        return complain(mouth.error());
    auto reader = open(typed.photo, typed);
    if (!reader)
        return complain(reader.error());
    const auto proposal = reader->propose(*mouth);
    if (!proposal)
        return complain("--mouth: " + proposal.error());
    if (typed.asJson) {
        json answer = toJson(*proposal);
        answer["photo"] = typed.photo;
        std::cout << answer.dump() << '\n';
    } else {
        for (std::size_t i = 0; i < proposal->wires.size(); ++i) {
            const sight::WireReading& reading = proposal->wires[i];
            std::cout << i + 1 << "  " << std::lround(reading.at.x) << ',' << std::lround(reading.at.y)
                      << "  " << toText(reading);
            if (proposal->perhaps[i])
                std::cout << "; perhaps wire " << *proposal->perhaps[i] + 1 << " again";
            std::cout << '\n';
        }
        for (const sight::Point& p : proposal->unfollowed)
            std::cout << "could not be followed at " << std::lround(p.x) << ',' << std::lround(p.y)
                      << ": stroke across the wires there\n";
        if (proposal->wires.empty())
            std::cout << "no wire could be followed: stroke across the wires\n";
    }
    return proposal->wires.empty() ? changed : done;
}

int compareTwo(const Typed& typed) {
    auto before = sweepOf(typed.photo, typed, typed.along, "--along-before");
    if (!before)
        return complain(before.error());
    auto after = sweepOf(typed.after, typed, typed.alongAfter, "--along-after");
    if (!after)
        return complain(after.error());
    const auto comparison = sight::compare(std::move(*before), std::move(*after));
    if (typed.asJson) {
        std::cout << toJson(comparison).dump() << '\n';
    } else {
        std::cout << sight::code(comparison.verdict) << '\n';
        for (const sight::Change& change : comparison.changes) {
            std::cout << sight::code(change.kind) << ": place";
            for (const int place : change.places)
                std::cout << ' ' << place;
            std::cout << '\n';
        }
    }
    return comparison.verdict == sight::CompareVerdict::Changed ? changed : done;
}

CLI::App* command(CLI::App& parent, const char* name, const char* what, const char* example) {
    CLI::App* added = parent.add_subcommand(name, what);
    added->footer(std::string("Example:\n  undercowlctl wires ") + example);
    return added;
}

void addCard(CLI::App& to, Typed& typed) {
    to.add_option("--card", typed.card, "A neutral card in view, X,Y,W,H in pixels");
    to.add_option("--card-reflectance", typed.reflectance,
                  "0.18 for photographer's grey, about 0.88 for white paper");
}

} // namespace

void addWires(CLI::App& app, const bool& asJson, std::function<int()>& action) {
    const auto typed = std::make_shared<Typed>(Typed{{}, {}, {}, {}, {}, {}, 0.18, asJson});
    CLI::App* wires = app.add_subcommand("wires", "Read wire colours in photos");
    wires->require_subcommand(1);

    CLI::App* one = command(*wires, "tap", "The wire nearest to a place", "tap loom.jpg --at 640,480 --json");
    one->add_option("photo", typed->photo, "JPEG or PNG")->required();
    one->add_option("--at", typed->at, "X,Y in pixels of the upright photo; may be repeated")->required();
    addCard(*one, *typed);

    CLI::App* row = command(*wires, "sweep", "The wires that a stroke crosses, in its order",
                            "sweep loom.jpg --along 200,500 900,520");
    row->add_option("photo", typed->photo, "JPEG or PNG")->required();
    row->add_option("--along", typed->along, "Points of the stroke, X,Y in pixels")->required();
    addCard(*row, *typed);

    CLI::App* all = command(*wires, "propose",
                            "All wires that can be followed, without a stroke; says where a stroke is needed",
                            "propose loom.jpg --json");
    all->add_option("photo", typed->photo, "JPEG or PNG")->required();
    all->add_option("--mouth", typed->along,
                    "Where the connector's mouth lies, two or more X,Y in pixels: only the wires out of it");
    addCard(*all, *typed);

    CLI::App* two =
        command(*wires, "compare", "What changed between two photos of one connector",
                "compare before.jpg after.jpg --along-before 200,500 900,520 --along-after 180,480 870,500");
    two->add_option("before", typed->photo, "JPEG or PNG")->required();
    two->add_option("after", typed->after, "JPEG or PNG")->required();
    two->add_option("--along-before", typed->along, "Points of the stroke in the first photo")->required();
    two->add_option("--along-after", typed->alongAfter, "Points of the stroke in the second photo")
        ->required();

    one->callback([typed, &action] { action = [typed] { return tap(*typed); }; });
    row->callback([typed, &action] { action = [typed] { return sweep(*typed); }; });
    all->callback([typed, &action] { action = [typed] { return propose(*typed); }; });
    two->callback([typed, &action] { action = [typed] { return compareTwo(*typed); }; });
}

} // namespace undercowl::platform
