// Bodies of entries: values to JSON and back. Only core/journal and core/store's archive look at JSON;
// docs/journal.md lists the shapes.
#pragma once

#include "core/job/model.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>

namespace undercowl::journal {

using Json = nlohmann::json;

// A body that does not have the shape of its kind. Thrown while a body is read and caught in fold.cpp; never
// leaves core/journal.
struct ShapeError : std::runtime_error {
    using std::runtime_error::runtime_error;
};

// Reads the fields of one object. Every accessor throws ShapeError naming the field. Text longer than 20,000
// bytes and numbers that are not finite are refused.
class Fields {
public:
    explicit Fields(const Json& object, std::string_view what = "body");

    [[nodiscard]] bool has(const char* name) const; // there and not null
    [[nodiscard]] std::string text(const char* name) const;
    [[nodiscard]] std::string textOr(const char* name, std::string_view fallback = {}) const;
    [[nodiscard]] std::optional<std::string> textIfAny(const char* name) const;
    [[nodiscard]] std::int64_t whole(const char* name, std::int64_t least, std::int64_t most) const;
    [[nodiscard]] double number(const char* name, double least, double most) const;
    [[nodiscard]] const Json& child(const char* name) const; // must be there
    [[nodiscard]] const Json& list(const char* name) const;  // must be an array, of at most 500 items

    // One of the words that 'read' knows, such as wiring::sideFromCode.
    template<typename Read>
    [[nodiscard]] auto word(const char* name, Read read) const {
        const auto value = read(text(name));
        if (!value)
            throw ShapeError(std::string(name) + ": unknown word '" + text(name) + "'");
        return *value;
    }

private:
    const Json& object_;
};

[[nodiscard]] Json toJson(const job::TypedValue& value);
[[nodiscard]] Json toJson(const job::Hardware& hardware);
[[nodiscard]] Json toJson(const wiring::Wire& wire);
[[nodiscard]] Json toJson(const wiring::PhotoMark& mark);
[[nodiscard]] Json toJson(const wiring::PlaceKey& place);

[[nodiscard]] job::TypedValue typedValue(const Json& json);
[[nodiscard]] job::Hardware hardware(const Json& json);
[[nodiscard]] wiring::Wire wire(const Json& json);
[[nodiscard]] wiring::PhotoMark photoMark(const Json& json);
[[nodiscard]] wiring::PlaceKey placeKey(const Json& json);

// Adds the field unless it is empty: bodies hold what was said and nothing else.
void put(Json& body, const char* name, const std::string& text);
template<typename T>
void put(Json& body, const char* name, const std::optional<T>& value) {
    if (value)
        body[name] = toJson(*value);
}

} // namespace undercowl::journal
