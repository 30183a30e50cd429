// What is known of one job, its machine and its owner: plain values, projected from the journal's entries.
//
// Ids are UUIDs as lower-case text; empty means none. Times are milliseconds since 1970, UTC. Text is UTF-8
// as typed. More than 400 lines: these values are read together.
#pragma once

#include "core/job/basics.h"
#include "core/job/closing.h"
#include "core/wiring/map.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::job {

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

// The owner was told and said no. It settles nothing: the finding stays open and stands in the record.
struct Refusal {
    std::string by;  // who said so
    std::string how; // "called", "wrote", "stood here"
    std::string note;
    Said said;

    friend bool operator==(const Refusal&, const Refusal&) = default;
};

struct Finding {
    Id id;
    std::string text;
    Severity severity{Severity::Note};
    std::string toDo;
    bool settled{};
    std::string settledHow;
    Said said;
    std::optional<int> minutes{};     // estimated
    std::optional<Refusal> refused{}; // the owner does not want it put right
    Id settledBy{};                   // entry that settled it

    friend bool operator==(const Finding&, const Finding&) = default;
};

struct Hardware {
    int count{1};
    std::string what;   // "screw", "flange nut"
    std::string thread; // "M5"
    std::string length; // "16 mm"
    std::optional<TypedValue> torque;
    std::vector<wiring::PhotoMark> at{}; // where it sits on photos of the step, at most one for each piece

    friend bool operator==(const Hardware&, const Hardware&) = default;
};

// What holds a task up.
enum class Holds : std::uint8_t { NotSaid, Owner, Parts, Outside };

struct Task {
    Id id;
    std::string title;
    bool waiting{};
    std::string waitingFor;
    int order{};                  // in order of naming
    std::vector<Id> after{};      // tasks that have to be finished before this one is refitted
    std::optional<int> minutes{}; // estimated
    Id finding{};                 // that it came from; empty if none
    bool done{};                  // said to be finished
    Holds heldBy{Holds::NotSaid}; // while it waits

    friend bool operator==(const Task&, const Task&) = default;
};

struct Refitted {
    Said said;
    std::string note;

    friend bool operator==(const Refitted&, const Refitted&) = default;
};

// What putting a part back takes beyond the strip step backwards.
struct RefitNeeds {
    std::vector<std::string> renew;      // new every time: "split pin"
    std::string apply;                   // what goes on it: "copper grease on the axle"; "none"
    std::vector<std::string> afterwards; // to be adjusted, bled or tried once it is on
    bool doNotStart{};                   // until all that is done
    bool doNotRide{};

    friend bool operator==(const RefitNeeds&, const RefitNeeds&) = default;
};

// Something to be renewed or done afterwards was seen to, or left out for a reason.
struct SeenTo {
    std::string what; // as RefitNeeds names it
    bool leftOut{};
    std::string note; // how; the reason when it was left out
    Said said;

    friend bool operator==(const SeenTo&, const SeenTo&) = default;
};

// What is read back on refit sits as it did, or does not.
enum class MatchOutcome : std::uint8_t { Matches, DoesNotMatch };

// A hose, vent or cable read back: whether it runs and ends as it was found.
struct LineCheck {
    MatchOutcome outcome{};
    std::string note;
    Said said;

    friend bool operator==(const LineCheck&, const LineCheck&) = default;
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
    std::string routing{};                // where it runs and what it passes
    std::string letOut{};                 // fluid that was let out, and how much
    std::string asFound{};                // adjustment as found: turns, marks, shims
    std::string ends{};                   // of a hose, vent or cable: where each end sits
    std::optional<RefitNeeds> needs{};    // as changed by the mechanic; otherwise core/job/needs.h suggests
    std::vector<SeenTo> seenTo{};         // the last word on each
    std::optional<LineCheck> lineCheck{}; // the last one; core/job/lines.h says which steps are such lines

    friend bool operator==(const StripStep&, const StripStep&) = default;
};

enum class PartState : std::uint8_t { Wanted, Asked, Ordered, Here, Wrong, Fitted, NotNeeded };

enum class PartFit : std::uint8_t { NotSaid, Fits, FitsAfterChange, DoesNotFit };

struct Part {
    Id id;
    std::string name;
    std::string number;
    PartState state{};
    std::string note;
    Id about; // finding or step
    Said said;
    std::string supplier{};
    std::string otherNumbers{};        // other makers' numbers for the same part, as typed
    std::optional<TypedValue> price{}; // the unit is the currency: "EUR"
    std::string fit{};                 // what was learned of it on this model: why it did not fit, or
    PartFit fitted{PartFit::NotSaid};  // after what change it did

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
    std::vector<int> marks{}; // places in the sound that matter, in milliseconds from its beginning

    friend bool operator==(const Memo&, const Memo&) = default;
};

struct Recheck {
    Id id;
    std::string what;
    std::optional<TypedValue> after; // distance
    std::optional<int> afterDays;
    Said said;
    std::optional<Noted> seen{}; // it was done

    friend bool operator==(const Recheck&, const Recheck&) = default;
};

// One wire checked against the map on refit.
struct WireCheck {
    Id gathering;
    wiring::PlaceKey place;
    MatchOutcome outcome{};
    wiring::Answer against{}; // which answer was read back
    std::string note;
    Said said;

    friend bool operator==(const WireCheck&, const WireCheck&) = default;
};

// The owner's word on what the work may cost, at the beginning or when more was found.
struct Approval {
    Id id;
    std::string what; // what it covers
    bool given{};     // false: asked and refused
    std::string by;
    std::string how;                 // "called", "wrote", "stood here"
    std::optional<TypedValue> sum{}; // the unit is the currency
    std::vector<Id> findings;        // that it covers
    Said said;

