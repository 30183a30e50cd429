#include "core/journal/body.h"

#include <cmath>

namespace undercowl::journal {
namespace {

constexpr std::size_t longestText = 20'000;
constexpr std::size_t mostItems = 500;
constexpr int mostPlaces = 60;

} // namespace

Fields::Fields(const Json& object, std::string_view what) : object_(object) {
    if (!object.is_object())
        throw ShapeError(std::string(what) + ": must be an object");
}

bool Fields::has(const char* name) const {
    const auto found = object_.find(name);
    return found != object_.end() && !found->is_null();
}

const Json& Fields::child(const char* name) const {
    const auto found = object_.find(name);
    if (found == object_.end())
        throw ShapeError(std::string(name) + ": missing");
    return *found;
}

std::string Fields::text(const char* name) const {
    const Json& value = child(name);
    if (!value.is_string())
        throw ShapeError(std::string(name) + ": must be text");
    auto text = value.get<std::string>();
    if (text.size() > longestText)
        throw ShapeError(std::string(name) + ": longer than 20,000 bytes");
    if (text.find('\0') != std::string::npos)
        throw ShapeError(std::string(name) + ": must not hold a NUL character");
    return text;
}

std::string Fields::textOr(const char* name, std::string_view fallback) const {
    return has(name) ? text(name) : std::string(fallback);
}

std::optional<std::string> Fields::textIfAny(const char* name) const {
    return has(name) ? std::optional(text(name)) : std::nullopt;
}

std::int64_t Fields::whole(const char* name, std::int64_t least, std::int64_t most) const {
    const Json& value = child(name);
    if (!value.is_number_integer())
        throw ShapeError(std::string(name) + ": must be a whole number");
    // An unsigned number beyond the signed range would wrap round into it.
    const bool wraps = value.is_number_unsigned() && value.get<std::uint64_t>() > INT64_MAX;
    const auto number = value.get<std::int64_t>();
    if (wraps || number < least || number > most)
        throw ShapeError(std::string(name) + ": must lie between " + std::to_string(least) + " and " +
                         std::to_string(most));
    return number;
}

double Fields::number(const char* name, double least, double most) const {
    const Json& value = child(name);
    if (!value.is_number())
        throw ShapeError(std::string(name) + ": must be a number");
    const auto number = value.get<double>();
    if (!std::isfinite(number) || number < least || number > most)
        throw ShapeError(std::string(name) + ": must lie between " + std::to_string(least) + " and " +
                         std::to_string(most));
    return number;
}

const Json& Fields::list(const char* name) const {
    const Json& value = child(name);
    if (!value.is_array() || value.size() > mostItems)
        throw ShapeError(std::string(name) + ": must be a list of at most 500 items");
    return value;
}

void put(Json& body, const char* name, const std::string& text) {
    if (!text.empty())
        body[name] = text;
}

Json toJson(const job::TypedValue& value) {
    return {{"digits", value.digits}, {"unit", value.unit}};
}

job::TypedValue typedValue(const Json& json) {
    const Fields fields(json, "quantity");
    return {fields.text("digits"), fields.textOr("unit")};
}

Json toJson(const job::Hardware& hardware) {
    Json json{{"count", hardware.count}};
    put(json, "what", hardware.what);
    put(json, "thread", hardware.thread);
    put(json, "length", hardware.length);
    put(json, "torque", hardware.torque);
    for (const wiring::PhotoMark& mark : hardware.at)
        json["at"].push_back(toJson(mark));
    return json;
}

job::Hardware hardware(const Json& json) {
    const Fields fields(json, "hardware");
    job::Hardware hardware;
    hardware.count = static_cast<int>(fields.whole("count", 1, 999));
    hardware.what = fields.textOr("what");
    hardware.thread = fields.textOr("thread");
    hardware.length = fields.textOr("length");
    if (fields.has("torque"))
        hardware.torque = typedValue(fields.child("torque"));
    if (fields.has("at"))
        for (const Json& mark : fields.list("at"))
            hardware.at.push_back(photoMark(mark));
    return hardware;
}

Json toJson(const wiring::Wire& wire) {
    Json json{{"base", colour::code(wire.colour.base)}};
    if (wire.colour.tracer)
        json["tracer"] = colour::code(*wire.colour.tracer);
    put(json, "terminal", wiring::text(wire.terminal));
    if (wire.sizeMm2)
        json["size_mm2"] = *wire.sizeMm2;
    put(json, "function", wire.function);
    put(json, "din", wire.din);
    return json;
}

wiring::Wire wire(const Json& json) {
    const Fields fields(json, "wire");
    wiring::Wire wire;
    wire.colour.base = fields.word("base", colour::insulationFromCode);
    if (fields.has("tracer"))
        wire.colour.tracer = fields.word("tracer", colour::insulationFromCode);
    if (fields.has("terminal"))
        wire.terminal = fields.word("terminal", wiring::terminalFromText);
    if (fields.has("size_mm2"))
        wire.sizeMm2 = fields.number("size_mm2", 0.01, 200);
    wire.function = fields.textOr("function");
    wire.din = fields.textOr("din");
    return wire;
}

Json toJson(const wiring::PhotoMark& mark) {
    return {{"photo", mark.photo}, {"x", mark.x}, {"y", mark.y}};
}

wiring::PhotoMark photoMark(const Json& json) {
    const Fields fields(json, "mark");
    return {fields.text("photo"), fields.number("x", 0, 1), fields.number("y", 0, 1)};
}

Json toJson(const wiring::PlaceKey& place) {
    Json json{{"half", wiring::code(place.half)}, {"number", place.number}};
    if (place.slot != 1)
        json["slot"] = place.slot;
    return json;
}

wiring::PlaceKey placeKey(const Json& json) {
    const Fields fields(json, "place");
    wiring::PlaceKey place;
    place.half = fields.word("half", wiring::halfFromCode);
    place.number = static_cast<int>(fields.whole("number", 1, mostPlaces));
    if (fields.has("slot"))
        place.slot = static_cast<int>(fields.whole("slot", 1, 2));
    return place;
}

} // namespace undercowl::journal
