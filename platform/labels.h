// Labels for bags as a sheet to be printed, each with a QR code.
#pragma once

#include "core/handover/labels.h"

#include <tl/expected.hpp>

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::platform {

// Sheets of labels as sold without a maker's own pattern: A4 with 3 x 8 of 70 x 37 mm edge to edge, Letter
// with 3 x 10 of 2 5/8 x 1 in. From memory of such sheets: lay a print on plain paper over the sheet first.
enum class LabelStock : std::uint8_t { A4, Letter };

[[nodiscard]] std::optional<LabelStock> labelStock(std::string_view word); // "a4", "letter"
[[nodiscard]] int labelsOnSheet(LabelStock stock);

// The labels from place 'first' of the first sheet on (1 for a whole sheet; a begun one is used up), as many
// sheets as it takes. Needs a QGuiApplication, as pdf() of printing.h does. Fails, with the remedy in words,
// when there is no label, the place is not on the sheet, a code does not fit, or the pages cannot be written.
[[nodiscard]] tl::expected<std::vector<std::byte>, std::string>
labelSheet(const std::vector<handover::BagLabel>& labels, LabelStock stock, int first = 1);

} // namespace undercowl::platform
