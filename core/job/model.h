// What is known of one job, its machine and its owner: plain values, projected from the journal's entries.
//
// Ids are UUIDs as lower-case text; empty means none. Times are milliseconds since 1970, UTC. Text is UTF-8
// as typed.
#pragma once

#include "core/wiring/map.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

using Id = std::string;
using TimeMs = std::int64_t;

// A quantity with the digits and the unit that were typed; core/units converts and judges it.
struct TypedValue {
    std::string digits; // "9.3", with a point
    std::string unit;   // "N.m"

    friend bool operator==(const TypedValue&, const TypedValue&) = default;
};

// Who said it and when; taken from the entry.
struct Said {
    Id entry;
    Id mechanic;
    TimeMs at{};

    friend bool operator==(const Said&, const Said&) = default;
};

struct Mechanic {
    Id id;
    std::string name;

    friend bool operator==(const Mechanic&, const Mechanic&) = default;
};

struct Machine {
    Id id;
    std::string make;
    std::string model;
    std::optional<int> year;
    std::string frameNumber;
    std::string notes;

    friend bool operator==(const Machine&, const Machine&) = default;
};

struct Owner {
    Id id;
    std::string name;
    std::string phone;
    std::string mail;
    std::string address;

    friend bool operator==(const Owner&, const Owner&) = default;
};

enum class PhotoPurpose : std::uint8_t { AsFound, Finding, Strip, Wiring, Refit, Other };

struct Photo {
    Id id;
    std::string media; // name in the media store: content hash with suffix
    PhotoPurpose purpose{};
    Id about; // finding, step or gathering; empty when it is about the machine as a whole
    std::string note;
    int width{}; // of the upright photo, pixels
    int height{};
    TimeMs takenAt{};
    Said said;

    friend bool operator==(const Photo&, const Photo&) = default;
};

enum class Severity : std::uint8_t { Unsafe, Soon, Note };

struct Finding {
    Id id;
    std::string text;
    Severity severity{Severity::Note};
    std::string toDo;
    bool settled{};
    std::string settledHow;
    Said said;

    friend bool operator==(const Finding&, const Finding&) = default;
};

struct Hardware {
    int count{1};
    std::string what;   // "screw", "flange nut"
    std::string thread; // "M5"
    std::string length; // "16 mm"
    std::optional<TypedValue> torque;

    friend bool operator==(const Hardware&, const Hardware&) = default;
};

struct Task {
    Id id;
    std::string title;
    bool waiting{};
    std::string waitingFor;
    int order{}; // in order of naming

    friend bool operator==(const Task&, const Task&) = default;
};

struct Refitted {
    Said said;
    std::string note;

    friend bool operator==(const Refitted&, const Refitted&) = default;
};

struct StripStep {
    Id id;
    Id task;
    std::string title; // "unplug 6-place connector"
    std::vector<Hardware> hardware;
    std::string bag; // number or name of the bag; empty if nothing was bagged
    std::string note;
    std::vector<std::string> cautions; // keys of the usual cautions, "battery-negative-off"
    int order{};                       // in order of stripping, over all tasks
    Said said;
    std::optional<Refitted> refitted;

    friend bool operator==(const StripStep&, const StripStep&) = default;
};

enum class PartState : std::uint8_t { Wanted, Asked, Ordered, Here, Wrong, Fitted };

struct Part {
    Id id;
    std::string name;
    std::string number;
    PartState state{};
    std::string note;
    Id about; // finding or step
    Said said;

    friend bool operator==(const Part&, const Part&) = default;
};

struct Reading {
    Id id;
    Id about;                          // step or task; empty for the machine as a whole
    std::string what;                  // "rear axle nut, torque"
    TypedValue value;                  // the mean where several were taken
    std::vector<std::string> repeated; // digits of each of several, in the value's unit; empty for one alone
    std::string instrument;            // as shown in the record; empty if none was named
    std::string uncertainty;           // "0.4 N.m (k = 2)"; empty if unknown
    std::optional<TypedValue> low;
    std::optional<TypedValue> high;
    std::string limitSource;           // "manual, page 7-12"
    std::string verdict;               // "within", "outside", "too close to call"; empty: no verdict
    std::optional<double> probability; // of conformity
    Said said;

