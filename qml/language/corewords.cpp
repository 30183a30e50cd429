#include "qml/language/corewords.h"

#include "qml/language/sentences.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <optional>
#include <vector>

namespace undercowl::ui {

namespace {

constexpr const char* context = "Core";
constexpr int deepest = 4;            // sentences within sentences
constexpr qsizetype manyLetters = 15; // of one that nobody types by chance
constexpr qsizetype fewLetters = 5;   // of a pattern that says too little to be known by its own words

struct Pattern {
    const char* source{};
    QStringList between;   // the words before, between and behind the values
    std::vector<int> each; // which value stands at each place
    qsizetype letters{};
};

Pattern patternOf(const char* source) {
    Pattern pattern{source, {QString()}, {}, 0};
    const QString text = QString::fromUtf8(source);
    for (qsizetype i = 0; i < text.size(); ++i) {
        const int place = text[i] == u'%' && i + 1 < text.size() ? text[i + 1].digitValue() : -1;
        if (place < 1) {
            pattern.between.back() += text[i];
            pattern.letters += text[i].isLetter() ? 1 : 0;
            continue;
        }
        pattern.each.push_back(place);
        pattern.between += QString();
        ++i;
    }
    return pattern;
}

// Those with most words of their own first: what fits them is hardly anything else.
const std::vector<Pattern>& patterns() {
    static const auto all = [] {
        std::vector<Pattern> made;
        for (const Sentences& part : sentences())
            for (const char* source : part)
                if (Pattern pattern = patternOf(source); !pattern.each.empty())
                    made.push_back(std::move(pattern));
        std::ranges::stable_sort(made, std::greater{}, &Pattern::letters);
        return made;
    }();
    return all;
}

// The values in the order of their places; none where TEXT was not made from the pattern.
std::optional<QStringList> valuesOf(const Pattern& pattern, const QString& text) {
    if (!text.startsWith(pattern.between.front()) || !text.endsWith(pattern.between.back()))
        return std::nullopt;
    QStringList values;
    qsizetype at = pattern.between.front().size();
    const qsizetype end = text.size() - pattern.between.back().size();
    for (qsizetype i = 1; i + 1 < pattern.between.size(); ++i) {
        const qsizetype next = text.indexOf(pattern.between[i], at);
        if (next < 0 || next + pattern.between[i].size() > end)
            return std::nullopt;
        values += text.mid(at, next - at);
        at = next + pattern.between[i].size();
    }
    if (at > end)
        return std::nullopt;
    values += text.mid(at, end - at);
    return values;
}

// A number, with its unit or without, or a day.
bool isNumber(const QString& text) {
    static const QRegularExpression number(
        QStringLiteral(R"(^[-+]?\d+([.,]\d+)?([ \x{a0}]\S{1,12}( [a-z]{1,8})?)?$|^\d{4}-\d\d-\d\d$)"));
    return number.match(text).hasMatch();
}

bool hasDigit(const QString& text) {
    return std::ranges::any_of(text, [](QChar each) { return each.isDigit(); });
}

class Translating {
public:
    explicit Translating(const Catalogue& in) : in_(in) {}

    struct Spoken {
        QString text;
        bool whole{true}; // false: a value in it was not known, and stands as it came
    };

    // Nothing where TEXT is not known; 'strict': nor where a value of it is neither known nor a number.
    [[nodiscard]] std::optional<Spoken> known(const QString& text, bool strict, int depth = 0) const {
        if (QString found = in_.found(context, text.toUtf8().constData()); !found.isEmpty())
            return Spoken{std::move(found)};
        // Patterns before numbers: "7 days" is one, and no quantity in a unit "days". One whose values are
        // all known before one that fits only because its last value may be anything.
        std::optional<Spoken> first;
        for (const Pattern& pattern : patterns()) {
            const auto values = depth < deepest ? valuesOf(pattern, text) : std::nullopt;
            auto made = values ? filled(pattern, *values, strict, depth) : std::nullopt;
            if (made && (made->whole || depth > 0))
                return made;
            if (made && !first)
                first = std::move(made);
        }
        if (!first && isNumber(text))
            return Spoken{localNumber(text, in_)};
        return first;
    }

private:
    [[nodiscard]] std::optional<Spoken> filled(const Pattern& pattern, const QStringList& values, bool strict,
                                               int depth) const {
        QStringList spoken;
        bool whole = true;
        for (const QString& value : values) {
            auto one = known(value, strict, depth + 1);
            if (!one && ((strict && pattern.letters < manyLetters) ||
                         (pattern.letters < fewLetters && !hasDigit(value))))
                return std::nullopt;
            whole = whole && one && one->whole;
            spoken += one ? one->text : value;
        }
        const Pattern target = patternOf(in_.translated(context, pattern.source).toUtf8().constData());
        QString text = target.between.front();
        for (std::size_t i = 0; i < target.each.size(); ++i) {
            const auto at = std::ranges::find(pattern.each, target.each[i]);
            text += spoken.value(at - pattern.each.begin()) + target.between[static_cast<qsizetype>(i) + 1];
        }
        return Spoken{std::move(text), whole};
    }

    const Catalogue& in_;
};

QString spokenIn(std::string_view english, const Catalogue& in, bool strict) {
    const QString text = QString::fromUtf8(english.data(), static_cast<qsizetype>(english.size()));
    if (text.isEmpty() || in.isEnglish())
        return text;
    const auto known = Translating(in).known(text, strict);
    return known ? known->text : text;
}

} // namespace

QString coreWords(std::string_view english, const Catalogue& in) {
    return spokenIn(english, in, false);
}

QString knownWords(std::string_view text, const Catalogue& in) {
    return spokenIn(text, in, true);
}

QString localNumber(const QString& text, const Catalogue& in) {
    const QString mark = in.locale().decimalPoint();
    if (mark == u"." || !isNumber(text))
        return text;
    QString local = text;
    const qsizetype at = local.indexOf(u'.');
    static const QRegularExpression gap(QStringLiteral(R"([ \x{a0}])"));
    const qsizetype unit = local.indexOf(gap);
    if (at > 0 && (unit < 0 || at < unit)) // "N.m" keeps its own
        local.replace(at, 1, mark);
    return local;
}

const std::vector<Sentences>& sentences() {
    static const std::vector<Sentences> all{unitSentences(),    verdictSentences(), shopSentences(),
                                            workingSentences(), answerSentences(),  refusalSentences(),
                                            photoSentences()};
    return all;
}

} // namespace undercowl::ui
