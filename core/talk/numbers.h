// Numbers as they are said: "twelve point six", "one hundred and ten", "two five" for 25.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace undercowl::talk {

// The words of a number that is written with digits, a point or a comma and perhaps a minus: "0.15" gives
// "zero point one five", "110" gives "one hundred and ten". Decimals are said one by one, since "point
// fifteen" is taken for more than "point two". Below a million by name, beyond that digit by digit. What is
// not such a number comes back as it is.
[[nodiscard]] std::string spokenNumber(std::string_view digits);

// One by one, "two five": for what is a name rather than an amount.
[[nodiscard]] std::string spokenDigits(std::string_view digits);

// The digits behind words, with a point as decimal mark: "two five" and "twenty five" give "25", "one point
// eight zero" gives "1.80" (the last digit says how finely it was read), "one hundred and ten" gives "110".
// "oh" is a zero between or after digits. Nothing for anything else, also for mixtures such as "twenty
// fifteen" or "one twenty", which two people take for two numbers.
[[nodiscard]] std::optional<std::string> digitsFromWords(std::span<const std::string_view> words);

// Words apart at blanks.
[[nodiscard]] std::vector<std::string_view> wordsOf(std::string_view text);

// Names of 0 to 9; of 10 to 19; of 20, 30 ... 90.
[[nodiscard]] std::span<const std::string_view> digitNames();
[[nodiscard]] std::span<const std::string_view> teenNames();
[[nodiscard]] std::span<const std::string_view> tensNames();

} // namespace undercowl::talk
