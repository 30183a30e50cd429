#include "core/handover/labels.h"

#include "core/job/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace undercowl::handover {
namespace {

constexpr std::string_view scheme = "undercowl:bag/";

bool plain(unsigned char byte) {
    return byte < 0x80 && (std::isalnum(byte) != 0 || byte == '-');
}

std::string encoded(std::string_view text) {
    std::string made;
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        made += plain(byte) ? std::string(1, letter) : fmt::format("%{:02X}", byte);
    }
    return made;
}

int hexDigit(char letter) {
    if (letter >= '0' && letter <= '9') {
        return letter - '0';
    }
    const int value = std::toupper(static_cast<unsigned char>(letter)) - 'A' + 10;
    return value >= 10 && value <= 15 ? value : -1;
}

std::optional<std::string> decoded(std::string_view text) {
    std::string made;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '%') {
            if (!plain(static_cast<unsigned char>(text[i]))) {
                return std::nullopt;
            }
            made += text[i];
            continue;
        }
        const int high = i + 1 < text.size() ? hexDigit(text[i + 1]) : -1;
        const int low = i + 2 < text.size() ? hexDigit(text[i + 2]) : -1;
        if (high < 0 || low < 0) {
            return std::nullopt;
        }
        made += static_cast<char>(high * 16 + low);
        i += 2;
    }
    return made;
}

std::string told(const job::Hardware& hardware) {
    std::string text = fmt::format("{} x {}", hardware.count, hardware.what);
    if (!hardware.thread.empty()) {
        text += ' ' + hardware.thread;
    }
    if (!hardware.length.empty()) {
        text += " x " + hardware.length;
    }
    return text;
}

std::string machineName(const job::Machine& machine) {
    std::string name = machine.make;
    if (!machine.model.empty()) {
        name += (name.empty() ? "" : " ") + machine.model;
    }
    return machine.year ? fmt::format("{}{}{}", name, name.empty() ? "" : ", ", *machine.year) : name;
}

} // namespace

std::string written(const BagCode& code) {
    return std::string(scheme) + encoded(code.job) + '/' + encoded(code.bag);
}

std::optional<BagCode> bagCode(std::string_view text) {
    if (!text.starts_with(scheme)) {
        return std::nullopt;
    }
    text.remove_prefix(scheme.size());
    const auto slash = text.find('/');
    if (slash == std::string_view::npos) {
        return std::nullopt;
    }
    auto job = decoded(text.substr(0, slash));
    auto bag = decoded(text.substr(slash + 1));
    if (!job || !bag || job->empty() || bag->empty()) {
        return std::nullopt;
    }
    return BagCode{std::move(*job), std::move(*bag)};
}

std::vector<BagLabel> bagLabels(const job::Job& job, const job::Machine& machine) {
    std::vector<BagLabel> labels;
    for (const job::StripStep& step : job.steps) {
        const std::string name = job::folded(step.bag);
        if (name.empty()) {
            continue;
        }
        auto label =
            std::ranges::find_if(labels, [&](const BagLabel& one) { return job::folded(one.bag) == name; });
        if (label == labels.end()) {
            labels.push_back({step.bag,
                              machineName(machine),
                              job.number,
                              {},
                              {},
                              true,
                              written(BagCode{job.id, step.bag})});
            label = labels.end() - 1;
        }
        label->steps.push_back(step.title);
        for (const job::Hardware& hardware : step.hardware) {
            label->content.push_back(told(hardware));
        }
        label->open = label->open && step.refitted.has_value();
    }
    return labels;
}

const job::StripStep* stepOfBag(const job::Job& job, std::string_view bag) {
    const std::string name = job::folded(bag);
    const job::StripStep* found = nullptr;
    for (const job::StripStep& step : job.steps) {
        if (name.empty() || job::folded(step.bag) != name) {
            continue;
        }
        if (found == nullptr || !step.refitted || found->refitted) {
            found = &step;
        }
    }
    return found;
}

} // namespace undercowl::handover
