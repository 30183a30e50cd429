#include "core/sight/compare.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <optional>
#include <utility>

namespace undercowl::sight {
namespace {

using Readings = std::vector<WireReading>;

// On photos of our own, what was read where there was no wire was less plain than this.
bool allPlain(const Readings& row) {
    return std::all_of(row.begin(), row.end(), [](const WireReading& wire) { return wire.plainness >= 0.5; });
}

// About as many wires as are in use in vehicles: what a reading leaves out is spread over these.
constexpr double otherWires = 100.0;

double probabilityOf(const WireReading& reading, const colour::WireColour& wire) {
    double rest = 1.0;
    for (const Candidate& candidate : reading.candidates) {
        if (candidate.wire == wire)
            return candidate.probability;
        rest -= candidate.probability;
    }
    return std::max(rest, 0.001) / otherWires;
}

// How much likelier the two readings are if they are of one wire than if they are of two wires taken at
// random.
double logSame(const WireReading& one, const WireReading& other) {
    double agree = 1e-7;
    for (const Candidate& candidate : one.candidates)
        agree += candidate.probability * probabilityOf(other, candidate.wire);
    return std::log(agree * otherWires);
}

// Places of the crossings along a stroke, 0 at the first wire and 1 at the last.
std::vector<double> places(const Readings& row) {
    std::vector<double> at(row.size());
    for (std::size_t i = 1; i < row.size(); ++i)
        at[i] = at[i - 1] + std::hypot(row[i].at.x - row[i - 1].at.x, row[i].at.y - row[i - 1].at.y);
    return at;
}

// For each wire before, the wire after that stands in its place; none where it is gone.
using Alignment = std::vector<std::optional<std::size_t>>;

// How well the gaps of one row fit those of the other: the connector holds its cavities where they are, so
// the places of the wires that stayed differ by a shift and a scale only, but for slack in the wires.
double logGeometry(const std::vector<double>& before, const std::vector<double>& after,
                   const Alignment& alignment) {
    double n = 0;
    double x = 0;
    double y = 0;
    double xx = 0;
    double xy = 0;
    for (std::size_t i = 0; i < alignment.size(); ++i)
        if (alignment[i]) {
            const double b = before[i];
            const double a = after[*alignment[i]];
            n += 1;
            x += b;
            y += a;
            xx += b * b;
            xy += b * a;
        }
    const double spread = n * xx - x * x;
    if (n < 3 || spread <= 0.0 || after.size() < 2)
        return 0.0;
    const double slope = (n * xy - x * y) / spread;
    const double shift = (y - slope * x) / n;
    const double pitch = after.back() / double(after.size() - 1); // a typical gap
    constexpr double slack = 0.28;                                // of a gap
    double sum = 0.0;
    for (std::size_t i = 0; i < alignment.size(); ++i)
        if (alignment[i]) {
            const double miss = (after[*alignment[i]] - slope * before[i] - shift) / (slack * pitch);
            sum += std::log1p(miss * miss / 4.0); // long tails: a wire may be bent far aside
        }
    return -2.0 * sum;
}

// Anything else may have happened: another connector, a row that was misread. Each pair then agrees only by
// chance, but the wires of a shop's connectors are the same few, so chance is worth more than nothing.
double logUnrelated(std::size_t wires) {
    return std::log(0.01) + 0.4 * double(wires);
}

struct Hypothesis {
    Comparison answer; // verdict and changes only
    double logProbability{};
    double logPrior{}; // of which: what was believed before the photos were seen
};

class Weighing {
public:
    Weighing(const Readings& before, const Readings& after)
        : before_(before), after_(after), placesBefore_(places(before)), placesAfter_(places(after)) {}

    std::vector<Hypothesis> all() {
        const std::size_t n = before_.size();
        const std::size_t m = after_.size();
        if (n == m) {
            weighUnmoved();
        } else if (n == m + 1) {
            for (std::size_t gone = 0; gone < n; ++gone)
                weighGone(gone);
        } else if (m == n + 1) {
            for (std::size_t added = 0; added < m; ++added)
                weighAdded(added);
        }
        return std::move(hypotheses_);
    }

private:
    // Prior odds: most rows that are compared are right; a slip with two wires is the commonest mistake.
    static constexpr double priorSame = 0.55;
    static constexpr double priorSwapped = 0.30;
    static constexpr double priorDifferent = 0.04;

    [[nodiscard]] double sum(const Alignment& alignment) const {
        double total = logGeometry(placesBefore_, placesAfter_, alignment);
        for (std::size_t i = 0; i < alignment.size(); ++i)
            if (alignment[i])
                total += logSame(before_[i], after_[*alignment[i]]);
        return total;
    }

    void add(double logEvidence, double prior, CompareVerdict verdict, std::vector<Change> changes) {
        const double logPrior = std::log(prior);
        hypotheses_.push_back({{verdict, std::move(changes), {}, {}}, logEvidence + logPrior, logPrior});
    }

