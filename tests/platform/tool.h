// Runs the real undercowlctl and other programs.
#pragma once

#include <nlohmann/json.hpp>

#include <filesystem>
#include <string>

namespace undercowl::tests {

struct Ran {
    int exit{};
    std::string out;
    std::string err;

    // The output as JSON; fails the test when it is none.
    [[nodiscard]] nlohmann::json json() const;
};

// The arguments as a shell reads them.
[[nodiscard]] Ran run(const std::string& program, const std::string& arguments);
[[nodiscard]] Ran ctl(const std::string& arguments);

// A folder of its own that goes with the object.
class Scratch {
public:
    Scratch();
    ~Scratch();
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    Scratch(Scratch&&) = delete;
    Scratch& operator=(Scratch&&) = delete;

    [[nodiscard]] std::string operator/(const std::string& name) const { return (folder_ / name).string(); }

private:
    std::filesystem::path folder_;
};

// What poppler's pdftotext reads in the file: another program than the one that wrote it.
[[nodiscard]] std::string textOfPdf(const std::string& file);

[[nodiscard]] std::string contentOf(const std::string& file);
void write(const std::string& file, const std::string& content);

} // namespace undercowl::tests
