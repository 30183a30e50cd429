#include "core/store/limits.h"

#include "core/journal/fold.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace undercowl::store {
namespace {

// Reads along without building anything, so that a hostile text costs no memory.
class Look final : public nlohmann::json_sax<nlohmann::json> {
public:
    explicit Look(std::size_t deepest) : deepest_(deepest) {}

    bool null() override { return scalar(); }
    bool boolean(bool /*value*/) override { return scalar(); }
    bool number_integer(number_integer_t /*value*/) override { return scalar(); }
    bool number_unsigned(number_unsigned_t /*value*/) override { return scalar(); }
    bool number_float(number_float_t /*value*/, const string_t& /*text*/) override { return scalar(); }
    bool string(string_t& value) override { return scalar() && noNul(value); }
    bool binary(binary_t& /*value*/) override { return false; }
    bool start_object(std::size_t /*elements*/) override {
        topIsObject_ = topIsObject_ || depth_ == 0;
        return deeper();
    }
    bool key(string_t& value) override { return noNul(value); }
    bool end_object() override {
        --depth_;
        return true;
    }
    bool start_array(std::size_t /*elements*/) override { return deeper(); }
    bool end_array() override {
        --depth_;
        return true;
    }
    bool parse_error(std::size_t position, const std::string& /*token*/,
                     const nlohmann::detail::exception& /*error*/) override {
        problem_ = "is not JSON in UTF-8 (at byte " + std::to_string(position) + ")";
        return false;
    }

    [[nodiscard]] std::optional<std::string> problem() const {
        if (problem_.empty() && !topIsObject_) {
            return "is not a JSON object";
        }
        return problem_.empty() ? std::nullopt : std::optional(problem_);
    }

private:
    bool scalar() const { return depth_ > 0 || topIsObject_; }
    bool deeper() {
        if (++depth_ > deepest_) {
            problem_ = "is nested deeper than " + std::to_string(deepest_) + " levels";
            return false;
        }
        return topIsObject_;
    }
    bool noNul(const std::string& value) {
        if (value.find('\0') != std::string::npos) {
            problem_ = "holds a NUL character in a text";
            return false;
        }
        return true;
    }

    std::size_t deepest_;
    std::size_t depth_{};
    bool topIsObject_{};
    std::string problem_;
};

bool isKind(std::string_view text) {
    return !text.empty() && text.size() <= 64 &&
           text.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789.-") == std::string_view::npos;
}

std::string shown(std::string_view text) {
    std::string plain(text.substr(0, 80));
    std::replace_if(
        plain.begin(), plain.end(), [](unsigned char c) { return c < 0x20 || c > 0x7E; }, '?');
    return "'" + plain + "'";
}

std::optional<std::string> namesProblem(std::string_view kind, const job::Id& stream, const job::Id& subject,
                                        const job::Id& supersedes) {
    const std::string idRule = " is not an id (1 to 64 of 0-9, a-z, -)";
    if (!isKind(kind)) {
        return "kind: " + shown(kind) + " is not a kind of entry";
    }
    if (!isId(stream)) {
        return "stream: " + shown(stream) + idRule;
    }
    if (!isId(subject)) {
        return "subject: " + shown(subject) + idRule;
    }
    if (!supersedes.empty() && !isId(supersedes)) {
        return "supersedes: " + shown(supersedes) + idRule;
    }
    return std::nullopt;
}

std::optional<std::string> bodyProblem(const std::string& body) {
    if (body.size() > longestBody) {
        return "body: has " + std::to_string(body.size()) + " bytes, at most " + std::to_string(longestBody) +
               " are kept; shorten the text";
    }
    if (auto problem = jsonProblem(body, deepestJson)) {
        return "body: " + *problem;
    }
    return std::nullopt;
}

bool isHash(std::string_view text) {
    return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

} // namespace

bool isId(std::string_view text) {
    return !text.empty() && text.size() <= 64 &&
           text.find_first_not_of("0123456789abcdefghijklmnopqrstuvwxyz-") == std::string_view::npos;
}

std::optional<std::string> jsonProblem(std::string_view text, std::size_t deepest) {
    Look look(deepest);
    const bool whole = nlohmann::json::sax_parse(text, &look);
    auto problem = look.problem();
    return !whole && !problem ? std::optional<std::string>("is not JSON in UTF-8") : problem;
}

std::optional<std::string> draftProblem(const journal::Draft& draft) {
    if (auto problem = namesProblem(draft.kind, draft.stream, draft.subject, draft.supersedes)) {
        return problem;
    }
    if (auto problem = bodyProblem(draft.body)) {
        return draft.kind + ": " + *problem;
    }
    journal::Entry entry;
    entry.kind = draft.kind;
    entry.stream = draft.stream;
    entry.subject = draft.subject;
    entry.body = draft.body;
    return journal::shapeProblem(entry);
}

std::optional<std::string> entryProblem(const journal::Entry& entry) {
    const std::string which = "entry " + shown(entry.id) + ": ";
    if (!isId(entry.id) || !isId(entry.device) || (!entry.mechanic.empty() && !isId(entry.mechanic))) {
        return which + "id, device or mechanic is not an id";
    }
    if (auto problem = namesProblem(entry.kind, entry.stream, entry.subject, entry.supersedes)) {
        return which + *problem;
    }
    constexpr std::uint64_t mostEntries = (std::uint64_t{1} << 53U) - 1; // exact in every reader of JSON
    if (entry.number == 0 || entry.number > mostEntries) {
        return which + "number: is out of range";
    }
    if (entry.clock.wallMs < 0 || entry.clock.wallMs > latestTime) {
        return which + "clock: is not between 1970 and 9999";
    }
    if ((entry.number == 1) != entry.previous.empty() || (entry.number > 1 && !isHash(entry.previous))) {
        return which + "previous: is not the hash of the entry before";
    }
    if (!entry.redacted) {
        if (auto problem = bodyProblem(entry.body)) {
            return which + *problem;
        }
    }
    return journal::sealProblem(entry);
}

} // namespace undercowl::store