    friend bool operator==(const Approval&, const Approval&) = default;
};

enum class CheckAnswer : std::uint8_t { Fine, Found, NotDone };

struct RoundCheck {
    std::string group;                 // "front brake"
    std::string text;                  // "lever: firm, does not creep"
    std::optional<CheckAnswer> answer; // none: not come to yet
    std::string note;
    Id finding; // that came of it
    Said said;  // of the answer

    friend bool operator==(const RoundCheck&, const RoundCheck&) = default;
};

// A list of checks that was begun on the machine, with the words that the round's file had on that day.
struct Round {
    Id id;
    std::string key; // "two-stroke"
    std::string title;
    std::vector<RoundCheck> checks;
    Said said;

    friend bool operator==(const Round&, const Round&) = default;
};

enum class FunctionAnswer : std::uint8_t { Works, DoesNot, NotTried };

// Whether something worked when the machine came, the last word on it.
struct FunctionCheck {
    std::string what; // "horn"
    FunctionAnswer answer{};
    std::string note;
    Said said;

    friend bool operator==(const FunctionCheck&, const FunctionCheck&) = default;
};

// Work on a task. Without an end the watch still runs.
struct WorkSpan {
    Id id;
    Id task; // empty: on the job as a whole
    Said started;
    std::optional<Said> stopped;
    std::optional<int> minutes; // as the mechanic corrected it; otherwise stopped - started

    friend bool operator==(const WorkSpan&, const WorkSpan&) = default;
};

// Fluid, grease or sealant that went into the machine.
struct ConsumableUse {
    Id id;
    std::string what;  // "brake fluid"
    std::string grade; // "DOT 4"
    std::string limit; // grades that the machine allows, "DOT 4, DOT 5.1"; empty if unknown
    std::string batch;
    std::string opened; // day on which the container was opened, "2026-11-02"; empty if unknown
    Id about;           // step
    Said said;

    friend bool operator==(const ConsumableUse&, const ConsumableUse&) = default;
};

struct HandedOver {
    std::string note;
    Said said;
    std::string oldParts{}; // what became of them: "given back", "kept for 14 days"
    std::string waste{};    // taken: oil, battery, tyres

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
    std::string received;                // keys and papers that came with it
    std::optional<TypedValue> riderMass; // with what it will be ridden
    std::optional<TypedValue> luggageMass;
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
    std::vector<Approval> approvals;
    std::vector<Round> rounds;
    std::vector<FunctionCheck> functions;
    std::vector<FunctionCheck> functionsAfter; // tried again before it leaves
    std::vector<Proof> proofs;                 // the last word on each
    std::vector<SecondEyes> secondEyes;
    std::vector<RoadTest> roadTests;
    std::optional<CostTerms> costTerms;
    std::optional<Signature> signature;
    Id cameBackFrom; // the job that this one is a return of
    std::vector<WorkSpan> spans;
    std::vector<ConsumableUse> consumables;
    std::vector<Id> refitWish; // steps in the order in which the mechanic wants to refit them; may be partial
    std::optional<HandedOver> handedOver;
    std::vector<HistoryLine> history;
    std::vector<Id>
        unreadable; // entries whose body does not have the shape of their kind; nothing of them is shown

    friend bool operator==(const Job&, const Job&) = default;
};

[[nodiscard]] std::string_view
code(PhotoPurpose purpose); // "as found", "finding", "strip", "wiring", "refit", "other"
[[nodiscard]] std::string_view code(Severity severity);     // "unsafe", "soon", "note"
[[nodiscard]] std::string_view code(Holds by);              // "not said", "owner", "parts", "outside"
[[nodiscard]] std::string_view code(PartState state);       // "wanted" ... "not needed"
[[nodiscard]] std::string_view code(MatchOutcome outcome);  // "matches", "does not match"
[[nodiscard]] std::string_view code(PartFit fit);           // "not said", "fits", "fits after a change", ...
[[nodiscard]] std::string_view code(CheckAnswer answer);    // "fine", "found", "not done"
[[nodiscard]] std::string_view code(FunctionAnswer answer); // "works", "does not", "not tried"
[[nodiscard]] std::optional<PhotoPurpose> photoPurposeFromCode(std::string_view text);
[[nodiscard]] std::optional<Severity> severityFromCode(std::string_view text);
[[nodiscard]] std::optional<PartState> partStateFromCode(std::string_view text);
[[nodiscard]] std::optional<MatchOutcome> matchOutcomeFromCode(std::string_view text);

[[nodiscard]] std::optional<Holds> holdsFromCode(std::string_view text);
[[nodiscard]] std::optional<PartFit> partFitFromCode(std::string_view text);
[[nodiscard]] std::optional<CheckAnswer> checkAnswerFromCode(std::string_view text);
[[nodiscard]] std::optional<FunctionAnswer> functionAnswerFromCode(std::string_view text);

// Lookups by id; null if there is none. The result is owned by the job.
[[nodiscard]] const StripStep* findStep(const Job& job, std::string_view id);
[[nodiscard]] const Finding* findFinding(const Job& job, std::string_view id);
[[nodiscard]] const Task* findTask(const Job& job, std::string_view id);
[[nodiscard]] const Photo* findPhoto(const Job& job, std::string_view id);
[[nodiscard]] const wiring::Gathering* findGathering(const Job& job, std::string_view id);

// Neither fitted nor given up: somebody waits for it or has to fit it.
[[nodiscard]] bool outstanding(const Part& part);

// Photos about one finding, step or gathering, in order.
[[nodiscard]] std::vector<const Photo*> photosAbout(const Job& job, std::string_view about);

} // namespace undercowl::job
