// What the appliers of entries share. Not for use outside this folder.
#pragma once

#include "core/journal/apply.h"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace undercowl::journal {

struct Kind {
    std::string_view name;
    ApplyToJob apply;
};

// Of the kinds that go with the work beside stripping: approvals, rounds, time, consumables, what a refit
// needs. Null for another kind.
[[nodiscard]] ApplyToJob applyToWork(std::string_view kind);

// Of the kinds that are said between the last bolt and the owner's hand. Null for another kind.
[[nodiscard]] ApplyToJob applyToClosing(std::string_view kind);

[[nodiscard]] inline job::Said said(const InForce& entry) {
    return {entry.last->id, entry.last->mechanic, entry.first->clock.wallMs};
}

template<typename T>
[[nodiscard]] T* byId(std::vector<T>& items, const Id& id) {
    const auto found = std::find_if(items.begin(), items.end(), [&](const T& item) { return item.id == id; });
    return found == items.end() ? nullptr : &*found;
}

// A second entry about the same subject that corrects nothing (another device did not know of the first)
// replaces the value in its place.
template<typename T>
T& putById(std::vector<T>& items, T item) {
    if (T* old = byId(items, item.id)) {
        *old = std::move(item);
        return *old;
    }
    return items.emplace_back(std::move(item));
}

[[nodiscard]] inline std::optional<job::TypedValue> typedIfAny(const Fields& body, const char* name) {
    if (!body.has(name))
        return std::nullopt;
    return typedValue(body.child(name));
}

// A list of texts; empty when it is not there.
[[nodiscard]] std::vector<std::string> texts(const Fields& body, const char* name);

// True or false; false when it is not there.
[[nodiscard]] bool flag(const Fields& body, const char* name);

// "minutes", from 0 to a year.
[[nodiscard]] std::optional<int> minutesIfAny(const Fields& body);

} // namespace undercowl::journal
