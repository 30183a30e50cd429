// The owner's record: what it says, as a document model. HTML and PDF are made from the same one.
#pragma once

#include "core/job/message.h"
#include "core/job/model.h"

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace undercowl::handover {

using job::Message;

// Text is either a message key with values, which a shell translates, or what the mechanic typed.
using Text = std::variant<Message, std::string>;

enum class Weight : std::uint8_t { Plain, Strong, Caution };

struct Paragraph {
    Text text;
    Weight weight{};
};

struct Row {
    std::vector<Text> cells;
};

struct Table {
    std::vector<Text> head;
    std::vector<Row> rows;
};

struct Picture {
    std::string media; // name in the media store
    Text caption;
};

struct Pictures {
    std::vector<Picture> pictures;
};

using Block = std::variant<Paragraph, Table, Pictures>;

struct Section {
    Text title;
    std::vector<Block> blocks;
};

struct Document {
    Text title;
    std::vector<Section> sections;
};

// Everything the owner is to know: machine, what was found, what was done, wiring that was read, readings
// with verdicts, parts, what is due, cautions. 'mechanics' gives names for ids. At most 'mostPictures'
// photos.
[[nodiscard]] Document ownersRecord(const job::Job& job, const job::Machine& machine, const job::Owner& owner,
                                    const std::vector<job::Mechanic>& mechanics,
                                    std::size_t mostPictures = 6);

// How Text becomes words; job::english for messages by default.
using Words = std::function<std::string(const Text&)>;
[[nodiscard]] Words englishWords();

// A complete HTML page (UTF-8, inline style, everything typed is escaped) in the language that 'words' speak.
// 'imageSource' gives the src of a picture for its media name: a file name, or a data URI to make the page
// stand alone; an empty answer leaves the picture out.
[[nodiscard]] std::string html(const Document& document, const Words& words,
                               const std::function<std::string(const std::string& media)>& imageSource,
                               std::string_view language = "en");

} // namespace undercowl::handover
