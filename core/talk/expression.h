// A grammar as data: words, sequences, choices, parts that may be left out.
#pragma once

#include <functional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::talk {

struct Expression {
    enum class Kind { Word, Sequence, Choice, Optional };
    Kind kind{};
    std::string word;              // of a Word
    std::vector<Expression> parts; // of the others; an Optional has one
};

// Every word of the phrase in its order.
[[nodiscard]] Expression phrase(std::string_view words);
[[nodiscard]] Expression sequence(std::vector<Expression> parts);
[[nodiscard]] Expression choice(std::vector<Expression> parts);
[[nodiscard]] Expression optional(Expression part);

// In the Java Speech Grammar Format 1.0 (W3C note of 5 June 2000), as the right-hand side of a rule.
[[nodiscard]] std::string jsgf(const Expression& expression);

// Every word that occurs, each once.
[[nodiscard]] std::set<std::string> vocabulary(const Expression& expression);

// One sentence of the grammar; 'pick' answers a number from 0 up to below the count that it is given.
[[nodiscard]] std::string sample(const Expression& expression,
                                 const std::function<std::size_t(std::size_t count)>& pick);

} // namespace undercowl::talk
