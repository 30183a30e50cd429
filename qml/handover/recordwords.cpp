#include "qml/handover/recordwords.h"

#include "core/handover/phrases.h"
#include "qml/shell/words.h"

#include <QCoreApplication>

namespace undercowl::ui {

std::string recordWords(const handover::Text& said) {
    const auto* message = std::get_if<job::Message>(&said);
    if (message == nullptr)
        return std::get<std::string>(said);
    const std::string phrase(handover::englishPhrase(message->key));
    if (phrase.empty())
        return words(*message).toStdString();
    return filled(QCoreApplication::translate("Record", phrase.c_str()), message->values).toStdString();
}

} // namespace undercowl::ui
