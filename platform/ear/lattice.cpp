#include "platform/ear/lattice.h"

#include "core/talk/numbers.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace undercowl::platform {
namespace {

constexpr float never = -1e30F;

struct Part {
    bool empty{}; // may be left out
    std::vector<std::size_t> first;
    std::vector<std::size_t> last;
};

void append(std::vector<std::size_t>& to, const std::vector<std::size_t>& more) {
    to.insert(to.end(), more.begin(), more.end());
}

class Builder {
public:
    Builder(const std::vector<std::string>& words, std::vector<std::size_t>& classOf,
            std::vector<std::vector<std::size_t>>& before)
        : words_(words), classOf_(classOf), before_(before) {}

    Part build(const talk::Expression& expression) {
        using Kind = talk::Expression::Kind;
        switch (expression.kind) {
        case Kind::Word: return word(expression.word);
        case Kind::Sequence: return sequence(expression.parts);
        case Kind::Choice: return choice(expression.parts);
        case Kind::Optional: {
            Part part = build(expression.parts.front());
            part.empty = true;
            return part;
        }
        }
        return {};
    }

private:
    Part word(const std::string& text) {
        const auto at = std::lower_bound(words_.begin(), words_.end(), text);
        const std::size_t position = classOf_.size();
        classOf_.push_back(static_cast<std::size_t>(at - words_.begin()) + 1);
        before_.emplace_back();
        return {false, {position}, {position}};
    }

    Part sequence(const std::vector<talk::Expression>& parts) {
        Part all{true, {}, {}};
        for (const talk::Expression& expression : parts) {
            const Part part = build(expression);
            for (const std::size_t position : part.first)
                append(before_[position], all.last);
            if (all.empty)
                append(all.first, part.first);
            if (part.empty)
                append(all.last, part.last);
            else
                all.last = part.last;
            all.empty = all.empty && part.empty;
        }
        return all;
    }

    Part choice(const std::vector<talk::Expression>& parts) {
        Part all;
        for (const talk::Expression& expression : parts) {
            const Part part = build(expression);
            append(all.first, part.first);
            append(all.last, part.last);
            all.empty = all.empty || part.empty;
        }
        return all;
    }

    const std::vector<std::string>& words_;
    std::vector<std::size_t>& classOf_;
    std::vector<std::vector<std::size_t>>& before_;
};

// A way up to here: how likely, and the words on it as a chain.
struct Token {
    float score{never};
    int said{-1}; // index into the chain
};

struct Link {
    std::size_t position{};
    int previous{-1};
};

const Token& better(const Token& a, const Token& b) {
    return b.score > a.score ? b : a;
}

double sum(double a, double b) {
    if (a < b)
        std::swap(a, b);
    return b == -std::numeric_limits<double>::infinity() ? a : a + std::log1p(std::exp(b - a));
}

} // namespace

Lattice::Lattice(const talk::Expression& grammar) {
    const auto known = talk::vocabulary(grammar);
    words_.assign(known.begin(), known.end());
    const Part all = Builder{words_, classOf_, before_}.build(grammar);
    first_.resize(classOf_.size());
    last_.resize(classOf_.size());
    for (const std::size_t position : all.first)
        first_[position] = true;
    for (const std::size_t position : all.last)
        last_[position] = true;
}

std::string Lattice::best(const Likely& likely) const {
    const std::size_t count = classOf_.size();
    std::vector<Token> inWord(count);
    std::vector<Token> after(count); // the word is over, nothing new yet
    std::vector<Token> nextIn(count);
    std::vector<Token> nextAfter(count);
    std::vector<Link> chain;
    Token nothing{0, -1};
    for (std::size_t t = 0; t < likely.frames; ++t) {
        const float blank = likely.at(t, 0);
        for (std::size_t p = 0; p < count; ++p) {
            Token enter = first_[p] ? nothing : Token{};
            for (const std::size_t q : before_[p]) {
                enter = better(enter, after[q]);
                if (classOf_[q] != classOf_[p])
                    enter = better(enter, inWord[q]);
            }
            nextIn[p] = inWord[p];
            if (enter.score > inWord[p].score) {
                nextIn[p] = {enter.score, static_cast<int>(chain.size())};
                chain.push_back({p, enter.said});
            }
            nextIn[p].score += likely.at(t, classOf_[p]);
            nextAfter[p] = better(after[p], inWord[p]);
            nextAfter[p].score += blank;
        }
        nothing.score += blank;
        inWord.swap(nextIn);
        after.swap(nextAfter);
    }
    Token best;
    for (std::size_t p = 0; p < count; ++p)
        if (last_[p])
            best = better(best, better(inWord[p], after[p]));
    std::string text;
    for (int at = best.said; at >= 0; at = chain[static_cast<std::size_t>(at)].previous) {
        const std::string& word = words_[classOf_[chain[static_cast<std::size_t>(at)].position] - 1];
        text.insert(0, text.empty() ? word : word + ' ');
    }
    return text;
}

double Lattice::log(const Likely& likely, const std::string& sentence) const {
    constexpr double none = -std::numeric_limits<double>::infinity();
    std::vector<std::size_t> states{0}; // nothing, word, nothing, word, ... nothing
    for (const std::string_view word : talk::wordsOf(sentence)) {
        const auto at = std::lower_bound(words_.begin(), words_.end(), word);
        if (at == words_.end() || *at != word)
            return none;
        states.push_back(static_cast<std::size_t>(at - words_.begin()) + 1);
        states.push_back(0);
    }
    std::vector<double> now(states.size(), none);
    std::vector<double> next(states.size(), none);
    now[0] = 0; // before the first frame
    for (std::size_t t = 0; t < likely.frames; ++t) {
        for (std::size_t s = 0; s < states.size(); ++s) {
            double total = now[s];
            if (s > 0)
                total = sum(total, now[s - 1]);
            if (s > 2 && states[s] != 0 && states[s] != states[s - 2])
                total = sum(total, now[s - 2]);
            next[s] = total + static_cast<double>(likely.at(t, states[s]));
        }
        now.swap(next);
    }
    return states.size() > 1 ? sum(now.back(), now[states.size() - 2]) : now.back();
}

std::string Lattice::free(const Likely& likely) const {
    std::string text;
    std::size_t previous = 0;
    for (std::size_t t = 0; t < likely.frames; ++t) {
        std::size_t most = 0;
        for (std::size_t c = 1; c < likely.classes; ++c)
            if (likely.at(t, c) > likely.at(t, most))
                most = c;
        if (most != 0 && most != previous) {
            if (!text.empty())
                text += ' ';
            text += most <= words_.size() ? words_[most - 1] : "...";
        }
        previous = most;
    }
    return text;
}

} // namespace undercowl::platform
