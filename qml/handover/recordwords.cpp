#include "qml/handover/recordwords.h"

#include "core/handover/phrases.h"
#include "qml/shell/words.h"

#include <utility>

namespace undercowl::ui {

namespace {

std::string wordsIn(const Catalogue& in, const handover::Text& said) {
    const auto* message = std::get_if<job::Message>(&said);
    if (message == nullptr)
        return knownWords(std::get<std::string>(said), in).toStdString();
    const std::string phrase(handover::englishPhrase(message->key));
    const QString pattern =
        phrase.empty() ? in.translated("Core", std::string(job::englishPattern(message->key)).c_str())
                       : in.translated("Record", phrase.c_str());
    return filled(pattern, message->values, in).toStdString();
}

} // namespace

std::string recordWords(const handover::Text& said) {
    return wordsIn(*Catalogue::shown(), said);
}

handover::Words recordWordsIn(const QString& language) {
    return [in = std::make_shared<const Catalogue>(language)](const handover::Text& said) {
        return wordsIn(*in, said);
    };
}

} // namespace undercowl::ui