    void weighUnmoved() {
        const std::size_t n = before_.size();
        Alignment straight(n);
        for (std::size_t i = 0; i < n; ++i)
            straight[i] = i;
        const double base = sum(straight);
        add(base, priorSame, CompareVerdict::Same, {});
        const double pairs = std::max(1.0, double(n) * double(n - 1) / 2.0);
        for (std::size_t i = 0; i < n; ++i) {
            const double own = logSame(before_[i], after_[i]);
            add(base - own, priorDifferent / double(n), CompareVerdict::Changed,
                {{ChangeKind::Different, {int(i) + 1}}});
            for (std::size_t j = i + 1; j < n; ++j) {
                const double straightPair = own + logSame(before_[j], after_[j]);
                const double crossed = logSame(before_[i], after_[j]) + logSame(before_[j], after_[i]);
                // Twins exchanged look the same and are the same answer.
                const double twins = std::exp(logSame(before_[i], before_[j])) / otherWires;
                const double differ = std::log(std::max(1e-6, 1.0 - twins));
                add(base - straightPair + crossed + differ, priorSwapped / pairs, CompareVerdict::Changed,
                    {{ChangeKind::Swapped, {int(i) + 1, int(j) + 1}}});
            }
        }
    }

    void weighGone(std::size_t gone) {
        Alignment alignment(before_.size());
        for (std::size_t i = 0; i < before_.size(); ++i)
            if (i != gone)
                alignment[i] = i < gone ? i : i - 1;
        add(sum(alignment), 1.0, CompareVerdict::Changed, {{ChangeKind::Missing, {int(gone) + 1}}});
    }

    void weighAdded(std::size_t added) {
        Alignment alignment(before_.size());
        for (std::size_t i = 0; i < before_.size(); ++i)
            alignment[i] = i < added ? i : i + 1;
        add(sum(alignment), 1.0, CompareVerdict::Changed, {{ChangeKind::Extra, {int(added) + 1}}});
    }

    const Readings& before_;
    const Readings& after_;
    std::vector<double> placesBefore_;
    std::vector<double> placesAfter_;
    std::vector<Hypothesis> hypotheses_;
};

Comparison decide(const std::vector<Hypothesis>& hypotheses, double logOtherwise) {
    Comparison unknown{CompareVerdict::CannotTell, {}, {}, {}};
    if (hypotheses.empty())
        return unknown;
    const auto likeliest =
        std::max_element(hypotheses.begin(), hypotheses.end(), [](const Hypothesis& a, const Hypothesis& b) {
            return a.logProbability < b.logProbability;
        });
    double total = std::exp(logOtherwise - likeliest->logProbability);
    double contrary = -1e9; // the strongest evidence for any change
    for (const Hypothesis& other : hypotheses) {
        total += std::exp(other.logProbability - likeliest->logProbability);
        if (other.answer.verdict == CompareVerdict::Changed &&
            other.logPrior > -9.0) // exchanged twins are no change
            contrary = std::max(contrary, other.logProbability - other.logPrior);
    }
    // One wire of another colour cannot be believed as firmly as a swap: nothing else speaks for it than its
    // own reading.
    const auto& changes = likeliest->answer.changes;
    const bool different = !changes.empty() && changes.front().kind == ChangeKind::Different;
    const double needed = different ? 0.85 : 0.96;
    if (1.0 / total < needed)
        return unknown;
    // Calling a changed row the same is the costly mistake: belief alone is not enough for it, the photos
    // must say so.
    constexpr double clearly = 1.1; // three to one
    if (likeliest->answer.verdict == CompareVerdict::Same &&
        likeliest->logProbability - likeliest->logPrior < contrary + clearly)
        return unknown;
    return likeliest->answer;
}

} // namespace

std::string_view code(ChangeKind kind) {
    static constexpr std::array<std::string_view, 4> names{"swapped", "missing", "extra", "different"};
    return names.at(static_cast<std::size_t>(kind));
}

std::string_view code(CompareVerdict verdict) {
    static constexpr std::array<std::string_view, 3> names{"same", "changed", "cannot tell"};
    return names.at(static_cast<std::size_t>(verdict));
}

Comparison compare(std::vector<WireReading> before, std::vector<WireReading> after) {
    Comparison best{CompareVerdict::CannotTell, {}, {}, {}};
    // A row that is longer by something that is hardly a wire says nothing of a wire that went missing.
    const bool countable = before.size() == after.size() || (allPlain(before) && allPlain(after));
    if (!before.empty() && !after.empty() && countable)
        best = decide(Weighing(before, after).all(), logUnrelated(before.size()));
    best.before = std::move(before);
    best.after = std::move(after);
    return best;
}

} // namespace undercowl::sight
