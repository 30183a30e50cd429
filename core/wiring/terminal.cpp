#include "core/wiring/terminal.h"

#include <array>
#include <charconv>
#include <cstddef>

namespace undercowl::wiring {
namespace {

// In the order of the enumeration.
constexpr std::array<std::string_view, 11> kinds{
    "", "blade", "receptacle", "bullet", "bullet socket", "ring", "fork", "pin", "socket", "splice", "bare"};

constexpr double largestSizeMm = 50;

// Sizes are written as on the terminal's bag: at most two decimals, none that are zero.
std::string sizeText(double sizeMm) {
    std::array<char, 32> digits{};
    const auto end =
        std::to_chars(digits.data(), digits.data() + digits.size(), sizeMm, std::chars_format::fixed, 2).ptr;
    std::string text(digits.data(), end);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.')
        text.pop_back();
    return text;
}

std::optional<double> sizeFromText(std::string text) {
    if (const auto comma = text.find(','); comma != std::string::npos)
        text[comma] = '.';
    double size = 0;
    const auto [end, error] =
        std::from_chars(text.data(), text.data() + text.size(), size, std::chars_format::fixed);
    if (error != std::errc{} || end != text.data() + text.size() || !(size > 0) || size > largestSizeMm)
        return std::nullopt;
    return size;
}

} // namespace

std::string text(const Terminal& terminal) {
    std::string words{kinds.at(static_cast<std::size_t>(terminal.kind))};
    if (!words.empty() && terminal.sizeMm)
        words.append(" ").append(sizeText(*terminal.sizeMm));
    return words;
}

std::optional<Terminal> terminalFromText(std::string_view text) {
    if (text.empty())
        return Terminal{};
    for (std::size_t i = 1; i < kinds.size(); ++i)
        if (text == kinds.at(i))
            return Terminal{static_cast<TerminalKind>(i), std::nullopt};
    const auto gap = text.rfind(' ');
    if (gap == std::string_view::npos)
        return std::nullopt;
    const auto size = sizeFromText(std::string{text.substr(gap + 1)});
    auto terminal = terminalFromText(text.substr(0, gap));
    if (!size || !terminal || terminal->sizeMm || terminal->kind == TerminalKind::Unknown)
        return std::nullopt;
    terminal->sizeMm = size;
    return terminal;
}

} // namespace undercowl::wiring