    friend bool operator==(const Reading&, const Reading&) = default;
};

struct Memo {
    Id id;
    std::string media; // sound file, empty for a written memo
    std::string text;
    Id about;
    Said said;

    friend bool operator==(const Memo&, const Memo&) = default;
};

struct Recheck {
    Id id;
    std::string what;
    std::optional<TypedValue> after; // distance
    std::optional<int> afterDays;
    Said said;

    friend bool operator==(const Recheck&, const Recheck&) = default;
};

// One wire checked against the map on refit.
enum class MatchOutcome : std::uint8_t { Matches, DoesNotMatch };

struct WireCheck {
    Id gathering;
    wiring::PlaceKey place;
    MatchOutcome outcome{};
    wiring::Answer against{}; // which answer was read back
    std::string note;
    Said said;

    friend bool operator==(const WireCheck&, const WireCheck&) = default;
};

struct HandedOver {
    std::string note;
    Said said;

    friend bool operator==(const HandedOver&, const HandedOver&) = default;
};

// A line of the job's history; withdrawn and superseded entries stay in it.
struct HistoryLine {
    Id entry;
    std::string kind;
    Id subject;
    Id mechanic;
    TimeMs at{};
    bool withdrawn{};
    bool superseded{};

    friend bool operator==(const HistoryLine&, const HistoryLine&) = default;
};

struct Job {
    Id id;
    std::string number; // "2026-014", what the mechanic calls it
    Id machine;
    Id owner;
    std::string reason; // why it is here
    std::string works;  // what works, as said at take-in
    std::string worksNot;
    std::optional<TypedValue> odometer;
    std::optional<TypedValue> altitude; // where it will be ridden
    std::string load;
    Said opened;
    std::vector<Photo> photos; // in order of the entries, as are all lists below
    std::vector<Finding> findings;
    std::vector<Task> tasks;
    std::vector<StripStep> steps;
    std::vector<wiring::Gathering> gatherings;
    std::vector<WireCheck> wireChecks; // the last one of each place
    std::vector<Part> parts;
    std::vector<Reading> readings;
    std::vector<Memo> memos;
    std::vector<Recheck> rechecks;
    std::optional<HandedOver> handedOver;
    std::vector<HistoryLine> history;
    std::vector<Id>
        unreadable; // entries whose body does not have the shape of their kind; nothing of them is shown

    friend bool operator==(const Job&, const Job&) = default;
};

[[nodiscard]] std::string_view
code(PhotoPurpose purpose); // "as found", "finding", "strip", "wiring", "refit", "other"
[[nodiscard]] std::string_view code(Severity severity);    // "unsafe", "soon", "note"
[[nodiscard]] std::string_view code(PartState state);      // "wanted" ... "fitted"
[[nodiscard]] std::string_view code(MatchOutcome outcome); // "matches", "does not match"
[[nodiscard]] std::optional<PhotoPurpose> photoPurposeFromCode(std::string_view text);
[[nodiscard]] std::optional<Severity> severityFromCode(std::string_view text);
[[nodiscard]] std::optional<PartState> partStateFromCode(std::string_view text);
[[nodiscard]] std::optional<MatchOutcome> matchOutcomeFromCode(std::string_view text);

// Lookups by id; null if there is none. The result is owned by the job.
[[nodiscard]] const StripStep* findStep(const Job& job, std::string_view id);
[[nodiscard]] const Task* findTask(const Job& job, std::string_view id);
[[nodiscard]] const Photo* findPhoto(const Job& job, std::string_view id);
[[nodiscard]] const wiring::Gathering* findGathering(const Job& job, std::string_view id);

// Photos about one finding, step or gathering, in order.
[[nodiscard]] std::vector<const Photo*> photosAbout(const Job& job, std::string_view about);

} // namespace undercowl::job
