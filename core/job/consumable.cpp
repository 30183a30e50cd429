#include "core/job/consumable.h"

#include "core/job/text.h"

#include <algorithm>
#include <cctype>

namespace undercowl::job {
namespace {

// "dot 5.1" and "DOT5.1" are the same grade.
std::string bare(std::string_view grade) {
    std::string letters = lowered(grade);
    std::erase_if(letters, [](unsigned char each) { return std::isspace(each) != 0; });
    return letters;
}

std::vector<std::string> grades(std::string_view limit) {
    std::string text{limit};
    for (std::size_t at = text.find(" or "); at != std::string::npos; at = text.find(" or ", at))
        text.replace(at, 4, 1, ',');
    std::vector<std::string> found;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t to = std::min(text.find_first_of(",;/", from), text.size());
        if (std::string one = bare(text.substr(from, to - from)); !one.empty())
            found.push_back(std::move(one));
        from = to + 1;
    }
    return found;
}

bool isBrakeFluid(const ConsumableUse& use) {
    return bare(use.what).find("brakefluid") != std::string::npos || bare(use.grade).rfind("dot", 0) == 0;
}

void againstGrade(const ConsumableUse& use, std::vector<Message>& against) {
    const bool brake = isBrakeFluid(use);
    const std::string grade = bare(use.grade);
    if (grade.empty()) {
        if (brake || !use.limit.empty())
            against.push_back({"consumable.grade-unknown", {}});
        return;
    }
    const auto allowed = grades(use.limit);
    if (allowed.empty()) {
        if (brake)
            against.push_back({"consumable.limit-unknown", {}});
    } else if (std::find(allowed.begin(), allowed.end(), grade) == allowed.end()) {
        against.push_back({"consumable.not-allowed", {use.grade, use.limit}});
    }
    const bool silicone = grade == "dot5";
    const bool glycolAllowed = std::any_of(allowed.begin(), allowed.end(), [](const std::string& one) {
        return one == "dot3" || one == "dot4" || one == "dot5.1";
    });
    if (brake && silicone && (glycolAllowed || allowed.empty()))
        against.push_back({"consumable.silicone", {}});
}

void againstAge(const ConsumableUse& use, units::Date today, int daysOpen, std::vector<Message>& against) {
    const bool hygroscopic = isBrakeFluid(use) && bare(use.grade) != "dot5";
    if (use.opened.empty()) {
        if (hygroscopic)
            against.push_back({"consumable.opened-unknown", {}});
        return;
    }
    const auto opened = units::parseDate(use.opened);
    if (!opened) {
        against.push_back({"consumable.opened-unclear", {}});
        return;
    }
    const int days = units::daysBetween(*opened, today);
    if (days < 0)
        against.push_back({"consumable.opened-later", {use.opened}});
    else if (hygroscopic && days > daysOpen)
        against.push_back({"consumable.opened-long-ago", {std::to_string(days), use.opened}});
}

} // namespace

std::vector<Message> againstUse(const ConsumableUse& use, units::Date today, int daysOpen) {
    std::vector<Message> against;
    againstGrade(use, against);
    againstAge(use, today, daysOpen, against);
    return against;
}

} // namespace undercowl::job
