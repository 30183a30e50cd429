#include "core/talk/expression.h"

#include "core/talk/numbers.h"

#include <utility>

namespace undercowl::talk {
namespace {

using Kind = Expression::Kind;

std::string joined(const Expression& expression, std::string_view between) {
    std::string text;
    for (const Expression& part : expression.parts) {
        if (!text.empty())
            text += between;
        text += jsgf(part);
    }
    return text;
}

void collect(const Expression& expression, std::set<std::string>& words) {
    if (expression.kind == Kind::Word)
        words.insert(expression.word);
    for (const Expression& part : expression.parts)
        collect(part, words);
}

} // namespace

Expression phrase(std::string_view words) {
    Expression all{Kind::Sequence, {}, {}};
    for (const std::string_view word : wordsOf(words))
        all.parts.push_back({Kind::Word, std::string{word}, {}});
    return all.parts.size() == 1 ? all.parts.front() : all;
}

Expression sequence(std::vector<Expression> parts) {
    return {Kind::Sequence, {}, std::move(parts)};
}

Expression choice(std::vector<Expression> parts) {
    return {Kind::Choice, {}, std::move(parts)};
}

Expression optional(Expression part) {
    return {Kind::Optional, {}, {std::move(part)}};
}

std::string jsgf(const Expression& expression) {
    switch (expression.kind) {
    case Kind::Word: return expression.word;
    case Kind::Sequence: return "( " + joined(expression, " ") + " )";
    case Kind::Choice: return "( " + joined(expression, " | ") + " )";
    case Kind::Optional: return "[ " + joined(expression, " ") + " ]";
    }
    return {};
}

std::set<std::string> vocabulary(const Expression& expression) {
    std::set<std::string> words;
    collect(expression, words);
    return words;
}

std::string sample(const Expression& expression, const std::function<std::size_t(std::size_t)>& pick) {
    switch (expression.kind) {
    case Kind::Word: return expression.word;
    case Kind::Choice: return sample(expression.parts[pick(expression.parts.size())], pick);
    case Kind::Optional: return pick(2) == 0 ? std::string{} : sample(expression.parts.front(), pick);
    case Kind::Sequence: break;
    }
    std::string text;
    for (const Expression& part : expression.parts) {
        const std::string words = sample(part, pick);
        if (!text.empty() && !words.empty())
            text += ' ';
        text += words;
    }
    return text;
}

} // namespace undercowl::talk
